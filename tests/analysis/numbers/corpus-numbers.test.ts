import { expect, test } from "vitest";
import type { Reading, Speech, SpokenNumber } from "../../../electron/analysis/model.ts";
import { readNumbers } from "../../../electron/analysis/numbers/read-numbers.ts";
import { hearSpeech } from "../../../electron/analysis/transcript/hear-speech.ts";
import { type AnnotatedCase, readCases } from "../../corpus/read-cases.ts";

/**
 * The annotated walkarounds under fixtures/corpus/dev: is the value a careful person noted among the readings, and is it the first?
 * Floors only rise. Claims whose quote holds no number ("the car came with just a lap belt") cannot be read here and are left out.
 */
const floors = { among: 0.995, first: 0.98, repairs: 1 } as const;

const folder = new URL("../../../fixtures/corpus/dev", import.meta.url).pathname;

/** Values that follow from more than the quoted words: arithmetic, "this year", a bare month, articles. */
const beyondTheQuote = new Set([
  "dev01 22 he's who Mr Pruitt bought it from",
  "dev02 10 March of this year",
  "dev02 37 five dollars under",
  "dev03 19 door mirror on this side only",
  "dev03 34 built in the November",
  "dev04 26 just a lap belt",
  "dev04 41 Last oil change was March",
]);

function numbersIn(speech: Speech, numbers: readonly SpokenNumber[], caption: number, quote: string): SpokenNumber[] {
  const text = speech.captions[caption]!.text.toLowerCase();
  const start = text.indexOf(quote.toLowerCase());
  const end = start + quote.length;
  return numbers.filter((number) =>
    speech.tokens.slice(number.first, number.end).some((token) => token.caption === caption && token.start < end && token.end > start),
  );
}

const plainValue = (value: string | number): string => {
  const text = String(value).replace(/[ ,]/g, "").toUpperCase();
  return Number.isNaN(Number(text)) ? text : String(Number(text));
};
const means = (reading: Reading, value: string | number) =>
  plainValue(reading.value) === plainValue(value) || (reading.parts ?? []).some((part) => plainValue(part) === plainValue(value));

function measure(cases: readonly AnnotatedCase[]) {
  const missed: string[] = [];
  const later: string[] = [];
  const unmended: string[] = [];
  const counts = { claims: 0, repairs: 0 };
  for (const { gold, transcript } of cases) {
    const speech = hearSpeech(transcript);
    const numbers = readNumbers(speech);
    for (const claim of gold.claims) {
      if (typeof claim.value !== "number" && claim.attribute !== "size" && claim.attribute !== "date") continue;
      const name = `${gold.id} ${claim.i} ${claim.quote}`;
      if (beyondTheQuote.has(name)) continue;
      counts.claims += 1;
      const found = numbersIn(speech, numbers, claim.i, claim.quote);
      if (!found.some((number) => number.readings.some((reading) => means(reading, claim.value)))) missed.push(`${name}: ${claim.value}`);
      else if (!found.some((number) => means(number.readings[0]!, claim.value))) later.push(`${name}: ${claim.value}`);
    }
    for (const repair of gold.repairs) {
      counts.repairs += 1;
      const found = numbersIn(speech, numbers, repair.i, repair.heard);
      if (!found.some((number) => number.broken && plainValue(number.readings[0]!.value) === plainValue(repair.meant)))
        unmended.push(`${gold.id} ${repair.i} ${repair.heard}: ${repair.meant}`);
    }
  }
  return { counts, missed, later, unmended };
}

test("the values of the annotated walkarounds are read", () => {
  const { counts, missed, later, unmended } = measure(readCases(folder));
  expect(counts.claims).toBeGreaterThan(350);
  expect(counts.repairs).toBeGreaterThan(40);
  const share = (lost: number, of: number) => (of - lost) / of;
  expect(share(missed.length, counts.claims), `not among the readings:\n${missed.join("\n")}`).toBeGreaterThanOrEqual(floors.among);
  expect(
    share(missed.length + later.length, counts.claims),
    `not the first reading:\n${[...missed, ...later].join("\n")}`,
  ).toBeGreaterThanOrEqual(floors.first);
  expect(share(unmended.length, counts.repairs), `not repaired:\n${unmended.join("\n")}`).toBeGreaterThanOrEqual(floors.repairs);
});
