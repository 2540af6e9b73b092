import SearchableMap from "minisearch/SearchableMap";
import type { IndexedWord } from "../library/search-vocabulary.ts";
import { singulars } from "./search-query.ts";
import { mistyped, questionWords, sameThings, wordsOf } from "./search-words.ts";

/** Words of the trade: a caller who types one means it, also where nobody spoke of it. */
const tradeWords: ReadonlySet<string> = new Set(sameThings.flatMap(({ words }) => words.flatMap((phrase) => wordsOf(phrase))));

/** A word in no more places than this may be a slip of the recognizer's, if a common word is near. */
const rarePlaces = 2;
const commonerBy = 10;
/** Readings tried for one question; the nearest come first. */
const mostReadings = 6;
const shortestForgiven = 4;
/** From this many letters on, the beginning of a word that is still being typed is forgiven too. */
const shortestBeginning = 5;

/** What the library's words allow to be told about a misspelled one. */
export interface Spelling {
  /** The question in other words, nearest first; empty where every word is found as typed. */
  readonly readings: (query: string) => string[];
}

interface Near {
  readonly word: string;
  readonly distance: number;
  readonly places: number;
}

/** Makes ready to forgive spelling, from the words that the index holds and the words of the trade. */
export function spellingOf(vocabulary: readonly IndexedWord[]): Spelling {
  const places = new Map(vocabulary.map(({ word, places: count }) => [word, count]));
  const words = new SearchableMap<number>();
  for (const word of tradeWords) words.set(word, places.get(word) ?? 0);
  for (const { word, places: count } of vocabulary) if (/^\p{L}{3,}$/u.test(word) && !questionWords.has(word)) words.set(word, count);
  const beginnings = new Map<number, SearchableMap<Near>>();

  /** The commonest word behind each beginning of this length. */
  const beginningsOf = (length: number): SearchableMap<Near> => {
    const known = beginnings.get(length);
    if (known) return known;
    const made = new SearchableMap<Near>();
    for (const [word, count] of words.entries()) {
      if (word.length <= length) continue;
      const beginning = word.slice(0, length);
      const rank = count + (tradeWords.has(word) ? commonerBy : 0);
      if (rank >= (made.get(beginning)?.places ?? -1)) made.set(beginning, { word, distance: 0, places: rank });
    }
    beginnings.set(length, made);
    return made;
  };

  const isFound = (word: string, last: boolean): boolean =>
    [word, ...singulars(word)].some((form) => words.has(form) || places.has(form)) || (last && words.atPrefix(word).size > 0);

  const near = (word: string, last: boolean): string[] => {
    const named = mistyped.get(word);
    const found: Near[] = named ? [{ word: named, distance: 0, places: 0 }] : [];
    for (const swap of swaps(word)) if (words.has(swap)) found.push({ word: swap, distance: 1, places: words.get(swap) ?? 0 });
    // A short word is near to too many others; its first letter is then nearly always right.
    const allowed = word.length <= 5 ? 1 : 2;
    for (const [other, [count, distance]] of words.fuzzyGet(word, allowed)) {
      if (distance === 0 || (word.length <= 5 && other[0] !== word[0])) continue;
      found.push({ word: other, distance, places: count });
    }
    if (last && word.length >= shortestBeginning) {
      for (const length of [word.length, word.length + 1]) {
        for (const [, [whole, distance]] of beginningsOf(length).fuzzyGet(word, 1)) found.push({ ...whole, distance });
      }
    }
    const ranked = found.toSorted(
      (a, b) => a.distance - b.distance || Number(tradeWords.has(b.word)) - Number(tradeWords.has(a.word)) || b.places - a.places,
    );
    return [...new Set(ranked.map((one) => one.word))].slice(0, 3);
  };

  const othersFor = (chunk: string, last: boolean): string[] => {
    const [word, ...more] = wordsOf(chunk);
    if (word === undefined || more.length > 0 || word.length < shortestForgiven || !/^\p{L}+$/u.test(word)) return [];
    if (questionWords.has(word) || tradeWords.has(word) || singulars(word).some((form) => tradeWords.has(form))) return [];
    if (!isFound(word, last)) return near(word, last);
    if (mistyped.has(word)) return near(word, false).slice(0, 1);
    const count = places.get(word);
    if (count === undefined || count > rarePlaces) return [];
    return near(word, false).filter((other) => (places.get(other) ?? 0) >= commonerBy * count);
  };

  return {
    readings: (query) => {
      const chunks = query.split(/\s+/).filter(Boolean);
      let readings: string[][] = [[]];
      let forgiven = false;
      for (const [at, chunk] of chunks.entries()) {
        const others = othersFor(chunk, at === chunks.length - 1);
        forgiven ||= others.length > 0;
        const choices = others.length > 0 ? others : [chunk];
        readings = readings.flatMap((before) => choices.map((choice) => [...before, choice])).slice(0, mostReadings);
      }
      return forgiven ? readings.map((reading) => reading.join(" ")) : [];
    },
  };
}

/** The word with each two neighbouring letters the other way round: "tyer" gives "tyre". */
function swaps(word: string): string[] {
  return Array.from({ length: word.length - 1 }, (_, at) => word.slice(0, at) + word[at + 1] + word[at] + word.slice(at + 2));
}

/** Keeps the last spelling made ready until the library is written to. */
export function keptSpelling(): (library: { readonly vocabulary: { stamp: () => string; all: () => IndexedWord[] } }) => Spelling {
  let kept: { readonly stamp: string; readonly spelling: Spelling } | undefined;
  return ({ vocabulary }) => {
    const stamp = vocabulary.stamp();
    if (kept?.stamp !== stamp) kept = { stamp, spelling: spellingOf(vocabulary.all()) };
    return kept.spelling;
  };
}
