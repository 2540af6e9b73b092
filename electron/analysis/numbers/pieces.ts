import type { Token } from "../model.ts";

/**
 * The speech as number rules see it: words lower-cased, every number written in digits, one piece for each thing a rule may name.
 * "a two thirty-five 60R15s" gives `a 2 35 60 r 15s`; "twenty second" gives `22th`; "'69" stays `'69`; punctuation is `,` or `.`.
 */
export interface Piece {
  readonly text: string;
  /** Token range, end exclusive; for punctuation, the empty range after its token. */
  readonly first: number;
  readonly end: number;
  /** True where nothing but its own characters parts it from the piece before ("60" and "r" in "60R15"). */
  readonly glued: boolean;
  /** How a number came: in digits, as number words, as words with "hundred" or "thousand", as such words with figures among them ("two thousand 597"); "none" for other words. */
  readonly written: "digits" | "words" | "scaled" | "mixed" | "none";
}

/** Pieces joined by single spaces, so that a rule can be a regular expression over them, and the way back to the pieces. */
export interface Line {
  readonly pieces: readonly Piece[];
  readonly text: string;
  /** Offset in `text` at which each piece starts; one more entry for the end. */
  readonly starts: readonly number[];
  readonly tokens: readonly Token[];
  /** True where the narrator speaks British English: "pounds" may be money, gallons imperial. */
  readonly british: boolean;
  /** Words in a caption, on average: captions of a few seconds are cut anywhere, longer ones where a speaker pauses. */
  readonly wordsPerCaption: number;
  /** True where a year before 1990 is said in full: two digits are then rather of the last century. */
  readonly classic: boolean;
  /** True where a year before 1950 is said in full: "a 37" is then a year too. */
  readonly prewar: boolean;
  /** True where a year of this century is said in full and none before 1990: two digits are then of this century. */
  readonly modern: boolean;
  /** The years said in full. */
  readonly years: ReadonlySet<number>;
}

export function lineOf(pieces: readonly Piece[], tokens: readonly Token[]): Line {
  const starts: number[] = [];
  let offset = 0;
  for (const piece of pieces) {
    starts.push(offset);
    offset += piece.text.length + 1;
  }
  starts.push(offset);
  const years = yearsSaid(pieces);
  const said = (from: number, to: number) => [...years].some((year) => year >= from && year <= to);
  const classic = said(1900, 1989);
  return {
    pieces,
    text: pieces.map((piece) => piece.text).join(" "),
    starts,
    tokens,
    british: soundsBritish(tokens),
    wordsPerCaption: wordsPerCaption(tokens),
    classic,
    prewar: said(1900, 1949),
    modern: !classic && said(2000, 2039),
    years,
  };
}

function wordsPerCaption(tokens: readonly Token[]): number {
  const captions = new Set(tokens.map((token) => token.caption)).size;
  return captions === 0 ? 0 : tokens.length / captions;
}

/** The years said in one piece (1964) or as two (nineteen sixty four, twenty nineteen). */
function yearsSaid(pieces: readonly Piece[]): ReadonlySet<number> {
  const years = new Set<number>();
  for (const [at, piece] of pieces.entries()) {
    const next = pieces[at + 1]?.text ?? "";
    const said = /^(?:19|20)$/.test(piece.text) && /^\d\d$/.test(next) ? `${piece.text}${next}` : piece.text;
    if (/^(?:19\d\d|20[0-3]\d)$/.test(said)) years.add(Number(said));
  }
  return years;
}

const britishWords: ReadonlySet<string> = new Set(
  "tyre tyres bonnet boot mot mots litre litres petrol quid windscreen gearbox saloon estate offside nearside kerb colour millimetres wing wings aerial carburettor carburettors v5 v5c bodywork headlamps headlamp indicators handbrake sills".split(
    " ",
  ),
);
const americanWords: ReadonlySet<string> = new Set(
  "tire tires hood trunk gas gallons dollars bucks windshield fender fenders y'all liter liters color rocker rockers antenna".split(" "),
);

function soundsBritish(tokens: readonly Token[]): boolean {
  let balance = 0;
  for (const token of tokens) {
    if (britishWords.has(token.word) || token.text.startsWith("£")) balance += 1;
    else if (americanWords.has(token.word) || token.text.startsWith("$")) balance -= 1;
  }
  return balance > 0;
}

/** The piece that starts at a text offset, or undefined inside a piece. Binary search keeps long transcripts linear-ish. */
export function pieceAtOffset(line: Line, offset: number): number | undefined {
  let low = 0;
  let high = line.starts.length - 1;
  while (low <= high) {
    const middle = (low + high) >> 1;
    const start = line.starts[middle]!;
    if (start === offset) return middle;
    if (start < offset) low = middle + 1;
    else high = middle - 1;
  }
  return undefined;
}

export function isNumberPiece(piece: Piece | undefined): boolean {
  return piece !== undefined && piece.written !== "none";
}
