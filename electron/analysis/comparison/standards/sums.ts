import type { Claim, ComponentName } from "../../../../shared-types/index.ts";
import { type ConflictDraft, conflictOf } from "../conflict-of.ts";
import { slotPart } from "../slots/parts.ts";
import { moment } from "../wording.ts";
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

/** The one value that all of them give. */
function onlyValue(claims: readonly Claim[]): { readonly value: number; readonly claims: readonly Claim[] } | undefined {
  const groups = byValue(claims);
  return groups.size === 1 ? { value: Number(claims[0]!.value), claims } : undefined;
}
