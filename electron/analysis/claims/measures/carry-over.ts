import type { ClaimValue, ComponentName, UnitName, ZoneName } from "../../../../shared-types/index.ts";
import { placedComponents } from "../positions/position-words.ts";
import { type Candidate, fits, startsAnotherPhrase, unitSpoken } from "./candidate.ts";
import type { Slot } from "./slot.ts";
import type { NumberSurroundings } from "./surroundings.ts";

/** A measure read before, which a later number may continue or repeat. */
export interface EarlierMeasure {
  readonly candidate: Candidate;
  /** Token after its number. */
  readonly end: number;
  readonly value: ClaimValue;
  readonly unit: UnitName | null;
  readonly zone: ZoneName;
}

/** Places that part a count. */
const countPlace =
  /^(?:\w+ )?(?:(?:up )?(?:on|in|at) (?:the )?(?:left|right|near ?side|off ?side|driver'?s?|passenger'?s?|other|back|front|rear|deck|dash|doors?|top|bottom)|up (?:here|front)|back (?:here|there)|out back)\b/;

/** Things a number counts: it does not go on measuring what came before ("120 microns on the door … the tray has thirty four bolts"). */
const countedNext =
  /^(?:bolts?|screws?|rivets?|snaps?|clips?|holes?|coats?|lugs?|nuts?|studs?|segments?|doors?|seats?|keys?|owners?|spokes?|teeth|splines?|stamps?|pages?|drawers?|boards?|bars?|slats?|vanes?|helpers?)\b/;

/** A reading this much less likely than the first is no ground to go on from. */
const mostDoubt = 0.35;

/** How far apart two figures of a slot may be; paint may be several times as thick where it was mended. */
function leastRatio(slot: Slot): number {
  return slot.attribute === "thickness" ? 0.2 : 0.4;
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
    last.zone !== around.zone ||
    around.number.first - last.end > (placedComponents.has(slot.component as ComponentName) ? carriesOverTokens : carriesOnTokens) ||
    startsAnotherPhrase(around.number.readings[0]!.value, around) ||
    slot.unless?.test(around.near) ||
    (slot.attribute !== "count" && countedNext.test(around.after))
  )
    return null;
  // A part of another kind was named in between: the number is rather its ("there's your drum, it's nine and a half").
  if (
    slot.component !== "topic" &&
    around.topics.some(
      ({ mention }) =>
        mention.first >= last.end && mention.end <= around.number.first && namesAnother(mention.component, slot.component as ComponentName),
    )
  )
    return null;
  const [likeliest] = around.number.readings;
  for (const reading of around.number.readings) {
    if (reading.likelihood < likeliest!.likelihood - mostDoubt) continue;
    if (typeof reading.value !== "number" || typeof last.value !== "number") continue;
    if (reading.unit !== null || !["integer", "decimal", "fraction", "measure", "ratio", "money"].includes(reading.kind)) continue;
    if (reading.kind === "ratio" && slot.attribute !== "ratio") continue;
    const ratio = reading.value / last.value;
    // The parts of a count are smaller than it ("six speakers … the two up on the back deck").
    if (slot.attribute === "count" ? ratio >= 1 : ratio < leastRatio(slot) || ratio > 1 / leastRatio(slot)) continue;
    const value = slot.value ? slot.value({ ...reading, unit: slot.unit === "said" ? null : slot.unit }, around.said) : reading.value;
    if (value === undefined || (slot.need.min !== undefined && reading.value < slot.need.min && reading.value < 100)) continue;
    // What its own unit would bound bounds it bare as well, unless the slot reads the figure in a way of its own ("410" for 4.10).
    if (!slot.value && slot.need.max !== undefined && reading.value > slot.need.max) continue;
    const placed =
      /^(?:\S+ ){0,2}?(?:with (?:them|it|the seats?|the back)|if you(?:'ve| have|'re| are)? (?:fold|drop|put|got|the|a|load|loaded|carrying|towing|all)|on|in|at|for|up|out|front|rear|back|behind|ahead|hot|cold|each|left|again|here|there|down|or so|same|all|both|easy|when|running|now)\b/.test(
        around.after,
      );
    const led =
      /\b(?:and|one|ones|one's|(?:other|far|opposite) (?:end|side|axle)(?:'s)?|(?:front|rear|back|driver|passenger|left|right|offside|nearside)(?:'s)?|that's|it's|is|says|at|to|drops|about|other|was|rear|rears|back|front|fronts|door|fender|quarter|side|panel|hood|roof|trunk|tailgate|they're|are|have|has|had|same|another|called|inside|outside|inner|outer|(?:inside|outside|inner|outer) duals?|dual)(?: (?:a|about|at|is|says|it says|around|like|to|one|that's))*$/.test(
        around.before,
      );
    if (
      !placedComponents.has(slot.component as ComponentName) &&
      /^(?:behind|ahead|(?:in|on) (?:the )?(?:fronts?|backs?|rears?))\b/.test(around.after)
    )
      return null;
    if (slot.attribute === "count" ? reading.value === 1 || !countPlace.test(around.after) : !placed && !led) return null;
    return {
      slot,
      reading: { ...reading, unit: null },
      value,
      topic:
        around.topics.find(({ mention, reach }) => mention.component === last.candidate.slot.component && reach !== "recent") ??
        (slot.component === "topic" ? last.candidate.topic : null),
      score: 0.5 + (placed ? 0.15 : 0) + (led ? 0.15 : 0) - 0.005 * (around.number.first - last.end),
    };
  }
  return null;
}

const rollingKinds: ReadonlySet<ComponentName> = new Set(["tire", "wheel", "spare"]);

/** Whether what was named has figures of its own kind: brakes between two tires, a gearbox between two engines. */
function namesAnother(named: ComponentName, measured: ComponentName): boolean {
  return (
    rollingKinds.has(measured) && !rollingKinds.has(named) && (named === "brakes" || named === "final-drive" || named === "suspension")
  );
}

/**
 * A measure named again by its value alone ("the nine inch", "the 650"): the same distinctive value and unit as one read before. Small whole
 * numbers are in everything and repeat nothing.
 */
export function repeated(saidBefore: (value: ClaimValue) => readonly EarlierMeasure[], around: NumberSurroundings): Candidate | null {
  const pointedAt = /\b(?:the|a|that|this|your|our|same|it's|automatic|with|so|okay|is|and|alright)(?: same| big| little)?$/.test(
    around.before,
  );
  // In a summing-up figures stand alone between commas: "okay: 2009, one owner, 189,000, 6.7, six-speed".
  const alone = around.clause.first === around.number.first && around.clause.end === around.number.end;
  if (!pointedAt && !alone && !/^(?:like i said|as i said|again)\b/.test(around.after) && around.zone !== "closing") return null;
  for (const reading of around.number.readings) {
    const distinctive =
      reading.unit !== null || (typeof reading.value === "number" && (reading.value >= 100 || !Number.isInteger(reading.value)));
    if (!distinctive || !unitSpoken(reading, around.said)) continue;
    const earlier = saidBefore(reading.value).findLast(
      ({ candidate: { slot }, unit }) =>
        repeatable.has(slot.attribute) &&
        (slot.attribute !== "year" || (slot.component === "vehicle" && (alone || summingUp.has(around.zone)))) &&
        slot.component !== "topic" &&
        (reading.unit === null || reading.unit === unit) &&
        // Set off by commas it is named by itself, whatever stands beside it.
        (alone || !slot.unless?.test(around.near)),
    );
    if (earlier) return { slot: earlier.candidate.slot, reading, value: reading.value, topic: null, score: 0.85 };
  }
  return null;
}

/** Where a vehicle is named by its year again. */
const summingUp: ReadonlySet<string> = new Set(["opening", "closing", "documents"]);

const repeatable: ReadonlySet<string> = new Set(["displacement", "flow", "ratio", "diameter", "size", "mileage", "price", "year"]);

/** Tokens after a tire's date code within which a month or a week says what the code means. */
const explainsWithinTokens = 12;
const seasonBefore = /\b(?:spring|summer|fall|autumn|winter|end|start|middle) of$/;

/** "The date's 40 22, so October of twenty two": the code again, read out. */
export function explained(last: EarlierMeasure | undefined, around: NumberSurroundings): Candidate | null {
  if (last?.candidate.slot.attribute !== "date" || last.candidate.reading.kind !== "date-code") return null;
  if (around.number.first - last.end > explainsWithinTokens) return null;
  const [reading] = around.number.readings;
  const dates = reading?.kind === "date" || reading?.kind === "date-code" || (reading?.kind === "year" && seasonBefore.test(around.before));
  return reading && dates ? { ...last.candidate, reading, value: reading.value, score: 1.3 } : null;
}

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
