import { describe, expect, test } from "vitest";
import type { ZoneName } from "../../../shared-types/index.ts";
import { claimsIn } from "./claims-in.ts";

interface Row {
  readonly heard: string;
  readonly zone?: ZoneName;
  /** "component.attribute=value", with "@position" where the words place it. */
  readonly told: readonly string[];
}

const read = (heard: string, zone?: ZoneName): string[] =>
  claimsIn(heard, zone).map(
    ({ component, position, attribute, value }) => `${component}${position ? `@${position}` : ""}.${attribute}=${String(value)}`,
  );

describe("a van somebody lives in", () => {
  test.for([
    { heard: "There's six foot four of standing room.", zone: "cabin", told: ["body.size=6.333333"] },
    { heard: "The mattress is in four pieces.", zone: "cabin", told: ["seats.count=4"] },
    { heard: "It's insulated, forty mil of the foam in the sides.", zone: "cabin", told: ["trim.thickness=40"] },
    { heard: "Plywood twelve on the walls and eighteen on the floor.", zone: "cabin", told: ["trim.thickness=12", "floors.thickness=18"] },
    { heard: "Water under the bench, ninety litres.", zone: "cabin", told: ["vehicle.size=90"] },
    { heard: "The waste is fifty.", zone: "underside", told: ["vehicle.size=50"] },
    { heard: "In the locker it's an eleven kilo propane cylinder.", zone: "driver-side", told: ["fuel-system.size=11"] },
    { heard: "A hundred and twenty watts of solar up there.", zone: "cabin", told: ["electrical.power=0.12"] },
    { heard: "She stands at two point eight metres.", zone: "roof", told: ["vehicle.size=2800"] },
  ] satisfies Row[])("$heard", ({ heard, zone, told }) => {
    expect(read(heard, zone)).toEqual(expect.arrayContaining([...told]));
  });
});

describe("figures told around the corner", () => {
  test.for([
    { heard: "They're seventeens with a minus six offset.", told: ["wheel@all.size=-6"] },
    { heard: "What's really in there is a 383.", zone: "front", told: ["engine.displacement=383"] },
    { heard: "The tyres were made in the spring of twenty one.", zone: "driver-side", told: ["tire@all.date=2021"] },
    { heard: "The windshield's new, there's a date on it nineteen.", zone: "front", told: ["glass@front.date=2019"] },
    { heard: "The battery's dated june of twenty two oil holds five quarts.", told: ["electrical.date=2022-06", "engine.size=5"] },
    {
      heard: "The fender is 108 microns the door is 112 microns.",
      zone: "driver-side",
      told: ["paint@driver-front.thickness=108", "paint@driver.thickness=112"],
    },
    { heard: "The rear tires 285 40 20 and the code is 5 1 2 2.", zone: "passenger-side", told: ["tire@rear.date=5122"] },
    { heard: "The roof's a panorama in two panels.", told: ["top.count=2"] },
    { heard: "The bearings were done at about sixty two thousand.", zone: "engine-bay", told: ["engine.mileage=62000"] },
    { heard: "The pump for the roof, that's new, 2018 on the invoice.", zone: "cargo", told: ["top.date=2018"] },
  ] satisfies Row[])("$heard", ({ heard, zone, told }) => {
    expect(read(heard, zone)).toEqual(expect.arrayContaining([...told]));
  });
});

describe("what the same words leave alone", () => {
  test.for([
    { heard: "The law's thirty five on the front windows.", zone: "passenger-side", told: [] },
    { heard: "The car park at the hospital is two point one metres.", zone: "roof", told: [] },
    { heard: "The bulbs are sixty watts.", zone: "front", told: [] },
    { heard: "There are twelve on the floor of the garage.", zone: "cabin", told: [] },
    { heard: "He had a date on it Friday, at twenty past.", zone: "front", told: [] },
    { heard: "I left two kilos of apples in the cabin.", zone: "cabin", told: [] },
  ] satisfies Row[])("$heard", ({ heard, zone }) => {
    expect(read(heard, zone)).toEqual([]);
  });
});
