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

describe("figures of tires, wheels, brakes and springs, as told in passing", () => {
  test.for([
    { heard: "Tires, load range E, ten ply they call it.", told: ["tire@all.count=10"] },
    { heard: "It drives nice for a truck on thirty fives.", told: ["tire.diameter=35"] },
    { heard: "Tires, these measure up as a thirty one inch tire.", told: ["tire.diameter=31"] },
    { heard: "The tyres are good, that's a two oh five section.", told: ["tire.width=205"] },
    {
      heard: "I run sixty five in the front tires and fifty five in the duals.",
      told: ["tire@front.pressure=65", "tire@rear.pressure=55"],
    },
    { heard: "The sticker in the jamb says thirty five pounds.", told: ["tire.pressure=35"] },
    { heard: "The wheels are fourteens by four and a half.", told: ["wheel@all.width=4.5"] },
    { heard: "Wheel is stamped sixteen five by six seventy five.", told: ["wheel.diameter=16.5", "wheel.width=6.75"] },
    {
      heard: "Front discs, eleven and three quarter, rear drums, eleven inch.",
      told: ["brakes@front.diameter=11.75", "brakes@rear.diameter=11"],
    },
    { heard: "Behind it's a drum, eleven inch by two and a quarter.", told: ["brakes@rear.width=2.25"] },
    { heard: "Front discs are twenty four millimetres thick.", told: ["brakes@front.thickness=24"] },
    { heard: "Four pot calipers up front.", told: ["brakes@front.count=4"] },
    { heard: "Steering wheel's four spoke.", zone: "cabin", told: ["steering.count=4"] },
    { heard: "Steering's got a little wander in it, about half an inch.", zone: "drive", told: ["steering.size=0.5"] },
    { heard: "It's been lifted, it's got the four inch kit on it.", told: ["suspension.size=4"] },
    { heard: "Seven leaf out back and two helpers.", zone: "underside", told: ["suspension@rear.count=7", "suspension@rear.count=2"] },
    { heard: "Those tires are from twenty twenty, the thirtieth week.", told: ["tire.date=2020-W30"] },
    {
      heard: "tires five mil on the fronts six on the backs this one's dated thirty one twenty two",
      zone: "driver-side",
      told: ["tire@driver-front.date=3122"],
    },
  ] satisfies readonly Row[])("$heard", ({ heard, zone, told }) => {
    expect(read(heard, zone).map((claim) => claim.replace(/^tire@all\.(date|width|diameter)/, "tire.$1"))).toEqual(
      expect.arrayContaining([...told]),
    );
  });
});

describe("figures that are no such thing", () => {
  test.for([
    { heard: "The floor is ten ply plywood.", told: ["tire@all.count=10"] },
    { heard: "His buddy wants thirty sevens on it.", told: ["tire.diameter=37"] },
    { heard: "The sticker in the jamb says eleven hundred pounds payload.", told: ["tire.pressure=1100"] },
    { heard: "They throw the discs away at twenty two millimetres.", told: ["brakes.thickness=22"] },
    { heard: "The pads on those discs are nine millimetres.", told: ["brakes.diameter=9", "brakes@all.thickness=22"] },
    { heard: "The wires have three score spokes.", zone: "driver-side", told: ["steering.count=3"] },
    { heard: "The door's got a little wander in it, about half an inch.", told: ["steering.size=0.5"] },
    { heard: "Body kit, and a four inch exhaust kit on it.", told: ["suspension.size=4"] },
    { heard: "Rear springs, seven leaf, one a side.", zone: "underside", told: ["suspension@rear.count=1"] },
    {
      heard: "fronts are five mil backs are six and the front ones are dated thirty one twenty two",
      zone: "driver-side",
      told: ["tire@driver-rear.date=3122"],
    },
  ] satisfies readonly Row[])("$heard", ({ heard, zone, told }) => {
    const claims = read(heard, zone);
    for (const wrong of told) expect(claims).not.toContain(wrong);
  });
});
