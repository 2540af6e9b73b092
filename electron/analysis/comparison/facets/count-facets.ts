import type { Claim } from "../../../../shared-types/index.ts";
import type { Facet, Place } from "../slots/facet.ts";
import { slotPart } from "../slots/parts.ts";
import { unplacedMeaning } from "../slots/positions.ts";
import { topicOf, wordSlots } from "../slots/word-slots.ts";
import { facet } from "./make-facet.ts";

/** Counts that move the price. */
const countWeights: Readonly<Record<string, number>> = { owner: 80, gear: 70, cylinder: 85, key: 40, door: 60, "main bearing": 50 };

/** Words by which a count is of a share of the whole, not of the whole. */
const shareWords = /\b(each|apiece|per|a (side|corner|cylinder|piece|wheel|pack))\b/i;

/** One seat has eighteen ways and the next six. */
const variesWithin: ReadonlySet<string> = new Set(["adjustment", "way"]);

/** Always counted by their share, said or not: the leaves of one spring, the lugs of one wheel, the spokes of another, the rows of one radiator. */
const countedByShare: ReadonlySet<string> = new Set(["leaf", "lug", "spoke", "row"]);

/** "The first owner" is a person and no count; "a one owner car" is one. */
const onePersonOfSeveral = /\b(the|its|his|her|their) (very )?(first|original|second|last|previous)( (owner|keeper)s?|$)/i;

/**
 * What a spoken count may be in another's words. A hatch is counted as a door or not; "previous" owners leave out the last one or not;
 * an overdrive is counted as a gear or not. Common practice of the trade.
 */
export const countedOtherwise: readonly {
  readonly part: string;
  readonly words: RegExp | null;
  readonly counts: (count: number) => readonly number[];
  readonly example: { readonly said: string; readonly count: number; readonly mayBe: readonly number[] };
}[] = [
  {
    part: "door",
    words: null,
    counts: (count) => [count - (count % 2), count - (count % 2) + 1],
    example: { said: "five door", count: 5, mayBe: [4, 5] },
  },
  {
    part: "gear",
    words: /\b(overdrive|over drive|od|plus)\b/i,
    counts: (count) => [count, count + 1],
    example: { said: "four speed with overdrive", count: 4, mayBe: [4, 5] },
  },
];

export function countFacets(claim: Claim): Facet[] {
  const part = slotPart(claim);
  const count = Number(claim.value);
  if (part === null || !Number.isInteger(count) || variesWithin.has(part)) return [];
  if (countedByShare.has(part)) {
    // Thirty-two lugs on four wheels are eight on each.
    if (/\b(total|in all|all (four|together|told|the way)|altogether)\b/i.test(claim.quote)) return [];
  } else if (shareWords.test(claim.quote)) return [];
  if (part === "gear" && count > mostGears && !/\b(speeds?|gears?|ratios?)\b/i.test(claim.quote)) return [];
  // Nothing of this gearbox is in view behind the rear flap: what is told there is of another.
  if (part === "gear" && claim.zone === "cargo") return [];
  // "The type two on the top": a name and no count.
  if (/\btype (?:one|two|three|1|2|3)\b/i.test(claim.quote)) return [];
  if (part === "owner" && onePersonOfSeveral.test(claim.quote)) return [];
  return countFacet(claim, part, count);
}

/** Where a part is counted that the speaker did not place: a leaf spring in front is called the front one. Common practice. */
const usualPlaces: Readonly<Record<string, Place>> = { leaf: "rear" };

/** Five belts in all and two in front are two counts, not two answers: only counts for one place are compared. */
export function countFacet(claim: Claim, part: string, count: number): Facet[] {
  const { topic, weight } = wordSlots.count;
  const meaning = unplacedMeaning[claim.component];
  const [made] = facet({
    // "At least" widens the count and does not set it apart.
    claim: claim.circumstance === atLeast || claim.circumstance === claim.component ? { ...claim, circumstance: null } : claim,
    kind: "count",
    part,
    property: "count",
    topic: topicOf(topic, claim, part),
    weight: countWeights[part] ?? weight,
    meaning: meaning === "placed-only" ? "general" : meaning,
    reading: {
      by: "options",
      options: part === "owner" ? ownerOptions(claim, count) : new Set(optionsFor(claim, part, count).map(String)),
    },
  });
  if (!made) return [];
  const unplaced = made.place === "loosely" || made.place === "in-view";
  const place: Place = unplaced ? (bumperInView(claim) ?? usualPlaces[part] ?? "all") : made.place;
  // Sixty spokes all round meet seventy-two in one wheel; five belts in all do not meet two in front.
  return [{ ...made, claim, place, slot: countedByShare.has(part) ? made.slot : `${made.slot}|${place}` }];
}

/** The bumper that is in view: "four sensors", said at the back. */
function bumperInView({ component, zone }: Claim): Place | undefined {
  return component === "bumper" && (zone === "front" || zone === "rear") ? zone : undefined;
}

const formerWords = /\b(previous|former|before|prior|past)\b/i;

/**
 * Former owners and owners are counted apart: "two former" are two or three in all, by whether the last one is counted. Each pair of counts
 * that may be one is an option, "2|3", so that one former owner never agrees with two. Common practice of the trade.
 */
export function ownerOptions(claim: Pick<Claim, "quote" | "circumstance">, count: number): ReadonlySet<string> {
  // Those named in turn are so many at least: the one before, or the one who sells it, may have gone unnamed.
  if (claim.circumstance === atLeast)
    return new Set(Array.from({ length: mostOwners }, (_, more) => [...ownersCounted(claim.quote, count + more)]).flat());
  return ownersCounted(claim.quote, count);
}

const mostOwners = 12;

function ownersCounted(quote: string, count: number): ReadonlySet<string> {
  return formerWords.test(quote)
    ? new Set([`former ${count}`, `${count}|${count}`, `${count}|${count + 1}`])
    : new Set([`owners ${count}`, `${count}|${count}`, `${count - 1}|${count}`]);
}

/** A gear that was driven in shows that there are so many at least. */
const atLeast = "at least";
const mostGears = 10;

function optionsFor(claim: Claim, part: string, count: number): readonly number[] {
  if (claim.circumstance === atLeast) return Array.from({ length: Math.max(1, mostGears - count + 1) }, (_, more) => count + more);
  const row = countedOtherwise.find((candidate) => candidate.part === part && (candidate.words?.test(claim.quote) ?? true));
  return row ? row.counts(count) : [count];
}
