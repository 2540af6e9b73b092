import { type CountedSpeech, type CountFound, type CountingRule, wordsOf } from "./count-found.ts";

const gearOrdinals = ["first", "second", "third", "fourth", "fifth", "sixth", "seventh"] as const;

/** Gears that every gearbox has say nothing of how many it has. */
const leastTelling = 3;

/** Words from one gear to the next, while the car gathers speed and the talk goes on. */
const wordsBetweenGears = 40;

/** Said of the last gear: there is none above it. */
const noneAbove =
  /^(?:\S+ ){0,10}?(?:that's (?:it|all|the lot|your lot|the last|as far|where it)|that is (?:it|all|the lot)|is (?:it|all)\b|(?:the )?last (?:one|hole|gear|of (?:them|em))|and (?:done|no more|no further)|no more gears|all (?:there is|it's got|it has|she's got|the gears|of them|of em)|end of (?:them|the gears|it)|nothing (?:above|after|past)|runs out of gears|top gear)/;

/** Words that put it into a gear. */
const intoGear =
  /\b(?:into|in to|up to|up into|in|to|find|finds|grab|grabs|hit|hits|got|get|gets|there's|snick|snicks|pop|drop|drops|click|clicks|slot|slots)(?: (?:it|her|him|the|that|your|my|nice|sweet|easy|and|down|up))*$/;

/** What else is counted so: owners, places, coats, Sundays. */
const notOfAGear =
  /^(?:owner|keeper|one|time|try|of|name|person|lady|coat|day|week|month|year|car|truck|door|row|seat|wheel|hand|home|stage|service|thing|page|place|cylinder|brake|light|generation|gen|battery|key|set|party|floor|house|street)\b/;

/** A gear praised or blamed for itself: there is one. */
const toldOfItself =
  /^(?:gear )?(?:is|'s|gets|feels) (?:\w+ )?(?:tall|long|short|an overdrive|overdrive|lazy|noisy|quiet|lovely|sweet|a cruising|geared)\b/;

interface GearNamed {
  readonly token: number;
  readonly gear: number;
}

function gearsNamed({ speech }: CountedSpeech): GearNamed[] {
  return speech.tokens.flatMap(({ word, index }) => {
    const gear = (gearOrdinals as readonly string[]).indexOf(word.replace(/'s$/, "")) + 1;
    if (gear === 0 || notOfAGear.test(wordsOf(speech, index + 1, index + 2))) return [];
    return [{ token: index, gear }];
  });
}

/** First, second, third … as they are gone through: runs that climb by one. */
function runsIn(named: readonly GearNamed[]): GearNamed[][] {
  const runs: GearNamed[][] = [];
  for (const gear of named) {
    const run = runs.at(-1);
    const last = run?.at(-1);
    if (run && last && gear.token - last.token <= wordsBetweenGears && gear.gear === last.gear + 1) run.push(gear);
    // "Third's beautiful" after "third": the same gear told of again.
    else if (run && last && gear.token - last.token <= wordsBetweenGears && gear.gear === last.gear) run[run.length - 1] = gear;
    else runs.push([gear]);
  }
  return runs;
}

/** Words about a gearbox near a gear that stands alone. */
const gearboxWords =
  /\b(?:gears?|shift\w*|clutch|box|gearbox|trans\w*|stick|lever|revs?|rpm|turning|cruis\w*|mile an hour|mph|highway|overdrive|pull\w*)\b/;

function countFrom(counted: CountedSpeech, run: readonly GearNamed[]): CountFound[] {
  const { speech } = counted;
  const last = run.at(-1)!;
  const found = (circumstance: string | null): CountFound[] => [
    {
      component: "transmission",
      part: "gears",
      value: last.gear,
      circumstance,
      first: Math.max(0, last.token - 3),
      end: Math.min(speech.tokens.length, last.token + (circumstance === null ? 6 : 1)),
      at: last.token,
    },
  ];
  const after = wordsOf(speech, last.token + 1, last.token + 16);
  if (run.length >= 3 && noneAbove.test(after)) return found(null);
  const before = wordsOf(speech, last.token - 6, last.token);
  const driving = counted.zoneAt(last.token) === "drive" || gearboxWords.test(wordsOf(speech, last.token - 14, last.token + 14));
  if (last.gear <= leastTelling) return [];
  const toldOf = intoGear.test(before) || toldOfItself.test(after);
  return run.length >= 3 || (driving && toldOf) ? found("at least") : [];
}

export const gearsRunThrough: CountingRule = {
  name: "gears run through",
  find: (counted) => runsIn(gearsNamed(counted)).flatMap((run) => countFrom(counted, run)),
  examples: [
    {
      says: "First's got a little whine, second, third, I'm yelling, third's beautiful, and fourth, and that's it, that's all the gears there are.",
      zone: "drive",
      gives: { component: "transmission", part: "gears", value: 4, circumstance: null },
    },
    {
      says: "first second she ain't no race car third and there's fourth up in the corner and that's the last hole it's got",
      zone: "drive",
      gives: { component: "transmission", part: "gears", value: 4, circumstance: null },
    },
    {
      says: "get out here past the gin and i'll drop her into fifth and look at that",
      zone: "drive",
      gives: { component: "transmission", part: "gears", value: 5, circumstance: "at least" },
    },
  ],
  quiet: [
    { says: "first second third and it pulls well in third", zone: "drive" },
    { says: "Fifth owner from new, he says.", zone: "documents" },
    { says: "There's a fifth wheel hitch in the bed.", zone: "cargo" },
    { says: "first thing, second thing, third thing", zone: "opening" },
  ],
};
