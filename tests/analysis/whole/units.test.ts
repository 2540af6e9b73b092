import { describe, expect, test } from "vitest";
import type { Transcript } from "../../../shared-types/index.ts";
import { analysed } from "./dev-walks.ts";

/** One figure and another that denies it, each in every unit that people say it in (1 mi = 1.609344 km, 1 in = 25.4 mm, NIST SP 811 B.8). */
const figures = [
  {
    what: "mileage",
    said: "The odometer says _.",
    one: ["61,250 miles", "98,572 kilometers"],
    other: ["75,000 miles", "120,701 kilometers"],
  },
  {
    what: "power",
    said: "The engine makes _.",
    one: ["300 horsepower", "224 kilowatts", "304 PS"],
    other: ["240 horsepower", "179 kilowatts"],
  },
  {
    what: "torque",
    said: "It makes _ of torque.",
    one: ["400 pound feet", "542 newton meters"],
    other: ["310 pound feet", "420 newton meters"],
  },
  {
    what: "displacement",
    said: "It has the _ engine.",
    one: ["350 cubic inch", "5.7 liter", "5735 cc"],
    other: ["427 cubic inch", "7.0 liter", "6997 cc"],
  },
  { what: "pressure", said: "The tires are at _.", one: ["32 psi", "2.2 bar"], other: ["44 psi", "3.0 bar"] },
  { what: "tread", said: "The front tires have _ of tread.", one: ["8/32", "6.4 millimeters"], other: ["4/32", "3.2 millimeters"] },
  { what: "wheel", said: "The wheels are _ all the way around.", one: ["15 inch", "381 millimeter"], other: ["17 inch", "432 millimeter"] },
  { what: "tank", said: "The fuel tank holds _.", one: ["18 gallons", "68 liters"], other: ["26 gallons", "98 liters"] },
  { what: "paint", said: "The paint on the driver's door is _.", one: ["4.6 mils", "117 microns"], other: ["8.2 mils", "208 microns"] },
] as const;

const between = ["The glove box closes like it should.", "Let me catch my breath.", "Thank you all for watching."];

function conflictsBetween(first: string, second: string): number {
  const texts = [first, ...between, second];
  const captions = texts.map((text, index) => ({ index, start: index * 20, end: index * 20 + 20, text }));
  return analysed({ format: "plain", captions, duration: texts.length * 20 } satisfies Transcript).conflicts.length;
}

describe.for([...figures])("$what", ({ said, one, other }) => {
  const pairs = (left: readonly string[], right: readonly string[]) => left.flatMap((a) => right.map((b) => [a, b] as const));
  const sentence = (figure: string) => said.replace("_", figure);

  test.for(pairs(one, other))("%s against %s is one conflict, whichever comes first", ([a, b]) => {
    expect(conflictsBetween(sentence(a), sentence(b))).toBe(1);
    expect(conflictsBetween(sentence(b), sentence(a))).toBe(1);
  });

  test.for([...pairs(one, one), ...pairs(other, other)])("%s and %s are the same", ([a, b]) => {
    expect(conflictsBetween(sentence(a), sentence(b))).toBe(0);
  });
});
