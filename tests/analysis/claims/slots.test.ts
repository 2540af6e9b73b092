import { describe, expect, test } from "vitest";
import { circumstanceRules } from "../../../electron/analysis/claims/measures/circumstance.ts";
import { slots } from "../../../electron/analysis/claims/measures/slots/index.ts";
import { claimsIn } from "./claims-in.ts";

describe("every slot reads its own example", () => {
  test.for(slots.map((slot) => ({ why: slot.name, slot })))("$why", ({ slot }) => {
    const read = claimsIn(slot.example.heard, slot.example.zone).map(({ rule, value, position }) => ({ rule, value, position }));
    expect(read).toContainEqual({
      rule: slot.name,
      value: slot.example.value,
      position: slot.example.position ?? expect.toBeOneOf([null, "all", "rear", "front"]),
    });
  });
});

test("slot names are unique, so that a claim names its rule", () => {
  expect(new Set(slots.map((slot) => slot.name)).size).toBe(slots.length);
});

describe("every circumstance is told by its own example", () => {
  test.for(circumstanceRules.map((rule) => ({ why: rule.label, rule })))("$why", ({ rule }) => {
    expect(rule.words.test(rule.example)).toBe(true);
  });
});
