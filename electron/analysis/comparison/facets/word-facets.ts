import type { Claim } from "../../../../shared-types/index.ts";
import type { Facet, Reading } from "../slots/facet.ts";
import { slotPart } from "../slots/parts.ts";
import { unplacedMeaning } from "../slots/positions.ts";
import { topicOf, wordSlots } from "../slots/word-slots.ts";
import { huesOf } from "../values/colors.ts";
import { materialOf } from "../values/materials.ts";
import { choicesOf, cylindersIn } from "../values/type-families.ts";
import { countFacet } from "./count-facets.ts";
import { facet } from "./make-facet.ts";

const zonesInside: ReadonlySet<string> = new Set(["cabin", "cargo", "engine-bay", "underside"]);

/** A spoken kind may choose in several families; an engine's layout also counts its cylinders. */
export function typeFacets(claim: Claim): Facet[] {
  const spoken = String(claim.value);
  const facets = choicesOf(claim.component, spoken).flatMap(({ family, choice }) => {
    const part = slotPart(claim);
    return facet({
      claim,
      kind: "type",
      part: family.parts === "any" ? null : part,
      component: family.components[0]!,
      property: family.name,
      topic: family.topic,
      weight: family.weight,
      meaning: family.unplaced ?? unplacedMeaning[claim.component],
      reading: { by: "choice", family: family.name, choice },
    });
  });
  const cylinders = claim.component === "engine" ? cylindersIn(spoken) : undefined;
  if (cylinders !== undefined) facets.push(...countFacet(claim, "cylinder", cylinders));
  return facets;
}

export function wordFacets(claim: Claim): Facet[] {
  const attribute = claim.attribute as "material" | "color" | "presence" | "originality";
  const reading = wordReading(claim);
  if (!reading) return [];
  const part = slotPart(claim);
  // Inside, under the hood or below, a color without a part is that of what is in view there, not the color of the vehicle.
  if (claim.component === "paint" && attribute === "color" && part === null && zonesInside.has(claim.zone)) return [];
  const slot = wordSlots[attribute];
  const row = slot.components[claim.component];
  if (attribute === "presence" && part === null && !row) return [];
  return facet({
    claim,
    kind: attribute,
    part,
    property: attribute,
    topic: topicOf(row?.topic ?? slot.topic, claim, part),
    weight: part !== null && row?.ofWholeOnly ? slot.weight : (row?.weight ?? slot.weight),
    meaning: row?.unplaced ?? unplacedMeaning[claim.component],
    reading,
  });
}

function wordReading(claim: Claim): Reading | undefined {
  const spoken = String(claim.value);
  switch (claim.attribute) {
    case "color": {
      const options = huesOf(spoken);
      return options && { by: "options", options };
    }
    case "material": {
      const material = materialOf(spoken);
      return material === undefined ? undefined : { by: "material", material };
    }
    default:
      return { by: "word", word: spoken.toLowerCase() };
  }
}
