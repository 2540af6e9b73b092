import type { ZoneName } from "../../../../shared-types/index.ts";

export type ZoneWeights = Partial<Record<ZoneName, number>>;

export interface PartRow {
  /**
   * Phrases in plain words (no apostrophes, American spelling), parted by "|". Each also stands for its plural in -s or -es, except where
   * it ends in "=".
   */
  readonly phrases: string;
  /** How much one mention speaks for each zone. 1 is plain evidence; 0.3 a hint; more than 1 a part seen nowhere else. */
  readonly zones: ZoneWeights;
}

/** A part seen alike from both sides. */
export const sides = (weight: number): ZoneWeights => ({ "driver-side": weight, "passenger-side": weight });
