import type { ChapterMark } from "./chapter-marks.ts";
import { markedTitle } from "./chapter-marks.ts";

/**
 * Chapters as WebVTT chapter cues (W3C WebVTT: cues in order, end after start, titles as chapter title text, where `&` and `<` are
 * written as character references, and `>` too so that `-->` cannot appear).
 */
export function chaptersWebvtt(chapters: readonly ChapterMark[]): string {
  const cues = chapters
    .filter((chapter) => milliseconds(chapter.end) > milliseconds(chapter.start))
    .map(
      (chapter, position) =>
        `${position + 1}\n${stamp(chapter.start)} --> ${stamp(chapter.end)}\n${chapterTitleText(markedTitle(chapter))}\n`,
    );
  return `WEBVTT\n\n${cues.join("\n")}`;
}

export function chapterTitleText(title: string): string {
  return title.replaceAll(/\s+/g, " ").trim().replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");
}

function milliseconds(seconds: number): number {
  return Math.round(seconds * 1000);
}

/** `hh:mm:ss.ttt`; hours are written always, with two digits or more. */
export function stamp(seconds: number): string {
  const total = milliseconds(seconds);
  const hours = Math.floor(total / 3_600_000);
  const minutes = Math.floor(total / 60_000) % 60;
  const wholeSeconds = Math.floor(total / 1000) % 60;
  const two = (part: number) => String(part).padStart(2, "0");
  return `${two(hours)}:${two(minutes)}:${two(wholeSeconds)}.${String(total % 1000).padStart(3, "0")}`;
}
