import type { Claim, ComponentName, ConflictKind } from "../../../../shared-types/index.ts";
import { circumstanceOf } from "../slots/circumstances.ts";
import type { Facet, Place, Reading, Subject } from "../slots/facet.ts";
import { homeOf } from "../slots/homes.ts";
import { isOneOfAKind } from "../slots/parts.ts";
import type { UnplacedMeaning } from "../slots/positions.ts";

/** What a facet is made of; its place and slot follow. */
export interface FacetParts {
  readonly claim: Claim;
  readonly kind: ConflictKind;
  readonly part: string | null;
  readonly property: string;
  readonly topic: string;
  readonly weight: number;
  readonly meaning: UnplacedMeaning;
  readonly reading: Reading;
  /** Component the slot belongs to, where it is not the claim's. */
  readonly component?: ComponentName;
  /** More that must be equal. */
  readonly dimension?: string;
}

/** The facet as a list of one; empty where nobody can tell which place the claim speaks of. */
export function facet(parts: FacetParts): Facet[] {
  const { claim, property } = parts;
  const home = homeOf(claim, parts.part);
  const { part } = home;
  const place = placeOf(claim, parts.meaning, part);
  if (place === undefined) return [];
  const component = parts.component ?? home.component;
  // One name for one part, whichever the first speaker used.
  const topic = parts.part !== null && part !== null ? parts.topic.replace(parts.part, part) : parts.topic;
  const subject: Subject = { component, part, property, topic, weight: parts.weight };
  const slot = [parts.kind, component, part ?? "", property, circumstanceOf(claim) ?? "", parts.dimension ?? ""].join("|");
  return [{ claim, slot, kind: parts.kind, place, reading: parts.reading, subject }];
}

/** Equipment that may be at one place and not at another; of the rest a vehicle has one, wherever the speaker stands. */
const severalPlaces =
  /\b(seats?|sensors?|belts?|air ?bags?|rests?|lights?|lamps?|windows?|speakers?|mats?|flaps?|hooks?|armrest|camera|shocks?|springs?|brakes?|discs?|drums?|caps?|covers?|mirrors?|handles?|vents?|air|boots?|straps?|deflectors?|screens?|shades?|blinds?|outlets?|ports?|shield|guard|liner)\b/i;

/** Where the claim speaks of; undefined where nobody can tell, and so nothing may be held against it. */
function placeOf(claim: Claim, meaning: UnplacedMeaning, part: string | null): Place | undefined {
  if (meaning === "single" || isOneOfAKind(part) || (claim.attribute === "presence" && part !== null && !severalPlaces.test(part)))
    return "anywhere";
  if (claim.position !== null) return claim.position;
  switch (meaning) {
    case "whole":
      return "anywhere";
    case "general":
      return "loosely";
    case "resolve":
      return zonesAwayFromWheels.has(claim.zone) ? "anywhere" : "in-view";
    case "seen":
      return "in-view";
    case "placed-only":
      return undefined;
  }
}

/** Said here, "it's on two thirty-fives" is about the vehicle, not about the wheel in view. */
const zonesAwayFromWheels: ReadonlySet<string> = new Set(["opening", "closing", "documents", "drive", "cabin", "engine-bay"]);
