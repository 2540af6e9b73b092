import type { AttributeName, ClaimValue, ComponentName, PositionName, UnitName, ZoneName } from "../../../../shared-types/index.ts";
import type { NumberKind, Reading } from "../../model.ts";

/** Part of the vehicle a cue must be about: a component, or one part of it as "component/part". */
export type About = ComponentName | `${ComponentName}/${string}`;

/** What shows that a number belongs in a slot. All that is given must hold. */
export interface SlotCue {
  /** Tested on the words before the number (see `NumberSurroundings.before`); anchor with `$` for nearness, and let no `#` in between. */
  readonly before?: RegExp;
  /** Tested on the words after the number; anchor with `^` for nearness. */
  readonly after?: RegExp;
  /** Tested on the number's own words, units with them. */
  readonly said?: RegExp;
  /** The number's likeliest reading must suppose this unit, unspoken: its own surroundings already point there. */
  readonly guess?: UnitName;
  /** The talk must be about one of these. */
  readonly about?: readonly About[];
  /** How far back the talk may have turned to it; default "recent", which is a few sentences. */
  readonly reach?: "clause" | "sentence" | "recent";
  /** What it is about must be named within so many words before the number, or after it, in the same sentence. */
  readonly beside?: { readonly before?: number; readonly after?: number };
  readonly zones?: readonly ZoneName[];
  /** Not where this is found in the words before, the number, and the words after, joined by " # "; other numbers are "~". */
  readonly unless?: RegExp;
  /** 0 to 1: how surely this cue alone decides. What it is about, and how far back, is taken off. */
  readonly score: number;
}

/** Which readings of a number a slot can take. */
export interface ReadingNeed {
  /** Any kind where absent. */
  readonly kinds?: readonly NumberKind[];
  /** Units that may be spoken; null for none. */
  readonly units: readonly (UnitName | null)[];
  /** Bounds of the value in the slot's own unit, inclusive; numbers only. Plausible ranges, common practice. */
  readonly min?: number;
  readonly max?: number;
}

/**
 * One place a spoken number can fill: what it would be about, and what shows it.
 * `component: "topic"` takes the component, part and position of what the talk is about.
 */
export interface Slot {
  readonly name: string;
  readonly component: ComponentName | "topic";
  readonly part: string | null;
  readonly position?: PositionName;
  readonly attribute: AttributeName;
  /** "said" keeps the spoken unit; otherwise a bare number gets this one. */
  readonly unit: UnitName | null | "said";
  readonly need: ReadingNeed;
  readonly cues: readonly SlotCue[];
  /** As a cue's `unless`, for every cue of the slot. */
  readonly unless?: RegExp;
  /** The claim's value, where it is not the reading's own. */
  readonly value?: (reading: Reading, said: string) => ClaimValue | undefined;
  /** A second thing the same words say ("the two twenties": two tanks, twenty gallons each). */
  readonly also?: {
    readonly attribute: AttributeName;
    readonly unit: UnitName | null;
    readonly value: (said: string) => ClaimValue | undefined;
  };
  /** What must also agree before two values may be compared, beside what the surroundings say. */
  readonly circumstance?: string;
  /** Another number in the same breath may fill the slot without naming it again ("28 in the front and 26 in the back"). */
  readonly carries?: boolean;
  /** A sentence and the value this slot reads in it; a test walks these. */
  readonly example: {
    readonly heard: string;
    readonly value: ClaimValue;
    readonly position?: PositionName;
    /** Where the camera is while it is said; where none is given, nowhere that tells. */
    readonly zone?: ZoneName;
  };
}
