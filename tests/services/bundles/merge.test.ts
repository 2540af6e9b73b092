import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import type { MergeChoice, MergeChoices, RecordingDetail } from "../../../shared-types/index.ts";
import { sampleQuestion } from "../../support/builders/sample-analysis.ts";
import { sampleApplication } from "../../support/builders/sample-application.ts";
import { bundleOf, dent, lookAt, type Machine, takeBundle, twoMachines } from "./bundle-ground.ts";
import { entriesOf, forged, resealed, zipped } from "./forge.ts";

const key = "measure/rear tire size";
const notes = ({ seenNotes }: RecordingDetail) => seenNotes.map(({ reason, supersededBy }) => [reason, supersededBy === null]);
const everything = (choice: MergeChoice): MergeChoices => ({
  description: choice,
  zones: choice,
  findings: choice,
  rulings: choice,
  seen: choice,
  corrections: choice,
  trusted: choice,
});

/** Both go on working on the same recording, each otherwise. */
async function workApart() {
  const { mine, theirs, recordingId } = await twoMachines();
  const common = { recordingId };
  const rule = (machine: Machine, side: number, initials: string, reason: string) =>
    machine.handlers["conflict.rule"]({ ...common, conflictKey: key, decision: "side-stands", side, reason, rightWords: null, initials });
  await mine.handlers["zone.paint"]({ ...common, start: 40, end: 60, zone: "cargo", title: null, initials: "ME" });
  await theirs.handlers["zone.paint"]({ ...common, start: 50, end: 80, zone: "cabin", title: "Seats", initials: "TH" });
  await mine.handlers["finding.add"]({ ...common, ...dent, seen: "my crease", initials: "ME" });
  await theirs.handlers["finding.add"]({ ...common, ...dent, seen: "their crease", initials: "TH" });
  await rule(mine, 0, "ME", "The card says so.");
  await rule(theirs, 1, "TH", "Read again on the sidewall.");
  const note = { ...common, matters: [{ about: "question" as const, key: sampleQuestion.key }] };
  await mine.handlers["matter.note"]({ ...note, state: "seen", reason: "Two are listed.", initials: "ME" });
  await theirs.handlers["matter.note"]({ ...note, state: "waits", reason: "Ask the owner.", initials: "TH" });
  await mine.handlers["caption.correct"]({ ...common, caption: 1, words: "My words.", initials: "ME" });
  await theirs.handlers["caption.correct"]({ ...common, caption: 1, words: "Their words.", initials: "TH" });
  await theirs.handlers["caption.correct"]({ ...common, caption: 2, words: "Only theirs.", initials: "TH" });
  await theirs.handlers["caption.trust"]({ ...common, caption: 6, trusted: false, initials: "TH" });
  const { summary } = await theirs.handlers["recording.get"]({ id: recordingId });
  await theirs.handlers["recording.describe"]({
    id: recordingId,
    title: "Kestrel, second visit",
    stockNumber: summary.stockNumber,
    vehicle: summary.vehicle,
  });
  await theirs.handlers["recording.publish"]({ recordingId, openConflictKeys: [], openMatters: note.matters, initials: "TH" });
  const before = await mine.handlers["recording.get"]({ id: recordingId });
  return { mine, theirs, recordingId, before, path: await bundleOf(theirs, recordingId) };
}

const zones = (detail: RecordingDetail) =>
  detail.lap.filter(({ zoneSpanId }) => zoneSpanId !== null).map(({ zone, start, end }) => [zone, start, end]);
const seen = (detail: RecordingDetail) => detail.findings.map((finding) => finding.seen).filter((words) => words.endsWith("crease"));
const words = (detail: RecordingDetail) => detail.captionCorrections.map((row) => [row.caption, row.words]);
const standing = (detail: RecordingDetail) =>
  detail.rulings.filter(({ supersededBy }) => supersededBy === null).map(({ reason }) => reason);

test("what differs is shown, with whose it is and when it was done", async () => {
  const { mine, path } = await workApart();
  const look = await lookAt(mine, path);
  expect(look.state).toBe("differs");
  const of = (wanted: string) => look.groups.find(({ group }) => group === wanted)?.differences ?? [];
  expect(of("description")).toEqual([
    { what: "Title", mine: "Kestrel walk round", theirs: "Kestrel, second visit", mineBy: "", theirsBy: "" },
  ]);
  expect(of("zones")).toEqual([
    { what: "0:40 to 1:00", mine: "Load space", theirs: null, mineBy: expect.stringMatching(/^ME, 2026-01-05 10:/), theirsBy: "" },
    { what: "0:50 to 1:20", mine: null, theirs: "Cabin “Seats”", mineBy: "", theirsBy: expect.stringMatching(/^TH, 2026-01-05 10:/) },
  ]);
  expect(of("findings")).toMatchObject([
    { what: "0:33 trunk lid", mine: "my crease (damaged, rear), “left of the latch”", theirs: null, mineBy: expect.stringMatching(/^ME/) },
    {
      what: "0:33 trunk lid",
      mine: null,
      theirs: "their crease (damaged, rear), “left of the latch”",
      theirsBy: expect.stringMatching(/^TH/),
    },
  ]);
  expect(of("rulings")).toEqual([
    {
      what: "rear tire size",
      mine: "One side stands (235/60R15): The card says so.",
      theirs: "One side stands (255/60R15): Read again on the sidewall.",
      mineBy: expect.stringMatching(/^ME, 2026/),
      theirsBy: expect.stringMatching(/^TH, 2026/),
    },
  ]);
  expect(of("seen")).toEqual([
    {
      what: "spare wheel",
      mine: "seen: Two are listed.",
      theirs: "open again: Ask the owner.",
      mineBy: expect.stringMatching(/^ME, 2026/),
      theirsBy: expect.stringMatching(/^TH, 2026/),
    },
  ]);
  expect(of("corrections")).toEqual([
    { what: "Caption 2", mine: "“My words.”", theirs: "“Their words.”", mineBy: "ME", theirsBy: "TH" },
    { what: "Caption 3", mine: null, theirs: "“Only theirs.”", mineBy: "", theirsBy: "TH" },
  ]);
  expect(of("trusted")).toEqual([{ what: "Caption 7", mine: "held for speech", theirs: null, mineBy: "CD", theirsBy: "" }]);
  expect(look.adds).toEqual([expect.stringMatching(/^that it was published on 2026-01-05 by TH$/)]);
  expect(look.groups.filter(({ takesBoth }) => !takesBoth).map(({ group }) => group)).toEqual(["description"]);
});

test("nothing is merged before every group has a choice", async () => {
  const { mine, recordingId, before, path } = await workApart();
  await expect(takeBundle(mine, path)).rejects.toMatchObject({ problem: { code: "bundle-differs" } });
  await expect(takeBundle(mine, path, { choices: { zones: "mine" } })).rejects.toMatchObject({
    problem: { code: "bundle-differs", message: expect.not.stringContaining("zones") },
  });
  await expect(takeBundle(mine, path, { choices: everything("both") })).rejects.toMatchObject({ problem: { code: "merge-impossible" } });
  expect(await mine.handlers["recording.get"]({ id: recordingId })).toEqual(before);
});

test("theirs taken is theirs, rulings and all, and one undo brings mine back", async () => {
  const { mine, theirs, recordingId, before, path } = await workApart();
  expect(await takeBundle(mine, path, { choices: everything("theirs"), by: "ME" })).toMatchObject({ outcome: "merged" });
  const after = await mine.handlers["recording.get"]({ id: recordingId });
  const there = await theirs.handlers["recording.get"]({ id: recordingId });
  expect(after.summary.title).toBe("Kestrel, second visit");
  expect([zones(after), after.findings, words(after), after.trustedCaptions, standing(after)]).toEqual([
    zones(there),
    there.findings,
    words(there),
    there.trustedCaptions,
    standing(there),
  ]);
  // Mine stays on record, superseded: rulings are never taken away.
  expect(after.rulings.find(({ reason }) => reason === "The card says so.")?.supersededBy).toBe(
    after.rulings.find(({ supersededBy }) => supersededBy === null)?.id,
  );
  expect(after.undoLabel).toMatch(/^merge of /);
  // Another publication has happened, whatever is undone.
  expect(after.publications.map(({ initials }) => initials)).toEqual(["AB", "TH"]);
  const undone = await mine.handlers["edit.undo"]({ recordingId, initials: "ME" });
  expect(undone.summary.title).toBe("Kestrel walk round");
  expect([zones(undone), undone.findings, words(undone), undone.trustedCaptions, standing(undone)]).toEqual([
    zones(before),
    before.findings,
    words(before),
    before.trustedCaptions,
    standing(before),
  ]);
  expect(undone.undoLabel).toBe(before.undoLabel);
  const redone = await mine.handlers["edit.redo"]({ recordingId, initials: "ME" });
  expect([redone.summary.title, zones(redone), redone.findings, redone.rulings]).toEqual([
    after.summary.title,
    zones(after),
    after.findings,
    after.rulings,
  ]);
  expect((await mine.handlers["search.find"]({ query: "second visit cabin", limit: 5 })).length).toBeGreaterThan(0);
});

test("both kept: theirs is added, and where one thing stands otherwise, mine stays", async () => {
  const { mine, recordingId, before, path } = await workApart();
  await takeBundle(mine, path, { choices: { ...everything("both"), description: "mine" }, by: "ME" });
  const after = await mine.handlers["recording.get"]({ id: recordingId });
  expect(after.summary.title).toBe(before.summary.title);
  expect(zones(after)).toEqual([
    ["roof", 20, 40],
    ["cargo", 40, 60],
    ["cabin", 60, 80],
  ]);
  expect(seen(after).toSorted()).toEqual(["my crease", "their crease"]);
  expect(words(after)).toEqual([
    [0, "Good morning from the forecourt."],
    [1, "My words."],
    [2, "Only theirs."],
  ]);
  expect(standing(after)).toEqual(["The card says so."]);
  expect(after.rulings.map(({ reason }) => reason)).toContain("Read again on the sidewall.");
  expect(after.trustedCaptions).toEqual(before.trustedCaptions);
  const undone = await mine.handlers["edit.undo"]({ recordingId, initials: "ME" });
  expect([zones(undone), seen(undone), words(undone), standing(undone)]).toEqual([
    zones(before),
    seen(before),
    words(before),
    standing(before),
  ]);
});

test("mine kept is as it was, and the same bundle asks no second time by itself", async () => {
  const { mine, recordingId, before, path } = await workApart();
  await takeBundle(mine, path, { choices: everything("mine") });
  const after = await mine.handlers["recording.get"]({ id: recordingId });
  expect({ ...after, summary: null, publications: null }).toEqual({ ...before, summary: null, publications: null });
  expect(await lookAt(mine, path)).toMatchObject({ state: "differs", seen: true });
});

test("groups are chosen one by one", async () => {
  const { mine, recordingId, path } = await workApart();
  await takeBundle(mine, path, { choices: { ...everything("mine"), rulings: "theirs", findings: "both" }, by: "ME" });
  const after = await mine.handlers["recording.get"]({ id: recordingId });
  expect([after.summary.title, seen(after).length, standing(after)]).toEqual(["Kestrel walk round", 2, ["Read again on the sidewall."]]);
  expect(zones(after)).toContainEqual(["cargo", 40, 60]);
});

test("a ruling that they took back is taken back here where theirs is chosen", async () => {
  const { mine, theirs, recordingId } = await twoMachines();
  for (let step = 0; step < 20; step += 1) {
    const { undoLabel, openConflictKeys } = await theirs.handlers["recording.get"]({ id: recordingId });
    if (undoLabel === null || openConflictKeys.length > 0) break;
    await theirs.handlers["edit.undo"]({ recordingId, initials: "TH" });
  }
  const path = await bundleOf(theirs, recordingId);
  const before = await mine.handlers["recording.get"]({ id: recordingId });
  expect(before.openConflictKeys).toEqual([]);
  await takeBundle(mine, path, { choices: { ...everything("mine"), rulings: "theirs" } });
  expect((await mine.handlers["recording.get"]({ id: recordingId })).openConflictKeys).toEqual([key]);
  expect((await mine.handlers["edit.undo"]({ recordingId, initials: "ME" })).openConflictKeys).toEqual([]);
});

test("both machines, each with the other's bundle, end alike where theirs and mine are chosen across", async () => {
  const { mine, theirs, recordingId, path } = await workApart();
  const back = await bundleOf(mine, recordingId);
  await takeBundle(theirs, back, { choices: everything("mine") });
  await takeBundle(mine, path, { choices: everything("theirs") });
  const [here, there] = [
    await mine.handlers["recording.get"]({ id: recordingId }),
    await theirs.handlers["recording.get"]({ id: recordingId }),
  ];
  expect([zones(here), here.findings, words(here), standing(here), here.publications]).toEqual([
    zones(there),
    there.findings,
    words(there),
    standing(there),
    there.publications,
  ]);
});

test("another stock sheet is told, and the one that is here stays", async () => {
  const { mine, theirs, recordingId } = await twoMachines();
  const sheet = join(theirs.folder, "newer.csv");
  writeFileSync(sheet, "Stock Number,Mileage\nFK-1971,70000\n");
  await theirs.handlers["lot.take"]({ stockSheet: theirs.parts.files.offerPath(sheet).id, recordingIds: [recordingId] });
  await theirs.analyst.idle();
  const path = await bundleOf(theirs, recordingId);
  expect(await lookAt(mine, path)).toMatchObject({ state: "same", stays: ["its stock sheet is another than the one here, which stays"] });
  expect(await takeBundle(mine, path)).toMatchObject({ outcome: "unchanged" });
  expect((await mine.handlers["recording.get"]({ id: recordingId })).stockSheet).toMatchObject({ mileage: "68000" });
});

/** The same stretch, called otherwise on each machine; `more`: they also draw one that is free here. */
async function titledApart(more: boolean) {
  const { mine, theirs, recordingId } = await twoMachines();
  const span = { recordingId, start: 40, end: 60, zone: "cargo" } as const;
  await mine.handlers["zone.paint"]({ ...span, title: "My bed", initials: "ME" });
  await theirs.handlers["zone.paint"]({ ...span, title: "Their bed", initials: "TH" });
  if (more) await theirs.handlers["zone.paint"]({ ...span, start: 70, end: 80, zone: "cabin", title: null, initials: "TH" });
  const before = await mine.handlers["recording.get"]({ id: recordingId });
  return { mine, recordingId, before, path: await bundleOf(theirs, recordingId) };
}

const titles = (detail: RecordingDetail) => detail.lap.filter(({ start }) => start === 40).map(({ title }) => title);

test("two titles of one zone: both is not offered and refused; one side is asked for", async () => {
  const { mine, recordingId, before, path } = await titledApart(false);
  expect((await lookAt(mine, path)).groups).toMatchObject([{ group: "zones", takesBoth: false, clashes: ["0:40 to 1:00"] }]);
  await expect(takeBundle(mine, path, { choices: { zones: "both" } })).rejects.toMatchObject({
    problem: { code: "merge-impossible", message: expect.stringMatching(/0:40 to 1:00.*Nothing was changed/) },
  });
  expect(await mine.handlers["recording.get"]({ id: recordingId })).toEqual(before);
  expect(await takeBundle(mine, path, { choices: { zones: "theirs" }, by: "ME" })).toMatchObject({ outcome: "merged" });
  expect(titles(await mine.handlers["recording.get"]({ id: recordingId }))).toEqual(["Their bed"]);
  expect(titles(await mine.handlers["edit.undo"]({ recordingId, initials: "ME" }))).toEqual(["My bed"]);
});

test("what is here chosen throughout changes nothing, says so, and leaves the earlier edit to undo", async () => {
  const { mine, recordingId, before, path } = await titledApart(false);
  expect(await takeBundle(mine, path, { choices: { zones: "mine" } })).toMatchObject({ outcome: "unchanged" });
  expect((await mine.handlers["recording.get"]({ id: recordingId })).undoLabel).toBe(before.undoLabel);
});

test("beside what can be added, it is told which title stays", async () => {
  const { mine, recordingId, path } = await titledApart(true);
  expect((await lookAt(mine, path)).groups).toMatchObject([{ group: "zones", takesBoth: true, clashes: ["0:40 to 1:00"] }]);
  expect(await takeBundle(mine, path, { choices: { zones: "both" }, by: "ME" })).toMatchObject({ outcome: "merged" });
  const after = await mine.handlers["recording.get"]({ id: recordingId });
  expect(titles(after)).toEqual(["My bed"]);
  expect(zones(after)).toContainEqual(["cabin", 70, 80]);
});

test.for([
  ["theirs", false, 1],
  ["both", true, 0],
] as const)(
  "notes of what was seen, %s chosen: each stays on record, one stands, and undo brings mine back",
  async ([choice, mineStands, open]) => {
    const { mine, recordingId, path } = await workApart();
    await takeBundle(mine, path, { choices: { ...everything("mine"), seen: choice } });
    const after = await mine.handlers["recording.get"]({ id: recordingId });
    expect(notes(after)).toEqual([
      ["Nobody looked yet.", false],
      ["It has none, as the sheet says.", false],
      ["Two are listed.", mineStands],
      ["Ask the owner.", !mineStands],
    ]);
    expect(after.summary.counts.openQuestions).toBe(open);
    const undone = await mine.handlers["edit.undo"]({ recordingId, initials: "ME" });
    expect(notes(undone).filter(([, standing]) => standing)).toEqual([["Two are listed.", true]]);
    expect(notes(undone)).toHaveLength(4);
  },
);

test("a bundle of the form before, without notes, still comes in", async () => {
  const { theirs, recordingId } = await twoMachines();
  const entries = await entriesOf(await bundleOf(theirs, recordingId));
  const older = resealed(
    resealed(entries, "work.json", (text) => {
      const { seenNotes: _, publications, edits, ...work } = JSON.parse(text);
      return JSON.stringify({
        ...work,
        publications: publications.map(({ openMatters: _none, ...publication }: { openMatters: unknown }) => publication),
        edits: edits.filter(({ changes }: { changes: { table: string }[] }) => changes.every(({ table }) => table !== "seen_notes")),
      });
    }),
    "manifest.json",
    (manifest) => manifest.replace(/"version": ?2/, '"version":1'),
  );
  const fresh = sampleApplication();
  expect(await takeBundle(fresh, forged(await zipped(older)))).toMatchObject({ outcome: "imported" });
  const { seenNotes, publications, rulings } = await fresh.handlers["recording.get"]({ id: recordingId });
  expect([seenNotes, publications.map(({ openMatters }) => openMatters), rulings.length]).toEqual([[], [null], 2]);
});
