import { positionNames, zoneLabels } from "../../shared-types/index.ts";
import { questionWords, sameThings, wordsOf } from "./search-words.ts";

/** Spoken and written words of one thing, each as a row of words. */
export type Choice = readonly (readonly string[])[];

const rows: readonly Choice[] = sameThings.map(({ words }) => words.map((phrase) => wordsOf(phrase)));

/**
 * A caller's question as choices: each must be found (in any of its wordings). Question words are left out, unless nothing else was asked.
 * "which ones have a spare tyre" gives [spare], [tire | tyre].
 */
export function choicesOf(query: string): Choice[] {
  const asked = query.split(/\s+/).flatMap(unitsOf);
  const choices: Choice[] = [];
  for (let at = 0; at < asked.length; ) {
    const row = longestRow(
      asked.map((unit) => unit.join(" ")),
      at,
    );
    if (row) {
      choices.push(row.choice);
      at += row.length;
    } else {
      const unit = asked[at] as readonly string[];
      if (unit.length > 1 || !questionWords.has(unit[0] as string)) choices.push([unit]);
      at += 1;
    }
  }
  return choices.length > 0 ? choices : asked.map((unit) => [unit]);
}

/** What is written together with a number in it stays together: "4.11" is one value, not a 4 and an 11. */
function unitsOf(chunk: string): (readonly string[])[] {
  const words = wordsOf(chunk);
  if (words.length === 0) return [];
  return words.length > 1 && /\d/.test(chunk) ? [words] : words.map((word) => [word]);
}

function longestRow(asked: readonly string[], at: number): { choice: Choice; length: number } | undefined {
  let best: { choice: Choice; length: number } | undefined;
  for (const choice of rows) {
    for (const phrase of choice) {
      if (phrase.length <= (best?.length ?? 0)) continue;
      if (phrase.every((word, offset) => sameWord(asked[at + offset], word))) best = { choice, length: phrase.length };
    }
  }
  return best;
}

function sameWord(asked: string | undefined, word: string): boolean {
  return asked !== undefined && (asked === word || singulars(asked).includes(word));
}

/** What a plural may be the plural of; the word itself is not among it. */
export function singulars(word: string): string[] {
  if (!/^\p{L}{3,}s$/u.test(word) || word.endsWith("ss")) return [];
  const cut = [word.slice(0, -1)];
  if (word.endsWith("ies")) cut.push(`${word.slice(0, -3)}y`);
  if (/(?:s|x|ch|sh)es$/.test(word)) cut.push(word.slice(0, -2));
  return cut;
}

/** Whether all that was asked must be found, or some of it. */
export type Broadness = "everything" | "something";

/** An FTS5 query for a question; null where there is nothing to ask, or where "something" is no broader than "everything". */
export function matchFor(query: string, broadness: Broadness): string | null {
  const choices = choicesOf(query).map(choiceMatch);
  if (broadness === "everything") return choices.length > 0 ? choices.join(" AND ") : null;
  return choices.length > 1 ? choices.join(" OR ") : null;
}

/** FTS5 queries for a question, the strictest first: everything asked, then as much of it as can be found. Empty for an empty question. */
export function matchesFor(query: string): string[] {
  return (["everything", "something"] as const).flatMap((broadness) => matchFor(query, broadness) ?? []);
}

function choiceMatch(choice: Choice): string {
  return `(${choice.flatMap((phrase) => wordings(phrase)).join(" OR ")})`;
}

/** Says where on a vehicle, so it names no vehicle, though a recording's title may have it too. */
const placeWords: ReadonlySet<string> = new Set([...Object.values(zoneLabels), ...positionNames].flatMap((label) => wordsOf(label)));

/**
 * FTS5 queries for a question that names a vehicle by a word ("does the AC work on the pickup"), everything asked first, then some of it:
 * the vehicle's words choose the recordings, and the others must stand in what was said there. Empty where no word names a vehicle, and
 * where nothing else is asked.
 * @param namesVehicle whether an FTS5 query finds a recording by its names.
 */
export function narrowedMatches(query: string, namesVehicle: (match: string) => boolean): { everything: string; something: string } | null {
  const choices = choicesOf(query);
  const inNames = (choice: Choice) => `{recording}: ${choiceMatch(choice)}`;
  const isPlace = (choice: Choice) => choice.some((phrase) => phrase.every((word) => placeWords.has(word)));
  const vehicle = choices.filter((choice) => !isPlace(choice) && namesVehicle(inNames(choice)));
  const rest = choices.filter((choice) => !vehicle.includes(choice)).map((choice) => `{said terms}: ${choiceMatch(choice)}`);
  if (vehicle.length === 0 || rest.length === 0) return null;
  const named = vehicle.map(inNames).join(" AND ");
  return { everything: `${named} AND ${rest.join(" AND ")}`, something: `${named} AND (${rest.join(" OR ")})` };
}

/**
 * The last word also as a beginning, so that a word finds while it is being typed; short numbers only whole, since "4" would
 * find every number that begins with it.
 */
function wordings(phrase: readonly string[]): string[] {
  const last = phrase.at(-1) ?? "";
  const beginning = /^\d{1,2}$/.test(last) || last.length < 2 || last === "ac" ? "" : "*";
  const forms = [last, ...singulars(last)].map((form) => [...phrase.slice(0, -1), form].join(" "));
  return forms.map((form) => `"${form.replaceAll('"', "")}"${beginning}`);
}
