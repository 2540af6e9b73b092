import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, expect, test } from "vitest";
import { createBrowserPrinter } from "../../electron/launch/print-pdf.ts";
import { openApplication } from "../../electron/services/open-application.ts";

const root = fileURLToPath(new URL("../..", import.meta.url));
let folder: string;

function run(task: string, ...args: string[]): { code: number | null; out: string; err: string } {
  const { status, stdout, stderr } = spawnSync(process.execPath, [join(root, "electron/run.mjs"), task, ...args], {
    encoding: "utf8",
    cwd: folder,
    env: { ...process.env, INIT_CWD: folder },
  });
  return { code: status, out: stdout, err: stderr };
}

const calm = "[0:00]\nGood morning, here is the 1988 Ossler Pathmark wagon.\n\n[0:30]\nIn the cabin, it's a five speed manual.\n";
const quarrel = `[0:00]
Good morning from Larkhill Vehicles, this is a 1971 Fallow Kestrel coupe.

[0:20]
coming round to the passenger side, the rears are to 35 60 15s

[0:45]
okay back end of the car now, and those are two fifty five sixty fifteens on the rear

[1:10]
up on the lift now, four eleven gears in the rear end
`;

/** A library of two: one at one with itself, one with an open conflict. */
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "roundwalk-headless-"));
  const application = openApplication({
    host: { name: "desktop", version: "0.0.0", reveal: null },
    libraryFile: join(folder, "old.sqlite"),
  });
  for (const [title, stockNumber, words] of [
    ["calm", "OP-1", calm],
    ["quarrel", "OP-2", quarrel],
  ] as const) {
    const path = join(folder, `${title}.txt`);
    writeFileSync(path, words);
    await application.handlers["recording.import"]({
      transcript: application.parts.files.offerPath(path).id,
      video: null,
      stockSheet: null,
      title,
      stockNumber,
      vehicle: { name: "", year: null, bodyStyle: "sedan", drive: "left-hand" },
    });
  }
  await application.close();
}, 60_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test("what is ready goes into a folder, and into another library, and back the same", () => {
  const ready = run("bundle", "export", "--library", "old.sqlite", "--to", "kept");
  expect(ready).toMatchObject({ code: 0, err: "" });
  expect(ready.out).toMatch(/^written {4}\S+kept\/op-1-calm-[0-9a-f]{8}\.roundwalk\.zip \(\d+ bytes\)\n$/);
  const all = run("bundle", "export", "--library", "old.sqlite", "--to", "kept", "--all");
  expect(all.out.split("\n").map((line) => line.split(" ")[0])).toEqual(["written", "unchanged", ""]);

  expect(run("bundle", "look", "kept", "--library", "new.sqlite").out.match(/: new$/gm)).toHaveLength(2);
  const taken = run("bundle", "import", "kept", "--library", "new.sqlite");
  expect(taken).toMatchObject({ code: 0, err: "" });
  expect(taken.out.match(/^imported/gm)).toHaveLength(2);
  expect(run("bundle", "import", "kept", "--library", "new.sqlite").out.match(/^unchanged/gm)).toHaveLength(2);
  expect(run("bundle", "export", "--library", "new.sqlite", "--to", "again", "--all").code).toBe(0);
  const names = readdirSync(join(folder, "kept"));
  expect(readdirSync(join(folder, "again"))).toEqual(names);
  for (const name of names) expect(readFileSync(join(folder, "again", name)).equals(readFileSync(join(folder, "kept", name)))).toBe(true);
}, 60_000);

test("both of what differs: what could not stand beside what is here is told, and the command ends with 3", async () => {
  const common = async (
    library: string,
    work: (application: ReturnType<typeof openApplication>, recordingId: string) => Promise<unknown>,
  ) => {
    const application = openApplication({ host: { name: "desktop", version: "0.0.0", reveal: null }, libraryFile: join(folder, library) });
    const [recording] = (await application.handlers["recording.list"]({})).filter(({ title }) => title.startsWith("calm"));
    await work(application, recording?.id ?? "");
    await application.close();
  };
  expect(run("bundle", "export", "--library", "old.sqlite", "--to", "lent", "--stock", "OP-1").code).toBe(0);
  expect(run("bundle", "import", "lent", "--library", "lent.sqlite").code).toBe(0);
  const vehicle = { name: "Pathmark", year: 1988, bodyStyle: "sedan", drive: "left-hand" } as const;
  const dent = { start: 5, end: 9, component: "body", position: null, seen: "a dent", grade: "damaged", note: "" } as const;
  await common("lent.sqlite", async ({ handlers }, recordingId) => {
    await handlers["recording.describe"]({ id: recordingId, title: "calm again", stockNumber: "OP-1", vehicle });
    await handlers["zone.paint"]({ recordingId, start: 2, end: 12, zone: "roof", title: null, initials: "TH" });
    await handlers["caption.correct"]({ recordingId, caption: 0, words: "Their words.", initials: "TH" });
    await handlers["finding.add"]({ recordingId, ...dent, zone: "rear", initials: "TH" });
  });
  await common("old.sqlite", async ({ handlers }, recordingId) => {
    await handlers["zone.paint"]({ recordingId, start: 0, end: 15, zone: "cargo", title: null, initials: "ME" });
    await handlers["caption.correct"]({ recordingId, caption: 0, words: "My words.", initials: "ME" });
  });
  expect(run("bundle", "export", "--library", "lent.sqlite", "--to", "back", "--all").code).toBe(0);
  const unasked = run("bundle", "import", "back", "--library", "old.sqlite", "--initials", "ME");
  expect(unasked).toMatchObject({ code: 1, err: expect.stringContaining("--merge mine, theirs or both") });
  const both = run("bundle", "import", "back", "--library", "old.sqlite", "--initials", "ME", "--merge", "both");
  expect(both.code).toBe(3);
  const lines = both.out.split("\n").map((line) => line.replaceAll(/\d{4}-\d\d-\d\d \d\d:\d\d/g, "WHEN"));
  expect(lines.slice(1)).toEqual([
    "  Title, stock number and vehicle, Title: kept calm; not taken: calm again",
    "  Title, stock number and vehicle, Vehicle: kept nothing; not taken: 1988 Pathmark",
    "  Zones, 0:02 to 0:12: kept what is drawn there; not taken: Roof (TH, WHEN)",
    "  Corrected captions, Caption 1: kept “My words.” (ME); not taken: “Their words.” (TH)",
    "",
  ]);
  expect(both.err).toContain("Both could not stand 4 times: what is here stands");
  await common("old.sqlite", async ({ handlers }, recordingId) => {
    const detail = await handlers["recording.get"]({ id: recordingId });
    expect(detail.summary.title).toBe("calm");
    expect(detail.captionCorrections.map(({ words }) => words)).toEqual(["My words."]);
    expect(detail.findings.map(({ seen, initials }) => [seen, initials])).toEqual([["a dent", "TH"]]);
    await handlers["edit.undo"]({ recordingId, initials: "ME" });
    expect((await handlers["recording.get"]({ id: recordingId })).findings).toEqual([]);
  });
}, 60_000);

test("mistakes are told in a line, and nothing is written", () => {
  writeFileSync(join(folder, "torn.roundwalk.zip"), "PK");
  const torn = run("bundle", "import", "torn.roundwalk.zip", "--library", "new.sqlite");
  expect(torn.code).toBe(1);
  expect(torn.err).toMatch(/^torn\.roundwalk\.zip cannot be brought in: it is cut short or no bundle/);
  expect(run("bundle", "import", "nowhere", "--library", "new.sqlite")).toMatchObject({
    code: 2,
    err: expect.stringMatching(/^nowhere: there is no such/),
  });
  expect(run("bundle", "fetch")).toMatchObject({ code: 2, err: expect.stringMatching(/^There is no "fetch"/) });
  expect(run("bundle", "export")).toMatchObject({ code: 2, err: expect.stringMatching(/^--to FOLDER is missing/) });
  expect(run("bundle", "import", "kept", "--merge", "yours").err).toMatch(/^--merge takes mine, theirs, both/);
  expect(run("bundle", "export", "--to", "x", "--stock", "OP-7", "--library", "old.sqlite")).toMatchObject({
    code: 1,
    err: expect.stringContaining('stock number "OP-7"'),
  });
}, 60_000);

test("every ready recording is indexed with a text, after each got its row of the lot's sheet", () => {
  writeFileSync(join(folder, "lot.csv"), "Stock,Year,Keys\nOP-1,1988,2\nOP-2,1990,1\nOP-9,1,1\n");
  writeFileSync(join(folder, "advert.txt"), "{vehicle}, {counts}\n");
  const done = run("index-lot", "--library", "old.sqlite", "--out", "indexed", "--stock-sheet", "lot.csv", "--template", "advert.txt");
  expect(done.code).toBe(0);
  // What a reader of the files should know is told here too; the rest of what is said there is why a machine has no PDF.
  expect(done.err.split("\n")[0]).toMatch(/^calm: Players show chapters from 3 entries on; this list has 2/);
  expect(done.out).toContain("Stock sheet: 2 matched (2 of them new or changed), 1 rows without a recording, 0 recordings without a row.");
  expect(done.out).toMatch(/written {2}calm: \d+ files in /);
  expect(done.out).toMatch(/left {5}quarrel: 1 conflict is open/);
  const [place] = readdirSync(join(folder, "indexed"));
  expect(readFileSync(join(folder, "indexed", place ?? "", "op-1-calm.advert.text.txt"), "utf8")).toMatch(/, \d+ chapters?, 0 findings, /);
  const pdfs = readdirSync(join(folder, "indexed", place ?? "")).filter((name) => name.endsWith(".pdf"));
  const printing = createBrowserPrinter().whyNot() === null;
  expect(pdfs).toEqual(printing ? ["op-1-calm.condition-index.pdf", "op-1-calm.review-record.pdf"] : []);
  for (const name of pdfs)
    expect(
      readFileSync(join(folder, "indexed", place ?? "", name))
        .subarray(0, 5)
        .toString("latin1"),
    ).toBe("%PDF-");
  if (!printing) expect(done.err).toContain("No PDF was written.");

  writeFileSync(join(folder, "bad.txt"), "one\n{nothing}\n");
  const bad = run("index-lot", "--library", "old.sqlite", "--out", "bad", "--template", "bad.txt", "--text-only", "--all");
  expect(bad.code).toBe(1);
  expect(bad.err).toContain("“bad”, line 2, column 1: There is no field “nothing”");
  expect(run("index-lot", "--out", "x", "--template", "no such", "--library", "old.sqlite").err).toContain(
    "There is no template “no such”",
  );
}, 60_000);
