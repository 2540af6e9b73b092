import type { ComponentName } from "../../../../shared-types/index.ts";
import type { FixedPart } from "./quality-rule.ts";

/** Damage: said of a part it is a flaw, denied it is praise. Kept by kind, so that "no rust" is never held against a scratch. */
export interface Damage {
  readonly kind: string;
  readonly among: readonly ComponentName[];
  readonly otherwise?: FixedPart;
  readonly phrases: readonly string[];
  readonly unless?: readonly string[];
  readonly says: string;
  readonly of: ComponentName;
  readonly denies: string;
  /** The part of `denies`, where it is another. */
  readonly ofDenied?: ComponentName;
  readonly quiet: readonly string[];
}
