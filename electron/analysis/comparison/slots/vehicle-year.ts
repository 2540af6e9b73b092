import type { Claim, ZoneName } from "../../../../shared-types/index.ts";

/** Zones in which parts are shown: a bare year there is likelier a donor's or a part's than the vehicle's. */
const zonesOfParts: ReadonlySet<ZoneName> = new Set([
  "front",
  "driver-side",
  "passenger-side",
  "rear",
  "roof",
  "cargo",
  "cabin",
  "engine-bay",
  "underside",
]);

const vehicleWords =
  /\b(car|truck|vehicle|van|model|title[ds]?|year|pickup|wagon|coupe|sedan|roadster|convertible|hatch\w*|estate|saloon|registered|plate|built)\b/i;

/** "There's a 2012 thing by the gate": what stands about is another vehicle. */
const anotherThing = /\bthere'?s (a|an|the|my|our|another) .*(thing|one|other)\b|\b(by the gate|next to|over (there|yonder)|other one)\b/i;

/** "The forty nine got wider" is about all of that year; "it's got 61" is no year. */
const ofAllThatYear =
  /^(the|those|that) (?!(car|truck|van|vehicle|one|title|plate|v5|logbook|wagon|pickup|coupe|bus)\b)\S+( \S+){0,2} (got|had|has|was|were|came|are|is|'s)\b|\b(it's|she's|he's|has|have|had|'s) got( an?)? ['’]?\d{2}\b/i;

/** A year said as one: with its century, or with an article ("it's a seventy"). Two bare figures in a farewell may be anything. */
const namedAsYear = /\b(19|20)\d\d\b|\b(nineteen|twenty|two thousand)\b|['’]\d\d\b|\b(an?|the|this|that|my|our)\b/i;

/** Whether a year given for the vehicle is surely the vehicle's own. */
export function isVehicleYear(claim: Claim): boolean {
  if (ofAllThatYear.test(claim.quote)) return false;
  if (anotherThing.test(claim.quote) || (claim.zone === "closing" && !namedAsYear.test(claim.quote) && !vehicleWords.test(claim.quote)))
    return false;
  return claim.part === null && claim.circumstance === null && (!zonesOfParts.has(claim.zone) || vehicleWords.test(claim.quote));
}
