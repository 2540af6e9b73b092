import { expect, test } from "vitest";
import { PhraseBook } from "../../../electron/analysis/claims/framing/phrases.ts";
import { spokenUnits } from "../../../electron/analysis/claims/framing/spoken-units.ts";
import { readSign } from "../../../electron/analysis/claims/qualities/clause-sign.ts";
import { matchSigns, type SignPhrase, signPhrases } from "../../../electron/analysis/claims/qualities/match-signs.ts";
import type { QualityRule } from "../../../electron/analysis/claims/qualities/quality-rule.ts";
import { speechOf } from "../framing/speech-of.ts";

/** The words over which the sign stretches, for each time it is found. */
function found(sign: string, says: string, denial: QualityRule["denial"] = "drops"): string[] {
  const rule: QualityRule = {
    name: "drum, for a test",
    attribute: "type",
    value: "drum",
    phrases: [],
    signs: [readSign(sign)],
    about: [{ component: "brakes", part: null }],
    denial,
    example: { says: "", gives: { component: "brakes", value: "drum" } },
    quiet: [],
  };
  const speech = speechOf(says);
  const units = spokenUnits(speech);
  const book = new PhraseBook<SignPhrase>(signPhrases(rule));
  return matchSigns(units, book.find(units)).map(({ firstUnit, endUnit, phrase }) => {
    const words = units
      .slice(firstUnit, endUnit)
      .map(({ word }) => word)
      .join(" ");
    const { denied } = phrase.meaning;
    return denied === undefined ? words : `${words} (denied by "${units[denied]!.word}")`;
  });
}

test("words of a sign may stand in any order, in one sentence", () => {
  expect(found("shoes + lining/adjuster", "New shoes, good lining.")).toEqual(["shoes good lining"]);
  expect(found("shoes + lining/adjuster", "The adjuster works the shoes.")).toEqual(["adjuster works the shoes"]);
  expect(found("shoes + lining/adjuster", "I have new shoes. The lining is silk.")).toEqual([]);
});

test("a word that must not stand there silences the sign, wherever in the sentence it stands", () => {
  expect(found("shoes + lining - horse/feet", "The horse has shoes with a lining.")).toEqual([]);
  expect(found("shoes - horse/feet", "There's my feet in new shoes. The shoes are bonded.")).toEqual(["shoes"]);
});

test("one word does not stand for two phrases of a sign", () => {
  expect(found("shoes + shoes/lining", "Only shoes.")).toEqual([]);
});

test("a denied word gives no sign, but a denial may be of the sign itself", () => {
  expect(found("shoes + lining", "Shoes but no lining.")).toEqual([]);
  expect(found("disc/discs + no/n't", "There's no disc on this one.")).toEqual(["no disc"]);
});

test("where a denial turns the claim, a denied word is told with the sign", () => {
  expect(found("brakes + pull", "The brakes don't pull.", "turns")).toEqual(["brakes do n't pull (denied by \"n't\")"]);
  expect(found("brakes + pull", "The brakes pull.", "turns")).toEqual(["brakes pull"]);
});

test("a sign with an empty phrase is refused", () => {
  expect(() => readSign("shoes +  - horse")).toThrow("empty phrase");
});
