import { randomUUID } from "node:crypto";
import { existsSync } from "node:fs";
import { mkdir, mkdtemp, rename, rm, stat, statfs, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { basename, extname, join } from "node:path";
import { addresses, type ChapterGranularity, copyAddress } from "../../../shared-types/index.ts";
import { buildExport } from "../../exports/build-export.ts";
import { copyNameOf, exportFolderOf } from "../export-recording.ts";
import type { Parts } from "../parts.ts";
import { findRecording, recordingDetail, videoPath } from "../recording-detail.ts";
import { Refusal } from "../refusals.ts";
import type { TellProgress } from "../work-tickets.ts";
import { findFfmpeg, noFfmpeg, runFfmpeg } from "./ffmpeg.ts";

/** How each container is written: FFmpeg's muxer, and the caption format that it takes as a track. */
const containers = {
  ".mp4": { muxer: "mp4", captions: "mov_text" },
  ".m4v": { muxer: "mp4", captions: "mov_text" },
  ".mov": { muxer: "mov", captions: "mov_text" },
  ".mkv": { muxer: "matroska", captions: "webvtt" },
  ".webm": { muxer: "webm", captions: "webvtt" },
} as const;

/** Room that must be left beside the copy, in bytes; common practice. */
const spareBytes = 64 * 1024 * 1024;

/** Whether a copy with chapters can be made here; else why not, and what to do. */
export function copyAbility(parts: Pick<Parts, "library">, { recordingId }: { readonly recordingId: string }): { whyNot: string | null } {
  const { video } = findRecording(parts, recordingId);
  const whyNot =
    video === null
      ? "This recording has no video. Find or import one first."
      : !existsSync(videoPath(parts.library, video))
        ? `${video.name} is not where it was. Find the video again in the library first.`
        : findFfmpeg() === null
          ? noFfmpeg
          : null;
  return { whyNot };
}

/** The copy behind a recording's download address; undefined where none was made. */
export function copyFile({ library }: Pick<Parts, "library">, recordingId: string) {
  const row = library.recordings.get(recordingId);
  const name = row ? copyNameOf(row) : null;
  if (!row?.video || name === null) return undefined;
  return { path: join(exportFolderOf({ library }, recordingId), name), mediaType: row.video.mediaType, fileName: name };
}

export interface CopyAsked {
  readonly recordingId: string;
  readonly granularity: ChapterGranularity;
  /** Whether the corrected captions go in as a track; else the tracks of the original stay. */
  readonly captions: boolean;
  readonly overwrite: boolean;
}

export interface CopyMade {
  path: string;
  bytes: number;
  downloadUrl: string;
}

export interface CopyOptions {
  readonly signal: AbortSignal;
  readonly tell: TellProgress;
  readonly program?: string | null;
  /** Free bytes of a folder's disk; handed in so that a full one can be tried. */
  readonly freeBytes?: (folder: string) => Promise<number>;
}

/**
 * A copy of the video with the chapters inside, and the corrected captions as a track where asked for. Nothing is encoded again, the
 * original is only read, and the copy takes its place when it is whole.
 * @throws Refusal where there is no video, no FFmpeg, no room, or a copy is there and overwriting was not asked for.
 */
export async function copyWithChapters(
  parts: Pick<Parts, "library" | "now">,
  { recordingId, granularity, captions, overwrite }: CopyAsked,
  { signal, tell, program = findFfmpeg(), freeBytes = freeBytesOf }: CopyOptions,
): Promise<CopyMade> {
  const row = findRecording(parts, recordingId);
  if (!row.video) throw new Refusal("no-video", "This recording has no video. Find or import one first.");
  const source = videoPath(parts.library, row.video);
  const found = await stat(source).catch(() => undefined);
  if (!found?.isFile())
    throw new Refusal("video-missing", `${row.video.name} is not where it was. Find the video again in the library first.`);
  if (program === null) throw new Refusal("ffmpeg-missing", noFfmpeg);
  const ending = (extname(row.video.name) || extname(source)).toLowerCase();
  if (!Object.hasOwn(containers, ending)) {
    throw new Refusal("video-kind", `${row.video.name}: chapters go into ${Object.keys(containers).join(", ")} files, and this is none.`);
  }
  const container = containers[ending as keyof typeof containers];
  const folder = exportFolderOf(parts, recordingId);
  const target = join(folder, copyNameOf(row) ?? "");
  if (existsSync(target) && !overwrite) {
    throw new Refusal(
      "file-exists",
      `${basename(target)} is already in ${folder}. Nothing was written. Ask for overwriting, or move it away.`,
      {
        file: target,
      },
    );
  }
  await mkdir(folder, { recursive: true });
  const free = await freeBytes(folder);
  if (free < found.size + spareBytes) {
    throw new Refusal(
      "disk-full",
      `The copy needs ${megabytes(found.size + spareBytes)} and the disk of ${folder} has ${megabytes(free)} free. Nothing was written. Make room, and try again.`,
    );
  }
  const written = { detail: recordingDetail(parts, recordingId), writtenAt: parts.now(), granularity };
  const scratch = await mkdtemp(join(tmpdir(), "roundwalk-copy-"));
  const stage = join(folder, `.${randomUUID()}.part`);
  try {
    const chapters = join(scratch, "chapters.ffmetadata");
    await writeFile(chapters, buildExport("chapters-ffmpeg", written).text);
    const track = join(scratch, "captions.vtt");
    if (captions) await writeFile(track, buildExport("captions-webvtt", written).text);
    await runFfmpeg(program, {
      signal,
      onSeconds: (seconds) => tell("copying the video", Math.round(Math.min(seconds, row.duration)), Math.ceil(row.duration)),
      arguments: [
        ...["-i", source, "-f", "ffmetadata", "-i", chapters],
        ...(captions ? ["-f", "webvtt", "-i", track] : []),
        // Every stream that the container holds, in the order of the original; data tracks that only the camera reads cannot always be copied.
        ...["-map", "0:v?", "-map", "0:a?", ...(captions ? ["-map", "2:s"] : ["-map", "0:s?"])],
        ...["-map_metadata", "0", "-map_chapters", "1", "-c", "copy", ...(captions ? ["-c:s", container.captions] : [])],
        ...(captions ? ["-disposition:s:0", "0", "-metadata:s:s:0", "language=eng"] : []),
        ...(container.muxer === "mp4" || container.muxer === "mov" ? ["-movflags", "+faststart"] : []),
        ...["-y", "-f", container.muxer, stage],
      ],
    }).catch((failure: unknown) => {
      if (signal.aborted)
        throw new Refusal("copy-cancelled", "The copy was cancelled. Nothing was left behind, and the original is as it was.");
      const reason = failure instanceof Error ? failure.message : String(failure);
      throw new Refusal(
        "copy-failed",
        `FFmpeg could not make the copy (${reason}). The original is as it was; see whether it plays to its end.`,
      );
    });
    if (signal.aborted)
      throw new Refusal("copy-cancelled", "The copy was cancelled. Nothing was left behind, and the original is as it was.");
    await rename(stage, target);
  } finally {
    await Promise.allSettled([rm(stage, { force: true }), rm(scratch, { recursive: true, force: true })]);
  }
  const { size } = await stat(target);
  return { path: target, bytes: size, downloadUrl: `${addresses.exports}${recordingId}/${copyAddress}` };
}

async function freeBytesOf(folder: string): Promise<number> {
  const { bavail, bsize } = await statfs(folder);
  return bavail * bsize;
}

function megabytes(bytes: number): string {
  return `${Math.ceil(bytes / 1e6).toLocaleString("en-US")} MB`;
}
