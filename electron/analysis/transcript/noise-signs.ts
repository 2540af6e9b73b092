import {
  commonWords,
  impossibleAfterOpener,
  impossibleAfterPreposition,
  isVehicleWord,
  openers,
  prepositions,
} from "./doubt-vocabulary.ts";
import { noiseExplained, soundWords, spelledOut } from "./noise-vocabulary.ts";
import type { CaptionToken } from "./tokenize.ts";

/** What speaks for song or noise (positive) and for a narrator (negative), per occurrence. Set by hand on invented noise and the cases. */
export const noiseWeights = {
  stutter: 1.2,
  stutterOfRareWord: 0.6,
  impossiblePair: 1.1,
  impossibleAfterPreposition: 0.9,
  soundWord: 0.5,
  /** Two or more words said again within a few words: a refrain. */
  refrain: 0.5,
  /** A rare word said again within a few words. */
  echo: 0.25,
  soundMark: 1.2,
  /** The narrator says afterwards what it was. */
  explained: 1.1,
  firstVehicleWord: -0.9,
  furtherVehicleWord: -1.8,
  figure: -0.6,
  /** "It's", "don't": recognisers seldom make them of noise. */
  contraction: -0.5,
} as const;

/** Within so many words a stretch said again is a refrain. */
const refrainReach = 12;

/**
 * For each word, how much it and the words before it sound like noise: stretches of one to four words said twice in a row without a comma
 * between, words that English never puts after an article or a preposition, cries and hums, refrains. A sign's weight is shared by its words.
 */
export function noiseSigns(tokens: readonly CaptionToken[]): number[] {
  const signs: number[] = tokens.map((token) => (soundWords.has(token.word) ? noiseWeights.soundWord : 0));
  const add = (first: number, end: number, weight: number) => {
    for (let position = first; position < end; position += 1) signs[position] = (signs[position] ?? 0) + weight / (end - first);
  };
  for (let position = 0; position < tokens.length; position += 1) {
    const size = repeatedFrom(tokens, position);
    if (size === 0) continue;
    const rare = size === 1 && !commonWords.has(tokens[position]?.word ?? "");
    add(position, position + 2 * size, rare ? noiseWeights.stutterOfRareWord : noiseWeights.stutter);
    position += size - 1;
  }
  for (let position = 1; position < tokens.length; position += 1) {
    const [before, token] = [tokens[position - 1], tokens[position]];
    if (!before || !token || before.after !== "" || before.word === token.word) continue;
    // "His is better" is a sentence.
    const possessed = before.word === "his" && /^(?:is|was)$/.test(token.word);
    if (openers.has(before.word) && impossibleAfterOpener.has(token.word) && !possessed)
      add(position - 1, position + 1, noiseWeights.impossiblePair);
    else if (prepositions.has(before.word) && impossibleAfterPreposition.has(token.word))
      add(position - 1, position + 1, noiseWeights.impossibleAfterPreposition);
  }
  for (const position of refrains(tokens)) add(position, position + 2, noiseWeights.refrain);
  for (const position of echoes(tokens)) add(position, position + 1, noiseWeights.echo);
  return signs;
}

/** What one word says for a narrator; zero or less. */
export function speechWeight(word: string): number {
  if (soundWords.has(word)) return 0;
  if (isVehicleWord(word)) return noiseWeights.firstVehicleWord;
  if (/\d/.test(word)) return noiseWeights.figure;
  return /^\p{L}+'\p{L}+$/u.test(word) ? noiseWeights.contraction : 0;
}

/** Whether a caption begins by saying what the noise before it was. */
export function explainsNoise(words: readonly string[]): boolean {
  const said = words
    .slice(0, 16)
    .map((word) => word.replaceAll("'", ""))
    .join(" ");
  return noiseExplained.some((explained) => explained.pattern.test(said));
}

/** Words from which a narrator apologises in the middle of a caption. */
export const apologises = (word: string): boolean => /^(?:sorry|pardon|apologi[sz]e|apologies)$/.test(word);

/** Places where two words are said again, not at once but soon: "the two … do the two". Each pair counts once. */
function* refrains(tokens: readonly CaptionToken[]): Generator<number> {
  const last = new Map<string, number>();
  const counted = new Set<string>();
  let lastFound = -2;
  for (let position = 0; position + 1 < tokens.length; position += 1) {
    const [one, two] = [tokens[position], tokens[position + 1]];
    if (!one || !two || one.after !== "" || spelledOut.test(one.word) || spelledOut.test(two.word)) continue;
    const pair = `${one.word} ${two.word}`;
    const before = last.get(pair);
    if (
      before !== undefined &&
      position - before > 2 &&
      position - before <= refrainReach &&
      !counted.has(pair) &&
      !endsBetween(tokens, before, position)
    ) {
      counted.add(pair);
      // A longer stretch counts once.
      if (position > lastFound + 1) yield position;
      lastFound = position;
    }
    last.set(pair, position);
  }
}

/** Sentences that say a word each are no refrain. */
const endsBetween = (tokens: readonly CaptionToken[], first: number, end: number): boolean =>
  tokens.slice(first, end).some((token) => /[.!?]/.test(token.after));

/** Places where a word that is neither common nor the vehicle's is said again soon. */
function* echoes(tokens: readonly CaptionToken[]): Generator<number> {
  const last = new Map<string, number>();
  for (const [position, { word }] of tokens.entries()) {
    if (commonWords.has(word) || isVehicleWord(word) || spelledOut.test(word)) continue;
    const before = last.get(word);
    if (before !== undefined && position - before > 1 && position - before <= refrainReach && !endsBetween(tokens, before, position))
      yield position;
    last.set(word, position);
  }
}

/**
 * Size of the longest stretch from here that is said again at once; 0 where there is none. "Down, down" is meant and does not count, nor do
 * digits and letters spelled out, nor sentences that begin alike.
 */
function repeatedFrom(tokens: readonly CaptionToken[], position: number): number {
  for (let size = 4; size >= 1; size -= 1) {
    const again = position + size;
    if (again + size > tokens.length || tokens[again - 1]?.after !== "") continue;
    const stretch = tokens.slice(position, again);
    if (stretch.every((token) => spelledOut.test(token.word)) || stretch.some((token) => /[.!?]/.test(token.after))) continue;
    if (stretch.every((token, offset) => token.word === tokens[again + offset]?.word)) return size;
  }
  return 0;
}
