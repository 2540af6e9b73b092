import type { Claim } from "../../../../shared-types/index.ts";
import { checkVin } from "../../numbers/check-vin.ts";
import { type ConflictDraft, conflictOf, type RemarkDraft, remarkOf } from "../conflict-of.ts";
import { listed, moment } from "../wording.ts";
import { byValue, type ClaimIndex, modelYear, nothingFound, type StandardRule } from "./rule.ts";

const checkSource = "49 CFR 565.15(c): position 9 is the weighted sum of the other characters modulo 11";
const yearSource = "49 CFR 565.15: position 10 is the model year";

/** Before this model year there was no common form, and a short serial number is normal. */
const firstCommonYear = 1981;

interface VinNamed {
  /** The first of them. */
  readonly claim: Claim;
  readonly all: readonly Claim[];
}

/** Numbers spoken of as the vehicle's own, engine numbers and plates beside; one for each number, however often it was read. */
function spokenVins(claims: ClaimIndex): VinNamed[] {
  const named = (["type", "size", "date", "count"] as const)
    .flatMap((attribute) => claims.of("vin", attribute))
    .filter(
      (claim) => claim.part === null && typeof claim.value === "string" && /^[A-Z0-9]{5,}$/i.test(claim.value) && /\d/.test(claim.value),
    );
  return [...byValue(named).values()].map((all) => ({ claim: all[0]!, all }));
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
    for (const { claim, all } of isOlder(claims) ? [] : spokenVins(claims)) {
      const check = checkVin(String(claim.value));
      if (check.formFault !== null) {
        remarks.push(
          remarkOf({
            topic: "VIN",
            why: `The number read at ${moment(claim.start)} cannot be a complete VIN. ${check.formFault}`,
            rule: "vin-form",
            claims: all,
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
            claims: all,
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
            { value: check.vin, unit: null, claims: all },
            { value: `check digit ${digit.expected}`, unit: null, claims: all },
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
    for (const { claim, all } of spokenVins(claims)) {
      const check = checkVin(String(claim.value));
      if (check.formFault !== null || check.modelYears.length === 0 || check.modelYears.includes(model.year)) continue;
      const why = `Position 10 of the VIN at ${moment(claim.start)} is "${check.vin[9]}", model year ${check.modelYears.join(" or ")}; the vehicle is called a ${model.year} at ${moment(model.claims[0]!.start)}.`;
      // A number that fails its check digit was misheard somewhere, and makers outside North America need not code the year.
      if (!check.northAmerican || !check.checkDigit?.matches) {
        remarks.push(remarkOf({ topic: "VIN model year", why, rule: "vin-model-year", claims: [...all, ...model.claims] }));
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
            { value: check.vin, unit: null, claims: all },
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

export const vinReadTwice: StandardRule = {
  name: "vin-read-twice",
  source: `A vehicle has one VIN; ${checkSource}`,
  find: (claims) => {
    const whole = spokenVins(claims)
      .map((named) => ({ ...named, check: checkVin(String(named.claim.value)) }))
      .filter(({ check }) => check.formFault === null);
    const [first, ...others] = whole;
    if (!first || others.length === 0) return nothingFound;
    const valid = whole.filter(({ check }) => check.checkDigit?.matches);
    const [one, other] = valid;
    const readings = whole.map(({ claim, check }) => `${check.vin} at ${moment(claim.start)}`);
    // Where one alone passes, the others were misread from it.
    if (!one || !other) {
      const why = `The VIN is read in different ways: ${listed(readings)}.${one ? ` Only ${one.check.vin} passes its check digit.` : ""}`;
      return { conflicts: [], remarks: [remarkOf({ topic: "VIN", why, rule: "vin-read-twice", claims: whole.flatMap(({ all }) => all) })] };
    }
    return {
      conflicts: [
        conflictOf({
          kind: "standard",
          topic: "VIN",
          why: `Two complete VINs are read: ${listed(readings)}.`,
          rule: "vin-read-twice",
          standard: {
            name: "VIN check digit",
            source: checkSource,
            working: valid
              .map(({ check }) => `${check.vin}: sum ${check.checkDigit!.sum}, check digit ${check.checkDigit!.expected}, passes`)
              .join("; "),
          },
          weight: 95,
          sides: valid.map(({ check, all }) => ({ value: check.vin, unit: null, claims: all })),
        }),
      ],
      remarks: [],
    };
  },
  example: {
    finds: "conflict",
    claims: [
      { component: "vin", attribute: "type", value: "1HGCM82633A004352" },
      { component: "vin", attribute: "type", value: "1M8GDM9AXKP042788" },
    ],
    quiet: [
      [
        { component: "vin", attribute: "type", value: "1HGCM82633A004352" },
        { component: "vin", attribute: "type", value: "1HGCM82633A004352" },
      ],
      [
        { component: "vin", attribute: "type", value: "1HGCM82633A004352" },
        { component: "vin", attribute: "type", value: "1HGCM82633A004353" },
      ],
    ],
  },
};
