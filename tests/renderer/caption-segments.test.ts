import fc from "fast-check";
import { expect, test } from "vitest";
import { captionNotes, captionSegments, disputedClaims } from "../../renderer/shared/caption-segments.ts";
import type { Claim, Repair } from "../../shared-types/index.ts";
import { sampleDetail } from "../exports/sample-detail.ts";

const aClaim = sampleDetail().analysis.claims[0] as Claim;

function claimOn(id: string, spans: Claim["spans"]): Claim {
  return { ...aClaim, id, spans };
}
function repairOn(id: string, spans: Repair["spans"]): Repair {
  return { id, caption: spans[0]?.caption ?? 0, spans, heard: "to 35 60 15s", meant: "235/60R15", rule: "sample", sure: true };
}

test("the words of a claim and of its repair are told apart, and the reading comes after the heard words", () => {
  const text = "and the rears are to 35 60 15s I think";
  const claims = [claimOn("c1", [{ caption: 0, start: 4, end: 30 }])];
  const repairs = [repairOn("r1", [{ caption: 0, start: 18, end: 30 }])];
  const segments = captionSegments(0, text, captionNotes({ claims, repairs, doubtful: [], conflicts: [] }, [])(0));
  expect(segments.map(({ text, claims, repair, repairEnds }) => [text, claims.length, repair?.meant ?? null, repairEnds])).toEqual([
    ["and ", 0, null, false],
    ["the rears are ", 1, null, false],
    ["to 35 60 15s", 1, "235/60R15", true],
    [" I think", 0, null, false],
  ]);
});

test("a repair over two captions shows its reading only in the second", () => {
  const repair = repairOn("r1", [
    { caption: 0, start: 14, end: 19 },
    { caption: 1, start: 0, end: 8 },
  ]);
  const notes = captionNotes({ claims: [], repairs: [repair], doubtful: [], conflicts: [] }, []);
  expect(captionSegments(0, "the rears are to 35", notes(0)).filter((segment) => segment.repairEnds)).toEqual([]);
  expect(
    captionSegments(1, "60 15s, y", notes(1))
      .filter((segment) => segment.repairEnds)
      .map(({ text }) => text),
  ).toEqual(["60 15s, "]);
});

test("whatever the spans, the runs put together are the text as it came", () => {
  const span = fc.record({
    caption: fc.integer({ min: 0, max: 1 }),
    start: fc.integer({ min: 0, max: 60 }),
    end: fc.integer({ min: 0, max: 60 }),
  });
  fc.assert(
    fc.property(
      fc.string({ maxLength: 50 }),
      fc.array(fc.array(span, { minLength: 1, maxLength: 3 }), { maxLength: 5 }),
      fc.array(span, { maxLength: 3 }),
      (text, claimSpans, repairSpans) => {
        const claims = claimSpans.map((spans, index) => claimOn(`c${index}`, spans));
        const repairs = repairSpans.map((one, index) => repairOn(`r${index}`, [one]));
        const segments = captionSegments(0, text, captionNotes({ claims, repairs, doubtful: [], conflicts: [] }, [])(0));
        expect(segments.map((segment) => segment.text).join("")).toBe(text);
        expect(segments.map((segment) => segment.start)).toEqual(
          [...new Set(segments.map((segment) => segment.start))].sort((a, b) => a - b),
        );
      },
    ),
  );
});

test("claims of settled conflicts are not disputed", () => {
  const { conflicts } = sampleDetail().analysis;
  expect([...disputedClaims(conflicts, ["measure:axle ratio"])]).toEqual(["c3", "c4"]);
  expect(disputedClaims(conflicts, []).size).toBe(0);
});
