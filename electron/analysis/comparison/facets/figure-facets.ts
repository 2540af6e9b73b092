import type { Claim, ClaimValue, ComponentName, UnitName } from "../../../../shared-types/index.ts";
import { isKnownDisplacement } from "../../vocabulary/displacements.ts";
import { circumstanceOf } from "../slots/circumstances.ts";
import type { Facet, Reading } from "../slots/facet.ts";
import { cornerInView } from "../slots/own-words.ts";
import { slotPart } from "../slots/parts.ts";
import { unplacedMeaning } from "../slots/positions.ts";
import { isReadingOfThen } from "../slots/reading-of-then.ts";
import { isVehicleYear } from "../slots/vehicle-year.ts";
import { topicOf } from "../slots/word-slots.ts";
import { isLoose, spokenStep } from "../values/approximation.ts";
import { figureOf, type QuantityRule, quantityRuleFor } from "../values/quantities.ts";
import { type ClaimNotes, isLikelyBuildDate, isLikelyDisplacement, isSurelyMileage, isSurelyPrice } from "./claim-notes.ts";
import { facet } from "./make-facet.ts";

export function figureFacets(claim: Claim, notes: ClaimNotes): Facet[] {
  const rule = quantityRuleFor(claim.component, claim.attribute);
  const reading = claim.attribute === "date" ? dateReading(claim.value) : figureReading(claim, rule, notes);
  if (!reading) return [];
  const part = slotPart(claim);
  if (rule.parts === "named" && part === null) return [];
  const circumstance = circumstanceOf(claim);
  const nominal = circumstance === null ? systemVoltage(claim, reading) : [];
  if (nominal.length > 0) return nominal;
  if (claim.component === "odometer" && !isReading(claim, notes)) return [];
  if (claim.component === "price" && !isSurelyPrice(claim, notes)) return [];
  // One wheel in the cabin is the steering wheel.
  if (claim.component === "wheel" && (claim.zone === "cabin" || claim.zone === "drive") && !/\b(wheels|rims|alloys)\b/i.test(claim.quote))
    return [];
  if (claim.component === "vehicle" && claim.attribute === "date" && !isLikelyBuildDate(claim, notes)) return [];
  if (claim.component === "vehicle" && claim.attribute === "date" && /\b(they|these|those)('re| were| are)\b/i.test(claim.quote)) return [];
  if (claim.component === "vehicle" && claim.attribute === "year" && !isVehicleYear(claim) && !doubtsItsYear(claim, notes)) return [];
  if (rule.needsCircumstance ? circumstance === null : rule.plainOnly && circumstance !== null) return [];
  if (circumstance !== null && recurring.has(circumstance) && !isWorkOnOnePart(claim, part)) return [];
  if (claim.component === "fuel-tank" && claim.zone === "engine-bay" && !/\b(tank|fuel|gas|petrol|diesel)\b/i.test(claim.quote)) return [];
  if (
    claim.component === "exhaust" &&
    awayFromExhaust.has(claim.zone) &&
    !/\b(exhaust|tail ?-?pipes?|muffler|silencer|headers?|cat ?-?back)\b/i.test(claim.quote)
  )
    return [];
  // Of a load floor only what it holds is one figure; it has several lengths.
  if (
    claim.component === "cargo-floor" &&
    claim.attribute === "size" &&
    part === null &&
    !(reading.by === "figure" && reading.figure.dimension === "volume")
  )
    return [];
  if (part !== null && neverAlike.has(part)) return [];
  if (claim.zone === "cargo" && underTheHood.has(claim.component) && looseWords.test(claim.quote)) return [];
  return facet({
    claim: eachCornerItsOwn.has(`${claim.component}.${claim.attribute}`) ? { ...claim, position: cornerInView(claim) } : claim,
    kind: "measure",
    part: rule.parts === "any" ? null : part,
    property: propertyOf(claim, reading),
    topic: topicOf(rule.topic, claim, part),
    weight: rule.weight,
    meaning: rule.unplaced ?? unplacedMeaning[claim.component],
    reading,
    ...(reading.by === "figure" ? { dimension: reading.figure.dimension } : {}),
  });
}

/** "I believe it's a 2015", said inside of a vehicle that was called a 2015: its own year once more, in doubt. */
function doubtsItsYear({ part, circumstance, stance, value, quote }: Claim, { modelYears }: ClaimNotes): boolean {
  if (stance !== "hedged" || part !== null || circumstance !== null || modelYears === null) return false;
  return value === modelYears.first && value === modelYears.last && /\b(?:it's|it is|she's|he's) an? \S+(?: \S+)?$/i.test(quote);
}

function figureReading(claim: Claim, rule: QuantityRule, notes: ClaimNotes): Reading | undefined {
  const figure = figureOf(claim, rule);
  if (figure && claim.attribute === "displacement" && !isLikelyDisplacement(claim, notes)) return undefined;
  if (figure && !isSurely(claim, figure.unit, figure.spoken)) return undefined;
  if (figure && claim.attribute === "displacement" && figure.unit === "cu in" && !isDisplacement(figure.spoken, claim.quote))
    return undefined;
  const bored = notes.boredOver && rule.agreement.by === "displacement";
  return figure && { by: "figure", figure, agreement: bored ? { by: "share", share: 0.035 } : rule.agreement };
}

const powerWords = /\b(hp|bhp|horse\w*|kw|kilo ?-?watts?|ps|brake|power|dyno\w*|watts)\b/i;

/** Bare numbers that were taken for a figure although neither their words nor their size say so. */
function isSurely({ attribute, component, quote }: Claim, unit: UnitName | null, spoken: number): boolean {
  const least = attribute === "diameter" ? leastDiameterInches[component] : undefined;
  if (least !== undefined && unit === "in" && spoken < least) return false;
  if (component !== "engine") return true;
  if (attribute === "power") return spoken >= leastPower || powerWords.test(quote);
  // Liters are spoken to one place; with more of them the words must say what they are.
  if (attribute === "displacement" && unit === "L")
    return Number.isInteger(Math.round(spoken * 1e6) / 1e5) || /\blit(er|re)s?\b/i.test(quote);
  return true;
}

/** Smaller ones are on no road vehicle: 8-inch wheels were the smallest of microcars, 7-inch drums of small cars. Common practice. */
const leastDiameterInches: Partial<Record<ComponentName, number>> = { wheel: 8, brakes: 7 };

/** Less than this, in any unit, is no engine of a road vehicle unless its words say so. */
const leastPower = 20;

/** A bare "a hundred" near the engine is no displacement; one that an engine was ever sold or built by, or that names its unit, is. */
function isDisplacement(cubicInches: number, quote: string): boolean {
  return isKnownDisplacement(cubicInches) || /\b(cubic|inch(es)?|c\.?i\.?d?|cubes|cu\.? ?in)\b/i.test(quote);
}

/** A date as far as it was said; a month without a year names no date. */
function dateReading(value: ClaimValue): Reading | undefined {
  const date = /^\d{4}(-\d{2}){0,2}/.exec(String(value))?.[0];
  return date === undefined ? undefined : { by: "date", date };
}

/** More than this is taken from a direct-current charger, less by the charger on board (three phases of 32 A at 230 V make 22 kW, IEC 61851-1). */
const mostOnBoardKw = 22.5;

/** Six or twelve volts, said of the vehicle and of no reading: what its system is. A battery of a pair may have half of it. */
function systemVoltage(claim: Claim, reading: Reading): Facet[] {
  if (
    claim.component !== "electrical" ||
    claim.attribute !== "voltage" ||
    slotPart(claim) !== null ||
    (claim.value !== 6 && claim.value !== 12)
  )
    return [];
  if (/\b(each|apiece|pair|two|batteries|series|converted|outlet|socket)\b/i.test(claim.quote)) return [];
  return facet({
    claim,
    kind: "measure",
    part: null,
    property: "system voltage",
    topic: "system voltage",
    weight: 55,
    meaning: "single",
    reading,
    dimension: "voltage",
  });
}

/** The attribute, with charging from the wall and at a rapid charger told apart. */
function propertyOf({ component, attribute }: Claim, reading: Reading): string {
  if (component !== "electrical" || attribute !== "power" || reading.by !== "figure") return attribute;
  return reading.figure.amount > mostOnBoardKw ? "rapid charging power" : attribute;
}

/** Figures of which each corner of the vehicle has its own. */
const eachCornerItsOwn: ReadonlySet<string> = new Set(["tire.depth", "tire.pressure", "brakes.thickness"]);

/** Parts of which there are many, each with its own figure: the gap of one door says nothing of the next. */
const neverAlike: ReadonlySet<string> = new Set(["gap", "panel gap", "weight rating", "crack", "scratch", "chip", "dent", "tear"]);

/** Here a bare "three inch pipe" is a rack's or a drain's. */
const awayFromExhaust: ReadonlySet<string> = new Set(["cabin", "cargo", "roof"]);

/** Parts that can lie in the trunk only as loose ones that come with the vehicle. */
const underTheHood: ReadonlySet<ComponentName> = new Set(["engine", "fuel-system", "ignition", "cooling", "exhaust", "brakes"]);
const looseWords = /\b(box(es|ed)?|in here|in there|bag|crate|come|comes|came|extra|spare|old|original|goes with)\b/i;

/** Circumstances that come more than once, each time with a figure of its own. */
const recurring: ReadonlySet<string> = new Set([
  "history",
  "work",
  "since the work",
  "since",
  "when the work was done",
  "cost of a part or of work",
  "receipts",
  "spent",
  "asked before",
  "other sum",
  "sale",
  "owned since",
  "donor vehicle",
  "year of the part",
  "limit or as new",
  "advised",
  "cut out",
  "former counter",
  "as first supplied",
]);

/** Work may come more than once; a belt or a clutch that is named was changed, a panel painted, at the one mileage or date that is told of it. */
function isWorkOnOnePart({ attribute, component }: Claim, part: string | null): boolean {
  if (part === null || part === "work") return false;
  return attribute === "mileage" || (attribute === "date" && component === "paint");
}

/** Whether a mileage is what the odometer shows today. */
function isReading(claim: Claim, notes: ClaimNotes): boolean {
  if (!isSurelyMileage(claim, notes)) return false;
  if (isReadingOfThen(claim)) return false;
  if (!zonesOfWork.has(claim.zone)) return true;
  return !isLoose(claim) && spokenStep(Number(claim.value)) < 1000 && !/\b(was|were|had)\b/i.test(claim.quote);
}

/** Here a mileage in round words or the past is that of some work in the papers, not the reading in the dash. */
const zonesOfWork: ReadonlySet<string> = new Set(["engine-bay", "underside"]);
