import type { AttributeName, ComponentName, PositionName, ZoneName } from "../../../../shared-types/index.ts";
import type { ClauseSign } from "./clause-sign.ts";

export type QualityAttribute = Extract<AttributeName, "type" | "material" | "color" | "presence" | "originality" | "condition">;

/** A part that the words say by themselves: "calipers" are brakes. */
export interface FixedPart {
  readonly component: ComponentName;
  readonly part: string | null;
  /** Where the words put it; absent where the sentence says. */
  readonly position?: PositionName;
  /** Overrides the rule's value where one phrase says two things ("a disc drum car"). */
  readonly value?: string;
}

/** A part that the sentence must name: "leather" is the seats' or the steering wheel's. */
export interface NamedPart {
  readonly among: readonly ComponentName[];
  /**
   * Where the part stands. `place`: after the words ("a crack in the lens"), else before. `quality`: right after ("vinyl buckets"), else
   * before ("the buckets are vinyl"). `subject`: before ("the bumper's been rechromed"). `after`: right after and nowhere else ("new shocks"). `before`: named before, or within
   * the words ("gearbox … supply exchange unit"), and never after. `bill`: listed after, on the same bill ("receipt from the yard, one left door").
   */
  readonly order: "place" | "quality" | "subject" | "after" | "before" | "bill";
  /** Taken where no part is named or meant. */
  readonly otherwise?: FixedPart;
}

/** What a denial ("no", "not", "never", "without") does to the phrase. */
export type Denial =
  /** The claim is dropped: "not plastic" says nothing more. */
  | "drops"
  /** The claim turns: present to absent, flawed to good, original to replaced. */
  | "turns";

export interface QualityRule {
  readonly name: string;
  readonly attribute: QualityAttribute;
  readonly value: string;
  /** In the notation of the framing folder's `Phrase`. */
  readonly phrases: readonly string[];
  /**
   * Phrases one of which must stand close by, in this sentence or the ones beside it: what is done and what comes of it are told in
   * sentences of their own ("Hit this toggle. Hear it bark?").
   */
  readonly beside?: readonly string[];
  /** Longer phrases that overlap and mean something else. */
  readonly unless?: readonly string[];
  /** Phrases that stand together in one sentence, in any order; each is as good as one of `phrases`. */
  readonly signs?: readonly ClauseSign[];
  readonly about: readonly FixedPart[] | NamedPart;
  readonly denial: Denial;
  /** Only where the camera is in one of these zones. */
  readonly zones?: readonly ZoneName[];
  readonly circumstance?: string;
  /** The words tell how the vehicle is today although they speak of what was on it before ("the steel ones are in his shed"). */
  readonly tellsOfToday?: true;
  /** Values by component where one word means two ("alloy" wheels, an aluminum hood). */
  readonly valueOn?: Partial<Record<ComponentName, string>>;
  readonly example: QualityExample;
  /** What the rule, or its counterpart, gives where the words are denied. */
  readonly whenDenied?: QualityExample;
  /** Speech that sounds alike and must give no claim by this rule. */
  readonly quiet: readonly string[];
}

export interface QualityExample {
  readonly says: string;
  readonly zone?: ZoneName;
  readonly gives: {
    readonly component: ComponentName;
    readonly value: string;
    readonly part?: string | null;
    readonly position?: PositionName | null;
  };
}

export function isNamedPart(about: QualityRule["about"]): about is NamedPart {
  return !Array.isArray(about);
}
