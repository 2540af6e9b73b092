import type { ComponentName, PositionName, ZoneName } from "../../../../../shared-types/index.ts";

/** A noun that is counted on a vehicle though the lexicon has no part of that name, and the component it belongs to. */
export interface CountedThing {
  /** Singular, lower case; plurals are found from it. */
  readonly say: readonly string[];
  readonly component: ComponentName;
  readonly part: string;
  readonly most: number;
  /** Fewer than this are counted of something else. */
  readonly least?: number;
  /** Words near the number by which the noun is another's: the pins of a charging lead, the spokes of a steering wheel. */
  readonly unless?: RegExp;
  readonly position?: PositionName;
  /** Where the camera must be, for words that mean other things elsewhere. */
  readonly zones?: readonly ZoneName[];
  /** True where a single one is worth a claim: damage, and what usually comes in twos. */
  readonly one?: boolean;
  /** True where the lexicon or another slot knows the word as something else, which it is not where this row's zones say. */
  readonly overLexicon?: boolean;
  readonly example: { readonly heard: string; readonly value: number; readonly zone?: ZoneName };
}

export const outside: readonly ZoneName[] = [
  "front",
  "driver-side",
  "passenger-side",
  "rear",
  "cargo",
  "roof",
  "closing",
  "opening",
  "documents",
];
export const inside: readonly ZoneName[] = ["cabin"];
