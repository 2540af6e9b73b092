import { PhraseBook, type PhraseHit } from "../framing/phrases.ts";
import type { SpokenUnit } from "../framing/spoken-units.ts";
import { matchSigns, type SignPhrase, signPhrases } from "./match-signs.ts";
import type { QualityRule } from "./quality-rule.ts";
import { qualityRules } from "./quality-rules.ts";

export interface RulePhrase {
  readonly rule: QualityRule;
  readonly role: "says" | "cancels" | "beside";
  /** Unit of a denial among the words themselves, where they stand apart ("the brakes don't pull"). */
  readonly denied?: number;
}

const book = new PhraseBook<RulePhrase | SignPhrase>(
  qualityRules.flatMap((rule) => [
    ...signPhrases(rule),
    ...rule.phrases.map((text) => ({ text, meaning: { rule, role: "says" as const } })),
    ...(rule.unless ?? []).map((text) => ({ text, meaning: { rule, role: "cancels" as const } })),
    ...(rule.beside ?? []).map((text) => ({ text, meaning: { rule, role: "beside" as const } })),
  ]),
  { commas: "part-names" },
);

/** Words between a phrase and the phrase that must stand beside it. */
const besideReach = 26;

/** Every phrase of every rule in the speech, without those that a longer phrase of the rule cancels or that lack what must stand beside them. In order of place. */
export function matchRules(units: readonly SpokenUnit[]): PhraseHit<RulePhrase>[] {
  const found = book.find(units);
  const hits = [...found.filter(isRulePhrase), ...matchSigns(units, found)].sort((one, other) => one.firstUnit - other.firstUnit);
  const cancelled = unitsBy(hits, "cancels");
  const beside = unitsBy(hits, "beside");
  return hits.filter((hit) => {
    const { rule, role } = hit.phrase.meaning;
    if (role !== "says" || isCancelled(cancelled.get(rule), hit)) return false;
    return !rule.beside || standsBeside(beside.get(rule) ?? [], hit);
  });
}

function isRulePhrase(hit: PhraseHit<RulePhrase | SignPhrase>): hit is PhraseHit<RulePhrase> {
  return !("sign" in hit.phrase.meaning);
}

type UnitRanges = ReadonlyMap<QualityRule, readonly (readonly [number, number])[]>;

function unitsBy(hits: readonly PhraseHit<RulePhrase>[], role: RulePhrase["role"]): UnitRanges {
  const ranges = new Map<QualityRule, [number, number][]>();
  for (const { phrase, firstUnit, endUnit } of hits) {
    if (phrase.meaning.role !== role) continue;
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

function standsBeside(ranges: readonly (readonly [number, number])[], hit: PhraseHit<RulePhrase>): boolean {
  return ranges.some(([first, end]) => first < hit.endUnit + besideReach && end > hit.firstUnit - besideReach);
}
