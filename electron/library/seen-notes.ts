import type Database from "better-sqlite3";
import type { SeenNote } from "../../shared-types/index.ts";

export function seenNotesTable(database: Database.Database) {
  const put = database.prepare(
    `INSERT INTO seen_notes (id, recording_id, sequence, about, key, state, reason, initials, at, superseded_by, topic, told)
     VALUES (@id, @recordingId, (SELECT coalesce(max(sequence), 0) + 1 FROM seen_notes WHERE recording_id = @recordingId), @about, @key,
       @state, @reason, @initials, @at, @supersededBy, @topic, @told)
     ON CONFLICT (id) DO UPDATE SET superseded_by = @supersededBy`,
  );
  const select = database.prepare<[string], SeenNote>(
    `SELECT about, key, id, state, reason, initials, at, superseded_by AS supersededBy, topic, told
     FROM seen_notes WHERE recording_id = ? ORDER BY sequence`,
  );
  return {
    /** Adds a note, or changes by which one a note is superseded; everything else about it is for good. */
    put: (recordingId: string, note: SeenNote): void => {
      put.run({ ...note, recordingId });
    },
    /** In the order in which they were made, superseded ones too. */
    of: (recordingId: string): SeenNote[] => select.all(recordingId),
  };
}
