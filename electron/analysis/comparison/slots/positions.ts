import type { ComponentName, PositionName } from "../../../../shared-types/index.ts";

/** Corners of the vehicle as bits, so that "does one position lie within the other" is one operation. */
const corners = {
  "driver-front": 0b0001,
  "driver-rear": 0b0010,
  "passenger-front": 0b0100,
  "passenger-rear": 0b1000,
  front: 0b0101,
  rear: 0b1010,
  driver: 0b0011,
  passenger: 0b1100,
  all: 0b1111,
} as const satisfies Record<PositionName, number>;

/**
 * Whether two stated positions speak of the same place: one must lie within the other. "All" meets "rear", "driver" meets "driver-rear";
 * "front" and "driver" only cross at a corner, each refines the car in its own way, and so they do not meet.
 */
export function positionsMeet(first: PositionName, second: PositionName): boolean {
  const shared = corners[first] & corners[second];
  return shared === corners[first] || shared === corners[second];
}

/** The narrower of two positions that meet: the place a contradiction is about. */
export function narrower(first: PositionName, second: PositionName): PositionName {
  return (corners[first] & corners[second]) === corners[first] ? first : second;
}

/** Whether the position covers both an axle's sides or the whole vehicle: such claims are about more than one part. */
export function coversWholeVehicle(position: PositionName | null): boolean {
  return position === "all";
}

/**
 * What a claim without a position speaks of.
 *
 * - `single`: there is one such part, wherever it was said from; positions are not looked at.
 * - `whole`: all of them; it meets a claim about any one of them ("leather seats" meets "the rear seat is vinyl").
 * - `general`: all of them loosely; it meets only claims about all ("the paint is original" says little against one repainted hood).
 * - `resolve`: whichever was in view; it meets a placed claim only where it was said away from the wheels (greeting, sign-off, papers, drive).
 * - `seen`: one of them, in view and unknown which; it meets only what is said of all.
 * - `placed-only`: nobody can tell; it meets nothing.
 */
export type UnplacedMeaning = "single" | "whole" | "general" | "resolve" | "seen" | "placed-only";

/** How claims without a position are read where the attribute's own rule does not say otherwise. */
export const unplacedMeaning = {
  tire: "resolve",
  wheel: "resolve",
  spare: "single",
  engine: "single",
  "fuel-system": "single",
  ignition: "single",
  exhaust: "general",
  transmission: "single",
  "final-drive": "whole",
  brakes: "placed-only",
  steering: "single",
  suspension: "placed-only",
  cooling: "single",
  electrical: "single",
  body: "general",
  paint: "general",
  glass: "general",
  trim: "general",
  bumper: "general",
  lights: "general",
  seats: "general",
  dash: "single",
  carpet: "general",
  belts: "general",
  headliner: "single",
  top: "single",
  audio: "single",
  "air-conditioning": "single",
  "cargo-floor": "single",
  frame: "single",
  floors: "general",
  "fuel-tank": "single",
  odometer: "single",
  title: "single",
  vin: "single",
  price: "single",
  vehicle: "single",
} as const satisfies Record<ComponentName, UnplacedMeaning>;
