import type { Caption } from "../../../shared-types/index.ts";
import { commonWords, impossibleAfterOpener, isVehicleWord, openers, stockPhrases } from "./doubt-vocabulary.ts";
import { type CaptionToken, soundMarks } from "./tokenize.ts";

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

/** One caption as the tests see it: only the words it spoke first. */
interface Heard {
  readonly caption: Caption;
  readonly tokens: readonly CaptionToken[];
  readonly words: readonly string[];
}

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
  for (const index of overMusic(heard)) note(index, "words over music or noise");
  for (const index of overSilence(heard)) note(index, "words over silence");
  return [...reasons].map(([caption, why]) => ({ caption, why })).toSorted((a, b) => a.caption - b.caption);
}

function foreignScript(text: string): string | null {
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

/** Evidence in words that a caption is song or noise: positive for noise, negative for speech about a vehicle. */
export function noiseScore(words: readonly string[], tokens: readonly CaptionToken[], marks: number): number {
  const vehicle = new Set(words.filter(isVehicleWord).map((word) => word.replace(/s$/, ""))).size;
  const figures = words.filter((word) => /\d/.test(word)).length;
  return (
    stutters(words, tokens) * 1.2 + impossiblePairs(words, tokens) * 1.1 + Math.min(2, marks) * 1.2 - vehicleWeight(vehicle) - figures * 0.6
  );
}

/** One vehicle word may be chance ("wing", "line"); two are speech. */
const vehicleWeight = (words: number) => (words === 0 ? 0 : 0.9 + (words - 1) * 1.8);

/** Stretches of one to four words said twice in a row without a comma between, as a recogniser hears a refrain. */
function stutters(words: readonly string[], tokens: readonly CaptionToken[]): number {
  let count = 0;
  for (let position = 0; position < words.length; position += 1) {
    for (let size = 4; size >= 1; size -= 1) {
      const again = position + size;
      if (again + size > words.length) continue;
      const same = words.slice(position, again).every((word, offset) => word === words[again + offset]);
      // "down, down, down" and "knock knock" are meant; a repeated article or verb is not.
      if (!same || tokens[again - 1]?.after !== "") continue;
      count += size === 1 && !commonWords.has(words[position] ?? "") ? 0.5 : 1;
      position = again - 1;
      break;
    }
  }
  return count;
}

function impossiblePairs(words: readonly string[], tokens: readonly CaptionToken[]): number {
  let count = 0;
  for (let position = 1; position < words.length; position += 1) {
    const [before = "", word = ""] = [words[position - 1], words[position]];
    if (before !== word && tokens[position - 1]?.after === "" && openers.has(before) && impossibleAfterOpener.has(word)) count += 1;
  }
  return count;
}

/**
 * What a run of captions must score to count as noise. One paragraph needs less than several short captions: the slips of a narrator
 * are spread over what he says, while a refrain fills its caption. Set so that invented noise is found and no development case alarms.
 */
const noiseThresholds = { paragraph: 1.2, run: 2.5 };
const paragraphWords = 14;
/** Every word of plain speech weighs against noise, so that runs do not reach across it. */
const wordWeight = 0.04;

/** Runs of neighbouring captions whose noise scores add up to more than the speech between them takes away. */
function* overMusic(heard: readonly Heard[]): Generator<number> {
  let run: number[] = [];
  let total = 0;
  let best = 0;
  let bestLength = 0;
  function* settle(): Generator<number> {
    const words = run.slice(0, bestLength).reduce((sum, index) => sum + (heard[index]?.words.length ?? 0), 0);
    if (best >= (bestLength === 1 && words >= paragraphWords ? noiseThresholds.paragraph : noiseThresholds.run))
      yield* run.slice(0, bestLength);
    run = [];
    total = best = bestLength = 0;
  }
  for (const [index, one] of heard.entries()) {
    const own = noiseScore(one.words, one.tokens, one.words.length > 0 ? soundMarks(one.caption.text) : 0);
    const long = one.words.length >= paragraphWords;
    if (long && run.length > 0) yield* settle();
    const score = long ? own : own - one.words.length * wordWeight;
    if (run.length === 0 && score <= 0) continue;
    run.push(index);
    total += score;
    if (total > best) {
      best = total;
      bestLength = run.length;
    }
    if (long || total <= 0) yield* settle();
  }
  yield* settle();
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
