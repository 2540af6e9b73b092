import { describe, expect, test } from "vitest";
import { standardRules } from "../../../electron/analysis/comparison/standards/index.ts";
import type { ClaimSketch, StandardRule } from "../../../electron/analysis/comparison/standards/rule.ts";
import { typeFamilies } from "../../../electron/analysis/comparison/values/type-families/index.ts";
import type { ConflictKind } from "../../../shared-types/index.ts";
import { claimsFrom, compared, comparedSketches, named } from "./support/claims.ts";
import { everyMutation, type Mutation } from "./support/mutations.ts";

/**
 * A quiet walkaround; into it one contradiction at a time is planted, for every slot and kind, by program. The share found is kept per kind.
 */
const background: readonly ClaimSketch[] = [
  { component: "lights", attribute: "count", part: "spot lamp", value: 2, position: "front" },
  { component: "trim", attribute: "material", part: "molding", value: "brass" },
  { component: "steering", attribute: "material", part: "steering wheel", value: "wood" },
  { component: "cooling", attribute: "type", value: "electric fan", part: "fan" },
  { component: "exhaust", attribute: "type", part: "muffler", value: "turbo" },
  { component: "ignition", attribute: "diameter", part: "plug wire", value: 8, unit: "mm" },
  { component: "transmission", attribute: "material", part: "shift knob", value: "leather" },
  { component: "vehicle", attribute: "type", value: "coupe" },
];

/** The background's claims, then the original and, much later, the other. */
function walkaround(original: ClaimSketch, other: ClaimSketch): ClaimSketch[] {
  return [original, ...background, other];
}

const leastShareFound = 0.95;
const mutations = everyMutation();
const kinds = [...new Set(mutations.map((mutation) => mutation.kind))];

function foundBy({ kind, original, contradiction }: Mutation): boolean {
  const { conflicts } = comparedSketches(walkaround(original, contradiction));
  const planted = ["c1", `c${background.length + 2}`];
  return (
    conflicts.length === 1 &&
    conflicts[0]!.kind === kind &&
    planted.every((id) => conflicts[0]!.sides.some((side) => side.claims.includes(id)))
  );
}

test("the background is quiet", () => {
  const { conflicts, remarks } = comparedSketches(background);
  expect(named(conflicts)).toEqual([]);
  expect(remarks).toEqual([]);
});

test("every family of types has words to plant", () => {
  const planted = new Set(mutations.filter((mutation) => mutation.original.value !== "missing").map((mutation) => mutation.slot));
  expect(typeFamilies.map((family) => family.name).filter((name) => !planted.has(name))).toEqual([]);
});

describe.for(kinds)("%s", (kind: ConflictKind) => {
  const ofKind = mutations.filter((mutation) => mutation.kind === kind);

  test(`at least ${leastShareFound * 100} % of planted contradictions are found, as one conflict of that kind`, () => {
    const missed = ofKind.filter((mutation) => !foundBy(mutation)).map((mutation) => mutation.slot);
    expect({ share: 1 - missed.length / ofKind.length >= leastShareFound, missed: missed.length === 0 ? [] : missed }).toEqual({
      share: true,
      missed: [],
    });
  });

  test("the same edit with equal values raises nothing", () => {
    const raised = ofKind.flatMap(({ slot, original, equals }) =>
      equals.flatMap((equal) =>
        named(comparedSketches(walkaround(original, equal)).conflicts).map(
          (conflict) => `${slot}: ${conflict} (${equal.value} ${equal.unit ?? ""})`,
        ),
      ),
    );
    expect(raised).toEqual([]);
  });

  test("the same edit of a former state raises nothing", () => {
    const raised = ofKind.flatMap(({ slot, original, contradiction }) =>
      named(comparedSketches(walkaround(original, { ...contradiction, time: "former" })).conflicts).map(
        (conflict) => `${slot}: ${conflict}`,
      ),
    );
    expect(raised).toEqual([]);
  });
});

describe("standard", () => {
  const rules = (standardRules as readonly StandardRule[]).filter((rule) => rule.example.finds === "conflict");

  test.for(rules.map((rule) => ({ name: rule.name, rule })))("$name is found amid other talk", ({ rule }) => {
    const claims = claimsFrom([...background, ...rule.example.claims]);
    const { conflicts } = compared(claims, { recordedOn: rule.example.recordedOn ?? null });
    expect(conflicts.map((conflict) => conflict.rule)).toEqual([rule.name]);
  });
});
