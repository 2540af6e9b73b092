import type { Input, RecordingDetail } from "../../shared-types/index.ts";
import type { Analyst } from "./analyse-recording.ts";
import type { Parts } from "./parts.ts";
import { recordEdit } from "./record-edit.ts";
import { findRecording, recordingDetail } from "./recording-detail.ts";
import { Refusal } from "./refusals.ts";

/** A caption is one line of speech: breaks and runs of blanks are how it was written, not what was said. */
const plain = (words: string): string => words.replaceAll(/\s+/g, " ").trim();

/**
 * Puts a caption's words right beside the words it came with, or, given those words, takes the correction back: one edit, and a new
 * analysis that reads the words as they now stand.
 */
export async function correctCaption(parts: Parts, analyst: Analyst, input: Input<"caption.correct">): Promise<RecordingDetail> {
  const { recordingId, caption, initials } = input;
  const { library } = parts;
  findRecording(parts, recordingId);
  const spoken = library.captions.of(recordingId).find(({ index }) => index === caption);
  if (!spoken) throw new Refusal("caption-unknown", `This recording has no caption ${caption + 1}. Look at the list again.`);
  const before = library.captionCorrections.of(recordingId).find((row) => row.caption === caption) ?? null;
  const words = plain(input.words);
  const after = words === plain(spoken.text) ? null : { caption, words, initials };
  if ((before?.words ?? null) === (after?.words ?? null)) return recordingDetail(parts, recordingId);
  recordEdit(parts, recordingId, {
    label: after ? `correct caption ${caption + 1}` : `put back the words of caption ${caption + 1}`,
    initials,
    changes: [{ table: "caption_corrections", id: String(caption), before, after }],
  });
  return analyst.analyseAnew(recordingId);
}
