import type { Input, RecordingDetail } from "../../shared-types/index.ts";
import type { Analyst } from "./analyse-recording.ts";
import type { Parts } from "./parts.ts";
import { recordEdit } from "./record-edit.ts";
import { findRecording, recordingDetail, storedAnalysis } from "./recording-detail.ts";
import { Refusal } from "./refusals.ts";

/** Lets a doubtful caption give claims, or takes that back: one edit, and a new analysis that knows of it. */
export async function trustCaption(parts: Parts, analyst: Analyst, input: Input<"caption.trust">): Promise<RecordingDetail> {
  const { recordingId, caption, trusted, initials } = input;
  findRecording(parts, recordingId);
  const before = parts.library.trustedCaptions.of(recordingId).find((row) => row.caption === caption) ?? null;
  if (trusted === (before !== null)) return recordingDetail(parts, recordingId);
  if (trusted && !storedAnalysis(parts.library, recordingId).doubtful.some((doubtful) => doubtful.caption === caption)) {
    throw new Refusal(
      "caption-not-doubtful",
      `Caption ${caption + 1} is not a doubtful one; it gives claims already. Look at the list again.`,
    );
  }
  recordEdit(parts, recordingId, {
    label: trusted ? `hold caption ${caption + 1} for speech` : `hold caption ${caption + 1} for noise`,
    initials,
    changes: [{ table: "trusted_captions", id: String(caption), before, after: trusted ? { caption, initials } : null }],
  });
  return analyst.analyseAnew(recordingId);
}
