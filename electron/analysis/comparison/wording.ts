import type { AttributeName, Claim, ClaimValue, UnitName } from "../../../shared-types/index.ts";

/** A value as a reviewer reads it: "390 cu in", "4.11", "$38,900". */
export function valueWords(value: ClaimValue, unit: UnitName | null, attribute: AttributeName | null = null): string {
  if (typeof value === "string") return value;
  if (attribute === "ratio") return value.toFixed(2);
  const plain = attribute === "year" || attribute === "date" || Math.abs(value) < 10_000 ? String(value) : withThousands(value);
  switch (unit) {
    case null:
      return plain;
    case "USD":
      return `$${withThousands(value)}`;
    case "GBP":
      return `£${withThousands(value)}`;
    case "EUR":
      return `€${withThousands(value)}`;
    case "32nds":
      return `${value}/32 in`;
    default:
      return `${plain} ${unit}`;
  }
}

function withThousands(value: number): string {
  const [whole = "", fraction] = String(value).split(".");
  return whole.replace(/\B(?=(\d{3})+$)/g, ",") + (fraction ? `.${fraction}` : "");
}

export function claimWords(claim: Claim): string {
  return valueWords(claim.value, claim.unit, claim.attribute);
}

/** Minutes and seconds of the recording: "4:36". */
export function moment(seconds: number): string {
  const whole = Math.floor(seconds);
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, "0")}`;
}

/** "a", "a and b", "a, b and c". */
export function listed(words: readonly string[]): string {
  return words.length < 2 ? (words[0] ?? "") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
}

export function capitalised(sentence: string): string {
  return sentence.charAt(0).toUpperCase() + sentence.slice(1);
}
