import { timeLabel } from "../../shared-types/index.ts";
import type { ChapterMark } from "./chapter-marks.ts";
import { markedTitle } from "./chapter-marks.ts";

/** One `m:ss title` a line, ready for a video's description. The first stamp is always 0:00. */
export function chaptersList(chapters: readonly ChapterMark[]): string {
  return chapters.map((chapter, position) => `${timeLabel(position === 0 ? 0 : chapter.start)} ${markedTitle(chapter)}\n`).join("");
}
