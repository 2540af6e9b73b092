import { type CountedSpeech, type CountFound, type CountingRule, wordsOf } from "./count-found.ts";

const numerals = ["one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"] as const;

/** Fewer are no gearbox gone through. */
const fewestGears = 3;

/** Words that go through a gearbox: "up through the gears", "trans goes", "it shifts". */
const throughTheGears =
  /\b(?:gears|shifts?|shifting|changes|trans(?:mission)? (?:goes|runs)|box (?:goes|runs)|gearbox (?:goes|runs)|automatic (?:goes|runs)|up through (?:them|em))\b(?: (?:nice|nicely|easy|smooth|smoothly|here|too|like|so|it's|is|goes|fine|clean))*$/;

const numeralAt = ({ speech }: CountedSpeech, token: number): number => {
  const word = speech.tokens[token]?.word ?? "";
  const place = (numerals as readonly string[]).indexOf(word);
  return place >= 0 ? place + 1 : /^\d$/.test(word) ? Number(word) : 0;
};

function find(counted: CountedSpeech): CountFound[] {
  const { speech } = counted;
  const found: CountFound[] = [];
  for (let at = 0; at < speech.tokens.length; at++) {
    if (numeralAt(counted, at) !== 1) continue;
    let gear = 1;
    while (numeralAt(counted, at + gear) === gear + 1) gear++;
    const end = at + gear;
    if (gear >= fewestGears && throughTheGears.test(wordsOf(speech, at - 8, at)))
      found.push({ component: "transmission", part: "gears", value: gear, circumstance: null, first: at, end, at: end - 1 });
    at = end - 1;
  }
  return found;
}

export const gearsCountedAloud: CountingRule = {
  name: "gears counted aloud",
  find,
  examples: [
    {
      says: "fifty five psi idling trans goes one two three four five six nice firm not slamming",
      zone: "drive",
      gives: { component: "transmission", part: "gears", value: 6, circumstance: null },
    },
    {
      says: "up through the gears one two three four five and it pulls",
      zone: "drive",
      gives: { component: "transmission", part: "gears", value: 5, circumstance: null },
    },
  ],
  quiet: [
    { says: "one two three there they are under the dash", zone: "cabin" },
    { says: "it goes through the gears nicely, and the spare keys, one two three", zone: "drive" },
  ],
};
