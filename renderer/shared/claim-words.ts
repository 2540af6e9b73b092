import {
  attributeLabel,
  type Claim,
  type ClaimValue,
  type Conflict,
  componentLabel,
  positionLabel,
  type Stance,
  type UnitName,
  valueLabel,
} from "../../shared-types/index.ts";

/** What a claim is about: "rear tire size", "driver front brakes type, front pads". */
export function claimSubject(claim: Pick<Claim, "component" | "part" | "position" | "attribute" | "circumstance">): string {
  const what = [positionLabel(claim.position), componentLabel(claim.component), claim.part ?? "", attributeLabel(claim.attribute)]
    .filter(Boolean)
    .join(" ");
  return claim.circumstance ? `${what}, ${claim.circumstance}` : what;
}

/** A claim in one line: "rear tire size: 235/60R15". */
export function claimLine(claim: Claim): string {
  return `${claimSubject(claim)}: ${valueLabel(claim.value, claim.unit, claim.attribute)}`;
}

export function sideValue(value: ClaimValue, unit: UnitName | null, claim: Claim | undefined): string {
  return valueLabel(value, unit, claim?.attribute ?? null);
}

const stanceWords = { stated: "said flat out", hedged: "said with a doubt", reported: "as others say" } as const satisfies Record<
  Stance,
  string
>;

/** What each side of a conflict says; where two sides have one value, also how it was said, since that is what differs. */
export function sideValues(conflict: Pick<Conflict, "sides">, claims: readonly Claim[]): string[] {
  const sides = conflict.sides.map((side) => {
    const claim = claims.find(({ id }) => id === side.claims[0]);
    return { value: sideValue(side.value, side.unit, claim), claim };
  });
  return sides.map(({ value, claim }, index) => {
    const alike = sides.some((other, at) => at !== index && other.value === value);
    return alike && claim ? `${value}, ${stanceWords[claim.stance]}` : value;
  });
}

export const sideLetters = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";
export function sideLetter(index: number): string {
  return sideLetters[index] ?? String(index + 1);
}

/** A topic as a heading: its first letter a capital. */
export function asHeading(topic: string): string {
  return topic.charAt(0).toUpperCase() + topic.slice(1);
}
