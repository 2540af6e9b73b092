import type Database from "better-sqlite3";
import type { Publication } from "../../shared-types/index.ts";

type Row = Omit<Publication, "openMatters"> & { readonly openMatters: string | null };

export function publicationsTable(database: Database.Database) {
  const columns = "at, initials, open_conflicts AS openConflicts, open_matters AS openMatters";
  const insert = database.prepare(
    "INSERT INTO publications (recording_id, at, initials, open_conflicts, open_matters) VALUES (?, ?, ?, ?, ?)",
  );
  const select = database.prepare<[string], Row>(`SELECT ${columns} FROM publications WHERE recording_id = ? ORDER BY at, sequence`);
  const last = database.prepare<[string], Row>(
    `SELECT ${columns} FROM publications WHERE recording_id = ? ORDER BY at DESC, sequence DESC LIMIT 1`,
  );
  const read = (row: Row): Publication => ({
    ...row,
    openMatters: row.openMatters === null ? null : (JSON.parse(row.openMatters) as string[]),
  });
  return {
    add: (recordingId: string, { at, initials, openConflicts, openMatters }: Publication): void => {
      insert.run(recordingId, at, initials, openConflicts, openMatters === null ? null : JSON.stringify(openMatters));
    },
    /** Oldest first. */
    of: (recordingId: string): Publication[] => select.all(recordingId).map(read),
    last: (recordingId: string): Publication | null => {
      const row = last.get(recordingId);
      return row ? read(row) : null;
    },
  };
}
