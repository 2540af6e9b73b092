import type { ClaimValue, UnitName } from "../../../../shared-types/index.ts";
import type { Reading, Speech } from "../../model.ts";
import type { PartMention } from "../lexicon/find-mentions.ts";
import { type Candidate, fits, isAbout, leastScore, startsAnotherPhrase, supposed, unitSpoken } from "./candidate.ts";
import { countedBefore, countedPart } from "./counted-parts.ts";
import { countedThing, countedThingBefore } from "./counted-things.ts";
import { measureOfNearestPart } from "./nearest-part.ts";
import type { Slot, SlotCue } from "./slot.ts";
import { slots } from "./slots/index.ts";
import { type NumberSurroundings, phraseOf, type Topic } from "./surroundings.ts";

const reachOrder = { clause: 0, sentence: 1, recent: 2 } as const;
/** Components that say nothing about which part a date or price belongs to. */
const vagueTopics = new Set(["vehicle", "title", "price", "odometer", "vin"]);

const isVague = (mention: PartMention): boolean =>
  vagueTopics.has(mention.component) && (mention.component !== "vehicle" || mention.part === null);

/** A number's surroundings with what is spoken of within each reach, as cues name it: "engine", "engine/cylinder". */
interface Weighing extends NumberSurroundings {
  readonly aboutWithin: readonly ReadonlySet<string>[];
}

function weighing(around: NumberSurroundings): Weighing {
  const aboutWithin = Object.values(reachOrder).map(
    (limit) =>
      new Set(
        around.topics
          .filter(({ reach }) => reachOrder[reach] <= limit)
          .flatMap(({ mention: { component, part } }) => [component, `${component}/${part}`]),
      ),
  );
  return { ...around, aboutWithin };
}

function cueScore(cue: SlotCue, around: Weighing): { score: number; topic: Topic | null } | null {
  // What is cheap to ask comes first: most cues fail, and a long recording asks millions.
  if (cue.zones && !cue.zones.includes(around.zone)) return null;
  const limit = reachOrder[cue.reach ?? "recent"];
  if (cue.about && !cue.about.some((about) => around.aboutWithin[limit]!.has(about))) return null;
  if (cue.before && !cue.before.test(around.before)) return null;
  if (cue.after && !cue.after.test(around.after)) return null;
  if (cue.said && !cue.said.test(around.said)) return null;
  if (cue.guess && !guesses(around.number.readings, cue.guess)) return null;
  if (cue.unless?.test(around.near)) return null;
  if (!cue.about) return { score: cue.score, topic: null };
  const topic = around.topics.find(
    (candidate) =>
      reachOrder[candidate.reach] <= limit &&
      cue.about!.some((about) => isAbout(candidate.mention, about)) &&
      (cue.beside === undefined || standsBeside(cue.beside, candidate, around)),
  );
  return topic ? { score: cue.score - topic.cost, topic } : null;
}

/** True where the part is named within the words allowed, in the sentence of the number. */
function standsBeside(allowed: NonNullable<SlotCue["beside"]>, { mention, reach }: Topic, { number }: NumberSurroundings): boolean {
  if (reach === "recent") return false;
  return mention.end <= number.first
    ? number.first - mention.end <= (allowed.before ?? -1)
    : mention.first >= number.end && mention.first - number.end <= (allowed.after ?? -1);
}

/** A bare number of the same value may come a hair before the one that supposes a unit. */
const hair = 0.08;

function guesses(readings: readonly Reading[], unit: UnitName): boolean {
  const [first] = readings;
  const supposed = readings.find((reading) => reading.unit === unit);
  return (
    supposed !== undefined &&
    first !== undefined &&
    (supposed === first || (supposed.value === first.value && first.likelihood - supposed.likelihood <= hair))
  );
}

/** Small numbers are mostly no years of this century, unless the words say so. */
function isUnlikelyYear(reading: Reading, likeliest: Reading): boolean {
  if (reading.kind !== "year" || likeliest.kind !== "integer" || typeof likeliest.value !== "number") return false;
  return likeliest.likelihood - reading.likelihood > (likeliest.value <= 30 ? 0.15 : 0.45);
}

/** The slot with the reading that fits it; null where none does, or where it could not reach `floor`, the score to beat or equal. */
function candidateOf(speech: Speech, slot: Slot, around: Weighing, floor: number): Candidate | null {
  let bestReading: { reading: Reading; value: ClaimValue } | null = null;
  for (const reading of around.number.readings) {
    if (!fits(reading, slot.need)) continue;
    // "It's 12 now" may be a year, but hardly.
    if (reading.unit === "GBP" && !around.british && !/[£]|quid|sterling/.test(around.said)) continue;
    if (
      isUnlikelyYear(reading, around.number.readings[0]!) &&
      !(
        slot.attribute === "date" &&
        /\b(?:back in|in|since|(?:spring|summer|fall|autumn|winter) of|date (?:on|in) (?:it|the glass|the corner))$/.test(around.before)
      )
    )
      continue;
    // A far-fetched repair explains nothing that the plain reading does not.
    if (reading.repaired && reading.likelihood < leastRepair && reading !== around.number.readings[0]) continue;
    if (!(unitSpoken(reading, around.said) || supposed(reading))) continue;
    const value = slot.value ? slot.value(reading, around.said) : reading.value;
    if (value === undefined) continue;
    bestReading = { reading, value };
    break;
  }
  if (!bestReading) return null;
  if (slot.unless?.test(around.near)) return null;
  if (slot.attribute !== "count" && bestReading.reading.unit === null && startsAnotherPhrase(bestReading.value, around)) return null;
  let best: { score: number; topic: Topic | null; looksAhead: boolean } | null = null;
  const doubt = doubtCost * (bestReading.reading.likelihood - around.number.readings[0]!.likelihood);
  for (const cue of slot.cues) {
    if (cue.score + doubt < floor || (best && cue.score <= best.score)) continue;
    const found = cueScore(cue, around);
    if (found && (!best || found.score > best.score)) best = { ...found, looksAhead: cue.after !== undefined && cue.before === undefined };
  }
  if (!best) return null;
  const { reading, value } = bestReading;
  const found = best.topic ?? topicFor(speech, slot, around, best.looksAhead);
  const joined =
    slot.component === "topic" && slot.attribute !== "year" && best.topic && best.topic.mention.end <= around.number.first
      ? joinedTo(speech, best.topic, around.topics)
      : null;
  const topic = joined ?? found;
  if (slot.component === "topic" && !topic) return null;
  return { slot, reading, value, topic, score: best.score + doubt };
}

const leastRepair = 0.13;

/** Taken off for a reading less likely than the number's first, per unit of likelihood. */
const doubtCost = 0.4;

/** What a claim is about where the cue alone did not say. */
function topicFor(speech: Speech, slot: Slot, around: NumberSurroundings, looksAhead: boolean): Topic | null {
  const { topics } = around;
  const ahead =
    looksAhead && slot.component === "topic" && slot.attribute === "date"
      ? topics.find(({ mention }) => mention.first >= around.number.end && !isVague(mention))
      : undefined;
  if (ahead) return ahead;
  if (slot.component === "topic") {
    // Work told before its number is about what was named before it ("injectors were done at 210,000 water pump at …").
    const told = looksAhead
      ? undefined
      : topics.find(({ mention, cost }) => mention.end <= around.number.first && cost < 0.35 && !isVague(mention));
    const paid = slot.attribute === "price" && told === undefined ? workPaidFor(speech, around) : undefined;
    return (
      (slot.attribute === "year" ? null : joinedTo(speech, told, topics)) ??
      told ??
      paid ??
      topics.find(({ mention }) => !isVague(mention)) ??
      null
    );
  }
  // "Look at this front tire. It's got nine on it": a pronoun reaches over the sentence's end.
  const reachesBack = pronounBefore.test(around.before) || /\bwhat(?:'s| does) (?:that|this|it|she|he) say \.$/.test(around.before);
  return (
    topics.find(
      ({ mention, reach, cost }) => mention.component === slot.component && (reach !== "recent" || (reachesBack && cost < 0.7)),
    ) ?? null
  );
}

/** How far back the work may be named that a sum paid for. */
const paidCost = 0.55;

/** "Gears installed, he paid twelve hundred dollars. The frame …": what was paid for was told before; "paid 1,200 for the frame" names it after. */
function workPaidFor(speech: Speech, { before, number, topics }: NumberSurroundings): Topic | undefined {
  if (!/\b(?:paid|charged|spent|cost (?:me|him|her|us|them)|came to|was|is)(?: about| around| like)?$/.test(before)) return undefined;
  const ahead = topics.find(({ mention }) => mention.first >= number.end);
  if (ahead && /\b(?:for|on|to|of)\b/.test(phraseOf(speech.tokens, number.end, ahead.mention.first))) return undefined;
  return topics.find(({ mention, cost }) => mention.end <= number.first && cost < paidCost && !isVague(mention));
}

/** Words between the parts of one job: "the timing belt and the water pump were done at 89,000" is the belt's, told first. */
const alongWith = 4;

/** The part named first where the one told of was only joined to it by "and". */
function joinedTo(speech: Speech, told: Topic | undefined, topics: readonly Topic[]): Topic | null {
  if (!told) return null;
  const first = topics.find(
    ({ mention }) =>
      mention.end < told.mention.first &&
      told.mention.first - mention.end <= alongWith &&
      !isVague(mention) &&
      // "It's got the speckle paint. And the pump for the roof …": a full stop parts two things.
      !/[.?!]/.test(speech.tokens[mention.end - 1]!.after) &&
      /^(?:(?:supply|supplied|repair|repaired|prep|fit|weld|fill|strip|straighten|straightened|blend|rub down)? ?and|with|plus)(?: the| a| an| its| new)*$/.test(
        phraseOf(speech.tokens, mention.end, told.mention.first),
      ),
  );
  return first ?? null;
}

const pronounBefore =
  /(?:^|[ .])(?:it's|it|they're|they|that one's|this one's|one's|that one|this one|these|those|she's|there's)\b[^.#]{0,30}$/;

interface OpenSlot {
  readonly slot: Slot;
  /** Place in the table: of two that fit alike, the earlier stands. */
  readonly order: number;
  /** The best score that any of its cues can give. */
  readonly most: number;
}

/** Slots by the units and kinds of a number's readings, as they come up: far fewer than numbers. */
const slotsByReadings = new Map<string, readonly OpenSlot[]>();

const openSlots: readonly OpenSlot[] = slots.map((slot, order) => ({
  slot,
  order,
  most: Math.max(...slot.cues.map((cue) => cue.score)),
}));

/** Slots that take at least one of the readings by unit and kind, those that may score highest first. */
function slotsOpenTo(readings: readonly Reading[]): readonly OpenSlot[] {
  const shapes = new Set(readings.map(({ unit, kind }) => `${unit}/${kind}`));
  const key = [...shapes].sort().join(" ");
  let open = slotsByReadings.get(key);
  if (!open) {
    open = openSlots
      .filter(({ slot: { need } }) =>
        readings.some(({ unit, kind }) => need.units.includes(unit) && (need.kinds === undefined || need.kinds.includes(kind))),
      )
      .toSorted((a, b) => b.most - a.most);
    slotsByReadings.set(key, open);
  }
  return open;
}

/** The slot that a number fits best, by the table alone. Slots that cannot reach the best one found are not weighed. */
function bestSlot(speech: Speech, surroundings: NumberSurroundings): Candidate | null {
  const around = weighing(surroundings);
  let best: { candidate: Candidate; order: number } | null = null;
  for (const { slot, order, most } of slotsOpenTo(around.number.readings)) {
    if (best && most < best.candidate.score) break;
    const candidate = candidateOf(speech, slot, around, best?.candidate.score ?? Number.NEGATIVE_INFINITY);
    if (!candidate) continue;
    const beats = !best || candidate.score > best.candidate.score || (candidate.score === best.candidate.score && order < best.order);
    if (beats) best = { candidate, order };
  }
  return best?.candidate ?? null;
}

/** What a number fits best: a slot, or a thing that is counted. */
export function likeliestCandidate(speech: Speech, around: NumberSurroundings): Candidate | null {
  const found: Candidate[] = [];
  const slot = bestSlot(speech, around);
  if (slot) found.push(slot);
  const counted = countedPart(speech, around);
  if (counted) found.push(counted);
  const thing = countedThing(speech, around);
  if (thing) found.push(thing);
  const thingBefore = countedThingBefore(speech, around);
  if (thingBefore) found.push(thingBefore);
  const countedAfterwards = countedBefore(speech, around);
  if (countedAfterwards) found.push(countedAfterwards);
  if (!found.some(({ score }) => score >= leastScore)) {
    const nearest = measureOfNearestPart(around);
    if (nearest) found.push(nearest);
  }
  return found.sort((a, b) => b.score - a.score)[0] ?? null;
}
