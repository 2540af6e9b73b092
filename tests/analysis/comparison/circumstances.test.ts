import { describe, expect, test } from "vitest";
import { countedOtherwise } from "../../../electron/analysis/comparison/facets/count-facets.ts";
import { circumstanceOf, spokenCircumstances } from "../../../electron/analysis/comparison/slots/circumstances.ts";
import { claimsFrom } from "./support/claims.ts";

const price = (quote: string, circumstance: string | null = null) =>
  circumstanceOf(claimsFrom([{ component: "price", attribute: "price", value: 1, quote, circumstance }])[0]!);

describe("what the words say about when a figure holds", () => {
  test.for([...spokenCircumstances])("$example", ({ example, name }) => {
    expect(price(example)).toBe(name);
  });

  test("a named circumstance goes before the words", () => {
    expect(price("the sticker was 3,681", "asked before")).toBe("asked before");
  });

  test.for(["actual", "original", "showing", "today"])("%s is emphasis", (circumstance) => {
    expect(price("58,412", circumstance)).toBeNull();
  });
});

describe("counts that others count otherwise", () => {
  test.for([...countedOtherwise])("$example.said", ({ example, counts, words }) => {
    expect(counts(example.count)).toEqual(example.mayBe);
    expect(words?.test(example.said) ?? true).toBe(true);
  });
});
