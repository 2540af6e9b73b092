import type { ClaimValue } from "../../../../shared-types/index.ts";
import type { Reading, Speech } from "../../model.ts";
import type { PartMention } from "../lexicon/find-mentions.ts";
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
const vagueTopics = new Set(["vehicle", "title", "price", "odometer", "vin", "dash"]);

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

function cueScore(cue: SlotCue, around: NumberSurroundings): { score: number; topic: Topic | null } | null {
  if (cue.before && !cue.before.test(around.before)) return null;
  if (cue.after && !cue.after.test(around.after)) return null;
  if (cue.zones && !cue.zones.includes(around.zone)) return null;
  if (cue.unless?.test(`${nearWords(around.before, "before")} # ${around.said} # ${nearWords(around.after, "after")}`)) return null;
  if (!cue.about) return { score: cue.score, topic: null };
  const limit = reachOrder[cue.reach ?? "recent"];
  const topic = around.topics.find(
    (candidate) => reachOrder[candidate.reach] <= limit && cue.about!.some((about) => isAbout(candidate.mention, about)),
  );
  return topic ? { score: cue.score - topic.cost, topic } : null;
}

/** The words close enough to speak against a slot: six of its own sentence. */
function nearWords(words: string, side: "before" | "after"): string {
  const sentence = side === "before" ? words.slice(words.lastIndexOf(" . ") + 1) : words.split(/(?:^| )\. ?/)[0]!;
  const list = sentence.split(" ");
  return (side === "before" ? list.slice(-7) : list.slice(0, 6)).join(" ");
}

function candidateOf(slot: Slot, around: NumberSurroundings): Candidate | null {
  let bestReading: { reading: Reading; value: ClaimValue } | null = null;
  for (const reading of around.number.readings) {
    if (!fits(reading, slot.need)) continue;
    const value = slot.value ? slot.value(reading, around.said) : reading.value;
    if (value === undefined) continue;
    bestReading = { reading, value };
    break;
  }
  if (!bestReading) return null;
  let best: { score: number; topic: Topic | null } | null = null;
  for (const cue of slot.cues) {
    const found = cueScore(cue, around);
    if (found && (!best || found.score > best.score)) best = found;
  }
  if (!best) return null;
  const { reading, value } = bestReading;
  const topic = best.topic ?? topicFor(slot, around);
  if (slot.component === "topic" && !topic) return null;
  return { slot, reading, value, topic, score: best.score + 0.12 * reading.likelihood };
}

/** What a claim is about where the cue alone did not say. */
function topicFor(slot: Slot, around: NumberSurroundings): Topic | null {
  const { topics } = around;
  if (slot.component === "topic") return topics.find(({ mention }) => !vagueTopics.has(mention.component)) ?? null;
  return topics.find(({ mention, reach }) => mention.component === slot.component && reach !== "recent") ?? null;
}

const countSlot = (mention: PartMention): Slot => ({
  name: "counted part",
  component: mention.component,
  part: mention.part,
  attribute: "count",
  unit: null,
  need: { kinds: ["integer"], units: [null], min: 1, max: countedParts[mention.component] ?? 0 },
  cues: [],
  example: { heard: "four headlights", value: 4 },
});

/** A number right before the name of a part that comes in numbers ("four headlights", "three good sensors"). */
function countedPart(speech: Speech, around: NumberSurroundings): Candidate | null {
  const { number } = around;
  const next = around.topics.find(
    ({ mention }) => mention.first >= number.end && mention.first - number.end <= 2 && mention.first < around.clause.end,
  )?.mention;
  if (!next) return null;
  const most = countedParts[next.component];
  const between = phraseOf(speech.tokens, number.end, next.first);
  if (most === undefined || notBetween.test(between) || /[.,;?!]/.test(speech.tokens[number.end - 1]!.after)) return null;
  if (/\b(?:number|group|one of|each|per|first|last|this)$/.test(around.before)) return null;
  const slot = countSlot(next);
  const reading = number.readings.find((candidate) => fits(candidate, slot.need));
  if (!reading) return null;
  const lastWord = speech.tokens[next.end - 1]!.word;
  if (reading.value === 1 && !countedByOne.has(next.part ?? next.component)) return null;
  // "two light", "four door" and their like are no counts of lights or doors: more than one takes a plural.
  if (reading.value !== 1 && !/(?:s|s'|heads|leaves)$/.test(lastWord)) return null;
  return {
    slot,
    reading,
    value: reading.value,
    topic: { mention: next, cost: 0, reach: "clause" },
    score: 0.95 + 0.12 * reading.likelihood,
  };
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
  return found.sort((a, b) => b.score - a.score);
}

/** Tokens over which a second number may still continue the slot of the first. */
const carriesOverTokens = 32;

/**
 * A bare number that continues the slot of the last one ("28 pounds in the front and 26 in the back"): of the same order of size, said within
 * a breath or two, and hung on by a place, a panel, or a "that's".
 */
export function continued(
  last: { candidate: Candidate; end: number; value: ClaimValue; unit: string | null },
  around: NumberSurroundings,
): Candidate | null {
  const { slot } = last.candidate;
  if (!slot.carries || around.number.first - last.end > carriesOverTokens) return null;
  for (const reading of around.number.readings) {
    if (typeof reading.value !== "number" || typeof last.value !== "number") continue;
    if (reading.unit !== null || !["integer", "decimal", "fraction", "measure", "ratio", "money"].includes(reading.kind)) continue;
    const ratio = reading.value / last.value;
    if (ratio < 0.4 || ratio > 2.5) continue;
    const value = slot.value ? slot.value({ ...reading, unit: slot.unit === "said" ? null : slot.unit }, around.said) : reading.value;
    if (value === undefined) continue;
    const placed =
      /^(?:\S+ ){0,2}?(?:on|in|at|for|up|out|front|rear|back|behind|ahead|hot|cold|each|left|again|here|there|down|or so|same|all|both|easy|when|running)\b/.test(
        around.after,
      );
    const led =
      /\b(?:and|one|ones|that's|it's|is|says|at|to|drops|about|other|rear|rears|back|front|fronts|door|fender|quarter|side|panel|hood|roof|trunk|tailgate|they're|are|had|same|another|called)(?: (?:a|about|at|is|says|it says|around|like|to|one|that's))*$/.test(
        around.before,
      );
    if (!placed && !led) return null;
    return {
      slot,
      reading: { ...reading, unit: null },
      value,
      topic: around.topics.find(({ mention, reach }) => mention.component === last.candidate.slot.component && reach !== "recent") ?? null,
      score: 0.5 + (placed ? 0.15 : 0) + (led ? 0.15 : 0) - 0.008 * (around.number.first - last.end),
    };
  }
  return null;
}
