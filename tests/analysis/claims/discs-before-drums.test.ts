import { expect, test } from "vitest";
import { discsBeforeDrums } from "../../../electron/analysis/claims/positions/discs-before-drums.ts";
import { claimsIn } from "./claims-in.ts";

// Disc front with drum rear is an ordinary system: common practice.
test.for([
  ["brakes disc up front drum in the back and i miked the rotors at one point two six inches", "front"],
  ["rear brakes are drums. The discs are eleven and three quarter inches", "front"],
  ["drums in the back and the rear rotors are ten inches", "rear"],
] as const)("%s", ([heard, position]) => {
  const found = claimsIn(heard, "underside").filter(({ component, unit }) => component === "brakes" && unit === "in");
  expect(found.map((claim) => claim.position)).toEqual([position]);
});

test("leaves drums where they are", () => {
  expect(discsBeforeDrums("drum", "rear", "disc up front and drums in the back are")).toBe("rear");
});
