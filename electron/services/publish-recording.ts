import type { Input, RecordingDetail } from "../../shared-types/index.ts";
import type { Parts } from "./parts.ts";
import { findRecording, recordingDetail } from "./recording-detail.ts";
import { Refusal } from "./refusals.ts";

/**
 * Keeps that a recording's index was published, by whom, and how many conflicts were open. Whoever publishes must have been told which
 * are open: where a ruling was made or undone meanwhile, nothing is kept.
 */
export function publishRecording(parts: Parts, { recordingId, openConflictKeys, initials }: Input<"recording.publish">): RecordingDetail {
  findRecording(parts, recordingId);
  if (recordingDetail(parts, recordingId).analysis.analysisVersion === 0) {
    throw new Refusal("not-analysed", "This recording was not analysed yet, so nobody can say what is open in it. Analyse it first.");
  }
  const open = parts.library.rulings.openConflictKeys(recordingId);
  const told = new Set(openConflictKeys);
  if (open.length !== told.size || open.some((key) => !told.has(key))) {
    throw new Refusal(
      "open-conflicts-changed",
      `Other conflicts are open than were shown (${told.size} shown, ${open.length} open now). Nothing was published; look at the list again.`,
    );
  }
  parts.library.transaction(() => parts.library.publications.add(recordingId, { at: parts.now(), initials, openConflicts: open.length }));
  parts.events.publish("library.changed", { recordingId });
  return recordingDetail(parts, recordingId);
}
