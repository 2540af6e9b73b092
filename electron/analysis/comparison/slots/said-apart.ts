import type { Claim, ConflictKind } from "../../../../shared-types/index.ts";

/**
 * Two values of one thing spoken nearer together than this are one thought: a contrast, a list or a slip put right ("cloth seats, leather
 * wheel"), not a contradiction. Contrasts of words run longer than corrections of figures. Seconds between the beginnings.
 */
export const sameBreathSeconds = {
  measure: 6,
  count: 10,
  type: 12,
  material: 12,
  color: 15,
  presence: 10,
  condition: 12,
  originality: 12,
  standard: 0,
  hedge: 15,
} as const satisfies Record<ConflictKind, number>;

/** Whether some claim of one side and some claim of another were spoken at least so many seconds apart. Linear in the claims. */
export function saidApart(sides: readonly (readonly Claim[])[], seconds: number): boolean {
  if (seconds === 0) return true;
  const spans = sides.map((claims) => ({
    first: Math.min(...claims.map((claim) => claim.start)),
    last: Math.max(...claims.map((claim) => claim.start)),
  }));
  return spans.some((side, position) =>
    spans.some((other, otherPosition) => position !== otherPosition && Math.abs(other.last - side.first) >= seconds),
  );
}
