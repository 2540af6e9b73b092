import type { Claim, ComponentName } from "../../../../shared-types/index.ts";
import { type ConflictDraft, conflictOf } from "../conflict-of.ts";
import { slotPart } from "../slots/parts.ts";
import { listed, moment } from "../wording.ts";
import { byValue, type StandardRule } from "./rule.ts";

/** Counts that surely add up: every seat belt is either in front or in the back. */
const addedUp = [{ component: "belts", part: "belt", topic: "number of seat belts", weight: 40 }] as const satisfies readonly {
  component: ComponentName;
  part: string;
  topic: string;
  weight: number;
}[];

export const frontAndRearMakeAll: StandardRule = {
  name: "front-and-rear-make-all",
  source: "Arithmetic: those in front and those in the back make all",
  find: (claims) => {
    const conflicts: ConflictDraft[] = [];
    for (const { component, part, topic, weight } of addedUp) {
      const counts = claims.of(component, "count").filter((claim) => slotPart(claim) === part && typeof claim.value === "number");
      const all = onlyValue(counts.filter((claim) => claim.position === "all"));
      const front = onlyValue(counts.filter((claim) => claim.position === "front"));
      const rear = onlyValue(counts.filter((claim) => claim.position === "rear"));
      if (!all || !front || !rear || all.value === front.value + rear.value) continue;
      conflicts.push(
        conflictOf({
          kind: "standard",
          topic,
          why: `${all.value} in all are named at ${moment(all.claims[0]!.start)}, but ${front.value} in front and ${rear.value} in the back make ${front.value + rear.value}.`,
          rule: "front-and-rear-make-all",
          standard: {
            name: "Sum",
            source: "Arithmetic",
            working: `${front.value} + ${rear.value} = ${front.value + rear.value}; spoken ${all.value}.`,
          },
          weight,
          sides: [
            { value: all.value, unit: null, claims: all.claims },
            { value: front.value + rear.value, unit: null, claims: [...front.claims, ...rear.claims] },
          ],
        }),
      );
    }
    return { conflicts, remarks: [] };
  },
  example: {
    finds: "conflict",
    claims: [
      { component: "belts", attribute: "count", value: 5, position: "all" },
      { component: "belts", attribute: "count", value: 2, position: "front" },
      { component: "belts", attribute: "count", value: 2, position: "rear" },
    ],
    quiet: [
      [
        { component: "belts", attribute: "count", value: 5, position: "all" },
        { component: "belts", attribute: "count", value: 2, position: "front" },
        { component: "belts", attribute: "count", value: 3, position: "rear" },
      ],
      [
        { component: "belts", attribute: "count", value: 4, position: "all" },
        { component: "belts", attribute: "count", value: 2, position: "front" },
      ],
    ],
  },
};

/** Purchases that make no owner in the count: the dealer's own, and a landing. */
const noOwner = /\b(we|us|our|i|auction|dealer|imported|shipped|landed|boat|came (in|over))\b/i;

export const ownersAgainstSales: StandardRule = {
  name: "owners-against-sales",
  source: "Arithmetic: every dated purchase by a private owner is one owner",
  find: (claims) => {
    const stated = onlyValue(
      claims
        .of("vehicle", "count")
        .filter((claim) => slotPart(claim) === "owner" && typeof claim.value === "number" && claim.circumstance === null),
    );
    if (!stated || stated.claims.length === 0) return { conflicts: [], remarks: [] };
    const purchases = [...claims.of("title", "date"), ...claims.of("vehicle", "date")].filter(
      (claim) =>
        (claim.circumstance === "sale" || claim.circumstance === "owned since") &&
        !noOwner.test(claim.quote.replace(/^.*\bI (wanna|want to) say\b/i, "")),
    );
    const years = [
      ...new Set(purchases.map((claim) => /^\d{4}/.exec(String(claim.value))?.[0]).filter((year) => year !== undefined)),
    ].sort();
    if (years.length <= stated.value) return { conflicts: [], remarks: [] };
    return {
      conflicts: [
        conflictOf({
          kind: "count",
          topic: "number of owners",
          why: `${stated.value} owners are named at ${moment(stated.claims[0]!.start)}, but it changed hands in ${listed(years)}, which makes at least ${years.length}.`,
          rule: "owners-against-sales",
          standard: {
            name: "Sum",
            source: "Arithmetic",
            working: `Purchases in ${listed(years)} = ${years.length} owners; spoken ${stated.value}.`,
          },
          weight: 75,
          sides: [
            { value: stated.value, unit: null, claims: stated.claims },
            { value: years.length, unit: null, claims: purchases },
          ],
        }),
      ],
      remarks: [],
    };
  },
  example: {
    finds: "conflict",
    claims: [
      { component: "vehicle", attribute: "count", part: "owner", value: 2 },
      { component: "vehicle", attribute: "date", part: "owned since", circumstance: "owned since", value: 1984 },
      {
        component: "title",
        attribute: "date",
        part: "sale",
        circumstance: "sale",
        value: "1969-04",
        quote: "bought it new in April of 69",
      },
      {
        component: "title",
        attribute: "date",
        part: "sale",
        circumstance: "sale",
        value: 1977,
        quote: "let the fella next door have it in 77",
      },
    ],
    quiet: [
      [
        { component: "vehicle", attribute: "count", part: "owner", value: 2 },
        { component: "title", attribute: "date", part: "sale", circumstance: "sale", value: 1969, quote: "bought new in 69" },
        { component: "title", attribute: "date", part: "sale", circumstance: "sale", value: 1984, quote: "sold in 84" },
        { component: "title", attribute: "date", part: "sale", circumstance: "sale", value: 2025, quote: "we bought it last year" },
      ],
    ],
  },
};

/** The one value that all of them give. */
function onlyValue(claims: readonly Claim[]): { readonly value: number; readonly claims: readonly Claim[] } | undefined {
  const groups = byValue(claims);
  return groups.size === 1 ? { value: Number(claims[0]!.value), claims } : undefined;
}
