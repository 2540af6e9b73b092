import type { ComponentName, PositionName } from "../../../../shared-types/index.ts";
import type { QualityAttribute } from "./quality-rule.ts";
import type { SpokenScene } from "./spoken-scene.ts";

/** A quality read from a stretch of words, before it is written as a claim. */
export interface Quality {
  readonly first: number;
  readonly end: number;
  readonly component: ComponentName;
  readonly part: string | null;
  readonly position: PositionName | null;
  readonly attribute: QualityAttribute;
  readonly value: string;
  readonly circumstance: string | null;
  readonly rule: string;
  /** True where the clause's own time is not the claim's: see `QualityRule.tellsOfToday`. */
  readonly ofToday?: boolean;
  /** True where it is inferred from words that stand together: a plain saying of the same thing close by outweighs it. */
  readonly inferred?: boolean;
  /** True where no words named the part: what is in view was meant. */
  readonly inView?: true;
  /** The words that named the part, to be quoted with the quality; null where none did. */
  readonly named: { readonly first: number; readonly end: number } | null;
}

/** Whether words are about this vehicle, and not taken back. */
export function speaksOfThisVehicle(scene: SpokenScene, first: number, end: number): boolean {
  for (let token = first; token < end; token++) {
    const clause = scene.frames.at(token);
    if (clause.subject !== "this-vehicle" || clause.corrected) return false;
  }
  return true;
}
