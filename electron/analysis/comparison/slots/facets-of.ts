import type { AttributeName, Claim, ClaimValue, ComponentName, ConflictKind } from "../../../../shared-types/index.ts";
import { isKnownDisplacement } from "../../vocabulary/displacements.ts";
import { isLoose } from "../values/approximation.ts";
import { huesOf } from "../values/colors.ts";
import { materialOf } from "../values/materials.ts";
import { figureOf, type QuantityRule, quantityRuleFor } from "../values/quantities.ts";
import { tireDatesOf } from "../values/tire-dates.ts";
import { plainTireSize } from "../values/tire-sizes.ts";
import { choicesOf, cylindersIn } from "../values/type-families.ts";
import { circumstanceOf } from "./circumstances.ts";
import type { Facet, Place, Reading, Subject } from "./facet.ts";
import { isOneOfAKind, slotPart } from "./parts.ts";
import { type UnplacedMeaning, unplacedMeaning } from "./positions.ts";
import { topicOf, wordSlots } from "./word-slots.ts";

/** What was true of the engine as a whole and bears on other figures. */
export interface EngineNotes {
  /** Bored out ("thirty over"): its displacement is spoken both as built and as bored. */
  readonly boredOver: boolean;
}

const figureAttributes: ReadonlySet<AttributeName> = new Set([
  "size",
  "diameter",
  "width",
  "displacement",
  "year",
  "ratio",
  "flow",
  "mileage",
  "price",
  "thickness",
  "voltage",
  "power",
  "torque",
  "pressure",
  "depth",
  "date",
]);

/** Everything that one claim says, made comparable. Former states give nothing: they say nothing about the vehicle as it stands. */
export function facetsOf(claim: Claim, notes: EngineNotes): Facet[] {
  if (claim.time === "former" || isSupposed(claim)) return [];
  const { attribute, component } = claim;
  if ((component === "tire" || component === "spare") && attribute === "size") return tireSizeFacets(claim);
  if ((component === "tire" || component === "spare") && (attribute === "date" || attribute === "year")) return tireDateFacets(claim);
  if (figureAttributes.has(attribute)) return figureFacets(claim, notes);
  if (attribute === "count") return countFacets(claim);
  if (attribute === "type") return typeFacets(claim);
  if (attribute === "material" || attribute === "color" || attribute === "presence" || attribute === "originality")
    return wordFacets(claim);
  return [];
}

/** Words of another time or of what should be, whatever the claim was taken for; what is "original" is put the same way and is no such. */
function isSupposed(claim: Claim): boolean {
  return (
    claim.attribute !== "originality" &&
    /\b(originally|used to|would'?ve|would have|supposed to|should'?ve|should have)\b/i.test(claim.quote)
  );
}

/** Where the claim speaks of; undefined where nobody can tell, and so nothing may be held against it. */
export function placeOf(claim: Claim, meaning: UnplacedMeaning, part: string | null): Place | undefined {
  if (meaning === "single" || isOneOfAKind(part)) return "anywhere";
  if (claim.position !== null) return claim.position;
  switch (meaning) {
    case "whole":
      return "anywhere";
    case "general":
      return "loosely";
    case "resolve":
      return zonesAwayFromWheels.has(claim.zone) ? "anywhere" : "in-view";
    case "placed-only":
      return undefined;
  }
}

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

/** Words that make a bare figure a sum of money, whatever it was taken for. */
const moneyWords = /\b(wants?|wanted|asking|priced?|dollars|bucks|grand|pounds|quid|firm|offer|website|obo)\b/i;
const mileageWords = /\b(miles?|mileage|odometer|clock|km|kilomet(er|re)s?|showing)\b/i;

/** Whether a mileage is what the odometer shows today. */
function isReading(claim: Claim): boolean {
  if (isLoose(claim) && zonesOfWork.has(claim.zone)) return false;
  return !moneyWords.test(claim.quote) || mileageWords.test(claim.quote);
}

const zonesInside: ReadonlySet<string> = new Set(["cabin", "cargo", "engine-bay", "underside"]);

/** Here a mileage given with "about" is that of some work in the papers, not the reading in the dash. */
const zonesOfWork: ReadonlySet<string> = new Set(["engine-bay", "underside"]);

/** Said here, "it's on two thirty-fives" is about the vehicle, not about the wheel in view. */
const zonesAwayFromWheels: ReadonlySet<string> = new Set(["opening", "closing", "documents", "drive", "cabin", "engine-bay"]);

interface FacetParts {
  readonly claim: Claim;
  readonly kind: ConflictKind;
  readonly part: string | null;
  readonly property: string;
  readonly topic: string;
  readonly weight: number;
  readonly meaning: UnplacedMeaning;
  readonly reading: Reading;
  /** Component the slot belongs to, where it is not the claim's. */
  readonly component?: ComponentName;
  /** More that must be equal. */
  readonly dimension?: string;
}

function facet(parts: FacetParts): Facet[] {
  const { claim, part, property } = parts;
  const place = placeOf(claim, parts.meaning, part);
  if (place === undefined) return [];
  const component = parts.component ?? claim.component;
  const subject: Subject = { component, part, property, topic: parts.topic, weight: parts.weight };
  const slot = [parts.kind, component, part ?? "", property, circumstanceOf(claim) ?? "", parts.dimension ?? ""].join("|");
  return [{ claim, slot, kind: parts.kind, place, reading: parts.reading, subject }];
}

function tireSizeFacets(claim: Claim): Facet[] {
  if (typeof claim.value !== "string") return [];
  const spare = claim.component === "spare" || slotPart(claim) === "spare";
  return facet({
    claim,
    kind: "measure",
    part: null,
    component: spare ? "spare" : "tire",
    property: "size",
    topic: spare ? "spare tire size" : "tire size",
    weight: spare ? 40 : 85,
    meaning: spare ? "single" : unplacedMeaning.tire,
    reading: { by: "tire-size", size: plainTireSize(claim.value) },
  });
}

function tireDateFacets(claim: Claim): Facet[] {
  const dates = tireDatesOf(claim.value);
  if (dates.length === 0) return [];
  const spare = claim.component === "spare" || slotPart(claim) === "spare";
  return facet({
    claim,
    kind: "measure",
    part: null,
    component: spare ? "spare" : "tire",
    property: "date",
    topic: spare ? "spare tire date" : "tire date",
    weight: spare ? 25 : 55,
    meaning: spare ? "single" : "general",
    reading: { by: "tire-date", dates, key: dates.map((date) => `${date.year ?? `?${date.yearDigit}`}-${date.week ?? ""}`).join("/") },
  });
}

function figureFacets(claim: Claim, notes: EngineNotes): Facet[] {
  const rule = quantityRuleFor(claim.component, claim.attribute);
  const reading = claim.attribute === "date" ? dateReading(claim.value) : figureReading(claim, rule, notes);
  if (!reading) return [];
  const part = slotPart(claim);
  if (rule.parts === "named" && part === null) return [];
  const circumstance = circumstanceOf(claim);
  if (claim.component === "odometer" && !isReading(claim)) return [];
  if (rule.needsCircumstance ? circumstance === null : rule.plainOnly && circumstance !== null) return [];
  if (circumstance !== null && recurring.has(circumstance)) return [];
  return facet({
    claim,
    kind: "measure",
    part: rule.parts === "any" ? null : part,
    property: claim.attribute,
    topic: topicOf(rule.topic, claim, part),
    weight: rule.weight,
    meaning: rule.unplaced ?? unplacedMeaning[claim.component],
    reading,
    ...(reading.by === "figure" ? { dimension: reading.figure.dimension } : {}),
  });
}

function figureReading(claim: Claim, rule: QuantityRule, notes: EngineNotes): Reading | undefined {
  const figure = figureOf(claim, rule);
  if (figure && claim.attribute === "displacement" && figure.unit === "cu in" && !isDisplacement(figure.spoken, claim.quote))
    return undefined;
  const bored = notes.boredOver && rule.agreement.by === "displacement";
  return figure && { by: "figure", figure, agreement: bored ? { by: "share", share: 0.035 } : rule.agreement };
}

/** A bare "a hundred" near the engine is no displacement; one that an engine was ever sold or built by, or that names its unit, is. */
function isDisplacement(cubicInches: number, quote: string): boolean {
  return isKnownDisplacement(cubicInches) || /\b(cubic|inch(es)?|c\.?i\.?d?|cubes|cu\.? ?in)\b/i.test(quote);
}

/** A date as far as it was said; a month without a year names no date. */
function dateReading(value: ClaimValue): Reading | undefined {
  const date = /^\d{4}(-\d{2}){0,2}/.exec(String(value))?.[0];
  return date === undefined ? undefined : { by: "date", date };
}

function countFacets(claim: Claim): Facet[] {
  const part = slotPart(claim);
  const count = Number(claim.value);
  if (part === null || !Number.isInteger(count)) return [];
  return countFacet(claim, part, count);
}

/** Five belts in all and two in front are two counts, not two answers: only counts for one place are compared. */
function countFacet(claim: Claim, part: string, count: number): Facet[] {
  const [made] = facet({ ...countSlot(claim, part), reading: { by: "word", word: String(count) } });
  if (!made) return [];
  const place: Place = made.place === "loosely" || made.place === "in-view" ? "all" : made.place;
  return [{ ...made, place, slot: `${made.slot}|${place}` }];
}

function countSlot(claim: Claim, part: string): Omit<FacetParts, "reading"> {
  const { topic, weight } = wordSlots.count;
  return {
    claim,
    kind: "count",
    part,
    property: "count",
    topic: topicOf(topic, claim, part),
    weight: countWeights[part] ?? weight,
    meaning: unplacedMeaning[claim.component] === "placed-only" ? "general" : unplacedMeaning[claim.component],
  };
}

/** Counts that move the price. */
const countWeights: Readonly<Record<string, number>> = { owner: 80, gear: 70, cylinder: 85, key: 40, door: 60, "main bearing": 50 };

function typeFacets(claim: Claim): Facet[] {
  const spoken = String(claim.value);
  const facets = choicesOf(claim.component, spoken).flatMap(({ family, choice }) => {
    const part = slotPart(claim);
    return facet({
      claim,
      kind: "type",
      part: family.parts === "any" ? null : part,
      component: family.components[0]!,
      property: family.name,
      topic: family.topic,
      weight: family.weight,
      meaning: family.unplaced ?? unplacedMeaning[claim.component],
      reading: { by: "choice", family: family.name, choice },
    });
  });
  const cylinders = claim.component === "engine" ? cylindersIn(spoken) : undefined;
  if (cylinders !== undefined) facets.push(...countFacet(claim, "cylinder", cylinders));
  return facets;
}

function wordFacets(claim: Claim): Facet[] {
  const attribute = claim.attribute as "material" | "color" | "presence" | "originality";
  const reading = wordReading(claim);
  if (!reading) return [];
  const part = slotPart(claim);
  // Inside, under the hood or below, a color without a part is that of what is in view there, not the color of the vehicle.
  if (claim.component === "paint" && attribute === "color" && part === null && zonesInside.has(claim.zone)) return [];
  const slot = wordSlots[attribute];
  const row = slot.components[claim.component];
  if (attribute === "presence" && part === null && !row) return [];
  return facet({
    claim,
    kind: attribute,
    part,
    property: attribute,
    topic: topicOf(row?.topic ?? slot.topic, claim, part),
    weight: part !== null && row?.ofWholeOnly ? slot.weight : (row?.weight ?? slot.weight),
    meaning: row?.unplaced ?? unplacedMeaning[claim.component],
    reading,
  });
}

function wordReading(claim: Claim): Reading | undefined {
  const spoken = String(claim.value);
  switch (claim.attribute) {
    case "color": {
      const hues = huesOf(spoken);
      return hues && { by: "hues", hues };
    }
    case "material": {
      const material = materialOf(spoken);
      return material === undefined ? undefined : { by: "material", material };
    }
    default:
      return { by: "word", word: spoken.toLowerCase() };
  }
}
