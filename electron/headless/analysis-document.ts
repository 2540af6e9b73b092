import type { Analysis, AnalysisDocument, Transcript } from "../../shared-types/index.ts";

/**
 * The analysis as `npm run analyze` prints it: the contract's keys, seconds rounded to milliseconds.
 * @param withSheet whether a stock sheet was given: what it denies, supports and tells alone then stands under a key of its own.
 */
export function analysisDocument(file: string, transcript: Transcript, analysis: Analysis, withSheet = false): AnalysisDocument {
  return {
    version: 1,
    source: { file, format: transcript.format, captions: transcript.captions.length, duration: toMilliseconds(transcript.duration) },
    zones: analysis.zones.map(({ zone, start, end }) => ({ zone, start: toMilliseconds(start), end: toMilliseconds(end) })),
    claims: analysis.claims.map((claim) => ({
      id: claim.id,
      captions: claim.captions,
      start: toMilliseconds(claim.start),
      end: toMilliseconds(claim.end),
      quote: claim.quote,
      component: claim.component,
      position: claim.position,
      attribute: claim.attribute,
      value: claim.value,
      unit: claim.unit,
      stance: claim.stance,
    })),
    conflicts: analysis.conflicts.map(({ id, kind, topic, why, sides }) => ({
      id,
      kind,
      topic,
      why,
      sides: sides.map(({ value, claims }) => ({ value, claims })),
    })),
    repairs: analysis.repairs.map(({ caption, heard, meant }) => ({ caption, heard, meant })),
    unreliable: analysis.doubtful,
    remarks: analysis.remarks,
    ...(withSheet ? { stockSheet: { denies: analysis.denials, supports: analysis.supports, unspoken: analysis.silences } } : {}),
  };
}

function toMilliseconds(seconds: number): number {
  return Math.round(seconds * 1000) / 1000;
}
