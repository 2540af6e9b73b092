import { randomUUID } from "node:crypto";
import { componentLabel, type Finding, type Input, type RecordingDetail, timeLabel } from "../../shared-types/index.ts";
import type { Parts } from "./parts.ts";
import { findingChanges, recordEdit } from "./record-edit.ts";
import { findRecording, proposedFindings } from "./recording-detail.ts";
import { Refusal } from "./refusals.ts";

/** A finding may be a single moment, but it lies within the recording. */
function within(start: number, end: number, duration: number): { start: number; end: number } {
  const last = Math.min(end, duration);
  if (start > last) {
    throw new Refusal(
      "range-empty",
      `A finding from ${timeLabel(start)} to ${timeLabel(end)} does not lie in the recording's ${timeLabel(duration)}, or ends before it starts.`,
    );
  }
  return { start, end: last };
}

function named(finding: Pick<Finding, "component" | "part" | "start">): string {
  return `${finding.part ?? componentLabel(finding.component)} at ${timeLabel(finding.start)}`;
}

export function addFinding(parts: Parts, { recordingId, ...input }: Input<"finding.add">): RecordingDetail {
  const { duration } = findRecording(parts, recordingId);
  const finding: Finding = {
    ...input,
    ...within(input.start, input.end, duration),
    part: input.part ?? null,
    stillAt: input.stillAt ?? null,
    id: randomUUID(),
    proposalKey: null,
  };
  return recordEdit(parts, recordingId, {
    label: `add finding ${named(finding)}`,
    initials: input.initials,
    changes: findingChanges([], [finding]),
  });
}

export function changeFinding(parts: Parts, { recordingId, ...input }: Input<"finding.change">): RecordingDetail {
  const { duration } = findRecording(parts, recordingId);
  const former = ownFinding(parts, recordingId, input.id);
  const { part = former.part, stillAt = former.stillAt } = input;
  const finding: Finding = { ...former, ...input, ...within(input.start, input.end, duration), part, stillAt };
  return recordEdit(parts, recordingId, {
    label: `change finding ${named(finding)}`,
    initials: input.initials,
    changes: findingChanges([former], [finding]),
  });
}

export function removeFinding(parts: Parts, { recordingId, id, initials }: Input<"finding.remove">): RecordingDetail {
  findRecording(parts, recordingId);
  const former = ownFinding(parts, recordingId, id);
  return recordEdit(parts, recordingId, { label: `remove finding ${named(former)}`, initials, changes: findingChanges([former], []) });
}

/** Makes proposals the person's own findings, all of them as one edit. */
export function acceptFindings(parts: Parts, { recordingId, proposalKeys, initials }: Input<"finding.accept">): RecordingDetail {
  const { duration } = findRecording(parts, recordingId);
  const proposals = proposedFindings(parts.library, recordingId);
  const accepted = [...new Set(proposalKeys)].map((key): Finding => {
    const proposal = proposals.find((each) => each.key === key);
    if (!proposal) {
      throw new Refusal(
        "proposal-unknown",
        "A proposed finding is no longer there: it was accepted, or the recording was analyzed again. Look at the list again.",
      );
    }
    const { zone, component, position, seen, grade } = proposal;
    const start = Math.min(proposal.start, duration);
    return {
      id: randomUUID(),
      start,
      end: Math.max(start, Math.min(proposal.end, duration)),
      zone,
      component,
      part: null,
      position,
      seen,
      grade,
      note: "",
      stillAt: null,
      proposalKey: key,
      initials,
    };
  });
  const first = accepted[0];
  const label = accepted.length === 1 && first ? `accept finding ${named(first)}` : `accept ${accepted.length} findings`;
  return recordEdit(parts, recordingId, { label, initials, changes: findingChanges([], accepted) });
}

function ownFinding({ library }: Parts, recordingId: string, id: string): Finding {
  const finding = library.findings.of(recordingId).find((each) => each.id === id);
  if (!finding) throw new Refusal("finding-unknown", "This finding is no longer there; somebody removed it. Look at the list again.");
  return finding;
}
