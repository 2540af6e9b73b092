/** What tire and wheel slots share. */

import type { ZoneName } from "../../../../../shared-types/index.ts";

/** Components a rolling figure may be about. */
export const rolling = ["tire", "wheel", "spare"] as const;

/** Round things with a diameter that are no road wheel. */
/** "The placard says 33 pounds and that's for the sixteens": wheels that a figure is meant for, and not those in view. */
export const notMeantFor = /(?<!\bfor (?:the|those|your))$/;

export const notRoad = /steering|banjo|fan\b|rotor|disc\b|drum|speaker|screen|percent|miles an hour|degrees/;

/** The value where the number was said in the plural, as rims and widths are: "fifteens", "15s", "two thirty fives". */
export function whenPlural(value: number | string, said: string): number | undefined {
  return /(?:s|'s)$/.test(said) && !/(?:inches|millimeters)$/.test(said) && typeof value === "number" ? value : undefined;
}

/** Zones from which tires are in view, or in which the vehicle is summed up. */
export const tiresInView: readonly ZoneName[] = [
  "opening",
  "front",
  "driver-side",
  "passenger-side",
  "rear",
  "roof",
  "cargo",
  "underside",
  "documents",
  "closing",
];
