import { readSmallFile, writeSmallFile } from "./small-file.ts";

const mostRecent = 10;

export interface RecentRecordings {
  /** Ids, the latest first. */
  readonly ids: () => readonly string[];
  /** @returns whether the order is another now. */
  readonly opened: (recordingId: string) => boolean;
}

/** The recordings that were opened last, by their ids alone: titles stay in the library. */
export function recentRecordings(file: string): RecentRecordings {
  const kept = readSmallFile(file);
  let ids = Array.isArray(kept) ? kept.filter((id): id is string => typeof id === "string" && id.length <= 36).slice(0, mostRecent) : [];
  return {
    ids: () => ids,
    opened(recordingId) {
      if (ids[0] === recordingId) return false;
      ids = [recordingId, ...ids.filter((id) => id !== recordingId)].slice(0, mostRecent);
      try {
        writeSmallFile(file, ids);
      } catch {
        // It is then forgotten with the end of this run.
      }
      return true;
    },
  };
}
