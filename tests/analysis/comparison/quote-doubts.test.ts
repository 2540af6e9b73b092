import { describe, expect, test } from "vitest";
import { analyse } from "../../../electron/analysis/analyse.ts";

/** What a walk says of a doubted figure, when the same figure was stated flatly a minute before. */
function doubtOf(doubt: string) {
  const texts = ["the odometer says 61,240 miles", "the hood is straight", "the roof is straight", doubt];
  const captions = texts.map((text, index) => ({ index, start: index * 30, end: index * 30 + 9, text }));
  return analyse({ format: "plain", captions, duration: 120 }, { stockSheet: null, recordedOn: null });
}

describe("a doubt is quoted with the words that doubt", () => {
  test.for([
    "now about the miles I think it's sixty one thousand two hundred and forty but I can't put my hand up to that",
    "as for the miles it's sixty one thousand two hundred and forty I believe but I couldn't swear to it",
  ])("%s", (doubt) => {
    const hedge = doubtOf(doubt).conflicts.find(({ kind }) => kind === "hedge");
    expect(hedge?.why).toContain(`("${doubt}").`);
  });

  test("a run of speech without an end is cut between words, and the figure stays", () => {
    const doubt = `we had a long look over the whole of it this morning with the coffee going and the radio on in the back of the shop and about the miles I think it's sixty one thousand two hundred and forty but I can't put my hand up to that so there you are and we can have a talk about it when you come down on the weekend with the family and have a look`;
    const hedge = doubtOf(doubt).conflicts.find(({ kind }) => kind === "hedge");
    const quote = /\("(.*)"\)\.$/.exec(hedge?.why ?? "")?.[1] ?? "";
    expect(quote).toContain("I think it's sixty one thousand two hundred and forty");
    expect(quote.length).toBeLessThan(170);
    expect(` ${doubt} `).toContain(` ${quote.replaceAll(/^… | …$/g, "")} `);
  });
});
