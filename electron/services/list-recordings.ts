import type { RecordingSummary } from "../../shared-types/index.ts";
import type { Parts } from "./parts.ts";
import { recordingSummary, videoFound } from "./recording-detail.ts";

/**
 * The library's list. Counting a recording's proposals takes milliseconds, and hundreds of recordings are asked for with every change of
 * one: each summary is kept until its recording is told to have changed, here or by another Roundwalk over the same file.
 */
export function createRecordingList(parts: Pick<Parts, "library" | "events">): () => RecordingSummary[] {
  const { library, events } = parts;
  const known = new Map<string, RecordingSummary>();
  let changesElsewhere = library.changesElsewhere();
  events.subscribe(({ name, payload }) => {
    if (name !== "library.changed") return;
    if (payload.recordingId === null) known.clear();
    else known.delete(payload.recordingId);
  });
  return () => {
    const now = library.changesElsewhere();
    if (now !== changesElsewhere) known.clear();
    changesElsewhere = now;
    return library.recordings.all().map((row) => {
      const before = known.get(row.id);
      // A file comes and goes without anybody telling.
      if (before) return { ...before, videoFound: videoFound(library, row) };
      const summary = recordingSummary(parts, row);
      known.set(row.id, summary);
      return summary;
    });
  };
}
