import { createRequire } from "node:module";
import fc from "fast-check";
import { decodeVIN, splitVIN, validateVIN } from "universal-vin-decoder";
import { describe, expect, test } from "vitest";
import { checkVin, mendVinLetters } from "../../../electron/analysis/numbers/check-vin.ts";

/** npm vin-validator 1.0.0: form and check digit in one answer. CommonJS without types. */
const { validate } = createRequire(import.meta.url)("vin-validator") as { validate: (vin: string) => boolean };

/**
 * Sums and check digits by 49 CFR 565.15(c), Tables III to VI. The first row is the regulation's own sample; the others are published
 * numbers (forums.corvetteactioncenter.com question-regarding-vin, vsource.org BVINcalc, tbirdregistry.com checkdigit, vindecodr manual,
 * scientificgems.wordpress.com 2018/04/27) and public test suites.
 */
const published = [
  ["1G4AH59H45G118341", 411, "4", true, 2005],
  ["1M8GDM9AXKP042788", 351, "X", true, 1989],
  ["11111111111111111", 89, "1", true, 2001],
  ["JH2RC3605MM101581", 280, "5", true, 1991],
  ["1FAPP64R7LH123456", 403, "7", true, null],
  ["LJCPCBLCX11000237", 186, "X", true, null],
  ["1FACP45EXLF192944", 373, "X", true, 1990],
  ["WDBEA30D3HA391172", 355, "3", true, 1987],
  ["1HGCM82633A004352", 311, "3", true, 2003],
  ["KM8K2CAB4PU001140", 257, "4", true, 2023],
  ["1VWBH7A30DC104945", 319, "0", true, 2013],
  ["JM1BN1U70H1100922", 286, "0", true, 2017],
  ["1VWBP7A37DC046870", 337, "7", true, 2013],
  ["1HGCM82633A004353", 313, "5", false, 2003],
  ["1G4AH59H45G118331", 408, "1", false, 2005],
  ["1VWBH7A31DC104945", 319, "0", false, 2013],
  ["1M8GDM9A1KP042788", 351, "X", false, 1989],
  ["1M8GDM9AXKP042789", 353, "1", false, 1989],
  ["1M8GDM9AXPK042788", 356, "4", false, null],
  ["12345678901234567", 304, "7", false, null],
] as const;

describe("published numbers", () => {
  for (const [vin, sum, expected, matches, year] of published) {
    test(`${vin}: sum ${sum}, check digit ${expected}`, () => {
      const check = checkVin(vin);
      expect(check.formFault).toBeNull();
      expect(check.checkDigit).toEqual({ found: vin[8], expected, sum, matches });
      if (year !== null) expect(check.modelYears[0]).toBe(year);
    });
  }

  test.for([
    ["1HGCM82633A0O4352", /Character 13 is "O"/],
    ["1HGCM82633A00435", /16 characters/],
    ["WDBEA3QD3HA39I172", /Character 7 is "Q"/],
    ["00000000000000000", /placeholder/],
    ["", /0 characters/],
    ["8T02F123456", /11 characters/],
  ] as const)("%s is no 17-character number", ([vin, fault]) => {
    const check = checkVin(vin);
    expect(check.formFault).toMatch(fault);
    expect(check.checkDigit).toBeNull();
  });

  test("impossible letters are read as the digits they were (vindecodr, option guess)", () => {
    expect(mendVinLetters("WDBEA3QD3HA39I172")).toBe("WDBEA30D3HA391172");
  });
});

describe("model-year codes in position 10", () => {
  // http://www.autocalculator.org/VIN/VIN-Year-CODE.aspx; the letter or digit in position 7 by 49 CFR 565.15(b) and 565.25(b).
  const codes = "ABCDEFGHJKLMNPRSTVWXY123456789";
  const ofYear = (code: string, seventh: string) => checkVin(`1G4AH5${seventh}H4${code}G118341`).modelYears;

  test("there are thirty, from 1980 to 2009 and again from 2010 to 2039", () => {
    expect([...codes].map((code) => ofYear(code, "9")[0])).toEqual(Array.from({ length: 30 }, (_, years) => 1980 + years));
    expect([...codes].map((code) => ofYear(code, "K")[0])).toEqual(Array.from({ length: 30 }, (_, years) => 2010 + years));
  });

  test.for(["U", "Z", "0"])("%s is none", (code) => expect(ofYear(code, "9")).toEqual([]));
  test.for(["I", "O", "Q"])("%s is no letter of the number at all", (code) => {
    expect(checkVin(`1G4AH59H4${code}G118341`).formFault).toMatch(/Character 10/);
  });
});

describe("against reference libraries", () => {
  const characters = "ABCDEFGHJKLMNPRSTUVWXYZ0123456789";
  const anyVin = fc.string({ unit: fc.constantFrom(...characters), minLength: 17, maxLength: 17 });
  const rightVin = anyVin.map((vin) => {
    const expected = checkVin(vin).checkDigit?.expected ?? "0";
    return vin.slice(0, 8) + expected + vin.slice(9);
  });

  test("check digit: vin-validator agrees over 10,000 generated numbers, half of them right", () => {
    fc.assert(
      fc.property(fc.oneof(anyVin, rightVin), (vin) => {
        const check = checkVin(vin);
        if (check.formFault !== null) return;
        expect(check.checkDigit!.matches).toBe(validate(vin));
      }),
      { numRuns: 10_000, seed: 17 },
    );
  });

  test("form and model year: universal-vin-decoder agrees over 10,000 generated numbers", () => {
    // It knows no check digit and takes 17 zeros for a number; years it answers with a single one, by position 7 for every vehicle kind.
    const shaky = fc.string({ unit: fc.constantFrom(...`${characters}IOQ`), minLength: 16, maxLength: 18 });
    fc.assert(
      fc.property(fc.oneof(anyVin, shaky), (vin) => {
        const check = checkVin(vin);
        if (/^0+$/.test(vin)) return;
        expect(check.formFault === null).toBe(validateVIN(vin).isValid);
        if (check.formFault !== null) return;
        expect(splitVIN(vin)).toMatchObject({ modelYear: vin[9] });
        const decoded = decodeVIN(vin);
        const theirs = decoded.info?.modelYear ?? "-";
        expect(check.modelYears.length === 0 ? "-" : String(check.modelYears[0])).toBe(theirs);
      }),
      { numRuns: 10_000, seed: 10 },
    );
  });

  test("any single wrong digit in another position than the ninth is noticed where the weight is not a multiple of 11", () => {
    fc.assert(
      fc.property(rightVin, fc.integer({ min: 0, max: 16 }), fc.integer({ min: 1, max: 9 }), (vin, position, step) => {
        if (position === 8 || !/\d/.test(vin[position]!)) return;
        const digit = (Number(vin[position]) + step) % 10;
        const wrong = vin.slice(0, position) + String(digit) + vin.slice(position + 1);
        const check = checkVin(wrong);
        if (check.formFault === null) expect(check.checkDigit!.matches).toBe(false);
      }),
      { numRuns: 2000, seed: 9 },
    );
  });
});
