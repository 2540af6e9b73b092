import { rm } from "node:fs/promises";
import { isAbsolute, join } from "node:path";
import type { Input, Output, RecordingSummary } from "../../shared-types/index.ts";
import type { Analyst } from "./analyse-recording.ts";
import { indexPeoplesWork, recordingNames } from "./index-for-search.ts";
import type { Parts } from "./parts.ts";
import { findRecording, recordingSummary } from "./recording-detail.ts";

export function describeRecording(parts: Parts, { id, title, stockNumber, vehicle }: Input<"recording.describe">): RecordingSummary {
  const { library } = parts;
  findRecording(parts, id);
  library.transaction(() => {
    library.recordings.describe({ id, title, stockNumber, vehicle });
    library.search.rename(id, recordingNames({ title, stockNumber, vehicle }));
  });
  parts.events.publish("library.changed", { recordingId: id });
  return recordingSummary(parts, findRecording(parts, id));
}

/** Takes a recording out of the library, people's work included. A video that the library keeps itself goes too; the person's own file stays. */
export async function removeRecording(
  parts: Parts,
  analyst: Analyst,
  { id }: Input<"recording.remove">,
): Promise<Output<"recording.remove">> {
  const { library } = parts;
  const { video } = findRecording(parts, id);
  analyst.stop(id);
  library.transaction(() => library.recordings.remove(id));
  if (video && !isAbsolute(video.path)) await rm(join(library.folder, video.path), { force: true });
  parts.events.publish("library.changed", { recordingId: null });
  return {};
}

/**
 * The length that the page measured. A plain transcript has no end of its own, so the video's counts, save that no caption may start
 * after it; other transcripts keep their end where the video is shorter, and the video's silent tail is added where it is longer.
 */
export function takeMeasuredLength(parts: Parts, { id, duration }: Input<"recording.measured">): Output<"recording.measured"> {
  const { library } = parts;
  const row = findRecording(parts, id);
  const lastCaption = library.captions.of(id).at(-1);
  const least = row.transcriptFormat === "plain" ? (lastCaption?.start ?? 0) : row.transcriptEnd;
  const seconds = Math.max(duration, least);
  if (Math.abs(seconds - row.duration) < 0.001) return {};
  library.transaction(() => {
    library.recordings.setDuration(id, seconds);
    indexPeoplesWork(parts, id);
  });
  parts.events.publish("library.changed", { recordingId: id });
  return {};
}
