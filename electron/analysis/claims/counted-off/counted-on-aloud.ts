import { type CountedSpeech, type CountFound, type CountingRule, wordsOf } from "./count-found.ts";

const units = ["one", "two", "three", "four", "five", "six", "seven", "eight", "nine"] as const;
const tens: Readonly<Record<string, number>> = {
  twenty: 20,
  thirty: 30,
  forty: 40,
  fifty: 50,
  sixty: 60,
  seventy: 70,
  eighty: 80,
  ninety: 90,
};

/** Things that somebody runs a finger along and counts past a dozen, by the last of these words before the count. */
const runAlong = [
  { words: /\b(?:louvers?|louvres?|slots)\b/, component: "body", part: "louver" },
  { words: /\bspokes?\b/, component: "wheel", part: "spoke" },
  { words: /\b(?:snaps|fasteners|poppers)\b/, component: "top", part: "snap" },
  { words: /\bribs?\b/, component: "cargo-floor", part: "bead" },
  { words: /\b(?:teeth)\b/, component: "final-drive", part: "tooth" },
  { words: /\b(?:stamps)\b/, component: "title", part: "service stamp" },
  { words: /\b(?:slats|bars)\b/, component: "trim", part: "slat" },
] as const;

/** Words back to the name of what is counted. */
const namedWithin = 24;
/** Fewer numbers in a row may be a range or two figures ("twenty five twenty six"). */
const leastInARow = 3;

/** The number of two or one words that begins at a token, and how many words it has. */
function tensAt({ speech }: CountedSpeech, at: number): { value: number; length: number } | null {
  const word = speech.tokens[at]?.word ?? "";
  if (/^[2-9]\d$/.test(word)) return { value: Number(word), length: 1 };
  const ten = tens[word];
  if (ten === undefined) return null;
  const unit = units.indexOf((speech.tokens[at + 1]?.word ?? "") as (typeof units)[number]) + 1;
  return unit > 0 ? { value: ten + unit, length: 2 } : { value: ten, length: 1 };
}

export const countedOnAloud: CountingRule = {
  name: "counted on aloud",
  find: (counted) => {
    const found: CountFound[] = [];
    const { tokens } = counted.speech;
    for (let at = 0; at < tokens.length; at++) {
      const first = tensAt(counted, at);
      if (!first) continue;
      let end = at + first.length;
      let { value } = first;
      let inARow = 1;
      for (let next = tensAt(counted, end); next !== null && next.value === value + 1; next = tensAt(counted, end)) {
        value = next.value;
        end += next.length;
        inARow++;
      }
      if (inARow < leastInARow) continue;
      const before = wordsOf(counted.speech, at - namedWithin, at);
      const row = runAlong.findLast(({ words }) => words.test(before));
      if (row) found.push({ component: row.component, part: row.part, value, circumstance: null, first: at, end, at: end - 1 });
      at = end - 1;
    }
    return found;
  },
  examples: [
    {
      says: "i'm running my finger down these slots on this hood side twenty four twenty five twenty six how about that",
      zone: "engine-bay",
      gives: { component: "body", part: "louver", value: 26, circumstance: null },
    },
    {
      says: "Count the spokes with me, and so on, thirty four, thirty five, thirty six.",
      zone: "driver-side",
      gives: { component: "wheel", part: "spoke", value: 36, circumstance: null },
    },
  ],
  quiet: [
    { says: "The louvers are straight and it's a twenty five twenty six model.", zone: "front" },
    { says: "He's had it twenty four, twenty five, twenty six years.", zone: "documents" },
  ],
};
