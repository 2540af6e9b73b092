import type Database from "better-sqlite3";
import type { CaptionCorrection } from "../../shared-types/index.ts";

export function captionCorrectionsTable(database: Database.Database) {
  const put = database.prepare(
    `INSERT INTO caption_corrections (recording_id, caption, words, initials) VALUES (?, ?, ?, ?)
     ON CONFLICT (recording_id, caption) DO UPDATE SET words = excluded.words, initials = excluded.initials`,
  );
  const take = database.prepare("DELETE FROM caption_corrections WHERE recording_id = ? AND caption = ?");
  const select = database.prepare<[string], CaptionCorrection>(
    "SELECT caption, words, initials FROM caption_corrections WHERE recording_id = ? ORDER BY caption",
  );
  return {
    put: (recordingId: string, { caption, words, initials }: CaptionCorrection): void => {
      put.run(recordingId, caption, words, initials);
    },
    /** @param id the caption's index, as text: edits name every row by a text. */
    take: (recordingId: string, id: string): void => {
      take.run(recordingId, Number(id));
    },
    /** In file order. */
    of: (recordingId: string): CaptionCorrection[] => select.all(recordingId),
  };
}
