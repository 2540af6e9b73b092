import { expect, test } from "vitest";
import { importedStyle } from "../../../renderer/library/body-styles.ts";
import type { FoundFile } from "../../../renderer/library/files/found-file.ts";
import { readableFiles } from "../../../renderer/library/files/readable-files.ts";
import { changeRow, knownRows, planOfFiles } from "../../../renderer/library/plan/import-plan.ts";

const file = (name: string): FoundFile => ({ key: `/${name}`, name, folder: "", bytes: 10, source: `id of ${name}` });
const plan = planOfFiles(["FK-1971 walk.vtt", "fk1971 again.vtt", "OS-9.vtt", "OS-10.vtt", "plain words.txt"].map(file));
const library = [
  { stockNumber: "OS 10", title: "Osprey", importedAt: "2026-01-05T10:00:00.000Z" },
  { stockNumber: "", title: "Without a number", importedAt: "2026-01-05T10:00:00.000Z" },
];
const whys = (known: ReturnType<typeof knownRows>) => known.map(({ row, why }) => [row.stockNumber, why]);

test("a stock number that the library has, or a row before, is asked about; however it is written", () => {
  expect(whys(knownRows(plan, library))).toEqual([
    ["fk1971", "fk1971 is also “walk” among these"],
    ["OS-10", "OS 10 is in the library as “Osprey”, imported 2026-01-05"],
  ]);
});

test("nobody asks about a row that is left out, or that has no stock number", () => {
  const without = changeRow(changeRow(plan, "/OS-10.vtt", { taken: false }), "/FK-1971 walk.vtt", { stockNumber: "" });
  expect(knownRows(without, library)).toEqual([]);
  expect(knownRows(plan, [])).toHaveLength(1);
});

test("a body style is left to the sheet until a person chooses one", () => {
  expect(importedStyle("by-sheet")).toEqual({ bodyStyle: "sedan", bodyStyleFromSheet: true });
  expect(importedStyle("pickup")).toEqual({ bodyStyle: "pickup", bodyStyleFromSheet: false });
  expect(plan.rows.every(({ bodyStyle }) => bodyStyle === null)).toBe(true);
});

test("a file that can no longer be read is left out, and its place says what to do", async () => {
  const gone = Object.assign(new File(["x"], "walk.mp4"), { slice: () => ({ arrayBuffer: () => Promise.reject(new Error("gone")) }) });
  const words = new File(["[0:00] hello"], "walk.txt");
  const { readable, unreadable } = await readableFiles([gone, words]);
  expect(readable).toEqual([words]);
  expect(Object.keys(unreadable)).toEqual(["video"]);
  expect(unreadable.video).toMatchObject({ code: "file-unreadable", message: expect.stringContaining("Choose it anew") });
});
