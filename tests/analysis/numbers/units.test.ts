import Qty from "js-quantities";
import { describe, expect, test } from "vitest";
import { isPlausibleRatio, isSoldRatio, ratioOfTeeth, toothPairs } from "../../../electron/analysis/vocabulary/axle-ratios.ts";
import { convert, imperialFactor, sameDimension } from "../../../electron/analysis/vocabulary/units.ts";
import { type UnitName, unitNames } from "../../../shared-types/index.ts";

/** The unit's name in js-quantities 1.8.0, an independent table. PS, cfm, gauge and money are not in it. */
const theirName: Partial<Record<UnitName, string>> = {
  in: "in",
  mm: "mm",
  µm: "um",
  mil: "mil",
  "cu in": "in3",
  L: "l",
  cc: "cm3",
  gal: "gal",
  pt: "pt",
  qt: "qt",
  "cu ft": "ft3",
  ft: "ft",
  hp: "hp",
  kW: "kW",
  kWh: "kWh",
  "lb-ft": "ft*lbf",
  N·m: "N*m",
  psi: "psi",
  bar: "bar",
  lb: "lb",
  kg: "kg",
  mi: "mi",
  km: "km",
  V: "V",
};

describe("against js-quantities", () => {
  for (const from of unitNames) {
    for (const to of unitNames) {
      const [theirFrom, theirTo] = [theirName[from], theirName[to]];
      if (from === to || !theirFrom || !theirTo || !sameDimension(from, to)) continue;
      test(`${from} to ${to}`, () => {
        const theirs = Qty(123.456, theirFrom).to(theirTo).scalar;
        // Its table rounds some factors to seven digits.
        expect(Math.abs(convert(123.456, from, to)! / theirs - 1)).toBeLessThan(2e-6);
      });
    }
  }
});

/** NIST SP 811, appendix B.8, and products of exact definitions (1 in = 25.4 mm, 1 mi = 1.609344 km, 1 cu in = 16.387064 mL). */
describe("published conversions", () => {
  test.for([
    [20, "in", "mm", 508, 9],
    [61250, "mi", "km", 98572.32, 2],
    [100000, "mi", "km", 160934.4, 1],
    [300, "hp", "kW", 223.71, 3],
    [400, "lb-ft", "N·m", 542.327, 3],
    [32, "psi", "bar", 2.20632, 5],
    [35, "psi", "bar", 2.41317, 4],
    [44, "psi", "bar", 3.03369, 4],
    [80, "psi", "bar", 5.51581, 4],
    [1, "PS", "kW", 0.73549875, 8],
    [350, "cu in", "L", 5.735472, 6],
    [151, "cu in", "L", 2.474447, 6],
    [302, "cu in", "L", 4.948893, 6],
    [305, "cu in", "L", 4.998055, 6],
    [2, "32nds", "mm", 1.5875, 6],
    [8, "32nds", "mm", 6.35, 6],
    [11, "32nds", "mm", 8.73125, 6],
    [12, "32nds", "mm", 9.525, 6],
  ] as const)("%s %s is %s %s", ([value, from, to, expected, places]) => {
    expect(convert(value, from, to)!).toBeCloseTo(expected, Math.min(places, 6));
  });
  test("units of different things do not convert", () => {
    expect(convert(1, "hp", "lb-ft")).toBeUndefined();
    expect(convert(1, "USD", "GBP")).toBeUndefined();
    expect(convert(1, "psi", "lb")).toBeUndefined();
  });
  test("an imperial gallon is 4.54609 L exactly, its pint an eighth (UK Weights and Measures Act 1985, from memory)", () => {
    expect(convert(imperialFactor.gal, "gal", "L")).toBeCloseTo(4.54609, 9);
    expect(convert(imperialFactor.pt, "pt", "L")).toBeCloseTo(0.56826125, 6);
    expect(convert(imperialFactor.qt, "qt", "L")).toBeCloseTo(1.1365225, 6);
  });
});

describe("axle ratios", () => {
  // Ring over pinion to two decimals: https://demandaam.com/technical-support/to-determine-gear-ratio and products of the rule.
  for (const { ring, pinion, quoted } of toothPairs) {
    test(`${ring}/${pinion} is ${quoted.toFixed(2)}`, () => {
      expect(ratioOfTeeth(ring, pinion)).toBeCloseTo(quoted, 2);
      expect(isSoldRatio(quoted)).toBe(true);
    });
  }
  test("teeth that make no axle", () => {
    expect(ratioOfTeeth(12, 37)).toBeUndefined();
    expect(ratioOfTeeth(37, 40)).toBeUndefined();
    expect(ratioOfTeeth(100, 10)).toBeUndefined();
    expect(isPlausibleRatio(0.7)).toBe(false);
    expect(isPlausibleRatio(39)).toBe(false);
  });
});
