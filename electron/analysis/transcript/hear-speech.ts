import type { Transcript } from "../../../shared-types/index.ts";
import type { Speech, Token } from "../model.ts";
import { areParagraphs, cutSentences, isPunctuated } from "./cut-sentences.ts";
import { findDoubtful } from "./doubtful-captions.ts";
import { rolledWordCounts } from "./rolling-captions.ts";
import { tokensOfCaption } from "./tokenize.ts";

/**
 * The transcript as speech: each word once, doubtful captions set apart, cut into sentences or clauses.
 * Linear in the words. Captions keep their index and text whatever is left out of the speech.
 * @param trusted doubtful captions that a person holds for speech; they are read like any other.
 */
export function hearSpeech(transcript: Transcript, trusted: ReadonlySet<number> = new Set()): Speech {
  const { captions, duration } = transcript;
  const written = captions.map(tokensOfCaption);
  const rolled = rolledWordCounts(written);
  const spoken = written.map((tokens, index) => tokens.slice(rolled[index]));
  const doubtful = findDoubtful(captions, spoken).filter(({ caption }) => !trusted.has(caption));
  const setApart = new Set(doubtful.map((reason) => reason.caption));
  const tokens = spoken
    .filter((_, caption) => !setApart.has(caption))
    .flat()
    .map((token, index): Token => ({ index, ...token }));
  const punctuated = isPunctuated(tokens);
  const paragraphs = areParagraphs(tokens);
  const sentences = cutSentences(tokens, captions, punctuated, paragraphs);
  return { captions, duration, tokens, sentences, doubtful, punctuated, paragraphs };
}
