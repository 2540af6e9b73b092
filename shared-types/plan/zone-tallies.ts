import type { RecordingDetail } from "../recording.ts";
import { type ZoneName, zoneNames } from "../vocabulary.ts";

/** What the recording holds for one zone. */
export interface ZoneTally {
  readonly seconds: number;
  readonly findings: number;
  readonly proposals: number;
  readonly openConflicts: number;
}

export type TalliedDetail = Pick<RecordingDetail, "lap" | "findings" | "findingProposals" | "openConflictKeys"> & {
  readonly analysis: Pick<RecordingDetail["analysis"], "claims" | "conflicts">;
};

/** Time, findings and open conflicts for each zone; a conflict counts once in every zone where one of its claims was spoken. */
export function zoneTallies(detail: TalliedDetail): Record<ZoneName, ZoneTally> {
  const zoneOfClaim = new Map(detail.analysis.claims.map((claim) => [claim.id, claim.zone]));
  const open = new Set(detail.openConflictKeys);
  const disputed = detail.analysis.conflicts
    .filter((conflict) => open.has(conflict.key))
    .map((conflict) => new Set(conflict.sides.flatMap((side) => side.claims.flatMap((id) => zoneOfClaim.get(id) ?? []))));
  const tally = (zone: ZoneName): ZoneTally => ({
    seconds: detail.lap.filter((span) => span.zone === zone).reduce((sum, span) => sum + span.end - span.start, 0),
    findings: detail.findings.filter((finding) => finding.zone === zone).length,
    proposals: detail.findingProposals.filter((proposal) => proposal.zone === zone).length,
    openConflicts: disputed.filter((zones) => zones.has(zone)).length,
  });
  return Object.fromEntries(zoneNames.map((zone) => [zone, tally(zone)])) as Record<ZoneName, ZoneTally>;
}
