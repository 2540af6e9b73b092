import type { PositionName } from "../../../../shared-types/index.ts";
import { classesOf } from "./classes.ts";
import type { Facet, Place } from "./facet.ts";
import { narrower, positionsMeet } from "./positions.ts";
import { settlePlaces } from "./settle-places.ts";

/** Facets of one slot that cannot all hold. */
export interface Dispute {
  /** Two or more, each of equal values; in order of their first moment. */
  readonly sides: readonly (readonly Facet[])[];
  /** The place the contradiction is about; null for the vehicle as a whole, or where it runs over several places. */
  readonly position: PositionName | null;
}

/** One slot's facets with the class of each. */
export interface ClassedSlot {
  readonly facets: readonly Facet[];
  readonly classes: readonly number[];
}

/** Groups facets by slot, in the order slots first appear, and sorts each slot's values into classes. */
export function classedSlots(facets: readonly Facet[]): ClassedSlot[] {
  const bySlot = new Map<string, Facet[]>();
  for (const facet of facets) {
    const slot = bySlot.get(facet.slot);
    if (slot) slot.push(facet);
    else bySlot.set(facet.slot, [facet]);
  }
  return [...bySlot.values()].map((slot) => ({ facets: slot, classes: classesOf(slot) }));
}

const unplaced: ReadonlySet<Place> = new Set<Place>(["anywhere", "loosely", "in-view"]);

function placesMeet(first: Place, second: Place): boolean {
  if (first === "anywhere" || second === "anywhere") return true;
  // Each was one of several in view, and nobody can tell that it was the same one.
  if (first === "in-view" && second === "in-view") return false;
  if (unplaced.has(first)) return unplaced.has(second) || second === "all";
  if (unplaced.has(second)) return first === "all";
  return positionsMeet(first as PositionName, second as PositionName);
}

interface Node {
  readonly place: Place;
  readonly classNumber: number;
  readonly facets: Facet[];
}

/**
 * The disputes within one slot. Facets are gathered by place and class (at most twelve places), so cost grows with the facets.
 *
 * A value without a place that was also given for a stated place is taken to speak of that place and is not held against others:
 * "two thirty-fives" after "the rears are two thirty-fives" says nothing about the fronts.
 */
export function disputesIn({ facets: spoken, classes }: ClassedSlot): Dispute[] {
  if (new Set(classes).size < 2) return [];
  const facets = settlePlaces(spoken, classes);
  const nodes = new Map<string, Node>();
  facets.forEach((facet, position) => {
    const classNumber = classes[position]!;
    const key = `${facet.place} ${classNumber}`;
    const node = nodes.get(key);
    if (node) node.facets.push(facet);
    else nodes.set(key, { place: facet.place, classNumber, facets: [facet] });
  });

  const placedClasses = new Set<number>();
  for (const { place, classNumber } of nodes.values()) if (!unplaced.has(place) && place !== "all") placedClasses.add(classNumber);

  const classesAt = new Map<Place, number[]>();
  for (const { place, classNumber } of nodes.values()) {
    const here = classesAt.get(place);
    if (here) here.push(classNumber);
    else classesAt.set(place, [classNumber]);
  }

  const groups = new Groups();
  const places = [...classesAt.keys()].sort();
  for (const [position, first] of places.entries()) {
    for (const second of places.slice(position)) {
      if (!placesMeet(first, second)) continue;
      const here = speakingFor(first, second, classesAt, placedClasses);
      const there = speakingFor(second, first, classesAt, placedClasses);
      joinUnlike(groups, [first, here], [second, there]);
      joinUnlike(groups, [second, there], [first, here]);
    }
  }
  const nodesByClass = new Map<number, Node[]>();
  for (const node of nodes.values()) {
    const here = nodesByClass.get(node.classNumber);
    if (here) here.push(node);
    else nodesByClass.set(node.classNumber, [node]);
  }
  return groups.all().map((keys) =>
    disputeOf(
      keys.map((key) => nodes.get(key)!),
      nodesByClass,
    ),
  );
}

/** The classes at a place that may be held against another place. */
function speakingFor(
  place: Place,
  against: Place,
  classesAt: ReadonlyMap<Place, readonly number[]>,
  placedClasses: ReadonlySet<number>,
): readonly number[] {
  const here = classesAt.get(place)!;
  if (!unplaced.has(place)) return here;
  // What was in view may be any of several: a value known from a stated place is that one.
  if (place === "in-view" || !unplaced.has(against)) return here.filter((classNumber) => !placedClasses.has(classNumber));
  // Two values without a place that both have one elsewhere are a split set.
  const split = new Set([...here, ...classesAt.get(against)!].filter((classNumber) => placedClasses.has(classNumber)));
  return split.size > 1 ? here.filter((classNumber) => !split.has(classNumber)) : here;
}

function joinUnlike(
  groups: Groups,
  [place, classes]: readonly [Place, readonly number[]],
  [otherPlace, others]: readonly [Place, readonly number[]],
): void {
  for (const classNumber of classes) {
    const other = others[0] !== classNumber ? others[0] : others[1];
    if (other !== undefined) groups.join(`${place} ${classNumber}`, `${otherPlace} ${other}`);
  }
}

function disputeOf(members: readonly Node[], nodesByClass: ReadonlyMap<number, readonly Node[]>): Dispute {
  const classNumbers = new Set(members.map((member) => member.classNumber));
  const memberPlaces = [...new Set(members.map((member) => member.place))];
  // One of the classes at a place, and whether there are more: enough to tell if another than a given one is there.
  const heldAt = new Map<Place, { readonly first: number; readonly several: boolean }>();
  for (const { place, classNumber } of members) {
    const held = heldAt.get(place);
    heldAt.set(
      place,
      held ? { first: held.first, several: held.several || held.first !== classNumber } : { first: classNumber, several: false },
    );
  }
  const holdsOther = (place: Place, classNumber: number): boolean => heldAt.get(place)!.several || heldAt.get(place)!.first !== classNumber;
  const sides = [...classNumbers].map((classNumber) =>
    nodesByClass
      .get(classNumber)!
      // The same value said again for the same place, or for no place, is a further moment of that side; a member meets its own place.
      .filter((node) => memberPlaces.some((place) => placesMeet(place, node.place)))
      // "Discs on the front", said beside "drums on the back", is no part of the quarrel about the back.
      .filter((node) => memberPlaces.some((place) => placesMeet(place, node.place) && holdsOther(place, classNumber)))
      .flatMap((node) => node.facets)
      .sort(bySpokenOrder),
  );
  return { sides: sides.sort((a, b) => bySpokenOrder(a[0]!, b[0]!)), position: sharedPosition(memberPlaces) };
}

/** The narrowest place, if all stated places lie around one; else null. */
function sharedPosition(places: readonly Place[]): PositionName | null {
  let narrowest: PositionName | null = null;
  for (const place of places) {
    if (unplaced.has(place)) continue;
    const stated = place as PositionName;
    if (narrowest === null) narrowest = stated;
    else if (positionsMeet(narrowest, stated)) narrowest = narrower(narrowest, stated);
    else return null;
  }
  return narrowest === "all" ? null : narrowest;
}

export function bySpokenOrder(first: Facet, second: Facet): number {
  return first.claim.start - second.claim.start || (first.claim.id < second.claim.id ? -1 : first.claim.id > second.claim.id ? 1 : 0);
}

/** Union-find over text keys. */
class Groups {
  readonly #parent = new Map<string, string>();

  join(first: string, second: string): void {
    const a = this.#root(first);
    const b = this.#root(second);
    const [root, later] = a < b ? [a, b] : [b, a];
    if (a !== b) this.#parent.set(later, root);
  }

  all(): string[][] {
    const members = new Map<string, string[]>();
    for (const key of this.#parent.keys()) {
      const root = this.#root(key);
      const group = members.get(root);
      if (group) group.push(key);
      else members.set(root, [key]);
    }
    return [...members].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, keys]) => keys.sort());
  }

  #root(key: string): string {
    let root = key;
    while (true) {
      const parent = this.#parent.get(root);
      if (parent === undefined) {
        this.#parent.set(root, root);
        break;
      }
      if (parent === root) break;
      root = parent;
    }
    while (root !== key) {
      const next = this.#parent.get(key)!;
      this.#parent.set(key, root);
      key = next;
    }
    return root;
  }
}
