import type { Candidate } from "./candidate.ts";
import { unitSpoken } from "./candidate.ts";
import type { EarlierMeasure } from "./carry-over.ts";
import type { NumberSurroundings } from "./surroundings.ts";

/** Tokens after a count within which it may be added up, rounded or owned to be more. */
const addsUpWithinTokens = 28;
/** Tokens after a length within which a tape confirms it. */
const tapesWithinTokens = 26;

const sumsUp = /\b(?:that's|that is|that makes|that'll make|which makes|makes|makes it|making)$/;
const altogether = /^(?:in all|all told|all together|altogether|in total|total|of them (?:in all|all told))\b/;
const oneMore = /\banother\b[^.#]{0,40}\bso (?:that's|you've|you have|you've got|we've|we've got|it's|there's|she's)(?: got| now)?$/;
const mightCall = /\b(?:call|make) (?:it|that|them)(?: about| maybe)?$/;

/** The bare number as a whole count, or undefined. */
function wholeCount(around: NumberSurroundings): { reading: Candidate["reading"]; value: number } | undefined {
  for (const reading of around.number.readings)
    if (reading.kind === "integer" && reading.unit === null && typeof reading.value === "number" && Number.isInteger(reading.value))
      return { reading, value: reading.value };
  return undefined;
}

/**
 * A count that adds up, or owns to one more: "eight stamps and two invoices, so that's ten in all", "same six boxes, that makes twelve",
 * "another pair of seats, so you've seven", "two keepers … you might call it three". Null where nothing was counted before.
 */
export function addedUp(recent: readonly EarlierMeasure[], around: NumberSurroundings): Candidate | null {
  const counts = recent.filter(
    ({ candidate, end, value }) =>
      candidate.slot.attribute === "count" && typeof value === "number" && around.number.first - end <= addsUpWithinTokens,
  );
  const last = counts.at(-1);
  const sum = wholeCount(around);
  if (!last || !sum || typeof last.value !== "number" || sum.value <= last.value) return null;
  const before = counts.at(-2);
  const ofTwo = typeof before?.value === "number" && before.value + last.value === sum.value;
  const twice = last.value * 2 === sum.value;
  // "That's two windows down": the number counts what follows it.
  if (/^(?!(?:is|was|this|has|us|plus|works|as)\b)[a-z]+s\b/.test(around.after) && !around.closed) return null;
  const adds =
    sumsUp.test(around.before) &&
    (ofTwo ||
      (twice && /\b(?:same|another|other|makes|make|making|more)\b/.test(around.before)) ||
      (altogether.test(around.after) && sum.value <= last.value * 3));
  // "Two in the doors and two behind the seat. Four.": a sentence, or a stretch between commas, of the sum alone.
  const alone =
    ofTwo &&
    around.clause.first === around.number.first &&
    around.clause.end === around.number.end &&
    around.closed &&
    before!.candidate.slot.component === last.candidate.slot.component;
  const more = oneMore.test(around.before) && around.number.first - last.end <= 6;
  const called =
    mightCall.test(around.before) && last.candidate.slot.component === "vehicle" && sum.value - last.value <= 2 && around.closed;
  if (!adds && !alone && !more && !called) return null;
  // The whole is filed under what was counted first: "eight stamps and two invoices".
  const whole = adds && ofTwo && !twice ? before! : last;
  return { ...whole.candidate, reading: sum.reading, value: sum.value, topic: null, score: 1.25 };
}

/** Lengths that a tape or a second look confirms without the unit. */
const tapes = /\b(?:tape|taped|measured|measures|ruler|stick)\b[^#]{0,40}\b(?:that's|it's|is|says|reads|and|at|still)$/;

/** "Nine foot from bulkhead to bumper, I put a tape on it, that's nine": the same figure in the same unit. */
export function tapedAgain(recent: readonly EarlierMeasure[], around: NumberSurroundings): Candidate | null {
  if (!tapes.test(around.before)) return null;
  for (const { candidate, value, unit, end } of recent.toReversed()) {
    if (unit !== "ft" && unit !== "in" && unit !== "mm") continue;
    if (around.number.first - end > tapesWithinTokens) continue;
    const reading = around.number.readings.find(
      (each) => each.unit === null && each.value === value && !unitSpoken({ ...each, unit }, around.said),
    );
    if (reading) return { ...candidate, reading: { ...reading, unit }, value, score: 1.1 };
  }
  return null;
}

/** How far a rounded mileage may be from the one read. */
const mostRounding = 0.02;

/** "138,600, call it one thirty nine": the reading rounded to thousands, as it is said in the trade. */
export function roundedTo(recent: readonly EarlierMeasure[], around: NumberSurroundings): Candidate | null {
  const last = recent.at(-1);
  if (last?.candidate.slot.attribute !== "mileage" || typeof last.value !== "number" || around.number.first - last.end > 5) return null;
  if (!/\b(?:call it|say|so call it|near as|or say|let's say|round it to|near enough)(?: about)?$/.test(around.before)) return null;
  for (const reading of around.number.readings) {
    if (reading.kind !== "integer" || reading.unit !== null || typeof reading.value !== "number") continue;
    const thousands = reading.value < 1000 ? reading.value * 1000 : reading.value;
    if (Math.abs(thousands - last.value) <= last.value * mostRounding) return { ...last.candidate, reading, value: thousands, score: 1.3 };
  }
  return null;
}
