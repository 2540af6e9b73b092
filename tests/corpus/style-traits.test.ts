import { expect, test } from "vitest";
import type { CaseScore } from "./scorer.ts";
import { scoreByTrait, traitLine } from "./style-traits.ts";

const none: CaseScore = {
  id: "x",
  style: "",
  seconds: 100,
  zoneSecondsRight: 1,
  windowDiff: 0,
  measures: 0,
  missedMeasures: [],
  measuresInFull: 0,
  predictedMeasures: 0,
  predictedMeasuresRight: 0,
  conflicts: 0,
  conflictsFound: 0,
  missedConflicts: [],
  shownConflicts: 0,
  falseConflicts: [],
  lookAlikes: 0,
  lookAlikesFlagged: [],
  repairs: 0,
  missedRepairs: [],
  unreliable: 0,
  unreliableFound: 0,
  unreliableShown: 0,
  byKind: {},
};

test("cases are gathered by every trait their style names", () => {
  const scores = scoreByTrait([
    { ...none, style: "british-hurried-unpunctuated", conflicts: 4, conflictsFound: 1, shownConflicts: 2, falseConflicts: ["one"] },
    { ...none, style: "british-dry-punctuated", conflicts: 4, conflictsFound: 4, shownConflicts: 4 },
  ]);
  const of = (trait: string) => scores.find((score) => score.trait === trait);
  expect(of("British")).toMatchObject({ cases: 2, conflictRecall: 0.625, conflictPrecision: 0.833 });
  expect(of("hurried")).toMatchObject({ cases: 1, conflictRecall: 0.25, conflictPrecision: 0.5 });
  expect(of("punctuated")).toMatchObject({ cases: 1, conflictRecall: 1 });
  expect(of("unpunctuated")).toMatchObject({ cases: 1, conflictRecall: 0.25 });
  expect(of("American")).toBeUndefined();
  expect(traitLine(of("hurried")!)).toBe(
    "hurried (1): conflicts 25 % found, 50 % of those shown real, measures in full 100 %, zones 100 %, repairs 100 %",
  );
});
