import type { Claim, ComponentName, ConflictKind, PositionName } from "../../../../shared-types/index.ts";
import type { Agreement, Figure } from "../values/quantities.ts";
import type { TireDate } from "../values/tire-dates.ts";

/** A claim's value made comparable. Readings of one slot are all of one `by`. */
export type Reading =
  | { readonly by: "figure"; readonly figure: Figure; readonly agreement: Agreement }
  | { readonly by: "tire-size"; readonly size: string }
  | { readonly by: "tire-date"; readonly dates: readonly TireDate[]; readonly key: string }
  /** ISO 8601, as far as it was said: 1994, 1994-05, 1994-05-17. */
  | { readonly by: "date"; readonly date: string }
  /** Any of these, by who looks or counts: hues of a color, counts of doors. */
  | { readonly by: "options"; readonly options: ReadonlySet<string> }
  | { readonly by: "material"; readonly material: string }
  | { readonly by: "choice"; readonly family: string; readonly choice: string }
  | { readonly by: "word"; readonly word: string };

/** Where a claim speaks of: a position, or a reading of having none (see `UnplacedMeaning`); `in-view` is one of several, unknown which. */
export type Place = PositionName | "anywhere" | "loosely" | "in-view";

/** What is compared: one per claim and slot. A claim may have several ("straight six" is a layout and a count of cylinders). */
export interface Facet {
  readonly claim: Claim;
  /** Equal for claims that may be compared: component, part, attribute or family, circumstance, dimension. */
  readonly slot: string;
  readonly kind: ConflictKind;
  readonly place: Place;
  readonly reading: Reading;
  readonly subject: Subject;
}

/** What a slot is about, for people and for weighing. */
export interface Subject {
  readonly component: ComponentName;
  readonly part: string | null;
  /** The attribute, or a family of types. */
  readonly property: string;
  /** Without the position: "tire size". */
  readonly topic: string;
  readonly weight: number;
}
