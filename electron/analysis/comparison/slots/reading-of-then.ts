import type { Claim } from "../../../../shared-types/index.ts";

/** In the papers, a figure put like this is what it stood at when the entry was made. */
const entryWords =
  /\b(at|was|were|had|with)\b[^.]*\b(miles|km|kilomet(er|re)s|thousand|stamp(ed)?|then)\b|\b(service[ds]?|inspection|stamp(ed|s)?|m ?o ?t|certificate|bought it|auction|transfer(red)?|oil change)\b/i;

/** What the reader of measures calls a figure that somebody wrote down at a test. */
const inCertificate = "in a test certificate";

/** Whether an odometer figure is a past one, out of the papers, and not what the dial shows today. */
export function isReadingOfThen(claim: Claim): boolean {
  if (claim.component !== "odometer" || claim.attribute !== "mileage") return false;
  return claim.circumstance === inCertificate || (claim.zone === "documents" && entryWords.test(claim.quote));
}
