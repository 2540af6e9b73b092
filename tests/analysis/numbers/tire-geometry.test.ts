import { describe, expect, test } from "vitest";
import {
  overallDiameter,
  parseTireSize,
  revolutionsPerMile,
  sectionHeightMm,
} from "../../../electron/analysis/vocabulary/tire-geometry.ts";

/** Section height in mm, diameter in mm by arithmetic, diameter in inches as published at https://garagecalc.co/tires/tire-size-comparison-chart. */
const chart = [
  ["185/65R15", 120.25, 621.5, 24.5],
  ["195/65R15", 126.75, 634.5, 25.0],
  ["205/55R16", 112.75, 631.9, 24.9],
  ["205/60R16", 123.0, 652.4, 25.7],
  ["215/55R16", 118.25, 642.9, 25.3],
  ["215/55R17", 118.25, 668.3, 26.3],
  ["215/60R16", 129.0, 664.4, 26.2],
  ["225/45R17", 101.25, 634.3, 25.0],
  ["225/50R17", 112.5, 656.8, 25.9],
  ["225/55R17", 123.75, 679.3, 26.7],
  ["225/60R17", 135.0, 701.8, 27.6],
  ["225/65R17", 146.25, 724.3, 28.5],
  ["235/45R18", 105.75, 668.7, 26.3],
  ["235/55R18", 129.25, 715.7, 28.2],
  ["235/60R18", 141.0, 739.2, 29.1],
  ["245/45R18", 110.25, 677.7, 26.7],
  ["245/40R19", 98.0, 678.6, 26.7],
  ["245/45R19", 110.25, 703.1, 27.7],
  ["265/70R17", 185.5, 802.8, 31.6],
  ["285/70R17", 199.5, 830.8, 32.7],
] as const;

/** Inches, https://passionplans.com/b/how-to-read-tire-size/ . */
const secondChart = [
  ["175/70R13", 22.6],
  ["155/80R13", 22.8],
  ["165/80R13", 23.4],
  ["185/70R13", 23.2],
  ["185/60R13", 21.7],
  ["205/60R13", 22.7],
  ["225/50R13", 21.9],
  ["185/80R13", 24.7],
] as const;

describe("overall diameter", () => {
  for (const [text, heightMm, diameterMm, publishedInches] of chart) {
    test(`${text}: ${diameterMm} mm, ${publishedInches} in`, () => {
      const size = parseTireSize(text)!;
      if (size.form !== "metric") throw new Error(`${text} was read as ${size.form}`);
      expect(sectionHeightMm(size.widthMm, size.aspectPercent)).toBeCloseTo(heightMm, 6);
      const diameter = overallDiameter(size)!;
      expect(Math.abs(diameter.millimetres - diameterMm)).toBeLessThanOrEqual(0.051);
      expect(Math.abs(diameter.inches - publishedInches)).toBeLessThanOrEqual(0.06);
      expect(diameter.estimate).toBe(false);
    });
  }
  for (const [text, publishedInches] of secondChart) {
    test(`${text}: ${publishedInches} in`, () => {
      expect(Math.abs(overallDiameter(parseTireSize(text)!)!.inches - publishedInches)).toBeLessThanOrEqual(0.06);
    });
  }
  test("245/55R18 is 726.7 mm, 28.61 in (http://www.barretire.com/Tires/tiresizes.htm prints 28.63)", () => {
    const diameter = overallDiameter(parseTireSize("245/55R18")!)!;
    expect(diameter.millimetres).toBeCloseTo(726.7, 1);
    expect(diameter.inches).toBeCloseTo(28.61, 2);
  });
  // https://www.2ndhandtyresales.com.au/blog/1425/ prints 749 and 647, with the rim cut down to whole millimetres.
  test.for([
    ["245/70R16", 749.4],
    ["205/65R15", 647.5],
  ] as const)("%s is %d mm", ([text, millimetres]) => {
    expect(overallDiameter(parseTireSize(text)!)!.millimetres).toBeCloseTo(millimetres, 6);
  });
  // Rounded as the standards bodies do (section height to a whole mm, whole-mm rims; from memory): plain arithmetic stays within 2 mm.
  test.for([
    ["195/65R15", 635],
    ["185/65R15", 621],
    ["205/55R16", 632],
    ["215/55R16", 642],
    ["175/70R13", 576],
    ["225/45R17", 634],
  ] as const)("%s is about %d mm in the standards' tables", ([text, millimetres]) => {
    expect(Math.abs(overallDiameter(parseTireSize(text)!)!.millimetres - millimetres)).toBeLessThanOrEqual(2);
  });
  test("265/70R16 is 30.606 in (http://www.cdmfabrication.com/135.html)", () => {
    expect(overallDiameter(parseTireSize("265/70R16")!)!.inches).toBeCloseTo(30.606, 3);
  });
  test("P185/75R14 replaces 6.95-14: 25.0 in against 25.3 published; the numeric size is an estimate (tirerack techid=45)", () => {
    expect(overallDiameter(parseTireSize("P185/75R14")!)!.inches).toBeCloseTo(24.925, 2);
    const numeric = overallDiameter(parseTireSize("6.95-14")!)!;
    expect(numeric.estimate).toBe(true);
    expect(Math.abs(numeric.inches - 25.3)).toBeLessThan(0.5);
  });
  test("a flotation size names its diameter; a letter size has none", () => {
    expect(overallDiameter(parseTireSize("31x10.50R15")!)!.inches).toBe(31);
    expect(overallDiameter(parseTireSize("G70-14")!)).toBeUndefined();
  });
  test("a metric rim is in millimetres: 220/55R390 is 632 mm", () => {
    expect(overallDiameter(parseTireSize("220/55R390")!)!.millimetres).toBeCloseTo(632, 6);
  });
  test("revolutions per mile: 63360 / (pi x diameter)", () => {
    expect(revolutionsPerMile(28)).toBeCloseTo(63360 / (Math.PI * 28), 9);
  });
});

test.for(["", "235", "235/60", "235/60R", "R15", "600/60R15x", "31x10R15", "O70-14", "6.7-15", "235/60/15", "G70"])(
  "%s is no size",
  (text) => {
    expect(parseTireSize(text)).toBeUndefined();
  },
);

/** Diameter in inches within an inch and a half of what the trade's tables print (from memory): makers differ by their tread. */
const truckSizes = [
  ["11R22.5", 41.5],
  ["11R24.5", 43.5],
  ["10R22.5", 40],
  ["9R22.5", 38.4],
  ["10.00R20", 41.5],
] as const;

describe("truck sizes", () => {
  test.for(truckSizes)("%s is about %d in tall", ([text, inches]) => {
    const diameter = overallDiameter(parseTireSize(text)!)!;
    expect(Math.abs(diameter.inches - inches)).toBeLessThan(1.5);
    expect(diameter.estimate).toBe(true);
  });
  test.for(["11R22", "11 22.5", "111R22.5", "11R2.5", "R22.5"])("%s is no size", (text) => {
    expect(parseTireSize(text)).toBeUndefined();
  });
});
