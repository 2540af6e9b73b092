import type { BodyStyle } from "../vocabulary.ts";

/** A body seen from above, nose to the left. Lengths are shares of the whole length, half widths shares of the half width. */
export interface BodyOutline {
  /** Where the hood ends and the windshield begins. */
  readonly cowl: number;
  /** Front and rear edge of the roof panel; equal where there is none. */
  readonly roofFrom: number;
  readonly roofTo: number;
  /** Where the cabin ends and the load space begins. */
  readonly deck: number;
  readonly noseRound: number;
  readonly tailRound: number;
  /** Half width amidships; below 1 for a waisted body. */
  readonly waist: number;
  /** Half width of the roof. */
  readonly roofWidth: number;
  readonly frontAxle: number;
  readonly rearAxle: number;
  /** Rows of seats. */
  readonly rows: 1 | 2;
  /** An open bed behind the cabin. */
  readonly bed: boolean;
  /** Vertical at the back: the load space ends at a gate or door, under the roof. */
  readonly uprightTail: boolean;
}

/** Shares measured on common proportions of each style (common practice, no particular vehicle). */
export const outlines = {
  coupe: {
    cowl: 0.37,
    roofFrom: 0.46,
    roofTo: 0.66,
    deck: 0.77,
    noseRound: 0.08,
    tailRound: 0.09,
    waist: 0.96,
    roofWidth: 0.68,
    frontAxle: 0.19,
    rearAxle: 0.77,
    rows: 2,
    bed: false,
    uprightTail: false,
  },
  sedan: {
    cowl: 0.32,
    roofFrom: 0.4,
    roofTo: 0.69,
    deck: 0.79,
    noseRound: 0.07,
    tailRound: 0.07,
    waist: 0.98,
    roofWidth: 0.72,
    frontAxle: 0.18,
    rearAxle: 0.79,
    rows: 2,
    bed: false,
    uprightTail: false,
  },
  estate: {
    cowl: 0.32,
    roofFrom: 0.4,
    roofTo: 0.95,
    deck: 0.73,
    noseRound: 0.07,
    tailRound: 0.04,
    waist: 0.98,
    roofWidth: 0.74,
    frontAxle: 0.18,
    rearAxle: 0.79,
    rows: 2,
    bed: false,
    uprightTail: true,
  },
  hatchback: {
    cowl: 0.31,
    roofFrom: 0.41,
    roofTo: 0.86,
    deck: 0.76,
    noseRound: 0.1,
    tailRound: 0.07,
    waist: 0.98,
    roofWidth: 0.72,
    frontAxle: 0.19,
    rearAxle: 0.83,
    rows: 2,
    bed: false,
    uprightTail: true,
  },
  pickup: {
    cowl: 0.31,
    roofFrom: 0.38,
    roofTo: 0.53,
    deck: 0.57,
    noseRound: 0.05,
    tailRound: 0.02,
    waist: 1,
    roofWidth: 0.78,
    frontAxle: 0.17,
    rearAxle: 0.76,
    rows: 1,
    bed: true,
    uprightTail: false,
  },
  van: {
    cowl: 0.23,
    roofFrom: 0.31,
    roofTo: 0.97,
    deck: 0.5,
    noseRound: 0.06,
    tailRound: 0.02,
    waist: 1,
    roofWidth: 0.84,
    frontAxle: 0.16,
    rearAxle: 0.78,
    rows: 1,
    bed: false,
    uprightTail: true,
  },
  convertible: {
    cowl: 0.36,
    roofFrom: 0.44,
    roofTo: 0.44,
    deck: 0.76,
    noseRound: 0.08,
    tailRound: 0.08,
    waist: 0.97,
    roofWidth: 0.7,
    frontAxle: 0.18,
    rearAxle: 0.78,
    rows: 2,
    bed: false,
    uprightTail: false,
  },
  roadster: {
    cowl: 0.43,
    roofFrom: 0.5,
    roofTo: 0.5,
    deck: 0.7,
    noseRound: 0.12,
    tailRound: 0.13,
    waist: 0.93,
    roofWidth: 0.64,
    frontAxle: 0.2,
    rearAxle: 0.77,
    rows: 1,
    bed: false,
    uprightTail: false,
  },
} as const satisfies Record<BodyStyle, BodyOutline>;

/** Where the body stands in the drawing, in its own units (about CSS pixels). */
export const bodyBox = { left: 74, top: 38, length: 292, halfWidth: 52 } as const;
export const planSize = { width: 440, height: 180 } as const;
export const centreY = bodyBox.top + bodyBox.halfWidth;

export function alongX(share: number): number {
  return bodyBox.left + share * bodyBox.length;
}

/** The closed outline of the body. */
export function bodyPath(outline: BodyOutline): string {
  const { noseRound, tailRound, waist } = outline;
  const x = (share: number) => alongX(share).toFixed(1);
  const side = (direction: 1 | -1) => (share: number) => (centreY + direction * share * bodyBox.halfWidth).toFixed(1);
  const up = side(-1);
  const down = side(1);
  return [
    `M${x(0)} ${centreY}`,
    `C${x(0)} ${up(0.6)} ${x(noseRound * 0.2)} ${up(0.9)} ${x(noseRound)} ${up(0.96)}`,
    `C${x(0.22)} ${up(1.02)} ${x(0.34)} ${up(waist)} ${x(0.5)} ${up(waist)}`,
    `C${x(0.66)} ${up(waist)} ${x(0.8)} ${up(1.02)} ${x(1 - tailRound)} ${up(0.95)}`,
    `C${x(1 - tailRound * 0.2)} ${up(0.9)} ${x(1)} ${up(0.6)} ${x(1)} ${centreY}`,
    `C${x(1)} ${down(0.6)} ${x(1 - tailRound * 0.2)} ${down(0.9)} ${x(1 - tailRound)} ${down(0.95)}`,
    `C${x(0.8)} ${down(1.02)} ${x(0.66)} ${down(waist)} ${x(0.5)} ${down(waist)}`,
    `C${x(0.34)} ${down(waist)} ${x(0.22)} ${down(1.02)} ${x(noseRound)} ${down(0.96)}`,
    `C${x(noseRound * 0.2)} ${down(0.9)} ${x(0)} ${down(0.6)} ${x(0)} ${centreY}Z`,
  ].join("");
}
