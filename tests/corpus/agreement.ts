import { type Attribute, annotatedAttributes } from "./annotated-attributes.ts";
import { cohenKappa } from "./kappa.ts";
import type { AnnotatedCase, GoldCase } from "./read-cases.ts";
import { zoneBySecond } from "./zone-score.ts";

export interface Agreement {
  readonly id: string;
  /** Cohen's kappa over whole seconds: which zone is in view. */
  readonly zones: number | null;
  /** Cohen's kappa over every pair of caption and attribute: is something of this attribute claimed here? */
  readonly claims: number | null;
  /** Share of the conflicts of either annotator that the other has too, with a moment of two sides in common (F1). */
  readonly conflicts: number | null;
}

/** How far two annotators of one transcript agree. Unit: seconds for zones, caption and attribute for claims, conflicts for conflicts. */
export function agreementOf(first: AnnotatedCase, second: GoldCase): Agreement {
  const { gold, transcript } = first;
  const seconds = Math.floor(Math.min(gold.duration, second.duration));
  const zones = cohenKappa(zoneBySecond(gold, transcript.captions, seconds), zoneBySecond(second, transcript.captions, seconds));
  const cells = (one: GoldCase) => {
    const claimed = new Set(one.claims.map(({ i, attribute }) => `${i} ${attribute}`));
    return transcript.captions.flatMap(({ index }) =>
      annotatedAttributes.map((attribute: Attribute) => (claimed.has(`${index} ${attribute}`) ? "claimed" : "not")),
    );
  };
  return { id: gold.id, zones, claims: cohenKappa(cells(gold), cells(second)), conflicts: conflictF1(gold, second) };
}

function conflictF1(first: GoldCase, second: GoldCase): number | null {
  const total = first.conflicts.length + second.conflicts.length;
  if (total === 0) return null;
  const shared = (one: GoldCase, other: GoldCase) =>
    one.conflicts.filter((conflict) => other.conflicts.some((twin) => sameConflict(conflict, twin))).length;
  return (shared(first, second) + shared(second, first)) / total;
}

type GoldConflict = GoldCase["conflicts"][number];

/** Two sides of one touch two different sides of the other. Annotators may anchor a split claim a caption apart. */
function sameConflict(a: GoldConflict, b: GoldConflict): boolean {
  const touches = (left: readonly number[], right: readonly number[]) => left.some((i) => right.some((j) => Math.abs(i - j) <= 1));
  return a.sides.some((x, i) =>
    a.sides.some((y, j) => i < j && b.sides.some((u, k) => touches(x.at, u.at) && b.sides.some((v, l) => k !== l && touches(y.at, v.at)))),
  );
}
