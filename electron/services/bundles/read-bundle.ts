import { createHash } from "node:crypto";
import { statSync } from "node:fs";
import { Transform, type Writable } from "node:stream";
import { pipeline } from "node:stream/promises";
import { type Entry, openPromise, type ZipFile } from "yauzl";
import { BundleManifest, bundleVersion, mostBundleEntries } from "../../../shared-types/index.ts";
import { Refusal } from "../refusals.ts";
import { entryNames } from "./bundle-content.ts";

/** Most bytes of an entry that is taken into memory, of a still, and of a video. */
export const bundleBounds = {
  manifestBytes: 4 * 2 ** 20,
  textBytes: 128 * 2 ** 20,
  stillBytes: 2 * 2 ** 20,
  videoBytes: 32 * 2 ** 30,
  /** How many times larger than the file its content may be: texts shrink to a tenth, and a bundle is not even compressed. */
  growth: 100,
} as const;

const textNames: ReadonlySet<string> = new Set(Object.values(entryNames));
const stillPattern = /^stills\/\d{10}\.(png|jpeg|webp)$/;
const videoPattern = /^video\.(mp4|m4v|mov|webm|mkv)$/;

export interface OpenBundle {
  readonly fileName: string;
  /** Of the file. */
  readonly bytes: number;
  readonly manifest: BundleManifest;
  /** SHA-256 of the manifest. */
  readonly seal: string;
  /** The video's entry; null without one. */
  readonly video: string | null;
  /** An entry's bytes, held against the manifest. Not for the video. @throws Refusal */
  readonly read: (name: string) => Promise<Buffer>;
  /** Sends an entry's bytes on, piece by piece, and fails at the end where they are not what the manifest says. @throws Refusal */
  readonly send: (name: string, to: Writable, signal?: AbortSignal, onBytes?: (done: number, of: number) => void) => Promise<void>;
  readonly close: () => void;
}

/**
 * Opens a bundle and holds its list of entries against its manifest, before any of its content is believed. Whoever opens closes.
 * @throws Refusal that says what is wrong with the file; `bundle-newer` for one that a newer program wrote.
 */
export async function openBundle(path: string, fileName: string): Promise<OpenBundle> {
  const bytes = statSync(path, { throwIfNoEntry: false })?.size ?? 0;
  const zip = await openPromise(path, { autoClose: false, lazyEntries: true, validateEntrySizes: true, strictFileNames: true }).catch(
    (failure: unknown) => {
      throw broken(fileName, `it is cut short or no bundle (${reasonOf(failure)})`);
    },
  );
  try {
    const entries = await listed(zip, fileName, bytes);
    const first = entries.keys().next().value;
    if (first !== entryNames.manifest) throw broken(fileName, `it begins with ${first ?? "nothing"} instead of ${entryNames.manifest}`);
    const content = await contentOf(zip, entries.get(entryNames.manifest) as Entry, fileName);
    const manifest = readManifest(content, fileName);
    holdAgainst(manifest, entries, fileName);
    const expected = new Map(manifest.entries.map((entry) => [entry.name, entry]));
    const send: OpenBundle["send"] = async (name, to, signal, onBytes = () => {}) => {
      const wanted = expected.get(name);
      if (!wanted) throw broken(fileName, `${name} is missing from it`);
      await passOn(zip, entries.get(name) as Entry, wanted, fileName, { to, signal, onBytes });
    };
    return {
      fileName,
      bytes,
      manifest,
      seal: createHash("sha256").update(content).digest("hex"),
      video: [...expected.keys()].find((name) => videoPattern.test(name)) ?? null,
      send,
      read: async (name) => {
        const wanted = expected.get(name);
        if (!wanted) throw broken(fileName, `${name} is missing from it`);
        const found = await contentOf(zip, entries.get(name) as Entry, fileName);
        if (createHash("sha256").update(found).digest("hex") !== wanted.sha256) throw otherContent(fileName, name);
        return found;
      },
      close: () => zip.close(),
    };
  } catch (failure) {
    zip.close();
    throw failure instanceof Refusal ? failure : broken(fileName, reasonOf(failure));
  }
}

async function listed(zip: ZipFile, fileName: string, fileBytes: number): Promise<Map<string, Entry>> {
  const mostInAll = mostBundleEntries + 1;
  if (zip.entryCount > mostInAll) throw broken(fileName, `it has ${zip.entryCount} entries, and ${mostInAll} are the most`);
  const entries = new Map<string, Entry>();
  let unpacked = 0;
  for await (const entry of zip.eachEntry()) {
    const name = entry.fileName;
    if (entries.has(name)) throw broken(fileName, `${name} stands in it twice`);
    const most = boundOf(name);
    if (most === null) throw broken(fileName, `it holds “${name.slice(0, 120)}”, which no bundle has`);
    if (entry.isEncrypted()) throw broken(fileName, `${name} is encrypted`);
    if (entry.compressionMethod !== 0 && entry.compressionMethod !== 8)
      throw broken(fileName, `${name} is packed in an unknown way (${entry.compressionMethod})`);
    if (entry.uncompressedSize > most) throw broken(fileName, `${name} has ${entry.uncompressedSize} bytes, and ${most} are the most`);
    unpacked += entry.uncompressedSize;
    entries.set(name, entry);
  }
  if (unpacked > fileBytes * bundleBounds.growth)
    throw broken(fileName, `it would unpack to ${unpacked} bytes, ${Math.round(unpacked / Math.max(fileBytes, 1))} times its own size`);
  return entries;
}

/** Most bytes of an entry of this name; null for a name that no bundle has. */
function boundOf(name: string): number | null {
  if (name === entryNames.manifest) return bundleBounds.manifestBytes;
  if (textNames.has(name)) return bundleBounds.textBytes;
  if (stillPattern.test(name)) return bundleBounds.stillBytes;
  return videoPattern.test(name) ? bundleBounds.videoBytes : null;
}

function readManifest(content: Buffer, fileName: string): BundleManifest {
  let written: unknown;
  try {
    written = JSON.parse(content.toString("utf8"));
  } catch {
    throw broken(fileName, "its manifest is no JSON");
  }
  const { kind, version } = (written ?? {}) as { kind?: unknown; version?: unknown };
  if (kind !== "roundwalk-bundle") throw broken(fileName, "its manifest is no bundle's");
  if (typeof version === "number" && version > bundleVersion) {
    throw new Refusal(
      "bundle-newer",
      `${fileName} was written by a newer Roundwalk (bundle form ${version}; this program knows ${bundleVersion}). Update the program, then bring it in. Nothing was changed.`,
      { file: fileName },
    );
  }
  const parsed = BundleManifest.safeParse(written);
  if (!parsed.success) throw broken(fileName, `its manifest is not as it should be (${firstIssue(parsed.error)})`);
  return parsed.data;
}

function holdAgainst(manifest: BundleManifest, entries: ReadonlyMap<string, Entry>, fileName: string): void {
  const named = new Set<string>();
  for (const { name, bytes } of manifest.entries) {
    if (named.has(name)) throw broken(fileName, `its manifest names ${name} twice`);
    named.add(name);
    const entry = entries.get(name);
    if (!entry) throw broken(fileName, `${name} is missing from it`);
    if (entry.uncompressedSize !== bytes) throw broken(fileName, `${name} has ${entry.uncompressedSize} bytes instead of ${bytes}`);
  }
  const extra = [...entries.keys()].find((name) => name !== entryNames.manifest && !named.has(name));
  if (extra !== undefined) throw broken(fileName, `it holds ${extra}, which its manifest does not name`);
  for (const name of textNames) if (name !== entryNames.manifest && !named.has(name)) throw broken(fileName, `${name} is missing from it`);
  if ([...named].filter((name) => videoPattern.test(name)).length > 1) throw broken(fileName, "it holds more than one video");
}

async function contentOf(zip: ZipFile, entry: Entry, fileName: string): Promise<Buffer> {
  try {
    const chunks: Buffer[] = [];
    for await (const chunk of await zip.openReadStreamPromise(entry)) chunks.push(chunk as Buffer);
    return Buffer.concat(chunks);
  } catch (failure) {
    throw broken(fileName, `${entry.fileName} cannot be unpacked (${reasonOf(failure)})`);
  }
}

interface Passing {
  readonly to: Writable;
  readonly signal: AbortSignal | undefined;
  readonly onBytes: (done: number, of: number) => void;
}

async function passOn(
  zip: ZipFile,
  entry: Entry,
  wanted: { readonly bytes: number; readonly sha256: string },
  fileName: string,
  { to, signal, onBytes }: Passing,
): Promise<void> {
  const sum = createHash("sha256");
  let done = 0;
  const watch = new Transform({
    transform(chunk: Buffer, _encoding, give) {
      sum.update(chunk);
      done += chunk.length;
      onBytes(done, wanted.bytes);
      give(null, chunk);
    },
    flush: (give) => give(sum.digest("hex") === wanted.sha256 ? null : otherContent(fileName, entry.fileName)),
  });
  try {
    await pipeline(await zip.openReadStreamPromise(entry), watch, to, signal ? { signal } : {});
  } catch (failure) {
    if (failure instanceof Refusal || signal?.aborted || (failure as NodeJS.ErrnoException).code === "ENOSPC") throw failure;
    throw broken(fileName, `${entry.fileName} cannot be unpacked (${reasonOf(failure)})`);
  }
}

export function broken(fileName: string, complaint: string): Refusal {
  return new Refusal(
    "bundle-broken",
    `${fileName} cannot be brought in: ${complaint}. Nothing was changed. Have the bundle written again, or copy it again.`,
    { file: fileName },
  );
}

function otherContent(fileName: string, name: string): Refusal {
  return broken(fileName, `${name} is not what was written (its SHA-256 differs), so it was damaged or changed on the way`);
}

function reasonOf(failure: unknown): string {
  return failure instanceof Error ? failure.message : String(failure);
}

export function firstIssue(error: {
  readonly issues: readonly { readonly path: readonly PropertyKey[]; readonly message: string }[];
}): string {
  const issue = error.issues[0];
  return issue ? `${issue.path.map(String).join(".") || "whole"}: ${issue.message}` : "unknown";
}
