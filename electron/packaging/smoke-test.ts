import { type ChildProcess, spawn } from "node:child_process";
import { existsSync } from "node:fs";
import Database from "better-sqlite3";

export interface SmokeOptions {
  readonly program: string;
  readonly args: readonly string[];
  /** A new library, which the program is told to use by `args`. */
  readonly libraryFile: string;
  readonly longestMilliseconds?: number;
}

/**
 * Starts the application over a new library and waits until the demo is in it with its zones and claims: for that the program must have
 * started, loaded its own SQLite, found the demo, and run the analysis in its worker. Then it is ended, and the library must be whole.
 * Nothing is attached to the program: a release lets nobody in.
 * @returns one line that says what was found.
 * @throws Error with what the program said.
 */
export async function smokeTest({ program, args, libraryFile, longestMilliseconds = 120_000 }: SmokeOptions): Promise<string> {
  const child = spawn(program, args, { stdio: ["ignore", "pipe", "pipe"], detached: process.platform !== "win32" });
  let said = "";
  for (const stream of [child.stdout, child.stderr]) stream.on("data", (chunk: Buffer) => (said = `${said}${chunk}`.slice(-4000)));
  let failure: Error | undefined;
  child.on("error", (error) => {
    failure = error;
  });
  const gone = new Promise<void>((resolve) => child.once("close", () => resolve()));
  const until = Date.now() + longestMilliseconds;
  let found: Found | undefined;
  while (!found) {
    if (failure) throw failure;
    if (child.exitCode !== null) throw new Error(`${program} ended with ${child.exitCode} before the demo was in:\n${said}`);
    if (Date.now() > until) {
      end(child);
      throw new Error(`The demo was not in the library after ${longestMilliseconds / 1000} seconds:\n${said}`);
    }
    await new Promise((resolve) => setTimeout(resolve, 500));
    found = lookInto(libraryFile);
  }
  end(child);
  await Promise.race([
    gone,
    new Promise((_, reject) => setTimeout(reject, 20_000, new Error(`${program} did not end when told to`)).unref()),
  ]);
  const after = lookInto(libraryFile);
  if (!after?.whole) throw new Error("The library is not whole after the program ended.");
  return `${after.recordings} recording, ${after.claims} claims, ${after.conflicts} conflicts; the library is whole`;
}

interface Found {
  readonly recordings: number;
  readonly claims: number;
  readonly conflicts: number;
  readonly whole: boolean;
}

/** What is in the library by now; undefined until the demo is in and analysed. */
function lookInto(libraryFile: string): Found | undefined {
  if (!existsSync(libraryFile)) return undefined;
  let database: Database.Database | undefined;
  try {
    database = new Database(libraryFile, { readonly: true });
    const count = (table: string) => database?.prepare<[], number>(`SELECT count(*) FROM ${table}`).pluck().get() ?? 0;
    const found = { recordings: count("recordings"), claims: count("claims"), conflicts: count("conflicts") };
    if (found.recordings === 0 || found.claims === 0 || found.conflicts === 0) return undefined;
    return { ...found, whole: database.pragma("integrity_check", { simple: true }) === "ok" };
  } catch {
    // Not there yet, or being made.
    return undefined;
  } finally {
    database?.close();
  }
}

function end(child: ChildProcess): void {
  if (child.pid === undefined || child.exitCode !== null) return;
  // With its helpers; Windows ends them with their parent's job.
  if (process.platform === "win32") child.kill();
  else process.kill(-child.pid, "SIGTERM");
}
