import type { Analysis, Conflict } from "../../../shared-types/index.ts";
import { type ArcEnds, arcsBetween } from "./geometry.ts";

/** A conflict as the strip draws it. */
export interface StripConflict {
  readonly conflict: Conflict;
  readonly open: boolean;
  readonly arcs: readonly ArcEnds[];
  /** First moments of the sides, seconds, in order of time. */
  readonly moments: readonly number[];
}

/** The conflicts with their moments; one whose claims are all gone from the analysis has nothing to draw and is left out. */
export function stripConflicts(analysis: Analysis, openKeys: readonly string[]): StripConflict[] {
  const startOf = new Map(analysis.claims.map((claim) => [claim.id, claim.start]));
  const open = new Set(openKeys);
  const drawn = analysis.conflicts.flatMap((conflict) => {
    const moments = conflict.sides
      .flatMap((side) => {
        const starts = side.claims.flatMap((id) => startOf.get(id) ?? []);
        return starts.length > 0 ? [Math.min(...starts)] : [];
      })
      .sort((a, b) => a - b);
    return moments.length > 0 ? [{ conflict, open: open.has(conflict.key), arcs: arcsBetween(moments), moments }] : [];
  });
  // The keyboard goes through them in the order in which they are seen.
  return drawn.toSorted((a, b) => (a.moments[0] ?? 0) - (b.moments[0] ?? 0));
}
