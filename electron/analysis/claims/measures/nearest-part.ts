import type { AttributeName, ComponentName, UnitName } from "../../../../shared-types/index.ts";
import type { Reading } from "../../model.ts";
import { type Candidate, unitSpoken } from "./candidate.ts";
import type { Slot } from "./slot.ts";
import type { NumberSurroundings, Topic } from "./surroundings.ts";

/** What a spoken unit measures of a part for which no slot of its own is written, and within what bounds (common practice). */
interface UnitMeaning {
  readonly units: readonly UnitName[];
  readonly attribute: AttributeName;
  readonly components: readonly ComponentName[];
  /** Only these parts, where given. */
  readonly parts?: readonly string[];
  readonly min: number;
  readonly max: number;
  readonly example: { readonly heard: string; readonly value: number; readonly told: string };
}

const length: readonly UnitName[] = ["in", "mm", "ft"];
const volume: readonly UnitName[] = ["gal", "L", "pt", "qt"];
const weight: readonly UnitName[] = ["lb", "kg"];

/** In order: the first row whose unit, part and bounds fit counts. */
export const unitMeanings = [
  {
    units: ["in", "mm"],
    attribute: "diameter",
    components: ["transmission"],
    parts: ["clutch", "driveshaft", "output shaft"],
    min: 1,
    max: 430,
    example: { heard: "and the clutch is eleven inch", value: 11, told: "transmission diameter in" },
  },
  {
    units: ["in", "mm"],
    attribute: "diameter",
    components: ["lights", "final-drive", "exhaust"],
    min: 1,
    max: 400,
    example: { heard: "rear axle is an eight inch", value: 8, told: "final-drive diameter in" },
  },
  {
    units: ["in", "mm"],
    attribute: "diameter",
    components: ["steering"],
    parts: ["steering wheel"],
    min: 9,
    max: 500,
    example: { heard: "the steering wheel's tidy, fourteen inch", value: 14, told: "steering diameter in" },
  },
  {
    units: ["in", "mm"],
    attribute: "thickness",
    components: ["carpet", "floors", "headliner", "trim", "cargo-floor"],
    parts: ["mats", "panel", "lining", "board", "bed liner"],
    min: 0.02,
    max: 60,
    example: { heard: "the floor mats are twelve mm", value: 12, told: "carpet thickness mm" },
  },
  {
    units: ["in", "mm"],
    attribute: "thickness",
    components: ["floors", "carpet", "headliner"],
    min: 0.02,
    max: 60,
    example: { heard: "the carpet is half an inch", value: 0.5, told: "carpet thickness in" },
  },
  {
    units: ["in", "mm"],
    attribute: "width",
    components: ["trim"],
    parts: ["stripe"],
    min: 0.05,
    max: 900,
    example: { heard: "the pinstripe's a quarter inch", value: 0.25, told: "trim width in" },
  },
  {
    units: length,
    attribute: "size",
    components: ["body", "bumper", "glass", "seats", "frame", "suspension", "cargo-floor", "trim", "top", "dash", "audio", "lights"],
    min: 0.03,
    max: 9000,
    example: { heard: "the antenna is thirty inches", value: 30, told: "audio size in" },
  },
  {
    units: volume,
    attribute: "size",
    components: ["cooling", "fuel-tank", "engine", "transmission", "final-drive", "brakes", "air-conditioning"],
    min: 0.2,
    max: 900,
    example: { heard: "the radiator holds seven gallons", value: 7, told: "cooling size gal" },
  },
  {
    units: weight,
    attribute: "size",
    components: ["body", "bumper", "glass", "seats", "wheel", "top", "spare", "suspension", "cargo-floor", "engine", "transmission"],
    min: 2,
    max: 30000,
    example: { heard: "the tailgate on its own is eleven kilos", value: 11, told: "body size kg" },
  },
] as const satisfies readonly UnitMeaning[];

/** Just over the least score: any slot that fits is likelier. */
const fallbackScore = 0.43;
/** How far off a part may be and still be what is measured. */
const mostCost = 0.48;

/** The same over the end of a sentence ("bumper's channel iron. Six inch."). */
const mostCostAcross = 0.345;

/** Lengths and weights that measure no part of the vehicle: distances, sizes of things compared with, people, and what is in the way. */
const ofSomethingElse =
  /\b(?:size of an?|away|from (?:the|here|my)|off the ground|tall|taller|apart|behind (?:me|you|us)|up the road|down the road|of (?:snow|rain|water|mud|dust|air|torque)|ladder|drain|gap|within|an? (?:hour|minute)|or so away|wrench|socket|spanner|jack|stands?|lift|hose|rope|strap|screwdriver|ruler|tape)\b/;

/** A figure whose unit was spoken, about the nearest part of its clause that has such a measure; null where nothing fits. */
export function measureOfNearestPart(around: NumberSurroundings): Candidate | null {
  if (ofSomethingElse.test(around.near)) return null;
  const [reading] = around.number.readings;
  if (reading?.kind !== "measure" || reading.unit === null || typeof reading.value !== "number" || !unitSpoken(reading, around.said))
    return null;
  for (const topic of around.topics) {
    if (topic.cost > (topic.reach === "recent" ? mostCostAcross : mostCost)) continue;
    const meaning = unitMeanings.find((row: UnitMeaning) => fitsRow(row, reading, topic));
    if (meaning)
      return { slot: slotOf(meaning, wayAcross(around) ?? meaning.attribute), reading, value: reading.value, topic, score: fallbackScore };
  }
  // Inside the load space, a length that names nothing is the load space's own ("nine foot four, headache rack to tail").
  if (around.zone === "cargo" && lengthUnits.has(reading.unit) && inLoadSpace(reading.value, reading.unit)) {
    const room = unitMeanings.find((row: UnitMeaning) => row.units === length)!;
    const mention = { first: around.number.first, end: around.number.end, component: "cargo-floor", part: null, position: null } as const;
    const topic = { mention, cost: mostCost, reach: "clause" } as const;
    return { slot: slotOf(room, wayAcross(around) ?? "size"), reading, value: reading.value, topic, score: fallbackScore };
  }
  return null;
}

function fitsRow(row: UnitMeaning, { unit, value }: Reading, { mention }: Topic): boolean {
  return (
    row.units.includes(unit!) &&
    row.components.includes(mention.component) &&
    (row.parts === undefined || (mention.part !== null && row.parts.includes(mention.part))) &&
    typeof value === "number" &&
    value >= row.min &&
    value <= row.max
  );
}

const lengthUnits: ReadonlySet<string> = new Set(["in", "mm", "ft"]);

/** A foot and a half to thirteen feet: what a load space measures one way or another (common practice). */
function inLoadSpace(value: number, unit: UnitName): boolean {
  const inches = unit === "ft" ? value * 12 : unit === "mm" ? value / 25.4 : value;
  return inches >= 18 && inches <= 156;
}

/** The way a length is taken, where words beside it say so. */
function wayAcross({ before, after, number }: NumberSurroundings): AttributeName | null {
  if (!lengthUnits.has(number.readings[0]?.unit ?? "")) return null;
  if (
    /^(?:wide|across|in width|between|wall to wall|king ?pin to king ?pin|hub to hub|drum to drum)\b/.test(after) ||
    /\b(?:wide|width|across|wall to wall)(?: is| it's| that's| of)*$/.test(before)
  )
    return "width";
  if (/^(?:thick|in thickness|ply|plywood|gauge)\b/.test(after) || /\b(?:thick|thickness|ply)(?: is| it's| that's| of)*$/.test(before))
    return "thickness";
  return /^(?:round|in diameter|diameter)\b/.test(after) ? "diameter" : null;
}

function slotOf(meaning: UnitMeaning, attribute: AttributeName): Slot {
  return {
    name: "measure of the nearest part",
    component: "topic",
    part: null,
    attribute,
    unit: "said",
    need: { units: meaning.units, min: meaning.min, max: meaning.max },
    cues: [],
    example: meaning.example,
  };
}
