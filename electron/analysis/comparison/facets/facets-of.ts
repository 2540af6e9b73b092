import type { Claim } from "../../../../shared-types/index.ts";
import type { Facet } from "../slots/facet.ts";
import { figureAttributes, isSpokenOtherwise } from "../slots/spoken-otherwise.ts";
import type { ClaimNotes } from "./claim-notes.ts";
import { countFacets } from "./count-facets.ts";
import { figureFacets } from "./figure-facets.ts";
import { tireDateFacets, tireSizeFacets } from "./tire-facets.ts";
import { typeFacets, wordFacets } from "./word-facets.ts";

/** Rules whose claims are shown for what they are worth, and are too unsure of what was measured to hold against another. */
const leastSure: ReadonlySet<string> = new Set(["measure of the nearest part"]);

/**
 * What it runs on, and how its windows go, are told plainly; words that merely go with them ("unleaded", "plug it in", "a switch in the
 * door") are as often said of another vehicle, or of another thing that is switched.
 */
const loosestSigns = /^(?:engine fuel|glass side window|side window) .*, by its signs/;

/** Everything that one claim says, made comparable. Former states give nothing: they say nothing about the vehicle as it stands. */
export function facetsOf(claim: Claim, notes: ClaimNotes): Facet[] {
  if (claim.time === "former" || isSpokenOtherwise(claim) || leastSure.has(claim.rule) || loosestSigns.test(claim.rule)) return [];
  const { attribute, component } = claim;
  if ((component === "tire" || component === "spare") && attribute === "size") return tireSizeFacets(claim);
  if ((component === "tire" || component === "spare") && (attribute === "date" || attribute === "year")) return tireDateFacets(claim);
  if (figureAttributes.has(attribute)) return figureFacets(claim, notes);
  if (attribute === "count") return countFacets(claim);
  if (attribute === "type") return typeFacets(claim);
  if (attribute === "material" || attribute === "color" || attribute === "presence" || attribute === "originality")
    return wordFacets(claim);
  return [];
}
