import { findNodeAtLocation, getNodeValue, type Node, type ParseError, parseTree, printParseErrorCode } from "jsonc-parser";
import { type Parsed, parsedAs, refused, type TimedText } from "./timed-text.ts";
import { found } from "./transcript-error.ts";

export const looksLikeJson = (text: string): boolean => /^\s*(?:\{|\[\s*(?:\{|\[|\]|"|$|-?\d+\s*,|null))/.test(text.replace(/^\uFEFF/, ""));

/** Depth from which nested JSON is refused: a transcript needs five, and the parser calls itself for each. */
const deepestNesting = 100;

/**
 * A recognizer's own output: an array of segments or an object that has one under `segments`. A segment has `start`, `end` (seconds, as
 * numbers or digits in quotes; `end` may be missing) and `text`, or `words` from which the text and the times are taken.
 */
export function readJsonCaptions(text: string): Parsed {
  const lineAt = lineCounter(text);
  const tooDeep = firstTooDeep(text);
  if (tooDeep !== null) {
    return refused(
      "broken-json",
      lineAt(tooDeep),
      `JSON nested more than ${deepestNesting} deep is no transcript. Export the segments alone.`,
    );
  }
  const errors: ParseError[] = [];
  const root = parseTree(text, errors, { disallowComments: true, allowTrailingComma: false });
  const [error] = errors;
  if (error || !root) {
    const offset = error?.offset ?? 0;
    const rest = text.slice(offset, offset + 30);
    // JSON is full of straight quotes, so others go round it.
    const place = rest.trim() === "" ? "the end of the file" : `“${found(rest).slice(1, -1)}”`;
    // The parser's names are run together: "ValueExpected".
    const what = error
      ? `${printParseErrorCode(error.error)
          .replaceAll(/(?<=\p{Ll})(?=\p{Lu})/gu, " ")
          .toLowerCase()} at ${place}`
      : "nothing was found";
    return refused("broken-json", lineAt(offset), `the JSON cannot be read: ${what}. Export the transcript again, or mend this line.`);
  }
  const segments = root.type === "array" ? root : findNodeAtLocation(root, ["segments"]);
  if (segments?.type !== "array") {
    return refused(
      "broken-segment",
      lineAt(segments?.offset ?? root.offset),
      `the JSON has no array of segments. Export it with segments that have "start", "end" and "text".`,
    );
  }
  const timed: TimedText[] = [];
  for (const node of segments.children ?? []) {
    const line = lineAt(node.offset);
    const segment = readSegment(node, line);
    if (typeof segment === "string") return refused("broken-segment", line, segment);
    timed.push(segment);
  }
  return parsedAs(timed);
}

function readSegment(node: Node, line: number): TimedText | string {
  if (node.type !== "object")
    return `a segment is ${found(JSON.stringify(getNodeValue(node)) ?? "")}, not an object with "start", "end" and "text".`;
  const words = findNodeAtLocation(node, ["words"])?.children ?? [];
  const start = secondsOf(node, "start") ?? (words[0] ? secondsOf(words[0], "start") : undefined);
  const lastWord = words.at(-1);
  const end = secondsOf(node, "end") ?? (lastWord ? secondsOf(lastWord, "end") : undefined) ?? null;
  const text =
    stringOf(node, "text") ??
    (words.length > 0 ? words.map((word) => stringOf(word, "word") ?? stringOf(word, "text") ?? "").join(" ") : undefined);
  if (start === undefined) return `a segment has no "start". Give its start in seconds.`;
  if (typeof start === "string") return `a segment's "start" is ${found(start)}, not a number. Give it in seconds.`;
  if (typeof end === "string") return `a segment's "end" is ${found(end)}, not a number. Give it in seconds.`;
  if (text === undefined) return `a segment has no "text". Add its words, or remove the segment.`;
  return { start, end, text, line };
}

/** Seconds; the value as text where it is there and no number; undefined where it is missing or null. */
function secondsOf(node: Node, key: string): number | string | undefined {
  if (node.type !== "object") return undefined;
  const value: unknown = valueAt(node, key);
  if (value === undefined || value === null) return undefined;
  if (typeof value === "number") return value;
  if (typeof value === "string" && /^\d+(?:\.\d+)?$/.test(value.trim())) return Number(value);
  return typeof value === "string" ? value : (JSON.stringify(value) ?? "");
}

function stringOf(node: Node, key: string): string | undefined {
  const value: unknown = node.type === "object" ? valueAt(node, key) : undefined;
  return typeof value === "string" ? value : undefined;
}

function valueAt(node: Node, key: string): unknown {
  const value = findNodeAtLocation(node, [key]);
  return value ? (getNodeValue(value) as unknown) : undefined;
}

/** 1-based line of an offset; offsets come in rising order nearly always, so the count goes on from the last one. */
function lineCounter(text: string): (offset: number) => number {
  let line = 1;
  let at = 0;
  return (offset) => {
    if (offset < at) {
      line = 1;
      at = 0;
    }
    for (; at < Math.min(offset, text.length); at += 1) {
      const code = text.charCodeAt(at);
      if (code === 10 || (code === 13 && text.charCodeAt(at + 1) !== 10)) line += 1;
    }
    return line;
  };
}

function firstTooDeep(text: string): number | null {
  let depth = 0;
  let inString = false;
  for (let at = 0; at < text.length; at += 1) {
    const character = text[at];
    if (inString) {
      if (character === "\\") at += 1;
      else if (character === '"') inString = false;
    } else if (character === '"') inString = true;
    else if (character === "[" || character === "{") {
      depth += 1;
      if (depth > deepestNesting) return at;
    } else if (character === "]" || character === "}") depth -= 1;
  }
  return null;
}
