/** Something on the lap strip that the pointer can pick. CSS pixels within the drawing. */
export type LapHit = { readonly x: number; readonly y: number; readonly words: string } & (
  | { readonly kind: "conflict"; readonly key: string }
  | {
      readonly kind: "finding";
      /** Null where it is only proposed. */
      readonly id: string | null;
    }
);

/** How near the pointer must come, in CSS pixels: half of the 24 that WCAG 2.2, 2.5.8 wants of a target. */
const reach = 12;

/** What lies nearest to a point within reach; of two, what can be picked comes before what can only be read. */
export function hitAt(hits: readonly LapHit[], x: number, y: number): LapHit | null {
  let best: LapHit | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (const hit of hits) {
    const far = Math.hypot(hit.x - x, hit.y - y);
    if (far > reach) continue;
    const weighed = far + (hit.kind === "finding" && hit.id === null ? reach / 2 : 0);
    if (weighed < least) {
      least = weighed;
      best = hit;
    }
  }
  return best;
}

/** The middle of a lane. */
export function middleOf(lane: { readonly from: number; readonly to: number }): number {
  return (lane.from + lane.to) / 2;
}
