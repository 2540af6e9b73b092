import { expect, test } from "vitest";
import { openWords } from "../../renderer/check/matters-at-hand.ts";
import { alsoLines, openConflictLine, openGroups, publishedAsItStands } from "../../renderer/check/publish-lines.ts";
import { itemOfPlace } from "../../renderer/check/queue.ts";
import { placeOfHash } from "../../renderer/shared/place.ts";
import type { RecordingDetail } from "../../shared-types/index.ts";
import { sampleDetail } from "../exports/sample-detail.ts";

const detail = sampleDetail();
const promise = {
  ...{ id: "p1", key: "p", kind: "absolute" as const, captions: [2], start: 80, end: 84, quote: "it never leaks", spans: [] },
  ...{ why: "Absolute.", rule: { name: "r", source: "s" } },
} as const;
const full: RecordingDetail = {
  ...detail,
  analysis: {
    ...detail.analysis,
    promises: [{ ...promise, captions: [2], spans: [{ caption: 2, start: 0, end: 4 }] }],
    doubtful: [{ caption: 2, why: "noise" }],
    questions: [{ id: "q", key: "q", about: "zone" as const, topic: "roof", question: "What does the roof look like?" }],
  },
};

const itemsOf = (lines: readonly { readonly href: string | null }[]) =>
  lines.map(({ href }) => {
    const place = href === null ? null : placeOfHash(href);
    return place?.screen === "recording" && place.item ? itemOfPlace(null, place.item) : null;
  });

test("each line that counts something leads to the first of it", () => {
  const lines = alsoLines(full);
  expect(itemsOf(lines)).toEqual([null, { kind: "doubtful", key: "2" }, null]);
  // Nobody accepted the opening at 0:00, so that is where Mark is opened.
  expect(placeOfHash(lines.at(-1)?.href ?? "")).toMatchObject({ screen: "recording", desk: "mark", at: 0 });
});

test("a line that counts nothing leads nowhere", () => {
  const { summary, analysis } = detail;
  const counts = { ...summary.counts, proposals: 0, proposedZones: 0 };
  const empty = { ...detail, summary: { ...summary, counts }, analysis: { ...analysis, denials: [] } };
  expect(alsoLines(empty).map(({ href }) => href)).toEqual([null, null, null]);
});

test("what nobody has dealt with is named, kind by kind, each with the way to it; what was noted as seen is not", () => {
  const groups = openGroups(full);
  expect(groups.map(({ words, lines }) => [words, lines.map((line) => line.words)])).toEqual([
    ["1 claim the stock sheet denies", ["windshield: the stock sheet says cracked"]],
    ["1 promise", ["“it never leaks”"]],
    ["1 question", ["What does the roof look like?"]],
  ]);
  expect(itemsOf(groups.flatMap(({ lines }) => lines))).toEqual([
    { kind: "denial", key: "glass" },
    { kind: "promise", key: "p1" },
    { kind: "question", key: "q" },
  ]);
  const note = {
    ...{ id: "0b6a5c1e-8f57-4a55-9d2c-2f6f0f9c3e0a", about: "promise" as const, key: "p", state: "seen" as const, reason: "Of the roof." },
    ...{ initials: "RT", at: "2026-01-06T10:00:00.000Z", supersededBy: null, topic: "“it never leaks”", told: "Absolute." },
  };
  expect(openGroups({ ...full, seenNotes: [note] }).map(({ kind }) => kind)).toEqual(["denial", "question"]);
  expect(openGroups({ ...full, seenNotes: [{ ...note, state: "waits" }] }).map(({ kind }) => kind)).toEqual([
    "denial",
    "promise",
    "question",
  ]);
});

test("what is open is counted in words", () => {
  const matters = [
    { about: "denial", key: "a" },
    { about: "promise", key: "b" },
    { about: "promise", key: "c" },
  ].map((ref) => ({
    ...(ref as { about: "denial" | "promise"; key: string }),
    topic: "",
    told: "",
  }));
  expect(openWords(2, matters)).toBe("2 conflicts, and 1 denial by the stock sheet and 2 promises");
  expect([openWords(1, []), openWords(0, matters.slice(0, 1)), openWords(0, [])]).toEqual([
    "1 conflict",
    "1 denial by the stock sheet",
    "",
  ]);
});

test("an open conflict is named with who sent it to the vehicle, while that ruling stands", () => {
  const conflict = { key: "k", topic: "axle ratio" };
  const [ruling] = detail.rulings;
  const look = { ...ruling!, conflictKey: "k", decision: "look-at-vehicle" as const, initials: "QZ", supersededBy: null };
  expect(openConflictLine(conflict, [look])).toBe("axle ratio: to be looked at, says QZ");
  expect(openConflictLine(conflict, [{ ...look, supersededBy: look.id }])).toBe("axle ratio");
  expect(openConflictLine(conflict, [{ ...look, decision: "both-hold" }])).toBe("axle ratio");
  expect(openConflictLine({ ...conflict, key: "another" }, [look])).toBe("axle ratio");
});

test("what went out is what stands until something is decided, undone or opened again", () => {
  const at = "2027-01-01T10:00:00.000Z";
  const ready: RecordingDetail = {
    ...detail,
    openConflictKeys: [],
    analysis: { ...detail.analysis, denials: [], promises: [], questions: [] },
  };
  const published = { at, initials: "RT", openConflicts: 0, openMatters: [] };
  expect(publishedAsItStands({ ...ready, publications: [] })).toBeNull();
  expect(publishedAsItStands({ ...ready, publications: [published] })).toEqual(published);
  const [conflict] = detail.analysis.conflicts;
  expect(publishedAsItStands({ ...ready, publications: [published], openConflictKeys: [conflict!.key] })).toBeNull();
  const later = { ...detail.rulings[0]!, at: "2027-01-01T10:00:01.000Z" };
  expect(publishedAsItStands({ ...ready, publications: [published], rulings: [...ready.rulings, later] })).toBeNull();
  expect(publishedAsItStands({ ...ready, publications: [published], analysis: full.analysis })).toBeNull();
});
