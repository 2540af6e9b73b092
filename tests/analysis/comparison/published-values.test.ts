import { describe, expect, test } from "vitest";
import { odometerExempt } from "../../../electron/analysis/comparison/standards/odometer-rules.ts";
import type { ClaimSketch } from "../../../electron/analysis/comparison/standards/rule.ts";
import { tireDatesOf } from "../../../electron/analysis/comparison/values/tire-dates.ts";
import { comparedSketches, named } from "./support/claims.ts";

const displacement = (value: number, unit: "cu in" | "L" | "cc"): ClaimSketch => ({
  component: "engine",
  attribute: "displacement",
  value,
  unit,
  quote: `${value} ${unit}`,
});

describe("displacement in two units", () => {
  // Exact product cu in × 0.016387064 rounded to 0.1 L (1 in = 25.4 mm exactly, NIST SP 811 Appendix B.8); 302 is marketed as 4.9 and 5.0.
  test.for([
    [151, 2.5],
    [200, 3.3],
    [225, 3.7],
    [231, 3.8],
    [250, 4.1],
    [283, 4.6],
    [289, 4.7],
    [302, 4.9],
    [302, 5.0],
    [305, 5.0],
    [318, 5.2],
    [327, 5.4],
    [327, 5.3],
    [340, 5.6],
    [350, 5.7],
    [351, 5.8],
    [360, 5.9],
    [383, 6.3],
    [390, 6.4],
    [396, 6.5],
    [400, 6.6],
    [426, 7.0],
    [427, 7.0],
    [428, 7.0],
    [429, 7.0],
    [440, 7.2],
    [454, 7.4],
    [455, 7.5],
    [460, 7.5],
    [500, 8.2],
  ] as const)("%d cu in is %d L", ([cubicInches, litres]) => {
    expect(comparedSketches([displacement(cubicInches, "cu in"), displacement(litres, "L")]).conflicts).toEqual([]);
  });

  // "350 against 5.0 L does not" agree; 178 cu in is 2.92 L.
  test.for([
    [350, 5.0],
    [178, 2.6],
    [302, 5.7],
    [454, 7.0],
  ] as const)("%d cu in is not %d L", ([cubicInches, litres]) => {
    const { conflicts } = comparedSketches([displacement(cubicInches, "cu in"), displacement(litres, "L")]);
    expect(named(conflicts)).toEqual(["standard engine displacement"]);
    expect(conflicts[0]!.standard?.working).toContain("0.016387064");
  });
});

describe("tire date codes", () => {
  test.for([
    // 49 CFR 574.5 as restated in a maker's manual, http://auto.manualsonline.com/manuals/mfg/dodge/2006_sprinter_cargo.html?p=197
    { code: "0301", week: 3, year: 2001 },
    // https://www.linhelps.com/content-840.html
    { code: "2501", week: 25, year: 2001 },
    // popularmechanics, "How old are your tires", DOT DA08 JM1R 3011
    { code: "3011", week: 30, year: 2011 },
    // https://collisionspecialiststacoma.com/auto-safety/tire-safety/
    { code: "4513", week: 45, year: 2013 },
    // https://legalclarity.org/dot-tire-date-regulations-what-laws-govern-tire-age
    { code: "3523", week: 35, year: 2023 },
    // https://maplefrp.com/Age-Limits-for-Tires--Can-Old-Tires-Still-Be-Sold-
    { code: "3623", week: 36, year: 2023 },
  ])("$code", ({ code, week, year }) => {
    expect(tireDatesOf(code)).toContainEqual({ year, yearDigit: year % 10, week, month: null });
  });

  test.for([
    // Sprinter manual page: week 3 of a year ending in 1 before 2000
    { code: "031", week: 3, yearDigit: 1 },
    // popularmechanics, DOT R5HG FHR 404
    { code: "404", week: 40, yearDigit: 4 },
    // https://www.linhelps.com/content-840.html
    { code: "317", week: 31, yearDigit: 7 },
  ])("$code is of a year before 2000", ({ code, week, yearDigit }) => {
    expect(tireDatesOf(code)).toEqual([{ year: null, yearDigit, week, month: null }]);
  });

  // Weeks 01 to 53 exist, derived from 49 CFR 574.5
  test.for(["5412", "0021"])("%s names no week", (code) => {
    expect(named(comparedSketches([{ component: "tire", attribute: "date", value: code }]).conflicts)).toEqual(["standard tire date code"]);
  });

  test("1250 heard in 2026 lies ahead", () => {
    const { conflicts } = comparedSketches([{ component: "tire", attribute: "date", value: "1250" }], "2026-03-01");
    expect(conflicts.map((conflict) => conflict.rule)).toEqual(["tire-date-after-recording"]);
  });

  test("2023 may be a week of 2023 or the year", () => {
    expect(tireDatesOf("2023")).toHaveLength(2);
    expect(
      comparedSketches([
        { component: "tire", attribute: "date", value: "2023" },
        { component: "tire", attribute: "date", value: "1423" },
      ]).conflicts,
    ).toEqual([]);
  });
});

describe("tread", () => {
  // 2/32 in = 1.5875 mm is at the common US minimum (49 CFR 393.75(c)) and below the UK's 1.6 mm; 3/32 is 2.38125 mm.
  test.for([
    { depth: 1, unit: "32nds", remarked: true },
    { depth: 2, unit: "32nds", remarked: true },
    { depth: 1.5, unit: "mm", remarked: true },
    { depth: 3, unit: "32nds", remarked: false },
    { depth: 8, unit: "32nds", remarked: false },
    { depth: 1.7, unit: "mm", remarked: false },
  ] as const)("$depth $unit", ({ depth, unit, remarked }) => {
    const { remarks, conflicts } = comparedSketches([{ component: "tire", attribute: "depth", value: depth, unit, position: "rear" }]);
    expect(remarks.some((remark) => remark.rule === "tread-below-limit" && remark.why.includes("local law decides"))).toBe(remarked);
    expect(conflicts).toEqual([]);
  });

  // 7/32 in is 5.55625 mm
  test("7/32 in and 5.5 mm are one depth", () => {
    const depth = { component: "tire", attribute: "depth", position: "driver-front" } as const;
    expect(
      comparedSketches([
        { ...depth, value: 7, unit: "32nds" },
        { ...depth, value: 5.5, unit: "mm" },
      ]).conflicts,
    ).toEqual([]);
  });
});

describe("VIN", () => {
  // 49 CFR 565.15 sample; a widely used worked example; public test suites. Sums recomputed in the numbers tests.
  test.for([
    { vin: "1G4AH59H45G118341", valid: true },
    { vin: "1M8GDM9AXKP042788", valid: true },
    { vin: "1HGCM82633A004352", valid: true },
    { vin: "1VWBH7A30DC104945", valid: true },
    { vin: "1HGCM82633A004353", valid: false },
    { vin: "1G4AH59H45G118331", valid: false },
    { vin: "1VWBH7A31DC104945", valid: false },
    { vin: "1M8GDM9A1KP042788", valid: false },
    { vin: "1M8GDM9AXPK042788", valid: false },
  ])("$vin", ({ vin, valid }) => {
    expect(named(comparedSketches([{ component: "vin", attribute: "type", value: vin }]).conflicts)).toEqual(
      valid ? [] : ["standard VIN check digit"],
    );
  });

  // Outside North America position 9 may hold anything (https://rdrr.io/cran/vindecodr/man/valid_check_digit.html)
  test("a failed check digit from elsewhere is a remark", () => {
    const { conflicts, remarks } = comparedSketches([{ component: "vin", attribute: "type", value: "WDBEA30D4HA391172" }]);
    expect(conflicts).toEqual([]);
    expect(remarks.map((remark) => remark.rule)).toEqual(["vin-check-digit"]);
  });

  // Before 1981 there was no common form (https://engineerfix.com/how-many-digits-are-in-a-vin-before-1981)
  test("a short serial number on an older car is normal", () => {
    const found = comparedSketches([
      { component: "vehicle", attribute: "year", value: 1967 },
      { component: "vin", attribute: "type", value: "7R01C100001" },
    ]);
    expect(found.conflicts).toEqual([]);
    expect(found.remarks).toEqual([]);
  });

  // Position 10: K is 1989 where position 7 is a digit (http://www.autocalculator.org/VIN/VIN-Year-CODE.aspx)
  test.for([
    { year: 1989, conflict: false },
    { year: 1991, conflict: true },
  ])("position 10 against a spoken $year", ({ year, conflict }) => {
    const { conflicts } = comparedSketches([
      { component: "vehicle", attribute: "year", value: year },
      { component: "vin", attribute: "type", value: "1M8GDM9AXKP042788" },
    ]);
    expect(named(conflicts)).toEqual(conflict ? ["standard model year against the VIN"] : []);
  });
});

describe("units", () => {
  // 61,250 mi = 98,572.32 km (1 mi = 1.609344 km); 300 hp = 223.710 kW; 400 lb-ft = 542.327 N·m; 20 in = 508 mm. 1 PS = 0.73549875 kW.
  test.for([
    { component: "odometer", attribute: "mileage", one: [61250, "mi"], other: [98572, "km"], wrong: [61250, "km"] },
    { component: "engine", attribute: "power", one: [300, "hp"], other: [224, "kW"], wrong: [300, "kW"] },
    { component: "engine", attribute: "power", one: [218, "PS"], other: [160, "kW"], wrong: [218, "kW"] },
    { component: "engine", attribute: "torque", one: [400, "lb-ft"], other: [542, "N·m"], wrong: [400, "N·m"] },
    { component: "wheel", attribute: "diameter", one: [20, "in"], other: [508, "mm"], wrong: [390, "mm"] },
    { component: "fuel-tank", attribute: "size", one: [85, "L"], other: [22.5, "gal"], wrong: [16, "gal"] },
  ] as const)("$attribute: $one is $other", ({ component, attribute, one, other, wrong }) => {
    const [first, same, unlike] = [one, other, wrong].map(
      ([value, unit]) => ({ component, attribute, value, unit, position: null }) satisfies ClaimSketch,
    );
    expect(comparedSketches([first!, same!]).conflicts).toEqual([]);
    expect(comparedSketches([first!, unlike!]).conflicts).toHaveLength(1);
  });
});

describe("odometer disclosure by age", () => {
  // 49 CFR 580.17(a) and its examples, https://law.lawstack.com/cfr/49/580.17/; the last four derived from it.
  test.for([
    { model: 2010, transfer: 2020, exempt: true },
    { model: 2011, transfer: 2031, exempt: true },
    { model: 2012, transfer: 2032, exempt: true },
    { model: 2011, transfer: 2030, exempt: false },
    { model: 1969, transfer: 2026, exempt: true },
    { model: 2010, transfer: 2026, exempt: true },
    { model: 2012, transfer: 2026, exempt: false },
  ])("$model in $transfer", ({ model, transfer, exempt }) => {
    expect(odometerExempt(model, transfer)).toBe(exempt);
  });
});

describe("axle ratios from tooth counts", () => {
  // Ring over pinion, quoted to two decimals: https://demandaam.com/technical-support/to-determine-gear-ratio,
  // https://www.angelfire.com/theforce/5ohcpa/cpa5ohtech004.htm, http://ck5.com/forums/threads/another-beginner-question.20625/; the rest derived.
  test.for([
    [41, 10, 4.1],
    [41, 12, 3.42],
    [40, 13, 3.08],
    [41, 11, 3.73],
    [37, 10, 3.7],
    [37, 9, 4.11],
    [39, 11, 3.55],
    [43, 14, 3.07],
    [45, 11, 4.09],
    [43, 13, 3.31],
    [36, 11, 3.27],
    [36, 13, 2.77],
    [41, 15, 2.73],
  ] as const)("%d over %d is %d", ([ring, pinion, quoted]) => {
    const counted = [
      { component: "final-drive", attribute: "count", part: "ring gear teeth", value: ring },
      { component: "final-drive", attribute: "count", part: "pinion teeth", value: pinion },
    ] as const;
    expect(comparedSketches([...counted, { component: "final-drive", attribute: "ratio", value: quoted }]).conflicts).toEqual([]);
    const wrong = comparedSketches([...counted, { component: "final-drive", attribute: "ratio", value: quoted + 0.3 }]);
    expect(named(wrong.conflicts)).toEqual(["standard axle ratio against tooth counts"]);
  });
});

describe("wheels", () => {
  // "20-inch wheels" with 275/60R18 is a contradiction: the last number of the size is the rim.
  test("20 in wheels cannot take 275/60R18", () => {
    const { conflicts } = comparedSketches([
      { component: "wheel", attribute: "diameter", value: 20, unit: "in", position: "all" },
      { component: "tire", attribute: "size", value: "275/60R18", position: "all" },
    ]);
    expect(named(conflicts)).toEqual(["standard wheel diameter against tire rim size"]);
  });

  // Half-inch commercial rims and metric rims exist (365, 390, 415 mm).
  test.for([
    { wheel: 16.5, unit: "in", size: "8.75-16.5" },
    { wheel: 22.5, unit: "in", size: "275/80R22.5" },
    { wheel: 390, unit: "mm", size: "220/55R390" },
    { wheel: 15, unit: "in", size: "31x10.50R15" },
    { wheel: 14, unit: "in", size: "G70-14" },
    { wheel: 15, unit: "in", size: "6.70-15" },
  ] as const)("$size fits $wheel $unit", ({ wheel, unit, size }) => {
    expect(
      comparedSketches([
        { component: "wheel", attribute: "diameter", value: wheel, unit, position: "all" },
        { component: "tire", attribute: "size", value: size, position: "all" },
      ]).conflicts,
    ).toEqual([]);
  });
});

describe("load index", () => {
  // Kilograms: https://bestdrive.no/dekk/hastighets-og_lasteindeks.html; pounds, from another publisher: http://www.barretire.com/Tires/tiresizes.htm
  test.for([
    [71, 761],
    [75, 853],
    [80, 992],
    [82, 1047],
    [84, 1102],
    [85, 1135],
    [88, 1235],
    [90, 1323],
    [91, 1356],
    [92, 1389],
    [94, 1477],
    [95, 1521],
    [98, 1653],
    [100, 1764],
    [104, 1984],
    [108, 2205],
  ] as const)("%d carries %d lb", ([index, pounds]) => {
    const said = (load: number): string[] =>
      named(
        comparedSketches([
          { component: "tire", attribute: "count", part: "load index", value: index },
          { component: "tire", attribute: "size", value: load, unit: "lb" },
        ]).conflicts,
      );
    expect(said(pounds)).toEqual([]);
    expect(said(Math.round(pounds * 1.2))).toEqual(["standard tire load index against load"]);
  });
});

describe("facts of the trade, common practice", () => {
  test.for<{ why: string; claims: readonly ClaimSketch[]; conflicts: readonly string[] }>([
    {
      why: "a 12-bolt axle counts bolts and is not a size",
      claims: [
        { component: "final-drive", attribute: "count", part: "cover bolts", value: 12 },
        { component: "final-drive", attribute: "diameter", part: "ring gear", value: 8.875, unit: "in" },
      ],
      conflicts: [],
    },
    {
      why: "two ring gears of different diameters are two axles",
      claims: [
        { component: "final-drive", attribute: "diameter", part: "ring gear", value: 8.5, unit: "in" },
        { component: "final-drive", attribute: "diameter", part: "ring gear", value: 8.875, unit: "in" },
      ],
      conflicts: ["measure ring gear diameter"],
    },
    {
      why: "power brakes says nothing about disc or drum",
      claims: [
        { component: "brakes", attribute: "type", value: "power", position: "front" },
        { component: "brakes", attribute: "type", value: "drum", position: "front" },
      ],
      conflicts: [],
    },
    {
      why: "a disc and drum car is not one with drums all around",
      claims: [
        { component: "brakes", attribute: "type", value: "disc", position: "front" },
        { component: "brakes", attribute: "type", value: "drum", position: "rear" },
        { component: "brakes", attribute: "type", value: "drum", position: "all" },
      ],
      conflicts: ["type front brakes"],
    },
    {
      why: "3.70 and 3.73 front and rear are usable together (http://ck5.com/forums/threads/another-beginner-question.20625/)",
      claims: [
        { component: "final-drive", attribute: "ratio", value: 3.7, position: "front" },
        { component: "final-drive", attribute: "ratio", value: 3.73, position: "rear" },
      ],
      conflicts: [],
    },
    {
      why: "four eleven is not four ten",
      claims: [
        { component: "final-drive", attribute: "ratio", value: 4.11 },
        { component: "final-drive", attribute: "ratio", value: 4.1 },
      ],
      conflicts: ["measure axle ratio"],
    },
    {
      why: "numbers matching claims the original engine; a later block of the same displacement is not original",
      claims: [
        { component: "vehicle", attribute: "year", value: 1967 },
        { component: "engine", attribute: "originality", value: "original", quote: "numbers matching" },
        { component: "engine", attribute: "year", value: 1970 },
        { component: "engine", attribute: "displacement", value: 327, unit: "cu in", quote: "327 cubic inches" },
      ],
      conflicts: ["originality engine year against its being original"],
    },
  ])("$why", ({ claims, conflicts }) => {
    expect(named(comparedSketches(claims).conflicts)).toEqual(conflicts);
  });
});
