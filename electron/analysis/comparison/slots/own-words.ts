import type { Claim, PositionName } from "../../../../shared-types/index.ts";

/** Words by which a claim is about all, or about a pair, and not about the one in view. */
export const totality =
  /\b(all|every|everything|whole|any|anywhere|entire|throughout|nowhere|none of|both sides|all (the way )?(a)?round)\b/i;

const pairs = /\b(fronts|rears|backs|both|pair|each|front (two|pair|ones|tires|tyres)|rear (two|pair|ones|tires|tyres)|axle)\b/i;

/** "The tires are at 44 pounds": of the set, where tread is told of the ones in view. */
const ofTheSet = /\b(?:the|these|all|its|my) (?:tires|tyres)\b|\b(?:tires|tyres) (?:are|were|all|have)\b/i;

/** The side that is in view from a zone, where one is. */
export const zonePositions: Partial<Record<Claim["zone"], PositionName>> = {
  front: "front",
  rear: "rear",
  "driver-side": "driver",
  "passenger-side": "passenger",
};

const corners: Partial<Record<Claim["zone"], Partial<Record<PositionName, PositionName>>>> = {
  "driver-side": { front: "driver-front", rear: "driver-rear", all: "driver" },
  "passenger-side": { front: "passenger-front", rear: "passenger-rear", all: "passenger" },
};

/**
 * Where a claim about a thing of which each corner has its own (a tread depth, a date code) speaks of: "this front one", said at the
 * driver's side, is the driver's front. Words for a pair or for all keep their place.
 */
export function cornerInView(claim: Claim): PositionName | null {
  const { attribute, position, zone, quote } = claim;
  if (position === null || totality.test(quote) || pairs.test(quote)) return position;
  if (position === "all" && attribute !== "depth" && ofTheSet.test(quote)) return position;
  return corners[zone]?.[position] ?? position;
}
