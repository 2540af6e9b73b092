import type Database from "better-sqlite3";
import type { Publication } from "../../shared-types/index.ts";

export function publicationsTable(database: Database.Database) {
  const insert = database.prepare("INSERT INTO publications (recording_id, at, initials, open_conflicts) VALUES (?, ?, ?, ?)");
  const select = database.prepare<[string], Publication>(
    "SELECT at, initials, open_conflicts AS openConflicts FROM publications WHERE recording_id = ? ORDER BY at, sequence",
  );
  const last = database.prepare<[string], Publication>(
    "SELECT at, initials, open_conflicts AS openConflicts FROM publications WHERE recording_id = ? ORDER BY at DESC, sequence DESC LIMIT 1",
  );
  return {
    add: (recordingId: string, { at, initials, openConflicts }: Publication): void => {
      insert.run(recordingId, at, initials, openConflicts);
    },
    /** Oldest first. */
    of: (recordingId: string): Publication[] => select.all(recordingId),
    last: (recordingId: string): Publication | null => last.get(recordingId) ?? null,
  };
}
