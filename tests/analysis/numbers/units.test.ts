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
    [1, "hp", "kW", 0.7456998715822702, 6],
    [1, "lb-ft", "N·m", 1.355817948331, 6],
    [1, "psi", "bar", 0.06894757, 6],
    [2, "32nds", "mm", 1.5875, 6],
    [3, "32nds", "mm", 2.38125, 6],
    [4, "32nds", "mm", 3.175, 6],
    [10, "32nds", "mm", 7.9375, 6],
    [1.6, "mm", "32nds", 2.016, 3],
    [8, "32nds", "mm", 6.35, 6],
    [11, "32nds", "mm", 8.73125, 6],
    [12, "32nds", "mm", 9.525, 6],
  ] as const)("%s %s is %s %s", ([value, from, to, expected, places]) => {
    expect(convert(value, from, to)!).toBeCloseTo(expected, Math.min(places, 6));
  });
  // Exact product cu in × 0.016387064 (2.54 cm cubed).
  test.for([
    [151, 2.474447],
    [200, 3.277413],
    [225, 3.687089],
    [231, 3.785412],
    [250, 4.096766],
    [283, 4.637539],
    [289, 4.735861],
    [302, 4.948893],
    [305, 4.998055],
    [318, 5.211086],
    [327, 5.35857],
    [340, 5.571602],
    [350, 5.735472],
    [351, 5.751859],
    [360, 5.899343],
    [383, 6.276246],
    [390, 6.390955],
    [396, 6.489277],
    [400, 6.554826],
    [426, 6.980889],
    [427, 6.997276],
    [428, 7.013663],
    [429, 7.03005],
    [440, 7.210308],
    [454, 7.439727],
    [455, 7.456114],
    [460, 7.538049],
    [500, 8.193532],
  ] as const)("%d cu in is %d L", ([cubicInches, litres]) => {
    expect(Math.abs(convert(cubicInches, "cu in", "L")! - litres)).toBeLessThanOrEqual(0.0000005);
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
