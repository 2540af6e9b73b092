import { describe, expect, test } from "vitest";
import type { Reading, Speech, SpokenNumber } from "../../../electron/analysis/model.ts";
import { readNumbers } from "../../../electron/analysis/numbers/read-numbers.ts";
import { hearSpeech } from "../../../electron/analysis/transcript/hear-speech.ts";
import { tokensOfCaption } from "../../../electron/analysis/transcript/tokenize.ts";
import { readCases } from "../../corpus/read-cases.ts";
import { type RecogniserStyle, restyle } from "../../support/restyle.ts";

/**
 * The annotated walkarounds under fixtures/corpus/dev, as they are and as other recognisers would write them: is the value a careful
 * person noted among the readings, is it the first, and is every annotated repair made? Floors only rise.
 */
const floors: Readonly<Record<RecogniserStyle, { readonly among: number; readonly first: number; readonly repairs: number }>> = {
  "as written": { among: 0.995, first: 0.99, repairs: 1 },
  "no punctuation": { among: 0.995, first: 0.99, repairs: 1 },
  "seven words a caption": { among: 0.995, first: 0.99, repairs: 1 },
  "no punctuation, six words a caption": { among: 0.995, first: 0.99, repairs: 1 },
  "no punctuation, four words a caption": { among: 0.995, first: 0.99, repairs: 0.97 },
};

const cases = readCases(new URL("../../../fixtures/corpus/dev", import.meta.url).pathname);

/** Values that follow from more than the quoted words: arithmetic, a bare month with its year said elsewhere, articles. */
const beyondTheQuote = new Set([
  "dev01 22 he's who Mr Pruitt bought it from",
  "dev02 37 five dollars under",
  "dev03 19 door mirror on this side only",
  "dev03 34 built in the November",
  "dev04 26 just a lap belt",
]);

const wordsOf = (text: string) => tokensOfCaption({ index: 0, start: 0, end: 1, text: text.toLowerCase() }).map((token) => token.word);

/** The numbers that share a token with the quoted words; undefined where the words are not there in a row. */
function numbersIn(speech: Speech, numbers: readonly SpokenNumber[], from: number, to: number, quote: string): SpokenNumber[] | undefined {
  const words = wordsOf(quote);
  for (let at = 0; at + words.length <= speech.tokens.length; at += 1) {
    const { caption } = speech.tokens[at]!;
    if (caption < from || caption >= to || !words.every((word, offset) => speech.tokens[at + offset]!.word === word)) continue;
    return numbers.filter((number) => number.first < at + words.length && number.end > at);
  }
  return undefined;
}

const plainValue = (value: string | number): string => {
  const text = String(value).replace(/[ ,]/g, "").toUpperCase();
  return Number.isNaN(Number(text)) ? text : String(Number(text));
};
const means = (reading: Reading, value: string | number) =>
  plainValue(reading.value) === plainValue(value) || (reading.parts ?? []).some((part) => plainValue(part) === plainValue(value));

function measure(style: RecogniserStyle) {
  const found = {
    claims: 0,
    repairs: 0,
    missed: [] as string[],
    later: [] as string[],
    unmended: [] as string[],
    lostQuotes: [] as string[],
  };
  for (const { gold, transcript } of cases) {
    const restyled = restyle(transcript, style);
    const speech = hearSpeech(restyled.transcript);
    const numbers = readNumbers(speech);
    const within = (caption: number, quote: string) =>
      numbersIn(speech, numbers, restyled.firstCaption[caption]!, restyled.firstCaption[caption + 1]!, quote);
    for (const claim of gold.claims) {
      if (typeof claim.value !== "number" && claim.attribute !== "size" && claim.attribute !== "date") continue;
      const name = `${gold.id} ${claim.i} ${claim.quote}`;
      if (beyondTheQuote.has(name)) continue;
      found.claims += 1;
      const numbersThere = within(claim.i, claim.quote);
      if (!numbersThere) found.lostQuotes.push(name);
      else if (!numbersThere.some((number) => number.readings.some((reading) => means(reading, claim.value))))
        found.missed.push(`${name}: ${claim.value}`);
      else if (!numbersThere.some((number) => means(number.readings[0]!, claim.value))) found.later.push(`${name}: ${claim.value}`);
    }
    for (const repair of gold.repairs) {
      found.repairs += 1;
      const numbersThere = within(repair.i, repair.heard) ?? [];
      if (!numbersThere.some((number) => number.broken && plainValue(number.readings[0]!.value) === plainValue(repair.meant)))
        found.unmended.push(`${gold.id} ${repair.i} ${repair.heard}: ${repair.meant}`);
    }
  }
  return found;
}

describe("the values of the annotated walkarounds are read", () => {
  test.for(Object.keys(floors) as RecogniserStyle[])("%s", { timeout: 30_000 }, (style) => {
    const found = measure(style);
    expect(found.claims).toBeGreaterThan(350);
    expect(found.repairs).toBeGreaterThan(40);
    expect(found.lostQuotes).toEqual([]);
    const share = (lost: number, of: number) => (of - lost) / of;
    const { among, first, repairs } = floors[style];
    expect(share(found.missed.length, found.claims), `not among the readings:\n${found.missed.join("\n")}`).toBeGreaterThanOrEqual(among);
    const notFirst = [...found.missed, ...found.later];
    expect(share(notFirst.length, found.claims), `not the first reading:\n${notFirst.join("\n")}`).toBeGreaterThanOrEqual(first);
    expect(share(found.unmended.length, found.repairs), `not repaired:\n${found.unmended.join("\n")}`).toBeGreaterThanOrEqual(repairs);
  });
});
