import type { Caption } from "../../../shared-types/index.ts";
import { commonWords, isVehicleWord } from "./doubt-vocabulary.ts";
import { apologises, explainsNoise, noiseSigns, noiseWeights, speechWeight } from "./noise-signs.ts";
import { type CaptionToken, soundMarks } from "./tokenize.ts";

/** One caption as the tests see it: only the words it spoke first. */
export interface Heard {
  readonly caption: Caption;
  readonly tokens: readonly CaptionToken[];
  readonly words: readonly string[];
}

/** What a paragraph must score by itself, and what a run of words over several short captions must score. */
const noiseThresholds = { paragraph: 1.2, run: 2.0 };
/** Signs in the words themselves without which no explanation that follows makes them noise. */
const fewestSigns = 0.9;
const paragraphWords = 14;
/** In a run every word of plain speech weighs against noise, so that runs do not reach across it; and a run has so many words at least. */
const runWordWeight = -0.05;
const shortestRunWords = 6;
/** A pause, in seconds, at which the narrator fell silent for the noise; noise may begin so many words before its first sign. */
const pauseSeconds = 0.8;
const longestBeforeSigns = 8;
/** Share of a short caption's words inside a run from which it belongs to it. */
const shareInRun = 0.5;

/**
 * Captions in which the recogniser wrote words over music or noise: refrains and slips ("the the", "my the") pile up while nothing on the
 * vehicle is named, and the narrator may say afterwards what it was. Paragraphs are judged alone; shorter captions as one stream, because
 * three words of a song look like three words.
 */
export function* captionsOverNoise(heard: readonly Heard[]): Generator<number> {
  let short: { heard: Heard; index: number }[] = [];
  for (const [index, one] of heard.entries()) {
    const explained = explainsNoise(heard[index + 1]?.words ?? []);
    if (one.words.length < paragraphWords) {
      short.push({ heard: one, index });
      continue;
    }
    yield* noisyRuns(short, explainsNoise(one.words));
    short = [];
    if (noiseScore(one, explained) >= noiseThresholds.paragraph) yield index;
  }
  yield* noisyRuns(short, false);
}

/** Evidence in one caption's words that it is song or noise; negative for speech about a vehicle. */
export function noiseScore({ caption, tokens, words }: Heard, explained = false): number {
  const vehicle = new Set(words.filter(isVehicleWord).map((word) => word.replace(/s$/, ""))).size;
  const signs = noiseSigns(tokens).reduce((sum, weight) => sum + weight, 0);
  const marks = words.length > 0 ? Math.min(2, soundMarks(caption.text)) * noiseWeights.soundMark : 0;
  const speech = vehicle === 0 ? 0 : noiseWeights.firstVehicleWord + (vehicle - 1) * noiseWeights.furtherVehicleWord;
  const others = words.filter((word) => !isVehicleWord(word)).reduce((sum, word) => sum + speechWeight(word), 0);
  const explanation = explained && signs + marks >= fewestSigns ? noiseWeights.explained : 0;
  return signs + marks + speech + others + explanation;
}

interface Run {
  readonly first: number;
  readonly total: number;
  readonly best: number;
  /** Token after the last of the best stretch. */
  readonly end: number;
}

/** Stretches of the stream whose signs outweigh its speech, as the captions that lie in them. */
function* noisyRuns(captions: readonly { heard: Heard; index: number }[], explainedAtEnd: boolean): Generator<number> {
  const stream = captions.flatMap(({ heard, index }, place) => {
    const explains = explainsNoise(heard.words);
    return heard.tokens.map((token, position) => ({
      token,
      index,
      mark: position === 0 && soundMarks(heard.caption.text) > 0,
      pauses: position === 0 && heard.caption.start - (captions[place - 1]?.heard.caption.end ?? heard.caption.start) >= pauseSeconds,
      explains: position === 0 ? explains : apologises(token.word),
    }));
  });
  const signs = noiseSigns(stream.map(({ token }) => token));
  const inRun = new Map<number, number>();
  const empty = (first: number): Run => ({ first, total: 0, best: 0, end: first });
  const settle = (run: Run) => {
    if (run.best < noiseThresholds.run || run.end - run.first < shortestRunWords) return;
    for (const { index } of stream.slice(run.first, run.end)) inRun.set(index, (inRun.get(index) ?? 0) + 1);
  };
  /** The narrator explains what was heard up to here: the run, if there is one, ends here. */
  const explain = (run: Run, position: number) => {
    const first = pause !== null && run.first - pause <= longestBeforeSigns ? pause : run.first;
    if (run.best >= fewestSigns) settle({ ...run, first, best: run.best + noiseWeights.explained, end: position });
    return empty(position);
  };
  let run = empty(0);
  /** Where speech last paused, as long as nothing but noise has followed. */
  let pause: number | null = null;
  for (const [position, { token, mark, explains, pauses }] of stream.entries()) {
    if (explains) run = explain(run, position);
    if (pauses) pause = position;
    else if (run.total <= 0 && !commonWords.has(token.word)) pause = null;
    const total = run.total + (signs[position] ?? 0) + (mark ? noiseWeights.soundMark : 0) + speechWeight(token.word) + runWordWeight;
    run = total > run.best ? { ...run, total, best: total, end: position + 1 } : { ...run, total };
    if (run.total <= 0 || run.total < run.best - noiseThresholds.run) {
      settle(run);
      run = empty(position + 1);
    }
  }
  if (explainedAtEnd) explain(run, stream.length);
  else settle(run);
  for (const { heard, index } of captions) {
    // Who apologises in a caption speaks in it.
    if (heard.words.some((word, position) => position > 0 && apologises(word))) continue;
    if ((inRun.get(index) ?? 0) >= Math.max(1, heard.tokens.length * shareInRun)) yield index;
  }
}
