import type { Token } from "../model.ts";
import { letterWords, lookUp, onesWords, spellingWords, teenWords, tensWords } from "../vocabulary/number-words.ts";
import { checkVin, mendVinLetters } from "./check-vin.ts";
import type { Draft } from "./rule.ts";

/** A spelled number over a token range, end exclusive. */
export interface SpelledCode {
  readonly first: number;
  readonly end: number;
  readonly drafts: readonly Draft[];
}

/** What one token adds to a number being spelled. `firm`: only spelling explains it (a lone letter, "bravo", "1G4AH"). */
interface Contribution {
  readonly characters: string;
  readonly firm: boolean;
  /** Tokens used, from this one on ("B as in boy" uses four). */
  readonly length: number;
  readonly filler?: boolean;
}

const vinLength = 17;
/** A piece of a number ("the last eight are …") is worth keeping from this length on. */
const leastPart = 6;
const fillers: ReadonlySet<string> = new Set("uh um er and then dash space capital lowercase letter number followed by".split(" "));
const repeats: Readonly<Record<string, number>> = { double: 2, triple: 3, treble: 3 };

/**
 * Finds identification numbers spoken in pieces: letters, digits, spelling words, "B as in boy", "double oh", "fourteen" for 1 4.
 * Letters I, O, Q are read as 1 and 0; where letters sound alike the check digit is evidence only, and nothing is changed to fit it.
 */
export function readVins(tokens: readonly Token[]): SpelledCode[] {
  const found: SpelledCode[] = [];
  let at = 0;
  while (at < tokens.length) {
    const run = spelledRun(tokens, at);
    if (run && run.end > at) {
      const code = codeOf(run);
      if (code) found.push(code);
      at = Math.max(run.end, at + 1);
    } else at += 1;
  }
  return found;
}

interface Run {
  readonly end: number;
  /** One entry for each contributing token group, fillers left out. */
  readonly parts: readonly { readonly first: number; readonly end: number; readonly characters: string; readonly firm: boolean }[];
}

function spelledRun(tokens: readonly Token[], from: number): Run | undefined {
  const parts: { first: number; end: number; characters: string; firm: boolean }[] = [];
  let at = from;
  while (at < tokens.length) {
    const contribution = contributionOf(tokens, at, parts.length > 0);
    if (!contribution) break;
    if (!contribution.filler)
      parts.push({ first: at, end: at + contribution.length, characters: contribution.characters, firm: contribution.firm });
    at += contribution.length;
  }
  return parts.length === 0 ? undefined : { end: at, parts };
}

function contributionOf(tokens: readonly Token[], at: number, inside: boolean): Contribution | undefined {
  const word = tokens[at]!.word;
  const next = tokens[at + 1]?.word ?? "";
  const times = lookUp(repeats, word);
  if (times !== undefined) {
    const repeated = at + 1 < tokens.length && lookUp(repeats, next) === undefined ? contributionOf(tokens, at + 1, true) : undefined;
    if (!repeated || repeated.filler || repeated.characters.length !== 1) return undefined;
    return { characters: repeated.characters.repeat(times), firm: true, length: repeated.length + 1 };
  }
  if (inside && fillers.has(word)) return { characters: "", firm: false, length: 1, filler: true };
  const letter = letterOf(word);
  if (letter !== undefined && tokens[at + 2] && ((next === "as" && tokens[at + 2]!.word === "in") || next === "for" || next === "like")) {
    const spelledAt = next === "as" ? at + 3 : at + 2;
    const spelled = tokens[spelledAt]?.word ?? "";
    if (spelled.startsWith(letter.toLowerCase()) && spelled.length > 1)
      return { characters: letter, firm: true, length: spelledAt - at + 1 };
  }
  if (word === "x" && next === "ray") return { characters: "X", firm: true, length: 2 };
  if (/^[a-z0-9-]*\d[a-z0-9-]*$/.test(word)) {
    const characters = word.replaceAll("-", "").toUpperCase();
    return { characters, firm: /[A-Z]/.test(characters) && !/(?:ST|ND|RD|TH|S)$/.test(characters), length: 1 };
  }
  const spelled = lookUp(spellingWords, word);
  if (spelled !== undefined) return { characters: spelled, firm: true, length: 1 };
  if (/^[a-z]$/.test(word)) return { characters: word.toUpperCase(), firm: !["a", "i", "o"].includes(word), length: 1 };
  const ones = lookUp(onesWords, word) ?? (word === "oh" || word === "zero" || word === "nought" ? 0 : undefined);
  if (ones !== undefined) return { characters: String(ones), firm: false, length: 1 };
  const pair = lookUp(teenWords, word);
  if (pair !== undefined) return { characters: String(pair), firm: false, length: 1 };
  const tens = lookUp(tensWords, word);
  if (tens !== undefined) {
    const unit = lookUp(onesWords, next);
    return { characters: String(tens + (unit ?? 0)), firm: false, length: unit === undefined ? 1 : 2 };
  }
  const hyphenated = /^([a-z]+)-([a-z]+)$/.exec(word);
  if (hyphenated) {
    const [high, low] = [lookUp(tensWords, hyphenated[1]!), lookUp(onesWords, hyphenated[2]!)];
    if (high !== undefined && low !== undefined) return { characters: String(high + low), firm: false, length: 1 };
  }
  // Letters of a group ("GDM" in "1M8 GDM 9AX") are written in capitals among the others.
  if (inside && /^[A-Z]{2,5}$/.test(tokens[at]!.text)) return { characters: tokens[at]!.text, firm: false, length: 1 };
  if (inside) {
    const named = lookUp(letterWords, word);
    if (named !== undefined) return { characters: named, firm: false, length: 1 };
  }
  return undefined;
}

function letterOf(word: string): string | undefined {
  return /^[a-z]$/.test(word) ? word.toUpperCase() : lookUp(letterWords, word);
}

function codeOf(run: Run): SpelledCode | undefined {
  const firmCount = run.parts.filter((part) => part.firm).length;
  const whole = exactRun(run);
  if (whole) return whole;
  const characters = run.parts.map((part) => part.characters).join("");
  if (firmCount < 2 || characters.length < leastPart || characters.length > 25 || !/[A-Z]/.test(characters) || !/\d/.test(characters))
    return undefined;
  const value = mendVinLetters(characters);
  // Tire sizes and part numbers spell alike: a part of a number needs a word about it nearby.
  const weight = characters.length >= 14 && characters.length <= 18 ? 0.6 : 0.3;
  return {
    first: run.parts[0]!.first,
    end: run.parts.at(-1)!.end,
    drafts: [{ kind: "vin", value, weight, repaired: run.parts.length > 1, topic: "vin", needsTopic: weight < 0.5 }],
  };
}

/** Exactly 17 characters somewhere in the run; of several such stretches the one whose check digit holds. */
function exactRun(run: Run): SpelledCode | undefined {
  let fallback: SpelledCode | undefined;
  for (let from = 0; from < run.parts.length; from += 1) {
    let characters = "";
    for (let to = from; to < run.parts.length && characters.length < vinLength; to += 1) {
      characters += run.parts[to]!.characters;
      if (characters.length !== vinLength) continue;
      const parts = run.parts.slice(from, to + 1);
      const vin = mendVinLetters(characters);
      const check = checkVin(vin);
      const firm = parts.filter((part) => part.firm).length;
      // An alphabet has no digits of its own, and digits alone are a telephone number or an odometer.
      if (check.formFault !== null || !/[A-Z]/.test(vin) || !/\d/.test(characters) || firm < 1) continue;
      const code: SpelledCode = {
        first: parts[0]!.first,
        end: parts.at(-1)!.end,
        drafts: [
          {
            kind: "vin",
            value: vin,
            weight: check.checkDigit?.matches ? 0.98 : 0.9,
            repaired: parts.length > 1 || vin !== characters,
            topic: "vin",
          },
        ],
      };
      if (check.checkDigit?.matches) return code;
      fallback ??= code;
    }
  }
  return fallback;
}
