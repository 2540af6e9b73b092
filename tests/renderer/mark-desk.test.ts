import { describe, expect, test } from "vitest";
import { claimsCount } from "../../renderer/mark/captions/claims-count.ts";
import { doubtfulStretches } from "../../renderer/mark/doubtful-stretches.ts";
import { draftOfFinding, faultsOfFinding, findingOfDraft, newFindingDraft, withStart } from "../../renderer/mark/findings/finding-draft.ts";
import { borderBeside, heldToBorder, justPast, nearestBorder, nextSpanOfZone, spanAt } from "../../renderer/mark/lap.ts";
import { tallySentence } from "../../renderer/mark/plan/zone-tallies.ts";
import { markEnd, markedStretch, markStart, noMarks } from "../../renderer/mark/use-marks.ts";
import { captionAt } from "../../renderer/player/caption-at.ts";
import { bodyStyles, type Finding, outlines, walkRing, zoneTallies } from "../../shared-types/index.ts";
import { sampleDetail } from "../exports/sample-detail.ts";

const detail = sampleDetail();

describe("a new finding", () => {
  const draft = newFindingDraft({ stretch: null, markedStart: null, now: 40, duration: 120, zone: "rear" });
  test("has no grade until a person gives one", () => {
    expect(draft.grade).toBeNull();
    expect(() => findingOfDraft({ ...draft, seen: "chip" })).toThrow(/grade/);
  });
  test("takes the zone in view at its start, until a person chooses another", () => {
    expect(withStart(draft, "0:29", detail.lap)).toMatchObject({ start: "0:29", zone: "front" });
    expect(withStart(draft, "noon", detail.lap)).toMatchObject({ start: "noon", zone: "rear" });
    expect(withStart({ ...draft, zone: "roof", zoneChosen: true }, "0:29", detail.lap).zone).toBe("roof");
  });
});

describe("the lap", () => {
  test("a moment on a border belongs to the later span; after the end the last one holds", () => {
    expect(spanAt(detail.lap, 30)?.zone).toBe("rear");
    expect(spanAt(detail.lap, 29.999)?.zone).toBe("front");
    expect(spanAt(detail.lap, 500)?.zone).toBe("underside");
    expect(spanAt([], 5)).toBeUndefined();
  });
  test("a player that stops a tick short of the border it was sent to is in the later span", () => {
    expect(spanAt(detail.lap, 30 - 1e-6)?.zone).toBe("rear");
    expect(spanAt(detail.lap, 75 - 1e-6)).toBe(spanAt(detail.lap, 75));
  });
  test("the playhead goes a tick past a border, never past the end, and the way back does not stop there again", () => {
    for (const border of [4, 30, 75]) {
      const landed = justPast(border, 120);
      expect(landed).toBeGreaterThan(border);
      expect(spanAt(detail.lap, landed - 1e-6)).toBe(spanAt(detail.lap, border));
      expect(borderBeside(detail.lap, landed, -1)).toBeLessThan(border);
      expect(borderBeside(detail.lap, landed, 1)).toBeGreaterThan(border);
    }
    expect(justPast(120, 120)).toBe(120);
    expect(justPast(0, 120)).toBe(0);
  });
  test("a mark a frame or two beside a border is on it, and any other stays where it was set", () => {
    const frame = 1 / 25;
    for (const beside of [30, 30 + 0.0005, 30 - 1e-6, 30 + frame, 30 - 2 * frame]) expect(heldToBorder(detail.lap, beside, frame)).toBe(30);
    for (const apart of [30.1, 29.9, 50]) expect(heldToBorder(detail.lap, apart, frame)).toBe(apart);
    // The recording's own ends count as borders; with more frames to the second, less is near.
    expect(heldToBorder(detail.lap, 0.03, frame)).toBe(0);
    expect(heldToBorder(detail.lap, 119.98, frame)).toBe(120);
    expect(heldToBorder(detail.lap, 30.05, 1 / 60)).toBe(30.05);
    expect(heldToBorder([], 5, frame)).toBe(5);
  });
  test("borders before, after and nearest", () => {
    expect(borderBeside(detail.lap, 30, 1)).toBe(75);
    expect(borderBeside(detail.lap, 30, -1)).toBe(4);
    expect(borderBeside(detail.lap, 2, -1)).toBe(0);
    expect(borderBeside(detail.lap, 119, 1)).toBe(120);
    expect(nearestBorder(detail.lap, 60)).toBe(75);
    expect(nearestBorder(detail.lap.slice(0, 1), 2)).toBeUndefined();
  });
  test("picking a zone again goes to its next span, then round to the first", () => {
    const lap = [...detail.lap, { ...(detail.lap[1] ?? never()), start: 120, end: 140 }];
    expect(nextSpanOfZone(lap, "front", 0)?.start).toBe(4);
    expect(nextSpanOfZone(lap, "front", 4)?.start).toBe(120);
    expect(nextSpanOfZone(lap, "front", 125)?.start).toBe(4);
    expect(nextSpanOfZone(lap, "roof", 0)).toBeUndefined();
  });
});

function never(): never {
  throw new Error("The sample has two spans or more.");
}

describe("the plan view", () => {
  test("time, findings and open conflicts are counted per zone", () => {
    const tallies = zoneTallies(detail);
    expect(tallies.front.seconds).toBe(26);
    expect(tallies.roof).toEqual({ seconds: 0, findings: 0, proposals: 0, openConflicts: 0 });
    expect(tallies.rear.findings).toBe(detail.findings.filter(({ zone }) => zone === "rear").length);
    const spoken = new Set(detail.analysis.claims.map(({ zone }) => zone));
    const disputed = Object.entries(tallies).filter(([, tally]) => tally.openConflicts > 0);
    expect(disputed.length).toBeGreaterThan(0);
    for (const [zone] of disputed) expect(spoken).toContain(zone);
  });
  test("a tally is said in words", () => {
    expect(tallySentence({ seconds: 108, findings: 1, proposals: 0, openConflicts: 2 })).toBe("1:48, 1 finding, 2 open conflicts");
    expect(tallySentence({ seconds: 0, findings: 0, proposals: 0, openConflicts: 0 })).toBe("no stretch marked");
  });
  test("nose to the left, the driver of a left-hand drive sits below, of a right-hand drive above", () => {
    const sideAt = (drive: "left-hand" | "right-hand", zone: string) => walkRing(drive).find((piece) => piece.zone === zone)?.labelY ?? 0;
    expect(sideAt("left-hand", "driver-side")).toBeGreaterThan(sideAt("left-hand", "passenger-side"));
    expect(sideAt("right-hand", "driver-side")).toBeLessThan(sideAt("right-hand", "passenger-side"));
  });
  test.for(bodyStyles)("the parts of a %s follow one another from nose to tail", (style) => {
    const { cowl, roofFrom, roofTo, deck, frontAxle, rearAxle } = outlines[style];
    expect(frontAxle).toBeLessThan(rearAxle);
    expect(cowl).toBeLessThan(roofFrom);
    expect(roofFrom).toBeLessThanOrEqual(roofTo);
    expect(cowl).toBeLessThan(deck);
    expect(deck).toBeLessThan(1);
  });
});

describe("marks", () => {
  test("an out before the in, or an in after the out, drops the other", () => {
    expect(markEnd(markStart(noMarks, 10), 5)).toEqual({ start: null, end: 5 });
    expect(markStart(markEnd(noMarks, 5), 10)).toEqual({ start: 10, end: null });
    expect(markedStretch(markEnd(markStart(noMarks, 10), 15))).toEqual({ start: 10, end: 15 });
    expect(markedStretch(markStart(noMarks, 10))).toBeNull();
  });
});

describe("findings", () => {
  test("a finding survives its form", () => {
    const finding = detail.findings[0] as Finding;
    const { id: _, proposalKey: __, initials: ___, ...said } = finding;
    expect(findingOfDraft(draftOfFinding(finding))).toEqual(said);
  });
  test("a new one takes the marked stretch, else runs from the playhead, and never past the end", () => {
    const source = { stretch: null, markedStart: null, now: 118, duration: 120, zone: "rear" as const };
    expect(newFindingDraft(source)).toMatchObject({ start: "1:58.0", end: "2:00.0", zone: "rear" });
    expect(newFindingDraft({ ...source, stretch: { start: 3, end: 9.5 } })).toMatchObject({ start: "0:03.0", end: "0:09.5" });
    expect(newFindingDraft({ ...source, markedStart: 100 })).toMatchObject({ start: "1:40.0", end: "1:58.0" });
  });
  test("what is wrong is said beside its field", () => {
    const draft = {
      ...newFindingDraft({ stretch: null, markedStart: null, now: 10, duration: 120, zone: "rear" }),
      seen: "chip",
      grade: "worn" as const,
    };
    expect(faultsOfFinding(draft, 120)).toEqual({});
    expect(faultsOfFinding({ ...draft, end: "0:05" }, 120).end).toMatch(/before it starts/);
    expect(faultsOfFinding({ ...draft, start: "noon" }, 120).start).toMatch(/“noon” is no time/);
    expect(faultsOfFinding({ ...draft, start: "9:00", end: "9:05" }, 120).start).toMatch(/ends at 2:00\.0/);
    expect(faultsOfFinding({ ...draft, seen: " " }, 120).seen).toBeTruthy();
    expect(faultsOfFinding({ ...draft, grade: null }, 120)).toEqual({ grade: "Choose a grade." });
  });
});

describe("captions", () => {
  test("the caption of a moment is the last that has begun", () => {
    expect(captionAt(detail.captions, 0)).toBe(0);
    expect(captionAt(detail.captions, 29.9)).toBe(0);
    expect(captionAt(detail.captions, 30)).toBe(1);
    expect(captionAt(detail.captions, 1000)).toBe(2);
    expect(captionAt([{ start: 5 }], 1)).toBe(-1);
    expect(captionAt([], 1)).toBe(-1);
  });
  test("doubtful neighbours join when their reason is one", () => {
    const doubtful = [
      { caption: 2, why: "words over music" },
      { caption: 1, why: "words over music" },
      { caption: 0, why: "said again and again" },
      { caption: 9, why: "there is no such caption" },
    ];
    expect(doubtfulStretches(doubtful, detail.captions)).toEqual([
      { start: 0, end: 30, why: "said again and again" },
      { start: 30, end: 120, why: "words over music" },
    ]);
  });
});

test("the captions' count of claims tells those of an earlier state, which the index counts apart", () => {
  expect(claimsCount([{ time: "today" }])).toBe("1 claim");
  expect(claimsCount([{ time: "today" }, { time: "today" }])).toBe("2 claims");
  expect(claimsCount([{ time: "today" }, { time: "former" }, { time: "today" }])).toBe("3 claims, 1 of an earlier state");
});
