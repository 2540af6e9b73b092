import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { dirname, isAbsolute, join } from "node:path";
import envPaths from "env-paths";
import { Refusal } from "./refusal.ts";

/** The library's name in whatever folder it is. */
export const libraryFileName = "library.sqlite";

/** Where it is kept that somebody wants the library elsewhere; beside the system's other settings, since the library itself moves. */
export function placeFile(): string {
  return join(envPaths("roundwalk", { suffix: "" }).config, "library-place.json");
}

/** The library's file where somebody has chosen one; null for the usual place. */
export function chosenLibraryFile(): string | null {
  try {
    const { file } = JSON.parse(readFileSync(placeFile(), "utf8")) as { file?: unknown };
    return typeof file === "string" && isAbsolute(file) ? file : null;
  } catch {
    return null;
  }
}

/** From the next start on the library is there. Null goes back to the usual place. Whole or not at all. */
export function chooseLibraryFile(file: string | null): void {
  const place = placeFile();
  if (file === null) {
    rmSync(place, { force: true });
    return;
  }
  mkdirSync(dirname(place), { recursive: true, mode: 0o700 });
  const beside = `${place}.${process.pid}.new`;
  writeFileSync(beside, JSON.stringify({ file }), { mode: 0o600 });
  renameSync(beside, place);
}

/** Where the library is when nobody has chosen another place: the system's own folder for a program's data. */
export function usualLibraryFile(): string {
  return join(envPaths("roundwalk", { suffix: "" }).data, libraryFileName);
}

/**
 * The user's own library.
 * @throws Refusal `library-away` when it was put elsewhere and is not there now: on a disk that is not connected, say. A new and empty
 * library in its stead would look as if all work were lost.
 */
export function defaultLibraryFile(): string {
  const chosen = chosenLibraryFile();
  if (chosen === null) return usualLibraryFile();
  if (existsSync(chosen)) return chosen;
  throw new Refusal(
    "library-away",
    `The library was put at ${chosen}, and it is not there. Connect its disk, or remove ${placeFile()} to go back to the usual place.`,
    { file: chosen },
  );
}
