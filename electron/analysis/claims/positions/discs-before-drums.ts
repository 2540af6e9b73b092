import type { PositionName } from "../../../../shared-types/index.ts";

/** Drums named for the back, in either order. */
const drumsBehind =
  /\b(?:rear|back) (?:\S+ ){0,2}?drums?\b|\bdrums? (?:\S+ ){0,3}?(?:back|rear|behind)\b|\bback(?: here)?(?:'s| is| are)? (?:\S+ ){0,2}?drums?\b/g;
const discPart = /\b(?:rotors?|discs?|disks?|pads?|calipers?)\b/g;
const endNamed = /\b(?:rear|back|behind|both|all)\b/;

const lastEnd = (words: string, pattern: RegExp): number => {
  let end = -1;
  for (const match of words.matchAll(pattern)) end = match.index + match[0].length;
  return end;
};

/**
 * On a vehicle with drums behind, discs, rotors and pads are the front's ("disc up front, drum in the back, and I miked the rotors …"): the place of
 * the drums, though the nearest, is not theirs. `before` holds the words before the number.
 */
export function discsBeforeDrums(part: string | null, position: PositionName | null, before: string): PositionName | null {
  if (part === null || !/^(?:rotor|rotor thickness|pads|caliper)$/.test(part)) return position;
  if (position !== null && !position.endsWith("rear")) return position;
  const drums = lastEnd(before, drumsBehind);
  const disc = lastEnd(before, discPart);
  if (drums < 0 || disc <= drums || endNamed.test(before.slice(drums))) return position;
  return position === "driver-rear" ? "driver-front" : position === "passenger-rear" ? "passenger-front" : "front";
}
