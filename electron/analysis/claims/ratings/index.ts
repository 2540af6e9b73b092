import type { Claim } from "../../../../shared-types/index.ts";
import type { Speech, SpokenNumber } from "../../model.ts";
import { spansOfTokens } from "../../model.ts";
import type { Frames } from "../framing/index.ts";
import type { PartMention } from "../lexicon/find-mentions.ts";
import { engineSpeedAtRoadSpeed } from "./cruising-speed.ts";
import type { RatingRule } from "./rating-found.ts";
import { serviceDescription, speedLetter, tireSpeed } from "./tire-ratings.ts";

export const ratingRules = [serviceDescription, speedLetter, tireSpeed, engineSpeedAtRoadSpeed] as const satisfies readonly RatingRule[];

export interface RatingsInput {
  readonly speech: Speech;
  readonly frames: Frames;
  readonly numbers: readonly SpokenNumber[];
  readonly mentions: readonly PartMention[];
  readonly zones: readonly { readonly zone: Claim["zone"]; readonly start: number; readonly end: number }[];
}

/** What is told as a rating (a tire's marking, an engine's speed at a road speed) of this vehicle. Ids are "g1" and so on. */
export function findRatings({ speech, frames, numbers, mentions, zones }: RatingsInput): Claim[] {
  return ratingRules
    .flatMap((rule) => rule.find({ speech, numbers, mentions }).map((found) => ({ rule: rule.name, found })))
    .filter(({ found }) => {
      const clause = frames.at(found.first);
      return clause.subject === "this-vehicle" && !clause.corrected;
    })
    .toSorted((a, b) => a.found.first - b.found.first)
    .map(({ rule, found }, position): Claim => {
      const spans = spansOfTokens(speech.tokens, found.first, found.end);
      const start = speech.tokens[found.first]!.at;
      const clause = frames.at(found.first);
      return {
        id: `g${position + 1}`,
        captions: spans.map((span) => span.caption),
        start,
        end: speech.tokens[found.end]?.at ?? speech.duration,
        quote: spans.map((span) => speech.captions[span.caption]!.text.slice(span.start, span.end)).join(" "),
        spans,
        component: found.component,
        part: found.part,
        position: null,
        attribute: "type",
        value: found.value,
        unit: null,
        stance: clause.stance,
        time: clause.time,
        circumstance: null,
        zone: (zones.findLast((span) => span.start <= start) ?? zones[0])?.zone ?? "opening",
        rule,
        repairs: [],
      };
    });
}
