import { describe, expect, test } from "vitest";
import { frameSpeech } from "../../../electron/analysis/claims/framing/index.ts";
import { findMentions } from "../../../electron/analysis/claims/lexicon/find-mentions.ts";
import { type WordedRow, wordedSigns } from "../../../electron/analysis/claims/qualities/body-signs/worded-signs.ts";
import { findQualityClaims } from "../../../electron/analysis/claims/qualities/index.ts";
import { speechOf } from "../framing/speech-of.ts";

const row: WordedRow = {
  attribute: "condition",
  value: "flawed",
  component: "seats",
  topic: "seat/seats",
  signs: `
    & torn - cover | foam + showing
  `,
  never: "would | one day",
  says: "The seat's torn.",
};

describe("signs of words that stand together", () => {
  test("a line gives one sign for each alternative, with the topic where it is wanted and all that silences it", () => {
    expect(wordedSigns([row])[0]!.signs).toEqual([
      { together: ["torn", "seat/seats"], never: ["cover", "would", "one day"] },
      { together: ["foam", "showing"], never: ["would", "one day"] },
    ]);
  });
  test("a line that wants a topic needs one", () => {
    const { topic: _, ...bare } = row;
    expect(() => wordedSigns([bare])).toThrow(/wants a topic/);
  });
});

describe("what is inferred from words that stand together", () => {
  const materials = (says: string) => {
    const speech = speechOf(says);
    return findQualityClaims({
      speech,
      frames: frameSpeech(speech),
      mentions: findMentions(speech),
      zones: [{ zone: "cabin", start: 0, end: speech.duration }],
    })
      .filter(({ component, attribute }) => component === "dash" && attribute === "material")
      .map(({ value }) => value);
  };
  test("is kept where nothing plainer is said", () => {
    expect(materials("The varnish on the dash is cracked at the corners.")).toEqual(["wood"]);
  });
  test("gives way to a plain saying of the same thing in the sentence", () => {
    expect(materials("The dash is walnut and the veneer goes all across.")).toEqual(["walnut"]);
  });
});
