/** The way of the lap strip round the plan: a rectangle with round corners, gone round clockwise from the upper left corner, which stays open. CSS pixels. */
export interface Track {
  /** Of the box that it is drawn in. */
  readonly width: number;
  readonly height: number;
  /** Between the box's edge and the middle of the strip. */
  readonly inset: number;
  /** Of a corner, in the middle of the strip. */
  readonly radius: number;
}

/** A place on the track. */
export interface TrackPoint {
  readonly x: number;
  readonly y: number;
  /** Degrees clockwise from "to the right": the way that time goes there. */
  readonly degrees: number;
}

/** A straight side or a corner between two lengths of the way. */
export interface TrackPiece {
  readonly kind: "side" | "corner";
  /** Lengths from the start of the track. */
  readonly from: number;
  readonly to: number;
  /** Where a side begins, or the middle of a corner. */
  readonly x: number;
  readonly y: number;
  /** The way of time at its beginning, in degrees as above. */
  readonly degrees: number;
}

const quarter = 90;
const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** Sides and corners in order of time: top, right, bottom, left. */
export function trackPieces({ width, height, inset, radius }: Track): TrackPiece[] {
  const [left, top, right, bottom] = [inset, inset, width - inset, height - inset];
  const across = Math.max(0, right - left - 2 * radius);
  const down = Math.max(0, bottom - top - 2 * radius);
  const bend = (Math.PI / 2) * radius;
  const pieces: TrackPiece[] = [];
  let from = 0;
  const add = (kind: TrackPiece["kind"], length: number, x: number, y: number, degrees: number) => {
    pieces.push({ kind, from, to: from + length, x, y, degrees });
    from += length;
  };
  add("side", across, left + radius, top, 0);
  add("corner", bend, right - radius, top + radius, 0);
  add("side", down, right, top + radius, quarter);
  add("corner", bend, right - radius, bottom - radius, quarter);
  add("side", across, right - radius, bottom, 2 * quarter);
  add("corner", bend, left + radius, bottom - radius, 2 * quarter);
  add("side", down, left, bottom - radius, 3 * quarter);
  return pieces;
}

export function trackLength(track: Track): number {
  return trackPieces(track).at(-1)?.to ?? 0;
}

/**
 * The point at a length of the way; before the start or past the end it is the start or the end.
 * @param outwards how far beside the middle of the strip, away from the plan; negative towards it.
 */
export function pointOn(pieces: readonly TrackPiece[], radius: number, along: number, outwards = 0): TrackPoint {
  const end = pieces.at(-1)?.to ?? 0;
  const held = Math.min(end, Math.max(0, along));
  const piece = pieces.find(({ to }) => held <= to) ?? pieces.at(-1);
  if (!piece) return { x: 0, y: 0, degrees: 0 };
  const gone = held - piece.from;
  if (piece.kind === "side") {
    const way = radians(piece.degrees);
    // Outwards is to the left of the way.
    return {
      x: piece.x + gone * Math.cos(way) + outwards * Math.sin(way),
      y: piece.y + gone * Math.sin(way) - outwards * Math.cos(way),
      degrees: piece.degrees,
    };
  }
  const degrees = piece.degrees + (gone / Math.max(1, piece.to - piece.from)) * quarter;
  const out = radians(degrees - quarter);
  return { x: piece.x + (radius + outwards) * Math.cos(out), y: piece.y + (radius + outwards) * Math.sin(out), degrees };
}

/** The place of the way that is nearest to a point, and how far beside it the point lies, outwards positive. */
export function nearestOn(
  pieces: readonly TrackPiece[],
  radius: number,
  x: number,
  y: number,
): { readonly along: number; readonly outwards: number } {
  let best = { along: 0, outwards: Number.POSITIVE_INFINITY };
  let bestDistance = Number.POSITIVE_INFINITY;
  for (const piece of pieces) {
    const found = piece.kind === "side" ? nearestOfSide(piece, x, y) : nearestOfCorner(piece, radius, x, y);
    if (found.distance >= bestDistance) continue;
    bestDistance = found.distance;
    best = { along: found.along, outwards: found.outwards };
  }
  return best;
}

interface Nearest {
  readonly along: number;
  readonly outwards: number;
  readonly distance: number;
}

function nearestOfSide(piece: TrackPiece, x: number, y: number): Nearest {
  const way = radians(piece.degrees);
  const [dx, dy] = [x - piece.x, y - piece.y];
  const wanted = dx * Math.cos(way) + dy * Math.sin(way);
  const gone = Math.min(piece.to - piece.from, Math.max(0, wanted));
  const outwards = dx * Math.sin(way) - dy * Math.cos(way);
  return { along: piece.from + gone, outwards, distance: Math.hypot(wanted - gone, outwards) };
}

function nearestOfCorner(piece: TrackPiece, radius: number, x: number, y: number): Nearest {
  const [dx, dy] = [x - piece.x, y - piece.y];
  const begin = piece.degrees - quarter;
  // Degrees past the corner's beginning, from -180 to 180.
  const past = (((((Math.atan2(dy, dx) * 180) / Math.PI - begin + 180) % 360) + 360) % 360) - 180;
  const turned = Math.min(quarter, Math.max(0, past));
  const at = radians(begin + turned);
  const distance = Math.hypot(dx - radius * Math.cos(at), dy - radius * Math.sin(at));
  return { along: piece.from + (turned / quarter) * (piece.to - piece.from), outwards: Math.hypot(dx, dy) - radius, distance };
}

/** A straight run of the way. */
export interface StraightRun {
  readonly from: number;
  readonly to: number;
  readonly degrees: number;
}

/** The straight runs of a stretch of the way, the longest first: where a name can be written. None where all of it lies in a corner. */
export function straightRuns(pieces: readonly TrackPiece[], from: number, to: number): StraightRun[] {
  return pieces
    .filter(({ kind }) => kind === "side")
    .map((piece) => ({ from: Math.max(from, piece.from), to: Math.min(to, piece.to), degrees: piece.degrees }))
    .filter((run) => run.to > run.from)
    .sort((a, b) => b.to - b.from - (a.to - a.from));
}

/**
 * How words are turned that run along the way: never upside down.
 * @returns degrees for the words; on the lower side they read against time.
 */
export function turnOfWords(degrees: number): number {
  const turned = ((degrees % 360) + 360) % 360;
  return turned > quarter && turned < 3 * quarter ? turned - 180 : turned >= 3 * quarter ? turned - 360 : turned;
}

/** The way across the plan from one moment of a conflict to another: both ends leave the strip straight inwards. */
export function chordBetween(a: TrackPoint, b: TrackPoint): readonly [number, number, number, number, number, number, number, number] {
  const reach = Math.min(150, Math.max(18, Math.hypot(b.x - a.x, b.y - a.y) * 0.42));
  const inward = ({ x, y, degrees }: TrackPoint): [number, number] => {
    const way = radians(degrees + quarter);
    return [x + reach * Math.cos(way), y + reach * Math.sin(way)];
  };
  const [c1, c2] = [inward(a), inward(b)];
  return [a.x, a.y, c1[0], c1[1], c2[0], c2[1], b.x, b.y];
}
