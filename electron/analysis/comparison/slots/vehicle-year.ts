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

/** Whether a year given for the vehicle is surely the vehicle's own. */
export function isVehicleYear(claim: Claim): boolean {
  return claim.part === null && claim.circumstance === null && (!zonesOfParts.has(claim.zone) || vehicleWords.test(claim.quote));
}
