import { deckHeight, frontAxle, noseAt, rearAxle, tailAt, tireRadius } from "./car-body.ts";
import { along, doorOutline, headlightPlaces, lamp, onNose, onTail, rectangle, type Side, wheelCircle } from "./car-details.ts";
import type { Point3 } from "./perspective.ts";

/** A part that can be lit on the outside: its outlines, and where the camera turns to. */
export interface LitOutside {
  readonly name: string;
  outlines(side: Side): Point3[][];
  focus(side: Side): Point3;
  /** Where the name's line ends, if not at the focus. */
  tag?(side: Side): Point3;
}

const deckRectangle = (from: number, to: number, halfWidth: number): Point3[] => {
  const xs = Array.from({ length: 9 }, (_, index) => from + ((to - from) * index) / 8);
  return [
    ...xs.map((x): Point3 => [x, halfWidth, deckHeight(x) + 0.015]),
    ...[...xs].reverse().map((x): Point3 => [x, -halfWidth, deckHeight(x) + 0.015]),
  ];
};

const sidePatch = (side: Side, from: number, to: number, low: number): Point3[] => [
  ...along(side, from, to, (x) => deckHeight(x) - 0.03, 10),
  ...along(side, to, from, (x) => Math.max(low, archClearance(x)), 24),
];

/** Lowest skin at x: above the wheel openings. */
function archClearance(x: number): number {
  for (const axle of [frontAxle, rearAxle]) {
    const away = Math.abs(x - axle);
    if (away < 0.4) return tireRadius + 0.03 + Math.sqrt(0.16 - away * away);
  }
  return 0;
}

export const litOutside = {
  hood: { name: "HOOD", outlines: () => [deckRectangle(0.92, 2.3, 0.7)], focus: () => [1.7, 0, 0.85] },
  grille: { name: "GRILLE", outlines: () => [rectangle(onNose, -0.4, 0.4, 0.5, 0.715)], focus: () => [noseAt, 0, 0.6] },
  "front-bumper": {
    name: "FRONT BUMPER",
    outlines: () => [rectangle((y, z) => [noseAt + 0.125 - Math.abs(y) * 0.08, y, z], -0.8, 0.8, 0.34, 0.48)],
    focus: () => [noseAt, 0, 0.42],
  },
  headlights: {
    name: "HEADLIGHTS",
    outlines: () => headlightPlaces.map((y) => lamp(onNose, y, 0.607, 0.095)),
    focus: () => [noseAt, 0, 0.62],
    tag: () => [noseAt, 0.5, 0.62],
  },
  windshield: {
    name: "WINDSHIELD",
    outlines: () => [
      [
        [0.84, 0.66, 0.92],
        [0.2, 0.5, 1.29],
        [0.2, -0.5, 1.29],
        [0.84, -0.66, 0.92],
      ],
    ],
    focus: () => [0.55, 0, 1.08],
  },
  "front-fender": { name: "FENDER", outlines: (side) => [sidePatch(side, 2.3, 0.94, 0.28)], focus: (side) => [1.5, side * 0.9, 0.6] },
  door: { name: "DOOR", outlines: (side) => [doorOutline(side)], focus: (side) => [0.05, side * 0.9, 0.62] },
  quarter: { name: "QUARTER PANEL", outlines: (side) => [sidePatch(side, -0.6, -2.32, 0.3)], focus: (side) => [-1.4, side * 0.9, 0.62] },
  wheels: {
    name: "WHEELS",
    outlines: (side) => [frontAxle, rearAxle].map((axle) => wheelCircle(side, axle, 0.93, 0.2)),
    focus: (side) => [0, side * 0.9, 0.5],
    tag: (side) => [frontAxle, side * 0.93, tireRadius + 0.1],
  },
  "front-wheel": {
    name: "FRONT BRAKE",
    outlines: (side) => [wheelCircle(side, frontAxle, 0.93, 0.2)],
    focus: (side) => [frontAxle, side * 0.9, 0.4],
  },
  "front-tire": {
    name: "FRONT TIRE",
    outlines: (side) => [wheelCircle(side, frontAxle, 0.93, tireRadius)],
    focus: (side) => [frontAxle, side * 0.9, 0.42],
  },
  "rear-tire": {
    name: "REAR TIRE",
    outlines: (side) => [wheelCircle(side, rearAxle, 0.93, tireRadius)],
    focus: (side) => [rearAxle, side * 0.9, 0.42],
  },
  "tail-lights": {
    name: "TAIL LIGHTS",
    outlines: () => [rectangle(onTail, 0.33, 0.77, 0.565, 0.74), rectangle(onTail, -0.77, -0.33, 0.565, 0.74)],
    focus: () => [tailAt, 0, 0.65],
    tag: () => [tailAt, -0.55, 0.67],
  },
  "rear-bumper": {
    name: "REAR BUMPER",
    outlines: () => [rectangle((y, z) => [tailAt - 0.125 + Math.abs(y) * 0.08, y, z], -0.8, 0.8, 0.34, 0.48)],
    focus: () => [tailAt, 0, 0.42],
  },
  "exhaust-tips": {
    name: "EXHAUST TIPS",
    outlines: () => [0.52, -0.52].map((y) => lamp((a, z) => [tailAt - 0.16, a, z], y, 0.3, 0.06)),
    focus: () => [tailAt, 0, 0.35],
    tag: () => [tailAt - 0.16, -0.52, 0.3],
  },
  "trunk-lid": { name: "TRUNK LID", outlines: () => [deckRectangle(-2.38, -1.9, 0.7)], focus: () => [-2.2, 0, 0.85] },
} satisfies Record<string, LitOutside>;
