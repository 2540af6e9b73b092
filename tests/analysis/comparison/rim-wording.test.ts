import { expect, test } from "vitest";
import { analyse } from "../../../electron/analysis/analyse.ts";

const lines = {
  wheels: "the wheels are the styled steel ones fourteen by seven all the way around",
  fronts: "and the front tires are 225 70 15s",
  rears: "and the rear tires are 235 60 15s",
};

const why = (texts: readonly string[]): string | undefined =>
  analyse(
    {
      format: "plain",
      captions: texts.map((text, index) => ({ index, start: index * 10, end: index * 10 + 10, text })),
      duration: texts.length * 10,
    },
    { stockSheet: null, recordedOn: null },
  ).conflicts.find(({ rule }) => rule === "tire-rim-against-wheel")?.why;

test("tires that do not fit the wheel are told each with its own moment", () => {
  expect(why([lines.wheels, lines.fronts, lines.rears])).toMatch(/, and 225\/70R15 at 0:1\d and 235\/60R15 at 0:2\d need a 15 in rim\.$/);
});

test("one size needs its rim", () => {
  expect(why([lines.wheels, lines.fronts])).toMatch(/, and 225\/70R15 at 0:1\d needs a 15 in rim\.$/);
});

test("tires that fit the wheel are quiet", () => {
  expect(why([lines.wheels.replace("fourteen", "fifteen"), lines.fronts, lines.rears])).toBeUndefined();
});
