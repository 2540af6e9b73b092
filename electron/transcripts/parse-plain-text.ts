import { readPlainTime } from "./clock-times.ts";
import { linesOf } from "./lines.ts";
import { type Parsed, parsedAs, refused, type TimedText } from "./timed-text.ts";
import { found } from "./transcript-error.ts";

/**
 * Plain timed text: a time at the start of a line, then the words on that line or on the lines below it. The file's first time shows its
 * style: where it stands in brackets, a bare "5:30" at the start of a later line is words ("5:30 pm is when we close").
 */

const clock = String.raw`\d{1,4}(?::\d{1,3}){1,2}(?:[.,]\d{1,9})?`;
const range = String.raw`(${clock})(?:\s*(?:-{1,2}>|-|–|—|→|to)\s*(${clock}))?`;
const bracketed = new RegExp(String.raw`^\s*[[(<{]\s*${range}\s*[\])>}]\s*(?:[-–—:|]\s+)?(.*)$`);
const bare = new RegExp(String.raw`^\s*${range}(?:\s*[-–—|]\s+|\s*:\s+|\s+|$)(.*)$`);

/**
 * What begins like a stamp and is none: the file's own bracket before figures that a colon or semicolon parts ("[1:99:0;25]", "[1;25]",
 * "[:25", "[1:"). "(3.73:1)" is a ratio. Without brackets only what no one writes for words: three such figures, or a semicolon
 * between two. A line like that is told rather than taken for speech.
 */
const stampLike = String.raw`[-–−]?\s*\d{0,4}\s*[:;][:;\s]*(?:\d|[\])>}]|$)`;
const bareStampLike = /^\s*(?:\d{1,4}\s?;\s?\d{2}(?!\d)|\d{1,4}\s?[:;]\s?\d{1,3}\s?[:;]\s?\d)/;

function brokenStampOf(lines: readonly string[], style: RegExp): RegExp {
  if (style === bare) return bareStampLike;
  const bracket = /\S/.exec(lines.find((line) => style.test(line)) ?? "[")?.[0] ?? "[";
  return new RegExp(String.raw`^\s*[${bracket}]\s*${stampLike}`);
}

export const isPlainTimedText = (text: string): boolean => styleOf(linesOf(text)) !== null;

function styleOf(lines: readonly string[]): RegExp | null {
  for (const line of lines) {
    if (bracketed.test(line)) return bracketed;
    if (bare.test(line)) return bare;
  }
  return null;
}

/** Text above the first time is a heading, not speech, and is left out. */
export function readPlainCaptions(text: string): Parsed {
  const lines = linesOf(text);
  const style = styleOf(lines);
  if (!style) return parsedAs([]);
  const brokenStamp = brokenStampOf(lines, style);
  const timed: TimedText[] = [];
  let open: { start: number; end: number | null; line: number; words: string[] } | null = null;
  for (const [position, line] of lines.entries()) {
    const match = style.exec(line);
    const start = match ? readPlainTime(match[1] ?? "") : null;
    const end = match?.[2] === undefined ? null : readPlainTime(match[2]);
    const readable = match !== null && start !== null && (match[2] === undefined || end !== null);
    // Above the first time stands a heading, whatever it begins with.
    if (!readable && ((match && style === bracketed) || (open && brokenStamp.test(line)))) {
      return refused("broken-time", position + 1, `${found(line)} starts with no time. Write it as [1:02] or [1:02:03], seconds below 60.`);
    }
    if (!readable) {
      open?.words.push(line);
      continue;
    }
    if (open) timed.push({ start: open.start, end: open.end, line: open.line, text: open.words.join("\n") });
    open = { start: start ?? 0, end, line: position + 1, words: [match?.[3] ?? ""] };
  }
  if (open) timed.push({ start: open.start, end: open.end, line: open.line, text: open.words.join("\n") });
  return parsedAs(timed);
}
