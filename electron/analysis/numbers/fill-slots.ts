import { lookUp } from "../vocabulary/number-words.ts";
import type { Line } from "./pieces.ts";

/** What was found on filling a row of digit slots ("235", "60", "15") from spoken pieces. */
export interface Slots {
  readonly digits: readonly string[];
  /** P, LT, T or ST before a metric size; the load letter of an alphanumeric one; "" for none. */
  readonly prefix: string;
  /** Construction and speed letters between the slots, lower case. */
  readonly letters: readonly string[];
  readonly separators: readonly string[];
  /** True where the written form already is the size ("235/60R15", "235/60 R15"). */
  readonly asWritten: boolean;
  /** True where it was said out in full, each part a number of its own with its name ("section eighty profile"). */
  readonly worded: boolean;
  readonly plural: boolean;
  /** True where the width was written with its point ("6.70"). */
  readonly pointWritten: boolean;
  readonly pieceCount: number;
  readonly end: number;
}

const separatorWords: ReadonlySet<string> = new Set(
  "/ - x by over slash dash on a an the in times section series profile aspect ratio point with , to for".split(" "),
);
const namedParts: ReadonlySet<string> = new Set("section series profile aspect".split(" "));
/** Letters between slots, with the words a recogniser writes for them. */
const constructionLetters: Readonly<Record<string, string>> = {
  r: "r",
  are: "r",
  ar: "r",
  our: "r",
  or: "r",
  zr: "zr",
  z: "z",
  zee: "z",
  zed: "z",
  d: "d",
  dee: "d",
  b: "b",
  t: "t",
  tea: "t",
  tee: "t",
  h: "h",
  s: "s",
  v: "v",
  tr: "tr",
  hr: "hr",
  sr: "sr",
  vr: "vr",
};
const prefixes: Readonly<Record<string, string>> = { p: "P", pee: "P", lt: "LT", t: "T", tee: "T", tea: "T", st: "ST" };
const loadLetterWords: Readonly<Record<string, string>> = {
  gee: "G",
  jee: "G",
  ef: "F",
  eff: "F",
  ee: "E",
  aitch: "H",
  jay: "J",
  el: "L",
  dee: "D",
  bee: "B",
  see: "C",
};
const homophones: Readonly<Record<string, string>> = { to: "2", too: "2", for: "4", fore: "4", won: "1", oh: "0", ate: "8" };
const mostSeparatorsInARow = 4;

/** Walks the pieces from `at`, letting a piece run over a slot's border ("2055"), until every slot has its digits; undefined where that fails. */
export function fillSlots(line: Line, at: number, sizes: readonly number[], lead: "none" | "load-letter" | "bare"): Slots | undefined {
  const { pieces } = line;
  let position = at;
  let prefix = "";
  if (lead === "load-letter") {
    const word = pieces[at]?.text ?? "";
    // "gr78" comes as one piece of letters: the R of a radial belongs to the construction.
    const radial = /^([a-n])r$/.exec(word);
    prefix = radial ? radial[1]!.toUpperCase() : /^[a-n]$/.test(word) ? word.toUpperCase() : (lookUp(loadLetterWords, word) ?? "");
    if (prefix === "") return undefined;
    position += 1;
    if (pieces[position]?.text === "-") position += 1;
  } else if (lead === "none") {
    const word = pieces[at]?.text ?? "";
    const named = lookUp(prefixes, word);
    if (named) {
      prefix = named;
      position += 1;
    } else if (word === "l" && (pieces[at + 1]?.text === "t" || pieces[at + 1]?.text === "tee")) {
      prefix = "LT";
      position += 2;
    }
  }
  const firstDigits = position;
  const total = sizes.reduce((sum, size) => sum + size, 0);
  const borders = new Set(sizes.map((_, index) => sizes.slice(0, index + 1).reduce((sum, size) => sum + size, 0)));
  const state = {
    digits: "",
    letters: [] as string[],
    separators: [] as string[],
    plural: false,
    crossed: false,
    split: false,
    pieceCount: 0,
    spoken: false,
    homophone: false,
  };
  if (lead === "load-letter") {
    // The R of GR78-15 stands before the digits.
    if (/^[a-n]r$/.test(pieces[at]!.text)) state.letters.push("r");
    else if (lookUp(constructionLetters, pieces[position]?.text ?? "") === "r") {
      state.letters.push("r");
      position += 1;
    }
  }
  let separatorsInARow = 0;
  while (state.digits.length < total) {
    const piece = pieces[position];
    if (!piece || piece.text === ".") return undefined;
    const atBorder = borders.has(state.digits.length);
    // "six point seven zero by fifteen": the point of a numeric size or a commercial rim ("nineteen point five"), said out.
    const withinRim = sizes.length === 3 && sizes[2] === 3 && state.digits.length === total - 1;
    if (piece.text === "point" && ((lead === "bare" && state.digits.length === 1) || withinRim)) {
      position += 1;
      continue;
    }
    const homophone =
      piece.written === "none" && mayBeDigit(piece.text, state.digits, atBorder, sizes[0]!) ? lookUp(homophones, piece.text) : undefined;
    const digits = piece.written !== "none" ? numberDigits(piece.text) : homophone ? { text: homophone, plural: false } : undefined;
    if (digits !== undefined) {
      if (homophone !== undefined) state.homophone = true;
      const before = state.digits.length;
      state.digits += digits.text;
      if (state.digits.length > total) return undefined;
      for (const border of borders) if (border > before && border < state.digits.length) state.crossed = true;
      if (!borders.has(state.digits.length)) state.split = true;
      if (digits.plural) {
        if (!borders.has(state.digits.length)) return undefined;
        state.plural = true;
      }
      if (piece.written !== "digits") state.spoken = true;
      state.pieceCount += 1;
      separatorsInARow = 0;
    } else {
      const letter = lookUp(constructionLetters, piece.text);
      const insideDigits = state.digits !== "" && (atBorder || (piece.text === "," && state.digits.length < sizes[0]!));
      if (!insideDigits || separatorsInARow >= mostSeparatorsInARow) return undefined;
      if (letter !== undefined && piece.text !== "or") state.letters.push(letter);
      else if (separatorWords.has(piece.text)) state.separators.push(piece.text);
      else return undefined;
      separatorsInARow += 1;
    }
    position += 1;
  }
  const next = pieces[position];
  // More digits glued on would make another number of it.
  if (next?.glued && (next.written !== "none" || next.text === "/" || next.text === "-")) return undefined;
  if (state.pieceCount > 0 && pieces[firstDigits]?.text === ",") return undefined;
  const slots: string[] = [];
  for (let index = 0, from = 0; index < sizes.length; from += sizes[index]!, index += 1)
    slots.push(state.digits.slice(from, from + sizes[index]!));
  const written = !state.spoken && !state.crossed && !state.split && !state.homophone && state.pieceCount === sizes.length;
  const marked =
    state.separators.includes("/") || state.separators.includes("-") || state.separators.includes("x") || lead === "load-letter";
  return {
    digits: slots,
    prefix,
    letters: joinLetters(state.letters),
    separators: state.separators,
    asWritten: written && marked && hasOneToken(line, at, position),
    worded: state.separators.some((word) => namedParts.has(word)) && !state.crossed && !state.split && !state.homophone,
    plural: state.plural,
    pointWritten: /^\d{1,2}\.\d\d$/.test(pieces[firstDigits]?.text ?? ""),
    pieceCount: state.pieceCount,
    end: position,
  };
}

/** "235/60R15" and "235/60 R15" are right as they stand; "235 60 15" is not. */
function hasOneToken(line: Line, first: number, end: number): boolean {
  return line.pieces[end - 1]!.end - line.pieces[first]!.first <= 2;
}

/**
 * "to" may open a width ("to 35") or stand within one ("two to five" for 225), "for" only within one ("two for five"); between two
 * finished parts they are words. "oh" never opens a size.
 */
function mayBeDigit(word: string, digits: string, atBorder: boolean, widthLength: number): boolean {
  if (word === "oh") return digits !== "";
  const withinWidth = digits !== "" && !atBorder && digits.length < widthLength;
  if (word === "to" || word === "too" || word === "won") return digits === "" || withinWidth;
  return withinWidth || (word === "ate" && digits !== "" && !atBorder);
}

function joinLetters(letters: readonly string[]): readonly string[] {
  const joined = letters.join("");
  return joined === "" ? [] : ["zr", "tr", "hr", "sr", "vr"].includes(joined) ? [joined] : letters;
}

/** Digits of a number piece: "15s" 15, "6.70" 670, "10.50" 1050; nothing for ordinals and years with a mark. */
function numberDigits(text: string): { text: string; plural: boolean } | undefined {
  const match = /^(\d+(?:\.\d+)?)(s?)$/.exec(text);
  return match ? { text: match[1]!.replace(".", ""), plural: match[2] === "s" } : undefined;
}
