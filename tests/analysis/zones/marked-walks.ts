import { readdirSync, readFileSync } from "node:fs";
import type { Caption, Transcript, ZoneName, ZoneProposal } from "../../../shared-types/index.ts";

/** A walk written with `{zone}` marks, cut into captions as one kind of recogniser does. */
export interface MarkedWalk {
  readonly transcript: Transcript;
  /** Where each zone begins, in seconds. */
  readonly zones: readonly { readonly zone: ZoneName; readonly start: number }[];
}

export const recogniserStyles = ["paragraphs", "unpunctuated", "three-seconds", "three-seconds-unpunctuated", "rolling", "words"] as const;
export type RecogniserStyle = (typeof recogniserStyles)[number];

/** Words a second of an unhurried narrator (common practice: 2.4 to 3). */
const wordsPerSecond = 2.8;
const wordsPerCaption = {
  paragraphs: 42,
  unpunctuated: 42,
  "three-seconds": 8,
  "three-seconds-unpunctuated": 8,
  rolling: 9,
  words: 1,
} as const;

export function markedWalk(marked: string, style: RecogniserStyle): MarkedWalk {
  const bare = style.includes("unpunctuated") || style === "rolling";
  const words: string[] = [];
  const zones: { zone: ZoneName; word: number }[] = [];
  for (const piece of marked.trim().split(/\s+/)) {
    const mark = /^\{([a-z-]+)\}$/.exec(piece);
    if (mark) zones.push({ zone: mark[1] as ZoneName, word: words.length });
    else words.push(bare ? piece.toLowerCase().replace(/[.,?!;:]+$/g, "") : piece);
  }
  const size = wordsPerCaption[style];
  const lines: string[][] = [];
  for (let first = 0; first < words.length; first += size) lines.push(words.slice(first, first + size));
  const captions = lines.map((line, index): Caption => {
    const shown = style === "rolling" ? [...(lines[index - 1] ?? []), ...line] : line;
    return { index, start: (index * size) / wordsPerSecond, end: (index * size + line.length) / wordsPerSecond, text: shown.join(" ") };
  });
  return {
    transcript: { format: "plain", captions, duration: words.length / wordsPerSecond },
    zones: zones.map(({ zone, word }) => ({ zone, start: secondsOf(captions, lines, word, size, style) })),
  };
}

/** A word's time as an annotator has it: spread over its caption's characters. */
function secondsOf(captions: readonly Caption[], lines: readonly string[][], word: number, size: number, style: RecogniserStyle): number {
  const index = Math.floor(word / size);
  const caption = captions[index];
  const line = lines[index] ?? [];
  if (!caption || word === 0) return 0;
  const rolled = style === "rolling" && index > 0 ? `${(lines[index - 1] ?? []).join(" ")} `.length : 0;
  const before = rolled + line.slice(0, word % size).join(" ").length + (word % size > 0 ? 1 : 0);
  return caption.start + ((caption.end - caption.start) * before) / Math.max(1, caption.text.length);
}

export interface ZoneScore {
  readonly rightSeconds: number;
  readonly seconds: number;
}

/** Seconds for which the proposal names the marked zone, sampled at the middle of each second. */
export function scoreZones(walk: Pick<MarkedWalk, "zones">, proposed: readonly ZoneProposal[], duration: number): ZoneScore {
  const seconds = Math.floor(duration);
  let rightSeconds = 0;
  for (let second = 0; second < seconds; second += 1) {
    const moment = second + 0.5;
    const wanted = walk.zones.filter((zone) => zone.start <= moment).at(-1)?.zone;
    const got = proposed.find((zone) => zone.start <= moment && moment < zone.end)?.zone;
    if (wanted === got) rightSeconds += 1;
  }
  return { rightSeconds, seconds };
}

const folder = new URL("../../../fixtures/walks/", import.meta.url);
const namesIn = (path: string): string[] =>
  readdirSync(new URL(path, folder))
    .filter((name) => name.endsWith(".txt"))
    .map((name) => `${path}${name.replace(".txt", "")}`)
    .toSorted();
export const walkNames = namesIn("./");
/** Walks of many vehicles by terse narrators, with a border every ten seconds or so and few words about the way. */
export const shortZoneWalkNames = namesIn("short-zones/");
export const walkText = (name: string): string => readFileSync(new URL(`${name}.txt`, folder), "utf8");
