import { expect, test } from "vitest";
import { frameSpeech } from "../../../electron/analysis/claims/framing/index.ts";
import { findMentions } from "../../../electron/analysis/claims/lexicon/find-mentions.ts";
import { findQualityClaims } from "../../../electron/analysis/claims/qualities/index.ts";
import { compareClaims } from "../../../electron/analysis/comparison/compare-claims.ts";
import { hearSpeech } from "../../../electron/analysis/transcript/hear-speech.ts";
import { opposedSentences, type SentencePair } from "./opposed-sentences.ts";

const captionSeconds = 20;

/** Conflict kinds that a reviewer is shown for two sentences, with small talk between them. */
function kindsShown({ first, second }: SentencePair, write: (sentence: string) => string): string[] {
  const said = [first, ["opening", "And we'll keep moving along here folks, watch the cord there."] as const, second];
  const captions = said.map(([, says], index) => ({
    index,
    start: index * captionSeconds,
    end: (index + 1) * captionSeconds,
    text: write(says),
  }));
  const duration = said.length * captionSeconds;
  const zones = said.map(([zone], index) => ({
    zone,
    start: index * captionSeconds,
    end: (index + 1) * captionSeconds,
    confidence: 1,
    evidence: [],
  }));
  const speech = hearSpeech({ format: "plain", captions, duration });
  const claims = findQualityClaims({ speech, frames: frameSpeech(speech), mentions: findMentions(speech), zones });
  return compareClaims({ claims, zones, duration, stockSheet: null, recordedOn: null }).conflicts.map((conflict) => conflict.kind);
}

const punctuated = (sentence: string) => sentence;
/** As a recogniser without punctuation writes it. */
const bare = (sentence: string) => sentence.toLowerCase().replace(/[.,](?=\s|$)/g, "");

const rows = opposedSentences.flatMap((pair) => [
  [`${pair.first[1]} / ${pair.second[1]}`, pair, punctuated] as const,
  [`${bare(pair.first[1])} / ${bare(pair.second[1])}`, pair, bare] as const,
]);

test.each(rows)("%s", (_name, pair, write) => {
  const shown = kindsShown(pair, write);
  if (pair.shows === null) expect(shown).toEqual([]);
  else expect(shown).toContain(pair.shows);
});
