import type { CountedSpeech, CountFound, CountingRule } from "./count-found.ts";
import { namedBefore, wordsOf } from "./count-found.ts";

const numerals = ["one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"] as const;

/** Things that somebody points at and counts, and what a count of them is filed under. */
const pointedAt = [
  { component: "ignition", part: null, as: "spark plug" },
  { component: "wheel", part: "lug", as: "lug" },
  { component: "vehicle", part: "key", as: "key" },
  { component: "belts", part: null, as: "belt" },
  { component: "electrical", part: "battery", as: "cell" },
  { component: "suspension", part: "leaf spring", as: "leaf spring" },
  { component: "suspension", part: "spring", as: "leaf spring" },
] as const;

/** Fewer than three may be anything: "one, two" is a beat. */
const leastCounted = 3;
const namedWithin = 14;
/** The same where somebody says that they count: "springs again … you can count them from this end". */
const namedWithinWhereCounted = 40;

const onePerCylinder = /\b(?:plugs?|coils?|leads?|injectors?)\b/;

/** Words that set out to count; "and one, two, three" lifts something. */
const setsOut =
  /\b(?:that's|there's|count\w*|see|got|make it|makes|are|is|look|here's|we've|so|them|em|from (?:this|that|the other|the top|the bottom) ?(?:end|side)?|count (?:the|them|these|those)(?: \w+)?) ?\.?$/;

/** Runs "one two three …" without another word between. */
function runsOf({ speech }: CountedSpeech): { first: number; end: number; value: number }[] {
  const runs: { first: number; end: number; value: number }[] = [];
  for (let at = 0; at < speech.tokens.length; at++) {
    let value = 0;
    while (value < numerals.length && isNumeral(speech.tokens[at + value]?.word, value + 1)) value++;
    if (value < leastCounted) continue;
    runs.push({ first: at, end: at + value, value });
    at += value - 1;
  }
  return runs;
}

function isNumeral(word: string | undefined, value: number): boolean {
  return word === numerals[value - 1] || word === String(value);
}

export const countedAloud: CountingRule = {
  name: "counted aloud",
  find: (counted) =>
    runsOf(counted).flatMap(({ first, end, value }): CountFound[] => {
      if (!setsOut.test(wordsOf(counted.speech, first - 3, first))) return [];
      const within = /\bcount(?:ed|ing)?\b/.test(wordsOf(counted.speech, first - 9, first)) ? namedWithinWhereCounted : namedWithin;
      const named = namedBefore(counted, first, within, (mention) =>
        pointedAt.some(({ component, part }) => mention.component === component && (part === null || mention.part === part)),
      );
      // A single "plug" or "coil" is one for each cylinder only where the engine is in view.
      const underTheHood =
        counted.zoneAt(first) === "engine-bay" && onePerCylinder.test(wordsOf(counted.speech, first - namedWithin, first));
      const row = underTheHood
        ? pointedAt[0]
        : pointedAt.find(({ component, part }) => component === named?.component && (part === null || part === named.part));
      if (!row) return [];
      const from = underTheHood ? Math.max(0, first - 6) : (named?.first ?? first);
      return [{ component: row.component, part: row.as, value, circumstance: null, first: from, end, at: end - 1 }];
    }),
  examples: [
    {
      says: "look at that now the coils one on each plug so that's one two three four five and it goes across the back",
      zone: "engine-bay",
      gives: { component: "ignition", part: "spark plug", value: 5, circumstance: null },
    },
    {
      says: "Springs again, come over here and hold the light. You can count em from this end, one, two, three, four, five.",
      zone: "underside",
      gives: { component: "suspension", part: "leaf spring", value: 5, circumstance: null },
    },
    {
      says: "And the battery's down there under the cover. Count the caps. One, two, three, four, five, six.",
      zone: "engine-bay",
      gives: { component: "electrical", part: "cell", value: 6, circumstance: null },
    },
    {
      says: "The belts, let me see, one two three four five.",
      zone: "cabin",
      gives: { component: "belts", part: "belt", value: 5, circumstance: null },
    },
  ],
  quiet: [
    { says: "The springs are new, and she's a push start, one two three, off we go.", zone: "closing" },
    { says: "The plugs, and one two three, up she goes.", zone: "cargo" },
    { says: "One two three four, testing, this thing on?", zone: "opening" },
  ],
};
