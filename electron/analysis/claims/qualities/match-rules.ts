import { PhraseBook, type PhraseHit } from "../framing/phrases.ts";
import type { SpokenUnit } from "../framing/spoken-units.ts";
import type { QualityRule } from "./quality-rule.ts";
import { qualityRules } from "./quality-rules.ts";

export interface RulePhrase {
  readonly rule: QualityRule;
  readonly cancels: boolean;
}

const book = new PhraseBook<RulePhrase>(
  qualityRules.flatMap((rule) => [
    ...rule.phrases.map((text) => ({ text, meaning: { rule, cancels: false } })),
    ...(rule.unless ?? []).map((text) => ({ text, meaning: { rule, cancels: true } })),
  ]),
  { commas: "part-names" },
);

/** Every phrase of every rule in the speech, without those that a longer phrase of the rule cancels. In order of place. */
export function matchRules(units: readonly SpokenUnit[]): PhraseHit<RulePhrase>[] {
  const hits = book.find(units);
  const cancelled = cancelledUnits(hits);
  return hits.filter((hit) => !hit.phrase.meaning.cancels && !isCancelled(cancelled.get(hit.phrase.meaning.rule), hit));
}

type Cancelled = ReadonlyMap<QualityRule, readonly (readonly [number, number])[]>;

function cancelledUnits(hits: readonly PhraseHit<RulePhrase>[]): Cancelled {
  const ranges = new Map<QualityRule, [number, number][]>();
  for (const { phrase, firstUnit, endUnit } of hits) {
    if (!phrase.meaning.cancels) continue;
    const list = ranges.get(phrase.meaning.rule) ?? [];
    list.push([firstUnit, endUnit]);
    ranges.set(phrase.meaning.rule, list);
  }
  return ranges;
}

/** Ranges are in order of their start and at most a phrase long: a binary search to the last one that may overlap. */
function isCancelled(ranges: readonly (readonly [number, number])[] | undefined, hit: PhraseHit<RulePhrase>): boolean {
  if (!ranges) return false;
  let low = 0;
  let high = ranges.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (ranges[middle]![0] < hit.endUnit) low = middle + 1;
    else high = middle;
  }
  for (let at = low - 1; at >= Math.max(0, low - 6); at--) if (ranges[at]![1] > hit.firstUnit) return true;
  return false;
}
