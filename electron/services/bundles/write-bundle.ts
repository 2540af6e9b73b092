import { createHash, randomUUID } from "node:crypto";
import { createReadStream, createWriteStream } from "node:fs";
import { mkdir, open, rename, rm, stat, statfs } from "node:fs/promises";
import { basename, dirname, extname } from "node:path";
import { PassThrough, Readable, Transform } from "node:stream";
import { pipeline } from "node:stream/promises";
import { ZipFile } from "yazl";
import { bundleEnding } from "../../../shared-types/index.ts";
import { fileStem } from "../../exports/build-export.ts";
import type { Library } from "../../library/open-library.ts";
import { videoPath } from "../recording-detail.ts";
import { Refusal } from "../refusals.ts";
import {
  type BundleContent,
  type BundleEntry,
  bundleContent,
  entryNames,
  entryOf,
  manifestOf,
  smallEntries,
  stillName,
} from "./bundle-content.ts";

/** Bytes that must stay free on the disk. */
const spareBytes = 256 * 2 ** 20;

/** Everything that could differ between two writings of the same recording is held still: time, permissions, no compression. */
const entryOptions = { mtime: new Date(1980, 0, 1), forceDosTimestamp: true, mode: 0o100600, compress: false } as const;

export interface WritingBundle {
  readonly signal?: AbortSignal;
  /** Bytes of the whole that are done, the reading for the hash included. */
  readonly onBytes?: (done: number, of: number) => void;
}

export interface WrittenBundle {
  readonly path: string;
  readonly bytes: number;
  /** SHA-256 of the manifest: two bundles with the same one hold the same. */
  readonly seal: string;
}

/** What a recording's bundle is called: known to a person, and another for each recording. */
export function bundleFileName(recording: { readonly id: string; readonly title: string; readonly stockNumber: string }): string {
  return `${fileStem(recording)}-${recording.id.slice(0, 8)}${bundleEnding}`;
}

/** The entry of the video and where it lies; null where the recording has none. */
export function videoEntryName(video: { readonly name: string; readonly mediaType: string }): string {
  const ending = extname(video.name).toLowerCase();
  const known = /^\.(mp4|m4v|mov|webm|mkv)$/.test(ending);
  return `video${known ? ending : video.mediaType === "video/webm" ? ".webm" : ".mp4"}`;
}

/**
 * Writes a recording as one file, beside its place first and then into it: there is a whole bundle or none. The same recording gives the
 * same bytes. The video and the stills go through piece by piece.
 * @throws Refusal when the video is gone, the disk is full or the writing was cancelled; whatever lay there before is untouched.
 */
export async function writeBundle(
  library: Library,
  recordingId: string,
  path: string,
  withVideo: boolean,
  { signal, onBytes = () => {} }: WritingBundle = {},
): Promise<WrittenBundle> {
  const content = await bundleContent(library, recordingId);
  const video = withVideo ? await videoOf(library, content) : null;
  const small = smallEntries(content);
  const smallBytes = small.reduce((sum, entry) => sum + entry.content.length, 0);
  await refuseFullDisk(dirname(path), smallBytes + (video?.bytes ?? 0), basename(path));
  // The video is read twice: for its hash, which stands before it in the file, and for the file itself.
  const total = smallBytes + 2 * (video?.bytes ?? 0);
  let done = 0;
  const count = (bytes: number) => {
    done += bytes;
    onBytes(Math.min(done, total), total);
  };
  const stage = `${path}.${randomUUID()}.part`;
  try {
    const videoEntry = video && { name: video.name, bytes: video.bytes, sha256: await hashOf(video.path, count, signal) };
    const entries: BundleEntry[] = [
      ...small.map((entry) => entryOf(entry.name, entry.content)),
      ...content.stills.map((still) => entryOf(stillName(still), stillBytes(library, recordingId, still.atMilliseconds))),
      ...(videoEntry ? [videoEntry] : []),
    ];
    const manifest = manifestOf(content, entries);
    const zip = new ZipFile();
    const out = new PassThrough();
    zip.on("error", (failure: Error) => out.destroy(failure));
    zip.outputStream.pipe(out);
    zip.addBuffer(manifest.bytes, entryNames.manifest, entryOptions);
    for (const entry of small) zip.addBuffer(entry.content, entry.name, entryOptions);
    for (const still of content.stills) {
      const bytes = () => Readable.from([stillBytes(library, recordingId, still.atMilliseconds)], { objectMode: false });
      const size = entries.find(({ name }) => name === stillName(still))?.bytes ?? 0;
      zip.addReadStreamLazy(stillName(still), { ...entryOptions, size }, (give) => give(null, bytes()));
    }
    if (video && videoEntry) {
      zip.addReadStreamLazy(video.name, { ...entryOptions, size: video.bytes }, (give) => {
        const source = createReadStream(video.path);
        const watch = watched(videoEntry.sha256, count, basename(video.path));
        for (const stream of [source, watch]) stream.on("error", (failure: Error) => out.destroy(failure));
        out.on("close", () => source.destroy());
        give(null, source.pipe(watch));
      });
    }
    zip.end();
    await mkdir(dirname(path), { recursive: true });
    await pipeline(out, createWriteStream(stage, { flags: "wx", mode: 0o600 }), signal ? { signal } : {});
    await toDisk(stage);
    const { size } = await stat(stage);
    await rename(stage, path);
    onBytes(total, total);
    return { path, bytes: size, seal: createHash("sha256").update(manifest.bytes).digest("hex") };
  } catch (failure) {
    await rm(stage, { force: true });
    throw explained(failure, signal, path);
  }
}

async function videoOf(library: Library, { recording }: BundleContent) {
  const video = library.recordings.get(recording.id)?.video;
  if (!video) return null;
  const path = videoPath(library, video);
  const found = await stat(path).catch(() => undefined);
  if (!found?.isFile()) {
    throw new Refusal(
      "video-gone",
      `The video of “${recording.title}” is gone from ${path}. Find the video again, or write the bundle without its video.`,
      { file: path },
    );
  }
  return { path, bytes: found.size, name: videoEntryName(video) };
}

function stillBytes(library: Library, recordingId: string, atMilliseconds: number): Uint8Array {
  const still = library.stills.get(recordingId, atMilliseconds);
  if (!still) throw new Refusal("bundle-changed", "A still was taken away while the bundle was written. Write the bundle again.");
  return still.bytes;
}

async function hashOf(path: string, count: (bytes: number) => void, signal: AbortSignal | undefined): Promise<string> {
  const sum = createHash("sha256");
  const counter = new Transform({
    transform(chunk: Buffer, _encoding, give) {
      count(chunk.length);
      give(null, chunk);
    },
  });
  await pipeline(createReadStream(path), counter, sum, signal ? { signal } : {});
  return sum.digest("hex");
}

/** Lets a file through and fails where it is no longer what was hashed. */
function watched(sha256: string, count: (bytes: number) => void, name: string): Transform {
  const sum = createHash("sha256");
  return new Transform({
    transform(chunk: Buffer, _encoding, give) {
      sum.update(chunk);
      count(chunk.length);
      give(null, chunk);
    },
    flush(give) {
      const same = sum.digest("hex") === sha256;
      give(same ? null : new Refusal("bundle-changed", `${name} was changed while it was read. Write the bundle again.`));
    },
  });
}

export async function refuseFullDisk(folder: string, bytes: number, name: string): Promise<void> {
  await mkdir(folder, { recursive: true }).catch((failure: unknown) => {
    const reason = failure instanceof Error ? failure.message : String(failure);
    throw new Refusal("folder-unusable", `${folder} cannot be used (${reason}). Name another folder.`, { file: folder });
  });
  const disk = await statfs(folder);
  const free = disk.bavail * disk.bsize - spareBytes;
  if (bytes > free) {
    throw new Refusal(
      "disk-full",
      `${name} needs ${bytes} bytes, and the disk of ${folder} has ${Math.max(0, free)} to spare. Free some space, or name another folder.`,
      { file: name },
    );
  }
}

async function toDisk(path: string): Promise<void> {
  const handle = await open(path, "r+");
  try {
    await handle.sync();
  } finally {
    await handle.close();
  }
}

function explained(failure: unknown, signal: AbortSignal | undefined, path: string): Error {
  if (signal?.aborted) return new Refusal("cancelled", "Cancelled. Nothing was written.");
  if (failure instanceof Refusal) return failure;
  const reason = failure instanceof Error ? failure.message : String(failure);
  return new Refusal("bundle-unwritten", `${path} could not be written (${reason}). Check the folder and the space on its disk.`, {
    file: path,
  });
}
