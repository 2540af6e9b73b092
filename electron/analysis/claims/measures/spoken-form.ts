import type { ClaimValue } from "../../../../shared-types/index.ts";
import type { Candidate } from "./candidate.ts";

/** How a repaired value is written: ratios with two decimals, money and mileage with thousands set off, the rest as the claim carries it. */
export function writtenMeaning(candidate: Candidate, value: ClaimValue): string {
  const { attribute, component } = candidate.slot;
  if (typeof value !== "number") return value;
  if (attribute === "ratio" && component === "final-drive") return value.toFixed(2);
  if ((attribute === "price" || attribute === "mileage") && Number.isInteger(value) && value >= 1000)
    return String(value).replace(/\B(?=(\d{3})+$)/g, ",");
  return String(value);
}
