import { escapeUTF8 } from "entities";
import { type ChapterEntry, type InnerEntry, milliseconds, proposedWords } from "./entries.ts";
import { stamp } from "./webvtt.ts";

/** Characters that XML 1.0 does not allow, not even as references. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: those are what is taken out
const notInXml = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g;

/**
 * Chapters as Matroska chapter XML (RFC 9559, 5.1.7: Chapters > EditionEntry > ChapterAtom > ChapterDisplay), in the element names that
 * Matroska's tools read. Times are of nanoseconds; an end is written only where it lies after the start. UIDs count from 1: never zero,
 * never twice.
 */
export function chaptersMatroska(entries: readonly ChapterEntry[]): string {
  let uid = 0;
  const atom = (entry: InnerEntry, inside: readonly InnerEntry[], indent: string): string => {
    uid += 1;
    const lines = [
      `<ChapterAtom>`,
      `  <ChapterUID>${uid}</ChapterUID>`,
      `  <ChapterTimeStart>${nanosecondStamp(entry.start)}</ChapterTimeStart>`,
      ...(milliseconds(entry.end) > milliseconds(entry.start) ? [`  <ChapterTimeEnd>${nanosecondStamp(entry.end)}</ChapterTimeEnd>`] : []),
      `  <ChapterFlagHidden>0</ChapterFlagHidden>`,
      `  <ChapterFlagEnabled>1</ChapterFlagEnabled>`,
      `  <ChapterDisplay>`,
      `    <ChapterString>${xmlText(entry.title)}</ChapterString>`,
      `    <ChapterLanguage>und</ChapterLanguage>`,
      `  </ChapterDisplay>`,
    ].map((line) => `${indent}${line}\n`);
    return `${lines.join("")}${inside.map((inner) => atom(inner, [], `${indent}  `)).join("")}${indent}</ChapterAtom>\n`;
  };
  return [
    `<?xml version="1.0" encoding="UTF-8"?>\n`,
    `<!DOCTYPE Chapters SYSTEM "matroskachapters.dtd">\n`,
    // Two hyphens would end the comment.
    ...[proposedWords(entries)].filter(Boolean).map((words) => `<!-- ${xmlText(words).replaceAll(/-(?=-)/g, "- ")} -->\n`),
    `<Chapters>\n  <EditionEntry>\n    <EditionUID>1</EditionUID>\n    <EditionFlagHidden>0</EditionFlagHidden>\n    <EditionFlagDefault>1</EditionFlagDefault>\n`,
    ...entries.map((entry) => atom(entry, entry.inside, "    ")),
    `  </EditionEntry>\n</Chapters>\n`,
  ].join("");
}

function nanosecondStamp(seconds: number): string {
  return `${stamp(seconds)}000000`;
}

function xmlText(title: string): string {
  return escapeUTF8(title.replaceAll(notInXml, "").replaceAll(/\s+/g, " ").trim());
}
