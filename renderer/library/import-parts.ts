import type { Problem } from "../../shared-types/index.ts";
import { type ImportPart, partOfFileName } from "./sort-files.ts";

/** The files of one import, each in its place. */
export type Parts = Record<ImportPart, File | null>;

/** The places, in the order in which they are shown and handed over. */
export const slots = [
  { part: "transcript", label: "Transcript", hint: "Timed text, SRT, WebVTT or recognizer JSON. Needed." },
  { part: "video", label: "Video", hint: "mp4, mov, webm or mkv. May be left out." },
  { part: "stockSheet", label: "Stock sheet", hint: "CSV with the dealer's record of the vehicle. May be left out." },
] as const satisfies readonly { part: ImportPart; label: string; hint: string }[];

/** Files put where their names say they belong, the first of each kind. */
export function sortFiles(files: readonly File[]): Parts {
  const parts: Parts = { transcript: null, video: null, stockSheet: null };
  for (const file of files) parts[partOfFileName(file.name)] ??= file;
  return parts;
}

/** The slot whose file the problem names, so that it is shown beside it. */
export function partAtFault(problem: Problem, parts: Parts): ImportPart | null {
  for (const { part } of slots) {
    const name = parts[part]?.name;
    if (name !== undefined && problem.file !== undefined && (problem.file === name || problem.file.endsWith(`/${name}`))) return part;
  }
  return null;
}
