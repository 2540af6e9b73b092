import { expect, test } from "vitest";
import { type Claim, sideValues } from "../../../shared-types/index.ts";
import { sampleDetail } from "../sample-detail.ts";

const [sample] = sampleDetail().analysis.claims;
const claim = (id: string, change: Partial<Claim>): Claim => ({ ...sample!, id, ...change });
const side = (value: number | string, unit: "mi" | null, ...claims: string[]) => ({ value, unit, claims });

test("a year is no count: it is told without a comma", () => {
  const claims = [claim("a", { attribute: "originality", value: "original" }), claim("b", { attribute: "year", value: 1974 })];
  expect(sideValues({ sides: [side("original", null, "a"), side(1974, null, "b")] }, claims)).toEqual(["original", "1974"]);
});

test("two sides with one figure are told apart by how it was said", () => {
  const claims = [claim("a", { attribute: "mileage", stance: "stated" }), claim("b", { attribute: "mileage", stance: "hedged" })];
  expect(sideValues({ sides: [side(61240, "mi", "a"), side(61240, "mi", "b")] }, claims)).toEqual([
    "61,240 mi, said flat out",
    "61,240 mi, said with a doubt",
  ]);
});
