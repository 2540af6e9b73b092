import { randomUUID } from "node:crypto";
import { existsSync } from "node:fs";
import { mkdir, open, rename, rm } from "node:fs/promises";
import { basename, isAbsolute, join, relative, sep } from "node:path";
import { pathToFileURL } from "node:url";
import { addresses, type ChapterGranularity, type ExportFormat, type Input, type Output } from "../../shared-types/index.ts";
import { buildExport, fileStem, needsHashes } from "../exports/build-export.ts";
import { recordingHashes } from "./file-hashes.ts";
import type { Parts } from "./parts.ts";
import { findRecording, recordingDetail, videoPath } from "./recording-detail.ts";
import { Refusal } from "./refusals.ts";

/** The folder beside the library that takes exports, one folder for each recording. */
export const exportsFolder = "exports";

/** Named so that a person knows it; the start of the id keeps two recordings of one name apart. */
export function exportFolderOf(parts: Pick<Parts, "library">, recordingId: string): string {
  const row = findRecording(parts, recordingId);
  return join(parts.library.folder, exportsFolder, `${fileStem(row)}-${recordingId.slice(0, 8)}`);
}

export async function previewExport(
  parts: Parts,
  { recordingId, format, granularity }: Input<"export.preview">,
): Promise<Output<"export.preview">> {
  const detail = recordingDetail(parts, recordingId);
  const hashes = needsHashes(format) ? await recordingHashes(parts, recordingId) : null;
  const built = buildExport(format, { detail, writtenAt: parts.now(), granularity, hashes });
  return { ...built, warnings: [...built.warnings] };
}

/** Writes into the recording's folder beside the library. */
export async function writeExports(parts: Parts, input: Input<"export.write">): Promise<Output<"export.write">> {
  return writeExportsInto(parts, exportFolderOf(parts, input.recordingId), input);
}

/** `rename` of node:fs; handed in so that a disk that gives up half way can be tried. */
type Move = (from: string, to: string) => Promise<void>;

/**
 * Writes all files or none: each is written whole under another name first, and only then do they take their places.
 * @throws Refusal that names every file that stands in the way, unless overwriting was asked for.
 */
export async function writeExportsInto(
  parts: Pick<Parts, "library" | "now">,
  folder: string,
  { recordingId, formats, granularity, overwrite }: Input<"export.write">,
  move: Move = rename,
): Promise<Output<"export.write">> {
  const detail = recordingDetail(parts, recordingId);
  const writtenAt = parts.now();
  const videoHref = videoHrefFrom(parts, folder, recordingId);
  const hashes = formats.some(needsHashes) ? await recordingHashes(parts, recordingId) : null;
  const files = [...new Set(formats)].map((format) => {
    const { fileName, text, warnings } = buildExport(format, { detail, writtenAt, videoHref, granularity, hashes });
    return { format, path: join(folder, fileName), content: Buffer.from(text, "utf8"), warnings: [...warnings] };
  });
  const inTheWay = files.filter(({ path }) => existsSync(path)).map(({ path }) => path);
  if (inTheWay.length > 0 && !overwrite) {
    throw new Refusal(
      "file-exists",
      [
        `Already in ${folder}:`,
        ...inTheWay.map((path) => basename(path)),
        "Nothing was written. Ask for overwriting, or move them away.",
      ].join("\n"),
      {
        file: inTheWay[0] as string,
      },
    );
  }
  await placeWhole(folder, files, move);
  return {
    folder,
    files: files.map(({ format, path, content, warnings }) => ({
      format,
      path,
      bytes: content.length,
      downloadUrl: `${addresses.exports}${recordingId}/${format}/${granularity}`,
      warnings,
    })),
  };
}

/** Where the video lies as seen from the written files; on another drive that is its file address. */
function videoHrefFrom({ library }: Pick<Parts, "library">, folder: string, recordingId: string): string | null {
  const video = findRecording({ library }, recordingId).video;
  if (!video) return null;
  const path = videoPath(library, video);
  const way = relative(folder, path);
  return isAbsolute(way) ? pathToFileURL(path).href : way.split(sep).map(encodeURIComponent).join("/");
}

interface WholeFile {
  readonly path: string;
  readonly content: Uint8Array;
}

async function placeWhole(folder: string, files: readonly WholeFile[], move: Move): Promise<void> {
  const staged = files.map((file) => ({ ...file, stage: `${file.path}.${randomUUID()}.part` }));
  const set: { path: string; former: string | null }[] = [];
  try {
    await mkdir(folder, { recursive: true });
    for (const { stage, content } of staged) await writeToDisk(stage, content);
    for (const { stage, path } of staged) {
      const former = existsSync(path) ? `${stage}.former` : null;
      if (former) await move(path, former);
      set.push({ path, former });
      await move(stage, path);
    }
  } catch (failure) {
    // Back to what was there before the first file took its place.
    for (const { path, former } of set.reverse()) {
      await rm(path, { force: true });
      if (former) await move(former, path);
    }
    const reason = failure instanceof Error ? failure.message : String(failure);
    throw new Refusal(
      "export-failed",
      `The export could not be written (${reason}). Nothing was changed; check the folder and the space on its disk.`,
    );
  } finally {
    // What cannot be removed here was never made; the failure that is told is the first one.
    await Promise.allSettled(staged.map(({ stage }) => rm(stage, { force: true })));
  }
  await Promise.all(set.map(({ former }) => (former ? rm(former, { force: true }) : undefined)));
}

async function writeToDisk(path: string, content: Uint8Array): Promise<void> {
  const handle = await open(path, "wx");
  try {
    await handle.writeFile(content);
    await handle.sync();
  } finally {
    await handle.close();
  }
}

/** An export as a download: made anew, so that it shows the library's present state. Undefined for an unknown recording. */
export async function downloadExport(parts: Parts, recordingId: string, format: ExportFormat, granularity: ChapterGranularity) {
  return parts.library.recordings.get(recordingId) ? previewExport(parts, { recordingId, format, granularity }) : undefined;
}

/** @throws Refusal when the host has no window to show a folder in, or nothing was exported yet. */
export async function revealExports(
  parts: Parts,
  { recordingId }: Input<"export.reveal">,
  reveal: ((folder: string) => Promise<void>) | null,
): Promise<Output<"export.reveal">> {
  findRecording(parts, recordingId);
  const folder = exportFolderOf(parts, recordingId);
  if (!reveal) throw new Refusal("reveal-impossible", `This host cannot open folders. The files are in ${folder}.`);
  if (!existsSync(folder)) throw new Refusal("nothing-exported", "Nothing was exported from this recording yet. Export it first.");
  await reveal(folder);
  return {};
}
