import { type Comparison, compareClaims } from "../../../../electron/analysis/comparison/compare-claims.ts";
import type { ClaimSketch } from "../../../../electron/analysis/comparison/standards/rule.ts";
import type { Claim, Conflict, SheetMeanings, StockSheetFields } from "../../../../shared-types/index.ts";

/** Seconds between two sketched claims: far enough apart to be two thoughts. */
export const secondsApart = 60;

/** Full claims from sketches, a minute apart in the order given; ids c1, c2, … */
export function claimsFrom(sketches: readonly ClaimSketch[]): Claim[] {
  return sketches.map((sketch, position) => {
    const start = sketch.start ?? position * secondsApart;
    return {
      id: `c${position + 1}`,
      captions: [position],
      start,
      end: start + 2,
      quote: String(sketch.value),
      spans: [{ caption: position, start: 0, end: 1 }],
      part: null,
      position: null,
      unit: null,
      stance: "stated",
      time: "today",
      circumstance: null,
      zone: "opening",
      rule: "sketch",
      repairs: [],
      ...sketch,
    };
  });
}

export function compared(
  claims: readonly Claim[],
  {
    recordedOn = null,
    stockSheet = null,
    sheetMeanings = null,
  }: { recordedOn?: string | null; stockSheet?: StockSheetFields | null; sheetMeanings?: SheetMeanings | null } = {},
): Comparison {
  return compareClaims({ claims, zones: [], duration: 3600, stockSheet, sheetMeanings, recordedOn });
}

export function comparedSketches(sketches: readonly ClaimSketch[], recordedOn: string | null = null): Comparison {
  return compared(claimsFrom(sketches), { recordedOn });
}

/** "kind topic", as a row of a table names a conflict. */
export function named(conflicts: readonly Conflict[]): string[] {
  return conflicts.map((conflict) => `${conflict.kind} ${conflict.topic}`);
}
