import { expect, test } from "vitest";
import { alsoLines } from "../../renderer/check/publish-lines.ts";
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

test("each line that counts something leads to the first of it", () => {
  const places = alsoLines(full).map(({ href }) => (href === null ? null : placeOfHash(href)));
  const items = places.map((place) => (place?.screen === "recording" && place.item ? itemOfPlace(null, place.item) : null));
  expect(items).toEqual([{ kind: "denial", key: "glass" }, { kind: "promise", key: "p1" }, null, { kind: "doubtful", key: "2" }, null]);
  // Nobody accepted the opening at 0:00, so that is where Mark is opened.
  expect(places.at(-1)).toMatchObject({ screen: "recording", desk: "mark", at: 0 });
  expect(alsoLines(full)[2]?.details).toEqual(["What does the roof look like?"]);
});

test("a line that counts nothing leads nowhere", () => {
  const { summary, analysis } = detail;
  const counts = { ...summary.counts, proposals: 0, proposedZones: 0 };
  const empty = { ...detail, summary: { ...summary, counts }, analysis: { ...analysis, denials: [] } };
  expect(alsoLines(empty).map(({ href }) => href)).toEqual([null, null, null, null, null]);
});
