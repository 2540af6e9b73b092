import { readLiberalTime, readWebVttTime } from "./clock-times.ts";
import { linesOf } from "./lines.ts";
import { type Parsed, parsedAs, refused } from "./timed-text.ts";
import { found } from "./transcript-error.ts";

/**
 * WebVTT's file parser (W3C, "WebVTT: The Web Video Text Tracks Format", section 6.1) as far as times, ids and texts go. Written here
 * because the libraries at hand part from it: media-captions 1.0.4 gives no cue for five of the web platform's own files, and
 * webvtt-parser is the strict author's checker. Settings place a cue on a picture and say nothing about words: they are skipped.
 */

export interface WebVttCue {
  readonly id: string;
  readonly start: number;
  readonly end: number;
  /** The payload as it stands, lines joined by LF. */
  readonly text: string;
  readonly line: number;
}

/** A line with an arrow in it that times no cue. */
export interface SkippedTiming {
  readonly line: number;
  readonly found: string;
  /** True where words stand below it, which are skipped with it. */
  readonly losesWords: boolean;
}

export const isWebVtt = (text: string): boolean => /^\uFEFF?WEBVTT(?:[ \t\r\n]|$)/.test(text);

/** @param readTime the standard's times, or `readLiberalTime` for files that carry the name but not the form. */
export function parseWebVtt(
  text: string,
  readTime: (time: string) => number | null = readWebVttTime,
): { readonly cues: readonly WebVttCue[]; readonly skipped: readonly SkippedTiming[] } {
  const lines = linesOf(text.replaceAll("\0", "\uFFFD"));
  const cues: WebVttCue[] = [];
  const skipped: SkippedTiming[] = [];
  let at = 1;
  // The header block runs to the first empty line, or to a timing line that follows it at once.
  while (at < lines.length && lines[at] !== "" && !lines[at]?.includes("-->")) at += 1;
  while (at < lines.length) {
    while (at < lines.length && lines[at] === "") at += 1;
    if (at >= lines.length) break;
    let id = "";
    if (!lines[at]?.includes("-->")) {
      // Only a timing line directly below makes this line an id; otherwise the block is a note, a style or a region.
      if (!lines[at + 1]?.includes("-->")) {
        while (at < lines.length && lines[at] !== "" && !lines[at]?.includes("-->")) at += 1;
        continue;
      }
      id = lines[at] ?? "";
      at += 1;
    }
    const timing = lines[at] ?? "";
    const times = readTiming(timing, readTime);
    const line = at + 1;
    at += 1;
    const payload: string[] = [];
    while (at < lines.length && lines[at] !== "" && !lines[at]?.includes("-->")) {
      payload.push(lines[at] ?? "");
      at += 1;
    }
    if (times) cues.push({ id, ...times, text: payload.join("\n"), line });
    else skipped.push({ line, found: timing, losesWords: payload.some((words) => words.trim() !== "") });
  }
  return { cues, skipped };
}

/** Space, tab and form feed may stand around the arrow (the standard's ASCII white space); a vertical tab may not. */
function readTiming(line: string, readTime: (time: string) => number | null): { start: number; end: number } | null {
  const match = /^[ \t\f]*([^ \t\f]+?)[ \t\f]*-->[ \t\f]*([\d:.,]+)/.exec(line);
  if (!match) return null;
  const start = readTime(match[1] ?? "");
  const end = readTime(match[2] ?? "");
  return start === null || end === null ? null : { start, end };
}

/** The cues as captions. A timing that neither WebVTT nor a liberal reading understands is refused, because its words would be lost. */
export function readWebVttCaptions(text: string): Parsed {
  const standard = parseWebVtt(text);
  const { cues, skipped } = standard.skipped.length === 0 ? standard : parseWebVtt(text, readLiberalTime);
  const first = skipped.find((timing) => timing.losesWords);
  if (first) {
    return refused(
      "broken-time",
      first.line,
      `${found(first.found)} is not a caption's time. Write it as 00:01:02.500 --> 00:01:04.000 or remove the caption.`,
    );
  }
  return parsedAs(cues);
}
