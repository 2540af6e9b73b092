import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { hitAt, type LapHit } from "../../renderer/mark/strip/lap-hits.ts";
import {
  chordBetween,
  nearestOn,
  pointOn,
  straightRuns,
  type Track,
  trackLength,
  trackPieces,
  turnOfWords,
} from "../../renderer/mark/strip/track.ts";

const track: Track = { width: 1000, height: 400, inset: 40, radius: 50 };
const pieces = trackPieces(track);
const length = trackLength(track);
const anyTrack = fc.record({
  width: fc.integer({ min: 240, max: 3000 }),
  height: fc.integer({ min: 220, max: 1200 }),
  inset: fc.constant(40),
  radius: fc.integer({ min: 41, max: 60 }),
});

describe("the way round the plan", () => {
  test("is as long as its sides and three quarters of a circle", () => {
    // Sides: 820 above and below, 220 right and left.
    expect(length).toBeCloseTo(2 * 820 + 2 * 220 + 1.5 * Math.PI * 50, 6);
  });
  test("goes along the top first, then down on the right, back below, and up on the left to just short of where it began", () => {
    expect(pointOn(pieces, 50, 0)).toEqual({ x: 90, y: 40, degrees: 0 });
    expect(pointOn(pieces, 50, 820)).toMatchObject({ x: 910, y: 40 });
    const corner = Math.PI * 25;
    expect(pointOn(pieces, 50, 820 + corner + 110)).toMatchObject({ x: 960, degrees: 90 });
    expect(pointOn(pieces, 50, 820 + corner + 220 + corner + 410).x).toBeCloseTo(500, 6);
    expect(pointOn(pieces, 50, 820 + corner + 220 + corner + 410).y).toBeCloseTo(360, 6);
    const end = pointOn(pieces, 50, length);
    expect([end.x, end.y, end.degrees]).toEqual([expect.closeTo(40, 6), expect.closeTo(90, 6), 270]);
  });
  test("outwards is away from the plan on every side", () => {
    for (const [along, x, y] of [
      [400, 490, 30],
      [820 + Math.PI * 25 + 110, 970, 200],
    ] as const)
      expect(pointOn(pieces, 50, along, 10)).toMatchObject({ x: expect.closeTo(x, 6), y: expect.closeTo(y, 6) });
    expect(pointOn(pieces, 50, length - 20, 10).x).toBeCloseTo(30, 6);
  });
  test("has no gap or leap: a little further along is a little further on the screen", () => {
    fc.assert(
      fc.property(anyTrack, fc.double({ min: 0, max: 1, noNaN: true }), (any, share) => {
        const way = trackPieces(any);
        const along = share * (trackLength(any) - 1);
        const [a, b] = [pointOn(way, any.radius, along), pointOn(way, any.radius, along + 1)];
        expect(Math.hypot(b.x - a.x, b.y - a.y)).toBeGreaterThan(0.99);
        expect(Math.hypot(b.x - a.x, b.y - a.y)).toBeLessThan(1.001);
      }),
    );
  });
  test("a point beside it leads back to its length, as far as a lane reaches", () => {
    fc.assert(
      fc.property(
        anyTrack,
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: -38, max: 38, noNaN: true }),
        (any, share, outwards) => {
          const way = trackPieces(any);
          const along = share * trackLength(any);
          const { x, y } = pointOn(way, any.radius, along, outwards);
          const found = nearestOn(way, any.radius, x, y);
          expect(found.along).toBeCloseTo(along, 3);
          expect(found.outwards).toBeCloseTo(outwards, 3);
        },
      ),
    );
  });
  test("the hand that leaves the open corner stays at the beginning or at the end", () => {
    expect(nearestOn(pieces, 50, 80, 35).along).toBe(0);
    expect(nearestOn(pieces, 50, 38, 80).along).toBeCloseTo(length, 6);
  });
});

describe("words along the way", () => {
  test("are written on the longest straight run of a span, and nowhere within a corner", () => {
    expect(straightRuns(pieces, 100, 300)).toEqual([{ from: 100, to: 300, degrees: 0 }]);
    const corner = Math.PI * 25;
    expect(straightRuns(pieces, 800, 820 + corner + 100)).toEqual([
      { from: 820 + corner, to: 820 + corner + 100, degrees: 90 },
      { from: 800, to: 820, degrees: 0 },
    ]);
    expect(straightRuns(pieces, 825, 840)).toEqual([]);
  });
  test.for([
    [0, 0],
    [90, 90],
    [180, 0],
    [270, -90],
    [360, 0],
  ] as const)("where time goes at %d degrees they are turned by %d, never upside down", ([degrees, turn]) => {
    expect(turnOfWords(degrees)).toBe(turn);
  });
});

describe("the lines across the plan", () => {
  test("leave the strip straight towards the plan at both ends", () => {
    const [x1, y1, c1x, c1y, c2x, c2y, x2, y2] = chordBetween(pointOn(pieces, 50, 300), pointOn(pieces, 50, length - 100));
    expect([x1, y1]).toEqual([390, 40]);
    expect(c1x).toBeCloseTo(x1, 6);
    expect(c1y).toBeGreaterThan(y1 + 17);
    expect(c2y).toBeCloseTo(y2, 6);
    expect(c2x).toBeGreaterThan(x2 + 17);
  });
});

describe("what the pointer picks", () => {
  const conflict: LapHit = { kind: "conflict", x: 100, y: 100, key: "c", words: "rear tire size" };
  const made: LapHit = { kind: "finding", x: 104, y: 100, id: "f", words: "chip, Worn" };
  const proposed: LapHit = { kind: "finding", x: 108, y: 100, id: null, words: "Proposed: chip" };
  test("is the nearest within reach", () => {
    expect(hitAt([conflict, made], 101, 100)).toBe(conflict);
    expect(hitAt([conflict, made], 103, 101)).toBe(made);
    expect(hitAt([conflict, made], 130, 100)).toBeNull();
    expect(hitAt([], 0, 0)).toBeNull();
  });
  test("what can be opened comes before what is only proposed close by", () => {
    expect(hitAt([proposed, made], 107, 100)).toBe(made);
    expect(hitAt([proposed], 107, 100)).toBe(proposed);
  });
});
