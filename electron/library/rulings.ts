import type Database from "better-sqlite3";
import type { Ruling } from "../../shared-types/index.ts";

type Row = Omit<Ruling, "sideValues"> & { sideValues: string };

export function rulingsTable(database: Database.Database) {
  const put = database.prepare(
    `INSERT INTO rulings (id, recording_id, sequence, conflict_key, decision, side, reason, right_words, initials, at, superseded_by, topic, side_values)
     VALUES (@id, @recordingId, (SELECT coalesce(max(sequence), 0) + 1 FROM rulings WHERE recording_id = @recordingId), @conflictKey, @decision,
       @side, @reason, @rightWords, @initials, @at, @supersededBy, @topic, @sideValues)
     ON CONFLICT (id) DO UPDATE SET superseded_by = @supersededBy`,
  );
  const select = database.prepare<[string], Row>(
    `SELECT id, conflict_key AS conflictKey, decision, side, reason, right_words AS rightWords, initials, at, superseded_by AS supersededBy,
       topic, side_values AS sideValues
     FROM rulings WHERE recording_id = ? ORDER BY sequence`,
  );
  const open = database
    .prepare<[string], string>(
      `SELECT DISTINCT conflicts.key FROM conflicts
       LEFT JOIN rulings ON rulings.recording_id = conflicts.recording_id AND conflict_key = key AND superseded_by IS NULL
       WHERE conflicts.recording_id = ? AND (decision IS NULL OR decision = 'look-at-vehicle') ORDER BY conflicts.position`,
    )
    .pluck();
  const countConflicts = database.prepare("SELECT count(*) FROM conflicts WHERE recording_id = ?").pluck();
  return {
    /** Adds a ruling, or changes by which one a ruling is superseded; everything else about it is for good. */
    put: (recordingId: string, ruling: Ruling): void => {
      put.run({ ...ruling, sideValues: JSON.stringify(ruling.sideValues), recordingId });
    },
    /** In the order in which they were made, superseded ones too. */
    of: (recordingId: string): Ruling[] =>
      select.all(recordingId).map((row) => ({ ...row, sideValues: JSON.parse(row.sideValues) as string[] })),
    /** Keys of conflicts without a standing ruling, or whose ruling is to look at the vehicle. */
    openConflictKeys: (recordingId: string): string[] => open.all(recordingId),
    countConflicts: (recordingId: string): number => countConflicts.get(recordingId) as number,
  };
}
