import { timeLabel } from "../../../shared-types/index.ts";
import { shortestChapterSeconds } from "./chapter-marks.ts";
import { type ChapterEntry, type FlatChapter, flatChapters } from "./entries.ts";

/** What players ask of a list before they take it (support.vevo.com "YouTube Chapters"; 9to5google.com, 2020-05-28). */
export const fewestChapters = 3;

export interface PlainList {
  readonly text: string;
  /** What a player may refuse, and what was left out so that it does not. */
  readonly warnings: readonly string[];
}

/**
 * One `m:ss title` a line, ready for a video's description: the first stamp is 0:00, stamps ascend, and each chapter lasts ten seconds or
 * more; what would make a shorter one is left out, zones last of all.
 */
export function chaptersList(entries: readonly ChapterEntry[]): PlainList {
  const flat = flatChapters(entries);
  const zoneStarts = new Set(entries.map(({ start }) => start));
  const kept: FlatChapter[] = [];
  let leftOut = 0;
  for (const chapter of flat) {
    const next = entries.find((entry) => entry.start > chapter.start)?.start ?? entries.at(-1)!.end;
    const last = kept.at(-1);
    const isZone = zoneStarts.has(chapter.start);
    const crowded = last !== undefined && Math.floor(chapter.start) - Math.floor(last.start) < shortestChapterSeconds;
    const tooLate = next - chapter.start < shortestChapterSeconds;
    if (!isZone && (crowded || tooLate)) leftOut += 1;
    else kept.push(chapter);
  }
  const warnings: string[] = [];
  if (leftOut > 0)
    warnings.push(
      `${leftOut === 1 ? "One entry is" : `${leftOut} entries are`} left out of the list: players refuse chapters of under ${shortestChapterSeconds} seconds.`,
    );
  if (kept.length < fewestChapters)
    warnings.push(
      `Players show chapters from ${fewestChapters} entries on; this list has ${kept.length}. Mark more zones, or let the list be.`,
    );
  const proposed = entries.filter((entry) => entry.proposed === true).length;
  if (proposed > 0)
    warnings.push(
      `${proposed === 1 ? "One chapter is" : `${proposed} chapters are`} only proposed; a list for a video's description has no place to say so.`,
    );
  const text = kept.map((chapter, position) => `${timeLabel(position === 0 ? 0 : chapter.start)} ${oneLine(chapter.title)}\n`).join("");
  return { text, warnings };
}

function oneLine(title: string): string {
  return title.replaceAll(/\s+/g, " ").trim();
}
