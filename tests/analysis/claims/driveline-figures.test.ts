import { describe, expect, test } from "vitest";
import type { ZoneName } from "../../../shared-types/index.ts";
import { claimsIn } from "./claims-in.ts";

/** The measures in some words, as "component part attribute value unit". */
function told(heard: string, zone?: ZoneName): string[] {
  return claimsIn(heard, zone)
    .filter((claim) => typeof claim.value === "number")
    .map(({ component, part, attribute, value, unit }) => [component, part ?? "-", attribute, value, unit ?? "-"].join(" "));
}

// Figures and forms of speech are common practice of the trade.
const read: readonly { readonly heard: string; readonly zone?: ZoneName; readonly told: string }[] = [
  { heard: "there she is, V8, and it's had a rebuild", told: "engine cylinder count 8 -" },
  { heard: "it's the flathead six", told: "engine cylinder count 6 -" },
  { heard: "up top it's one big four barrel", told: "fuel-system carburetor count 1 -" },
  { heard: "she came with three deuces on it", told: "fuel-system carburetor count 3 -" },
  { heard: "twin inch and three quarter side draught carburettors", told: "fuel-system carburetor count 2 -" },
  { heard: "this one's got dual tanks", told: "fuel-tank tank count 2 -" },
  { heard: "exhaust is twin and it comes out under the bumper", told: "exhaust exhaust count 2 -" },
  { heard: "the alternator is a seventy amp", told: "electrical alternator size 70 A" },
  { heard: "battery's six hundred and fifty cold cranking amps", told: "electrical battery size 650 A" },
  { heard: "two 12 volt batteries in the box", told: "electrical battery count 2 -" },
  { heard: "the clutch is a ten and a half inch", told: "transmission clutch diameter 10.5 in" },
  { heard: "the rear end's been narrowed four inches", zone: "underside", told: "final-drive narrowing width 4 in" },
  { heard: "the rear axle had a three two oh in it", zone: "underside", told: "final-drive - ratio 3.2 -" },
  { heard: "Oil's at sixty, it'll settle to twenty five.", zone: "drive", told: "engine oil pressure pressure 25 psi" },
  { heard: "the turbo's making eighteen pounds", told: "engine turbo pressure 18 psi" },
  { heard: "a hundred and forty pounds on number three", zone: "engine-bay", told: "engine compression pressure 140 psi" },
  { heard: "the fan's a six blade", zone: "engine-bay", told: "cooling fan blade count 6 -" },
  { heard: "oil takes a gallon and a quarter", told: "engine oil size 1.25 gal" },
  { heard: "rear axle is a three seven three, they made a four ten", zone: "underside", told: "final-drive - ratio 3.73 -" },
  { heard: "of the 77 kilowatt hours 74 are usable", told: "electrical traction battery size 74 kWh" },
];

describe("figures of the engine and what it drives", () => {
  test.for(read)("$heard", (row) => {
    expect(told(row.heard, row.zone)).toContain(row.told);
  });
});

const quiet: readonly { readonly heard: string; readonly zone?: ZoneName; readonly not: string }[] = [
  { heard: "it wants a single gear knob", not: "transmission gears count 1 -" },
  { heard: "two by fours across the bed and the carb's fine", not: "fuel-system carburetor count 2 -" },
  { heard: "Two barrel carburetor, it's rebuilt.", not: "fuel-system carburetor count 2 -" },
  { heard: "the water tank holds ten and there are two fresh water tanks", not: "fuel-tank tank count 2 -" },
  { heard: "it's a dual clutch box", not: "transmission gears count 2 -" },
  { heard: "the four link at the back and the exhaust's tucked up", zone: "underside", not: "exhaust pipe diameter 4 in" },
  { heard: "Rear end's a three nine. The taxis had a four three.", zone: "underside", not: "final-drive - ratio 4.3 -" },
  { heard: "it's the three point oh, the later one had a three point five litre", not: "engine - displacement 3.5 L" },
  { heard: "four belts, laps in the back, three-points in the front", zone: "cabin", not: "ignition - count 3 -" },
  { heard: "it takes a sixty amp fuse", not: "electrical alternator size 60 A" },
];

describe("numbers that only look like them", () => {
  test.for(quiet)("$heard", (row) => {
    expect(told(row.heard, row.zone)).not.toContain(row.not);
  });
});
