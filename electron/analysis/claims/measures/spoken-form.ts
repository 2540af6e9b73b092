import type { ClaimValue } from "../../../../shared-types/index.ts";
import type { Reading } from "../../model.ts";
import type { Candidate } from "./candidate.ts";

/** "Eleven thirty seconds": written out like a time, and a fraction of an inch. */
export function isThirtySeconds(reading: Reading, said: string): boolean {
  return reading.unit === "32nds" && !/\d ?\/ ?32/.test(said);
}

/** How a repaired value is written: ratios with two decimals, money and mileage with thousands set off, the rest as the claim carries it. */
export function writtenMeaning(candidate: Candidate, value: ClaimValue): string {
  const { attribute, component } = candidate.slot;
  if (typeof value !== "number") return value;
  if (candidate.reading.unit === "32nds") return `${value}/32`;
  if (attribute === "ratio" && component === "final-drive") return value.toFixed(2);
  if ((attribute === "price" || attribute === "mileage") && Number.isInteger(value) && value >= 1000)
    return String(value).replace(/\B(?=(\d{3})+$)/g, ",");
  return String(value);
}
