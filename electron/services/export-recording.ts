import { randomUUID } from "node:crypto";
import { existsSync, statSync } from "node:fs";
import { mkdir, open, rename, rm, rmdir } from "node:fs/promises";
import { basename, extname, isAbsolute, join, relative, sep } from "node:path";
import { pathToFileURL } from "node:url";
import {
  addresses,
  type ChapterGranularity,
  type ExportFormat,
  type IndexTemplate,
  type Input,
  isPdfFormat,
  type Output,
  type Paper,
  pdfPages,
} from "../../shared-types/index.ts";
import { buildExport, type ExportInput, exportFileName, fileStem, needsHashes } from "../exports/build-export.ts";
import type { RecordingRow } from "../library/recordings.ts";
import { recordingHashes } from "./file-hashes.ts";
import { indexTemplates, templateNamed } from "./index-templates.ts";
import type { Parts } from "./parts.ts";
import { cancelled, printPage } from "./print-pages.ts";
import { findRecording, recordingDetail, videoPath } from "./recording-detail.ts";
import { Refusal } from "./refusals.ts";
import { takeStills } from "./stills/take-stills.ts";

/** The folder beside the library that takes exports, one folder for each recording. */
export const exportsFolder = "exports";

/** Named so that a person knows it; the start of the id keeps two recordings of one name apart. */
export function exportFolderOf(parts: Pick<Parts, "library">, recordingId: string): string {
  const row = findRecording(parts, recordingId);
  return join(parts.library.folder, exportsFolder, `${fileStem(row)}-${recordingId.slice(0, 8)}`);
}

/** @throws Refusal for a PDF, which has no text to look at. */
export async function previewExport(
  parts: Parts,
  { recordingId, format, granularity, template }: Input<"export.preview">,
): Promise<Output<"export.preview">> {
  if (isPdfFormat(format))
    throw new Refusal("no-preview", "A PDF is no text to look at here. Look at the page it is printed from, or write it and open it.");
  const input = await inputOf(parts, { recordingId, formats: [format], granularity });
  const built = buildExport(format, withTemplate(input, templateFor(parts, [format], template)));
  return { ...built, warnings: [...built.warnings] };
}

/** What is written of a recording, as it stands now. */
async function inputOf(
  parts: Pick<Parts, "library" | "now">,
  { recordingId, formats, granularity }: Pick<Input<"export.write">, "recordingId" | "formats" | "granularity">,
): Promise<ExportInput> {
  return {
    detail: recordingDetail(parts, recordingId),
    writtenAt: parts.now(),
    granularity,
    hashes: formats.some(needsHashes) ? await recordingHashes(parts, recordingId) : null,
    stills: stillsOf(parts, recordingId),
  };
}

/** The template of an index text where one is asked for; null where none is. @throws Refusal for one that is not there. */
function templateFor(parts: Pick<Parts, "library">, formats: readonly ExportFormat[], name: string | undefined): IndexTemplate | null {
  return formats.includes("index-text") ? templateNamed(parts, name ?? null) : null;
}

const withTemplate = (input: ExportInput, template: IndexTemplate | null): ExportInput => (template ? { ...input, template } : input);

/** The pictures that are kept of a recording, as a page carries them. */
function stillsOf({ library }: Pick<Parts, "library">, recordingId: string): NonNullable<ExportInput["stills"]> {
  return library.stills.of(recordingId).map(({ atMilliseconds, width, height, mediaType, bytes }) => ({
    atSeconds: atMilliseconds / 1000,
    width,
    height,
    dataUri: `data:${mediaType};base64,${Buffer.from(bytes).toString("base64")}`,
  }));
}

/** Writing that is under way, by recording; one library's recordings have ids of their own everywhere. */
const underWay = new Map<string, AbortController>();

/** Writes into the recording's folder beside the library. */
export async function writeExports(parts: Parts, input: Input<"export.write">): Promise<Output<"export.write">> {
  const { recordingId, template: named, ...asked } = input;
  const template = templateFor(parts, input.formats, named);
  if (underWay.has(recordingId))
    throw new Refusal("export-under-way", "This recording's files are being written already. Wait for them, or cancel that first.");
  const control = new AbortController();
  underWay.set(recordingId, control);
  try {
    const folder = exportFolderOf(parts, recordingId);
    return await writeExportsInto(parts, folder, { recordingId, ...asked }, { signal: control.signal, template });
  } finally {
    underWay.delete(recordingId);
  }
}

export function cancelExports(parts: Parts, { recordingId }: Input<"export.cancel">): Output<"export.cancel"> {
  findRecording(parts, recordingId);
  const control = underWay.get(recordingId);
  control?.abort(cancelled());
  return { ended: control !== undefined };
}

/** `rename` of node:fs; handed in so that a disk that gives up half way can be tried. */
type Move = (from: string, to: string) => Promise<void>;

interface WritingOptions {
  readonly move?: Move;
  /** Ends it before anything has taken its place. */
  readonly signal?: AbortSignal;
  /** Of an index text, without a fault; the library's first where it is null or left out. */
  readonly template?: IndexTemplate | null;
}

/**
 * Writes all files or none: each is written whole under another name first, and only then do they take their places.
 * @throws Refusal that names every file that stands in the way, unless overwriting was asked for.
 */
export async function writeExportsInto(
  parts: Pick<Parts, "library" | "now" | "events" | "pdf">,
  folder: string,
  { recordingId, formats, granularity, overwrite, paper = "letter" }: Omit<Input<"export.write">, "template">,
  { move = rename, signal = new AbortController().signal, template: given = null }: WritingOptions = {},
): Promise<Output<"export.write">> {
  const asked = [...new Set(formats)];
  const { summary } = recordingDetail(parts, recordingId);
  const template = given ?? templateFor(parts, asked, undefined);
  const nameOf = (format: ExportFormat) => exportFileName(format, summary, template ?? undefined);
  const inTheWay = asked.map((format) => join(folder, nameOf(format))).filter((path) => existsSync(path));
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
  const withoutPictures = asked.some(showsStills) ? await takeStills(parts, recordingId, { signal }) : null;
  const read = await inputOf(parts, { recordingId, formats, granularity });
  const input = withTemplate({ ...read, videoHref: videoHrefFrom(parts, folder, recordingId) }, template);
  const files: (WholeFile & { readonly format: ExportFormat; readonly warnings: string[] })[] = [];
  for (const [done, format] of asked.entries()) {
    if (signal.aborted) throw cancelled();
    parts.events.publish("export.progress", { recordingId, format, done, of: asked.length });
    const { fileName, content, warnings } = await built(parts, format, input, paper, signal);
    const all = withoutPictures !== null && showsStills(format) ? [...warnings, withoutPictures] : [...warnings];
    files.push({ format, path: join(folder, fileName), content: Buffer.from(content), warnings: all });
  }
  if (signal.aborted) throw cancelled();
  await placeWhole(folder, files, move);
  return {
    folder,
    files: files.map(({ format, path, content, warnings }) => ({
      format,
      path,
      bytes: content.length,
      downloadUrl: `${addresses.exports}${recordingId}/${format}/${granularity}${addressEnd(format, paper, template)}`,
      warnings,
    })),
  };
}

/** What a download's address says beside the format and the granularity. */
function addressEnd(format: ExportFormat, paper: Paper, template: IndexTemplate | null): string {
  if (isPdfFormat(format)) return `/${paper}`;
  return format === "index-text" && template ? `/${paper}/${encodeURIComponent(template.name)}` : "";
}

/** Formats that carry pictures of the video. */
const showsStills = (format: ExportFormat): boolean => format === "index-html" || format === "index-pdf";

/** A file of an export: text as it is, a PDF printed from its page. */
async function built(parts: Pick<Parts, "pdf">, format: ExportFormat, input: ExportInput, paper: Paper, signal: AbortSignal) {
  if (!isPdfFormat(format)) {
    const { fileName, mediaType, text, warnings } = buildExport(format, input);
    return { fileName, mediaType, content: text, warnings };
  }
  const page = buildExport(pdfPages[format], { ...input, printed: true }).text;
  return {
    fileName: exportFileName(format, input.detail.summary),
    mediaType: "application/pdf",
    content: await printPage(parts, page, { paper, writtenAt: input.writtenAt, signal }),
    warnings: [],
  };
}

/** What the copy with the chapters inside is called; null where there is no video to copy. */
export function copyNameOf(recording: Pick<RecordingRow, "title" | "stockNumber" | "video">): string | null {
  return recording.video && `${fileStem(recording)}.with-chapters${extname(recording.video.name || recording.video.path).toLowerCase()}`;
}

/**
 * Where the video lies as seen from the written files: the copy with its chapters where it lies beside them and is no older than the
 * video, so that the folder can be handed on whole. On another drive it is a file address.
 */
function videoHrefFrom({ library }: Pick<Parts, "library">, folder: string, recordingId: string): string | null {
  const row = findRecording({ library }, recordingId);
  if (!row.video) return null;
  const path = videoPath(library, row.video);
  const copy = copyNameOf(row);
  const made = copy === null ? undefined : statSync(join(folder, copy), { throwIfNoEntry: false });
  const original = statSync(path, { throwIfNoEntry: false });
  if (copy !== null && made?.isFile() && made.mtimeMs >= (original?.mtimeMs ?? 0)) return encodeURIComponent(copy);
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
  const isNew = !existsSync(folder);
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
    // What cannot be removed here was never made; the failure that is told is the first one.
    await Promise.allSettled(staged.map(({ stage }) => rm(stage, { force: true })));
    // A folder that was made for nothing; one with files in it stays.
    if (isNew) await rmdir(folder).catch(() => undefined);
    const reason = failure instanceof Error ? failure.message : String(failure);
    throw new Refusal(
      "export-failed",
      `The export could not be written (${reason}). Nothing was changed; check the folder and the space on its disk.`,
    );
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

interface Download {
  readonly recordingId: string;
  readonly format: ExportFormat;
  readonly granularity: ChapterGranularity;
  readonly paper: Paper;
  readonly template?: string | undefined;
}

/** An export as a download: made anew, so that it shows the library's present state. Undefined for an unknown recording or template. */
export async function downloadExport(parts: Parts, { recordingId, format, granularity, paper, template: named }: Download) {
  if (!parts.library.recordings.get(recordingId)) return undefined;
  // Renamed or removed since the address was given.
  if (named !== undefined && !indexTemplates(parts).some(({ name }) => name === named)) return undefined;
  const template = templateFor(parts, [format], named);
  // The desktop's own menu asks for a page that nobody has written before. What is missing on it is told where it is written.
  if (showsStills(format)) await takeStills(parts, recordingId, { signal: new AbortController().signal });
  const input = await inputOf(parts, { recordingId, formats: [format], granularity });
  return built(parts, format, withTemplate(input, template), paper, new AbortController().signal);
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
