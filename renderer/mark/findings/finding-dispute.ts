import { type Finding, type FindingProposal, proposalKey, type RecordingDetail } from "../../../shared-types/index.ts";
import { openConflictOf } from "../../shared/caption-segments.ts";

/** The key of the open conflict about what a finding was read from; null where there is none, and for a finding that a person made. */
export function disputeOfFinding(
  finding: Finding | FindingProposal,
  {
    analysis,
    openConflictKeys,
  }: Pick<RecordingDetail, "openConflictKeys"> & { readonly analysis: Pick<RecordingDetail["analysis"], "claims" | "conflicts"> },
): string | null {
  const claim =
    "claim" in finding
      ? finding.claim
      : finding.proposalKey === null
        ? undefined
        : analysis.claims.find((one) => proposalKey(one) === finding.proposalKey)?.id;
  return claim === undefined ? null : openConflictOf(claim, analysis.conflicts, openConflictKeys);
}
