import { z } from "zod";

/**
 * The closed word lists of the product. One word per thing, everywhere: screens, code, exports.
 * Lists are `as const` so that a typo in a rule table fails to compile.
 */

/** Where the camera is. */
export const zoneNames = [
  "opening",
  "front",
  "driver-side",
  "passenger-side",
  "rear",
  "roof",
  "cargo",
  "cabin",
  "engine-bay",
  "underside",
  "documents",
  "drive",
  "closing",
] as const;
export const ZoneName = z.enum(zoneNames);
export type ZoneName = z.infer<typeof ZoneName>;

/** What a claim is about. */
export const componentNames = [
  "tire",
  "wheel",
  "spare",
  "engine",
  "fuel-system",
  "ignition",
  "exhaust",
  "transmission",
  "final-drive",
  "brakes",
  "steering",
  "suspension",
  "cooling",
  "electrical",
  "body",
  "paint",
  "glass",
  "trim",
  "bumper",
  "lights",
  "seats",
  "dash",
  "carpet",
  "belts",
  "headliner",
  "top",
  "audio",
  "air-conditioning",
  "cargo-floor",
  "frame",
  "floors",
  "fuel-tank",
  "odometer",
  "title",
  "vin",
  "price",
  "vehicle",
] as const;
export const ComponentName = z.enum(componentNames);
export type ComponentName = z.infer<typeof ComponentName>;

/** Which of several parts. Sides are the vehicle's own: driver and passenger, never left and right. */
export const positionNames = [
  "front",
  "rear",
  "driver",
  "passenger",
  "driver-front",
  "driver-rear",
  "passenger-front",
  "passenger-rear",
  "all",
] as const;
export const PositionName = z.enum(positionNames);
export type PositionName = z.infer<typeof PositionName>;

/** Which property of the component the claim is about. */
export const attributeNames = [
  "size",
  "diameter",
  "width",
  "displacement",
  "year",
  "ratio",
  "flow",
  "count",
  "mileage",
  "price",
  "material",
  "color",
  "type",
  "originality",
  "condition",
  "presence",
  "thickness",
  "voltage",
  "power",
  "torque",
  "pressure",
  "depth",
  "date",
] as const;
export const AttributeName = z.enum(attributeNames);
export type AttributeName = z.infer<typeof AttributeName>;

/** Units as claims carry them; `32nds` is thirty-seconds of an inch of tread. */
export const unitNames = [
  "in",
  "mm",
  "µm",
  "mil",
  "cu in",
  "L",
  "cc",
  "gal",
  "pt",
  "qt",
  "cu ft",
  "ga",
  "ft",
  "cfm",
  "hp",
  "PS",
  "kW",
  "kWh",
  "A",
  "Ah",
  "lb-ft",
  "N·m",
  "psi",
  "bar",
  "lb",
  "kg",
  "mi",
  "km",
  "32nds",
  "V",
  "USD",
  "GBP",
  "EUR",
] as const;
export const UnitName = z.enum(unitNames);
export type UnitName = z.infer<typeof UnitName>;

/** How firmly the speaker stands behind a claim. */
export const stances = ["stated", "hedged", "reported"] as const;
export const Stance = z.enum(stances);
export type Stance = z.infer<typeof Stance>;

/** In what way claims cannot all hold. */
export const conflictKinds = [
  "measure",
  "count",
  "type",
  "material",
  "color",
  "presence",
  "condition",
  "originality",
  "standard",
  "hedge",
] as const;
export const ConflictKind = z.enum(conflictKinds);
export type ConflictKind = z.infer<typeof ConflictKind>;

/** The grade of a finding. */
export const grades = ["as-new", "good", "worn", "damaged", "not-shown"] as const;
export const Grade = z.enum(grades);
export type Grade = z.infer<typeof Grade>;

/** What a ruling decides about a conflict. */
export const rulingDecisions = ["side-stands", "both-hold", "recogniser-error", "look-at-vehicle"] as const;
export const RulingDecision = z.enum(rulingDecisions);
export type RulingDecision = z.infer<typeof RulingDecision>;

/** Outline drawn in the plan view. */
export const bodyStyles = ["coupe", "sedan", "estate", "hatchback", "pickup", "van", "convertible", "roadster"] as const;
export const BodyStyle = z.enum(bodyStyles);
export type BodyStyle = z.infer<typeof BodyStyle>;
