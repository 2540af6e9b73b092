import { describe, expect, test } from "vitest";
import { loadKilograms, readServiceDescription, speedSymbols } from "../../../electron/analysis/vocabulary/tire-ratings.ts";
import { convert } from "../../../electron/analysis/vocabulary/units.ts";

describe("load index", () => {
  // Kilograms: https://bestdrive.no/dekk/hastighets-og_lasteindeks.html; pounds, from another publisher: http://www.barretire.com/Tires/tiresizes.htm
  test.for([
    [71, 345, 761],
    [75, 387, 853],
    [80, 450, 992],
    [82, 475, 1047],
    [84, 500, 1102],
    [85, 515, 1135],
    [88, 560, 1235],
    [90, 600, 1323],
    [91, 615, 1356],
    [92, 630, 1389],
    [94, 670, 1477],
    [95, 690, 1521],
    [98, 750, 1653],
    [100, 800, 1764],
    [104, 900, 1984],
    [108, 1000, 2205],
  ] as const)("%d is %d kg, %d lb", ([index, kilograms, pounds]) => {
    expect(loadKilograms[index]).toBe(kilograms);
    expect(Math.abs(convert(kilograms, "kg", "lb")! - pounds)).toBeLessThanOrEqual(1);
  });

  // bestdrive page
  test.for([
    [110, 1060],
    [112, 1120],
    [115, 1215],
    [116, 1250],
    [118, 1320],
    [119, 1360],
    [120, 1400],
    [121, 1450],
  ] as const)("%d is %d kg", ([index, kilograms]) => expect(loadKilograms[index]).toBe(kilograms));
});

describe("speed symbol", () => {
  // km/h: https://tyrepowergateshead.com.au/tyres/load-index and bestdrive; mph, from another publisher: http://www.barretire.com/Tires/tiresizes.htm
  test.for([
    ["L", 120, null],
    ["M", 130, null],
    ["N", 140, null],
    ["P", 150, null],
    ["Q", 160, 99],
    ["R", 170, null],
    ["S", 180, 112],
    ["T", 190, 118],
    ["U", 200, 124],
    ["H", 210, 130],
    ["V", 240, 149],
    ["W", 270, 168],
    ["Y", 300, 186],
  ] as const)("%s is %d km/h", ([symbol, kmh, mph]) => {
    expect(speedSymbols[symbol]).toBe(kmh);
    if (mph !== null) expect(Math.round(convert(kmh, "km", "mi")!)).toBe(mph);
  });

  test("H stands between U and V", () => {
    expect(speedSymbols.H!).toBeGreaterThan(speedSymbols.U!);
    expect(speedSymbols.H!).toBeLessThan(speedSymbols.V!);
  });
});

// Forms: https://vehicleinfo.mopar.com/ owner's manual page on tire sizing (P215/65R15 95H, T145/80D18 103M); a dual marking is single/dual.
test.for([
  ["95H", { loadIndex: 95, symbol: "H" }],
  ["103M", { loadIndex: 103, symbol: "M" }],
  ["120/116R", { loadIndex: 120, symbol: "R" }],
  ["95", null],
  ["H95", null],
] as const)("%s as a service description", ([text, read]) => expect(readServiceDescription(text)).toEqual(read));
