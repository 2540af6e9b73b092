import type Database from "better-sqlite3";
import type { Caption } from "../../shared-types/index.ts";

export function captionsTable(database: Database.Database) {
  const insert = database.prepare('INSERT INTO captions (recording_id, caption_index, start, "end", text) VALUES (?, ?, ?, ?, ?)');
  const select = database.prepare<[string], Caption>(
    'SELECT caption_index AS "index", start, "end", text FROM captions WHERE recording_id = ? ORDER BY caption_index',
  );
  const count = database.prepare("SELECT count(*) FROM captions WHERE recording_id = ?").pluck();

  return {
    addAll(recordingId: string, captions: readonly Caption[]): void {
      for (const caption of captions) insert.run(recordingId, caption.index, caption.start, caption.end, caption.text);
    },
    /** In file order. */
    of: (recordingId: string): Caption[] => select.all(recordingId),
    count: (recordingId: string): number => count.get(recordingId) as number,
  };
}
