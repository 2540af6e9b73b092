import type { ComponentName, PositionName } from "../../../../shared-types/index.ts";

/**
 * A row of the lexicon: the words the trade says for one part, American and British, and what it belongs to.
 * Plurals and possessives are found from the singular; list only irregular ones.
 */
export interface PartWord {
  readonly component: ComponentName;
  /** Null where the words mean the component as a whole. */
  readonly part: string | null;
  /** Where the part always sits ("windshield" is front glass); absent where it may be anywhere. */
  readonly position?: PositionName;
  /** Lower case; several words are matched in order, the longest row first. */
  readonly say: readonly string[];
}
