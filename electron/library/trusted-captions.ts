import type Database from "better-sqlite3";
import type { TrustedCaption } from "../../shared-types/index.ts";

export function trustedCaptionsTable(database: Database.Database) {
  const put = database.prepare(
    `INSERT INTO trusted_captions (recording_id, caption, initials) VALUES (?, ?, ?)
     ON CONFLICT (recording_id, caption) DO UPDATE SET initials = excluded.initials`,
  );
  const take = database.prepare("DELETE FROM trusted_captions WHERE recording_id = ? AND caption = ?");
  const select = database.prepare<[string], TrustedCaption>(
    "SELECT caption, initials FROM trusted_captions WHERE recording_id = ? ORDER BY caption",
  );
  return {
    put: (recordingId: string, { caption, initials }: TrustedCaption): void => {
      put.run(recordingId, caption, initials);
    },
    /** @param id the caption's index, as text: edits name every row by a text. */
    take: (recordingId: string, id: string): void => {
      take.run(recordingId, Number(id));
    },
    /** In file order. */
    of: (recordingId: string): TrustedCaption[] => select.all(recordingId),
  };
}
