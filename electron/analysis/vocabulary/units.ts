import type { UnitName } from "../../../shared-types/index.ts";

export type Dimension =
  | "length"
  | "thickness"
  | "distance"
  | "volume"
  | "power"
  | "torque"
  | "pressure"
  | "mass"
  | "voltage"
  | "energy"
  | "charge"
  | "current"
  | "flow"
  | "gauge"
  | "USD"
  | "GBP"
  | "EUR";

/**
 * Each unit as a multiple of its dimension's base (mm, L, kW, N·m, kPa, kg).
 * Exact by definition: in, mi, lb, cu in, gal (231 cu in), pt. hp = 550 ft·lbf/s, lbf·ft and psi follow from lb, ft and g0 = 9.80665 m/s²;
 * PS = 75 kgf·m/s = 0.73549875 kW. Cross-checked with js-quantities in the tests. `pt`, `qt` and `gal` are the US ones; see `imperialFactor`.
 */
export const unitTable = {
  mm: { dimension: "length", factor: 1 },
  in: { dimension: "length", factor: 25.4 },
  ft: { dimension: "length", factor: 304.8 },
  µm: { dimension: "length", factor: 0.001 },
  mil: { dimension: "length", factor: 0.0254 },
  "32nds": { dimension: "length", factor: 25.4 / 32 },
  km: { dimension: "length", factor: 1e6 },
  mi: { dimension: "length", factor: 1609344 },
  L: { dimension: "volume", factor: 1 },
  cc: { dimension: "volume", factor: 0.001 },
  "cu in": { dimension: "volume", factor: 0.016387064 },
  "cu ft": { dimension: "volume", factor: 28.316846592 },
  gal: { dimension: "volume", factor: 3.785411784 },
  pt: { dimension: "volume", factor: 0.473176473 },
  qt: { dimension: "volume", factor: 0.946352946 },
  kW: { dimension: "power", factor: 1 },
  hp: { dimension: "power", factor: 0.7456998715822702 },
  PS: { dimension: "power", factor: 0.73549875 },
  N·m: { dimension: "torque", factor: 1 },
  "lb-ft": { dimension: "torque", factor: 1.3558179483314003 },
  psi: { dimension: "pressure", factor: 6.894757293168361 },
  bar: { dimension: "pressure", factor: 100 },
  lb: { dimension: "mass", factor: 0.45359237 },
  kg: { dimension: "mass", factor: 1 },
  V: { dimension: "voltage", factor: 1 },
  kWh: { dimension: "energy", factor: 1 },
  A: { dimension: "current", factor: 1 },
  Ah: { dimension: "charge", factor: 1 },
  cfm: { dimension: "flow", factor: 1 },
  ga: { dimension: "gauge", factor: 1 },
  USD: { dimension: "USD", factor: 1 },
  GBP: { dimension: "GBP", factor: 1 },
  EUR: { dimension: "EUR", factor: 1 },
} as const satisfies Record<UnitName, { dimension: Dimension; factor: number }>;

/** An imperial (British) gallon is 4.54609 L, its quart a quarter and its pint an eighth of it: multiply a US figure by this to get there. */
export const imperialFactor = { gal: 4.54609 / 3.785411784, pt: 0.56826125 / 0.473176473, qt: 1.1365225 / 0.946352946 } as const;

/** The value in another unit of the same dimension, unrounded; undefined where the two do not measure the same thing. */
export function convert(value: number, from: UnitName, to: UnitName): number | undefined {
  const source = unitTable[from];
  const target = unitTable[to];
  return source.dimension === target.dimension ? (value * source.factor) / target.factor : undefined;
}

export function sameDimension(first: UnitName, second: UnitName): boolean {
  return unitTable[first].dimension === unitTable[second].dimension;
}
