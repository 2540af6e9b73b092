import { expect, test } from "vitest";
import { cutPieces } from "../../../electron/analysis/numbers/cut-pieces.ts";
import { foldCardinals } from "../../../electron/analysis/numbers/fold-cardinals.ts";
import { matchRules } from "../../../electron/analysis/numbers/match-rules.ts";
import { lineOf } from "../../../electron/analysis/numbers/pieces.ts";
import { readNumbers } from "../../../electron/analysis/numbers/read-numbers.ts";
import { numberRules } from "../../../electron/analysis/numbers/rules/index.ts";
import { speechOf } from "../../support/speech-of.ts";

test("rule names are unique, so that a reading names one rule", () => {
  const names = numberRules.map((rule) => rule.name);
  expect(new Set(names).size).toBe(names.length);
});

for (const rule of numberRules) {
  test(`${rule.name} reads its own example: ${rule.example.heard}`, () => {
    const speech = speechOf(rule.example.heard);
    const line = lineOf(foldCardinals(cutPieces(speech.tokens, speech.captions)), speech.tokens);
    const drafts = matchRules(line).flatMap((candidate) => candidate.drafts.filter((draft) => draft.rule === rule.name));
    expect(drafts.map((draft) => draft.value)).toContain(rule.example.meant);
    // And it survives the weighing: someone reading the speech finds the value among the readings.
    const values = readNumbers(speech).flatMap((number) => number.readings.map((reading) => reading.value));
    expect(values).toContain(rule.example.meant);
  });
}
