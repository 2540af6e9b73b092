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

const numberWord =
  /^(?:'?\d[\d.,/]*(?:st|nd|rd|th|s)?|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|(?:thir|four|fif|six|seven|eigh|nine)teen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred|thousand|oh|half|quarter|couple|dozen)$/;

/** Word classes that phrase tables share. */
export const wordClasses = {
  be: ["is", "are", "was", "were", "'s", "'re", "be", "been", "being", "'m"],
  cop: ["is", "are", "was", "were", "'s", "'re"],
  det: ["a", "an", "the", "this", "that", "these", "those", "my", "his", "her", "our", "your", "their", "its"],
  pronoun: ["it", "that", "this", "they", "these", "those", "he", "she", "them", "one", "ones", "everything"],
  not: ["not", "n't", "never"],
  have: ["have", "has", "had", "'ve", "'s", "got"],
  replaced: ["replaced", "changed", "redone", "renewed", "swapped", "fitted", "done", "rebuilt", "put"],
  kin: [
    "brother",
    "sister",
    "cousin",
    "uncle",
    "aunt",
    "dad",
    "daddy",
    "mama",
    "mum",
    "mom",
    "father",
    "mother",
    "wife",
    "husband",
    "son",
    "daughter",
    "nephew",
    "niece",
    "neighbor",
    "neighbour",
    "buddy",
    "friend",
    "mate",
    "boss",
    "partner",
    "grandad",
    "grandpa",
    "granddad",
    "grandmother",
    "grandma",
  ],
  /** Where other vehicles stand. */
  lot: [
    "lot",
    "yard",
    "fence",
    "gate",
    "shed",
    "barn",
    "garage",
    "showroom",
    "forecourt",
    "driveway",
    "road",
    "street",
    "field",
    "building",
    "bay",
    "bays",
    "stall",
    "rows",
    "workshop",
    "compound",
    "internet",
    "marketplace",
    "auction",
    "auctions",
    "paper",
    "city",
    "town",
  ],
  someone: [
    "fella",
    "fellow",
    "guy",
    "man",
    "lady",
    "woman",
    "gentleman",
    "chap",
    "bloke",
    "lad",
    "kid",
    "customer",
    "boy",
    "girl",
    "neighbor",
    "neighbour",
  ],
  /** What one grade of a model is told apart by. */
  grade: [
    "sport",
    "sports",
    "sporty",
    "luxury",
    "deluxe",
    "standard",
    "base",
    "basic",
    "entry",
    "touring",
    "premium",
    "custom",
    "executive",
    "plain",
    "fancy",
    "posh",
    "fleet",
    "police",
    "export",
    "lower",
    "higher",
    "cheap",
    "cheaper",
    "cheapest",
    "dearer",
    "top",
    "lesser",
  ],
  color: [
    "red",
    "blue",
    "green",
    "black",
    "white",
    "gray",
    "silver",
    "gold",
    "yellow",
    "orange",
    "brown",
    "maroon",
    "burgundy",
    "cream",
    "tan",
    "beige",
    "bronze",
    "purple",
    "turquoise",
    "teal",
    "navy",
    "charcoal",
  ],
  vehicle: [
    "car",
    "truck",
    "van",
    "wagon",
    "coupe",
    "sedan",
    "convertible",
    "ragtop",
    "hardtop",
    "roadster",
    "pickup",
    "estate",
    "saloon",
    "hatch",
    "hatchback",
    "one",
    "fastback",
    "drophead",
    "tourer",
    "ute",
    "suv",
    "motor",
    "lorry",
    "rig",
  ],
} as const satisfies Record<string, readonly string[]>;

type Element =
  | { readonly kind: "words"; readonly words: ReadonlySet<string>; readonly numbers: boolean; readonly optional: boolean }
  | { readonly kind: "number"; readonly optional: boolean }
  | { readonly kind: "any" }
  | { readonly kind: "gap"; readonly most: number }
  | { readonly kind: "next-is-none-of"; readonly words: ReadonlySet<string>; readonly numbers: boolean }
  | { readonly kind: "before-is-none-of"; readonly words: ReadonlySet<string> }
  | { readonly kind: "end" }
  | { readonly kind: "not-end" };

function wordsOf(list: string): ReadonlySet<string> {
  const words = new Set<string>();
  for (const word of list.split("/")) {
    if (word.startsWith("<")) {
      const name = word.slice(1, -1);
      if (!(name in wordClasses)) throw new Error(`phrase table: no word class named "${name}"; add it to wordClasses`);
      for (const member of wordClasses[name as keyof typeof wordClasses]) words.add(member);
    } else words.add(word);
  }
  return words;
}

function elementOf(text: string): Element {
  if (text === "_") return { kind: "any" };
  if (text === "$") return { kind: "end" };
  if (text === "!$") return { kind: "not-end" };
  if (text === "#" || text === "#?") return { kind: "number", optional: text.endsWith("?") };
  if (text.startsWith("..")) return { kind: "gap", most: Number(text.slice(2)) };
  if (text.startsWith("!"))
    return { kind: "next-is-none-of", words: wordsOf(text.slice(1)), numbers: text.slice(1).split("/").includes("#") };
  if (text.startsWith("~")) return { kind: "before-is-none-of", words: wordsOf(text.slice(1)) };
  const optional = text.endsWith("?");
  const list = optional ? text.slice(0, -1) : text;
  return { kind: "words", words: wordsOf(list), numbers: list.split("/").includes("#"), optional };
}

export function isNumberWord(word: string): boolean {
  return numberWord.test(word);
}

/** Longest match of the elements from `at`; -1 where there is none. */
function matchFrom(
  units: readonly SpokenUnit[],
  start: number,
  at: number,
  commas: boolean,
  elements: readonly Element[],
  place: number,
): number {
  if (place === elements.length) return at;
  const element = elements[place]!;
  // Past the end of a sentence nothing more may be taken up.
  const closed = at > start && (units[at - 1]?.endsSentence ?? true);
  const unit = closed ? undefined : units[at];
  switch (element.kind) {
    case "end":
      return closed || !unit || units[at - 1]?.endsPhrase ? matchFrom(units, start, at, commas, elements, place + 1) : -1;
    case "not-end":
      return closed || !unit || units[at - 1]?.endsPhrase ? -1 : matchFrom(units, start, at, commas, elements, place + 1);
    case "next-is-none-of":
      return unit && (element.words.has(unit.word) || (element.numbers && isNumberWord(unit.word)))
        ? -1
        : matchFrom(units, start, at, commas, elements, place + 1);
    case "before-is-none-of": {
      const before = units[at - 1];
      return before && !before.endsSentence && element.words.has(before.word)
        ? -1
        : matchFrom(units, start, at, commas, elements, place + 1);
    }
    case "any":
      return unit ? matchFrom(units, start, at + 1, commas, elements, place + 1) : -1;
    case "gap": {
      // The shortest gap first: a phrase takes up no more than it must.
      for (let skipped = 0; skipped <= element.most; skipped++) {
        const found = matchFrom(units, start, at + skipped, commas, elements, place + 1);
        if (found >= 0) return found;
        if (closed || !units[at + skipped] || units[at + skipped]!.endsSentence) return -1;
      }
      return -1;
    }
    case "number":
    case "words": {
      // Two words of a name are not parted by a comma ("straight, six of us"); a gap or an optional word may be.
      const parted = !commas && at > start && place > 0 && isPlain(elements[place - 1]!) && units[at - 1]!.endsPhrase;
      const fits =
        unit &&
        !parted &&
        (element.kind === "number"
          ? isNumberWord(unit.word)
          : element.words.has(unit.word) || (element.numbers && isNumberWord(unit.word)));
      if (fits) {
        const found = matchFrom(units, start, at + 1, commas, elements, place + 1);
        if (found >= 0) return found;
      }
      return element.optional ? matchFrom(units, start, at, commas, elements, place + 1) : -1;
    }
  }
}

function isPlain(element: Element): boolean {
  return (element.kind === "words" || element.kind === "number") && !element.optional;
}

/** "its" is heard as "it's", two units, so a phrase with "its" among its words is kept in both spellings. */
function withItsOwn(text: string): readonly string[] {
  const elements = text.split(" ");
  const place = elements.findIndex((element) => !/^[!~]/.test(element) && element.replace("?", "").split("/").includes("its"));
  if (place < 0) return [text];
  const others = elements[place]!.split("/").filter((word) => word !== "its" && word !== "its?");
  const spelled = (replacement: string) => elements.map((element, at) => (at === place ? replacement : element)).join(" ");
  return [spelled("it 's"), ...(others.length > 0 ? withItsOwn(spelled(others.join("/"))) : [])];
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
    "there here been do does did what which who when where if as than then too very still new old good been only more"
  ).split(" "),
);

/** What it costs to look a phrase up by these words: everyday ones are met at every turn. */
const lookUpCost = (words: ReadonlySet<string>): number => [...words].reduce((sum, word) => sum + (everydayWords.has(word) ? 40 : 1), 0);

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
        const elements = text.split(" ").filter(Boolean).map(elementOf);
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
