import {
  deckHeight,
  frontAxle,
  houseHalfWidth,
  noseAt,
  onSide,
  rearAxle,
  roofHeight,
  sideHalfWidth,
  tailAt,
  tireRadius,
} from "./car-body.ts";
import { type Camera, line, type Point2, type Point3, polygon } from "./perspective.ts";

export type Side = 1 | -1;

const seam = "#2a0b10";
const chrome = "#d9dde0";

/** A circle in the plane of the wheels, `out` metres from the middle. */
export function wheelCircle(side: Side, axle: number, out: number, radius: number, points = 40): Point3[] {
  return Array.from({ length: points }, (_, index): Point3 => {
    const turn = (index / points) * 2 * Math.PI;
    return [axle + Math.cos(turn) * radius, side * out, tireRadius + Math.sin(turn) * radius];
  });
}

/** Tires as drums with depth, and the tailpipes: drawn before the skin, which hides what is inside the arches. */
export function runningGear(camera: Camera): string {
  const drawn: string[] = [];
  const sides: Side[] = camera.position[1] > 0 ? [-1, 1] : [1, -1];
  for (const side of sides) {
    for (const axle of [rearAxle, frontAxle]) {
      const rims = [0.7, 0.925].flatMap((out) => wheelCircle(side, axle, out, tireRadius));
      const seen = rims.map((point) => camera.project(point)).filter((point) => point !== null);
      drawn.push(
        `<path d="M${convexHull(seen)
          .map(([x, y]) => `${x.toFixed(1)} ${y.toFixed(1)}`)
          .join("L")}Z" fill="#17181a"/>`,
      );
    }
  }
  for (const y of [-0.52, 0.52]) {
    const ends = [tailAt + 0.5, tailAt - 0.16].flatMap((x) => lamp((across, z) => [x, across, z], y, 0.3, 0.036));
    const seen = ends.map((point) => camera.project(point)).filter((point) => point !== null);
    drawn.push(
      `<path d="M${convexHull(seen)
        .map(([across, down]) => `${across.toFixed(1)} ${down.toFixed(1)}`)
        .join("L")}Z" fill="#9b958b"/>`,
    );
  }
  return drawn.join("");
}

/** The outline round the points, by Andrew's monotone chain. */
export function convexHull(points: readonly Point2[]): Point2[] {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const half = (ordered: readonly Point2[]): Point2[] => {
    const chain: Point2[] = [];
    for (const point of ordered) {
      while (chain.length > 1) {
        const [a, b] = [chain.at(-2)!, chain.at(-1)!];
        if ((b[0] - a[0]) * (point[1] - a[1]) - (b[1] - a[1]) * (point[0] - a[0]) > 0) break;
        chain.pop();
      }
      chain.push(point);
    }
    return chain.slice(0, -1);
  };
  return [...half(sorted), ...half([...sorted].reverse())];
}

function wheel(camera: Camera, side: Side, axle: number): string {
  const out = 0.925;
  const drawn = [
    polygon(camera, wheelCircle(side, axle, out, tireRadius), "#1d1e21", `stroke="#0d0e10" stroke-width="1"`),
    polygon(camera, wheelCircle(side, axle, out, 0.245), "none", `stroke="#e9e4d6" stroke-width="1.6" stroke-dasharray="26 9"`),
    polygon(camera, wheelCircle(side, axle, out, 0.2), chrome, `stroke="#8d9499" stroke-width="1.2"`),
    polygon(camera, wheelCircle(side, axle, out - 0.02, 0.168), "#9aa1a8"),
  ];
  // Five slots of a styled steel wheel.
  for (let slot = 0; slot < 5; slot++) {
    const middle = (slot / 5) * 2 * Math.PI + 0.3;
    const corner = (angle: number, radius: number): Point3 => [
      axle + Math.cos(middle + angle) * radius,
      side * (out - 0.015),
      tireRadius + Math.sin(middle + angle) * radius,
    ];
    drawn.push(
      polygon(camera, [corner(-0.34, 0.15), corner(0, 0.16), corner(0.34, 0.15), corner(0.3, 0.09), corner(-0.3, 0.09)], "#25272b"),
    );
  }
  drawn.push(polygon(camera, wheelCircle(side, axle, out, 0.055), chrome, `stroke="#70777d" stroke-width="1"`));
  return drawn.join("");
}

/** A run along the side at height z(x). */
export function along(side: Side, from: number, to: number, height: (x: number) => number, steps = 24): Point3[] {
  return Array.from({ length: steps + 1 }, (_, index) => {
    const x = from + ((to - from) * index) / steps;
    return onSide(side, x, height(x));
  });
}

function arch(side: Side, axle: number): Point3[] {
  return Array.from({ length: 31 }, (_, index) => {
    const turn = ((index / 30) * 1.24 - 0.12) * Math.PI;
    const x = axle + Math.cos(turn) * 0.4;
    const z = Math.max(0.2, tireRadius + 0.015 + Math.sin(turn) * 0.4);
    return [x, side * (sideHalfWidth(x, z) + 0.006), z] as const;
  });
}

const doorFront = 0.66;
const doorRear = -0.56;

export function doorOutline(side: Side): Point3[] {
  const heights = [0.885, 0.75, 0.6, 0.45, 0.3];
  return [
    ...heights.map((z) => onSide(side, doorFront - (0.885 - z) * 0.05, z)),
    ...along(side, doorFront - 0.03, doorRear + 0.1, () => 0.27, 12),
    ...[...heights].reverse().map((z) => onSide(side, doorRear + (z < 0.4 ? 0.08 : 0), z)),
    ...along(side, doorRear, doorFront, (x) => deckHeight(x) - 0.02, 12),
  ];
}

/** Everything that is drawn on a side once the skin is there. */
export function sideDetails(camera: Camera, side: Side): string {
  const mirrorAt: Point3 = [0.56, side * 0.93, 0.95];
  return [
    polygon(
      camera,
      [...along(side, frontAxle - 0.42, rearAxle + 0.42, () => 0.24), ...along(side, rearAxle + 0.42, frontAxle - 0.42, () => 0.3)],
      "#3a1016",
    ),
    line(
      camera,
      along(side, frontAxle - 0.42, rearAxle + 0.42, () => 0.305),
      "#cfd3d6",
      1.6,
    ),
    line(
      camera,
      along(side, 2.25, -2.3, (x) => deckHeight(x) - 0.17),
      "#b8616c",
      1.5,
    ),
    line(
      camera,
      along(side, 2.25, -2.3, (x) => deckHeight(x) - 0.185),
      "#4a1219",
      1.4,
    ),
    polygon(camera, arch(side, frontAxle), "#0e0f11"),
    polygon(camera, arch(side, rearAxle), "#0e0f11"),
    line(camera, arch(side, frontAxle), "#c9a4a8", 1.4),
    line(camera, arch(side, rearAxle), "#c9a4a8", 1.4),
    line(camera, doorOutline(side), seam, 1.6),
    line(
      camera,
      [0.88, 0.6, 0.3].map((z) => onSide(side, 0.92, z)),
      seam,
      1.2,
    ),
    line(camera, [onSide(side, -0.3, 0.785), onSide(side, -0.48, 0.785)], chrome, 3.4),
    polygon(camera, [onSide(side, 2.16, 0.58), onSide(side, 2.02, 0.58), onSide(side, 2.02, 0.63), onSide(side, 2.16, 0.63)], "#e0913a"),
    polygon(camera, [onSide(side, -2.06, 0.6), onSide(side, -2.2, 0.6), onSide(side, -2.2, 0.65), onSide(side, -2.06, 0.65)], "#c22f2f"),
    // The seam between door glass and quarter glass of a hardtop, and the bright strip along the belt.
    line(
      camera,
      [0.1, 0.86].map((share): Point3 => houseSide(side, -0.5, share)),
      "#c8ccd0",
      1.4,
    ),
    line(
      camera,
      Array.from({ length: 14 }, (_, i): Point3 => houseSide(side, 0.66 - i * 0.126, 0.05)),
      chrome,
      1.8,
    ),
    polygon(
      camera,
      [mirrorAt, [0.5, side * 0.93, 1.02], [0.5, side * 1.04, 1.02], [0.56, side * 1.04, 0.95]],
      chrome,
      `stroke="#777" stroke-width=".8"`,
    ),
    wheel(camera, side, frontAxle),
    wheel(camera, side, rearAxle),
  ].join("");
}

function houseSide(side: Side, x: number, share: number): Point3 {
  const deck = deckHeight(x) - 0.01;
  return [x, side * (houseHalfWidth(x, share) + 0.006), deck + (roofHeight(x) - deck) * share];
}

export const onNose = (y: number, z: number): Point3 => [noseAt + 0.01, y, z];
export const onTail = (y: number, z: number): Point3 => [tailAt - 0.01, y, z];

export function lamp(at: (y: number, z: number) => Point3, y: number, z: number, radius: number): Point3[] {
  return Array.from({ length: 24 }, (_, index) => {
    const turn = (index / 24) * 2 * Math.PI;
    return at(y + Math.cos(turn) * radius, z + Math.sin(turn) * radius);
  });
}

export const headlightPlaces = [-0.66, -0.5, 0.5, 0.66];

export function rectangle(at: (y: number, z: number) => Point3, left: number, right: number, low: number, high: number): Point3[] {
  return [at(left, low), at(left, high), at(right, high), at(right, low)];
}

export function noseDetails(camera: Camera): string {
  const drawn = [
    polygon(camera, rectangle(onNose, -0.77, 0.77, 0.5, 0.715), "#191b1e", `stroke="${chrome}" stroke-width="2.4" stroke-linejoin="round"`),
  ];
  for (let tooth = -8; tooth <= 8; tooth++)
    drawn.push(line(camera, [onNose(tooth * 0.046, 0.515), onNose(tooth * 0.046, 0.7)], "#aeb4b9", 1.7));
  drawn.push(line(camera, [onNose(-0.385, 0.607), onNose(0.385, 0.607)], "#dfe3e6", 2.4));
  for (const y of headlightPlaces) {
    drawn.push(polygon(camera, lamp(onNose, y, 0.607, 0.08), "#f4f1df", `stroke="${chrome}" stroke-width="2.2"`));
    drawn.push(polygon(camera, lamp(onNose, y - 0.015, 0.625, 0.03), "#ffffff"));
  }
  drawn.push(
    polygon(
      camera,
      rectangle((y, z) => [noseAt + 0.13, y, z], -0.16, 0.16, 0.36, 0.45),
      "#f2efe4",
      `stroke="#556" stroke-width="1"`,
    ),
  );
  return drawn.join("");
}

export function tailDetails(camera: Camera): string {
  const drawn = [polygon(camera, rectangle(onTail, -0.78, 0.78, 0.55, 0.755), "#2b2d31", `stroke="${chrome}" stroke-width="2"`)];
  for (const side of [1, -1]) {
    for (const slot of [0.34, 0.49, 0.64]) {
      const inner = side * slot;
      const outer = side * (slot + 0.115);
      drawn.push(polygon(camera, rectangle(onTail, inner, outer, 0.575, 0.73), "#b3202a", `stroke="#e0b0b0" stroke-width="1"`));
      drawn.push(polygon(camera, rectangle(onTail, inner + side * 0.02, outer - side * 0.05, 0.66, 0.715), "#e2585f"));
    }
    drawn.push(
      polygon(
        camera,
        lamp((y, z) => [tailAt - 0.16, y, z], side * 0.52, 0.3, 0.036),
        "#2a2c30",
        `stroke="${chrome}" stroke-width="3"`,
      ),
    );
  }
  drawn.push(polygon(camera, rectangle(onTail, -0.19, 0.19, 0.58, 0.72), "#f2efe4", `stroke="#667" stroke-width="1"`));
  drawn.push(
    line(
      camera,
      [-0.84, -0.4, 0, 0.4, 0.84].map((y): Point3 => [tailAt - 0.005, y, 0.775]),
      seam,
      1.6,
    ),
  );
  return drawn.join("");
}

/** Lines on the skin that are seen from above: the hood's and the trunk lid's gaps. Drawn only from the end they face. */
export function deckDetails(camera: Camera, end: 1 | -1): string {
  const [near, far] = end === 1 ? [2.3, 0.92] : [-2.38, -1.9];
  const edge = (x: number, y: number): Point3 => [x, y, deckHeight(x) + 0.012];
  const xs = Array.from({ length: 12 }, (_, index) => far + ((near - far) * index) / 11);
  const drawn = [1, -1].map((side) =>
    line(
      camera,
      xs.map((x) => edge(x, side * 0.7)),
      seam,
      1.5,
    ),
  );
  if (end === 1) {
    drawn.push(
      line(
        camera,
        xs.map((x): Point3 => [x, 0.2, deckHeight(x) + 0.03]),
        "#9b4550",
        1.4,
      ),
    );
    drawn.push(
      line(
        camera,
        xs.map((x): Point3 => [x, -0.2, deckHeight(x) + 0.03]),
        "#9b4550",
        1.4,
      ),
    );
  }
  return drawn.join("");
}
