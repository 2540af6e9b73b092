import type { Claim } from "../../../../shared-types/index.ts";
import type { Speech } from "../../model.ts";
import { spansOfTokens } from "../../model.ts";
import type { Frames } from "../framing/frame-speech.ts";
import type { PartMention } from "../lexicon/find-mentions.ts";
import { findByRules } from "./find-by-rules.ts";
import { findColors } from "./find-colors.ts";
import { withoutLimitedPraise } from "./limited-praise.ts";
import type { Quality } from "./quality.ts";
import { type SpokenScene, sceneOf, type ZoneSpan } from "./spoken-scene.ts";

export interface QualityInput {
  readonly speech: Speech;
  readonly frames: Frames;
  readonly mentions: readonly PartMention[];
  /** In order, without gap; seconds. */
  readonly zones: readonly ZoneSpan[];
}

/** Every claim without a number that the speech makes: kinds, materials, colors, presence, originality, condition. Ids are "q1" and so on. */
export function findQualityClaims(input: QualityInput): Claim[] {
  const scene = sceneOf(input.speech, input.frames, input.mentions, input.zones);
  const byRules = withoutLimitedPraise(scene, findByRules(scene));
  return outweighed(scene, [...byRules, ...findColors(scene, byRules)])
    .toSorted((a, b) => a.first - b.first || a.end - b.end)
    .filter(unrepeated())
    .map((quality, index) => claimOf(scene, quality, `q${index + 1}`));
}

/** Words from an inference to the plain saying that outweighs it. */
const outweighs = 16;

/** Without what is only inferred where the same is said plainly in the same sentence: "it's a walnut, the veneer goes all across". */
function outweighed({ frames }: SpokenScene, found: readonly Quality[]): readonly Quality[] {
  const plain = found.filter(({ inferred }) => !inferred);
  return found.filter(
    (quality) =>
      !quality.inferred ||
      !plain.some(
        (other) =>
          other.component === quality.component &&
          other.attribute === quality.attribute &&
          // A vented rotor is no other saying than a disc.
          (quality.attribute !== "type" || other.part === quality.part) &&
          Math.max(other.first - quality.end, quality.first - other.end) < outweighs &&
          frames.at(other.first).sentence === frames.at(quality.first).sentence,
      ),
  );
}

/** Keeps the first of several phrases that say one thing in one breath. */
function unrepeated(): (quality: Quality) => boolean {
  const last = new Map<string, number>();
  return (quality) => {
    const key = [quality.component, quality.part, quality.position, quality.attribute, quality.value, quality.circumstance].join("|");
    const before = last.get(key);
    if (before !== undefined && quality.first - before < 7) return false;
    last.set(key, quality.first);
    return true;
  };
}

/** Most words quoted with a quality. */
const longestQuote = 14;

const denies = /^(?:no|not|never|without)$|n't$/;

const doubtBegins =
  /^(?:think|believe|reckon|guess|suppose|supposes|assume|imagine|say|tell|far|maybe|perhaps|probably|possibly|presumably|apparently|might|may|could|should|looks?|seems?|appears?)$/;
/** Words back over which a claim's doubt is quoted with it. */
const doubtReach = 9;

/** "As far as I can tell it's its own engine": a doubtful claim is quoted with what makes it doubtful, where that stands just before. */
function withItsDoubt({ speech, frames }: SpokenScene, first: number, end: number): number {
  const { tokens } = speech;
  if (tokens.slice(first, end).some(({ word }) => doubtBegins.test(word))) return first;
  let begins = first;
  for (let token = first - 1; token >= Math.max(0, first - doubtReach, end - longestQuote); token--) {
    if (frames.at(token).stance !== "hedged" || /[.!?]/.test(tokens[token]!.after)) break;
    if (doubtBegins.test(tokens[token]!.word)) begins = token;
  }
  return begins;
}

function claimOf(scene: SpokenScene, quality: Quality, id: string): Claim {
  const { speech, frames } = scene;
  const clause = frames.at(quality.end - 1);
  let first = quality.first;
  let end = quality.end;
  const { named } = quality;
  if (named && Math.max(end, named.end) - Math.min(first, named.first) <= longestQuote) {
    first = Math.min(first, named.first);
    end = Math.max(end, named.end);
  }
  if (end - first < 4 && quality.attribute !== "condition") {
    // A bare word is quoted with what leads up to it.
    first = Math.max(clause.first, end - 6, 0);
    first = Math.min(first, quality.first);
    // What is there is not quoted with a "no" that denies something else ("no splits | overdrive switch on the dash").
    if (quality.value === "present" && speech.tokens.slice(first, quality.first).some(({ word }) => denies.test(word)))
      first = quality.first;
  }
  if (clause.stance === "hedged") first = withItsDoubt(scene, first, end);
  const spans = spansOfTokens(speech.tokens, first, end);
  return {
    id,
    captions: spans.map((span) => span.caption),
    start: speech.tokens[first]!.at,
    end: speech.tokens[end]?.at ?? speech.duration,
    quote: spans.map((span) => speech.captions[span.caption]!.text.slice(span.start, span.end)).join(" "),
    spans,
    component: quality.component,
    part: quality.part,
    position: quality.position,
    attribute: quality.attribute,
    value: quality.value,
    unit: null,
    stance: clause.stance,
    time: quality.ofToday ? "today" : clause.time,
    circumstance: quality.circumstance,
    zone: scene.zoneAt(quality.first),
    rule: quality.rule,
    repairs: [],
  };
}
