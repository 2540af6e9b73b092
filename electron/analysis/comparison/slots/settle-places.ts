import { rimNamedIn } from "../values/tire-sizes.ts";
import type { Facet, Place } from "./facet.ts";
import { unplacedMeaning } from "./positions.ts";

const fronts: ReadonlySet<Place> = new Set<Place>(["front", "driver-front", "passenger-front"]);
const rears: ReadonlySet<Place> = new Set<Place>(["rear", "driver-rear", "passenger-rear"]);

/**
 * Tires, wheels and brake rotors come in pairs that may rightly differ, and a speaker who stands at one side often leaves out which he means. Once front
 * and rear are both known, such a claim can be placed:
 *
 * - "this side" with a value known from the front or the rear is about that one;
 * - a value in view that is neither the front's nor the rear's is about no tire the vehicle has, and meets both. One of another rim
 *   is left alone: it may be the spare's.
 */
export function settlePlaces(facets: readonly Facet[], classes: readonly number[]): readonly Facet[] {
  const inPairs = facets.some((facet) => facet.place === "in-view" || unplacedMeaning[facet.subject.component] === "resolve");
  if (!inPairs) return facets;
  const frontClasses = classesAt(facets, classes, fronts);
  const rearClasses = classesAt(facets, classes, rears);
  const bothKnown = frontClasses.size > 0 && rearClasses.size > 0;
  const rims = new Set(facets.filter((facet) => fronts.has(facet.place) || rears.has(facet.place)).map(rimOf));
  return facets.map((facet, position) => {
    const classNumber = classes[position]!;
    const known = frontClasses.has(classNumber) || rearClasses.has(classNumber);
    if ((facet.place === "driver" || facet.place === "passenger") && known) return { ...facet, place: "in-view" };
    if (facet.place === "in-view" && bothKnown && !known && rims.has(rimOf(facet))) return { ...facet, place: "anywhere" };
    return facet;
  });
}

function classesAt(facets: readonly Facet[], classes: readonly number[], places: ReadonlySet<Place>): ReadonlySet<number> {
  return new Set(facets.flatMap((facet, position) => (places.has(facet.place) ? [classes[position]!] : [])));
}

/** Inches; undefined for what names no rim. */
function rimOf(facet: Facet): number | undefined {
  return typeof facet.claim.value === "string" ? rimNamedIn(facet.claim.value)?.inches : undefined;
}
