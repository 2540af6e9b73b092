import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readNumbers } from "../../../electron/analysis/numbers/read-numbers.ts";
import { unitNames } from "../../../shared-types/index.ts";
import { speechOf } from "../../support/speech-of.ts";

/** Words that make numbers, and words that only look so. */
const spokenWords = fc.constantFrom(
  ..."one two three four five six seven eight nine ten eleven twelve thirteen fifteen nineteen twenty thirty fifty seventy ninety hundred thousand grand k oh o zero to too for ate won point and a an half quarter eighth eighths sixteenths second seconds thirty seconds R P T LT ZR G F D over by x on the in of week April '69 15s 60R15 235/60R15 31x10.50R15 4.11 $5 £9 % 390 2055 12 1 8 dozen couple pair between or gears miles dollars inch inches pounds psi volts mm cc liter horse double constructor __proto__ toString VIN alpha as boy date code".split(
    " ",
  ),
);
const spokenText = fc.array(spokenWords, { maxLength: 40 }).map((words) => words.join(" "));
const anyText = fc.oneof(fc.string({ maxLength: 200 }), fc.string({ unit: "binary", maxLength: 200 }), spokenText);

describe("any text", () => {
  test("is read without a crash into numbers that stand in order and within the speech", () => {
    fc.assert(
      fc.property(fc.array(anyText, { minLength: 1, maxLength: 4 }), (captions) => {
        const speech = speechOf(captions);
        const numbers = readNumbers(speech);
        let reached = 0;
        for (const [position, number] of numbers.entries()) {
          expect(number.index).toBe(position);
          expect(number.first).toBeGreaterThanOrEqual(Math.max(0, reached - 1));
          expect(number.end).toBeGreaterThan(number.first);
          expect(number.end).toBeLessThanOrEqual(speech.tokens.length);
          reached = number.end;
          expect(number.readings.length).toBeGreaterThan(0);
          expect(number.broken).toBe(number.readings[0]!.repaired);
          for (const [place, reading] of number.readings.entries()) {
            expect(reading.likelihood).toBeGreaterThanOrEqual(0);
            expect(reading.likelihood).toBeLessThanOrEqual(1);
            if (place > 0) expect(reading.likelihood).toBeLessThanOrEqual(number.readings[place - 1]!.likelihood);
            if (typeof reading.value === "number") expect(Number.isFinite(reading.value)).toBe(true);
            else expect(reading.value).not.toBe("");
            if (reading.unit !== null) expect(unitNames).toContain(reading.unit);
          }
        }
      }),
      { numRuns: 1500, seed: 4 },
    );
  });

  test("is read the same way twice, and survives JSON", () => {
    fc.assert(
      fc.property(spokenText, (text) => {
        const first = readNumbers(speechOf(text));
        const second = readNumbers(speechOf(text));
        expect(second).toEqual(first);
        expect(JSON.parse(JSON.stringify(first))).toEqual(first);
      }),
      { numRuns: 400, seed: 5 },
    );
  });

  test("without a digit, a number word or a part word gives no numbers", () => {
    const quiet = fc.constantFrom(
      ..."the car runs great and it looks good from here to there for you too oh man come on over see that shine right here in the sun".split(
        " ",
      ),
    );
    fc.assert(
      fc.property(fc.array(quiet, { maxLength: 60 }), (words) => {
        expect(readNumbers(speechOf(words.join(" ")))).toEqual([]);
      }),
      { numRuns: 400, seed: 6 },
    );
  });
});

test("time grows about as the text does", () => {
  const paragraph =
    "the rears are to 35 60 15s and the fronts two fifteen seventies fifteens it has 58 4 on the clock we are asking eighteen five for it and the gears are four eleven so it is a nice car all around with no rust at all ";
  const textOf = (times: number) => Array.from({ length: times }, () => paragraph);
  const [small, large] = [speechOf(textOf(100)), speechOf(textOf(1000))];
  const secondsFor = (speech: typeof small) => {
    const fastest = [1, 2, 3].map(() => {
      const start = performance.now();
      readNumbers(speech);
      return performance.now() - start;
    });
    return Math.min(...fastest) / 1000;
  };
  readNumbers(small);
  const [short, long] = [secondsFor(small), secondsFor(large)];
  // Ten times the text: twice the proportional time is allowed for a noisy machine, a quadratic pass would need a hundred times.
  expect(long / short).toBeLessThan(25);
});

test.for([
  ["digits", "1 2 0 4 "],
  ["doubles", "double oh "],
  ["tens and ones", "two thirty five "],
  ["a point after each", "one point two "],
  ["letters and digits", "one G four A "],
  ["homophones", "to for oh "],
] as const)("a run of 20,000 words of %s takes no more than a few seconds", ([, words]) => {
  const speech = speechOf(Array.from({ length: 400 }, () => words.repeat(Math.ceil(50 / words.trim().split(" ").length))));
  const start = performance.now();
  readNumbers(speech);
  expect(performance.now() - start).toBeLessThan(5000);
});
