import type { Claim } from "../../../../shared-types/index.ts";
import type { Facet } from "../slots/facet.ts";
import { cornerInView } from "../slots/own-words.ts";
import { slotPart } from "../slots/parts.ts";
import { unplacedMeaning } from "../slots/positions.ts";
import { tireDatesOf } from "../values/tire-dates.ts";
import { plainTireSize } from "../values/tire-sizes.ts";
import { facet } from "./make-facet.ts";

export function tireSizeFacets(claim: Claim): Facet[] {
  if (typeof claim.value !== "string") return [];
  const spare = claim.component === "spare" || slotPart(claim) === "spare";
  return facet({
    claim,
    kind: "measure",
    part: null,
    component: spare ? "spare" : "tire",
    property: "size",
    topic: spare ? "spare tire size" : "tire size",
    weight: spare ? 40 : 85,
    meaning: spare ? "single" : unplacedMeaning.tire,
    reading: { by: "tire-size", size: plainTireSize(claim.value) },
  });
}

export function tireDateFacets(claim: Claim): Facet[] {
  const dates = tireDatesOf(claim.value);
  if (dates.length === 0) return [];
  const spare = claim.component === "spare" || slotPart(claim) === "spare";
  return facet({
    claim: spare ? claim : { ...claim, position: cornerInView(claim) },
    kind: "measure",
    part: null,
    component: spare ? "spare" : "tire",
    property: "date",
    topic: spare ? "spare tire date" : "tire date",
    weight: spare ? 25 : 55,
    meaning: spare ? "single" : "general",
    reading: {
      by: "tire-date",
      dates,
      key: dates
        .map((date) => `${date.year ?? `?${date.yearDigit}`}-${date.week ?? (date.month === null ? "" : `month ${date.month}`)}`)
        .join("/"),
    },
  });
}
