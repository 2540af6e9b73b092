import type { Claim, ComponentName } from "../../../shared-types/index.ts";
import { noNotes } from "./facets/claim-notes.ts";
import { facetsOf } from "./facets/facets-of.ts";
import type { Facet } from "./slots/facet.ts";
import { homeOf } from "./slots/homes.ts";
import { slotPart } from "./slots/parts.ts";

/** Components of which any fact means that one is there: a spare with a size, air with a refrigerant. Common practice. */
const thereIfDescribed: ReadonlySet<ComponentName> = new Set(["spare", "air-conditioning"]);

/** What is denied or shown: a part by its home, or a whole component of those above. */
function thingOf(claim: Claim): string | undefined {
  const home = homeOf({ ...claim, attribute: "presence" }, slotPart(claim));
  if (home.part !== null) return `${home.component}|${home.part}`;
  return thereIfDescribed.has(claim.component) && (claim.component === "spare" || claim.attribute !== "size")
    ? `${claim.component}|`
    : undefined;
}

/** What shows a part to be there: not that it is gone, nor how many there are where there may be none. */
function shows({ attribute, value, circumstance }: Claim): boolean {
  if (attribute === "presence" || attribute === "price" || attribute === "originality" || attribute === "date") return false;
  if (attribute === "count") return Number(value) > 0 && circumstance === null;
  return true;
}

/**
 * Facts that show a thing to be there, where it is elsewhere said to be absent: "no spare" against "the spare is a 14", "no tow bar"
 * against its worn ball.
 * @returns nothing for things that nobody denies, so that the common case costs nothing.
 */
export function impliedPresence(claims: readonly Claim[]): Facet[] {
  const denied = new Set<string>();
  for (const claim of claims) {
    if (claim.attribute !== "presence" || claim.value !== "absent" || claim.time !== "today") continue;
    const thing = thingOf(claim);
    if (thing !== undefined) denied.add(thing);
  }
  if (denied.size === 0) return [];
  const deniedAt = new Set(
    claims.flatMap((claim) =>
      claim.attribute === "presence" && claim.value === "absent" ? claim.captions.map((caption) => `${thingOf(claim)} ${caption}`) : [],
    ),
  );
  const deniedIn = (claim: Claim): boolean =>
    claim.attribute === "condition" && claim.captions.some((caption) => deniedAt.has(`${thingOf(claim)} ${caption}`));
  return claims.flatMap((claim) => {
    if (claim.time !== "today" || !shows(claim)) return [];
    // "No sunroof, thank heaven, for they leak": said of such things.
    if (deniedIn(claim)) return [];
    const described = thingOf(claim);
    // A figure that was filed under air conditioning for want of a better place shows nothing.
    const whole =
      thereIfDescribed.has(claim.component) && (claim.component === "spare" || claim.attribute !== "size")
        ? `${claim.component}|`
        : undefined;
    const thing = [described, whole].find((candidate) => candidate !== undefined && denied.has(candidate));
    if (thing === undefined) return [];
    const part = thing.split("|")[1] || null;
    return facetsOf({ ...claim, attribute: "presence", value: "present", unit: null, part, circumstance: null }, noNotes).map((facet) => ({
      ...facet,
      claim,
    }));
  });
}
