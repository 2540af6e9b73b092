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
  const ending = name.slice(name.lastIndexOf(".") + 1).toLowerCase();
  for (const part of ["video", "stockSheet", "transcript"] as const) {
    if ((endings[part] as readonly string[]).includes(ending)) return part;
  }
  return "transcript";
}

/** A title to start from: the file's name without ending, underscores and dashes as spaces. */
export function titleOfFileName(name: string): string {
  return name
    .replace(/\.[^.]+$/, "")
    .replaceAll(/[_-]+/g, " ")
    .trim();
}
