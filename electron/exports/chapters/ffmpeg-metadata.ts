import { type ChapterEntry, flatChapters, milliseconds, proposedWords } from "./entries.ts";

/**
 * Chapters as an FFmpeg metadata file (ffmpeg doc/metadata.texi). TIMEBASE is always written: without it, older readers take milliseconds
 * and newer ones nanoseconds.
 */
export function chaptersFfmpeg(entries: readonly ChapterEntry[], title: string): string {
  const chapters = flatChapters(entries)
    .filter((chapter) => milliseconds(chapter.end) > milliseconds(chapter.start))
    .map(
      (chapter) =>
        `\n[CHAPTER]\nTIMEBASE=1/1000\nSTART=${milliseconds(chapter.start)}\nEND=${milliseconds(chapter.end)}\ntitle=${metadataValue(chapter.title)}\n`,
    );
  const proposed = proposedWords(entries).replaceAll("\0", "");
  return `;FFMETADATA1\n${proposed === "" ? "" : `; ${proposed}\n`}title=${metadataValue(title)}\n${chapters.join("")}`;
}

/** `=`, `;`, `#`, `\` and line feeds stand behind a backslash. */
export function metadataValue(text: string): string {
  return text
    .replaceAll("\0", "")
    .replaceAll(/\r\n?/g, "\n")
    .replaceAll(/[=;#\\\n]/g, "\\$&");
}
