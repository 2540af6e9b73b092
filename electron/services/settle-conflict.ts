import { randomUUID } from "node:crypto";
import { type Input, plainConflict, type RecordingDetail, type Ruling, sideValues } from "../../shared-types/index.ts";
import type { RowChange } from "../library/edits.ts";
import type { Parts } from "./parts.ts";
import { recordEdit, rulingChange } from "./record-edit.ts";
import { findRecording } from "./recording-detail.ts";
import { Refusal } from "./refusals.ts";

/**
 * Rules on a conflict. A ruling that stood before is superseded, never deleted. Undone, the new ruling's row stays too: it counts as
 * superseded by the one that stands again, or by itself where none had stood.
 */
export function settleConflict(parts: Parts, input: Input<"conflict.rule">): RecordingDetail {
  const { recordingId, conflictKey, decision, side, reason, initials } = input;
  findRecording(parts, recordingId);
  const conflict = parts.library.proposals
    .conflicts(recordingId)
    .map(plainConflict)
    .find(({ key }) => key === conflictKey);
  if (!conflict) {
    throw new Refusal("conflict-unknown", "This conflict is no longer found by the analysis. Look at the queue again.");
  }
  if (decision === "side-stands" && (side === null || side >= conflict.sides.length)) {
    throw new Refusal("side-unknown", `Say which side stands: 0 to ${conflict.sides.length - 1} of “${conflict.topic}”, not ${side}.`);
  }
  if (decision === "recogniser-error" && (side === null || side >= conflict.sides.length)) {
    throw new Refusal(
      "side-unknown",
      `Say which side was misheard: 0 to ${conflict.sides.length - 1} of “${conflict.topic}”, not ${side}.`,
    );
  }
  const ruling: Ruling = {
    id: randomUUID(),
    conflictKey,
    decision,
    side: decision === "side-stands" || decision === "recogniser-error" ? side : null,
    reason,
    rightWords: (decision === "recogniser-error" && input.rightWords) || null,
    initials,
    at: parts.now(),
    supersededBy: null,
    topic: conflict.topic,
    sideValues: sideValues(conflict, parts.library.proposals.of(recordingId)?.claims ?? []),
  };
  const former = parts.library.rulings.of(recordingId).find((each) => each.conflictKey === conflictKey && each.supersededBy === null);
  const changes: RowChange[] = [rulingChange({ ...ruling, supersededBy: former?.id ?? ruling.id }, ruling)];
  if (former) changes.push(rulingChange(former, { ...former, supersededBy: ruling.id }));
  return recordEdit(parts, recordingId, { label: `ruling on ${conflict.topic}`, initials, changes });
}
