import { type ChapterEntry, type InnerEntry, milliseconds, proposedWords } from "./entries.ts";

/**
 * Chapters as WebVTT chapter cues (W3C WebVTT: cues in order, end after start, titles as chapter title text, where `&` and `<` are
 * written as character references, and `>` too so that `-->` cannot appear). What lies inside a zone is a cue inside its cue.
 */
export function chaptersWebvtt(entries: readonly ChapterEntry[]): string {
  const cues = entries
    .flatMap((entry): InnerEntry[] => [entry, ...entry.inside.filter((inner) => !sameTimes(inner, entry))])
    .filter((cue) => milliseconds(cue.end) > milliseconds(cue.start))
    .map((cue, position) => `${position + 1}\n${stamp(cue.start)} --> ${stamp(cue.end)}\n${chapterTitleText(cue.title)}\n`);
  const proposed = proposedWords(entries).replaceAll("-->", "→");
  return `WEBVTT\n\n${proposed === "" ? "" : `NOTE\n${proposed}\n\n`}${cues.join("\n")}`;
}

/** Two cues with the same times would be each other's parent. */
function sameTimes(a: InnerEntry, b: InnerEntry): boolean {
  return milliseconds(a.start) === milliseconds(b.start) && milliseconds(a.end) === milliseconds(b.end);
}

export function chapterTitleText(title: string): string {
  return title.replaceAll(/\s+/g, " ").trim().replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");
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
