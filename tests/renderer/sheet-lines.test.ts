import { describe, expect, test } from "vitest";
import { sheetLines } from "../../renderer/check/sheet-lines.ts";
import { sampleDetail } from "../exports/sample-detail.ts";

const detail = sampleDetail();
const support = { id: "s", key: "s", field: "rears", topic: "rear tire size", sheetValue: "235/60R15", claims: ["c1"], why: "Alike." };
const silence = (key: string, field: string, topic: string, sheetValue: string) => ({
  id: key,
  key,
  field,
  topic,
  sheetValue,
  why: "Unspoken.",
});
const analysis = {
  ...detail.analysis,
  supports: [support, { ...support, key: "s2", topic: "axle ratio", sheetValue: "4.11", claims: ["c3"] }],
  silences: [
    silence("1", "engine", "engine displacement", "5.0 L V8"),
    silence("2", "engine", "engine cylinders", "5.0 L V8"),
    silence("3", "engine", "engine displacement", "4.0 L"),
    silence("4", "color", "paint color", "green"),
  ],
};

describe("what the stock sheet says, line by line", () => {
  const lines = sheetLines({ ...detail, analysis });
  test("tells what was said, and not only when", () => {
    expect(lines.denials).toEqual([
      {
        item: { kind: "denial", key: "glass" },
        title: "windshield",
        more: "sheet: cracked, said: good at 1:35",
        disputed: false,
        state: { open: true, sign: "open" },
      },
    ]);
  });
  test("marks what it bears out while that is in dispute, and no longer once it is settled", () => {
    expect(lines.supports.map(({ disputed }) => disputed)).toEqual([true, false]);
    expect(sheetLines({ ...detail, analysis, openConflictKeys: [] }).supports.map(({ disputed }) => disputed)).toEqual([false, false]);
  });
  test("tells a cell once, under all its names, and other cells apart", () => {
    expect(lines.silences.map(({ item, title, more }) => [item, title, more])).toEqual([
      [{ kind: "silence", key: "1" }, "engine displacement, engine cylinders", "sheet: 5.0 L V8"],
      [{ kind: "silence", key: "3" }, "engine displacement", "sheet: 4.0 L"],
      [{ kind: "silence", key: "4" }, "paint color", "sheet: green"],
    ]);
  });
  test("tells two values that were said apart, and one moment once", () => {
    const [denial] = detail.analysis.denials;
    const both = { ...analysis, denials: [{ ...denial!, claims: ["c1", "c2", "c2"] }] };
    expect(sheetLines({ ...detail, analysis: both }).denials[0]).toMatchObject({
      more: "sheet: cracked, said: 235/60R15 at 0:12; 255/60R15 at 0:31",
      disputed: true,
    });
  });
});
