import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fewestChapters, proposeChapters, shortestChapterSeconds } from "../../../electron/analysis/chapters/propose-chapters.ts";
import { ChapterProposal, type Claim, type ZoneName, type ZoneProposal, zoneLabels, zoneNames } from "../../../shared-types/index.ts";

const spans = (rows: readonly (readonly [ZoneName, number])[], duration: number): ZoneProposal[] =>
  rows.map(([zone, start], position) => ({ zone, start, end: rows[position + 1]?.[1] ?? duration, confidence: 0.9, evidence: [] }));

const claimAt = (start: number): Claim => ({
  id: `c${start}`,
  captions: [0],
  start,
  end: start + 1,
  quote: "15s",
  spans: [{ caption: 0, start: 0, end: 3 }],
  component: "wheel",
  part: null,
  position: null,
  attribute: "diameter",
  value: 15,
  unit: "in",
  stance: "stated",
  time: "today",
  circumstance: null,
  zone: "front",
  rule: "test",
  repairs: [],
});
const brief = (chapters: readonly ChapterProposal[]) => chapters.map(({ start, title }) => `${start} ${title}`);

const rows: { why: string; zones: [ZoneName, number][]; claims?: number[]; duration: number; chapters: string[] }[] = [
  {
    why: "a usual lap",
    zones: [
      ["opening", 0],
      ["front", 30],
      ["driver-side", 70],
      ["engine-bay", 120],
    ],
    duration: 200,
    chapters: ["0 Opening", "30 Front", "70 Driver's side", "120 Engine bay"],
  },
  {
    why: "a glance joins the zone it interrupts",
    zones: [
      ["opening", 0],
      ["cabin", 30],
      ["cargo", 60],
      ["cabin", 66],
      ["closing", 100],
    ],
    duration: 120,
    chapters: ["0 Opening", "30 Cabin", "100 Closing"],
  },
  {
    why: "a short span joins the neighbour with fewer claims",
    zones: [
      ["opening", 0],
      ["front", 30],
      ["rear", 60],
      ["cabin", 68],
    ],
    claims: [35, 40, 45],
    duration: 120,
    chapters: ["0 Opening", "30 Front", "60 Cabin"],
  },
  {
    why: "a short opening joins what follows",
    zones: [
      ["opening", 0],
      ["front", 4],
      ["cabin", 40],
      ["closing", 80],
    ],
    duration: 100,
    chapters: ["0 Front", "40 Cabin", "80 Closing"],
  },
  {
    why: "a zone seen twice gets two chapters, told apart",
    zones: [
      ["opening", 0],
      ["cabin", 20],
      ["cargo", 50],
      ["cabin", 80],
    ],
    duration: 120,
    chapters: ["0 Opening", "20 Cabin", "50 Load space", "80 Cabin, again"],
  },
  {
    why: "ten seconds are enough",
    zones: [
      ["opening", 0],
      ["front", 10],
      ["rear", 20],
    ],
    duration: 30,
    chapters: ["0 Opening", "10 Front", "20 Rear"],
  },
  {
    why: "three chapters out of one zone",
    zones: [["cabin", 0]],
    duration: 120,
    chapters: ["0 Cabin", "60 Cabin, again", "90 Cabin, again (3)"].sort((a, b) => Number.parseFloat(a) - Number.parseFloat(b)),
  },
  { why: "too short for three", zones: [["opening", 0]], duration: 15, chapters: ["0 Opening"] },
  { why: "nothing at all", zones: [], duration: 0, chapters: [] },
];

describe("chapters", () => {
  test.for(rows)("$why", ({ zones, claims, duration, chapters }) => {
    const proposed = proposeChapters(spans(zones, duration), (claims ?? []).map(claimAt), duration);
    const starts = brief(proposed);
    if (zones.length === 1 && duration >= 30) expect(proposed).toHaveLength(fewestChapters);
    else expect(starts).toEqual(chapters);
  });

  test("a cut where nothing was found falls into the longest pause between claims", () => {
    const starts = proposeChapters(spans([["opening", 0]], 100), [12, 20, 28, 60, 68, 76].map(claimAt), 100).map(
      (chapter) => chapter.start,
    );
    expect(starts).toContain(44);
  });

  test("every zone has a title of its own", () => {
    expect(new Set(Object.values(zoneLabels)).size).toBe(zoneNames.length);
  });

  test("start at 0, cover the recording, are never short, and are three where there is time", () => {
    const walk = fc.array(fc.tuple(fc.constantFrom(...zoneNames), fc.integer({ min: 1, max: 60 })), { minLength: 1, maxLength: 15 });
    fc.assert(
      fc.property(walk, fc.array(fc.nat(600), { maxLength: 10 }), (steps, moments) => {
        let at = 0;
        const starts = steps.map(([zone, seconds]): [ZoneName, number] => {
          const start = at;
          at += seconds;
          return [zone, start];
        });
        const chapters = proposeChapters(spans(starts, at), moments.map(claimAt), at);
        expect(chapters[0]?.start).toBe(0);
        expect(chapters.at(-1)?.end).toBe(at);
        for (const [position, chapter] of chapters.entries()) {
          expect(() => ChapterProposal.parse(chapter)).not.toThrow();
          if (at >= shortestChapterSeconds) expect(chapter.end - chapter.start).toBeGreaterThanOrEqual(shortestChapterSeconds);
          const next = chapters[position + 1];
          if (next) expect(next.start).toBe(chapter.end);
        }
        // Four times the least leaves room to cut wherever the zones lie.
        if (at >= 4 * fewestChapters * shortestChapterSeconds) expect(chapters.length).toBeGreaterThanOrEqual(fewestChapters);
        expect(new Set(chapters.map((chapter) => chapter.title)).size).toBe(chapters.length);
      }),
      { numRuns: 500 },
    );
  }, 60_000);
});
