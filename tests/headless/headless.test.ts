import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { createBrowserPrinter } from "../../electron/launch/print-pdf.ts";
import { AnalysisDocument } from "../../shared-types/index.ts";

const root = fileURLToPath(new URL("../..", import.meta.url));
let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "roundwalk-headless-"));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

function run(task: string, ...args: string[]): { code: number | null; out: string; err: string } {
  const { status, stdout, stderr } = spawnSync(process.execPath, [join(root, "electron/run.mjs"), task, ...args], {
    encoding: "utf8",
    cwd: folder,
    env: { ...process.env, INIT_CWD: folder },
  });
  return { code: status, out: stdout, err: stderr };
}

function write(name: string, text: string): string {
  writeFileSync(join(folder, name), text);
  return name;
}

const walk = `[0:00]
Good morning from Larkhill Vehicles, this is a 1971 Fallow Kestrel coupe.

[0:20]
coming round to the passenger side, the rears are to 35 60 15s

[0:45]
okay back end of the car now, and those are two fifty five sixty fifteens on the rear

[1:10]
up on the lift now, four eleven gears in the rear end
`;

describe("analyze", () => {
  test("prints one document for each file, in the order given, and nothing else", () => {
    write("one.txt", walk);
    write("two.txt", "0:00 hello\n0:05 goodbye\n");
    const { code, out, err } = run("analyze", "two.txt", "one.txt");
    expect({ code, err }).toEqual({ code: 0, err: "" });
    const documents = out
      .trimEnd()
      .split("\n")
      .map((line) => AnalysisDocument.parse(JSON.parse(line)));
    expect(documents.map(({ source }) => source.file)).toEqual(["two.txt", "one.txt"]);
    expect(documents[1]?.repairs).toContainEqual({ caption: 1, heard: "to 35 60 15s", meant: "235/60R15" });
    expect(documents[1]?.conflicts.map(({ topic }) => topic)).toEqual([expect.stringMatching(/rear tire size$/)]);
  });

  test("a file that cannot be used costs one line on standard error and exit 1; the others are still printed", () => {
    write("good.txt", walk);
    write("bad.srt", "1\n00:00:05,000 --> 00:00:01,000\nbackwards\n");
    const { code, out, err } = run("analyze", "bad.srt", "missing.txt", "good.txt");
    expect(code).toBe(1);
    expect(out.trimEnd().split("\n")).toHaveLength(1);
    const lines = err.trimEnd().split("\n");
    expect(lines).toHaveLength(2);
    expect(lines[0]).toMatch(/^bad\.srt.*2.*before/);
    expect(lines[1]).toMatch(/^missing\.txt: there is no such file/);
  });

  test("holds claims against a stock sheet where one is given, under a key of its own", () => {
    write("one.txt", walk);
    write("lot.csv", "Stock,Year,Rear tires,Axle ratio,Keys\nA-1,1971,235/60R15,3.73,2\nA-2,1988,215/70R15,3.55,1\n");
    const { code, out } = run("analyze", "one.txt", "--stock-sheet", "lot.csv", "--stock-number", "a1");
    expect(code).toBe(0);
    const document = AnalysisDocument.parse(JSON.parse(out));
    const topics = (key: "supports" | "unspoken") => document.stockSheet?.[key].map(({ topic }) => topic);
    expect(document.stockSheet?.denies.map(({ field }) => field)).toEqual(["axle ratio", "rear tires"]);
    expect([topics("supports"), topics("unspoken")]).toEqual([["rear tire size", "model year"], ["number of keys"]]);
    const known = new Set(document.claims.map(({ id }) => id));
    for (const { claims } of [...document.stockSheet!.denies, ...document.stockSheet!.supports])
      for (const id of claims) expect(known).toContain(id);
    // Without a sheet the key is not there, and nothing else differs.
    const { stockSheet: _sheet, ...rest } = document;
    expect(JSON.parse(run("analyze", "one.txt").out)).toEqual(rest);
  });

  test("a sheet that cannot be used costs one line and prints nothing that would look as if it held", () => {
    write("one.txt", walk);
    write("lot.csv", "Stock,Year\nA-1,1971\nA-2,1988\n");
    const { code, out, err } = run("analyze", "one.txt", "--stock-sheet", "lot.csv", "--stock-number", "B-1");
    expect({ code, out }).toEqual({ code: 1, out: "" });
    expect(err).toMatch(/^lot\.csv, line 1: none of the 2 rows has the stock number “B-1”.*\n$/);
  });

  test("says how it is used when nothing is named", () => {
    const { code, err } = run("analyze");
    expect(code).toBe(1);
    expect(err).toContain("npm run --silent analyze -- TRANSCRIPT");
  });
});

/** Whether this machine has a browser that prints. */
const pdfs = createBrowserPrinter().whyNot() === null;

describe("index", () => {
  test("imports, analyses and writes every export, and sums up with both quotes and times", () => {
    write("walk.txt", walk);
    const { code, out } = run("index", "--transcript", "walk.txt", "--out", "out", "--paper", "a4");
    expect(code).toBe(0);
    expect(readdirSync(join(folder, "out")).sort()).toEqual([
      "walk.captions-changes.txt",
      "walk.captions.srt",
      "walk.captions.vtt",
      "walk.chapters.ffmetadata",
      "walk.chapters.json",
      "walk.chapters.jsonld",
      "walk.chapters.txt",
      "walk.chapters.vtt",
      "walk.chapters.xml",
      "walk.condition-index.csv",
      "walk.condition-index.html",
      "walk.condition-index.json",
      ...(pdfs ? ["walk.condition-index.pdf"] : []),
      "walk.condition-index.schema.json",
      "walk.corrections.txt",
      "walk.corrections.vtt",
      "walk.listing-text.text.txt",
      "walk.review-record.html",
      "walk.review-record.json",
      ...(pdfs ? ["walk.review-record.pdf"] : []),
      "walk.review-record.schema.json",
    ]);
    expect(out).toMatch(/rear tire size \(measure\)/);
    expect(out).toMatch(/235\/60R15: 0:\d\d “.*to 35 60 15s”/);
    expect(out).toMatch(/255\/60R15: (0:5\d|1:0\d) “.*two fifty five sixty fifteens/);
  });

  test("fills the text in by a template of one's own, and writes nothing by one that cannot be filled in", () => {
    write("walk.txt", walk);
    write("advert.txt", "For sale: {title}.\n");
    expect(run("index", "--transcript", "walk.txt", "--out", "out", "--template", "advert.txt").code).toBe(0);
    expect(readFileSync(join(folder, "out", "walk.advert.text.txt"), "utf8")).toMatch(/^For sale: walk\.\n/);
    const again = run("index", "--transcript", "walk.txt", "--out", "out", "--template", "advert.txt");
    expect(again).toMatchObject({ code: 1, err: expect.stringContaining("walk.advert.text.txt") });
    write("bad.txt", "one\n{nothing}\n");
    const bad = run("index", "--transcript", "walk.txt", "--out", "bad", "--template", "bad.txt");
    expect(bad).toMatchObject({ code: 1, err: expect.stringContaining("“bad”, line 2, column 1: There is no field “nothing”") });
    expect(readdirSync(folder).sort()).toEqual(["advert.txt", "bad.txt", "out", "walk.txt"]);
  });

  test("asks for a paper that is known", () => {
    write("walk.txt", walk);
    const { code, err } = run("index", "--transcript", "walk.txt", "--out", "out", "--paper", "a5");
    expect(code).toBe(2);
    expect(err).toContain('--paper takes letter or a4, not "a5".');
  });

  test("never overwrites without --force, and then leaves what stands as it is", () => {
    write("walk.txt", walk);
    run("index", "--transcript", "walk.txt", "--out", "out");
    const path = join(folder, "out", "walk.chapters.txt");
    writeFileSync(path, "mine");
    const refused = run("index", "--transcript", "walk.txt", "--out", "out");
    expect(refused.code).toBe(1);
    expect(refused.err).toContain("--force");
    expect(readFileSync(path, "utf8")).toBe("mine");
    expect(run("index", "--transcript", "walk.txt", "--out", "out", "--force").code).toBe(0);
    expect(readFileSync(path, "utf8")).toContain("0:00 ");
  });

  test("keeps the recording in a library that is named, and nothing anywhere else", () => {
    write("walk.txt", walk);
    expect(run("index", "--transcript", "walk.txt", "--out", "out", "--library", "mine.sqlite").code).toBe(0);
    expect(readdirSync(folder)).toContain("mine.sqlite");
    expect(run("index", "--transcript", "walk.txt", "--out", "out2", "--library", "mine.sqlite").code).toBe(0);
  });

  test("a file that cannot be read leaves no output folder", () => {
    write("bad.vtt", "WEBVTT\n\nnothing timed here\n");
    const { code, err } = run("index", "--transcript", "bad.vtt", "--out", "out");
    expect(code).toBe(1);
    expect(err).toContain("bad.vtt");
    expect(readdirSync(folder)).toEqual(["bad.vtt"]);
  });
});
