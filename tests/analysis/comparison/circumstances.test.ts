import { describe, expect, test } from "vitest";
import { countedOtherwise } from "../../../electron/analysis/comparison/facets/count-facets.ts";
import { circumstanceOf, spokenCircumstances } from "../../../electron/analysis/comparison/slots/circumstances.ts";
import type { AttributeName } from "../../../shared-types/index.ts";
import { claimsFrom } from "./support/claims.ts";

const circumstance = (attribute: AttributeName, quote: string, named: string | null = null) =>
  circumstanceOf(claimsFrom([{ component: "vehicle", attribute, value: 1, quote, circumstance: named }])[0]!);

describe("what the words say about when a figure holds", () => {
  test.for([...spokenCircumstances])("$example", ({ example, name, attributes }) => {
    for (const attribute of attributes) expect(circumstance(attribute, example)).toBe(name);
  });

  test("a named circumstance goes before the words", () => {
    expect(circumstance("price", "the sticker was 3,681", "asked before")).toBe("asked before");
  });

  test.for(["actual", "original", "showing", "today"])("%s is emphasis", (named) => {
    expect(circumstance("price", "58,412", named)).toBeNull();
  });

  test.for([
    { attribute: "ratio", quote: "it's got four ten gears in it" },
    { attribute: "displacement", quote: "the hot one, a three eighty three" },
    { attribute: "power", quote: "three seventy five at the crank" },
    { attribute: "size", quote: "thirty three inch tires, worth every penny" },
  ] as const)("says nothing of the $attribute in: $quote", ({ attribute, quote }) => {
    expect(circumstance(attribute, quote)).toBeNull();
  });

  test("a figure at the flywheel is the plain one", () => {
    expect(circumstance("torque", "616 pound feet at the crank", "at the crank")).toBeNull();
  });
});

describe("counts that others count otherwise", () => {
  test.for([...countedOtherwise])("$example.said", ({ example, counts, words }) => {
    expect(counts(example.count)).toEqual(example.mayBe);
    expect(words?.test(example.said) ?? true).toBe(true);
  });
});
