import type { ClaimValue, ComponentName, UnitName } from "../../../../shared-types/index.ts";
import type { Reading, Speech } from "../../model.ts";
import type { PartMention } from "../lexicon/find-mentions.ts";
import { placedComponents } from "../positions/position-words.ts";
import type { About, ReadingNeed, Slot, SlotCue } from "./slot.ts";
import { countedByOne, countedParts, notBetween, plainAdjective } from "./slots/count-slots.ts";
import { slots } from "./slots/index.ts";
import { type NumberSurroundings, phraseOf, type Topic } from "./surroundings.ts";

/** A slot that a number fits, with the reading that fits it. */
export interface Candidate {
  readonly slot: Slot;
  readonly reading: Reading;
  readonly value: ClaimValue;
  readonly topic: Topic | null;
  readonly score: number;
}

/** Below this a number is left alone: it may be anything. */
export const leastScore = 0.42;

const reachOrder = { clause: 0, sentence: 1, recent: 2 } as const;
/** Components that say nothing about which part a date or price belongs to. */
const vagueTopics = new Set(["vehicle", "title", "price", "odometer", "vin"]);

const isVague = (mention: PartMention): boolean =>
  vagueTopics.has(mention.component) && (mention.component !== "vehicle" || mention.part === null);

function isAbout(mention: PartMention, about: About): boolean {
  const slash = about.indexOf("/");
  return slash < 0 ? mention.component === about : mention.component === about.slice(0, slash) && mention.part === about.slice(slash + 1);
}

function fits(reading: Reading, need: ReadingNeed): boolean {
  if (need.kinds && !need.kinds.includes(reading.kind)) return false;
  if (!need.units.includes(reading.unit)) return false;
  if (typeof reading.value !== "number") return true;
  return (need.min === undefined || reading.value >= need.min) && (need.max === undefined || reading.value <= need.max);
}

/** Said words that are number through and through: a reading with a unit then only supposes it. */
const numberWords =
  /^(?:'?[\d.,/]+(?:s|'s|th|st|nd|rd)?|a|an|and|the|of|point|oh|o|to|too|two|for|half|quarters?|eighths?|sixteenths?|thirds?|one|three|fours?|fives?|six(?:es)?|sevens?|eights?|nines?|tens?|elevens?|twelves?|(?:thir|four|fif|six|seven|eigh|nine)teens?|(?:twent|thirt|fort|fift|sixt|sevent|eight|ninet)(?:y|ies)|hundred|thousand|twos?|threes?|ones?)$/;

function unitSpoken(reading: Reading, said: string): boolean {
  if (reading.unit === null || /[$£€]/.test(said)) return true;
  return said.split(/[ -]/).some((word) => !numberWords.test(word));
}

/** Where a unit goes without saying: a sixteenth is of an inch. */
function supposed(reading: Reading): boolean {
  return reading.rule.includes("fraction") || reading.rule.includes("sixteenth");
}

function cueScore(cue: SlotCue, around: NumberSurroundings): { score: number; topic: Topic | null } | null {
  if (cue.before && !cue.before.test(around.before)) return null;
  if (cue.after && !cue.after.test(around.after)) return null;
  if (cue.said && !cue.said.test(around.said)) return null;
  if (cue.zones && !cue.zones.includes(around.zone)) return null;
  if (cue.unless?.test(around.near)) return null;
  if (!cue.about) return { score: cue.score, topic: null };
  const limit = reachOrder[cue.reach ?? "recent"];
  const topic = around.topics.find(
    (candidate) => reachOrder[candidate.reach] <= limit && cue.about!.some((about) => isAbout(candidate.mention, about)),
  );
  return topic ? { score: cue.score - topic.cost, topic } : null;
}

/** Small numbers are mostly no years of this century, unless the words say so. */
function isUnlikelyYear(reading: Reading, likeliest: Reading): boolean {
  if (reading.kind !== "year" || likeliest.kind !== "integer" || typeof likeliest.value !== "number") return false;
  return likeliest.likelihood - reading.likelihood > (likeliest.value <= 30 ? 0.15 : 0.45);
}

function candidateOf(slot: Slot, around: NumberSurroundings): Candidate | null {
  let bestReading: { reading: Reading; value: ClaimValue } | null = null;
  for (const reading of around.number.readings) {
    // "It's 12 now" may be a year, but hardly.
    if (reading.unit === "GBP" && !around.british && !/[£]|quid|sterling/.test(around.said)) continue;
    if (isUnlikelyYear(reading, around.number.readings[0]!)) continue;
    if (!fits(reading, slot.need) || !(unitSpoken(reading, around.said) || supposed(reading))) continue;
    const value = slot.value ? slot.value(reading, around.said) : reading.value;
    if (value === undefined) continue;
    bestReading = { reading, value };
    break;
  }
  if (!bestReading) return null;
  if (slot.unless?.test(around.near)) return null;
  if (slot.attribute !== "count" && bestReading.reading.unit === null && startsAnotherPhrase(bestReading.value, around)) return null;
  let best: { score: number; topic: Topic | null; looksAhead: boolean } | null = null;
  for (const cue of slot.cues) {
    const found = cueScore(cue, around);
    if (found && (!best || found.score > best.score)) best = { ...found, looksAhead: cue.after !== undefined && cue.before === undefined };
  }
  if (!best) return null;
  const { reading, value } = bestReading;
  const topic = best.topic ?? topicFor(slot, around, best.looksAhead);
  if (slot.component === "topic" && !topic) return null;
  return { slot, reading, value, topic, score: best.score + doubtCost * (reading.likelihood - around.number.readings[0]!.likelihood) };
}

/** Taken off for a reading less likely than the number's first, per unit of likelihood. */
const doubtCost = 0.4;

/** What a claim is about where the cue alone did not say. */
function topicFor(slot: Slot, around: NumberSurroundings, looksAhead: boolean): Topic | null {
  const { topics } = around;
  const ahead =
    looksAhead && slot.component === "topic" && slot.attribute === "date"
      ? topics.find(({ mention }) => mention.first >= around.number.end && !isVague(mention))
      : undefined;
  if (ahead) return ahead;
  if (slot.component === "topic") return topics.find(({ mention }) => !isVague(mention)) ?? null;
  // "Look at this front tire. It's got nine on it": a pronoun reaches over the sentence's end.
  const reachesBack = pronounBefore.test(around.before);
  return (
    topics.find(
      ({ mention, reach, cost }) => mention.component === slot.component && (reach !== "recent" || (reachesBack && cost < 0.7)),
    ) ?? null
  );
}

const pronounBefore =
  /(?:^|[ .])(?:it's|it|they're|they|that one's|this one's|one's|that one|this one|these|those|she's|there's)\b[^.#]{0,30}$/;

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

/** A number right before the name of a part that comes in numbers ("four headlights", "three good sensors"). */
function countedPart(speech: Speech, around: NumberSurroundings): Candidate | null {
  const { number } = around;
  const next = around.topics.find(
    ({ mention }) => mention.first >= number.end && mention.first - number.end <= 2 && mention.first < around.clause.end,
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
  const most = countedParts[counted.component];
  const between = phraseOf(speech.tokens, number.end, next.first);
  if (/^[a-z]\d/.test(around.said) || number.readings[0]!.unit !== null) return null;
  if (most === undefined || notBetween.test(between) || /[.,;?!]/.test(speech.tokens[number.end - 1]!.after)) return null;
  if (/\b(?:number|group|one of|each|per|first|last|this)$/.test(around.before)) return null;
  const slot = countSlot(counted);
  const reading = number.readings.find((candidate) => fits(candidate, slot.need));
  if (!reading) return null;
  if (reading.value === 1 && !countedByOne.has(counted.part ?? counted.component)) return null;
  // "two light", "four door" and their like are no counts of lights or doors: more than one takes a plural.
  if (lastWord === "duals") return null;
  if (reading.value !== 1 && !/(?:s|s'|heads|leaves)$/.test(lastWord)) return null;
  return {
    slot,
    reading,
    value: reading.value,
    topic: { mention: { ...counted, first: next.first, end: next.end }, cost: 0, reach: "clause" },
    score: 0.95,
  };
}

/** A count said after its part: "windows, there's four", "grease nipples … there's eleven of those", "exhaust's two of them". */
function countedBefore(speech: Speech, around: NumberSurroundings): Candidate | null {
  const { number } = around;
  const ofThem = /^of (?:those|these|them)\b/.test(around.after);
  if (
    !/\b(?:there's|there is|there are|there's only|got|that's)$/.test(around.before) &&
    !ofThem &&
    !/(?:^|\s)\S+(?:'s)?$/.test(around.before)
  )
    return null;
  const closed =
    /^(?:of (?:those|these|them)|and they|all|\.|$|just|in all|total|altogether|on there)/.test(around.after) ||
    /[.,;]/.test(speech.tokens[number.end - 1]!.after);
  if (!closed) return null;
  const reach = ofThem ? 22 : 7;
  const topic = around.topics.find(
    ({ mention }) =>
      mention.end <= number.first &&
      number.first - mention.end <= reach &&
      (ofThem || mention.end > number.first - 7) &&
      /s$|'s$/.test(speech.tokens[mention.end - 1]!.word),
  );
  if (!topic || countedParts[topic.mention.component] === undefined) return null;
  if (
    !ofThem &&
    !/\b(?:there's|there is|there are|got)$/.test(around.before) &&
    !/^(?:all together|altogether|in all|in total|total)\b/.test(around.after)
  )
    return null;
  const slot = countSlot(topic.mention);
  const reading = number.readings.find((candidate) => fits(candidate, slot.need));
  return reading && reading.value !== 1 ? { slot, reading, value: reading.value, topic, score: 0.85 } : null;
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

/** All slots a number fits, likeliest first. */
export function candidatesFor(speech: Speech, around: NumberSurroundings): Candidate[] {
  const found: Candidate[] = [];
  for (const slot of slots) {
    const candidate = candidateOf(slot, around);
    if (candidate) found.push(candidate);
  }
  const counted = countedPart(speech, around);
  if (counted) found.push(counted);
  const countedAfterwards = countedBefore(speech, around);
  if (countedAfterwards) found.push(countedAfterwards);
  return found.sort((a, b) => b.score - a.score);
}

/** A measure read before, which a later number may continue or repeat. */
export interface EarlierMeasure {
  readonly candidate: Candidate;
  /** Token after its number. */
  readonly end: number;
  readonly value: ClaimValue;
  readonly unit: UnitName | null;
}

/** Places that part a count. */
const countPlace =
  /^(?:\w+ )?(?:(?:up )?(?:on|in|at) (?:the )?(?:back|front|rear|deck|dash|doors?|top|bottom)|up (?:here|front)|back (?:here|there)|out back)\b/;

/** Words that make a number of their own with the one before ("three point belt", "four door", "two tone"). */
const beginsAnotherPhrase =
  /^(?:point|speed|door|way|ways|stage|piece|tone|owner|row|barrel|cylinder|leaf|bolt|lug|spoke|years?|hours?|months?|people|of us|cars?|trucks?)\b/;

/** True where a small number belongs to the noun that follows it and not to what was measured before. */
function startsAnotherPhrase(value: ClaimValue, around: NumberSurroundings): boolean {
  return typeof value === "number" && value <= 24 && !around.closed && beginsAnotherPhrase.test(around.after);
}

/** Tokens over which a second number may still continue the slot of the first. */
const carriesOverTokens = 45;
/** The same where the vehicle has but one of the thing, and a second figure is likelier about something else. */
const carriesOnTokens = 18;

/**
 * A bare number that continues the slot of the last one ("28 pounds in the front and 26 in the back"): of the same order of size, said within
 * a breath or two, and hung on by a place, a panel, or a "that's".
 */
export function continued(last: EarlierMeasure, around: NumberSurroundings): Candidate | null {
  const { slot } = last.candidate;
  if (
    !slot.carries ||
    around.number.first - last.end > (placedComponents.has(slot.component as ComponentName) ? carriesOverTokens : carriesOnTokens) ||
    beginsAnotherPhrase.test(around.after) ||
    slot.unless?.test(around.near)
  )
    return null;
  for (const reading of around.number.readings) {
    if (typeof reading.value !== "number" || typeof last.value !== "number") continue;
    if (reading.unit !== null || !["integer", "decimal", "fraction", "measure", "ratio", "money"].includes(reading.kind)) continue;
    const ratio = reading.value / last.value;
    // The parts of a count are smaller than it ("six speakers … the two up on the back deck").
    if (slot.attribute === "count" ? ratio >= 1 : ratio < 0.4 || ratio > 2.5) continue;
    const value = slot.value ? slot.value({ ...reading, unit: slot.unit === "said" ? null : slot.unit }, around.said) : reading.value;
    if (value === undefined || (slot.need.min !== undefined && reading.value < slot.need.min && reading.value < 100)) continue;
    const placed =
      /^(?:\S+ ){0,2}?(?:on|in|at|for|up|out|front|rear|back|behind|ahead|hot|cold|each|left|again|here|there|down|or so|same|all|both|easy|when|running|now)\b/.test(
        around.after,
      );
    const led =
      /\b(?:and|one|ones|one's|(?:front|rear|back|driver|passenger|left|right|offside|nearside)(?:'s)?|that's|it's|is|says|at|to|drops|about|other|was|rear|rears|back|front|fronts|door|fender|quarter|side|panel|hood|roof|trunk|tailgate|they're|are|have|has|had|same|another|called)(?: (?:a|about|at|is|says|it says|around|like|to|one|that's))*$/.test(
        around.before,
      );
    if (slot.attribute === "count" ? reading.value === 1 || !countPlace.test(around.after) : !placed && !led) return null;
    return {
      slot,
      reading: { ...reading, unit: null },
      value,
      topic: around.topics.find(({ mention, reach }) => mention.component === last.candidate.slot.component && reach !== "recent") ?? null,
      score: 0.5 + (placed ? 0.15 : 0) + (led ? 0.15 : 0) - 0.005 * (around.number.first - last.end),
    };
  }
  return null;
}

/**
 * A measure named again by its value alone ("the nine inch", "the 650"): the same distinctive value and unit as one read before. Small whole
 * numbers are in everything and repeat nothing.
 */
export function repeated(saidBefore: (value: ClaimValue) => readonly EarlierMeasure[], around: NumberSurroundings): Candidate | null {
  const pointedAt = /\b(?:the|a|that|this|your|our|same|it's|automatic|with|so|okay|is|and|alright)(?: same| big| little)?$/.test(
    around.before,
  );
  if (!pointedAt && !/^(?:like i said|as i said|again)\b/.test(around.after) && around.zone !== "closing") return null;
  for (const reading of around.number.readings) {
    const distinctive =
      reading.unit !== null || (typeof reading.value === "number" && (reading.value >= 100 || !Number.isInteger(reading.value)));
    if (!distinctive || !unitSpoken(reading, around.said)) continue;
    const earlier = saidBefore(reading.value).findLast(
      ({ candidate: { slot }, unit }) =>
        repeatable.has(slot.attribute) &&
        slot.component !== "topic" &&
        (reading.unit === null || reading.unit === unit) &&
        !slot.unless?.test(around.near),
    );
    if (earlier) return { slot: earlier.candidate.slot, reading, value: reading.value, topic: null, score: 0.85 };
  }
  return null;
}

const repeatable: ReadonlySet<string> = new Set(["displacement", "flow", "ratio", "diameter", "size", "mileage", "price"]);

/** The number read as another measure of the same slot and topic, or null where it has no reading that fits. */
export function candidateIn(like: Candidate, around: NumberSurroundings): Candidate | null {
  const { slot } = like;
  for (const reading of around.number.readings) {
    if (!fits(reading, slot.need) || (reading.unit !== null && reading.unit !== like.reading.unit && !unitSpoken(reading, around.said)))
      continue;
    const value = slot.value ? slot.value(reading, around.said) : reading.value;
    if (value !== undefined) return { ...like, reading, value };
  }
  return null;
}
