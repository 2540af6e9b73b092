import type { AttributeName, ComponentName } from "../../../../shared-types/index.ts";
import type { Facet } from "./facet.ts";

/** Where a claim about all of a component is one about each of its parts: "every panel is steel", "all original glass". */
const covered = [
  "body.material",
  "body.originality",
  "paint.originality",
  "glass.originality",
  "glass.condition",
  "trim.originality",
  "exhaust.material",
] as const satisfies readonly `${ComponentName}.${AttributeName}`[];

/** Hung on the body and not pressed with it: "a steel body" says nothing of them. Common practice. */
const notOfThePanels: ReadonlySet<string> = new Set([
  "running board",
  "step",
  "side step",
  "mirror",
  "mud flap",
  "side curtain",
  "spoiler",
  "sun visor",
  "visor",
  "badge",
  "bumper",
  "grille",
  "handle",
  "door handle",
  "door card",
  "door panel",
  "roof rack",
  "hitch",
  "tow bar",
  "awning",
  "ladder",
]);

/** What an exhaust system is sold with; manifolds, down pipes and tips are of their own material. Common practice. */
const ofTheSystem: ReadonlySet<string> = new Set([
  "muffler",
  "silencer",
  "tailpipe",
  "tail pipe",
  "resonator",
  "back box",
  "center section",
]);

/**
 * Claims about all of a component, given once more for every part of it that was also spoken of. Parts are those of the lexicon, a handful
 * for each component, so cost grows with the claims.
 */
export function coveringFacets(facets: readonly Facet[]): Facet[] {
  const wholes = new Map<string, Facet[]>();
  const partSlots = new Map<string, Set<string>>();
  for (const facet of facets) {
    const { component, part, property } = facet.subject;
    const key = `${component}.${property}`;
    if (!(covered as readonly string[]).includes(key)) continue;
    if (part === null) {
      if (facet.place !== "all" && facet.place !== "anywhere") continue;
      const here = wholes.get(key);
      if (here) here.push(facet);
      else wholes.set(key, [facet]);
    } else if (!(component === "body" && notOfThePanels.has(part)) && !(component === "exhaust" && !ofTheSystem.has(part))) {
      const here = partSlots.get(key);
      if (here) here.add(facet.slot);
      else partSlots.set(key, new Set([facet.slot]));
    }
  }
  return [...wholes].flatMap(([key, facetsOfAll]) =>
    [...(partSlots.get(key) ?? [])].flatMap((slot) => facetsOfAll.map((facet) => ({ ...facet, slot }))),
  );
}
