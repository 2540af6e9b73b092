import { describe, expect, test } from "vitest";
import { standardRules } from "../../../electron/analysis/comparison/standards/index.ts";
import { claimIndex, type StandardRule } from "../../../electron/analysis/comparison/standards/rule.ts";
import { claimsFrom } from "./support/claims.ts";

/** Each rule against its own example, so that what it documents stays true. */
describe.for((standardRules as readonly StandardRule[]).map((rule) => ({ name: rule.name, rule })))("$name", ({ rule }) => {
  const recordedOn = rule.example.recordedOn ?? null;

  test("objects to its example and shows its source and working", () => {
    const claims = claimsFrom(rule.example.claims);
    const { conflicts, remarks } = rule.find(claimIndex(claims, recordedOn));
    if (rule.example.finds === "remark") {
      expect(remarks).toHaveLength(1);
      expect(conflicts).toEqual([]);
      return;
    }
    expect(conflicts).toHaveLength(1);
    const [conflict] = conflicts;
    expect(conflict!.standard?.source).toBeTruthy();
    expect(conflict!.standard?.working).toMatch(/\d/);
    const known = new Set(claims.map((claim) => claim.id));
    expect(conflict!.sides.flatMap((side) => side.claims).every((id) => known.has(id))).toBe(true);
  });

  test.for(rule.example.quiet.map((sketches, position) => ({ position, sketches })))(
    "leaves like claims alone, row $position",
    ({ sketches }) => {
      const { conflicts, remarks } = rule.find(claimIndex(claimsFrom(sketches), recordedOn));
      expect(conflicts).toEqual([]);
      if (rule.example.finds === "remark") expect(remarks).toEqual([]);
    },
  );
});

test("rules have names of their own", () => {
  const names = standardRules.map((rule) => rule.name);
  expect(new Set(names).size).toBe(names.length);
});
