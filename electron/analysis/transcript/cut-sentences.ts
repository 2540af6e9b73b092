import type { Caption } from "../../../shared-types/index.ts";
import type { Sentence, Token } from "../model.ts";
import { danglingWords, jointGuards, joints } from "./joints.ts";

/** Sentence ends per hundred words from which a recogniser counts as punctuating. Speech has four to ten; stray marks make one. */
const punctuatedEndsPerHundredWords = 2;
/** Captions this long (median words) are paragraphs: one ends where a sentence or a clause does. Shorter ones cut anywhere. */
const paragraphWords = 15;
/** Share of captions ending in a word that ends no sentence ("the", "of") from which captions are taken to cut anywhere. */
const mostDangling = 0.1;
/** Silence between captions that ends a sentence, in seconds. */
const sentencePauseSeconds = 1.2;
/** Words a stretch must have before a spoken joint cuts it: without punctuation, and with it (only run-on sentences). */
const jointAfterWords = { unpunctuated: 6, punctuated: 30 };

const abbreviations = new Set(["mr", "mrs", "ms", "dr", "st", "no", "vs", "approx", "jr", "sr"]);

export function isPunctuated(tokens: readonly Token[]): boolean {
  const ends = tokens.filter(endsSentence).length;
  return tokens.length > 0 && (ends / tokens.length) * 100 >= punctuatedEndsPerHundredWords;
}

export function endsSentence(token: Token): boolean {
  if (!/[.?!…]/u.test(token.after)) return false;
  return !(token.after === "." && (abbreviations.has(token.word) || /^\p{L}$/u.test(token.text)));
}

/** Whether captions are paragraphs, which end where a sentence does; shorter ones cut anywhere. */
export const areParagraphs = (tokens: readonly Token[]): boolean =>
  medianWords(tokens) >= paragraphWords && danglingShare(tokens) < mostDangling;

/** The speech cut into sentences or clauses; every token belongs to exactly one. */
export function cutSentences(
  tokens: readonly Token[],
  captions: readonly Caption[],
  punctuated: boolean,
  paragraphs = areParagraphs(tokens),
): Sentence[] {
  const sentences: Sentence[] = [];
  let first = 0;
  for (let position = 1; position <= tokens.length; position += 1) {
    const cut = position === tokens.length || cutsBefore(tokens, position, position - first, captions, punctuated, paragraphs);
    if (!cut) continue;
    sentences.push({
      index: sentences.length,
      first,
      end: position,
      startsAt: tokens[first]?.at ?? 0,
      endsAt: tokens[position]?.at ?? captions[tokens[position - 1]?.caption ?? 0]?.end ?? 0,
    });
    first = position;
  }
  return sentences;
}

function cutsBefore(
  tokens: readonly Token[],
  position: number,
  length: number,
  captions: readonly Caption[],
  punctuated: boolean,
  paragraphs: boolean,
): boolean {
  const before = tokens[position - 1];
  const token = tokens[position];
  if (!before || !token) return false;
  if (endsSentence(before)) return true;
  if (before.caption !== token.caption) {
    if (paragraphs || token.caption - before.caption > 1) return true;
    const pause = (captions[token.caption]?.start ?? 0) - (captions[before.caption]?.end ?? 0);
    // A recogniser that punctuates has heard the sentence go on over the pause.
    const goesOn = punctuated && before.after === "" && /^\p{Ll}/u.test(token.text);
    if (pause >= sentencePauseSeconds && !goesOn) return true;
  }
  return length >= jointAfterWords[punctuated ? "punctuated" : "unpunctuated"] && isJoint(tokens, position);
}

/** Whether a spoken joint ("so", "and then", "okay") starts at this token, and not as part of "and so on" or "right now". */
export function isJoint(tokens: readonly Token[], position: number): boolean {
  const word = tokens[position]?.word ?? "";
  const before = tokens[position - 1]?.word ?? "";
  const next = tokens[position + 1]?.word ?? "";
  return joints.some((joint) => {
    if (joint.word !== word || (joint.next && !joint.next.includes(next))) return false;
    return !(jointGuards[joint.guard] as readonly string[]).includes(before);
  });
}

function danglingShare(tokens: readonly Token[]): number {
  const lasts = tokens.filter((token, position) => tokens[position + 1]?.caption !== token.caption);
  return lasts.filter((token) => token.after === "" && danglingWords.has(token.word)).length / Math.max(1, lasts.length);
}

function medianWords(tokens: readonly Token[]): number {
  const counts = new Map<number, number>();
  for (const token of tokens) counts.set(token.caption, (counts.get(token.caption) ?? 0) + 1);
  const sorted = [...counts.values()].toSorted((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? 0;
}
