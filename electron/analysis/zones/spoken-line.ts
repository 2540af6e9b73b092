import type { Speech } from "../model.ts";
import { endsSentence } from "../transcript/cut-sentences.ts";

/** Sounds of hesitation, which may stand anywhere and mean nothing. */
const hesitations: ReadonlySet<string> = new Set(["uh", "um", "er", "erm", "ah", "hmm", "mm"]);

/**
 * The speech as one line for phrase patterns: lower-case words without apostrophes or hesitations, one space between, " | " where a
 * sentence ends, so that a phrase never runs from one sentence into the next.
 */
export interface SpokenLine {
  readonly text: string;
  /** Token whose word stands at, or last began before, this offset of `text`. */
  tokenAt(offset: number): number;
}

export function spokenLine(speech: Speech): SpokenLine {
  const starts: number[] = [];
  const tokens: number[] = [];
  const pieces: string[] = [];
  let length = 0;
  const ends = sentenceEnds(speech);
  for (const token of speech.tokens) {
    if (hesitations.has(token.word)) continue;
    const word = plainWord(token.word);
    const piece = `${word}${ends.has(token.index) ? " | " : " "}`;
    starts.push(length);
    tokens.push(token.index);
    pieces.push(piece);
    length += piece.length;
  }
  return {
    text: pieces.join(""),
    tokenAt(offset) {
      let low = 0;
      let high = starts.length - 1;
      while (low < high) {
        const middle = (low + high + 1) >> 1;
        if ((starts[middle] ?? 0) <= offset) low = middle;
        else high = middle - 1;
      }
      return tokens[low] ?? 0;
    },
  };
}

/** Tokens after which a sentence surely ends: full stops, and ends of captions that are paragraphs. Spoken joints are too unsure. */
function sentenceEnds(speech: Speech): ReadonlySet<number> {
  const ends = new Set<number>();
  for (const sentence of speech.sentences) {
    const last = speech.tokens[sentence.end - 1];
    const next = speech.tokens[sentence.end];
    if (last && ((speech.punctuated && endsSentence(last)) || (next && next.caption !== last.caption))) ends.add(last.index);
  }
  return ends;
}

/** "driver's" and "drivers", "let's" and "lets" are one word to the patterns: unpunctuated recognisers write no apostrophes. */
export const plainWord = (word: string): string => word.replaceAll("'", "");

/** Spellings of one word on both sides of the ocean, so that tables need one of them. */
const americanSpelling: Readonly<Record<string, string>> = {
  tyre: "tire",
  tyres: "tires",
  kerb: "curb",
  kerbed: "curbed",
  kerbing: "curbing",
  centre: "center",
  centres: "centers",
  aluminium: "aluminum",
  colour: "color",
  grey: "gray",
  litre: "liter",
  litres: "liters",
  metre: "meter",
  metres: "meters",
  moulding: "molding",
  mouldings: "moldings",
  carburettor: "carburetor",
  carburettors: "carburetors",
  micrometre: "micron",
  louvre: "louver",
  louvres: "louvers",
  louvred: "louvered",
};

export const spelledAlike = (word: string): string => americanSpelling[word] ?? word;
