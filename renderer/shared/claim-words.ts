import {
  attributeLabel,
  type Claim,
  type ClaimValue,
  componentLabel,
  positionLabel,
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

export { sideValues } from "../../shared-types/index.ts";

export const sideLetters = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";
export function sideLetter(index: number): string {
  return sideLetters[index] ?? String(index + 1);
}

/** A topic as a heading: its first letter a capital. */
export function asHeading(topic: string): string {
  return topic.charAt(0).toUpperCase() + topic.slice(1);
}
