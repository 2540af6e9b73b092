import { expect, test } from "vitest";
import { frameSpeech } from "../../../electron/analysis/claims/framing/index.ts";
import { findMentions } from "../../../electron/analysis/claims/lexicon/find-mentions.ts";
import { findQualityClaims } from "../../../electron/analysis/claims/qualities/index.ts";
import { compareClaims } from "../../../electron/analysis/comparison/compare-claims.ts";
import { hearSpeech } from "../../../electron/analysis/transcript/hear-speech.ts";
import type { Caption, ZoneProposal } from "../../../shared-types/index.ts";
import { bothHold } from "./both-hold.ts";
import { opposedAslant } from "./opposed-aslant.ts";
import { opposedByUse } from "./opposed-by-use.ts";
import { opposedSentences, type SentencePair } from "./opposed-sentences.ts";

/** A steady speaker. */
const secondsPerWord = 0.4;
/** Long enough that the two sentences are no breath. */
const smallTalk =
  "And we'll keep moving along here folks, watch the cord there, mind your step, it's a nice afternoon for it and the birds are singing, the sandwiches will be along later, they always are, and we'll have a cup of coffee and a sit down after, so bear with me a minute.";

/** Conflict kinds that a reviewer is shown for two sentences, with small talk between them. */
function kindsShown({ first, second }: SentencePair, write: (sentence: string) => string): string[] {
  const said = [first, ["opening", smallTalk] as const, second];
  let duration = 0;
  const captions: Caption[] = [];
  const zones: ZoneProposal[] = [];
  for (const [zone, says] of said) {
    const text = write(says);
    const end = duration + text.split(" ").length * secondsPerWord;
    captions.push({ index: captions.length, start: duration, end, text });
    zones.push({ zone, start: duration, end, confidence: 1, evidence: [] });
    duration = end;
  }
  const speech = hearSpeech({ format: "plain", captions, duration });
  const claims = findQualityClaims({ speech, frames: frameSpeech(speech), mentions: findMentions(speech), zones });
  return compareClaims({ claims, zones, duration, stockSheet: null, recordedOn: null }).conflicts.map((conflict) => conflict.kind);
}

const punctuated = (sentence: string) => sentence;
/** As a recogniser without punctuation writes it. */
const bare = (sentence: string) => sentence.toLowerCase().replace(/[.,](?=\s|$)/g, "");

const rows = [...opposedSentences, ...opposedAslant, ...opposedByUse, ...bothHold].flatMap((pair) => [
  [`${pair.first[1]} / ${pair.second[1]}`, pair, punctuated] as const,
  [`${bare(pair.first[1])} / ${bare(pair.second[1])}`, pair, bare] as const,
]);

test.each(rows)("%s", (_name, pair, write) => {
  const shown = kindsShown(pair, write);
  if (pair.shows === null) expect(shown).toEqual([]);
  else expect(shown).toContain(pair.shows);
});
