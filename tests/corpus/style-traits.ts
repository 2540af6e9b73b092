import { type CaseScore, totalOf } from "./scorer.ts";

/** What a style's name may say of speaker and recogniser, and the words that say it. */
const traits = [
  ["American", /\bamerican\b|\bsouthern\b/],
  ["British", /\bbritish\b/],
  ["hurried", /\b(hurried|fast|brisk|terse)\b/],
  ["hedging", /\bhedging\b|\bshy\b/],
  ["rolling captions", /\brolling\b/],
  ["captions of three seconds", /\bthree-second\b|\bshort-captions\b/],
  ["recogniser's own JSON", /\bjson\b/],
  ["punctuated", /(?<!un)punctuated\b/],
  ["unpunctuated", /\bunpunctuated\b|\blower-case\b/],
] as const satisfies readonly (readonly [string, RegExp])[];

/** Figures of the cases that share a trait of style. */
export interface TraitScore {
  readonly trait: string;
  readonly cases: number;
  readonly conflictRecall: number;
  readonly conflictPrecision: number;
  readonly measuresInFull: number;
  readonly zoneSecondsRight: number;
  readonly repairsRecall: number;
}

/** The same cases gathered by each trait that their style names; a case counts under every trait it has. Shares are of sums. */
export function scoreByTrait(perCase: readonly CaseScore[]): TraitScore[] {
  return traits.flatMap(([trait, words]) => {
    const cases = perCase.filter(({ style }) => words.test(style));
    if (cases.length === 0) return [];
    const total = totalOf(cases);
    return [
      {
        trait,
        cases: cases.length,
        conflictRecall: total.conflict_recall,
        conflictPrecision: total.conflict_precision,
        measuresInFull: total.measures_in_full,
        zoneSecondsRight: total.zone_seconds_right,
        repairsRecall: total.repairs_recall,
      },
    ];
  });
}

/** One line for a trait, for people. */
export function traitLine(score: TraitScore): string {
  const percent = (share: number) => `${(share * 100).toFixed(0)} %`;
  return (
    `${score.trait} (${score.cases}): conflicts ${percent(score.conflictRecall)} found, ${percent(score.conflictPrecision)} of those shown real, ` +
    `measures in full ${percent(score.measuresInFull)}, zones ${percent(score.zoneSecondsRight)}, repairs ${percent(score.repairsRecall)}`
  );
}
