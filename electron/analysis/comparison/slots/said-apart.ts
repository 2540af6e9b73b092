import type { Claim, ConflictKind, ZoneName } from "../../../../shared-types/index.ts";

/**
 * Two values of one thing spoken nearer together than this are one thought: a contrast, a list, a former state or a slip put right
 * ("it had a two barrel, it's a four barrel now"), not a contradiction. Seconds between the beginnings; common practice of speech.
 */
export const sameBreathSeconds = {
  measure: 15,
  count: 15,
  type: 15,
  material: 15,
  color: 20,
  presence: 15,
  condition: 12,
  originality: 15,
  standard: 0,
  hedge: 15,
} as const satisfies Record<ConflictKind, number>;

/** A caption is one breath, however long the recogniser made it, up to this. */
const longestBreathSeconds = 30;

/** With more sides than this, each is held against all the others together, so that cost stays with the claims. */
const mostSidesByPairs = 6;

/**
 * The sides that contradict another one: each of the two has a claim that stands apart from all claims of the other. A value spoken only
 * beside the other was set against it by the speaker himself.
 * @returns positions into `sides`, in order. Grows with n log n.
 */
export function sidesSaidApart(sides: readonly (readonly Claim[])[], seconds: number): number[] {
  if (seconds === 0) return sides.map((_, side) => side);
  if (sides.length > mostSidesByPairs) return sidesStanding(sides, seconds);
  const apart = new Set<number>();
  for (let first = 0; first < sides.length; first++) {
    for (let second = first + 1; second < sides.length; second++) {
      if (sidesStanding([sides[first]!, sides[second]!], seconds).length < 2) continue;
      apart.add(first);
      apart.add(second);
    }
  }
  const contradicting = [...apart].sort((a, b) => a - b);
  // A third value spoken only beside one of the two ("the two litre was another model") is left out, if two still stand without it.
  const standing = sidesStanding(
    contradicting.map((side) => sides[side]!),
    seconds,
  ).map((position) => contradicting[position]!);
  return standing.length >= 2 ? standing : contradicting;
}

/** Whether two or more sides contradict each other. */
export function saidApart(sides: readonly (readonly Claim[])[], seconds: number): boolean {
  return sidesSaidApart(sides, seconds).length >= 2;
}

interface Spoken {
  readonly side: number;
  readonly start: number;
  readonly captions: readonly number[];
  readonly zone: ZoneName;
  readonly dial: boolean;
}

/**
 * Whether it is a reading of the dial to its hundreds or finer, stated flatly. A second one in another sentence is no contrast and no
 * rounding; a slip put right has its words of correction.
 */
function isExactReading({ component, attribute, value, stance, circumstance, time }: Claim): boolean {
  if (component !== "odometer" || attribute !== "mileage" || typeof value !== "number") return false;
  return stance === "stated" && time === "today" && circumstance === null && value >= 1000 && value % 1000 !== 0;
}

/** The sides with at least one claim that no claim of another side stands beside. */
function sidesStanding(sides: readonly (readonly Claim[])[], seconds: number): number[] {
  const spoken: Spoken[] = sides
    .flatMap((claims, side) =>
      claims.map((claim) => ({ side, start: claim.start, captions: claim.captions, zone: claim.zone, dial: isExactReading(claim) })),
    )
    .sort((a, b) => a.start - b.start || a.side - b.side);
  const contrasted = new Set<number>();
  for (const forward of [true, false]) {
    // The last claim passed, and the last one of another side than it.
    let last: Spoken | undefined;
    let other: Spoken | undefined;
    for (let step = 0; step < spoken.length; step++) {
      const position = forward ? step : spoken.length - 1 - step;
      const here = spoken[position]!;
      const nearest = last && last.side !== here.side ? last : other && other.side !== here.side ? other : undefined;
      if (nearest && inOneBreath(nearest, here, seconds)) contrasted.add(position);
      if (last && last.side !== here.side) other = last;
      last = here;
    }
  }
  const standing = new Set(spoken.flatMap(({ side }, position) => (contrasted.has(position) ? [] : [side])));
  return sides.flatMap((_, side) => (standing.has(side) ? [side] : []));
}

function inOneBreath(first: Spoken, second: Spoken, seconds: number): boolean {
  const apart = Math.abs(first.start - second.start);
  // Between two zones the speaker has moved on: only what straddles the step is still one thought.
  const breath = first.zone === second.zone && !(first.dial && second.dial) ? seconds : seconds / 3;
  return apart < breath || (apart < longestBreathSeconds && first.captions.some((caption) => second.captions.includes(caption)));
}
