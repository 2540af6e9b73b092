import { type Element, elementsOf, matchFrom, withItsOwn } from "./phrase-elements.ts";
import type { SpokenUnit } from "./spoken-units.ts";

/**
 * Phrase tables are written in a small notation, one blank between elements:
 *
 * - `steel`            that word
 * - `red/blue/#`       any of these words, or a number's
 * - `nice?`            the word may be left out
 * - `..3`              up to three words of any kind
 * - `_`                exactly one word of any kind
 * - `#`                a word of a number: digits, "twelve", "forty"
 * - `<be>`             a word of a class, see `wordClasses`
 * - `!not/no/#`        the next word is none of these (takes up no word)
 * - `~not/no`          the word before the phrase is none of these (takes up no word; first element only)
 * - `$`, `!$`          a clause ends here (punctuation, or the sentence's end), or does not
 *
 * A phrase never runs over the end of a sentence.
 */
export interface Phrase<Meaning> {
  readonly text: string;
  readonly meaning: Meaning;
}

/** A phrase found: unit range and token range, ends exclusive. */
export interface PhraseHit<Meaning> {
  readonly firstUnit: number;
  readonly endUnit: number;
  readonly first: number;
  readonly end: number;
  readonly phrase: Phrase<Meaning>;
}

interface CompiledPhrase<Meaning> {
  readonly phrase: Phrase<Meaning>;
  readonly elements: readonly Element[];
  /** Place in the table: hits at one unit come in this order. */
  readonly order: number;
  /** Units from the phrase's first to its anchor, least and most. */
  readonly least: number;
  readonly most: number;
}

/** Words that stand in nearly every sentence: a phrase is looked up by another of its words where it has one. Chosen for speed; no result depends on it. */
const everydayWords: ReadonlySet<string> = new Set(
  (
    "a an the this that these those it they them he she you i we one ones my his her our your their its is are was were 's 're 'm be been " +
    "being has have had 've got get gets n't not no never and or but so of in on at to for from with by up down out off all any some just " +
    "there here do does did what which who when where if as than then too very still new old good only more about back box two three four five " +
    "six eight hundred like car truck side front rear i 'd 'll put over little come came would can could go see right let says say said way"
  ).split(" "),
);

/** The commonest of all: articles, pronouns and joints. */
const commonestWords: ReadonlySet<string> = new Set("the a it 's and to of is in on that this i you they".split(" "));

/** What it costs to look a phrase up by these words, about how much oftener they are met than a word of the trade. */
const lookUpCost = (words: ReadonlySet<string>): number =>
  [...words].reduce((sum, word) => sum + (commonestWords.has(word) ? 150 : everydayWords.has(word) ? 40 : 1), 0);

interface Anchor {
  readonly words: ReadonlySet<string>;
  readonly least: number;
  readonly most: number;
}

/** Furthest an anchor may be from where its phrase begins, in units. */
const furthestAnchor = 16;

/** The words of which one must stand in any match, and how far from its beginning; null where a phrase has none. */
function anchorOf(elements: readonly Element[]): Anchor | null {
  let best: (Anchor & { readonly cost: number }) | null = null;
  let least = 0;
  let most = 0;
  for (const element of elements) {
    if (most > furthestAnchor) break;
    if (element.kind === "words" && !element.optional && !element.numbers) {
      const cost = lookUpCost(element.words) * (1 + (most - least) / 2);
      if (!best || cost < best.cost) best = { words: element.words, least, most, cost };
    }
    if (element.kind === "gap") most += element.most;
    else if (element.kind === "any" || element.kind === "words" || element.kind === "number") {
      most += 1;
      if (element.kind === "any" || !element.optional) least += 1;
    }
  }
  return best;
}

/** A table of phrases made ready: looked up by the rarest word each must hold, so that cost grows with the speech and hardly with the table. */
export class PhraseBook<Meaning> {
  readonly #byAnchor = new Map<string, CompiledPhrase<Meaning>[]>();
  readonly #anywhere: CompiledPhrase<Meaning>[] = [];

  readonly #commas: boolean;

  /** `commas: "may-part"` lets punctuation within a sentence stand between any two words of a phrase. */
  constructor(phrases: readonly Phrase<Meaning>[], { commas }: { readonly commas: "may-part" | "part-names" } = { commas: "may-part" }) {
    this.#commas = commas === "may-part";
    let order = 0;
    for (const phrase of phrases) {
      for (const text of withItsOwn(phrase.text)) {
        const elements = elementsOf(text);
        const anchor = anchorOf(elements);
        const compiled = { phrase, elements, order: order++, least: anchor?.least ?? 0, most: anchor?.most ?? 0 };
        if (!anchor) this.#anywhere.push(compiled);
        else
          for (const word of anchor.words) {
            const listed = this.#byAnchor.get(word);
            if (listed) listed.push(compiled);
            else this.#byAnchor.set(word, [compiled]);
          }
      }
    }
  }

  /** Every phrase at every place, in order of place, then of the table. */
  find(units: readonly SpokenUnit[]): PhraseHit<Meaning>[] {
    const found: { hit: PhraseHit<Meaning>; order: number }[] = [];
    const tryAt = (compiled: CompiledPhrase<Meaning>, at: number) => {
      const { phrase, elements, order } = compiled;
      const endUnit = matchFrom(units, at, at, this.#commas, elements, 0);
      if (endUnit > at)
        found.push({ hit: { firstUnit: at, endUnit, first: units[at]!.token, end: units[endUnit - 1]!.token + 1, phrase }, order });
    };
    for (let at = 0; at < units.length; at++) {
      for (const compiled of this.#anywhere) tryAt(compiled, at);
      for (const compiled of this.#byAnchor.get(units[at]!.word) ?? []) {
        for (let start = Math.max(0, at - compiled.most); start <= at - compiled.least; start++) tryAt(compiled, start);
      }
    }
    found.sort((one, other) => one.hit.firstUnit - other.hit.firstUnit || one.order - other.order);
    // Two words of one phrase's anchor may both lead to the same place.
    return found
      .filter(({ hit, order }, at) => order !== found[at - 1]?.order || hit.firstUnit !== found[at - 1]!.hit.firstUnit)
      .map(({ hit }) => hit);
  }
}
