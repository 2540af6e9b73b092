import type { ZoneName } from "../../../shared-types/index.ts";
import { cabin } from "./drawing/cabin.ts";
import { engineBay } from "./drawing/engine-bay.ts";
import { drawFlat, type FlatDrawing, flatPart, type SheetPose, sheetHeight, sheetWidth } from "./drawing/flat-drawing.ts";
import { frameDocument } from "./drawing/frame.ts";
import { papers } from "./drawing/papers.ts";
import { type CameraPose, cameraAt, frameHeight, frameWidth } from "./drawing/perspective.ts";
import { plate } from "./drawing/plate.ts";
import { road } from "./drawing/road.ts";
import { trunk } from "./drawing/trunk.ts";
import { underside } from "./drawing/underside.ts";
import { drawWalk, outsideFocus } from "./drawing/walk-drawing.ts";
import type { TimedLine } from "./speech.ts";

/** Zones that are a sheet of their own; all others are the car on the lot. */
const sheets: Partial<Record<ZoneName, FlatDrawing>> = {
  cargo: trunk,
  cabin,
  documents: papers,
  "engine-bay": engineBay,
  drive: road,
  underside,
};

/** Where the cameraman stands for the zones of the lot (degrees as in CameraPose). */
const stands: Partial<Record<ZoneName, number>> = {
  opening: 40,
  front: 2,
  "passenger-side": -90,
  rear: -180,
  "driver-side": 90,
  closing: 34,
};

/** One line's picture: where the camera rests, and how it drifts till the line is over. */
interface LotShot {
  readonly kind: "lot";
  readonly pose: CameraPose;
  readonly driftDegrees: number;
}
interface SheetShot {
  readonly kind: "sheet";
  readonly drawing: FlatDrawing;
  readonly pose: SheetPose;
}
type Shot = LotShot | SheetShot;

const smooth = (share: number): number => {
  const held = Math.min(1, Math.max(0, share));
  return held * held * (3 - 2 * held);
};
const between = (from: number, to: number, share: number): number => from + (to - from) * share;

/** Draws any moment of the film. */
export class Film {
  readonly #lines: readonly TimedLine[];
  readonly #shots: readonly Shot[];

  constructor(lines: readonly TimedLine[]) {
    this.#lines = lines;
    this.#shots = lines.map((_, index) => shotOf(lines, index));
  }

  /** The frame at so many seconds, as an SVG document. */
  frameAt(seconds: number): string {
    const found = this.#lines.findIndex((timed) => seconds < timed.until);
    const index = found < 0 ? this.#lines.length - 1 : found;
    const timed = this.#lines[index]!;
    const shot = this.#shots[index]!;
    const before = this.#shots[index - 1];
    const after = this.#shots[index + 1];
    const started = index === 0 ? 0 : timed.start;
    const share = (seconds - started) / (timed.until - started);
    // The name of a part comes a moment into its sentence; the light goes on with it and off when the voice stops.
    const glow = smooth((seconds - timed.start - 0.5) / 0.5) * smooth((timed.until - seconds) / 0.4);
    const content: string[] = [];
    let stand: number | null = null;
    if (shot.kind === "sheet") {
      const moved = before && sameView(before, shot) ? smooth((seconds - started) / 1.8) : 1;
      const from = before?.kind === "sheet" ? drifted(before.pose, 1) : shot.pose;
      const to = drifted(shot.pose, share);
      const pose: SheetPose = {
        center: [between(from.center[0], to.center[0], moved), between(from.center[1], to.center[1], moved)],
        zoom: between(from.zoom, to.zoom, moved),
      };
      content.push(drawFlat(shot.drawing, pose, timed.line.part, glow, seconds));
    } else {
      const arriving = timed.line.zone === this.#lines[index - 1]?.line.zone ? 2 : 3.6;
      const moved = before && sameView(before, shot) ? smooth((seconds - started) / arriving) : 1;
      const pose = blend(before?.kind === "lot" ? turned(before, 1) : shot.pose, turned(shot, share), moved);
      stand = pose.azimuthDegrees;
      content.push(drawWalk(cameraAt(pose), timed.line.part, moved > 0.55 ? glow : 0));
    }
    content.push(plate(timed.line.zone, stand));
    // The old view goes dark and the new one stands at once: whoever jumps to a zone's start must see it, not a dark frame.
    const dark = after && !sameView(shot, after) ? 1 - smooth((timed.until - seconds) / 0.3) : 0;
    if (dark > 0) content.push(`<rect width="${frameWidth}" height="${frameHeight}" fill="#101214" fill-opacity="${dark.toFixed(3)}"/>`);
    return frameDocument(content.join(""));
  }
}

function sameView(a: Shot, b: Shot): boolean {
  return a.kind === "lot" ? b.kind === "lot" : b.kind === "sheet" && a.drawing === b.drawing;
}

function shotOf(lines: readonly TimedLine[], index: number): Shot {
  const { line } = lines[index]!;
  const drawing = sheets[line.zone];
  if (drawing) return { kind: "sheet", drawing, pose: sheetPose(drawing, line.part) };
  const stand = stands[line.zone];
  if (stand === undefined) throw new Error(`No view is drawn for the zone "${line.zone}" (line "${line.key}"): add it in shots.ts.`);
  const side = stand > 0 ? 1 : -1;
  const [x, y, z] = outsideFocus(line.part, side);
  const atSide = Math.abs(stand) === 90;
  const near = line.part !== "";
  // Standing at a side, the cameraman steps towards the part; before an end he sways a little from line to line.
  const sway = atSide ? -side * x * 11 : (index % 2 ? 1 : -1) * (near ? 11 : 7);
  const share = near ? 0.72 : 0;
  return {
    kind: "lot",
    driftDegrees: (index % 2 ? 1 : -1) * (atSide ? 4 : 6),
    pose: {
      azimuthDegrees: stand + sway,
      distance: near ? (atSide ? 5.7 : 5.4) : 8,
      height: near ? Math.max(1.15, z + 0.55) : 1.65,
      target: [x * share, y * share * 0.5, between(0.62, z, near ? 0.6 : 0)],
    },
  };
}

function turned(shot: LotShot, share: number): CameraPose {
  const { pose, driftDegrees } = shot;
  return { ...pose, azimuthDegrees: pose.azimuthDegrees + driftDegrees * (share - 0.5), distance: pose.distance - 0.3 * share };
}

function blend(from: CameraPose, to: CameraPose, share: number): CameraPose {
  return {
    azimuthDegrees: between(from.azimuthDegrees, to.azimuthDegrees, share),
    distance: between(from.distance, to.distance, share),
    height: between(from.height, to.height, share),
    target: [0, 1, 2].map((axis) => between(from.target[axis]!, to.target[axis]!, share)) as [number, number, number],
  };
}

function sheetPose(drawing: FlatDrawing, part: string): SheetPose {
  const middle: [number, number] = [sheetWidth / 2, sheetHeight / 2];
  if (!part) return { center: middle, zoom: 1.06 };
  const lit = flatPart(drawing, part);
  const points = lit.outlines.flat();
  if (points.length === 0) return { center: lit.focus, zoom: 1.12 };
  const across = points.map((point) => point[0]);
  const down = points.map((point) => point[1]);
  const [left, right, top, bottom] = [Math.min(...across), Math.max(...across), Math.min(...down), Math.max(...down)];
  const zoom = Math.min(sheetWidth / (right - left) / 2.1, sheetHeight / (bottom - top) / 2.1);
  return { center: [(left + right) / 2, (top + bottom) / 2], zoom: Math.min(2.2, Math.max(1.14, zoom)) };
}

function drifted(pose: SheetPose, share: number): SheetPose {
  return { center: [pose.center[0] + 26 * (share - 0.5), pose.center[1] - 10 * (share - 0.5)], zoom: pose.zoom * (1 + 0.05 * share) };
}
