import type Database from "better-sqlite3";

/** What a video file is known by wherever it lies and whatever it is called. */
export interface VideoFingerprint {
  /** Length of the file. */
  readonly bytes: number;
  /** SHA-256 of its first and last mebibyte, lower-case hexadecimal. */
  readonly fingerprint: string;
}

export function videoFingerprintsTable(database: Database.Database) {
  const put = database.prepare(
    `INSERT INTO video_fingerprints (recording_id, bytes, fingerprint) VALUES (?, ?, ?)
     ON CONFLICT (recording_id) DO UPDATE SET bytes = excluded.bytes, fingerprint = excluded.fingerprint`,
  );
  const select = database.prepare<[string], VideoFingerprint>("SELECT bytes, fingerprint FROM video_fingerprints WHERE recording_id = ?");
  return {
    put: (recordingId: string, { bytes, fingerprint }: VideoFingerprint): void => {
      put.run(recordingId, bytes, fingerprint);
    },
    get: (recordingId: string): VideoFingerprint | undefined => select.get(recordingId),
  };
}
