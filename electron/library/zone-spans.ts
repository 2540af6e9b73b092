import type Database from "better-sqlite3";
import type { ZoneSpan } from "../../shared-types/index.ts";

export function zoneSpansTable(database: Database.Database) {
  const put = database.prepare(
    `INSERT INTO zone_spans (id, recording_id, zone, start, "end", title, initials)
     VALUES (@id, @recordingId, @zone, @start, @end, @title, @initials)
     ON CONFLICT (id) DO UPDATE SET zone = @zone, start = @start, "end" = @end, title = @title, initials = @initials`,
  );
  const take = database.prepare("DELETE FROM zone_spans WHERE id = ? AND recording_id = ?");
  const select = database.prepare<[string], ZoneSpan>(
    'SELECT id, zone, start, "end", title, initials FROM zone_spans WHERE recording_id = ? ORDER BY start',
  );
  return {
    put: (recordingId: string, span: ZoneSpan): void => {
      put.run({ ...span, recordingId });
    },
    take: (recordingId: string, id: string): void => {
      take.run(id, recordingId);
    },
    /** In order of time. */
    of: (recordingId: string): ZoneSpan[] => select.all(recordingId),
  };
}
