import type { Speech } from "../../model.ts";
import type { PartMention } from "../lexicon/find-mentions.ts";
import { type Candidate, fits } from "./candidate.ts";
import type { Slot } from "./slot.ts";
import { countedByOne, countedParts, notBetween, plainAdjective } from "./slots/count-slots.ts";
import { type NumberSurroundings, phraseOf, type Topic } from "./surroundings.ts";

const countSlot = (mention: PartMention): Slot => ({
  name: "counted part",
  component: mention.component,
  part: mention.part,
  attribute: "count",
  unit: null,
  need: { kinds: ["integer"], units: [null], min: 1, max: countedParts[mention.component] ?? 0 },
  cues: [],
  carries: true,
  example: { heard: "four headlights", value: 4 },
});

const sizeBetween = /^(?:[a-z\d.]+ ){1,5}?(?:inch|millimeter|mm|mil|watt|volt|gallon|liter) /;
const wholeSize =
  /^(?:(?!and\b|the\b|in\b|on\b)[a-z\d.]+ |and a half ){1,5}?(?:inch|millimeter|mm|mil|watt|volt|gallon|liter)$|^(?:inch )?and a half$/;

/** A number right before the name of a part that comes in numbers ("four headlights", "three good sensors"). */
export function countedPart(speech: Speech, around: NumberSurroundings): Candidate | null {
  const { number } = around;
  // "A pair of twelve inch speakers": the size of the things lies between.
  const sized = /^# /.test(around.after) && sizeBetween.test(phraseOf(speech.tokens, number.end, number.end + 6));
  const furthest = sized ? 6 : 2;
  const next = around.topics.find(
    ({ mention }) => mention.first >= number.end && mention.first - number.end <= furthest && mention.first < around.clause.end,
  )?.mention;
  if (!next) return null;
  const lastWord = speech.tokens[next.end - 1]!.word;
  // "The drain plugs … all four plugs": the short name means what the long one named.
  const longer = around.topics.find(
    ({ mention }) =>
      mention.first < number.first &&
      mention.end - mention.first > 1 &&
      next.end - next.first === 1 &&
      speech.tokens[mention.end - 1]!.word === lastWord,
  )?.mention;
  const counted = longer ?? next;
  if ((counted.component === "vehicle" || counted.component === "dash") && counted.part === null) return null;
  const most = countedParts[counted.component];
  const between = phraseOf(speech.tokens, number.end, next.first);
  if (/^[a-z]\d/.test(around.said) || number.readings[0]!.unit !== null) return null;
  if (
    most === undefined ||
    (notBetween.test(between) && !(sized && sizeBetween.test(`${between} `) && wholeSize.test(between))) ||
    /[.,;?!]/.test(speech.tokens[number.end - 1]!.after)
  )
    return null;
  if (/\b(?:number|group|one of|each|per|first|last|this)$/.test(around.before)) return null;
  const slot = countSlot(counted);
  const reading = number.readings.find((candidate) => fits(candidate, slot.need));
  if (!reading) return null;
  if (reading.value === 1 && !countedByOne.has(counted.part ?? counted.component)) return null;
  // "two light", "four door" and their like are no counts of lights or doors: more than one takes a plural.
  if (lastWord === "duals") return null;
  // Stripes are counted as things: two black ones may lie on the road.
  if (counted.part === "stripe") return null;
  if (reading.value !== 1 && !/(?:(?<!')s|s'|heads|leaves)$/.test(lastWord)) return null;
  return {
    slot,
    reading,
    value: reading.value,
    topic: { mention: { ...counted, first: next.first, end: next.end }, cost: 0, reach: "clause" },
    score: 0.95,
  };
}

/** Words that may lie between a part and its count set off by commas ("belts, static ones, two"). */
const mostWordsBetween = 3;

/** "LED lamps, two, and …", "belts, static ones, two": the count set off by commas after its part. */
function namedJustBefore(speech: Speech, around: NumberSurroundings): Candidate | null {
  const { number } = around;
  const before = speech.tokens[number.first - 1];
  if (!before || !/^(?:,|.*\?)$/.test(before.after) || !/[.,;]/.test(speech.tokens[number.end - 1]!.after)) return null;
  const topic = around.topics.find(({ mention }) => {
    const lastWord = speech.tokens[mention.end - 1]!;
    const gap = number.first - mention.end;
    if (gap < 0 || gap > mostWordsBetween || !/(?<!')s$/.test(lastWord.word)) return false;
    return (
      gap === 0 ||
      (/\?/.test(before.after) && gap <= mostWordsBetween) ||
      (countedBeside.has(mention.component) && lastWord.after === "," && !/[.?!]/.test(before.after))
    );
  });
  if (
    !topic ||
    countedParts[topic.mention.component] === undefined ||
    (topic.mention.component === "vehicle" && topic.mention.part === null)
  )
    return null;
  return countOf(topic, around);
}

/** The number as a count of the part, or null where it has no reading that can be one. */
function countOf(topic: Topic, around: NumberSurroundings): Candidate | null {
  const slot = countSlot(topic.mention);
  const reading = around.number.readings.find((candidate) => fits(candidate, slot.need));
  return reading && reading.value !== 1 ? { slot, reading, value: reading.value, topic, score: 0.85 } : null;
}

/** "Headlamps, two big square ones", "the single headlights two rounds": the count and then its kind, right after the part. */
const kindOfThem =
  /^(?:(?!of\b|the\b|and\b|or\b|on\b|in\b|with\b|is\b|are\b|bad\b|good\b|new\b)\w+ ){0,3}(?:ones|rounds|squares|rectangulars|ovals)\b/;

/** "Two of them work": some of those there are, and not how many there are. */
const someOfThem =
  /^of (?:those|these|them) (?:work|works|worked|don't|doesn't|won't|are|is|was|were|have|has|had|got|gone|do|did|need|needs|leak|leaks|bent|broke|broken|missing|seized|loose|can|could|go|come|came|only|i|we|he|she|you)\b/;

/** Components whose plural a bare number right after counts; others are measured so ("tires six", "doors 120"). */
const countedBeside: ReadonlySet<string> = new Set(["lights", "belts", "seats", "electrical", "audio", "glass"]);

/** A count said after its part: "windows, there's four", "grease nipples … there's eleven of those", "exhaust's two of them". */
export function countedBefore(speech: Speech, around: NumberSurroundings): Candidate | null {
  const { number } = around;
  if (number.readings[0]!.unit !== null) return null;
  if (someOfThem.test(around.after)) return null;
  const ofThem =
    /^of (?:those|these|them)\b/.test(around.after) || (/ of$/.test(around.said) && /^(?:those|these|them)\b/.test(around.after));
  const setOff = namedJustBefore(speech, around);
  if (setOff) return setOff;
  if (kindOfThem.test(around.after)) {
    const kinds = around.topics.find(
      ({ mention }) =>
        number.first - mention.end >= 0 &&
        number.first - mention.end <= 1 &&
        countedBeside.has(mention.component) &&
        /(?<!')s$/.test(speech.tokens[mention.end - 1]!.word),
    );
    return kinds ? countOf(kinds, around) : null;
  }
  if (
    !/\b(?:there's|there is|there are|there's only|got|that's)$/.test(around.before) &&
    !ofThem &&
    !/(?:^|\s)\S+(?:'s)?$/.test(around.before)
  )
    return null;
  const closed =
    ofThem ||
    /^(?:of (?:those|these|them)|and they|all|\.|$|just|in all|total|altogether|on there)/.test(around.after) ||
    /[.,;]/.test(speech.tokens[number.end - 1]!.after);
  // "Fog lamps two and …", "LED lamps, two.": right after the plural it is their count.
  const beside =
    !/^(?:and (?:a|three|half)|to|by|point|inch|foot)\b/.test(around.after) &&
    (closed || /^(?:and|both|with|all)\b/.test(around.after)) &&
    around.topics.some(
      ({ mention }) =>
        mention.end === number.first && /s$/.test(speech.tokens[mention.end - 1]!.word) && countedBeside.has(mention.component),
    );
  if (!closed && !beside) return null;
  const reach = ofThem ? 22 : 7;
  const plural = ({ mention }: Topic): boolean => /(?<!')s$/.test(speech.tokens[mention.end - 1]!.word) && mention.end <= number.first;
  // "Side screens live behind the seat, two of them": what was named in the plural is counted before what was not.
  const topic = [...around.topics.filter(plural), ...around.topics.filter((each) => !plural(each))].find(
    ({ mention }) =>
      mention.end <= number.first &&
      number.first - mention.end <= reach &&
      (ofThem || mention.end > number.first - 7) &&
      // "A lap belt, two of them": named as one and counted at once.
      (/s$|'s$/.test(speech.tokens[mention.end - 1]!.word) || (ofThem && number.first - mention.end <= 3 && !around.before.endsWith(" ."))),
  );
  if (!topic || countedParts[topic.mention.component] === undefined) return null;
  if (
    !ofThem &&
    !beside &&
    !/\b(?:there's|there is|there are|got)$/.test(around.before) &&
    !/^(?:all together|altogether|in all|in total|total)\b/.test(around.after)
  )
    return null;
  return countOf(topic, around);
}

/** The adjective that sets a count apart ("two American owners"), or null. */
export function countAdjective(speech: Speech, numberEnd: number, partFirst: number): string | null {
  const words: string[] = [];
  for (let at = numberEnd; at < partFirst; at++) {
    const word = speech.tokens[at]!.word;
    if (!plainAdjective.test(word)) words.push(word);
  }
  return words.length > 0 ? words.join(" ") : null;
}
