import { isPlausibleRatio, isSoldRatio } from "../../vocabulary/axle-ratios.ts";
import { isKnownDisplacement } from "../../vocabulary/displacements.ts";
import { metricRimsMm } from "../../vocabulary/tire-geometry.ts";
import type { Draft } from "../rule.ts";
import { dateCodeDrafts } from "./date-drafts.ts";

/** A three-digit number said or split as such: an axle ratio without its point, a displacement, a plain count. */
export function threeDigitDrafts(digits: string, options: { plural: boolean; spelled: boolean; whole: number }): Draft[] {
  const value = Number(digits);
  // "308s" and "three seventies" name a set of gears far oftener than so many of anything.
  const drafts: Draft[] = [{ kind: "integer", value, weight: options.plural ? options.whole * 0.7 : options.whole, repaired: false }];
  const ratio = value / 100;
  if (isPlausibleRatio(ratio)) {
    const weight = (isSoldRatio(ratio) ? 0.42 : 0.2) + (options.plural && isSoldRatio(ratio) && !isTireWidth(value) ? 0.22 : 0);
    drafts.push({ kind: "ratio", value: ratio, weight, repaired: true, topic: "ratio" });
  }
  // "three 38 stroke" and "that's one one eight": inches without their point.
  if (value >= 200 && value <= 525)
    drafts.push({ kind: "decimal", value: ratio, weight: 0.2, repaired: true, topic: "stroke", needsTopic: true });
  if (value >= 80 && value <= 160 && options.spelled)
    drafts.push({ kind: "decimal", value: ratio, weight: 0.2, repaired: true, topic: "thickness", needsTopic: true });
  if (isKnownDisplacement(value))
    drafts.push({ kind: "measure", value, unit: "cu in", weight: options.plural ? 0.22 : 0.4, topic: "displacement" });
  if (value >= 100 && value < 200)
    drafts.push({ kind: "integer", value: value * 1000, weight: 0.1, repaired: true, topic: "mileage", needsTopic: true });
  if (value >= 100 && value <= 250) drafts.push({ kind: "measure", value, unit: "psi", weight: 0.25, topic: "pressure", needsTopic: true });
  if (value > 350 && metricRimsMm.includes(value))
    drafts.push({ kind: "measure", value, unit: "mm", weight: 0.4, topic: "wheel", needsTopic: true });
  if (value >= 390 && value <= 1250 && value % 5 === 0)
    drafts.push({ kind: "measure", value, unit: "cfm", weight: 0.35, topic: "flow", needsTopic: true });
  drafts.push(...dateCodeDrafts(digits, options.spelled));
  return drafts;
}

/** 235, 255: "two thirty fives" are tires unless gears are spoken of; 355 and 455 are no common width. */
function isTireWidth(value: number): boolean {
  return value % 10 === 5 && value >= 155 && value <= 325;
}

/** "seventeens", "thirty fives": wheels or off-road tires named by their inches. */
export function pluralDrafts(value: number): Draft[] {
  const drafts: Draft[] = [];
  if (value >= 12 && value <= 26) drafts.push({ kind: "measure", value, unit: "in", weight: 0.64, topic: "wheel" });
  if (value >= 27 && value <= 54) drafts.push({ kind: "measure", value, unit: "in", weight: 0.62, topic: "tire" });
  return drafts;
}

export function decimalDrafts(value: number, digits: string, repaired: boolean): Draft[] {
  const drafts: Draft[] = [{ kind: "decimal", value, weight: 0.7, repaired }];
  const places = digits.split(".")[1]?.length ?? 0;
  if (places >= 1 && places <= 2 && isPlausibleRatio(value))
    drafts.push({ kind: "ratio", value, weight: isSoldRatio(value) && places === 2 ? 0.6 : 0.35, repaired, topic: "ratio" });
  if (places === 1 && value >= 0.6 && value <= 8.9)
    drafts.push({ kind: "measure", value, unit: "L", weight: 0.4, repaired, topic: "displacement" });
  // "asking 18.9", "58.4 on the clock": thousands; three places are thousands with a point for the comma.
  if ((places === 1 && value >= 10 && value < 400) || (places === 3 && value >= 1)) {
    const thousands = Math.round(value * 1000);
    drafts.push({ kind: "integer", value: thousands, weight: 0.25, repaired: true, topic: "price", needsTopic: true });
    drafts.push({ kind: "integer", value: thousands, weight: 0.25, repaired: true, topic: "mileage", needsTopic: true });
  }
  return drafts;
}

/** Thirteen and thirty and their like sound alike: the other one stays a candidate, never the first. */
export function mishearing(value: number, written: string): Draft[] {
  if (written !== "words") return [];
  if (value >= 13 && value <= 19) return [{ kind: "integer", value: (value - 10) * 10, weight: 0.05, repaired: true }];
  if (value >= 30 && value <= 90 && value % 10 === 0) return [{ kind: "integer", value: value / 10 + 10, weight: 0.05, repaired: true }];
  return [];
}
