import type { ComponentName } from "../../../../../shared-types/index.ts";
import type { UnplacedMeaning } from "../../slots/positions.ts";

/**
 * Kinds of one part that exclude each other. A word outside every family is a name, not a choice, and is never held against another
 * ("power brakes" says nothing about disc or drum). Common practice of the trade.
 */
export interface TypeFamily {
  readonly name: string;
  /** Words for a reviewer: "front brakes" is made from the position and this. */
  readonly topic: string;
  readonly components: readonly ComponentName[];
  /** `any`: the claim's part is not looked at ("calipers" and "brakes" both say disc); `named`: parts must agree. */
  readonly parts: "any" | "named";
  /** Overrides the component's own reading of a claim without a position. */
  readonly unplaced?: UnplacedMeaning;
  /** What a buyer loses, 1 to 100. */
  readonly weight: number;
  /** Each choice with the spoken words that name it. */
  readonly choices: Readonly<Record<string, RegExp>>;
}
