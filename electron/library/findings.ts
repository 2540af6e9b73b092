import type Database from "better-sqlite3";
import type { Finding } from "../../shared-types/index.ts";

export function findingsTable(database: Database.Database) {
  const put = database.prepare(
    `INSERT INTO findings (id, recording_id, start, "end", zone, component, part, position, seen, grade, note, still_at, proposal_key, initials)
     VALUES (@id, @recordingId, @start, @end, @zone, @component, @part, @position, @seen, @grade, @note, @stillAt, @proposalKey, @initials)
     ON CONFLICT (id) DO UPDATE SET start = @start, "end" = @end, zone = @zone, component = @component, part = @part, position = @position,
       seen = @seen, grade = @grade, note = @note, still_at = @stillAt, proposal_key = @proposalKey, initials = @initials`,
  );
  const take = database.prepare("DELETE FROM findings WHERE id = ? AND recording_id = ?");
  const select = database.prepare<[string], Finding>(
    `SELECT id, start, "end", zone, component, part, position, seen, grade, note, still_at AS stillAt, proposal_key AS proposalKey, initials
     FROM findings WHERE recording_id = ? ORDER BY start, rowid`,
  );
  const count = database.prepare("SELECT count(*) FROM findings WHERE recording_id = ?").pluck();
  const keys = database
    .prepare<[string], string>("SELECT proposal_key FROM findings WHERE recording_id = ? AND proposal_key IS NOT NULL")
    .pluck();
  return {
    put: (recordingId: string, finding: Finding): void => {
      // An edit from before findings had parts and stills names neither.
      put.run({ ...finding, part: finding.part ?? null, stillAt: finding.stillAt ?? null, recordingId });
    },
    take: (recordingId: string, id: string): void => {
      take.run(id, recordingId);
    },
    /** In order of time. */
    of: (recordingId: string): Finding[] => select.all(recordingId),
    count: (recordingId: string): number => count.get(recordingId) as number,
    /** Keys of the proposals that were accepted. */
    acceptedKeys: (recordingId: string): Set<string> => new Set(keys.all(recordingId)),
  };
}
