import { type LapSpan, zoneLabels } from "../../../shared-types/index.ts";
import type { DoubtfulStretch } from "../doubtful-stretches.ts";
import type { Marks } from "../use-marks.ts";
import type { StripConflict } from "./conflict-arcs.ts";
import type { FindingCluster } from "./finding-clusters.ts";
import { nameThatFits, type StripView, tickMoments, xOf } from "./geometry.ts";
import { lanes } from "./lanes.ts";
import { type LapHit, middleOf } from "./lap-hits.ts";
import { LapPen } from "./lap-pen.ts";
import type { Palette } from "./palette.ts";
import { tickLabel } from "./tick-label.ts";
import { chordBetween, straightRuns, type TrackPiece, turnOfWords } from "./track.ts";
import { zoneSigns } from "./zone-signs.ts";

/** All that the lap strip shows but for what moves while the recording plays. */
export interface LapScene {
  readonly pieces: readonly TrackPiece[];
  readonly radius: number;
  /** Its width is the length of the way. */
  readonly view: StripView;
  readonly lap: readonly LapSpan[];
  readonly doubtful: readonly DoubtfulStretch[];
  readonly conflicts: readonly StripConflict[];
  readonly proposed: readonly FindingCluster[];
  readonly made: readonly FindingCluster[];
  readonly marks: Marks;
  /** Key of the conflict that the pointer or the keyboard is at. */
  readonly pointed: string | null;
}

/** Draws the scene on an empty canvas, and says where on it something can be picked. */
export function paintLap(canvas: CanvasRenderingContext2D, scene: LapScene, palette: Palette): LapHit[] {
  const { view } = scene;
  const lap = new LapPen(canvas, scene.pieces, scene.radius);
  canvas.textAlign = "center";
  canvas.textBaseline = "middle";
  canvas.lineJoin = "round";
  paintChords(lap, scene, palette);
  paintSpans(lap, scene, palette);
  paintDoubt(lap, scene, palette);
  paintTicks(lap, view, palette);
  paintMarked(lap, scene, palette);
  const hits = [...paintFindings(lap, scene, palette), ...paintFeet(lap, scene, palette)];
  paintEnds(lap, view, palette);
  return hits;
}

/** A moment's place, held to the way's ends where the view does not show it. */
const heldX = (view: StripView, seconds: number): number => Math.min(view.width, Math.max(0, xOf(view, seconds)));
const inView = (view: StripView, seconds: number): boolean => seconds >= view.from && seconds <= view.to;

/** The lines across the plan that join the sides of a conflict; a settled one is thin and dotted. */
function paintChords(lap: LapPen, { conflicts, view, pointed }: LapScene, palette: Palette): void {
  const { pen } = lap;
  for (const { conflict, open, arcs } of conflicts) {
    const strong = conflict.key === pointed;
    pen.strokeStyle = open ? palette.dispute : palette.edge;
    pen.lineWidth = strong ? 3 : open ? 1.2 : 1;
    pen.globalAlpha = strong || !open ? 1 : 0.55;
    pen.setLineDash(open ? [] : [1, 3]);
    pen.lineCap = open ? "butt" : "round";
    for (const { from, to } of arcs) {
      if (!inView(view, from) && !inView(view, to)) continue;
      const [a, b] = [from, to].map((seconds) => lap.at(heldX(view, seconds), lanes.feet.from)) as [
        ReturnType<LapPen["at"]>,
        ReturnType<LapPen["at"]>,
      ];
      const [x1, y1, ...curve] = chordBetween(a, b);
      pen.beginPath();
      pen.moveTo(x1, y1);
      pen.bezierCurveTo(...curve);
      pen.stroke();
    }
  }
  pen.globalAlpha = 1;
  pen.setLineDash([]);
}

/** A span narrower than this is told by its pattern alone: its outline would be all of it. CSS pixels. */
const leastOutlined = 9;
/** Not even a sign that stands upright has room in less. CSS pixels. */
const leastNamed = 10;
/** A straight run at least so long is named although its span has its name elsewhere. CSS pixels. */
const leastSecondName = 200;

/** The zone spans: names outside, patterns within; proposals thin and with a dashed edge until accepted. */
function paintSpans(lap: LapPen, { lap: spans, view, pieces }: LapScene, palette: Palette): void {
  const { pen } = lap;
  let facing = "";
  for (const span of spans) {
    if (span.end <= view.from || span.start >= view.to) continue;
    const [from, to] = [heldX(view, span.start), heldX(view, span.end)];
    const proposed = span.zoneSpanId === null;
    const gap = to - from > 4 ? 1 : 0;
    lap.ribbon(from + gap, to - gap, lanes.band.from + (proposed ? 3 : 0), lanes.band.to - (proposed ? 2 : 0));
    pen.fillStyle = palette.patterns[span.zone];
    pen.fill();
    if (to - from > leastOutlined) {
      pen.strokeStyle = palette.zones[span.zone];
      pen.lineWidth = proposed ? 1 : 1.6;
      pen.setLineDash(proposed ? [4, 3] : []);
      pen.stroke();
    }
    if (to - from < leastNamed) continue;
    // To give a canvas its letters costs as much as to write a word.
    const face = `${proposed ? "italic " : ""}12px ${palette.face}`;
    if (face !== facing) pen.font = face;
    facing = face;
    pen.fillStyle = proposed ? palette.soft : palette.ink;
    const names = [span.title, zoneLabels[span.zone], zoneLabels[span.zone].replace(/^(Driver|Passenger)'s side$/, "$1")];
    for (const [index, run] of straightRuns(pieces, from, to).entries()) {
      // A span that goes round a corner is named again where it goes on for long.
      if (index > 0 && run.to - run.from < leastSecondName) break;
      const name = nameThatFits(names, zoneSigns[span.zone], run.to - run.from);
      if (!name) break;
      const turn = turnOfWords(run.degrees);
      // Across the way: level at the sides, read from below upwards above and below.
      const across = turn === 0 ? -90 : 0;
      lap.words(name.text, (run.from + run.to) / 2, middleOf(lanes.names), name.upright ? across : turn);
    }
  }
  pen.setLineDash([]);
}

function paintDoubt(lap: LapPen, { doubtful, view }: LapScene, palette: Palette): void {
  const { pen } = lap;
  pen.strokeStyle = palette.doubt;
  pen.lineWidth = 1.3;
  for (const stretch of doubtful) {
    if (stretch.end < view.from || stretch.start > view.to) continue;
    const [from, to] = [heldX(view, stretch.start), Math.max(heldX(view, stretch.start) + 3, heldX(view, stretch.end))];
    pen.beginPath();
    for (let along = from; along <= to; along += 4) {
      const [a, b] = [lap.at(along, lanes.doubtful.from), lap.at(along + 2.5, lanes.doubtful.to)];
      pen.moveTo(a.x, a.y);
      pen.lineTo(b.x, b.y);
    }
    pen.stroke();
  }
}

function paintTicks(lap: LapPen, view: StripView, palette: Palette): void {
  const { pen } = lap;
  pen.font = `11.5px ${palette.face}`;
  pen.fillStyle = palette.soft;
  pen.strokeStyle = palette.edge;
  pen.lineWidth = 1;
  pen.beginPath();
  for (const seconds of tickMoments(view, 96)) {
    const along = heldX(view, seconds);
    lap.across(along, lanes.ticks.from + 9, lanes.ticks.to);
    const [piece] = straightRuns(lap.pieces, along - 22, along + 22);
    // Where the way bends there is no room for a line of figures.
    if (!piece || piece.to - piece.from < 43) continue;
    const turn = turnOfWords(piece.degrees);
    // Beside its tick, on the side that time goes to.
    const label = tickLabel(seconds, view);
    lap.words(label, along + 4 + label.length * 3, middleOf(lanes.ticks), turn);
  }
  pen.stroke();
}

/** The stretch that the person has marked, or the one end of it there is. */
function paintMarked(lap: LapPen, { marks: { start, end }, view }: LapScene, palette: Palette): void {
  if (start === null && end === null) return;
  const { pen } = lap;
  const [inner, outer] = [lanes.band.from - 2, lanes.names.to];
  if (start !== null && end !== null && end > view.from && start < view.to) {
    lap.ribbon(heldX(view, start), heldX(view, end), inner, outer);
    pen.fillStyle = palette.lead;
    pen.globalAlpha = 0.2;
    pen.fill();
    pen.globalAlpha = 1;
  }
  pen.strokeStyle = palette.lead;
  pen.lineWidth = 2.5;
  pen.beginPath();
  for (const [seconds, way] of [
    [start, 1],
    [end, -1],
  ] as const) {
    if (seconds === null || !inView(view, seconds)) continue;
    const along = xOf(view, seconds);
    lap.across(along, inner, outer);
    for (const outwards of [inner, outer]) {
      const [a, b] = [lap.at(along, outwards), lap.at(along + way * 5, outwards)];
      pen.moveTo(a.x, a.y);
      pen.lineTo(b.x, b.y);
    }
  }
  pen.stroke();
}

/** Findings within the band, shaped by grade; proposals hollow and dashed. Those too close to tell apart are one mark, shaped by the gravest. */
function paintFindings(lap: LapPen, { proposed, made, view }: LapScene, palette: Palette): LapHit[] {
  const { pen } = lap;
  const hits: LapHit[] = [];
  for (const [clusters, accepted] of [
    [proposed, false],
    [made, true],
  ] as const) {
    for (const { id, start, grade, words } of clusters) {
      const { x, y } = lap.at(xOf(view, start), middleOf(lanes.findings));
      palette.stamp(pen, grade, accepted, x, y);
      hits.push({ kind: "finding", x, y, id, words });
    }
  }
  return hits;
}

/** Where a side of a conflict was said: a point that looks across the plan at the other side. */
function paintFeet(lap: LapPen, { conflicts, view, pointed }: LapScene, palette: Palette): LapHit[] {
  const { pen } = lap;
  const hits: LapHit[] = [];
  pen.lineWidth = 1.2;
  for (const { conflict, open, moments } of conflicts) {
    const half = conflict.key === pointed ? 6 : 4;
    pen.fillStyle = open ? palette.dispute : palette.sheet;
    pen.strokeStyle = open ? palette.dispute : palette.edge;
    for (const seconds of moments) {
      if (!inView(view, seconds)) continue;
      const along = xOf(view, seconds);
      const [a, b, tip] = [lap.at(along - half, lanes.feet.to), lap.at(along + half, lanes.feet.to), lap.at(along, lanes.feet.from)];
      pen.beginPath();
      pen.moveTo(a.x, a.y);
      pen.lineTo(b.x, b.y);
      pen.lineTo(tip.x, tip.y);
      pen.closePath();
      pen.fill();
      pen.stroke();
      const { x, y } = lap.at(along, middleOf(lanes.feet));
      hits.push({ kind: "conflict", x, y, key: conflict.key, words: `${conflict.topic}${open ? "" : ", settled"}` });
    }
  }
  return hits;
}

/** Where the way begins and ends: a line across it, and at the beginning an arrow the way that time goes. */
function paintEnds(lap: LapPen, view: StripView, palette: Palette): void {
  const { pen } = lap;
  pen.strokeStyle = palette.ink;
  pen.fillStyle = palette.ink;
  pen.lineWidth = 2;
  pen.beginPath();
  lap.across(0, lanes.findings.from, lanes.names.to);
  lap.across(view.width, lanes.findings.from, lanes.names.to);
  pen.stroke();
  const { x, y } = lap.at(0);
  pen.beginPath();
  pen.moveTo(x - 16, y - 6);
  pen.lineTo(x - 5, y);
  pen.lineTo(x - 16, y + 6);
  pen.closePath();
  pen.fill();
}
