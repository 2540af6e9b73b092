import type { Candidate } from "./candidate.ts";
import { startsAnotherPhrase, unitSpoken } from "./candidate.ts";
import type { EarlierMeasure } from "./carry-over.ts";
import type { NumberSurroundings, Topic } from "./surroundings.ts";

/** How a figure of one kind is told again, its unit left out, anywhere later in the walk ("front fender 109, front door 115"). */
interface ToldAgain {
  /** Slot attribute and component this holds for. */
  readonly component: string;
  readonly attribute: string;
  /** Components a word before or after the figure must name. */
  readonly about: readonly string[];
  /** Bounds of the bare figure, by the unit it was first told in (common practice). */
  readonly bounds: Readonly<Record<string, readonly [number, number]>>;
  /** Kinds of number that can be meant. */
  readonly kinds: readonly string[];
}

const toldAgain: readonly ToldAgain[] = [
  {
    component: "paint",
    attribute: "thickness",
    about: ["body", "paint"],
    bounds: { µm: [55, 2500], mil: [1.5, 60], mm: [0.05, 3] },
    kinds: ["integer", "decimal"],
  },
  {
    component: "tire",
    attribute: "depth",
    about: ["tire", "wheel"],
    bounds: { "32nds": [2, 16], mm: [1.5, 9.5] },
    kinds: ["integer", "decimal", "fraction"],
  },
  { component: "brakes", attribute: "thickness", about: ["brakes"], bounds: { mm: [2, 14] }, kinds: ["integer", "decimal", "fraction"] },
];

/** Words that may stand between the part and its figure. */
const between =
  /^(?:(?:is|it's|it|was|are|'s|says|reads|at|about|got|has|have|there|here|now|and|that|this|that's|one|ones|on|side|the|i|place|put|probe|meter|gauge|do|again|measure|measured|make|get|also|same|a|original|paint|factory|too|around|like|maybe|of|tread|inner|outer|as|well|whole|panel|find|found|read|showing|shows|show|down|to|still|up|bout|roughly|they're|he|she|we|side's|left|right|other|door|fender|quarter|wing)(?: |$))*$/;
/** What follows a figure that measures something else. */
const otherUnit =
  /^(?:inch|inches|foot|feet|percent|degrees|miles|pounds|psi|volts?|speed|doors?|bolts?|screws?|snaps?|clips?|holes?|coats?|lugs?|segments?|cylinder|point|years?|of (?:them|those|these)|owners?|keys?|times?|more|dollars|bucks|quid|grand|thousand|hundred|liter|gallon|kilo|hours?)\b/;

const farthest = 12;
/** A reading this much less likely than the first is not the figure meant. */
const mostDoubt = 0.3;

/** A figure whose part was named beside it and whose kind and unit were told before; null where nothing was. */
export function measuredBefore(
  latest: ReadonlyMap<string, EarlierMeasure>,
  around: NumberSurroundings,
  words: (first: number, end: number) => string,
): Candidate | null {
  const [likeliest] = around.number.readings;
  // "Twenty two five" is thousands of something.
  if (likeliest!.repaired && typeof likeliest!.value === "number" && likeliest!.value >= 4000) return null;
  if (likeliest!.unit !== null && unitSpoken(likeliest!, around.said)) return null;
  if (/^#/.test(around.after) || otherUnit.test(around.after) || startsAnotherPhrase(around.number.readings[0]!.value, around)) return null;
  for (const way of toldAgain) {
    const told = Object.keys(way.bounds).flatMap((unit) => latest.get(`${way.component} ${way.attribute} ${unit}`) ?? []);
    if (told.length === 0) continue;
    const topic = topicBeside(way, around, words) ?? topicKept(way, around, told);
    if (!topic) continue;
    for (const last of told.toSorted((a, b) => b.end - a.end)) {
      const [least, most] = way.bounds[last.unit!]!;
      for (const reading of around.number.readings) {
        if (reading.unit !== null || typeof reading.value !== "number" || !way.kinds.includes(reading.kind)) continue;
        if (reading.likelihood < likeliest!.likelihood - mostDoubt || likeliest!.kind === "year") continue;
        const times = typeof last.value === "number" ? reading.value / last.value : 1;
        if (times < 0.15 || times > (gaugeAgain.test(around.before) ? 7 : 4)) continue;
        // "five" between "4.6" and "5.1" is no reading of a gauge that shows tenths.
        if (
          reading.value < least ||
          reading.value > most ||
          (last.unit === "mil" && Number.isInteger(reading.value) && (reading.value < 3 || reading.value > 25))
        )
          continue;
        return { slot: last.candidate.slot, reading: { ...reading, unit: last.unit }, value: reading.value, topic, score: 0.74 };
      }
    }
  }
  return null;
}

function topicBeside(way: ToldAgain, around: NumberSurroundings, words: (first: number, end: number) => string): Topic | null {
  for (const topic of around.topics) {
    const { mention } = topic;
    if (!way.about.includes(mention.component)) continue;
    if (mention.end <= around.number.first && around.number.first - mention.end <= farthest) {
      if (between.test(words(mention.end, around.number.first))) return topic;
    } else if (mention.first >= around.number.end && mention.first - around.number.end <= 4) {
      if (/^(?:on|here on|at|over on)(?: the| this| that| your)?(?: \w+)?$/.test(words(around.number.end, mention.first))) return topic;
    }
  }
  return null;
}

/** Words that lead to another figure of the same gauge though its part was named further back ("I do it again, 310"). */
const gaugeAgain = /\b(?:again|it says|it reads|and says|reads|says|shows|showing|it's)(?: about| around)?$/;
const keptWithinTokens = 30;

function topicKept(way: ToldAgain, around: NumberSurroundings, told: readonly EarlierMeasure[]): Topic | null {
  const near = told.some(({ end }) => around.number.first - end <= keptWithinTokens);
  if (!near || !gaugeAgain.test(around.before) || way.component !== "paint") return null;
  return around.topics.find(({ mention }) => way.about.includes(mention.component) && mention.end <= around.number.first) ?? null;
}

/** Under which key `measuredBefore` finds a measure. */
export function keyOf({ candidate: { slot }, unit }: EarlierMeasure): string {
  return `${slot.component} ${slot.attribute} ${unit}`;
}
