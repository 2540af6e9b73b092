import { type LapSpan, type RecordingDetail, type ZoneName, zoneLabels } from "../../../shared-types/index.ts";
import { openMark } from "../claim-standing.ts";

/** A chapter as every export writes it. Chapters cover the recording, in order. */
export interface ChapterMark {
  start: number;
  end: number;
  zone: ZoneName;
  title: string;
  /** True when a person drew or accepted every span in it. */
  accepted: boolean;
  /** Topics of open conflicts with a moment inside the chapter. */
  openConflicts: string[];
}

/**
 * The shortest chapter a viewer's player takes: published rules for chapter lists ask for ten seconds
 * (support.vevo.com, "YouTube Chapters": first stamp 0:00, at least three, ascending, each at least 10 s).
 */
export const shortestChapterSeconds = 10;

/**
 * Chapters out of the lap: neighbours with the same zone and title are one chapter, and a span under ten seconds is taken into
 * its neighbour (the earlier one; the first into the next), because players drop a whole list for one short entry.
 */
export function chapterMarks(detail: RecordingDetail): ChapterMark[] {
  const moments = openConflictMoments(detail);
  const merged: ChapterMark[] = [];
  for (const span of detail.lap) {
    const last = merged.at(-1);
    const title = spanTitle(span);
    if (last && last.zone === span.zone && last.title === title) {
      last.end = span.end;
      last.accepted &&= span.zoneSpanId !== null;
    } else merged.push({ start: span.start, end: span.end, zone: span.zone, title, accepted: span.zoneSpanId !== null, openConflicts: [] });
  }
  for (const chapter of absorbShort(merged)) {
    chapter.openConflicts = [...new Set(moments.filter((m) => m.at >= chapter.start && m.at < chapter.end).map((m) => m.topic))];
  }
  return merged;
}

/** Changes the list in place and returns it. */
function absorbShort(chapters: ChapterMark[]): ChapterMark[] {
  let position = 0;
  while (position < chapters.length && chapters.length > 1) {
    const chapter = chapters[position]!;
    if (chapter.end - chapter.start >= shortestChapterSeconds) {
      position += 1;
      continue;
    }
    const earlier = chapters[position - 1];
    if (earlier) earlier.end = chapter.end;
    else chapters[position + 1]!.start = chapter.start;
    chapters.splice(position, 1);
    // The neighbours may now be the same chapter twice.
    const before = chapters[position - 1];
    const after = chapters[position];
    if (before && after && before.zone === after.zone && before.title === after.title) {
      before.end = after.end;
      before.accepted &&= after.accepted;
      chapters.splice(position, 1);
    }
  }
  return chapters;
}

function spanTitle(span: LapSpan): string {
  return (span.title || zoneLabels[span.zone]).replaceAll(/\s+/g, " ").trim();
}

function openConflictMoments(detail: RecordingDetail): { at: number; topic: string }[] {
  const claims = new Map(detail.analysis.claims.map((claim) => [claim.id, claim]));
  const open = new Set(detail.openConflictKeys);
  return detail.analysis.conflicts
    .filter((conflict) => open.has(conflict.key))
    .flatMap((conflict) =>
      conflict.sides.flatMap((side) =>
        side.claims.flatMap((id) => (claims.has(id) ? [{ at: claims.get(id)!.start, topic: conflict.topic }] : [])),
      ),
    );
}

/** "Rear [open conflict: rear tire size]": the mark that every list of chapters carries. */
export function markedTitle(chapter: ChapterMark): string {
  return [chapter.title, openMark(chapter.openConflicts)].filter(Boolean).join(" ");
}
