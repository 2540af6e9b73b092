import { createHash, randomUUID } from "node:crypto";
import { createReadStream, existsSync, mkdirSync, readdirSync, realpathSync, renameSync, rmSync, statfsSync, statSync } from "node:fs";
import { cp, rm } from "node:fs/promises";
import { basename, dirname, join, relative, resolve, sep } from "node:path";
import Database from "better-sqlite3";
import { libraryFileName } from "./default-place.ts";
import { lockLibrary } from "./library-lock.ts";
import { openLibrary } from "./open-library.ts";
import { Refusal } from "./refusal.ts";

/** What a library has beside its file. Nothing else in the folder is the library's, and nothing else is touched. */
const libraryFolders = ["media", "exports", "bundles"] as const;

/** Bytes that must stay free at the new place. */
const spareBytes = 256 * 2 ** 20;

export interface MovedLibrary {
  /** The library's file at its new place. */
  readonly file: string;
  /** What could not be removed from the old place. */
  readonly left: readonly string[];
}

/**
 * Moves a closed library into a folder, whole or not at all: everything is copied beside its new place and compared there byte for byte;
 * one rename and `settle` make it the library; only then is the old place cleared. When anything fails before that, the old place is as
 * it was and nothing stays at the new one.
 * @param settle remembers the new place; what it throws takes the move back.
 * @throws Refusal that says why, with everything where it was.
 */
export async function moveLibrary(from: string, folder: string, settle: (file: string) => void): Promise<MovedLibrary> {
  const file = join(resolve(folder), libraryFileName);
  const oldFolder = dirname(from);
  refuseBadPlace(from, resolve(folder));
  const lock = lockLibrary(from);
  const stage = join(resolve(folder), `.roundwalk-moving-${randomUUID()}`);
  const parts = libraryFolders.filter((name) => existsSync(join(oldFolder, name)));
  const placed: string[] = [];
  try {
    takeInLog(from);
    refuseFullDisk([from, ...parts.map((name) => join(oldFolder, name))], folder);
    mkdirSync(stage, { mode: 0o700 });
    await cp(from, join(stage, libraryFileName), { errorOnExist: true, force: false });
    for (const name of parts) await cp(join(oldFolder, name), join(stage, name), { recursive: true, errorOnExist: true, force: false });
    await refuseOtherContent([
      [from, join(stage, libraryFileName)],
      ...parts.map((name) => [join(oldFolder, name), join(stage, name)] as const),
    ]);
    lookThrough(join(stage, libraryFileName));
    // The file comes last: with it, and only with it, there is a library.
    for (const name of [...parts, libraryFileName]) {
      renameSync(join(stage, name), join(folder, name));
      placed.push(join(folder, name));
    }
    settle(file);
  } catch (failure) {
    for (const each of placed.toReversed()) rmSync(each, { recursive: true, force: true });
    lock.release();
    if (failure instanceof Refusal) throw failure;
    const reason = failure instanceof Error ? failure.message : String(failure);
    throw new Refusal("library-not-moved", `The library could not be moved into ${folder} (${reason}).`, { file: folder });
  } finally {
    rmSync(stage, { recursive: true, force: true });
  }
  lock.release();
  return { file, left: await clear([from, ...parts.map((name) => join(oldFolder, name))]) };
}

/** Makes the library in a folder the one to use, a new one where there is none. @throws Refusal when what is there cannot be opened. */
export function adoptLibraryIn(folder: string, settle: (file: string) => void): string {
  const file = join(resolve(folder), libraryFileName);
  const lock = lockLibrary(file);
  try {
    openLibrary(file).close();
  } finally {
    lock.release();
  }
  settle(file);
  return file;
}

function refuseBadPlace(from: string, folder: string): void {
  if (!existsSync(folder) || !statSync(folder).isDirectory()) {
    throw new Refusal("folder-missing", `${folder} is no folder. Choose a folder that is there.`, { file: folder });
  }
  const [old, wanted] = [realpathSync(dirname(from)), realpathSync(folder)];
  if (old === wanted) throw new Refusal("library-there", `The library is in ${folder} already.`, { file: folder });
  // Within media/ or exports/ the library would be copied into itself.
  const below = relative(old, wanted).split(sep)[0];
  if ((libraryFolders as readonly (string | undefined)[]).includes(below)) {
    throw new Refusal("folder-within", `${folder} is inside the library. Choose a folder outside of it.`, { file: folder });
  }
  const taken = [libraryFileName, ...libraryFolders].find((name) => existsSync(join(folder, name)));
  if (taken !== undefined) {
    throw new Refusal("folder-taken", `There is already a “${taken}” in ${folder}. Choose an empty folder; nothing is ever overwritten.`, {
      file: folder,
    });
  }
}

function refuseFullDisk(sources: readonly string[], folder: string): void {
  const needed = sources.flatMap(filesOf).reduce((sum, file) => sum + statSync(file).size, 0);
  const disk = statfsSync(folder);
  if (needed + spareBytes > disk.bavail * disk.bsize) {
    throw new Refusal("disk-full", `There is no room for the library's ${Math.ceil(needed / 2 ** 20)} MiB on the disk of ${folder}.`, {
      file: folder,
    });
  }
}

/** Brings what is still in the write-ahead log into the file, so that the file alone is the library. */
function takeInLog(file: string): void {
  const database = new Database(file, { fileMustExist: true });
  try {
    database.pragma("wal_checkpoint(TRUNCATE)");
    database.pragma("journal_mode = DELETE");
  } finally {
    database.close();
  }
}

function lookThrough(file: string): void {
  const database = new Database(file, { fileMustExist: true, readonly: true });
  try {
    const said = database.pragma("integrity_check", { simple: true });
    if (said !== "ok") throw new Refusal("library-damaged", `The library's copy is damaged (${String(said)}).`, { file });
  } finally {
    database.close();
  }
}

async function refuseOtherContent(pairs: readonly (readonly [from: string, to: string])[]): Promise<void> {
  for (const [from, to] of pairs) {
    const [there, here] = [filesOf(from), filesOf(to)];
    const names = (files: readonly string[], base: string) => files.map((file) => relative(base, file));
    if (names(there, from).join("\0") !== names(here, to).join("\0")) throw new Error(`${basename(from)} did not arrive whole`);
    for (const [index, file] of there.entries()) {
      if ((await digestOf(file)) !== (await digestOf(here[index] as string))) throw new Error(`${basename(file)} did not arrive whole`);
    }
  }
}

async function digestOf(file: string): Promise<string> {
  const hash = createHash("sha256");
  for await (const chunk of createReadStream(file)) hash.update(chunk as Buffer);
  return hash.digest("hex");
}

/** A file itself, or all files below a folder, in a fixed order. */
function filesOf(place: string): string[] {
  if (!statSync(place).isDirectory()) return [place];
  return readdirSync(place, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
}

async function clear(places: readonly string[]): Promise<string[]> {
  const left: string[] = [];
  for (const place of places) {
    try {
      await rm(place, { recursive: true });
    } catch {
      left.push(place);
    }
  }
  return left;
}
