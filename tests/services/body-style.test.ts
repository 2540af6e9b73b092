import { expect, test } from "vitest";
import { withSheetDescription } from "../../electron/services/read-stock-sheet.ts";
import { bodyStyleOf } from "../../electron/services/stock-sheet/body-style.ts";

test.for([
  ["2-Door Coupe", "coupe"],
  ["Coupé", "coupe"],
  ["2dr hardtop", "coupe"],
  ["Fastback", "coupe"],
  ["4 Door Sedan", "sedan"],
  ["SALOON", "sedan"],
  ["4dr", "sedan"],
  ["Station Wagon", "estate"],
  ["Estate", "estate"],
  ["shooting brake", "estate"],
  ["5-door hatchback", "hatchback"],
  ["Liftback", "hatchback"],
  ["Crew Cab Pickup", "pickup"],
  ["Pick-up, regular cab", "pickup"],
  ["Truck", "pickup"],
  ["Ute", "pickup"],
  ["Minivan", "van"],
  ["Panel van", "van"],
  ["MPV", "van"],
  ["Convertible coupe", "convertible"],
  ["Drophead", "convertible"],
  ["cabriolet 2 door", "convertible"],
  ["Roadster", "roadster"],
  ["Spyder", "roadster"],
  // What is drawn for none of them, or no body style at all, is left open.
  ["SUV", null],
  ["Sport Utility, 4-door", null],
  ["Motorcycle", null],
  ["Advantage package", null],
  ["Caravanning trim", null],
  ["standard", null],
  ["Sedona Red", null],
  ["5", null],
  ["", null],
] as const)("a body column's “%s” is drawn as %s", ([cell, style]) => {
  expect(bodyStyleOf(cell)).toBe(style);
});

test("the sheet's body style counts where it was left to the sheet, and only there", () => {
  const described = { stockNumber: "", vehicle: { name: "", year: null, bodyStyle: "sedan", drive: "left-hand" } } as const;
  const styleOf = (body: string, bodyStyleFromSheet?: boolean) =>
    withSheetDescription({ ...described, ...(bodyStyleFromSheet === undefined ? {} : { bodyStyleFromSheet }) }, { body }).vehicle.bodyStyle;
  expect([styleOf("Pickup", true), styleOf("Pickup", false), styleOf("Pickup"), styleOf("SUV", true)]).toEqual([
    "pickup",
    "sedan",
    "sedan",
    "sedan",
  ]);
});
