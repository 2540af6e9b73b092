import type { Claim } from "../../../../shared-types/index.ts";
import type { Speech } from "../../model.ts";
import { spansOfTokens } from "../../model.ts";
import type { Frames } from "../framing/index.ts";
import type { PartMention } from "../lexicon/find-mentions.ts";
import { caliperPistons } from "./caliper-pistons.ts";
import type { CountedSpeech, CountFound, CountingRule } from "./count-found.ts";
import { countedAloud } from "./counted-aloud.ts";
import { countedOnAloud } from "./counted-on-aloud.ts";
import { gearsCountedAloud } from "./gears-counted-aloud.ts";
import { gearsRunThrough } from "./gears-run-through.ts";
import { oneTankLeft } from "./one-tank-left.ts";
import { oneOwnerToldOf, ownersNamedInTurn, soldFromHandToHand } from "./owners-told.ts";
import { bothOfThem, frontAndBackAddedUp, laidOutOneByOne, ownersCountedUpTo } from "./things-added-up.ts";

export const countingRules = [
  gearsRunThrough,
  gearsCountedAloud,
  oneTankLeft,
  frontAndBackAddedUp,
  laidOutOneByOne,
  bothOfThem,
  ownersCountedUpTo,
  ownersNamedInTurn,
  soldFromHandToHand,
  oneOwnerToldOf,
  countedAloud,
  countedOnAloud,
  caliperPistons,
] as const satisfies readonly CountingRule[];

export interface CountedOffInput {
  readonly speech: Speech;
  readonly frames: Frames;
  readonly mentions: readonly PartMention[];
  readonly zones: readonly { readonly zone: Claim["zone"]; readonly start: number; readonly end: number }[];
}

/**
 * Counts that are told without a number: gears gone through one by one, a pair in front and a pair behind, keys laid out. Ids are "n1"
 * and so on. Grows with the speech.
 */
export function findCountsOff(input: CountedOffInput): Claim[] {
  const { speech, frames } = input;
  const counted: CountedSpeech = {
    speech,
    mentions: input.mentions,
    zoneAt: (token) => {
      const at = speech.tokens[token]?.at ?? speech.duration;
      return (input.zones.findLast((span) => span.start <= at) ?? input.zones[0])?.zone ?? "opening";
    },
  };
  return countingRules
    .flatMap((rule) => rule.find(counted).map((found) => ({ rule: rule.name, found })))
    .filter(({ found }) => {
      const clause = frames.at(found.at);
      return clause.subject === "this-vehicle" && !clause.corrected;
    })
    .toSorted((a, b) => a.found.first - b.found.first)
    .map(({ rule, found }, position) => claimOf(input, counted, rule, found, `n${position + 1}`));
}

function claimOf({ speech, frames }: CountedOffInput, counted: CountedSpeech, rule: string, found: CountFound, id: string): Claim {
  const spans = spansOfTokens(speech.tokens, found.first, found.end);
  const clause = frames.at(found.at);
  return {
    id,
    captions: spans.map((span) => span.caption),
    start: speech.tokens[found.first]!.at,
    end: speech.tokens[found.end]?.at ?? speech.duration,
    quote: spans.map((span) => speech.captions[span.caption]!.text.slice(span.start, span.end)).join(" "),
    spans,
    component: found.component,
    part: found.part,
    position: null,
    attribute: "count",
    value: found.value,
    unit: null,
    stance: clause.stance,
    time: clause.time,
    circumstance: found.circumstance,
    zone: counted.zoneAt(found.at),
    rule,
    repairs: [],
  };
}
