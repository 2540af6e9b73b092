import type { AttributeName, Claim, ComponentName, UnitName } from "../../../../shared-types/index.ts";
import { imperialFactor, unitTable } from "../../vocabulary/units.ts";
import type { UnplacedMeaning } from "../slots/positions.ts";
import { isLoose, spokenStep } from "./approximation.ts";

/** How far two figures for one thing may lie apart and still be the same figure. */
export type Agreement =
  /** Named sizes: no rounding between them (4.10 is not 4.11). `within` is in the unit spoken, for figures that were cut to fewer places. */
  | { readonly by: "name"; readonly within: number }
  /** Read off something: a rounded figure agrees with what it rounds, up to `most` of the figure. */
  | { readonly by: "rounding"; readonly most: number }
  /** Measured or converted: within this share of the larger figure. */
  | { readonly by: "share"; readonly share: number }
  /** Measured: within so much, in the unit named. */
  | { readonly by: "amount"; readonly amount: number; readonly unit: UnitName }
  /** Engine displacement, see `displacementsAgree`. */
  | { readonly by: "displacement" };

/** When figures for a component's attribute may be compared at all, and what they are called. */
export interface QuantityRule {
  /** For a reviewer; "%part" is the part's name. */
  readonly topic: string;
  /** `any`: the part named is not looked at; `same`: parts must be equal, none named included; `named`: equal and named. */
  readonly parts: "any" | "same" | "named";
  readonly agreement: Agreement;
  readonly unplaced?: UnplacedMeaning;
  /** True where the figure changes with the circumstance (warm, at rest): compared only where both name the same one. */
  readonly needsCircumstance?: boolean;
  /** True where any circumstance makes it another figure: prices asked before, readings at a service. Compared only where there is none. */
  readonly plainOnly?: boolean;
  /** Unit of a bare number, where the trade leaves it out. */
  readonly bareUnit?: (value: number) => UnitName;
  /** What a buyer loses, 1 to 100. */
  readonly weight: number;
}

const inchesOrMillimetres = (value: number): UnitName => (value > 60 ? "mm" : "in");

/** Slots for figures: `component.attribute`. Figures without a row follow `otherQuantities`. */
export const quantityRules = {
  "engine.displacement": {
    topic: "engine displacement",
    parts: "same",
    agreement: { by: "displacement" },
    bareUnit: (value) => (value < 12 ? "L" : value < 600 ? "cu in" : "cc"),
    weight: 85,
  },
  "engine.power": { topic: "engine power", parts: "same", agreement: { by: "share", share: 0.02 }, bareUnit: () => "hp", weight: 60 },
  "engine.torque": { topic: "engine torque", parts: "same", agreement: { by: "share", share: 0.02 }, bareUnit: () => "lb-ft", weight: 50 },
  "engine.year": { topic: "engine year", parts: "same", agreement: { by: "name", within: 0 }, weight: 85 },
  "engine.pressure": { topic: "%part", parts: "named", agreement: { by: "share", share: 0.1 }, needsCircumstance: true, weight: 30 },
  "engine.date": { topic: "date of engine work", parts: "same", agreement: { by: "name", within: 0 }, needsCircumstance: true, weight: 40 },
  "engine.mileage": {
    topic: "mileage of engine work",
    parts: "same",
    agreement: { by: "rounding", most: 0.04 },
    needsCircumstance: true,
    weight: 55,
  },
  "electrical.power": { topic: "charging power", parts: "named", agreement: { by: "share", share: 0.02 }, weight: 45 },
  "electrical.size": { topic: "battery capacity", parts: "any", agreement: { by: "share", share: 0.01 }, weight: 75 },
  "electrical.voltage": {
    topic: "system voltage",
    parts: "same",
    agreement: { by: "share", share: 0.02 },
    needsCircumstance: true,
    weight: 30,
  },
  "vehicle.year": { topic: "model year", parts: "same", agreement: { by: "name", within: 0 }, weight: 95 },
  "vehicle.date": { topic: "build date", parts: "same", agreement: { by: "name", within: 0 }, needsCircumstance: true, weight: 45 },
  "vehicle.mileage": {
    topic: "distance driven",
    parts: "same",
    agreement: { by: "rounding", most: 0.04 },
    needsCircumstance: true,
    weight: 40,
  },
  "title.year": { topic: "year on the title", parts: "same", agreement: { by: "name", within: 0 }, weight: 80 },
  "title.date": { topic: "date on the papers", parts: "named", agreement: { by: "name", within: 0 }, needsCircumstance: true, weight: 30 },
  "title.mileage": {
    topic: "mileage on the papers",
    parts: "same",
    agreement: { by: "rounding", most: 0.04 },
    needsCircumstance: true,
    weight: 60,
  },
  "odometer.mileage": {
    topic: "mileage",
    parts: "same",
    agreement: { by: "rounding", most: 0.04 },
    plainOnly: true,
    bareUnit: () => "mi",
    weight: 95,
  },
  "price.price": { topic: "asking price", parts: "same", agreement: { by: "rounding", most: 0.03 }, plainOnly: true, weight: 80 },
  "final-drive.ratio": { topic: "axle ratio", parts: "same", agreement: { by: "name", within: 0.0051 }, weight: 75 },
  "final-drive.diameter": {
    topic: "ring gear diameter",
    parts: "same",
    agreement: { by: "share", share: 0.005 },
    bareUnit: inchesOrMillimetres,
    weight: 50,
  },
  "transmission.ratio": { topic: "%part ratio", parts: "named", agreement: { by: "name", within: 0.0051 }, weight: 40 },
  "fuel-system.flow": { topic: "carburetor flow", parts: "same", agreement: { by: "name", within: 0 }, bareUnit: () => "cfm", weight: 55 },
  "fuel-tank.size": { topic: "fuel tank size", parts: "same", agreement: { by: "share", share: 0.03 }, bareUnit: () => "gal", weight: 40 },
  "wheel.diameter": {
    topic: "wheel diameter",
    parts: "same",
    agreement: { by: "share", share: 0.006 },
    bareUnit: inchesOrMillimetres,
    weight: 70,
  },
  "wheel.size": { topic: "wheel size", parts: "same", agreement: { by: "share", share: 0.006 }, bareUnit: inchesOrMillimetres, weight: 60 },
  "wheel.width": {
    topic: "wheel width",
    parts: "same",
    agreement: { by: "share", share: 0.02 },
    bareUnit: inchesOrMillimetres,
    weight: 50,
  },
  "tire.depth": {
    topic: "tire tread depth",
    parts: "same",
    unplaced: "placed-only",
    agreement: { by: "amount", amount: 1.01, unit: "32nds" },
    bareUnit: () => "32nds",
    weight: 55,
  },
  // Air that has warmed on the road reads about a tenth higher, and a figure turned into bar is rounded as much: common practice.
  "tire.pressure": {
    topic: "tire pressure",
    parts: "same",
    unplaced: "placed-only",
    agreement: { by: "share", share: 0.12 },
    weight: 20,
  },
  "spare.pressure": {
    topic: "spare pressure",
    parts: "same",
    agreement: { by: "share", share: 0.12 },
    weight: 15,
  },
  "spare.depth": { topic: "spare tread depth", parts: "same", agreement: { by: "amount", amount: 1.01, unit: "32nds" }, weight: 20 },
  "paint.thickness": { topic: "paint thickness on the %part", parts: "named", agreement: { by: "share", share: 0.06 }, weight: 45 },
  "paint.date": { topic: "date of the paintwork", parts: "same", agreement: { by: "name", within: 0 }, weight: 45 },
  "paint.year": { topic: "year of the paintwork", parts: "same", agreement: { by: "name", within: 0 }, weight: 45 },
  "cargo-floor.size": { topic: "load space", parts: "same", agreement: { by: "share", share: 0.03 }, weight: 30 },
  "seats.date": { topic: "date of the seat work", parts: "same", agreement: { by: "name", within: 0 }, weight: 35 },
  "brakes.diameter": {
    topic: "brake %part diameter",
    parts: "named",
    unplaced: "resolve",
    agreement: { by: "share", share: 0.015 },
    weight: 35,
  },
  "brakes.thickness": { topic: "brake %part thickness", parts: "named", agreement: { by: "share", share: 0.05 }, weight: 50 },
  "suspension.diameter": {
    topic: "%part diameter",
    parts: "named",
    unplaced: "general",
    agreement: { by: "share", share: 0.015 },
    weight: 30,
  },
  "suspension.size": {
    topic: "lift height",
    parts: "same",
    unplaced: "general",
    agreement: { by: "share", share: 0.06 },
    bareUnit: inchesOrMillimetres,
    weight: 45,
  },
  "exhaust.diameter": {
    topic: "exhaust pipe diameter",
    parts: "same",
    agreement: { by: "share", share: 0.015 },
    bareUnit: inchesOrMillimetres,
    weight: 35,
  },
} as const satisfies Partial<Record<`${ComponentName}.${AttributeName}`, QuantityRule>>;

/** Any other figure: only where its part is named, and closely. */
export const otherQuantities: QuantityRule = {
  topic: "%part %attribute",
  parts: "named",
  unplaced: "general",
  agreement: { by: "share", share: 0.015 },
  weight: 30,
};

export function quantityRuleFor(component: ComponentName, attribute: AttributeName): QuantityRule {
  return (quantityRules as Partial<Record<string, QuantityRule>>)[`${component}.${attribute}`] ?? otherQuantities;
}

/** A figure made comparable: in its dimension's base unit, with the step it was spoken to, in the same unit. */
export interface Figure {
  readonly amount: number;
  readonly step: number;
  readonly loose: boolean;
  /** Unit as spoken, or the bare number's usual one. */
  readonly unit: UnitName | null;
  readonly spoken: number;
  readonly dimension: string;
}

export function figureOf(claim: Claim, rule: QuantityRule): Figure | undefined {
  const spoken = typeof claim.value === "number" ? claim.value : /^-?\d+(\.\d+)?$/.test(claim.value) ? Number(claim.value) : Number.NaN;
  if (!Number.isFinite(spoken)) return undefined;
  const unit = claim.unit ?? rule.bareUnit?.(spoken) ?? null;
  const factor = unit === null ? 1 : unitTable[unit].factor;
  return {
    amount: spoken * factor,
    step: spokenStep(spoken) * factor,
    loose: isLoose(claim),
    unit,
    spoken,
    dimension: unit === null ? "number" : unitTable[unit].dimension,
  };
}

const floatSlack = 1e-9;

export function figuresAgree(first: Figure, second: Figure, agreement: Agreement): boolean {
  if (first.dimension !== second.dimension) return true;
  // One speaker's gallons are all of one kind: only against liters may they be either.
  if (first.unit === second.unit) return amountsAgree(first, second, agreement);
  return imperialReadings(first).some((a) => imperialReadings(second).some((b) => amountsAgree(a, b, agreement)));
}

/** A gallon or pint may be the imperial one: a British speaker's twelve gallons are not an American's. Both readings are allowed for. */
function imperialReadings(figure: Figure): readonly Figure[] {
  if (figure.unit !== "gal" && figure.unit !== "pt" && figure.unit !== "qt") return [figure];
  const factor = imperialFactor[figure.unit];
  return [figure, { ...figure, amount: figure.amount * factor, step: figure.step * factor }];
}

function amountsAgree(first: Figure, second: Figure, agreement: Agreement): boolean {
  const apart = Math.abs(first.amount - second.amount);
  const larger = Math.max(Math.abs(first.amount), Math.abs(second.amount));
  if (apart <= floatSlack * Math.max(1, larger)) return true;
  switch (agreement.by) {
    case "name":
      return apart <= agreement.within || cutToFewerPlaces(first, second, apart);
    case "share":
      // A loose figure may be off by as much again as its last digit; put into another unit in the head, by twice that ("about two bar").
      return (
        apart <= agreement.share * larger || ((first.loose || second.loose) && apart <= (first.unit === second.unit ? 0.06 : 0.12) * larger)
      );
    case "amount":
      return (
        apart <= agreement.amount * unitTable[agreement.unit].factor ||
        ((first.loose || second.loose) && apart <= 2 * agreement.amount * unitTable[agreement.unit].factor)
      );
    case "rounding":
      return roundedAgree(first, second, agreement.most);
    case "displacement":
      return displacementsAgree(first, second);
  }
}

/** Figures of three places and more are worked out, and are then quoted rounder: 3.909 as 3.9. */
const workedOutStep = 0.0011;

function cutToFewerPlaces(first: Figure, second: Figure, apart: number): boolean {
  return Math.min(first.step, second.step) <= workedOutStep && apart <= Math.max(first.step, second.step) / 2 + floatSlack;
}

/**
 * A figure spoken to a coarser step agrees with the finer one it rounds, to the nearest step or by dropping the rest ("eighty four
 * thousand and some change" for 84,312), never by more than `most` of it; twice that where it was given as a loose one.
 */
function roundedAgree(first: Figure, second: Figure, most: number): boolean {
  const [coarse, fine] = first.step >= second.step ? [first, second] : [second, first];
  const apart = Math.abs(coarse.amount - fine.amount);
  const limit = (coarse.loose ? 2 * most : most) * Math.max(coarse.amount, fine.amount);
  if (apart > limit + floatSlack) return false;
  if (coarse.loose) return true;
  const converted = first.unit !== second.unit;
  if (converted && apart <= 0.005 * fine.amount) return true;
  if (coarse.step === fine.step && !converted) return false;
  const halfStep = coarse.step / 2 + (converted ? fine.step : 0);
  const dropped = fine.amount > coarse.amount && fine.amount < coarse.amount + coarse.step && coarse.step >= 100 * floatSlack;
  return apart <= halfStep || dropped;
}

/** Engines sold under a figure their own arithmetic does not give: 302 cu in is 4.95 L and was sold as 4.9 and 5.0; 327 is 5.36 L. */
const marketedAlike: readonly (readonly [number, number])[] = [
  [4.9, 5.0],
  [5.3, 5.4],
];

/**
 * Displacements agree if they differ by at most 0.1 L after conversion; 350 cu in and 5.7 L do (0.035 apart), 350 and 5.0 L do not.
 * In one unit, the names must be equal, but for rounding: 390 and 396 cu in are two engines, 2,597 and 2,600 cc are one.
 */
export function displacementsAgree(first: Figure, second: Figure): boolean {
  const apart = Math.abs(first.amount - second.amount);
  if (first.unit !== second.unit) return apart <= 0.1 + floatSlack;
  if (first.unit === "L") {
    const same = (a: number, b: number): boolean => Math.abs(a - b) < 0.001;
    if (
      marketedAlike.some(([a, b]) => (same(first.amount, a) && same(second.amount, b)) || (same(first.amount, b) && same(second.amount, a)))
    ) {
      return true;
    }
    return first.step !== second.step && apart <= Math.max(first.step, second.step) / 2 + floatSlack;
  }
  if (first.unit === "cc") return apart <= Math.max(first.step, second.step) / 2 + floatSlack;
  return apart < 0.75 * 0.016387064;
}
