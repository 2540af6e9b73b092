import { cross, dot, minus, type Point3, unit } from "./perspective.ts";

/** A flat piece of the vehicle's skin. */
export interface Panel {
  readonly corners: readonly Point3[];
  readonly normal: Point3;
  readonly center: Point3;
  readonly material: "paint" | "glass" | "chrome" | "dark";
}

/** The skin in the order it is painted: each layer stands outside or above the ones before it. */
export interface CarBody {
  readonly hull: readonly Panel[];
  readonly house: readonly Panel[];
  readonly bumpers: readonly Panel[];
}

export const frontAxle = 1.42;
export const rearAxle = -1.38;
export const tireRadius = 0.335;
export const noseAt = 2.45;
export const tailAt = -2.45;

/** Along the vehicle: x, underside z, deck z, half width (metres). An invented long-hood, short-deck hardtop. */
const hullStations: readonly (readonly [number, number, number, number])[] = [
  [tailAt, 0.42, 0.84, 0.82],
  [-2.36, 0.35, 0.88, 0.88],
  [-2.0, 0.27, 0.91, 0.93],
  [-1.4, 0.22, 0.945, 0.965],
  [-0.9, 0.2, 0.935, 0.955],
  [-0.3, 0.19, 0.9, 0.935],
  [0.4, 0.19, 0.89, 0.93],
  [0.9, 0.2, 0.89, 0.935],
  [1.42, 0.22, 0.88, 0.945],
  [1.95, 0.25, 0.85, 0.92],
  [2.3, 0.31, 0.8, 0.87],
  [noseAt, 0.4, 0.76, 0.82],
];

/** The hull's half section: share of the half width, share of the height. */
const hullSection: readonly (readonly [number, number])[] = [
  [0.9, 0],
  [0.965, 0.14],
  [0.99, 0.34],
  [1, 0.55],
  [0.985, 0.72],
  [0.95, 0.86],
  [0.9, 0.95],
  [0.83, 1],
];

/** Along the roof: x, height z. */
const roofline: readonly (readonly [number, number])[] = [
  [-1.85, 0.93],
  [-1.6, 1.0],
  [-1.3, 1.13],
  [-1.0, 1.255],
  [-0.7, 1.32],
  [-0.3, 1.345],
  [0.05, 1.325],
  [0.2, 1.29],
  [0.45, 1.14],
  [0.7, 0.99],
  [0.86, 0.89],
];

function interpolate(table: readonly (readonly number[])[], at: number, column: number): number {
  const first = table[0]!;
  const last = table.at(-1)!;
  if (at <= first[0]!) return first[column]!;
  if (at >= last[0]!) return last[column]!;
  const next = table.findIndex((row) => row[0]! >= at);
  const low = table[next - 1]!;
  const high = table[next]!;
  const share = (at - low[0]!) / (high[0]! - low[0]!);
  // Eased between stations: straight pieces would show as facets.
  const eased = share * share * (3 - 2 * share) * 0.5 + share * 0.5;
  return low[column]! + (high[column]! - low[column]!) * eased;
}

export function deckHeight(x: number): number {
  return interpolate(hullStations, x, 2);
}

export function roofHeight(x: number): number {
  return interpolate(roofline, x, 1);
}

/** Half width of the skin at this place of the side (metres from the middle). */
export function sideHalfWidth(x: number, z: number): number {
  const low = interpolate(hullStations, x, 1);
  const high = deckHeight(x);
  const width = interpolate(hullStations, x, 3);
  const share = Math.min(1, Math.max(0, (z - low) / (high - low)));
  const rows = hullSection.map(([wide, tall]) => [tall, wide]);
  return width * interpolate(rows, share, 1);
}

/** A point on the skin of one side: 1 driver's, -1 passenger's. */
export function onSide(side: 1 | -1, x: number, z: number): Point3 {
  return [x, side * (sideHalfWidth(x, z) + 0.004), z];
}

/** Half width of the glasshouse at a share of its height, 0 at the belt, 1 at the roof's edge. */
export function houseHalfWidth(x: number, share: number): number {
  const tall = roofHeight(x) - deckHeight(x);
  const top = 0.8 - 0.19 * Math.min(1, Math.max(0, tall / 0.42));
  return 0.8 + (top - 0.8) * share;
}

function houseRow(x: number): Point3[] {
  const deck = deckHeight(x) - 0.01;
  const roof = Math.max(deck, roofHeight(x));
  const rows: Point3[] = [0, 0.09, 0.88, 0.97].map((share) => [x, houseHalfWidth(x, share), deck + (roof - deck) * share]);
  rows.push([x, houseHalfWidth(x, 1) * 0.86, roof + 0.004], [x, 0, roof + 0.02]);
  return rows;
}

function hullRow(x: number): Point3[] {
  const low = interpolate(hullStations, x, 1);
  const high = deckHeight(x);
  const width = interpolate(hullStations, x, 3);
  const rows: Point3[] = hullSection.map(([wide, tall]) => [x, width * wide, low + (high - low) * tall]);
  rows.push([x, width * 0.42, high + 0.018], [x, 0, high + 0.026]);
  return rows;
}

const mirrored = (point: Point3): Point3 => [point[0], -point[1], point[2]];

function panel(corners: readonly Point3[], material: Panel["material"]): Panel {
  const across = unit(cross(minus(corners[2]!, corners[0]!), minus(corners[3] ?? corners[1]!, corners[1]!)));
  const center = corners.reduce<Point3>(
    (sum, corner) => [sum[0] + corner[0] / corners.length, sum[1] + corner[1] / corners.length, sum[2] + corner[2] / corners.length],
    [0, 0, 0],
  );
  // Outside is away from the vehicle's own core, whichever way the corners run.
  const core: Point3 = [Math.max(-2, Math.min(2, center[0])), 0, 0.62];
  const outward = dot(across, minus(center, core)) < 0 ? -1 : 1;
  return { corners, normal: [outward * across[0], outward * across[1], outward * across[2]], center, material };
}

/** Panels between two rows of points, on both sides of the vehicle. */
function strip(back: readonly Point3[], fore: readonly Point3[], material: (row: number) => Panel["material"]): Panel[] {
  const panels: Panel[] = [];
  for (let row = 0; row + 1 < back.length; row++) {
    const corners = [back[row]!, back[row + 1]!, fore[row + 1]!, fore[row]!];
    panels.push(panel(corners, material(row)));
    panels.push(panel(corners.map(mirrored), material(row)));
  }
  return panels;
}

function stationsBetween(from: number, to: number, step: number): number[] {
  const count = Math.round((to - from) / step);
  return Array.from({ length: count + 1 }, (_, index) => from + ((to - from) * index) / count);
}

/** A chrome bar across one end: outer face, and its upper side. */
function bumper(end: 1 | -1): Panel[] {
  const path: readonly (readonly [number, number])[] = [
    [2.12, 0.915],
    [2.38, 0.885],
    [2.5, 0.8],
    [2.55, 0.55],
    [2.565, 0.25],
    [2.57, 0],
  ];
  const full = [
    ...path,
    ...path
      .slice(0, -1)
      .reverse()
      .map(([x, y]) => [x, -y] as const),
  ];
  const panels: Panel[] = [];
  for (let index = 0; index + 1 < full.length; index++) {
    const [x0, y0] = full[index]!;
    const [x1, y1] = full[index + 1]!;
    const at = (x: number, y: number, z: number): Point3 => [end * x, end * y, z];
    // The upper side runs in under the skin: backwards at the end, sideways where the bar wraps round the corner.
    const inner = (x: number, y: number): Point3 => at(x - 0.13 * Math.min(1, (0.93 - Math.abs(y)) * 8), y * 0.95, 0.48);
    const bands: readonly (readonly [number, number, number])[] = [
      [0.34, 0.385, -0.02],
      [0.385, 0.43, 0],
      [0.43, 0.475, -0.015],
    ];
    for (const [low, high, tuck] of bands) {
      panels.push(panel([at(x0 + tuck, y0, low), at(x0 + tuck, y0, high), at(x1 + tuck, y1, high), at(x1 + tuck, y1, low)], "chrome"));
    }
    panels.push(panel([at(x0, y0, 0.475), inner(x0, y0), inner(x1, y1), at(x1, y1, 0.475)], "chrome"));
  }
  return panels;
}

/** The whole skin, made once. */
export function carBody(): CarBody {
  const hull: Panel[] = [];
  const rows = stationsBetween(tailAt, noseAt, 0.1).map(hullRow);
  for (let index = 0; index + 1 < rows.length; index++) {
    hull.push(...strip(rows[index]!, rows[index + 1]!, (row) => (row === 0 ? "dark" : "paint")));
  }
  // The two ends, closed with one flat panel each.
  const nose = rows.at(-1)!;
  const tail = rows[0]!;
  hull.push({ ...panel([...nose, ...nose.map(mirrored).reverse()], "paint"), normal: [1, 0, 0] });
  hull.push({ ...panel([...tail.map(mirrored), ...[...tail].reverse()], "paint"), normal: [-1, 0, 0] });

  const house: Panel[] = [];
  const arches = stationsBetween(-1.85, 0.86, 0.0903).map(houseRow);
  for (let index = 0; index + 1 < arches.length; index++) {
    const middle = (arches[index]![0]![0] + arches[index + 1]![0]![0]) / 2;
    const sideGlass = middle > -0.98 && middle < 0.62;
    const endGlass = middle > 0.14 || (middle < -0.92 && middle > -1.62);
    house.push(
      ...strip(arches[index]!, arches[index + 1]!, (row) => {
        if (row === 1) return sideGlass ? "glass" : "paint";
        return row === 4 && endGlass ? "glass" : "paint";
      }),
    );
  }
  return { hull, house, bumpers: [...bumper(1), ...bumper(-1)] };
}
