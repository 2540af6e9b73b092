import type { AttributeName, Claim } from "../../../../shared-types/index.ts";
import type { Facet } from "../slots/facet.ts";
import type { ClaimNotes } from "./claim-notes.ts";
import { countFacets } from "./count-facets.ts";
import { figureFacets } from "./figure-facets.ts";
import { tireDateFacets, tireSizeFacets } from "./tire-facets.ts";
import { typeFacets, wordFacets } from "./word-facets.ts";

const figureAttributes: ReadonlySet<AttributeName> = new Set([
  "size",
  "diameter",
  "width",
  "displacement",
  "year",
  "ratio",
  "flow",
  "mileage",
  "price",
  "thickness",
  "voltage",
  "power",
  "torque",
  "pressure",
  "depth",
  "date",
]);

/** Everything that one claim says, made comparable. Former states give nothing: they say nothing about the vehicle as it stands. */
export function facetsOf(claim: Claim, notes: ClaimNotes): Facet[] {
  if (claim.time === "former" || isSupposed(claim) || ofOtherVehicles.test(claim.quote)) return [];
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

/** "The four cylinder ones", "the white one's a gasser": a kind of vehicle, or one that stands beside. */
const ofOtherVehicles =
  /\b(cylinder|litre|liter|diesel|petrol|gas|door|speed|later|earlier|newer|older|other|base|cheaper|sport) ones\b|\b(white|black|blue|red|green|silver|gr[ae]y|gas|other|next) one('s| is| has| had)\b/i;

/** Words of another time or of what should be, whatever the claim was taken for; what is "original" is put the same way and is no such. */
function isSupposed({ attribute, quote }: Claim): boolean {
  if (attribute === "originality") return false;
  return supposed.test(quote) || (figureAttributes.has(attribute) && supposedFigure.test(quote));
}

const supposed =
  /\b(originally|used to|supposed to|(would|should)('?ve| have) (been|come|had|gone|cost|left|got(ten)?|looked|run|sat|worn|\w+ed)\b)/i;
const supposedFigure = /\b(would'?ve|would have|should'?ve|should have|(was|were) an? .*\b(before|until)|stock (was|were|is|one))\b/i;
