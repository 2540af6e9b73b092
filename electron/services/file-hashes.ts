import { createHash } from "node:crypto";
import { createReadStream } from "node:fs";
import { stat } from "node:fs/promises";
import { pipeline } from "node:stream/promises";
import type { Parts } from "./parts.ts";
import { findRecording, videoPath } from "./recording-detail.ts";

export interface RecordingHashes {
  readonly video: string | null;
  readonly transcript: string;
}

/** Hashes of files as they last lay there: a video of gigabytes is read once, as long as its size and time stay. */
const known = new Map<string, { readonly size: number; readonly modifiedMs: number; readonly hash: string }>();

/** SHA-256 of a file, read piece by piece; null where it is not there. */
async function hashOfFile(path: string): Promise<string | null> {
  const found = await stat(path).catch(() => undefined);
  if (!found?.isFile()) return null;
  const before = known.get(path);
  if (before && before.size === found.size && before.modifiedMs === found.mtimeMs) return before.hash;
  const sum = createHash("sha256");
  await pipeline(createReadStream(path), sum);
  const hash = sum.digest("hex");
  known.set(path, { size: found.size, modifiedMs: found.mtimeMs, hash });
  return hash;
}

/** SHA-256 of the video as it lies there and of the transcript as it came in, byte for byte. */
export async function recordingHashes({ library }: Pick<Parts, "library">, recordingId: string): Promise<RecordingHashes> {
  const { video } = findRecording({ library }, recordingId);
  return {
    video: video ? await hashOfFile(videoPath(library, video)) : null,
    transcript: createHash("sha256")
      .update(library.recordings.transcriptBytes(recordingId) ?? new Uint8Array())
      .digest("hex"),
  };
}
