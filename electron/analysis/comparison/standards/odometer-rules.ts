import { conflictOf, remarkOf } from "../conflict-of.ts";
import { isLoose } from "../values/approximation.ts";
import { claimWords, moment } from "../wording.ts";
import { modelYear, type StandardRule } from "./rule.ts";

const disclosureSource =
  "49 CFR 580.17(a): disclosure not required for model year 2010 or older once 10 years have passed, nor for 2011 and later once 20 have";

/**
 * Whether a vehicle's odometer disclosure is exempt when it is sold in `transferYear` (49 CFR 580.17(a)): model year 2010 or older once
 * 10 years have passed, later ones once 20 have. Weight and self-propulsion, the other grounds, are not spoken of here.
 */
export function odometerExempt(modelYearOfVehicle: number, transferYear: number): boolean {
  return transferYear - modelYearOfVehicle >= (modelYearOfVehicle <= 2010 ? 10 : 20);
}

const notActual = /\b(not actual|tmu|true mileage unknown|exceeds|rolled over|mileage unknown)\b/i;
const exempt = /\bexempt\b/i;

export const mileageAgainstTitle: StandardRule = {
  name: "mileage-against-title",
  source: disclosureSource,
  find: (claims) => {
    const titles = [...claims.of("title", "type"), ...claims.of("odometer", "type")];
    const actual = [
      ...claims.of("odometer", "originality").filter((claim) => claim.value === "original" && claim.stance === "stated"),
      ...claims
        .of("odometer", "mileage")
        .filter((claim) => /\b(actual|original|true|correct|genuine)\b/i.test(claim.quote) && !isLoose(claim)),
    ].sort((a, b) => a.start - b.start || (a.id < b.id ? -1 : 1));
    const first = actual[0];
    const unknown = titles.filter((claim) => notActual.test(String(claim.value)) || notActual.test(claim.quote));
    const firstUnknown = unknown[0];
    const conflicts =
      first && firstUnknown
        ? [
            conflictOf({
              kind: "standard",
              topic: "actual mileage against title status",
              why: `The mileage is called actual at ${moment(first.start)}, and the title says otherwise at ${moment(firstUnknown.start)} ("${firstUnknown.quote}").`,
              rule: "mileage-against-title",
              standard: {
                name: "Odometer disclosure",
                source: "49 CFR 580.5: the transferor certifies the reading as actual, in excess of mechanical limits, or not actual",
                working: `Stated ${claimWords(first)} as actual; title: ${firstUnknown.value}.`,
              },
              weight: 95,
              sides: [
                { value: first.value, unit: first.unit, claims: actual },
                { value: firstUnknown.value, unit: null, claims: unknown },
              ],
            }),
          ]
        : [];
    const exemptTitle = titles.find((claim) => exempt.test(`${claim.value} ${claim.quote}`));
    const model = modelYear(claims);
    const remarks = exemptTitle
      ? [
          remarkOf({
            topic: "odometer disclosure",
            why: `The title is exempt from odometer disclosure (${moment(exemptTitle.start)})${first ? `, and the mileage is called actual at ${moment(first.start)}` : ""}: the paper does not vouch for the reading${
              model && claims.recordedOn !== null && !odometerExempt(model.year, Number(claims.recordedOn.slice(0, 4)))
                ? `, and a ${model.year} is not yet exempt by age (49 CFR 580.17)`
                : ""
            }.`,
            rule: "mileage-against-title",
            claims: [exemptTitle, ...(first ? [first] : [])],
          }),
        ]
      : [];
    return { conflicts, remarks };
  },
  example: {
    finds: "conflict",
    claims: [
      { component: "odometer", attribute: "mileage", value: 58412, unit: "mi", quote: "58,412 actual miles" },
      { component: "title", attribute: "type", value: "not actual", quote: "the title says not actual mileage" },
    ],
    quiet: [
      [
        { component: "odometer", attribute: "originality", value: "original", quote: "those are the actual miles" },
        { component: "title", attribute: "type", value: "clean", quote: "clean title" },
      ],
      [
        { component: "odometer", attribute: "mileage", value: 58412, unit: "mi", quote: "58,412" },
        { component: "title", attribute: "type", value: "not actual", quote: "the title says not actual mileage" },
      ],
    ],
  },
};
