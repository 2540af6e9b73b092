import { linkSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { hostname, uptime } from "node:os";
import { Refusal } from "./refusal.ts";

/** Who has a library open, in a file beside it. */
interface Holder {
  readonly pid: number;
  readonly machine: string;
  /** Milliseconds since 1970. */
  readonly since: number;
  /** Where the holder lets a browser in; null for a window of its own, and until it is known. */
  readonly address: string | null;
}

export interface LibraryLock {
  /** Tells others where the holder can be reached. */
  readonly announce: (address: string) => void;
  readonly release: () => void;
}

/** Libraries that this process itself has open: its own id says nothing about them. */
const held = new Set<string>();

export function lockFileOf(libraryFile: string): string {
  return `${libraryFile}.lock`;
}

/**
 * Keeps a second host from opening a library: SQLite would let both write, and neither would see what the other shows.
 * A lock whose process has ended, or that is older than the machine's start, is taken over.
 * @throws Refusal `library-open` that names the holder, with its address where it has one.
 */
export function lockLibrary(libraryFile: string): LibraryLock {
  const place = lockFileOf(libraryFile);
  const own: Holder = { pid: process.pid, machine: hostname(), since: Date.now(), address: null };
  // The address lets a browser in, so that nobody else on the machine may read it.
  const write = (holder: Holder, flag: "w" | "wx") => writeFileSync(place, JSON.stringify(holder), { flag, mode: 0o600 });
  for (let tries = 0; ; tries += 1) {
    try {
      write(own, "wx");
      break;
    } catch (failure) {
      if ((failure as NodeJS.ErrnoException).code !== "EEXIST") throw unwritable(place, failure);
      const text = textOf(place);
      const holder = holderIn(text);
      if (holder && (held.has(place) || holds(holder))) throw refusal(libraryFile, holder);
      if (tries > 3) throw unwritable(place, failure);
      takeAway(place, text);
    }
  }
  held.add(place);
  return {
    announce: (address) => write({ ...own, address }, "w"),
    release: () => {
      if (!held.delete(place)) return;
      const holder = holderIn(textOf(place));
      if (holder?.pid === own.pid && holder.since === own.since) rmSync(place, { force: true });
    },
  };
}

/** Whether a process with this id runs on this machine. */
export function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (failure) {
    return (failure as { code?: string }).code === "EPERM";
  }
}

function holds({ pid, machine, since }: Holder): boolean {
  // Another machine's processes cannot be looked at from here.
  if (machine !== hostname()) return true;
  const machineStart = Date.now() - uptime() * 1000;
  return pid !== process.pid && since > machineStart && isRunning(pid);
}

/** Removes a lock that nobody holds, unless another process was quicker and it is already its own. */
function takeAway(place: string, stale: string): void {
  const aside = `${place}.${process.pid}`;
  try {
    renameSync(place, aside);
  } catch {
    return;
  }
  try {
    if (textOf(aside) !== stale) linkSync(aside, place);
  } finally {
    rmSync(aside, { force: true });
  }
}

function textOf(place: string): string {
  try {
    return readFileSync(place, "utf8");
  } catch {
    return "";
  }
}

function holderIn(text: string): Holder | undefined {
  try {
    const { pid, machine, since, address } = JSON.parse(text) as Record<string, unknown>;
    if (typeof pid !== "number" || !(pid > 0) || typeof machine !== "string" || typeof since !== "number") return undefined;
    return { pid, machine, since, address: typeof address === "string" ? address : null };
  } catch {
    return undefined;
  }
}

function refusal(file: string, { pid, machine, address }: Holder): Refusal {
  const elsewhere = machine === hostname() ? "" : ` on ${machine}`;
  const where = address ? `\nIt is at ${address}\nOpen that address` : "\nGo to its window";
  // Another program may by now have the number of a Roundwalk that ended without a word.
  const forgotten = ` If that process is no Roundwalk, remove ${lockFileOf(file)}.`;
  return new Refusal(
    "library-open",
    `${file} is already open in another Roundwalk (process ${pid}${elsewhere}).${where}, end it first, or name another library with --library.${forgotten}`,
    { file },
  );
}

function unwritable(place: string, failure: unknown): Refusal {
  const reason = failure instanceof Error ? failure.message : String(failure);
  return new Refusal("library-unusable", `${place} cannot be written (${reason}). Check the folder's permissions.`, { file: place });
}
