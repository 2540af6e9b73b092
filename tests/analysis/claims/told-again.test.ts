import { describe, expect, test } from "vitest";
import { readingOf } from "./claims-in.ts";

/** Figures told again without their unit, codes read out, and slips put right: common practice of walkarounds. */
const measures = (heard: string, zone: Parameters<typeof readingOf>[1]) =>
  readingOf(heard, zone)
    .claims.filter(({ value, attribute }) => typeof value === "number" || attribute === "date")
    .map(({ component, attribute, value, unit }) => `${component} ${attribute} ${value}${unit ? ` ${unit}` : ""}`);

describe("paint told again, its unit left out", () => {
  test("panel by panel", () => {
    expect(
      measures("the probe on the hood says 114 microns. Now the fender is 108, the door is 112 and the rear door is 127.", "driver-side"),
    ).toEqual(["paint thickness 114 µm", "paint thickness 108 µm", "paint thickness 112 µm", "paint thickness 127 µm"]);
  });
  test("not where nothing was measured before", () => {
    expect(measures("the fender is 108, the door is 112.", "driver-side")).toEqual([]);
  });
  test("not money, years or a row that is counted", () => {
    expect(
      measures("the hood says 4.6 mils. The fender cost 250 dollars in 1998.", "driver-side").filter((told) => told.startsWith("paint th")),
    ).toEqual(["paint thickness 4.6 mil"]);
  });
});

test("a date code read out is the tire's date", () => {
  expect(measures("the tires are good, the date code is 4022, so October of 2022.", "driver-side")).toEqual([
    "tire date 4022",
    "tire date 2022-10",
  ]);
});

test("an amount of another kind puts a slip right", () => {
  expect(measures("the wheels are seven inches wide, no, six and a half.", "driver-side")).toEqual(["wheel width 6.5 in"]);
});

describe("repairs that no claim uses", () => {
  const repairs = (heard: string) => readingOf(heard, "cabin").repairs.map(({ heard: words, meant }) => `${words} -> ${meant}`);
  test("a refrigerant and an oil grade", () => {
    expect(repairs("air blows cold on the R one thirty four a, and it takes zero w 40 oil")).toEqual([
      "R one thirty four a -> R-134a",
      "zero w 40 -> 0W-40",
    ]);
  });
  test("nothing where the words hang on what is spoken of", () => {
    expect(repairs("we stop for eleven and then there were three nine year olds")).toEqual([]);
  });
});
