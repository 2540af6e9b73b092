import { describe, expect, test } from "vitest";
import { readNumbers } from "../../../electron/analysis/numbers/read-numbers.ts";
import { speechOf } from "../../support/speech-of.ts";

/** Words with several meanings (published lists of spoken forms and common practice): every meaning stays a candidate, whichever comes first. */
const rows: readonly (readonly [heard: string, meanings: readonly (string | number)[]])[] = [
  ["three fifty", [350, 3.5]],
  ["four ten", [410, 4.1]],
  ["four eleven", [411, 4.11]],
  ["three seventy three", [373, 3.73]],
  ["three fifty five", [355, 3.55]],
  ["five point seven", [5.7]],
  ["an engine of five seven", [5.7]],
  ["sixty one two fifty on the odometer", [61250]],
  ["two thirty-seconds", [2]],
  ["week twelve of nineteen", ["2019-W12"]],
  ["nineteen sixty nine", [1969]],
  ["it's a sixty nine", [1969, 69]],
  ["eighty seven thousand original", [87000]],
  ["twenty two nineteen", ["2219", 2219]],
  ["twenty twenty three on the dot code", [2023, "2023"]],
  ["eighteen nine", [18900, 18.9]],
  ["the axle says four oh nine", [4.09, 409]],
  ["date code four five four", ["454", 454]],
  // NVIDIA NeMo-text-processing test_cases_telephone, _cardinal and _electronic; there "two twenty x" is one word, here its number counts.
  ["seven nine nine", [799]],
  ["zero", [0]],
  ["two twenty x", [220]],
];

describe("ambiguous words keep their meanings", () => {
  test.for(rows)("%s", ([heard, meanings]) => {
    const numbers = readNumbers(speechOf(heard));
    const values = numbers.flatMap((number) => number.readings.map((reading) => reading.value));
    expect(values).toEqual(expect.arrayContaining([...meanings]));
  });
});

test("two thirty second is a depth of tread, not half past two", () => {
  const [number, ...more] = readNumbers(speechOf("two thirty second"));
  expect(more).toEqual([]);
  expect(number!.readings[0]).toMatchObject({ value: 2, unit: "32nds" });
  expect(number!.readings.map((reading) => reading.value)).not.toContain(230);
});

// Recogniser pairs that sound alike: common practice.
describe("thirteen and thirty", () => {
  test.for([
    ["thirteen", 13, 30],
    ["thirty", 30, 13],
    ["fourteen", 14, 40],
    ["fifty", 50, 15],
    ["sixteen", 16, 60],
    ["seventy", 70, 17],
    ["eighteen", 18, 80],
    ["ninety", 90, 19],
  ] as const)("%s keeps its twin, far behind", ([word, said, twin]) => {
    const [number] = readNumbers(speechOf(`it has ${word} of them`));
    const likelihood = (value: number) => number!.readings.find((reading) => reading.value === value)?.likelihood ?? 0;
    expect(likelihood(twin)).toBeGreaterThan(0);
    expect(likelihood(said)).toBeGreaterThan(5 * likelihood(twin));
    expect(number!.broken).toBe(false);
  });
  test("figures and compound words have no twin", () => {
    for (const heard of ["it has 13 of them", "it has thirty five of them"]) {
      const [number] = readNumbers(speechOf(heard));
      expect(number!.readings.some((reading) => reading.likelihood < 0.06)).toBe(false);
    }
  });
});
