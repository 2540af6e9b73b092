import { expect, test } from "vitest";
import { type MatterRef, openMatters, type RecordingDetail } from "../../shared-types/index.ts";
import { sampleAnalysis, sampleQuestion } from "../support/builders/sample-analysis.ts";
import { importSample, sampleApplication } from "../support/builders/sample-application.ts";

const denial = { id: "d1", key: "tires", field: "tires", sheetValue: "205/70R14", claims: ["c1"], why: "The sheet says so." };
const rule = { name: "UCC 2-313", source: "Uniform Commercial Code" };
const promise = (id: string, start: number) => ({
  id,
  key: "absolute:never",
  kind: "absolute" as const,
  captions: [5],
  start,
  end: start + 2,
  quote: "never",
  spans: [{ caption: 5, start: 0, end: 5 }],
  why: "Nothing is never.",
  rule,
});
const roof = { id: "q2", key: "zone:roof", about: "zone" as const, topic: "roof", question: "Is there footage of the roof?" };
const analysis = sampleAnalysis({
  denials: [denial],
  promises: [promise("p1", 90), promise("p2", 110)],
  questions: [sampleQuestion, roof],
});
const refs = {
  denial: { about: "denial", key: "tires" },
  promise: { about: "promise", key: "absolute:never" },
  question: { about: "question", key: sampleQuestion.key },
  roof: { about: "question", key: "zone:roof" },
} as const satisfies Record<string, MatterRef>;

async function ground() {
  const application = sampleApplication({ answer: () => analysis });
  const { id: recordingId, counts } = await importSample(application, application);
  const { handlers } = application;
  const counted = async () => {
    const [row] = await handlers["recording.list"]({});
    return row && [row.counts.openDenials, row.counts.openPromises, row.counts.openQuestions];
  };
  const note = (matters: readonly MatterRef[], reason: string, state: "seen" | "waits" = "seen") =>
    handlers["matter.note"]({ recordingId, matters: [...matters], state, reason, initials: "RT" });
  return { application, handlers, recordingId, counts, counted, note };
}

const standing = ({ seenNotes }: RecordingDetail) =>
  seenNotes.map(({ reason, supersededBy }) => [reason, supersededBy === null ? "stands" : "superseded"]);

test("what was noted as seen no longer waits, the same words said twice are one matter, and undo brings it back", async () => {
  const { handlers, recordingId, counts, counted, note } = await ground();
  expect([counts.openDenials, counts.openPromises, counts.openQuestions]).toEqual([1, 1, 2]);
  const noted = await note([refs.promise], "He says it of the roof rack.");
  expect(await counted()).toEqual([1, 0, 2]);
  expect(noted.undoLabel).toBe("note of “never” as seen");
  expect(noted.seenNotes).toMatchObject([
    {
      about: "promise",
      key: "absolute:never",
      state: "seen",
      initials: "RT",
      topic: "“never”",
      told: expect.stringContaining("Nothing is never."),
    },
  ]);
  expect(noted.seenNotes[0]?.at).toMatch(/^20\d\d-/);
  const undone = await handlers["edit.undo"]({ recordingId, initials: "RT" });
  expect(await counted()).toEqual([1, 1, 2]);
  expect(standing(undone)).toEqual([["He says it of the roof rack.", "superseded"]]);
  await handlers["edit.redo"]({ recordingId, initials: "RT" });
  expect(await counted()).toEqual([1, 0, 2]);
});

test("a later note supersedes the one before, which is never deleted or reworded", async () => {
  const { application, handlers, recordingId, counted, note } = await ground();
  await note([refs.denial], "Read on the tire: the sheet is old.");
  const again = await note([refs.denial], "The sheet was right after all.", "waits");
  expect(await counted()).toEqual([1, 1, 2]);
  expect(standing(again)).toEqual([
    ["Read on the tire: the sheet is old.", "superseded"],
    ["The sheet was right after all.", "stands"],
  ]);
  expect(again.seenNotes[0]?.supersededBy).toBe(again.seenNotes[1]?.id);
  const undone = await handlers["edit.undo"]({ recordingId, initials: "RT" });
  expect(standing(undone)).toEqual([
    ["Read on the tire: the sheet is old.", "stands"],
    ["The sheet was right after all.", "superseded"],
  ]);
  const { library } = application.parts;
  const [first] = library.seenNotes.of(recordingId);
  library.seenNotes.put(recordingId, { ...first!, reason: "Something else." });
  expect(library.seenNotes.of(recordingId)[0]?.reason).toBe("Read on the tire: the sheet is old.");
});

test("several are noted at once, as one edit, all or none", async () => {
  const { handlers, recordingId, counted, note } = await ground();
  await expect(async () => note([refs.question, { about: "question", key: "gone" }], "Asked the lot.")).rejects.toThrow(
    /nothing was noted/,
  );
  expect(await counted()).toEqual([1, 1, 2]);
  const noted = await note([refs.question, refs.roof, refs.question], "Asked the lot.");
  expect(noted.undoLabel).toBe("note of 2 matters as seen");
  expect(await counted()).toEqual([1, 1, 0]);
  await handlers["edit.undo"]({ recordingId, initials: "RT" });
  expect(await counted()).toEqual([1, 1, 2]);
});

test("a denial is also dealt with by rulings, and a question of a zone by marking it", async () => {
  const { handlers, recordingId, counted } = await ground();
  const ruling = { recordingId, conflictKey: "measure/rear tire size", reason: "Read on the tire.", rightWords: null, initials: "RT" };
  await handlers["conflict.rule"]({ ...ruling, decision: "side-stands", side: 1 });
  expect(await counted()).toEqual([0, 1, 2]);
  await handlers["zone.paint"]({ recordingId, start: 20, end: 40, zone: "roof", title: null, initials: "RT" });
  expect(await counted()).toEqual([0, 1, 1]);
  const { analysis: found, lap, rulings, seenNotes } = await handlers["recording.get"]({ id: recordingId });
  const spans = lap.filter(({ zoneSpanId }) => zoneSpanId !== null);
  expect(openMatters({ analysis: found, spans, rulings, seenNotes }).map(({ topic }) => topic)).toEqual(["“never”", "spare wheel"]);
});

test("a note stays in the record when its matter is no longer found", async () => {
  let found = analysis;
  const application = sampleApplication({ answer: () => found });
  const { id: recordingId } = await importSample(application, application);
  const { handlers } = application;
  await handlers["matter.note"]({ recordingId, matters: [refs.roof], state: "seen", reason: "It is in the second film.", initials: "RT" });
  found = sampleAnalysis();
  const { seenNotes, summary } = await handlers["recording.analyse"]({ id: recordingId });
  expect(seenNotes).toMatchObject([{ topic: "roof", reason: "It is in the second film.", supersededBy: null }]);
  expect(summary.counts).toMatchObject({ openDenials: 0, openPromises: 0, openQuestions: 1 });
  const record = await handlers["export.preview"]({ recordingId, format: "record-json", granularity: "zones" });
  expect(JSON.parse(record.text)).toMatchObject({
    formerNotes: [
      { topic: "roof", told: "Is there footage of the roof?", reason: "It is in the second film.", initials: "RT", superseded: false },
    ],
    questions: [{ topic: "spare wheel", notes: [], open: true }],
    leftOpen: { matters: [sampleQuestion.question] },
  });
});
