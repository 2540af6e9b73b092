import { mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";

/** What a small JSON file holds; undefined where there is none, or where it cannot be read: what it keeps is a convenience. */
export function readSmallFile(file: string): unknown {
  try {
    return JSON.parse(readFileSync(file, "utf8"));
  } catch {
    return undefined;
  }
}

/** Writes it whole or not at all: a reader never meets half of it. */
export function writeSmallFile(file: string, value: unknown): void {
  mkdirSync(dirname(file), { recursive: true, mode: 0o700 });
  const beside = `${file}.${process.pid}.new`;
  try {
    writeFileSync(beside, JSON.stringify(value), { mode: 0o600 });
    renameSync(beside, file);
  } catch (failure) {
    rmSync(beside, { force: true });
    throw failure;
  }
}
