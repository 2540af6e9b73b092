import type { AttributeName, Claim, ComponentName } from "../../../../shared-types/index.ts";
import type { ConflictDraft, RemarkDraft } from "../conflict-of.ts";
import { isSpokenOtherwise } from "../slots/spoken-otherwise.ts";
import { isVehicleYear } from "../slots/vehicle-year.ts";

/** Enough of a claim to show a rule at work; what is left out is unplaced, stated, of today. */
export type ClaimSketch = Pick<Claim, "component" | "attribute" | "value"> & Partial<Claim>;

export interface StandardFindings {
  readonly conflicts: readonly ConflictDraft[];
  readonly remarks: readonly RemarkDraft[];
}

export const nothingFound: StandardFindings = { conflicts: [], remarks: [] };

/** What rules look claims up in: those of today, by component and attribute, in spoken order. */
export interface ClaimIndex {
  of(component: ComponentName, attribute: AttributeName): readonly Claim[];
  /** ISO date of the recording, where it is known. */
  readonly recordedOn: string | null;
  /** Former states of this vehicle's own parts; only to be remarked upon. */
  formerOf(component: ComponentName, attribute: AttributeName): readonly Claim[];
}

/** Two claims held against each other by a published standard or plain arithmetic. */
export interface StandardRule {
  readonly name: string;
  /** Where the rule is published, or "arithmetic" or "common practice". */
  readonly source: string;
  readonly find: (claims: ClaimIndex) => StandardFindings;
  /** Claims that the rule must object to (`finds`) and claims like them that it must leave alone. */
  readonly example: {
    readonly finds: "conflict" | "remark";
    readonly claims: readonly ClaimSketch[];
    readonly quiet: readonly (readonly ClaimSketch[])[];
    readonly recordedOn?: string;
  };
}

export function claimIndex(claims: readonly Claim[], recordedOn: string | null): ClaimIndex {
  const today = new Map<string, Claim[]>();
  const former = new Map<string, Claim[]>();
  for (const claim of [...claims].sort((a, b) => a.start - b.start || (a.id < b.id ? -1 : 1))) {
    if (claim.time === "today" && isSpokenOtherwise(claim)) continue;
    const shelf = claim.time === "today" ? today : former;
    const key = `${claim.component}.${claim.attribute}`;
    const here = shelf.get(key);
    if (here) here.push(claim);
    else shelf.set(key, [claim]);
  }
  return {
    recordedOn,
    of: (component, attribute) => today.get(`${component}.${attribute}`) ?? [],
    formerOf: (component, attribute) => former.get(`${component}.${attribute}`) ?? [],
  };
}

/** Claims gathered by their value, in the order values are first spoken. */
export function byValue(claims: readonly Claim[]): Map<string, Claim[]> {
  const groups = new Map<string, Claim[]>();
  for (const claim of claims) {
    const key = String(claim.value);
    const here = groups.get(key);
    if (here) here.push(claim);
    else groups.set(key, [claim]);
  }
  return groups;
}

/**
 * The vehicle's model year, if all who name it agree.
 * @returns null where none is named, or where the claims differ (which is a conflict of its own).
 */
export function modelYear(claims: ClaimIndex): { readonly year: number; readonly claims: readonly Claim[] } | null {
  const named = claims.of("vehicle", "year").filter((claim) => typeof claim.value === "number" && isVehicleYear(claim));
  const years = new Set(named.map((claim) => claim.value));
  const year = named[0]?.value;
  return years.size === 1 && typeof year === "number" ? { year, claims: named } : null;
}
