import type { Speech } from "../../model.ts";
import { listedForm } from "../lexicon/find-mentions.ts";
import { type Candidate, fits } from "./candidate.ts";
import type { CountedThing } from "./counted-things/counted-thing.ts";
import { fittedThings } from "./counted-things/fitted-things.ts";
import { insideThings } from "./counted-things/inside-things.ts";
import { homeOfMark, marks } from "./counted-things/marks.ts";
import { mechanicalThings } from "./counted-things/mechanical-things.ts";
import { outsideThings } from "./counted-things/outside-things.ts";
import { structureThings } from "./counted-things/structure-things.ts";
import type { Slot } from "./slot.ts";
import { notBetween } from "./slots/count-slots.ts";
import { type NumberSurroundings, phraseOf } from "./surroundings.ts";

/** In order: the first row whose word and zone fit counts. */
export const countedThings: readonly CountedThing[] = [
  ...structureThings,
  ...outsideThings,
  ...fittedThings,
  ...mechanicalThings,
  ...insideThings,
];

/** Words of marks, by which a counted mark is put down to the part it is in. */
const markWords: ReadonlySet<string> = new Set(marks.flatMap(({ say }) => say));

/** A plural that names one kind: "four barrel", "three ear", "seven pin" are said in the singular. */
const saidInSingular: ReadonlySet<string> = new Set([
  "barrel",
  "ear",
  "eared",
  "pin",
  "piston",
  "pot",
  "stud",
  "lug",
  "bow",
  "led",
  "inertia reel",
  "lap",
  "berth",
  "usb",
  "isofix",
]);

/** Plurals without an s. */
const otherPlurals: ReadonlySet<string> = new Set(["teeth", "feet"]);

const thingsByWord: ReadonlyMap<string, readonly (CountedThing & { readonly words: readonly string[] })[]> = (() => {
  const byWord = new Map<string, (CountedThing & { readonly words: readonly string[] })[]>();
  for (const thing of countedThings as readonly CountedThing[]) {
    for (const phrase of thing.say) {
      const words = phrase.split(" ");
      byWord.set(words[0]!, [...(byWord.get(words[0]!) ?? []), { ...thing, words }]);
    }
  }
  for (const things of byWord.values()) things.sort((a, b) => b.words.length - a.words.length);
  return byWord;
})();

/** "Steel wheels, sixteen, five stud": the studs are counted by the number beside them. */
const anotherCount =
  /^(?:\d+|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|(?:thir|four|fif|six|seven|eigh|nine)teen|twenty|thirty|forty)$/;

/** Adjectives that may stand between a number and the thing counted. */
const mostAdjectives = 2;

/** A number right before the name of something that comes in numbers ("eleven snaps", "six lockable boxes"). */
export function countedThing(speech: Speech, around: NumberSurroundings): Candidate | null {
  const { number } = around;
  if (around.closed || number.readings[0]!.unit !== null || /^[a-z]\d/.test(around.said)) return null;
  if (/\b(?:number|group|one of|each|per|first|last|this)$/.test(around.before)) return null;
  const { tokens } = speech;
  for (let at = number.end; at <= number.end + mostAdjectives && at < tokens.length; at++) {
    if (
      at > number.end &&
      (notBetween.test(tokens[at - 1]!.word) || anotherCount.test(tokens[at - 1]!.word) || tokens[at - 1]!.after !== "")
    )
      return null;
    const first = tokens[at]!.word;
    const mark = countedMark(speech, around, at);
    if (mark) return mark;
    for (const thing of thingsByWord.get(listedForm(first)) ?? thingsByWord.get(first) ?? []) {
      const { words } = thing;
      if (thing.zones && !thing.zones.includes(around.zone)) continue;
      if (thing.unless?.test(around.near)) continue;
      if (!words.every((word, offset) => listedForm(tokens[at + offset]?.word ?? "") === word || tokens[at + offset]?.word === word))
        continue;
      const candidate = candidateOf(thing, around, tokens[at + words.length - 1]!.word, { first: at, end: at + words.length });
      if (candidate) return candidate;
    }
  }
  return null;
}

/** Parts of which a single mark is worth a claim. */
const singlesCounted: ReadonlySet<string> = new Set(["glass", "dash", "cargo-floor", "bumper", "body"]);

/** "Two chips in the windshield", "one scratch" of the boot floor just named: a mark counted as one of the part it is in. */
function countedMark(speech: Speech, around: NumberSurroundings, at: number): Candidate | null {
  const { tokens } = speech;
  for (const words of [2, 1]) {
    const said = tokens.slice(at, at + words).map(({ word }) => word);
    const name = [...said.slice(0, -1), listedForm(said.at(-1) ?? "")].join(" ");
    if (said.length < words || !markWords.has(name)) continue;
    const thing: CountedThing | undefined = marks.find(
      (row: CountedThing) => row.say.includes(name) && row.zones?.includes(around.zone) && !row.unless?.test(around.near),
    );
    const range = { first: at, end: at + words };
    const home = thing && homeOfMark(speech, around, range);
    // A ding in a door is the body's, as every ding is that names no other part.
    if (!thing || !home || (home.component === "body" && around.zone !== "cargo")) continue;
    // Where the load space is filmed, its floor is the floor.
    const component =
      around.zone === "cargo" && (home.component === "floors" || home.component === "body") ? "cargo-floor" : home.component;
    const marked = { ...thing, component, part: home.part ?? thing.part, words: said, overLexicon: true };
    const found = candidateOf(marked, around, said.at(-1)!, range);
    // A single stain in the headliner is talk; a single crack in the dash is told to be counted.
    if (found?.value === 1 && !singlesCounted.has(component)) continue;
    if (found) return { ...found, topic: { mention: { ...home, component }, cost: 0, reach: "clause" } };
  }
  return null;
}

/** Words between a thing named in the plural and its count: "aux switches, there's six", "dents, I count two". */
const linkToCount = /^(?:in|fitted|there's|there is|there are|there's only|we've got|you've got|it's got|i count|we have|you get)$/;
/** What follows a count said right after its thing: not the noun of another one. */
const countDone = /^(?:$|\.|from|of (?:them|those|these)|in (?:all|total|here|it)|all\b|and\b|that\b|where\b|both\b|altogether|total)/;
/** Words in a thing's name at most, for the names said before their count. */
const longestName = 3;
/** Words in a link at most. */
const longestLink = 3;

/** "Dents, two from a skid", "aux switches there's six": the count after the thing it counts. Null where another noun follows. */
export function countedThingBefore(speech: Speech, around: NumberSurroundings): Candidate | null {
  const { number } = around;
  if (number.readings[0]!.unit !== null || /^[a-z]\d/.test(around.said)) return null;
  const { tokens } = speech;
  for (let link = 0; link <= longestLink; link++) {
    const end = number.first - link;
    const between = phraseOf(tokens, end, number.first);
    if (link > 0 && !linkToCount.test(between)) continue;
    if (link === 0 && !countDone.test(around.after)) continue;
    if (link > 0 && followedByAnother(speech, around)) continue;
    if (end < 1 || /[.?!]/.test(tokens[end - 1]!.after) || tokens[end - 1]!.word.includes("'")) continue;
    // The longer name first: an "aux switch" is no switch of the dash.
    for (let first = Math.max(0, end - longestName); first < end; first++) {
      const word = tokens[first]!.word;
      for (const thing of thingsByWord.get(listedForm(word)) ?? thingsByWord.get(word) ?? []) {
        if (thing.words.length !== end - first) continue;
        if (thing.zones && !thing.zones.includes(around.zone)) continue;
        if (thing.unless?.test(around.near)) continue;
        if (
          !thing.words.every((each, offset) => listedForm(tokens[first + offset]!.word) === each || tokens[first + offset]!.word === each)
        )
          continue;
        const candidate = candidateOf(thing, around, tokens[end - 1]!.word, { first, end });
        if (candidate && candidate.value !== 1) return candidate;
      }
    }
  }
  return null;
}

/** Units and the nouns of compounds ("six speed", "four door"), after which nothing was counted before. */
const unitNext =
  /^(?:inch|foot|feet|mile|year|hundred|thousand|percent|degree|speed|barrel|cylinder|door|owner|row|ply|wire|pin|way|piece|stage|point|volt|amp|bolt|lug|spoke|quarter|half|dollar|pound|gallon|liter|mil|mm|psi|grand|quid)$/;

/** True where a noun that the number would rather count, or a unit, stands right after it. */
function followedByAnother({ tokens }: Speech, { number, after, topics }: NumberSurroundings): boolean {
  if (tokens[number.end - 1]!.after !== "") return false;
  const next = tokens[number.end]?.word ?? "";
  return (
    unitNext.test(next) ||
    (/(?<!')s$/.test(next) && !/^(?:is|was|this|has|us|plus|works)$/.test(next)) ||
    /^(?:or|point|to|by|and a)\b/.test(after) ||
    topics.some(({ mention }) => mention.first === number.end && /s$/.test(tokens[mention.end - 1]!.word))
  );
}

function candidateOf(
  thing: CountedThing & { readonly words: readonly string[] },
  around: NumberSurroundings,
  lastWord: string,
  range: { readonly first: number; readonly end: number },
): Candidate | null {
  const slot: Slot = {
    name: "counted thing",
    component: thing.component,
    part: thing.part,
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: thing.least ?? 1, max: thing.most },
    cues: [],
    carries: true,
    example: thing.example,
    ...(thing.position ? { position: thing.position } : {}),
  };
  const reading = around.number.readings.find((each) => fits(each, slot.need));
  if (!reading) return null;
  const singular = saidInSingular.has(thing.words.join(" "));
  if (reading.value === 1 ? !thing.one || /s$/.test(lastWord) : !singular && !/s$/.test(lastWord) && !otherPlurals.has(lastWord))
    return null;
  const mention = { ...range, component: thing.component, part: thing.part, position: thing.position ?? null };
  return {
    slot,
    reading,
    value: reading.value,
    topic: { mention, cost: 0, reach: "clause" },
    score: thing.overLexicon ? 1.25 : thing.words.length > 1 ? 0.97 : 0.9,
  };
}
