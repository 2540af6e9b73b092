import type { Parts } from "../parts.ts";
import { videoPath } from "../recording-detail.ts";
import { fingerprintOf } from "./fingerprint.ts";

/**
 * Keeps what a recording's video is known by, where the library does not have it yet and the file is there: recordings came in before
 * fingerprints were kept. Tells nobody of a file that cannot be read; it is then as if it had not been seen.
 */
export async function keepFingerprint({ library }: Pick<Parts, "library">, recordingId: string): Promise<void> {
  const video = library.recordings.get(recordingId)?.video;
  if (!video || library.videoFingerprints.get(recordingId)) return;
  const fingerprint = await fingerprintOf(videoPath(library, video)).catch(() => undefined);
  if (!fingerprint) return;
  library.transaction(() => {
    // Removed, or given another video, while the file was read.
    if (library.recordings.get(recordingId)?.video?.path === video.path) library.videoFingerprints.put(recordingId, fingerprint);
  });
}

/** The same for the whole library, one file after the other. */
export async function keepFingerprints(parts: Pick<Parts, "library">, closed: () => boolean): Promise<void> {
  for (const { id } of parts.library.recordings.all()) {
    if (closed()) return;
    await keepFingerprint(parts, id);
  }
}
