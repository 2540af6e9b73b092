import {
  type AttributeName,
  attributeNames,
  type Claim,
  type ComparedMoment,
  claimSubject,
  componentLabel,
  type Input,
  type Output,
  positionLabel,
  valueLabel,
} from "../../shared-types/index.ts";
import type { Parts } from "./parts.ts";
import { findRecording } from "./recording-detail.ts";
import { type Choice, choicesOf, singulars } from "./search-query.ts";
import { keptSpelling } from "./search-spelling.ts";
import { type Background, claimAnswer, keptBackgrounds, withholding } from "./search-standing.ts";
import { wordsOf } from "./search-words.ts";

/** What a caller calls a property, beside its own name; "size" is said of anything that is measured across. */
const attributeWords: Readonly<Record<string, readonly AttributeName[]>> = {
  size: ["size", "diameter", "width", "displacement"],
  number: ["count"],
  many: ["count"],
  colour: ["color"],
  miles: ["mileage"],
  mileage: ["mileage"],
  cost: ["price"],
  horsepower: ["power"],
  bhp: ["power"],
  capacity: ["displacement", "size"],
  original: ["originality"],
};

const mostSubjects = 24;

/** Puts what was said of each vehicle about one claim side by side. */
export function claimComparison() {
  const backgroundsOf = keptBackgrounds();
  const spellingOf = keptSpelling();
  return (parts: Parts, { query, recordingIds }: Input<"search.compare">): Output<"search.compare"> => {
    const backgroundOf = backgroundsOf(parts);
    const ids = [...new Set(recordingIds)];
    const rows = ids.map((id) => findRecording(parts, id));
    const known = ids.map(backgroundOf);
    const vehicles = rows.map(({ id, title, stockNumber }) => ({ recordingId: id, recordingTitle: title, stockNumber }));
    for (const readAs of [null, ...spellingOf(parts.library.search).readings(query)]) {
      const subjects = subjectsOf(readAs ?? query, known);
      if (subjects.length > 0) return { readAs, vehicles, subjects };
    }
    return { readAs: null, vehicles, subjects: [] };
  };
}

function subjectsOf(query: string, known: readonly Background[]): Output<"search.compare">["subjects"] {
  const { choices, attributes } = askedOf(query);
  if (choices.length === 0 && attributes.size === 0) return [];
  const fits = (claim: Claim) =>
    (attributes.size === 0 || attributes.has(claim.attribute)) && choices.every((choice) => speaksOf(claim, choice));
  const found = known.map((background) => [...background.claims.values()].filter(fits));
  const names = new Map<string, number>();
  for (const claims of found) for (const name of new Set(claims.map(subjectOf))) names.set(name, (names.get(name) ?? 0) + 1);
  // What can be compared comes first: said of most vehicles, then with the fewest words beside those asked for.
  const ranked = [...names].toSorted(
    ([a, ofA], [b, ofB]) => ofB - ofA || wordsOf(a).length - wordsOf(b).length || a.localeCompare(b, "en"),
  );
  return ranked.slice(0, mostSubjects).map(([subject]) => ({
    subject,
    said: found.map((claims, at) =>
      momentsOf(
        claims.filter((claim) => subjectOf(claim) === subject),
        known[at] as Background,
      ),
    ),
  }));
}

/** The properties that a question names, and everything else that a claim must speak of. */
function askedOf(query: string): { choices: Choice[]; attributes: ReadonlySet<AttributeName> } {
  const named = (word: string): readonly AttributeName[] =>
    attributeWords[word] ?? attributeNames.filter((attribute) => attribute === word);
  const words = wordsOf(query).flatMap((word) => [word, ...singulars(word)]);
  const attributes = new Set(words.flatMap(named));
  // A word that is nothing but a property's name has done its work.
  const choices = choicesOf(query).filter(
    (choice) => !choice.some((phrase) => phrase.length === 1 && named(phrase[0] as string).length > 0),
  );
  return { choices, attributes };
}

/** Whether a claim's subject, not its words at large, has one of these wordings. */
function speaksOf({ component, part, position, attribute }: Claim, choice: Choice): boolean {
  const subject = ` ${wordsOf([positionLabel(position), componentLabel(component), part ?? "", attribute].join(" ")).join(" ")}`;
  return choice.some((phrase) => {
    const last = phrase.at(-1) ?? "";
    return [last, ...singulars(last)].some((form) => subject.includes(` ${[...phrase.slice(0, -1), form].join(" ")}`));
  });
}

/** What is compared: claims of one name stand in one row, whoever's vehicle it is. */
function subjectOf(claim: Claim): string {
  const told = claim.attribute !== "condition" && claim.circumstance !== null;
  return `${claimSubject(claim)}${told ? ` (${claim.circumstance})` : ""}`;
}

function momentsOf(claims: readonly Claim[], known: Background): ComparedMoment[] {
  const shown = new Set<string>();
  return claims
    .toSorted((a, b) => a.start - b.start)
    .flatMap((claim) => {
      // What a condition is judged as ("good") says less than its words.
      const value = claim.attribute === "condition" ? `“${claim.quote}”` : valueLabel(claim.value, claim.unit, claim.attribute);
      const place = `${claim.start} ${value}`;
      if (shown.has(place)) return [];
      shown.add(place);
      return {
        start: claim.start,
        end: claim.end,
        zone: claim.zone,
        value,
        quote: claim.quote,
        withheld: withholding(claim, known),
        conflictKey: known.conflictKeys.get(claim.id) ?? null,
        rightWords: known.rightWords.get(claim.id) ?? null,
        answer: claimAnswer(claim, known),
      };
    });
}
