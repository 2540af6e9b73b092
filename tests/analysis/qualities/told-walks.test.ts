import { describe, expect, test } from "vitest";
import { frameSpeech } from "../../../electron/analysis/claims/framing/index.ts";
import { findMentions } from "../../../electron/analysis/claims/lexicon/find-mentions.ts";
import { findQualityClaims } from "../../../electron/analysis/claims/qualities/index.ts";
import { compareClaims } from "../../../electron/analysis/comparison/compare-claims.ts";
import { hearSpeech } from "../../../electron/analysis/transcript/hear-speech.ts";
import type { Caption } from "../../../shared-types/index.ts";
import { type ToldWalk, toldWalks } from "./told-walks.ts";

/** A steady speaker. */
const secondsPerWord = 0.35;

interface CaptionStyle {
  readonly name: string;
  readonly wordsPerCaption: number;
  readonly write: (words: string) => string;
}
const bare = (words: string) => words.toLowerCase().replace(/[.,?!;:]+(?=\s|$)/g, "");
const captionStyles: readonly CaptionStyle[] = [
  { name: "paragraphs", wordsPerCaption: 400, write: (words) => words },
  { name: "three-second pieces", wordsPerCaption: 8, write: (words) => words },
  { name: "no punctuation", wordsPerCaption: 40, write: bare },
  { name: "three-second pieces without punctuation", wordsPerCaption: 8, write: bare },
];

function conflictsOf(walk: ToldWalk, style: CaptionStyle): string[] {
  const captions: Caption[] = [];
  const starts: number[] = [];
  let at = 0;
  for (const [, says] of walk.told) {
    starts.push(at);
    const words = style.write(says).split(" ");
    for (let first = 0; first < words.length; first += style.wordsPerCaption) {
      const piece = words.slice(first, first + style.wordsPerCaption);
      captions.push({ index: captions.length, start: at, end: at + piece.length * secondsPerWord, text: piece.join(" ") });
      at += piece.length * secondsPerWord;
    }
  }
  const zones = walk.told.map(([zone], index) => ({
    zone,
    start: starts[index]!,
    end: starts[index + 1] ?? at,
    confidence: 1,
    evidence: [],
  }));
  const speech = hearSpeech({ format: "plain", captions, duration: at });
  const claims = findQualityClaims({ speech, frames: frameSpeech(speech), mentions: findMentions(speech), zones });
  const { conflicts } = compareClaims({ claims, zones, duration: at, stockSheet: null, recordedOn: null });
  return conflicts.map((conflict) => `${conflict.kind} ${conflict.topic}`).sort();
}

describe.each(captionStyles.map((style) => [style.name, style] as const))("%s", (_name, style) => {
  test.each(toldWalks.map((walk) => [walk.name, walk] as const))("%s", (_walk, walk) => {
    expect(conflictsOf(walk, style)).toEqual([...walk.shows].sort());
  });
});
