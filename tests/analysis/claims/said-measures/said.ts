import type { ZoneName } from "../../../../shared-types/index.ts";
import { claimsIn } from "../claims-in.ts";

export interface Said {
  readonly zone: ZoneName;
  readonly heard: string;
  readonly told: readonly string[];
}

/** Rows of "zone | what is said | what it tells; …" as objects. */
export function saidRows(table: string): Said[] {
  return table
    .trim()
    .split("\n")
    .map((row) => {
      const [zone = "", heard = "", told = ""] = row.split(" | ");
      return { zone: zone as ZoneName, heard, told: told.split(";").map((each) => each.trim()) };
    });
}

interface Told {
  readonly component: string;
  readonly position: string | undefined;
  readonly attribute: string;
  readonly value: string;
  readonly unit: string | undefined;
}

function toldOf(text: string): Told {
  const [, component = "", position, attribute = "", value = "", unit] =
    /^([a-z-]+)(?:@([a-z-]+))?\.([a-z]+)=(group \d+|\S+)(?: (.+))?$/.exec(text) ?? [];
  return { component, position, attribute, value, unit };
}

const inches: Readonly<Record<string, number>> = { in: 1, ft: 12 };

/** What a row tells that is not read of it; a place or a unit left out of the row may be any. */
export function notRead({ heard, zone, told }: Said): string[] {
  // A walk that speaks of pounds as money sounds British somewhere.
  const left = [...claimsIn(told.some((each) => each.endsWith("GBP")) ? [heard, "Petrol, this one."] : heard, zone)];
  return told.filter((text) => {
    const want = toldOf(text);
    const at = left.findIndex(
      (claim) =>
        claim.component === want.component &&
        claim.attribute === want.attribute &&
        (want.position === undefined || claim.position === want.position) &&
        (sameFigure(claim.value, claim.unit, want) || (want.unit === undefined && String(claim.value) === want.value)),
    );
    if (at >= 0) left.splice(at, 1);
    return at < 0;
  });
}

function sameFigure(value: unknown, unit: string | null, want: Told): boolean {
  if (String(value) === want.value && (unit ?? undefined) === want.unit) return true;
  const [have, wanted] = [inches[unit ?? ""], inches[want.unit ?? ""]];
  return have !== undefined && wanted !== undefined && Math.abs(Number(value) * have - Number(want.value) * wanted) < 0.01;
}
