import type { Claim, Conflict } from "./analysis.ts";
import { valueLabel } from "./labels.ts";
import type { Stance } from "./vocabulary.ts";

const stanceWords = { stated: "said flat out", hedged: "said with a doubt", reported: "as others say" } as const satisfies Record<
  Stance,
  string
>;

/** What each side of a conflict says; where two sides have one value, also how it was said, since that is what differs. */
export function sideValues(conflict: Pick<Conflict, "sides">, claims: readonly Claim[]): string[] {
  const sides = conflict.sides.map((side) => {
    const claim = claims.find(({ id }) => id === side.claims[0]);
    return { value: valueLabel(side.value, side.unit, claim?.attribute ?? null), claim };
  });
  return sides.map(({ value, claim }, index) => {
    const alike = sides.some((other, at) => at !== index && other.value === value);
    return alike && claim ? `${value}, ${stanceWords[claim.stance]}` : value;
  });
}
