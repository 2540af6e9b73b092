import { createHash } from "node:crypto";
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { buffer } from "node:stream/consumers";
import { openPromise } from "yauzl";
import { ZipFile } from "yazl";
import { temporaryFolder } from "../../support/builders/temporary-folder.ts";

export interface ForgedEntry {
  name: string;
  content: Buffer;
  compress?: boolean;
}

/** The entries of a bundle, in their order. */
export async function entriesOf(path: string): Promise<ForgedEntry[]> {
  const zip = await openPromise(path, { lazyEntries: true, autoClose: false });
  const entries: ForgedEntry[] = [];
  for await (const entry of zip.eachEntry())
    entries.push({ name: entry.fileName, content: await buffer(await zip.openReadStreamPromise(entry)) });
  zip.close();
  return entries;
}

export async function zipped(entries: readonly ForgedEntry[]): Promise<Buffer> {
  const zip = new ZipFile();
  for (const { name, content, compress = false } of entries) zip.addBuffer(content, name, { compress, mtime: new Date(1980, 0, 1) });
  zip.end();
  return buffer(zip.outputStream);
}

/** Writes a file as a bundle that somebody tampered with. */
export function forged(content: Buffer, name = "forged.roundwalk.zip"): string {
  const path = join(temporaryFolder(), name);
  writeFileSync(path, content);
  return path;
}

/** A change of an entry's content, as text, with the manifest's hash and length put right: only the content itself can then be at fault. */
export function resealed(entries: readonly ForgedEntry[], name: string, change: (content: string) => string): ForgedEntry[] {
  const changed = entries.map((entry) =>
    entry.name === name ? { ...entry, content: Buffer.from(change(entry.content.toString("utf8"))) } : entry,
  );
  return name === "manifest.json" ? changed : withSeals(changed);
}

export function withSeals(entries: readonly ForgedEntry[]): ForgedEntry[] {
  const manifest = JSON.parse(entries.find((entry) => entry.name === "manifest.json")?.content.toString("utf8") ?? "{}") as Record<
    string,
    unknown
  >;
  manifest.entries = entries
    .filter((entry) => entry.name !== "manifest.json")
    .map(({ name, content }) => ({ name, bytes: content.length, sha256: createHash("sha256").update(content).digest("hex") }));
  return entries.map((entry) => (entry.name === "manifest.json" ? { ...entry, content: Buffer.from(JSON.stringify(manifest)) } : entry));
}

/** Another name of the same length in every place of the file: ZIP's own writers refuse to write such names. */
export function renamedEverywhere(content: Buffer, from: string, to: string): Buffer {
  if (from.length !== to.length) throw new Error("The names must be as long as each other.");
  return Buffer.from(content.toString("latin1").replaceAll(from, to), "latin1");
}
