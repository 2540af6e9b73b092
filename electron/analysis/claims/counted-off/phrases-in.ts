import type { CountedSpeech } from "./count-found.ts";

/** Tokens at which words of a phrase begin and end, from their place in a text made by `wordsOf` over all tokens. */
class Placed {
  readonly text: string;
  readonly #starts: readonly number[];

  constructor({ speech }: CountedSpeech) {
    const starts: number[] = [];
    let text = "";
    for (const { word, after } of speech.tokens) {
      if (text) text += " ";
      starts.push(text.length);
      // "Mrs. Pell" is one person and no sentence's end.
      text += /[.?!]/.test(after) && !/^(?:mr|mrs|ms|dr|st)$/.test(word) ? `${word} .` : word;
    }
    this.text = text;
    this.#starts = starts;
  }

  /** The token that holds a character. */
  tokenAt(character: number): number {
    let low = 0;
    let high = this.#starts.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (this.#starts[middle]! <= character) low = middle + 1;
      else high = middle;
    }
    return Math.max(0, low - 1);
  }
}

export interface PhraseFound {
  readonly first: number;
  readonly end: number;
  readonly groups: readonly (string | undefined)[];
}

/** One text for all the rules that look through a speech. */
const textsBySpeech = new WeakMap<CountedSpeech, Placed>();

function placedOf(counted: CountedSpeech): Placed {
  const placed = textsBySpeech.get(counted) ?? new Placed(counted);
  textsBySpeech.set(counted, placed);
  return placed;
}

/** Every place of a pattern in the words of a speech: lower case, single blanks, " ." at a sentence's end. */
export function phrasesIn(counted: CountedSpeech, pattern: RegExp): PhraseFound[] {
  const placed = placedOf(counted);
  return [...placed.text.matchAll(pattern)].map((match) => ({
    first: placed.tokenAt(match.index),
    end: placed.tokenAt(match.index + match[0].length - 1) + 1,
    groups: match.slice(1),
  }));
}
