import type { Caption } from "../../../shared-types/index.ts";
import { commonWords, isVehicleWord, stockPhrases } from "./doubt-vocabulary.ts";
import { captionsOverNoise, type Heard } from "./noise-over-speech.ts";
import type { CaptionToken } from "./tokenize.ts";

export interface DoubtfulReason {
  readonly caption: number;
  readonly why: string;
}

/** Words a second beyond which nobody speaks; a hurried narrator makes four, an auctioneer six. Common practice. */
const fastestWordsPerSecond = 8;
/** A silence, in seconds, after which fluent words about nothing on the vehicle are the recogniser's own. */
const longGapSeconds = 8;
/** Words without a vehicle in them that must follow the silence: a narrator says a few before he gets to the point. */
const fewestGhostWords = 9;
/** Repeats of one stretch in a row that make a loop, and of one whole caption. */
const loopRepeats = { stretch: 4, caption: 3 };

/** Captions that are no speech about this vehicle, each with its reason, in file order. */
export function findDoubtful(captions: readonly Caption[], spoken: readonly (readonly CaptionToken[])[]): DoubtfulReason[] {
  const heard = captions.map((caption, index) => ({
    caption,
    tokens: spoken[index] ?? [],
    words: (spoken[index] ?? []).map((token) => token.word),
  }));
  const wholeSeconds = captions.every((caption) => Number.isInteger(caption.start));
  const reasons = new Map<number, string>();
  const note = (index: number, why: string | null) => {
    if (why && !reasons.has(index)) reasons.set(index, why);
  };
  for (const [index, one] of heard.entries()) {
    note(index, foreignScript(one.caption.text) ?? loopWithin(one.words) ?? impossibleSpeed(one, wholeSeconds) ?? notEnglish(one.words));
  }
  for (const index of loopedCaptions(heard)) note(index, "the same caption over and over");
  for (const index of captionsOverNoise(heard)) note(index, "words over music or noise");
  for (const index of overSilence(heard)) note(index, "words over silence");
  return [...reasons].map(([caption, why]) => ({ caption, why })).toSorted((a, b) => a.caption - b.caption);
}

/** Beyond ASCII: without any such letter there is no foreign script. */
const beyondAscii = /[^\s!-~]/;

function foreignScript(text: string): string | null {
  if (!beyondAscii.test(text)) return null;
  const letters = [...text.matchAll(/\p{L}/gu)].length;
  const latin = [...text.matchAll(/\p{Script=Latin}|[µΩ]/gu)].length;
  return letters >= 3 && letters - latin > letters * 0.3 ? "words in a foreign script" : null;
}

function notEnglish(words: readonly string[]): string | null {
  if (words.length < 6) return null;
  const letters = words.filter((word) => /^[\p{L}']+$/u.test(word));
  const known = letters.filter((word) => commonWords.has(word) || isVehicleWord(word)).length;
  const figures = words.length - letters.length;
  return known === 0 && figures <= words.length / 3 && words.some((word) => /[^a-z']/.test(word.normalize("NFC")))
    ? "words in another language"
    : null;
}

function loopWithin(words: readonly string[]): string | null {
  for (let size = 1; size <= 8; size += 1) {
    let run = size;
    for (let position = size; position < words.length; position += 1) {
      run = words[position] === words[position - size] ? run + 1 : size;
      if (run >= size * loopRepeats.stretch && run >= 8 && run >= words.length * 0.5) return "one phrase over and over";
    }
  }
  return null;
}

function impossibleSpeed({ caption, words }: Heard, wholeSeconds: boolean): string | null {
  // Times written in whole seconds may be off by one at either end.
  const seconds = caption.end - caption.start + (wholeSeconds ? 1 : 0);
  return words.length >= 10 && seconds > 0 && words.length / seconds > fastestWordsPerSecond
    ? "more words than anyone can say in the time"
    : null;
}

function* loopedCaptions(heard: readonly Heard[]): Generator<number> {
  let first = 0;
  for (let index = 1; index <= heard.length; index += 1) {
    const said = heard[first]?.words.join(" ") ?? "";
    if (index < heard.length && heard[index]?.words.join(" ") === said) continue;
    const enough = index - first >= loopRepeats.caption && said !== "" && (said.includes(" ") || index - first > loopRepeats.caption);
    if (enough) for (let looped = first; looped < index; looped += 1) yield looped;
    first = index;
  }
}

/** Captions after a long silence, up to the first that has a word on the vehicle or takes up the walk again. */
function* overSilence(heard: readonly Heard[]): Generator<number> {
  for (let index = 1; index < heard.length; index += 1) {
    if (silenceBefore(heard, index) < longGapSeconds) continue;
    let end = index;
    while (end < heard.length && !isSpeechAgain(heard[end]?.words ?? []) && (end === index || silenceBefore(heard, end) < longGapSeconds))
      end += 1;
    const run = heard.slice(index, end);
    if (isStock(run[0]?.words ?? []) || aboutNothing(run.flatMap((each) => each.words))) {
      for (let lone = index; lone < Math.max(end, index + 1); lone += 1) yield lone;
    }
  }
  for (const [index, one] of heard.entries()) {
    const seconds = one.caption.end - one.caption.start;
    if (one.words.length > 0 && one.words.length <= 3 && seconds >= 15 && isStock(one.words)) yield index;
  }
}

/** A narrator who speaks again turns to something, points at it, or gives a figure. */
const isSpeechAgain = (words: readonly string[]) =>
  !isStock(words) &&
  words.some(
    (word) =>
      /\d/.test(word) ||
      isVehicleWord(word) ||
      /^(?:okay|ok|alright|right|so|now|anyway|anyhow|sorry|here|here's|this|see|look|we're|let's|listen)$/.test(word),
  );

const isStock = (words: readonly string[]) => stockPhrases.some((phrase) => phrase.pattern.test(words.join(" ")));

const aboutNothing = (words: readonly string[]) => words.length >= fewestGhostWords;

/** Seconds of silence before a caption: from the last one's end, or where files give no ends, from when its words must have been said. */
function silenceBefore(heard: readonly Heard[], index: number): number {
  const before = heard[index - 1];
  const caption = heard[index]?.caption;
  if (!before || !caption) return 0;
  const gap = caption.start - before.caption.end;
  if (gap > 0) return gap;
  const needed = before.words.length / 1.6;
  return Math.max(0, caption.start - before.caption.start - needed - 2);
}
