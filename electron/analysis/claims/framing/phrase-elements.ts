import type { SpokenUnit } from "./spoken-units.ts";
import { wordClasses } from "./word-classes.ts";

const numberWord =
  /^(?:'?\d[\d.,/]*(?:st|nd|rd|th|s)?|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|(?:thir|four|fif|six|seven|eigh|nine)teen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred|thousand|oh|half|quarter|couple|dozen)$/;

export type Element =
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

/** One element of the notation. Throws on a word class that is not in `wordClasses`. */
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
export function matchFrom(
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

/** The elements of a phrase, in order. */
export const elementsOf = (text: string): readonly Element[] => text.split(" ").filter(Boolean).map(elementOf);

/** "its" is heard as "it's", two units, so a phrase with "its" among its words is kept in both spellings. */
export function withItsOwn(text: string): readonly string[] {
  const elements = text.split(" ");
  const place = elements.findIndex((element) => !/^[!~]/.test(element) && element.replace("?", "").split("/").includes("its"));
  if (place < 0) return [text];
  const others = elements[place]!.split("/").filter((word) => word !== "its" && word !== "its?");
  const spelled = (replacement: string) => elements.map((element, at) => (at === place ? replacement : element)).join(" ");
  return [spelled("it 's"), ...(others.length > 0 ? withItsOwn(spelled(others.join("/"))) : [])];
}
