import { describe, expect, test } from "vitest";
import type { FoundFile } from "../../../renderer/library/files/found-file.ts";
import { pairFiles, pairName } from "../../../renderer/library/files/pair-files.ts";
import { addRow, changeRow, faultOfPlan, leftOver, planOfFiles, sheetOfRow } from "../../../renderer/library/plan/import-plan.ts";
import { isOneRecording, stockNumberOfFileName } from "../../../renderer/library/sort-files.ts";

/** Files from paths; "(empty)" after one says that it has no bytes. */
function files(...paths: string[]): FoundFile[] {
  return paths.map((written) => {
    const path = written.replace(" (empty)", "");
    const cut = path.lastIndexOf("/");
    return { key: path, name: path.slice(cut + 1), folder: path.slice(0, Math.max(0, cut)), bytes: path === written ? 5 : 0, source: path };
  });
}

test.for([
  ["CK2107 transcript.vtt", "CK2107.mp4"],
  ["CK2107.en-US.srt", "ck2107.MOV"],
  ["ck-2107_walk captions.json", "CK 2107 walk.mp4"],
  ["CK2107_stock-sheet.csv", "CK2107.mkv"],
])("%s and %s are of one name", ([one, other]) => {
  expect(pairName(one ?? "")).toBe(pairName(other ?? "x"));
});

test.for([
  ["CK2107.vtt", "CK2108.mp4"],
  ["walk 1.vtt", "walk 11.mp4"],
  ["tolland.vtt", "tolland 2.mp4"],
])("%s and %s are not", ([one, other]) => {
  expect(pairName(one ?? "")).not.toBe(pairName(other ?? ""));
});

describe("what belongs together", () => {
  test.for([
    {
      what: "by name, in one folder, with a sheet for all",
      given: files("a.mp4", "a.vtt", "b.vtt", "b.mov", "lot.csv"),
      pairs: [
        ["a.vtt", "a.mp4", null],
        ["b.vtt", "b.mov", null],
      ],
      lot: "lot.csv",
    },
    {
      what: "by name, with a sheet each",
      given: files("a.mp4", "a.vtt", "a.csv", "b.vtt", "b sheet.csv"),
      pairs: [
        ["a.vtt", "a.mp4", "a.csv"],
        ["b.vtt", null, "b sheet.csv"],
      ],
      lot: null,
    },
    {
      what: "by name, across folders",
      given: files("films/a.mp4", "films/b.mp4", "words/a.srt", "words/b.srt"),
      pairs: [
        ["words/a.srt", "films/a.mp4", null],
        ["words/b.srt", "films/b.mp4", null],
      ],
      lot: null,
    },
    {
      what: "a folder for each vehicle, whatever the files are called",
      given: files("A/IMG 1.mp4", "A/transcript.vtt", "A/sheet.csv", "B/IMG 2.mp4", "B/transcript.vtt"),
      pairs: [
        ["A/transcript.vtt", "A/IMG 1.mp4", "A/sheet.csv"],
        ["B/transcript.vtt", "B/IMG 2.mp4", null],
      ],
      lot: null,
    },
    {
      what: "the same names in several folders stay in their folders",
      given: files("A/walk.mp4", "A/walk.vtt", "B/walk.mp4", "B/walk.vtt"),
      pairs: [
        ["A/walk.vtt", "A/walk.mp4", null],
        ["B/walk.vtt", "B/walk.mp4", null],
      ],
      lot: null,
    },
    {
      what: "nothing where a name fits two films",
      given: files("a.mp4", "a.mov", "a.vtt", "b.vtt"),
      pairs: [
        ["a.vtt", null, null],
        ["b.vtt", null, null],
      ],
      lot: null,
    },
    { what: "no film for another's words", given: files("a.vtt", "b.mp4", "c.mp4"), pairs: [["a.vtt", null, null]], lot: null },
    { what: "an empty film is none", given: files("a.vtt", "a.mp4 (empty)"), pairs: [["a.vtt", null, null]], lot: null },
    {
      what: "two sheets of no name are for nobody",
      given: files("a.vtt", "b.vtt", "x.csv", "y.csv"),
      pairs: [
        ["a.vtt", null, null],
        ["b.vtt", null, null],
      ],
      lot: null,
    },
  ])("$what", ({ given, pairs, lot }) => {
    const { recordings, lotSheet } = pairFiles(given);
    expect(recordings.map(({ transcript, video, stockSheet }) => [transcript, video, stockSheet])).toEqual(pairs);
    expect(lotSheet).toBe(lot);
  });

  test("of several transcripts of one name the one that knows most about time is taken", () => {
    const plan = planOfFiles(files("a.txt", "a.srt", "a.mp4"));
    expect(plan.rows.map(({ transcript }) => transcript)).toEqual(["a.srt"]);
    expect(leftOver(plan)).toMatchObject([
      { file: { key: "a.txt" }, why: "another transcript of the same name was taken", canBeRecording: true },
    ]);
  });
});

describe("the plan", () => {
  const plan = planOfFiles(
    files("OS-9 coupe.vtt", "OS-9 coupe.mp4", "OS-10 van.vtt", "spare.mp4", "lot.csv", "cover.jpg", "none.vtt (empty)"),
  );
  const [nine, ten] = ["OS-9 coupe.vtt", "OS-10 van.vtt"];

  test("starts with what the names say, in the order of their numbers", () => {
    expect(plan.rows.map(({ title, stockNumber, videoBy }) => [title, stockNumber, videoBy])).toEqual([
      // One digit is too little to be taken for a stock number.
      ["OS 9 coupe", "", "name"],
      ["van", "OS-10", null],
    ]);
    expect(plan.rows.map((row) => sheetOfRow(plan, row))).toEqual(["lot.csv", "lot.csv"]);
  });

  test("says of every file that is left over why", () => {
    expect(leftOver(plan).map(({ file, why }) => [file.key, why.split(";")[0]])).toEqual([
      ["spare.mp4", "no transcript goes with it"],
      ["cover.jpg", "it is no video, transcript or stock sheet"],
      ["none.vtt", "it is empty"],
    ]);
  });

  test("a film that one recording takes is taken from the other", () => {
    const changed = changeRow(plan, ten, { video: "OS-9 coupe.mp4", videoBy: "person" });
    expect(changed.rows.map(({ video }) => video)).toEqual([null, "OS-9 coupe.mp4"]);
  });

  test("a recording that is left out leaves its files over, and the sheet may be left out for one", () => {
    const without = changeRow(plan, nine, { taken: false });
    expect(leftOver(without).map(({ file }) => file.key)).toEqual(expect.arrayContaining([nine, "OS-9 coupe.mp4"]));
    const [, row] = changeRow(plan, ten, { fromLot: false }).rows;
    expect(row && sheetOfRow(plan, row)).toBeNull();
    const none = { ...plan, rows: plan.rows.map((one) => ({ ...one, taken: false })) };
    expect(faultOfPlan(none)).toBe("No recording is chosen.");
    expect(faultOfPlan(changeRow(plan, ten, { title: " " }))).toBe("One recording has no title.");
    expect(faultOfPlan(plan)).toBeNull();
  });

  test("a left-over transcript becomes a recording of its own", () => {
    const both = addRow(planOfFiles(files("a.vtt", "a.txt")), "a.txt");
    expect(both.rows.map(({ transcript }) => transcript)).toEqual(["a.vtt", "a.txt"]);
    expect(leftOver(both)).toEqual([]);
  });
});

test.for([
  ["CK2107 walk.vtt", "CK2107"],
  ["FK-1971_final.mp4", "FK-1971"],
  ["walk 20931.srt", "20931"],
  ["1969 tolland halyard.vtt", ""],
  ["walk.vtt", ""],
  ["IMG.mp4", ""],
] as const)("%s holds the stock number %s", ([name, number]) => {
  expect(stockNumberOfFileName(name)).toBe(number);
});

test.for([
  [["a.mp4", "b.vtt", "c.csv"], true],
  [["a.vtt"], true],
  [["a.vtt", "b.vtt"], false],
  [["a.vtt", "a.mp4", "b.mp4"], false],
] as const)("%j are the parts of one recording: %s", ([names, one]) => {
  expect(isOneRecording(names)).toBe(one);
});
