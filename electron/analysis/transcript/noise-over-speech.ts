import type { Caption } from "../../../shared-types/index.ts";
import { commonWords, impossibleAfterOpener, isVehicleWord, openers } from "./doubt-vocabulary.ts";
import { type CaptionToken, soundMarks } from "./tokenize.ts";

/** One caption as the tests see it: only the words it spoke first. */
export interface Heard {
  readonly caption: Caption;
  readonly tokens: readonly CaptionToken[];
  readonly words: readonly string[];
}

/** What speaks for song or noise (positive) and for a narrator (negative), per occurrence. Set by hand on invented noise and the cases. */
const weights = {
  stutter: 1.2,
  stutterOfRareWord: 0.6,
  impossiblePair: 1.1,
  soundMark: 1.2,
  firstVehicleWord: -0.9,
  furtherVehicleWord: -1.8,
  figure: -0.6,
};
/** What a paragraph must score by itself, and what a run of words over several short captions must score. */
const noiseThresholds = { paragraph: 1.2, run: 2.0 };
const paragraphWords = 14;
/** In a run every word of plain speech weighs against noise, so that runs do not reach across it; and a run has so many words at least. */
const runWordWeight = -0.05;
const shortestRunWords = 7;
/** Share of a short caption's words inside a run from which it belongs to it. */
const shareInRun = 0.5;

/**
 * Captions in which the recogniser wrote words over music or noise: refrains and slips ("the the", "my the") pile up while nothing on the
 * vehicle is named. Paragraphs are judged alone; shorter captions as one stream, because three words of a song look like three words.
 */
export function* captionsOverNoise(heard: readonly Heard[]): Generator<number> {
  let short: { heard: Heard; index: number }[] = [];
  for (const [index, one] of heard.entries()) {
    if (one.words.length < paragraphWords) {
      short.push({ heard: one, index });
      continue;
    }
    yield* noisyRuns(short);
    short = [];
    if (noiseScore(one) >= noiseThresholds.paragraph) yield index;
  }
  yield* noisyRuns(short);
}

/** Evidence in one caption's words that it is song or noise; negative for speech about a vehicle. */
export function noiseScore({ caption, tokens, words }: Heard): number {
  const vehicle = new Set(words.filter(isVehicleWord).map((word) => word.replace(/s$/, ""))).size;
  const figures = words.filter((word) => /\d/.test(word)).length;
  const slips = slipWeights(tokens).reduce((sum, weight) => sum + weight, 0);
  const marks = words.length > 0 ? Math.min(2, soundMarks(caption.text)) * weights.soundMark : 0;
  const speech = vehicle === 0 ? 0 : weights.firstVehicleWord + (vehicle - 1) * weights.furtherVehicleWord;
  return slips + marks + speech + figures * weights.figure;
}

/** Stretches of the stream whose slips outweigh its speech, as the captions that lie in them. */
function* noisyRuns(captions: readonly { heard: Heard; index: number }[]): Generator<number> {
  const stream = captions.flatMap(({ heard, index }) =>
    heard.tokens.map((token, position) => ({ token, index, mark: position === 0 && soundMarks(heard.caption.text) > 0 })),
  );
  const slips = slipWeights(stream.map(({ token }) => token));
  const inRun = new Map<number, number>();
  let run = { first: 0, total: 0, best: 0, end: 0 };
  const settle = () => {
    if (run.best >= noiseThresholds.run && run.end - run.first >= shortestRunWords) {
      for (const { index } of stream.slice(run.first, run.end)) inRun.set(index, (inRun.get(index) ?? 0) + 1);
    }
  };
  for (const [position, { token, mark }] of stream.entries()) {
    const speech = isVehicleWord(token.word) ? weights.firstVehicleWord : /\d/.test(token.word) ? weights.figure : 0;
    run.total += (slips[position] ?? 0) + (mark ? weights.soundMark : 0) + speech + runWordWeight;
    if (run.total > run.best) run = { ...run, best: run.total, end: position + 1 };
    if (run.total <= 0 || run.total < run.best - noiseThresholds.run) {
      settle();
      run = { first: position + 1, total: 0, best: 0, end: position + 1 };
    }
  }
  settle();
  for (const { heard, index } of captions) if ((inRun.get(index) ?? 0) >= Math.max(1, heard.tokens.length * shareInRun)) yield index;
}

/**
 * For each word, how much it and the words before it sound like a refrain: stretches of one to four words said twice in a row without a
 * comma between, and an article before a word that never follows one. The weight is shared by the words of the stretch.
 */
function slipWeights(tokens: readonly CaptionToken[]): number[] {
  const slips = tokens.map(() => 0);
  for (let position = 0; position < tokens.length; position += 1) {
    const size = repeatedFrom(tokens, position);
    if (size === 0) continue;
    const rare = size === 1 && !commonWords.has(tokens[position]?.word ?? "");
    const share = (rare ? weights.stutterOfRareWord : weights.stutter) / (2 * size);
    for (let within = position; within < position + 2 * size; within += 1) slips[within] = (slips[within] ?? 0) + share;
    position += size - 1;
  }
  for (let position = 1; position < tokens.length; position += 1) {
    const [before, token] = [tokens[position - 1], tokens[position]];
    if (!before || !token || before.after !== "" || before.word === token.word) continue;
    if (openers.has(before.word) && impossibleAfterOpener.has(token.word))
      slips[position] = (slips[position] ?? 0) + weights.impossiblePair;
  }
  return slips;
}

/** Size of the longest stretch from here that is said again at once; 0 where there is none. "Down, down" is meant and does not count. */
function repeatedFrom(tokens: readonly CaptionToken[], position: number): number {
  for (let size = 4; size >= 1; size -= 1) {
    const again = position + size;
    if (again + size > tokens.length || tokens[again - 1]?.after !== "") continue;
    let same = true;
    for (let offset = 0; offset < size && same; offset += 1) same = tokens[position + offset]?.word === tokens[again + offset]?.word;
    if (same) return size;
  }
  return 0;
}
