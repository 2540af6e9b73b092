import type { Claim, ComponentName } from "../../../shared-types/index.ts";
import { noNotes } from "./facets/claim-notes.ts";
import { facetsOf } from "./facets/facets-of.ts";
import type { Facet } from "./slots/facet.ts";
import { slotPart } from "./slots/parts.ts";

/** Components of which any fact means that one is there: a spare with a size, air with a refrigerant. Common practice. */
const thereIfDescribed: ReadonlySet<ComponentName> = new Set(["spare", "air-conditioning"]);

/**
 * Facts that show a component to be there, where it is elsewhere said to be absent: "no spare" against "the spare is a 14".
 * @returns nothing for components that nobody denies, so that the common case costs nothing.
 */
export function impliedPresence(claims: readonly Claim[]): Facet[] {
  const denied = new Set<ComponentName>();
  for (const claim of claims) {
    if (
      claim.attribute === "presence" &&
      claim.value === "absent" &&
      claim.time === "today" &&
      thereIfDescribed.has(claim.component) &&
      slotPart(claim) === null
    ) {
      denied.add(claim.component);
    }
  }
  return claims.flatMap((claim) => {
    if (!denied.has(claim.component) || claim.attribute === "presence" || claim.time !== "today" || claim.attribute === "count") return [];
    return facetsOf({ ...claim, attribute: "presence", value: "present", unit: null, part: null, circumstance: null }, noNotes).map(
      (facet) => ({
        ...facet,
        claim,
      }),
    );
  });
}
