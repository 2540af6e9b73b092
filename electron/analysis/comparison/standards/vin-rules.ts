import type { Claim } from "../../../../shared-types/index.ts";
import { checkVin } from "../../numbers/check-vin.ts";
import { type ConflictDraft, conflictOf, type RemarkDraft, remarkOf } from "../conflict-of.ts";
import { moment } from "../wording.ts";
import { type ClaimIndex, modelYear, type StandardRule } from "./rule.ts";

const checkSource = "49 CFR 565.15(c): position 9 is the weighted sum of the other characters modulo 11";
const yearSource = "49 CFR 565.15: position 10 is the model year";

/** Before this model year there was no common form, and a short serial number is normal. */
const firstCommonYear = 1981;

/** Numbers spoken of as the vehicle's own; engine numbers and plates beside. */
function spokenVins(claims: ClaimIndex): Claim[] {
  return (["type", "size", "date", "count"] as const)
    .flatMap((attribute) => claims.of("vin", attribute))
    .filter(
      (claim) => claim.part === null && typeof claim.value === "string" && /^[A-Z0-9]{5,}$/i.test(claim.value) && /\d/.test(claim.value),
    );
}

function isOlder(claims: ClaimIndex): boolean {
  const named = claims.of("vehicle", "year").map((claim) => Number(claim.value));
  return named.some((year) => year < firstCommonYear);
}

export const vinCheckDigit: StandardRule = {
  name: "vin-check-digit",
  source: checkSource,
  find: (claims) => {
    const conflicts: ConflictDraft[] = [];
    const remarks: RemarkDraft[] = [];
    for (const claim of isOlder(claims) ? [] : spokenVins(claims)) {
      const check = checkVin(String(claim.value));
      if (check.formFault !== null) {
        remarks.push(
          remarkOf({
            topic: "VIN",
            why: `The number read at ${moment(claim.start)} cannot be a complete VIN. ${check.formFault}`,
            rule: "vin-form",
            claims: [claim],
          }),
        );
        continue;
      }
      const digit = check.checkDigit;
      if (!digit || digit.matches) continue;
      const working = `Weighted sum ${digit.sum} = 11 × ${Math.floor(digit.sum / 11)} + ${digit.sum % 11}: position 9 should be ${digit.expected}, it is ${digit.found}.`;
      const why = `The VIN read at ${moment(claim.start)} fails its own check digit: position 9 should be ${digit.expected} and is ${digit.found}.`;
      if (!check.northAmerican) {
        remarks.push(
          remarkOf({
            topic: "VIN check digit",
            why: `${why} Outside North America position 9 may hold anything.`,
            rule: "vin-check-digit",
            claims: [claim],
          }),
        );
        continue;
      }
      conflicts.push(
        conflictOf({
          kind: "standard",
          topic: "VIN check digit",
          why,
          rule: "vin-check-digit",
          standard: { name: "VIN check digit", source: checkSource, working },
          weight: 70,
          sides: [
            { value: check.vin, unit: null, claims: [claim] },
            { value: `check digit ${digit.expected}`, unit: null, claims: [claim] },
          ],
        }),
      );
    }
    return { conflicts, remarks };
  },
  example: {
    finds: "conflict",
    // 49 CFR 565.15's sample number with one character changed.
    claims: [{ component: "vin", attribute: "type", value: "1G4AH59H45G118331" }],
    quiet: [
      [{ component: "vin", attribute: "type", value: "1G4AH59H45G118341" }],
      [
        { component: "vehicle", attribute: "year", value: 1969 },
        { component: "vin", attribute: "type", value: "242379B112233" },
      ],
    ],
  },
};

export const vinYear: StandardRule = {
  name: "vin-model-year",
  source: yearSource,
  find: (claims) => {
    const model = modelYear(claims);
    if (!model || model.year < firstCommonYear) return { conflicts: [], remarks: [] };
    const conflicts: ConflictDraft[] = [];
    const remarks: RemarkDraft[] = [];
    for (const claim of spokenVins(claims)) {
      const check = checkVin(String(claim.value));
      if (check.formFault !== null || check.modelYears.length === 0 || check.modelYears.includes(model.year)) continue;
      const why = `Position 10 of the VIN at ${moment(claim.start)} is "${check.vin[9]}", model year ${check.modelYears.join(" or ")}; the vehicle is called a ${model.year} at ${moment(model.claims[0]!.start)}.`;
      // A number that fails its check digit was misheard somewhere, and makers outside North America need not code the year.
      if (!check.northAmerican || !check.checkDigit?.matches) {
        remarks.push(remarkOf({ topic: "VIN model year", why, rule: "vin-model-year", claims: [claim, ...model.claims] }));
        continue;
      }
      conflicts.push(
        conflictOf({
          kind: "standard",
          topic: "model year against the VIN",
          why,
          rule: "vin-model-year",
          standard: {
            name: "VIN model year",
            source: yearSource,
            working: `Position 10 = ${check.vin[9]} → ${check.modelYears.join(" or ")}; spoken ${model.year}.`,
          },
          weight: 95,
          sides: [
            { value: check.vin, unit: null, claims: [claim] },
            { value: model.year, unit: null, claims: model.claims },
          ],
        }),
      );
    }
    return { conflicts, remarks };
  },
  example: {
    finds: "conflict",
    claims: [
      { component: "vehicle", attribute: "year", value: 2004 },
      // A public test number of model year 2003.
      { component: "vin", attribute: "type", value: "1HGCM82633A004352" },
    ],
    quiet: [
      [
        { component: "vehicle", attribute: "year", value: 2003 },
        { component: "vin", attribute: "type", value: "1HGCM82633A004352" },
      ],
    ],
  },
};
