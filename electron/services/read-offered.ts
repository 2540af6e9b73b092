import { readFileSync } from "node:fs";
import type { KnownFile } from "./offered-files.ts";
import { Refusal } from "./refusals.ts";

/** Most bytes of a transcript or a stock sheet: a spoken day is about a megabyte. */
const longestText = 64 * 2 ** 20;

/** The bytes of an offered file that holds text. @throws Refusal that names the file. */
export function readOffered(file: KnownFile): Uint8Array {
  if (file.bytes > longestText) {
    throw new Refusal(
      "text-too-long",
      `${file.name} has ${file.bytes} bytes, which no transcript or stock sheet has. Was the video chosen in its place?`,
      { file: file.name },
    );
  }
  try {
    return readFileSync(file.path);
  } catch (failure) {
    const reason = failure instanceof Error ? failure.message : String(failure);
    throw new Refusal("file-unreadable", `${file.name} cannot be read (${reason}). Choose it again.`, { file: file.name });
  }
}
