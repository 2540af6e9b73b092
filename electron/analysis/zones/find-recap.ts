import type { Speech } from "../model.ts";
import { commonWords, isVehicleWord } from "../transcript/doubt-vocabulary.ts";
import type { NamedPart } from "./find-parts.ts";
import { plainWord } from "./spoken-line.ts";

/**
 * A walk ends as it began: the narrator says the vehicle's name, his own and the price again. Words of the first minute that come back in
 * the last one and are said nowhere between speak for the sign-off, whatever the names are.
 */
const firstShare = 0.1;
const lastShare = 0.88;
/** Two words together ("nineteen five") are surer than one. */
const weights = { word: 0.25, pair: 0.5, numbers: 0.35 };
/** Words that name no part and no vehicle, though they are not among the commonest. */
const fewestLetters = 3;

export function findRecap(speech: Speech): NamedPart[] {
  const { tokens } = speech;
  const words = tokens.map((token) => plainWord(token.word));
  const firstEnd = Math.floor(tokens.length * firstShare);
  const lastFirst = Math.ceil(tokens.length * lastShare);
  const first = termsOf(words, 0, firstEnd);
  const middle = termsOf(words, firstEnd, lastFirst);
  const found: NamedPart[] = [];
  for (let position = lastFirst; position < words.length; position += 1) {
    const pair = pairAt(words, position, words.length);
    const word = wordAt(words, position);
    if (pair && first.has(pair) && !middle.has(pair)) {
      found.push({
        first: position,
        end: position + 2,
        zones: { closing: isNumber(pair) ? weights.numbers : weights.pair },
        reason: "said at the start",
      });
      position += 1;
    } else if (word && first.has(word) && !middle.has(word))
      found.push({ first: position, end: position + 1, zones: { closing: weights.word }, reason: "said at the start" });
  }
  return found;
}

function termsOf(words: readonly string[], first: number, end: number): ReadonlySet<string> {
  const terms = new Set<string>();
  for (let position = first; position < end; position += 1) {
    const word = wordAt(words, position);
    const pair = pairAt(words, position, end);
    if (word) terms.add(word);
    if (pair) terms.add(pair);
  }
  return terms;
}

/** A word that can be a name: "Wanderer", "1965". */
function wordAt(words: readonly string[], position: number): string | null {
  const word = words[position] ?? "";
  return word.length >= fewestLetters && !commonWords.has(word) && !isVehicleWord(word) ? word : null;
}

/** Mileage and price alike are said at the start and again elsewhere. */
const isNumber = (pair: string) => pair.split(" ").every((word) => /\d/.test(word) || spokenNumber.test(word));
const spokenNumber = /^(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|.+teen|.+ty|hundred|thousand|oh)$/;

const numberWords: ReadonlySet<string> = new Set("one two three four five six seven eight nine ten".split(" "));

/** Two words of which each is a name or a number, as prices are said. */
function pairAt(words: readonly string[], position: number, end: number): string | null {
  if (position + 1 >= end) return null;
  const [one, other] = [words[position] ?? "", words[position + 1] ?? ""];
  const counts = (word: string) => numberWords.has(word) || !commonWords.has(word);
  return counts(one) && counts(other) ? `${one} ${other}` : null;
}
