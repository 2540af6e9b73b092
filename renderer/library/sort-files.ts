/** What a file is to an import. */
export type ImportPart = "transcript" | "video" | "stockSheet";

const endings = {
  video: ["mp4", "m4v", "mov", "webm", "mkv", "ogv"],
  stockSheet: ["csv", "tsv"],
  transcript: ["txt", "srt", "vtt", "json"],
} as const satisfies Record<ImportPart, readonly string[]>;

export const acceptOf = {
  video: "video/*,.mp4,.m4v,.mov,.webm,.mkv",
  stockSheet: ".csv,.tsv,text/csv",
  transcript: ".txt,.srt,.vtt,.json",
} as const satisfies Record<ImportPart, string>;

/** Which part a dropped file most likely is, by its name's ending. An unknown ending is taken for a transcript, whose reader says what is wrong with it. */
export function partOfFileName(name: string): ImportPart {
  return partOfKnownEnding(name) ?? "transcript";
}

/** Null for an ending that none of the parts has: of a whole folder nobody meant every file. */
export function partOfKnownEnding(name: string): ImportPart | null {
  const ending = name.slice(name.lastIndexOf(".") + 1).toLowerCase();
  for (const part of ["video", "stockSheet", "transcript"] as const) {
    if ((endings[part] as readonly string[]).includes(ending)) return part;
  }
  return null;
}

/** Whether files are the parts of one recording at most, so that there is nothing to pair. */
export function isOneRecording(names: readonly string[]): boolean {
  const parts = names.map(partOfFileName);
  return new Set(parts).size === parts.length;
}

/**
 * A stock number that a file's name seems to hold: letters and digits in one word ("CK2107", "FK-1971"), or a number that is no year.
 * Only a proposal, which the person sees and may change.
 */
export function stockNumberOfFileName(name: string): string {
  const stem = name.replace(/\.[^.]+$/, "");
  const lettered = /(?<![\p{L}\p{N}])\p{L}{1,4}-?\d{2,}[\p{L}\d]*(?![\p{L}\p{N}])/u.exec(stem)?.[0];
  const plain = [...stem.matchAll(/(?<![\p{L}\p{N}])\d{3,10}(?![\p{L}\p{N}])/gu)]
    .map(([number]) => number)
    .find((number) => !isYear(number));
  return lettered ?? plain ?? "";
}

function isYear(number: string): boolean {
  return number.length === 4 && Number(number) >= 1880 && Number(number) <= 2100;
}

/** A title to start from: the file's name without ending, underscores and dashes as spaces. */
export function titleOfFileName(name: string): string {
  return name
    .replace(/\.[^.]+$/, "")
    .replaceAll(/[_-]+/g, " ")
    .trim();
}
