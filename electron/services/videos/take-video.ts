import { randomUUID } from "node:crypto";
import { existsSync, mkdirSync } from "node:fs";
import { rm } from "node:fs/promises";
import { extname, isAbsolute, join } from "node:path";
import type { Input, Output, RecordingSummary } from "../../../shared-types/index.ts";
import { videoDifference } from "../../../shared-types/video-content.ts";
import type { RecordingVideo } from "../../library/recordings.ts";
import type { VideoFingerprint } from "../../library/video-fingerprints.ts";
import type { KnownFile } from "../offered-files.ts";
import type { Parts } from "../parts.ts";
import { findRecording, recordingSummary, videoPath } from "../recording-detail.ts";
import { Refusal } from "../refusals.ts";
import { videoMediaType } from "../video-kinds.ts";
import { fingerprintOf } from "./fingerprint.ts";

/** The folder beside the library that takes received videos. */
export const mediaFolder = "media";

/** Recordings whose video has gone from where it was, with what it is known by. */
export function wantedVideos({ library }: Pick<Parts, "library">): Output<"video.wanted"> {
  return library.recordings.all().flatMap(({ id, title, stockNumber, video }) => {
    if (!video || existsSync(videoPath(library, video))) return [];
    const known = library.videoFingerprints.get(id);
    return [{ recordingId: id, title, stockNumber, videoName: video.name, known: known ?? null }];
  });
}

/**
 * Gives a recording its video again from wherever it lies now. Only the same content is taken; any other needs `replace`, by which a
 * person says that it is meant. A recording that never had a video takes any.
 * @throws Refusal `video-differs` that says in what, `video-unknown` where nothing is known of the old one.
 */
export async function takeVideo(parts: Parts, { recordingId, video, replace }: Input<"video.take">): Promise<RecordingSummary> {
  const { library, files } = parts;
  const row = findRecording(parts, recordingId);
  const file = files.find(video);
  const mediaType = videoMediaType(file.path, file.name);
  const fingerprint = await fingerprintOf(file.path);
  if (row.video && !replace) refuseOther(library.videoFingerprints.get(recordingId), fingerprint, file.name, row.video.name);
  const placed = await placeVideo(parts, file, mediaType);
  const before = row.video;
  try {
    library.transaction(() => {
      // Removed while its video was read.
      findRecording(parts, recordingId);
      library.recordings.setVideo(recordingId, placed);
      library.videoFingerprints.put(recordingId, fingerprint);
    });
  } catch (failure) {
    if (file.received) await rm(join(library.folder, placed.path), { force: true });
    throw failure;
  }
  // The library's own copy of what was replaced; the person's own file stays.
  if (before && !isAbsolute(before.path) && before.path !== placed.path) await rm(join(library.folder, before.path), { force: true });
  files.letGo([video]);
  parts.events.publish("library.changed", { recordingId });
  return recordingSummary(parts, findRecording(parts, recordingId));
}

function refuseOther(known: VideoFingerprint | undefined, found: VideoFingerprint, name: string, oldName: string): void {
  if (!known) {
    throw new Refusal(
      "video-unknown",
      `This recording came in before the content of videos was remembered, so nothing tells whether ${name} is its video. Look at it; if it is, take it.`,
      { file: name },
    );
  }
  const differs = videoDifference(known, found, oldName);
  if (differs === null) return;
  throw new Refusal("video-differs", `${name} is not the video of this recording: ${differs}. Choose another file.`, { file: name });
}

/**
 * A received video moves beside the library; one that was named by its path stays where the person has it.
 * @param fileStem its name there; another than the old one's, so that a video that replaces another never lies on it.
 */
export async function placeVideo(
  { library, files }: Parts,
  file: KnownFile,
  mediaType: string,
  fileStem: string = randomUUID(),
): Promise<RecordingVideo> {
  if (!file.received) return { path: file.path, name: file.name, mediaType };
  mkdirSync(join(library.folder, mediaFolder), { recursive: true });
  const path = join(mediaFolder, `${fileStem}${extname(file.name).toLowerCase()}`);
  await files.keep(file.id, join(library.folder, path));
  return { path, name: file.name, mediaType };
}
