import { describe, expect, test } from "vitest";
import { unitMeanings } from "../../../electron/analysis/claims/measures/nearest-part.ts";
import { claimsIn } from "./claims-in.ts";

const measured = (heard: string): string[] =>
  claimsIn(heard)
    .filter(({ rule }) => rule === "measure of the nearest part")
    .map(({ component, attribute, value, unit }) => `${component} ${attribute} ${value} ${unit}`);

// Which unit measures what of which part, and its bounds, are common practice.
describe("a spoken unit with no slot of its own", () => {
  test.for(unitMeanings.map((row) => ({ why: row.example.heard, row })))("$why", ({ row }) => {
    const [told] = claimsIn(row.example.heard).filter(({ value }) => value === row.example.value);
    expect(`${told?.component} ${told?.attribute} ${told?.unit}`).toBe(row.example.told);
  });

  test.for([
    { why: "a length taken across", heard: "The trunk is eight foot wide.", told: "cargo-floor width 8 ft" },
    { why: "a length said thick", heard: "The bed liner is half an inch thick.", told: "cargo-floor thickness 0.5 in" },
  ])("$why", ({ heard, told }) => {
    const claims = claimsIn(heard).map(({ component, attribute, value, unit }) => `${component} ${attribute} ${value} ${unit}`);
    expect(claims).toContain(told);
  });

  test.for([
    { why: "no unit", heard: "the clutch is eleven" },
    { why: "the size of something else", heard: "a dent in the roof the size of a six inch ruler" },
    { why: "a distance", heard: "the bumper's about two foot away from me" },
    { why: "far from any part", heard: "Look at the bumper. Anyway, my boy caught a fish last week, and he swears it was twenty inches." },
  ])("stays quiet about $why", ({ heard }) => {
    expect(measured(heard)).toEqual([]);
  });
});
