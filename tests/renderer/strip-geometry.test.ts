import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { stripConflicts } from "../../renderer/mark/strip/conflict-arcs.ts";
import { clustersInView, placedFindings } from "../../renderer/mark/strip/finding-clusters.ts";
import {
  arcsBetween,
  bordersToShow,
  heldBorder,
  leastSpanSeconds,
  nameThatFits,
  secondsAt,
  slideView,
  tickMoments,
  xOf,
  zoomView,
} from "../../renderer/mark/strip/geometry.ts";
import { cornerRadius, innerReach, lanes, outerReach } from "../../renderer/mark/strip/lanes.ts";
import { zoneSigns } from "../../renderer/mark/strip/zone-signs.ts";
import { type Finding, zoneNames } from "../../shared-types/index.ts";
import { sampleDetail } from "../exports/sample-detail.ts";

const anyView = fc
  .record({
    from: fc.double({ min: 0, max: 3000, noNaN: true }),
    span: fc.double({ min: 2, max: 4000, noNaN: true }),
    width: fc.integer({ min: 200, max: 3000 }),
  })
  .map(({ from, span, width }) => ({ from, to: from + span, width }));

describe("moments and points", () => {
  test("a point leads back to its moment", () => {
    fc.assert(
      fc.property(anyView, fc.double({ min: 0, max: 1, noNaN: true }), (view, share) => {
        const moment = view.from + share * (view.to - view.from);
        expect(secondsAt(view, xOf(view, moment))).toBeCloseTo(moment, 4);
      }),
    );
  });
  test("a point beside the strip is held within it", () => {
    const view = { from: 10, to: 20, width: 100 };
    expect(secondsAt(view, -50)).toBe(10);
    expect(secondsAt(view, 500)).toBe(20);
  });
  test("ticks lie in the view, apart enough to read, on round numbers", () => {
    fc.assert(
      fc.property(anyView, (view) => {
        const ticks = tickMoments(view);
        for (const tick of ticks) {
          expect(tick).toBeGreaterThanOrEqual(view.from - 1e-6);
          expect(tick).toBeLessThanOrEqual(view.to + 1e-6);
        }
        for (const [index, tick] of ticks.slice(1).entries())
          expect(xOf(view, tick) - xOf(view, ticks[index] ?? 0)).toBeGreaterThanOrEqual(73.9);
      }),
    );
    expect(tickMoments({ from: 0, to: 120, width: 300 })).toEqual([0, 30, 60, 90, 120]);
  });
});

describe("zoom", () => {
  test("stays within the recording and keeps the moment where it was, unless an end is reached", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 60, max: 5000, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.constantFrom(0.5, 0.8, 1.25, 2),
        (duration, share, factor) => {
          const before = { from: duration * 0.25, to: duration * 0.75, width: 1000 };
          const around = before.from + share * (before.to - before.from);
          const after = zoomView(before, duration, around, factor);
          expect(after.from).toBeGreaterThanOrEqual(0);
          expect(after.to).toBeLessThanOrEqual(duration + 1e-6);
          expect(after.to - after.from).toBeCloseTo(Math.min(duration, Math.max(2, (before.to - before.from) * factor)), 6);
          if (after.from > 0 && after.to < duration - 1e-6) expect(xOf(after, around)).toBeCloseTo(xOf(before, around), 3);
        },
      ),
    );
  });
  test("sliding keeps the length and stops at the ends", () => {
    const view = { from: 10, to: 30, width: 100 };
    expect(slideView(view, 100, 500)).toEqual({ from: 80, to: 100, width: 100 });
    expect(slideView(view, 100, -500)).toEqual({ from: 0, to: 20, width: 100 });
  });
});

describe("arcs", () => {
  test("three sides give two arcs, in order of time", () => {
    expect(arcsBetween([90, 10, 40])).toEqual([
      { from: 10, to: 40 },
      { from: 40, to: 90 },
    ]);
    expect(arcsBetween([10])).toEqual([]);
  });
  test("a conflict joins the first moment of each side, and knows whether it is open", () => {
    const detail = sampleDetail();
    const drawn = stripConflicts(detail.analysis, ["measure:rear tire size"]);
    expect(drawn.map(({ conflict, open, moments }) => ({ topic: conflict.topic, open, moments }))).toEqual([
      { topic: "rear tire size", open: true, moments: [12, 31] },
      { topic: "axle ratio", open: false, moments: [50, 80] },
    ]);
  });
});

describe("borders and names", () => {
  test("a border stays between its neighbours, with a span left on both sides", () => {
    fc.assert(
      fc.property(fc.double({ min: -100, max: 200, noNaN: true }), (wanted) => {
        const held = heldBorder(wanted, 10, 20);
        expect(held - 10).toBeGreaterThanOrEqual(leastSpanSeconds - 1e-9);
        expect(20 - held).toBeGreaterThanOrEqual(leastSpanSeconds - 1e-9);
      }),
    );
    expect(heldBorder(15, 10, 20)).toBe(15);
  });
  test("the longest name that fits is chosen; a shorter room shortens it to the zone's sign, and never to nothing while a line fits", () => {
    const names = ["Driver's side and tires", "Driver's side", "Driver"];
    const fitted = (widthPx: number) => nameThatFits(names, "Dr", widthPx);
    const level = (text: string) => ({ text, upright: false });
    expect(fitted(300)).toEqual(level("Driver's side and tires"));
    expect(fitted(95)).toEqual(level("Driver's side"));
    expect(fitted(50)).toEqual(level("Driver"));
    expect(fitted(40)).toEqual(level("Driv…"));
    expect(fitted(20)).toEqual(level("Dr"));
    expect(fitted(12)).toEqual({ text: "Dr", upright: true });
    expect(fitted(6)).toBeNull();
    for (let width = 10; width < 200; width++) expect(fitted(width)?.text.length).toBeGreaterThanOrEqual(2);
  });
  test("every zone has a sign of two letters, and no two the same", () => {
    expect(new Set(Object.values(zoneSigns)).size).toBe(zoneNames.length);
    for (const sign of Object.values(zoneSigns)) expect(sign).toMatch(/^[A-Z][a-z]$/);
  });
  test("no two lanes of the strip overlap, and all lie between the edge and the plan", () => {
    const ordered = Object.values(lanes).sort((a, b) => a.from - b.from);
    for (const [index, lane] of ordered.slice(1).entries()) expect(lane.from).toBeGreaterThanOrEqual(ordered[index]?.to ?? Number.NaN);
    expect(ordered.at(-1)?.to).toBeLessThanOrEqual(outerReach);
    expect(ordered[0]?.from).toBeGreaterThanOrEqual(-innerReach);
    // In a corner the innermost lane still has a way to go.
    expect(cornerRadius - innerReach).toBeGreaterThan(0);
  });
  test("borders too near to be taken hold of one by one are left out, but for the one that the keyboard is to come to", () => {
    const borders = [0.5, 1, 5, 5.1, 5.2, 9].map((start) => ({ start }));
    const view = { from: 0, to: 10, width: 100 };
    expect(bordersToShow(borders, view, -1)).toEqual([0, 2, 5]);
    expect(bordersToShow(borders, view, 3)).toEqual([0, 2, 3, 5]);
    expect(bordersToShow(borders, { from: 4.9, to: 5.3, width: 100 }, 0)).toEqual([2, 3, 4]);
    expect(bordersToShow(borders, { from: 6, to: 8, width: 100 }, 0)).toEqual([]);
  });
});

describe("findings on the strip", () => {
  const finding = (id: string, start: number, grade: Finding["grade"]): Finding => ({
    id,
    start,
    end: start + 1,
    zone: "rear",
    component: "body",
    part: null,
    position: null,
    seen: `mark ${id}`,
    grade,
    note: "",
    stillAt: null,
    proposalKey: null,
    initials: "AB",
  });
  const view = { from: 0, to: 100, width: 1000 };

  test.for([
    { name: "far apart, each has its mark", starts: [10, 20, 30], marks: [10, 20, 30] },
    { name: "within six pixels they are one", starts: [10, 10.5, 20], marks: [10, 20] },
    { name: "just over six pixels apart they are two", starts: [10, 10.7], marks: [10, 10.7] },
    { name: "whatever is outside is not drawn", starts: [-5, 50, 105], marks: [50] },
    { name: "in order of time, however they came", starts: [30, 10], marks: [10, 30] },
  ])("$name", ({ starts, marks }) => {
    const placed = placedFindings(starts.map((start, index) => finding(String(index), start, "worn")));
    expect(clustersInView(placed, view).map(({ start }) => start)).toEqual(marks);
  });

  test("one mark for several is shaped by the gravest, names them, and a click picks the first", () => {
    const placed = placedFindings([finding("a", 10, "good"), finding("b", 10.1, "damaged"), finding("c", 10.2, "as-new")]);
    const [mark, ...others] = clustersInView(placed, view);
    expect(others).toEqual([]);
    expect(mark).toMatchObject({ id: "a", grade: "damaged" });
    expect(mark?.words.split("\n")).toHaveLength(3);
  });

  test("closer, the same two are told apart", () => {
    const placed = placedFindings([finding("a", 10, "good"), finding("b", 10.1, "damaged")]);
    expect(clustersInView(placed, { from: 9, to: 11, width: 1000 })).toHaveLength(2);
  });

  test("two thousand findings are no more marks than the width has room for", () => {
    const placed = placedFindings(Array.from({ length: 2000 }, (_, index) => finding(String(index), index / 20, "worn")));
    expect(clustersInView(placed, view).length).toBeLessThanOrEqual(1000 / 6 + 1);
  });
});
