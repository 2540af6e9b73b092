import type { SpokenUnit } from "../framing/spoken-units.ts";

const denials = new Set(["no", "not", "n't", "never", "without", "zero", "neither", "nor", "none", "nothing", "nobody", "hardly"]);
/** Words that may stand between a denial and what it denies. */
const between = new Set(
  "a an the any single of or been got have has had one ones ever even really sign signs evidence kind sort little tiny small big it do be is are see find seen found show shows on in no more bad major visible real actual hint trace trim longer spot speck bit shred sliver drop scrap whiff color to speak that this them old new factory much them what so ever him us come with include included fitted supplied specified put 's 've".split(
    " ",
  ),
);
const determiners = new Set(["the", "it", "this", "that", "they", "there", "he", "she", "i", "we", "you", "these"]);

const subjects = new Set(["those", "these", "they", "it", "that", "this", "there", "he", "she", "you", "we", "i"]);
const statesAfter = new Set(["is", "are", "was", "were", "'s", "'re", "has", "have", "had", "'ve", "'m", "got"]);

const limits = new Set([
  "major",
  "big",
  "bad",
  "serious",
  "significant",
  "structural",
  "heavy",
  "terrible",
  "real",
  "huge",
  "deep",
  "large",
  "horrible",
  "obvious",
]);
const nearly = new Set(["almost", "virtually", "practically", "nearly", "hardly", "barely", "basically"]);

/** Whether a denial leaves room for a little: "no major rust", "practically no rust". */
export function deniesInPart(units: readonly SpokenUnit[], denial: number, first: number): boolean {
  if (nearly.has(units[denial - 1]?.word ?? "") || (units[denial - 1]?.word === "to" && units[denial - 2]?.word === "next")) return true;
  for (let at = denial + 1; at < first; at++) if (limits.has(units[at]!.word)) return true;
  return false;
}

const conditionals = new Set(["would", "could", "should", "wo", "ca", "might"]);

/** What a denial must know of the words it may bear on. */
export interface Denied {
  /** Words of the same list ("no dings or scratches") that a denial passes through. */
  readonly listed: ReadonlySet<string>;
  /** Without punctuation nothing stops a denial: it bears on the very next words only. */
  readonly punctuated: boolean;
  /** Whether it is asked if something is there: "I wouldn't" says nothing about that. */
  readonly presence: boolean;
}

/** The unit of a denial that bears on the words at `first` ("no", "n't", "never", "without"); -1 where there is none. */
export function denialBefore(units: readonly SpokenUnit[], first: number, { listed: extra, punctuated, presence }: Denied): number {
  let unknown = 0;
  // "no *door* dings": one word that is not known may stand between.
  // "Nobody wants a rusty floor" tells nothing of this one's.
  // "None of the *glass* has been changed."
  const mostUnknown = (denial: string, at: number) => {
    if (denial === "nobody") return 0;
    if (denial === "none" && units[at + 1]?.word === "of" && /^(?:the|these|this|them|it)$/.test(units[at + 2]?.word ?? "")) return 1;
    return punctuated || (denial === "no" && !presence) ? 1 : 0;
  };
  for (let at = first - 1; at >= 0 && first - at <= 8; at--) {
    const unit = units[at]!;
    if (unit.endsSentence) return -1;
    // A comma closes the denial, except within a list: "no dings, scratches or chips".
    if (unit.endsPhrase && !extra.has(unit.word)) return -1;
    // "are not, those are off a truck": another statement begins between.
    if (subjects.has(unit.word) && statesAfter.has(units[at + 1]?.word ?? "")) return -1;
    if (denials.has(unit.word)) {
      const next = units[at + 1]?.word ?? "";
      // "No, the AC works": an answer, not a denial of what follows.
      if (unit.word === "no" && determiners.has(next)) return -1;
      if (unit.word === "not" && next === "only") return -1;
      if (unit.word === "n't" && presence && conditionals.has(units[at - 1]?.word ?? "")) return -1;
      return unknown > mostUnknown(unit.word, at) ? -1 : at;
    }
    if (between.has(unit.word) || extra.has(unit.word)) continue;
    if (++unknown > 1) return -1;
  }
  return -1;
}

const goneAfter = /^(?:gone|missing|delete|deleted|removed|absent)$/;
/** "never had one", "hasn't got one": how far after what was named, in units, and which words. */
const pronounReach = 7;

/**
 * Where words end that say what was just named is not there: "the radio is gone", "sunroof? none", "tow bar, never had one". -1 where none do.
 */
export function deniedAfter(units: readonly SpokenUnit[], end: number): number {
  for (let at = end; at < Math.min(units.length, end + 4); at++) {
    const unit = units[at]!;
    const next = units[at + 1]?.word ?? "";
    if (goneAfter.test(unit.word)) return at + 1;
    if (/^(?:taken|pulled|ripped|yanked|stripped)$/.test(unit.word) && /^(?:out|off)$/.test(next)) return at + 2;
    // "none of your automatic nonsense": of something else.
    if ((unit.word === "none" || unit.word === "nope") && next !== "of" && at <= end + 1) return at + 1;
    // "Exhaust brake, no.": an answer of its own.
    if (unit.word === "no" && at === end && units[at - 1]?.endsPhrase && (unit.endsPhrase || unit.endsSentence)) return at + 1;
    if (unit.word === "no" && /^(?:place|provision|socket|port|hole|mount|mounts)$/.test(next)) return at + 2;
    if (unit.word === "never" && /^(?:fitted|installed|specified|ordered|offered|included|added|there|on)$/.test(next)) return at + 2;
    // "The inverter's in the box, not here": it is somewhere else.
    const elsewhere = next === "here" && units.slice(end, at).some(({ word }) => /^(?:in|at|under|behind|by|over|on)$/.test(word));
    if (!elsewhere && (unit.word === "not" || unit.word === "n't") && /^(?:here|there|fitted|on|included|present|with)$/.test(next))
      return at + 2;
    if (unit.endsPhrase) break;
  }
  const later = butPronoun(units, end);
  return later >= 0 ? later : pronounDenied(units, end);
}

/** "I'd set the cruise for you but there isn't one": denied after a "but". */
function butPronoun(units: readonly SpokenUnit[], end: number): number {
  for (let at = end; at < Math.min(units.length, end + 6) && !units[at - 1]?.endsSentence; at++) {
    if (units[at]!.word !== "but" || !/^(?:there|it|this|she|we|they)$/.test(units[at + 1]?.word ?? "")) continue;
    return pronounDenied(units, at + 2);
  }
  return -1;
}

/** "never had one", "it hasn't got one", "there isn't one": the pronoun is what was named. */
function pronounDenied(units: readonly SpokenUnit[], end: number): number {
  for (let at = end; at < Math.min(units.length, end + 3); at++) {
    const unit = units[at]!;
    if (unit.word !== "never" && unit.word !== "n't" && unit.word !== "not" && unit.word !== "ai") continue;
    let verb = false;
    for (let next = at; next < Math.min(units.length, at + pronounReach); next++) {
      const { word, endsSentence } = units[next]!;
      if (/^(?:had|have|has|got|was|is|been|come|came)$/.test(word)) verb = true;
      // "never had one done": of something done, and not of the thing.
      if (
        verb &&
        /^(?:one|none|any)$/.test(word) &&
        !/^(?:of|done|fitted|that|with|go|fail|break|apart)$/.test(units[next + 1]?.word ?? "")
      )
        return next + 1;
      if (endsSentence) return -1;
      if (next > at && !/^(?:had|have|has|got|ever|even|been|come|came|with|is|was|there|it|one)$/.test(word)) break;
    }
  }
  return -1;
}
