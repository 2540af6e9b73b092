import { expect, test } from "vitest";
import { stripConflicts } from "../../renderer/mark/strip/conflict-arcs.ts";
import { clustersInView, placedFindings } from "../../renderer/mark/strip/finding-clusters.ts";
import { cornerRadius, outerReach } from "../../renderer/mark/strip/lanes.ts";
import { type LapScene, paintLap } from "../../renderer/mark/strip/paint-lap.ts";
import type { Palette } from "../../renderer/mark/strip/palette.ts";
import { trackPieces } from "../../renderer/mark/strip/track.ts";
import { zoneNames } from "../../shared-types/index.ts";
import { sampleDetail } from "../exports/sample-detail.ts";

const size = { width: 1000, height: 420 };
const pieces = trackPieces({ ...size, inset: outerReach, radius: cornerRadius });
const length = pieces.at(-1)?.to ?? 0;
const detail = sampleDetail();
const byZone = (kind: string) => Object.fromEntries(zoneNames.map((zone) => [zone, `${kind} ${zone}`]));
const palette = new Proxy(
  { zones: byZone("ink"), patterns: byZone("pattern"), face: "sans-serif", stamp: () => {} } as unknown as Palette,
  {
    get: (known, name) => Reflect.get(known, name) ?? String(name),
  },
);

/** A canvas that notes what is done on it, and where words are turned to. */
function canvas() {
  const done: { readonly name: string; readonly given: readonly unknown[]; readonly fill: unknown; readonly turned: number }[] = [];
  const state: Record<string, unknown> = {};
  let turned = 0;
  const pen = new Proxy(state, {
    get: (_state, name) => {
      if (typeof name !== "string" || name in state) return state[name as string];
      return (...given: unknown[]) => {
        if (name === "rotate") turned = Math.round(((given[0] as number) * 180) / Math.PI);
        if (name === "restore") turned = 0;
        done.push({ name, given, fill: state.fillStyle, turned });
      };
    },
  });
  return { pen: pen as unknown as CanvasRenderingContext2D, done };
}

function painted(from: number, to: number, change: Partial<LapScene> = {}) {
  const view = { from, to, width: length };
  const { pen, done } = canvas();
  const hits = paintLap(
    pen,
    {
      ...{ pieces, radius: cornerRadius, view, lap: detail.lap, doubtful: [], marks: { start: null, end: null }, pointed: null },
      conflicts: stripConflicts(detail.analysis, ["measure:rear tire size"]),
      proposed: [],
      made: clustersInView(placedFindings(detail.findings), view),
      ...change,
    },
    palette,
  );
  const fills = (fill: string) => done.filter((one) => one.name === "fill" && one.fill === fill).length;
  return { hits, fills, done, words: done.filter(({ name }) => name === "fillText") };
}

test("every span of the whole recording is drawn in its zone's pattern and named", () => {
  const { fills, words } = painted(0, 120);
  for (const { zone, title } of detail.lap) {
    expect(fills(`pattern ${zone}`), zone).toBe(1);
    expect(
      words.some(({ given }) => String(given[0]).startsWith(title.slice(0, 4))),
      title,
    ).toBe(true);
  }
});

test("closer, only what is in the view is drawn", () => {
  const { fills, hits } = painted(5, 25);
  expect(detail.lap.filter(({ zone }) => fills(`pattern ${zone}`) > 0).map(({ zone }) => zone)).toEqual(
    detail.lap.filter(({ start, end }) => end > 5 && start < 25).map(({ zone }) => zone),
  );
  // Of the tires' two moments, 12 and 31 s, the second is out of sight.
  expect(hits.filter(({ kind }) => kind === "conflict").map(({ words }) => words)).toEqual(["rear tire size"]);
});

test("no word stands on its head, on whichever side it is", () => {
  for (const { turned, given } of painted(0, 120).words) expect(Math.abs(turned), String(given[0])).toBeLessThanOrEqual(90);
});

test("each moment of a conflict and each finding can be picked, inside the box and where it says what it is", () => {
  const { hits } = painted(0, 120);
  expect(hits.filter(({ kind }) => kind === "conflict").map(({ words }) => words)).toEqual([
    "rear tire size",
    "rear tire size",
    "axle ratio, settled",
    "axle ratio, settled",
  ]);
  expect(hits.filter(({ kind }) => kind === "finding")).toHaveLength(detail.findings.length);
  for (const { x, y } of hits) {
    expect(x).toBeGreaterThan(0);
    expect(x).toBeLessThan(size.width);
    expect(y).toBeGreaterThan(0);
    expect(y).toBeLessThan(size.height);
  }
});

test("the marked stretch is laid over the band from its start to its end", () => {
  expect(painted(0, 120).fills("lead")).toBe(0);
  expect(painted(0, 120, { marks: { start: 20, end: 40 } }).fills("lead")).toBe(1);
  expect(painted(50, 120, { marks: { start: 20, end: 40 } }).fills("lead")).toBe(0);
});
