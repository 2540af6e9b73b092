import { createRequire } from "node:module";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readNumbers } from "../../../electron/analysis/numbers/read-numbers.ts";
import { inFull, pairInWords, plural } from "../../support/speak-numbers.ts";
import { speechOf } from "../../support/speech-of.ts";

/**
 * npm @microsoft/recognizers-text-number 1.3.1, general English, as a second opinion where plain grammar decides: numbers said in full,
 * decimals, fractions. It knows no shorthand ("two fifty" gives it 2 and 50), so shorthand is not asked of it. CommonJS; its types need Node's module resolution.
 */
const { recognizeNumber } = createRequire(import.meta.url)("@microsoft/recognizers-text-number") as {
  recognizeNumber: (text: string, culture: string) => { text: string; resolution: { value: string } }[];
};

const theirs = (text: string) => recognizeNumber(text, "en-us").map((found) => Number(found.resolution.value));
const ours = (text: string) => readNumbers(speechOf(`it has ${text}`)).map((number) => number.readings.map((reading) => reading.value));

/** Both read one number and it is the same; ours may rank a model year or a tire part first, so it must be among the readings. */
function agrees(text: string): void {
  const [value, ...more] = theirs(text);
  const [readings, ...moreReadings] = ours(text);
  expect({ text, more, moreReadings }).toEqual({ text, more: [], moreReadings: [] });
  expect(readings, text).toContain(value);
}

describe("agrees with general English", () => {
  test("on whole numbers said in full", () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 999_999 }), fc.boolean(), (value, and) => agrees(inFull(value, and))),
      { numRuns: 1500, seed: 21 },
    );
  });
  test("on whole numbers in figures, with and without commas", () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 999_999 }), fc.boolean(), (value, comma) =>
        agrees(comma ? value.toLocaleString("en-US") : String(value)),
      ),
      { numRuns: 500, seed: 22 },
    );
  });
  test("on decimals said with their point", () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 99 }), fc.integer({ min: 1, max: 9 }), (whole, tenth) =>
        agrees(`${pairInWords(whole)} point ${pairInWords(tenth)}`),
      ),
      { numRuns: 300, seed: 23 },
    );
  });
  test("on fractions of an inch", () => {
    for (const [top, bottom] of [
      [3, "eighth"],
      [5, "eighth"],
      [7, "eighth"],
      [3, "sixteenth"],
      [5, "sixteenth"],
      [9, "sixteenth"],
      [11, "sixteenth"],
      [13, "sixteenth"],
      [15, "sixteenth"],
    ] as const)
      agrees(`${pairInWords(top)} ${plural(bottom)}`);
  });
  test("on mixed numbers", () => {
    for (let whole = 2; whole < 40; whole += 1) agrees(`${pairInWords(whole)} and a half`);
  });
});

/**
 * The library's own published cases (github.com/microsoft/Recognizers-Text, Specs/Number/English/NumberModel.json), those that can be said of a
 * vehicle: left out are signs, powers of ten, billions and more, internet addresses, fractions finer or cruder than a ruler's, a bare "a half"
 * (no figure of a vehicle until a unit follows) and "322 hundred", which nobody says.
 */
const publishedCases = [
  ["192.", 192],
  [".08", 0.08],
  ["4.800", 4.8],
  ["9.2321312", 9.2321312],
  ["sixteen", 16],
  ["one hundred and sixteen", 116],
  ["one hundred and six", 106],
  ["one hundred and sixty-one", 161],
  ["a dozen", 12],
  ["half a  dozen", 6],
  ["three", 3],
  ["1,234,567", 1_234_567],
  ["10k", 10_000],
  ["2.33 k", 2330],
  ["2 million", 2_000_000],
  ["fifty   two", 52],
  ["fifty-two", 52],
  ["seventy", 70],
  ["Three hundred  and  thirty one", 331],
  ["two hundred and two thousand", 202_000],
  ["two  thousand  and  two hundred", 2200],
  ["two hundred point zero three", 200.03],
  ["two hundred point seventy-one", 200.71],
  ["2  1/4", 2.25],
  ["3/4", 0.75],
  ["one eighth", 0.125],
  ["five eighths", 0.625],
  ["three quarters", 0.75],
  ["one and a half", 1.5],
  ["one and a fourth", 1.25],
  ["five and a quarter", 5.25],
] as const;

describe("agrees with the library's own published cases", () => {
  test.for(publishedCases)("%s is %d", ([text, value]) => {
    expect(theirs(text)).toEqual([value]);
    expect(ours(text)).toEqual([expect.arrayContaining([value])]);
  });
});

test("differs where the trade reads on: shorthand, lost points, tread depth", () => {
  expect(theirs("two fifty")).toEqual([2, 50]);
  expect(ours("two fifty")[0]).toContain(250);
  expect(theirs("four eleven")).toEqual([4, 11]);
  expect(ours("four eleven gears")[0]![0]).toBe(4.11);
});
