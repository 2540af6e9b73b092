import fc from "fast-check";
import { expect, test } from "vitest";
import { lengthLabel, secondsFromText, tenthsLabel } from "../../renderer/shared/time.ts";

test.for([
  { seconds: 0, label: "0:00.0", why: "the start" },
  { seconds: 2.3, label: "0:02.3", why: "2.3 is stored a hair under itself" },
  { seconds: 161.39, label: "2:41.3", why: "rounded down: a label never lies past its moment" },
  { seconds: 59.9999, label: "1:00.0", why: "nearer than a millisecond counts as reached" },
  { seconds: 3723.5, label: "1:02:03.5", why: "hours from an hour on" },
  { seconds: -1, label: "0:00.0", why: "nothing lies before the start" },
])("tenths: $why", ({ seconds, label }) => {
  expect(tenthsLabel(seconds)).toBe(label);
});

test.for([
  { seconds: 48, label: "48 s" },
  { seconds: 72, label: "1 min 12 s" },
  { seconds: 120, label: "2 min" },
  { seconds: 3720, label: "1 h 2 min" },
  { seconds: 3600, label: "1 h" },
  { seconds: 0.2, label: "0 s" },
])("a length of $seconds s is said $label", ({ seconds, label }) => {
  expect(lengthLabel(seconds)).toBe(label);
});

test.for([
  { text: "2:41.3", seconds: 161.3 },
  { text: "161.3", seconds: 161.3 },
  { text: "1:02:03", seconds: 3723 },
  { text: " 0:05 ", seconds: 5 },
  { text: "2:75", seconds: null },
  { text: "75:10", seconds: null },
  { text: "two", seconds: null },
  { text: "", seconds: null },
  { text: "-3", seconds: null },
])("“$text” is read as $seconds", ({ text, seconds }) => {
  expect(secondsFromText(text)).toBe(seconds);
});

test("a label read back is its moment to the tenth", () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 360_000 }), (tenths) => {
      expect(secondsFromText(tenthsLabel(tenths / 10))).toBeCloseTo(tenths / 10, 6);
    }),
  );
});
