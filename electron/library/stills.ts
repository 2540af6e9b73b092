import type Database from "better-sqlite3";

/** A picture taken from the video. */
export interface Still {
  /** Milliseconds from the beginning of the recording. */
  readonly atMilliseconds: number;
  /** Pixels. */
  readonly width: number;
  readonly height: number;
  readonly mediaType: string;
  readonly bytes: Uint8Array;
}

interface Columns {
  at_milliseconds: number;
  width: number;
  height: number;
  media_type: string;
  bytes: Buffer;
}

const read = (columns: Columns): Still => ({
  atMilliseconds: columns.at_milliseconds,
  width: columns.width,
  height: columns.height,
  mediaType: columns.media_type,
  bytes: columns.bytes,
});

export function stillsTable(database: Database.Database) {
  const put = database.prepare(
    `INSERT INTO stills (recording_id, at_milliseconds, width, height, media_type, bytes) VALUES (?, ?, ?, ?, ?, ?)
     ON CONFLICT (recording_id, at_milliseconds) DO UPDATE SET width = excluded.width, height = excluded.height,
       media_type = excluded.media_type, bytes = excluded.bytes`,
  );
  const select = database.prepare<[string], Columns>(
    "SELECT at_milliseconds, width, height, media_type, bytes FROM stills WHERE recording_id = ? ORDER BY at_milliseconds",
  );
  const selectOne = database.prepare<[string, number], Columns>(
    "SELECT at_milliseconds, width, height, media_type, bytes FROM stills WHERE recording_id = ? AND at_milliseconds = ?",
  );
  const times = database
    .prepare<[string], number>("SELECT at_milliseconds FROM stills WHERE recording_id = ? ORDER BY at_milliseconds")
    .pluck();
  const kept = database.prepare<[string], Omit<Still, "bytes">>(
    `SELECT at_milliseconds AS atMilliseconds, width, height, media_type AS mediaType FROM stills WHERE recording_id = ? ORDER BY at_milliseconds`,
  );
  const clear = database.prepare("DELETE FROM stills WHERE recording_id = ?");
  return {
    put: (recordingId: string, { atMilliseconds, width, height, mediaType, bytes }: Still): void => {
      put.run(recordingId, atMilliseconds, width, height, mediaType, Buffer.from(bytes));
    },
    /** In the order of the recording. */
    of: (recordingId: string): Still[] => select.all(recordingId).map(read),
    get(recordingId: string, atMilliseconds: number): Still | undefined {
      const columns = selectOne.get(recordingId, atMilliseconds);
      return columns && read(columns);
    },
    /** All of them without their bytes, in the order of the recording. */
    kept: (recordingId: string): Omit<Still, "bytes">[] => kept.all(recordingId),
    times: (recordingId: string): number[] => times.all(recordingId),
    /** For another video under the same recording. */
    clear: (recordingId: string): void => {
      clear.run(recordingId);
    },
  };
}
