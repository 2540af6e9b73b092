import { describe, expect, test } from "vitest";
import { countedThings } from "../../../electron/analysis/claims/measures/counted-things.ts";
import { claimsIn } from "./claims-in.ts";

// Things that come in numbers on a vehicle: common practice.
describe("every counted thing reads its own example", () => {
  test.for(countedThings.map((thing) => ({ why: `${thing.component}: ${thing.say[0]}`, thing })))("$why", ({ thing }) => {
    const { heard, value } = thing.example;
    const zone = "zone" in thing.example ? thing.example.zone : undefined;
    const counts = claimsIn(heard, zone)
      .filter(({ attribute }) => attribute === "count")
      .map((claim) => ({ component: claim.component, value: claim.value }));
    expect(counts).toContainEqual({ component: thing.component, value });
  });
});

describe("what is counted and is no part of the vehicle", () => {
  test.for(["three miles of bad road", "two guys came to look", "six of one and half a dozen of the other", "I had four coffees"])(
    "%s",
    (heard) => {
      expect(claimsIn(heard, "driver-side").filter(({ attribute }) => attribute === "count")).toEqual([]);
    },
  );
});
