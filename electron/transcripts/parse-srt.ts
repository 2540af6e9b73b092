import { readLiberalTime } from "./clock-times.ts";
import { linesOf } from "./lines.ts";
import { type Parsed, parsedAs, refused, type TimedText } from "./timed-text.ts";
import { found } from "./transcript-error.ts";

const arrow = /^\s*(?:\S.*)?-{1,2}>/;
const timing = /^\s*([\d:.,]+)\s*-{1,2}>\s*([\d:.,]+)(?:\s.*)?$/;

export const isSrt = (text: string): boolean => linesOf(text).some((line) => timing.test(line));

/**
 * SRT as it is met: counters missing or wrong, a full stop for the comma, one-digit parts, coordinates after the end, several blank
 * lines. A caption's words run to the next timing line, so that a blank line inside them loses nothing.
 */
export function readSrtCaptions(text: string): Parsed {
  const lines = linesOf(text);
  const timed: TimedText[] = [];
  let words: string[] = [];
  let open: { start: number; end: number; line: number; counter: number | null } | null = null;
  const close = () => {
    if (open) timed.push({ start: open.start, end: open.end, line: open.line, text: words.join("\n") });
    words = [];
  };
  for (const [position, line] of lines.entries()) {
    if (!arrow.test(line)) {
      words.push(line);
      continue;
    }
    const match = timing.exec(line);
    const start = match ? readLiberalTime(match[1] ?? "") : null;
    const end = match ? readLiberalTime(match[2] ?? "") : null;
    if (start === null || end === null) {
      // An arrow in the middle of words ("P --> D") is words, unless digits say it was meant as a time.
      if (!/^\s*\d[\d:.,]*\s*-{1,2}>/.test(line)) {
        words.push(line);
        continue;
      }
      return refused(
        "broken-time",
        position + 1,
        `${found(line)} is not a caption's time. Write it as 00:01:02,500 --> 00:01:04,000 or remove the caption.`,
      );
    }
    const counter: number | null = takeCounter(words, open?.counter ?? null);
    close();
    open = { start, end, line: position + 1, counter };
  }
  close();
  return parsedAs(timed);
}

/** Removes the counter line above a timing line. Digits that are words (a badge, "411") directly below words stay, unless they count on. */
function takeCounter(words: string[], before: number | null): number | null {
  const last = words.at(-1)?.trim() ?? "";
  if (!/^\d{1,9}$/.test(last)) return before === null ? null : before + 1;
  const alone = words.length === 1 || words.at(-2)?.trim() === "";
  const countsOn = before !== null && Number(last) === before + 1;
  if (!alone && !countsOn) return before === null ? null : before + 1;
  words.pop();
  return Number(last);
}
