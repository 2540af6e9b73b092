import type { LapSpan } from "../../shared-types/index.ts";

/** The shortest chapter that the exports write: a player may drop a whole list for one shorter entry. */
export const shortestChapterSeconds = 10;

type Chapter = Pick<LapSpan, "start" | "end" | "zone" | "title">;

/** Chapters of the lap that no export lists by their own name, being too short: each is taken into the one before it, the first into the next. */
export function joinedChapters(lap: readonly LapSpan[]): Chapter[] {
  const chapters: Chapter[] = [];
  for (const { start, end, zone, title } of lap) add(chapters, { start, end, zone, title });
  const joined: Chapter[] = [];
  let kept: Chapter[] = [];
  for (const [position, chapter] of chapters.entries()) {
    const before = kept.at(-1);
    if (chapter.end - chapter.start >= shortestChapterSeconds || (position === chapters.length - 1 && !before)) add(kept, chapter);
    else {
      joined.push(chapter);
      if (before) kept = [...kept.slice(0, -1), { ...before, end: chapter.end }];
      else {
        const next = chapters[position + 1];
        if (next) chapters[position + 1] = { ...next, start: chapter.start };
      }
    }
  }
  return joined;
}

/** Neighbours of one zone and title are one chapter. */
function add(chapters: Chapter[], chapter: Chapter): void {
  const last = chapters.at(-1);
  if (last && last.zone === chapter.zone && last.title === chapter.title) chapters[chapters.length - 1] = { ...last, end: chapter.end };
  else chapters.push(chapter);
}
