import { existsSync } from "node:fs";
import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Input, Output, RecordingDetail } from "../../../shared-types/index.ts";
import { chapterMarks } from "../../exports/chapters/chapter-marks.ts";
import type { Parts } from "../parts.ts";
import { findRecording, recordingDetail, videoPath } from "../recording-detail.ts";
import { findFfmpeg, runFfmpeg } from "../video-copies/ffmpeg.ts";
import type { TellProgress } from "../work-tickets.ts";
import { pictureFacts } from "./picture-size.ts";

/** Widest still that is taken for an index, in pixels: as wide as a column of print at 150 dots an inch. */
const widestPixels = 640;
/** The camera is still on its way when a zone begins: a picture is taken so much later, in seconds, or in the middle of a short one. */
const arrivedAfterSeconds = 2;

interface Stretch {
  readonly start: number;
  readonly end: number;
}

/** Moments, in seconds, of which an index wants a picture: one in each chapter and one for each finding. */
export function stillMoments(detail: RecordingDetail): number[] {
  const chapters = chapterMarks(detail).map(({ start, end }: Stretch) => start + Math.min(arrivedAfterSeconds, (end - start) / 2));
  const findings = detail.findings.map(({ start }) => start);
  return [...new Set([...chapters, ...findings].map((seconds) => Math.round(seconds * 1000) / 1000))].sort((a, b) => a - b);
}

/** Moments, in milliseconds, of which the index wants a picture and none is kept near. The recording may end before its words do. */
function missingMoments({ library }: Pick<Parts, "library">, recordingId: string): number[] {
  const { duration } = findRecording({ library }, recordingId);
  const kept = library.stills.times(recordingId);
  return stillMoments(recordingDetail({ library }, recordingId))
    .map((seconds) => Math.round(seconds * 1000))
    .filter((at) => at <= duration * 1000 && !kept.some((time) => Math.abs(time - at) <= nearMilliseconds));
}

/** What is missing of an index' pictures, and who can take them. */
export function wantedStills(
  parts: Pick<Parts, "library">,
  { recordingId }: Input<"still.wanted">,
  program: string | null = findFfmpeg(),
): Output<"still.wanted"> {
  const { video } = findRecording(parts, recordingId);
  const there = video !== null && existsSync(videoPath(parts.library, video));
  return { moments: there ? missingMoments(parts, recordingId) : [], hostTakes: program !== null };
}

export interface TakeStillsOptions {
  readonly signal: AbortSignal;
  readonly tell?: TellProgress;
  readonly program?: string | null;
}

/**
 * Takes the pictures that the index wants and the library lacks, by FFmpeg. A picture that somebody kept near a moment serves for it.
 * @returns Why some are missing, for the person; null where all are there.
 */
export async function takeStills(
  parts: Pick<Parts, "library">,
  recordingId: string,
  { signal, tell = () => {}, program = findFfmpeg() }: TakeStillsOptions,
): Promise<string | null> {
  const { library } = parts;
  const { video } = findRecording(parts, recordingId);
  const wanted = missingMoments(parts, recordingId);
  if (wanted.length === 0 || !video) return null;
  const source = videoPath(library, video);
  if (!existsSync(source)) return "The video is not where it was, so that pictures are missing.";
  if (program === null)
    return `${wanted.length === 1 ? "One picture is" : `${wanted.length} pictures are`} missing: FFmpeg, which takes them from the video, was not found on this machine.`;
  const scratch = await mkdtemp(join(tmpdir(), "roundwalk-stills-"));
  let missed = 0;
  try {
    for (const [done, at] of wanted.entries()) {
      tell("taking pictures", done, wanted.length);
      const file = join(scratch, `${at}.jpg`);
      const taken = await runFfmpeg(program, {
        signal,
        // Seeking before the input goes to the nearest key frame and decodes from there: exact, and quick in a long recording.
        arguments: [
          ...["-ss", String(at / 1000), "-i", source, "-map", "0:v:0", "-frames:v", "1"],
          ...["-vf", `scale='min(${widestPixels},iw)':-2`, "-q:v", "4", "-f", "image2", "-c:v", "mjpeg", "-y", file],
        ],
      }).then(
        () => existsSync(file),
        (failure: unknown) => {
          if (signal.aborted) throw failure;
          return false;
        },
      );
      const bytes = taken ? await readFile(file) : null;
      const facts = bytes && pictureFacts(bytes);
      if (!bytes || !facts) missed += 1;
      else library.transaction(() => library.stills.put(recordingId, { ...facts, atMilliseconds: at, bytes }));
    }
  } finally {
    await rm(scratch, { recursive: true, force: true });
  }
  return missed === 0
    ? null
    : `${missed === 1 ? "One picture" : `${missed} pictures`} could not be taken: the video may end before its transcript.`;
}

/** A picture kept within this of a moment shows the same. */
const nearMilliseconds = 500;
