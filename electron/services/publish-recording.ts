import { type Input, matterName, type RecordingDetail } from "../../shared-types/index.ts";
import type { Parts } from "./parts.ts";
import { findRecording, openMattersOf, recordingDetail } from "./recording-detail.ts";
import { Refusal } from "./refusals.ts";

/**
 * Keeps that a recording's index was published, by whom, how many conflicts were open, and what else nobody had dealt with. Whoever publishes
 * must have been told which: where a ruling or a note was made or undone meanwhile, nothing is kept.
 */
export function publishRecording(parts: Parts, input: Input<"recording.publish">): RecordingDetail {
  const { recordingId, initials } = input;
  findRecording(parts, recordingId);
  if (recordingDetail(parts, recordingId).analysis.analysisVersion === 0) {
    throw new Refusal("not-analysed", "This recording was not analyzed yet, so nobody can say what is open in it. Analyze it first.");
  }
  const conflicts = parts.library.rulings.openConflictKeys(recordingId);
  const matters = openMattersOf(parts.library, recordingId);
  const open = new Set([...conflicts.map((key) => `conflict:${key}`), ...matters.map(matterName)]);
  const told = new Set([...input.openConflictKeys.map((key) => `conflict:${key}`), ...input.openMatters.map(matterName)]);
  if (open.size !== told.size || [...open].some((name) => !told.has(name))) {
    throw new Refusal(
      "open-conflicts-changed",
      `Something else is open than was shown (${told.size} shown, ${open.size} open now). Nothing was published; look at the list again.`,
    );
  }
  const openMatters = matters.map(({ about, topic, told: words }) => (about === "question" ? words : topic));
  parts.library.transaction(() =>
    parts.library.publications.add(recordingId, { at: parts.now(), initials, openConflicts: conflicts.length, openMatters }),
  );
  parts.events.publish("library.changed", { recordingId });
  return recordingDetail(parts, recordingId);
}
