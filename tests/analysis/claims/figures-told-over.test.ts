import { describe, expect, test } from "vitest";
import type { ZoneName } from "../../../shared-types/index.ts";
import { claimsIn } from "./claims-in.ts";

/** Numbers as "component position attribute value unit", in spoken order. Ways of speaking are common practice of walkarounds. */
const told = (heard: string | readonly string[], zone: ZoneName): string[] =>
  claimsIn(heard, zone)
    .filter(({ value, attribute }) => typeof value === "number" || attribute === "date" || attribute === "size")
    .map(({ component, position, attribute, value, unit }) => [component, position ?? "-", attribute, value, unit ?? "-"].join(" "));

interface Row {
  readonly heard: string;
  readonly zone: ZoneName;
  /** Found among what is told. */
  readonly has?: string;
  /** Never among it: a start of the line is enough. */
  readonly not?: string;
}

const check = ({ heard, zone, has, not }: Row): void => {
  const lines = told(heard, zone);
  if (has !== undefined) expect(lines).toContain(has);
  if (not !== undefined) expect(lines.filter((line) => line.startsWith(not))).toEqual([]);
};

describe("counts that add up, or own to one more", () => {
  test.for([
    { heard: "Service book, eight stamps and two invoices, so that's ten in all.", zone: "documents", has: "title - count 10 -" },
    { heard: "Service book, six stamps and three bills, that makes nine.", zone: "documents", has: "title - count 9 -" },
    { heard: "that's another pair of seats, so you've seven.", zone: "cargo", has: "seats - count 7 -" },
    {
      heard: "It's two keepers, and a few months in the dealer's name, so you might call it three.",
      zone: "documents",
      has: "vehicle - count 3 -",
    },
    {
      heard: "Six boxes down this side and the same six boxes over there that makes twelve.",
      zone: "driver-side",
      has: "body driver count 12 -",
    },
    // Something else follows the number, or nothing was counted.
    { heard: "There's one speaker in the dash and for cooling that's two windows down.", zone: "cabin", not: "audio - count 2" },
    { heard: "Two keepers, and it was made in a factory with ten in all.", zone: "documents", not: "vehicle - count 10" },
    { heard: "Two keepers and that makes forty thousand miles each.", zone: "documents", not: "vehicle - count 40" },
    { heard: "The two keys are here and you might call it a day at five.", zone: "documents", not: "vehicle - count 5" },
    { heard: "So that's ten in all of us here today.", zone: "opening", not: "title" },
  ] as const satisfies readonly Row[])("$heard", check);
});

describe("counts told after their thing", () => {
  test.for([
    { heard: "aux switches there's six am fm with the backup camera", zone: "cabin", has: "electrical - count 6 -" },
    { heard: "scratches yeah dents two from a skid of block but no holes", zone: "cargo", has: "cargo-floor - count 2 -" },
    { heard: "tow hooks, there's two of them", zone: "front", has: "bumper front count 2 -" },
    { heard: "snaps I count eleven and they all close", zone: "cabin", has: "top - count 11 -" },
    { heard: "aux switches there's six cylinders under there", zone: "cabin", not: "electrical - count 6" },
    { heard: "dents two inches from the edge", zone: "cargo", not: "cargo-floor - count 2" },
    { heard: "lap belts, a pair up front and a pair in back", zone: "cabin", not: "belts front count" },
    { heard: "the battery's one of them and it reads twelve five", zone: "engine-bay", not: "electrical - count 12" },
  ] as const satisfies readonly Row[])("$heard", check);
});

describe("figures rounded or taped again", () => {
  test.for([
    { heard: "The odometer says 138,600, call it one thirty nine.", zone: "cabin", has: "odometer - mileage 139000 mi" },
    {
      heard: "The bed floor is nine foot long, I put a tape on it, that's nine.",
      zone: "cargo",
      has: "cargo-floor - size 9 ft",
    },
    { heard: "The odometer says 138,600, call it one of the good ones.", zone: "cabin", not: "odometer - mileage 1 " },
    { heard: "The odometer says 138,600, call it five hundred dollars.", zone: "cabin", not: "odometer - mileage 500" },
  ] as const satisfies readonly Row[])("$heard", check);
  test("the tape says it twice, another figure is none of it", () => {
    const lengths = (heard: string) => told(heard, "cargo").filter((line) => line.includes(" ft"));
    expect(lengths("The bed floor is nine foot long, I put a tape on it, that's nine.")).toHaveLength(2);
    expect(lengths("The bed floor is nine foot long, I put a tape on it, that's twelve.")).toHaveLength(1);
    expect(lengths("The bed floor is nine foot long and there's nine of us here.")).toHaveLength(1);
  });
});

describe("what a sum paid for and a date belongs to", () => {
  test.for([
    {
      heard:
        "The axle one says three twenty five gears installed new, the guy marks it paid twelve hundred dollars. The frame, it's the original frame.",
      zone: "documents",
      has: "final-drive - price 1200 USD",
    },
    { heard: "He paid twelve hundred dollars for the exhaust.", zone: "documents", has: "exhaust - price 1200 USD" },
    {
      heard: "and oh off side front wing, supply and paint, a hundred and forty quid",
      zone: "documents",
      has: "body driver-front price 140 GBP",
    },
    { heard: "the paint was a hundred and forty quid", zone: "documents", not: "body" },
    {
      heard: "the seat was done in black leather with the white piping by a lady in the next town in 2016 mileage exempt on the title",
      zone: "documents",
      has: "seats - date 2016 -",
    },
    { heard: "Single exhaust, it's a stainless one, 2011 if I remember the invoice.", zone: "rear", has: "exhaust - date 2011 -" },
    { heard: "the spray in receipt from the liner guy, sprayed the box 2021", zone: "documents", has: "cargo-floor - date 2021 -" },
    { heard: "tan carpet and the dash is the original thirty two with five gauges", zone: "cabin", has: "dash - year 1932 -" },
    { heard: "tan carpet and the dash is the original thirty two with five gauges", zone: "cabin", not: "carpet" },
  ] as const satisfies readonly Row[])("$heard", check);
});

describe("where a part is by its own name", () => {
  test.for([
    { heard: "one tab broke on the back you can't see it two headlights", zone: "front", has: "lights front count 2 -" },
    { heard: "the windshield's got a crack down low passenger side about six inches", zone: "front", has: "glass front size 6 in" },
    { heard: "driver's door has a scratch about six inches", zone: "driver-side", has: "body driver size 6 in" },
    { heard: "Front tire, I'll read you the side of it, 205 50 R 18.", zone: "driver-side", has: "tire driver-front size 205/50R18 -" },
    { heard: "The front tires are 205 50 R 18.", zone: "driver-side", has: "tire front size 205/50R18 -" },
  ] as const satisfies readonly Row[])("$heard", check);

  test("a caption's end between a place and its figure", () => {
    expect(
      told(
        ["the tires are fine and the date on the fronts is", "thirty four twenty two the rears i'm going to have to get down for"],
        "driver-side",
      ),
    ).toContain("tire front date 3422 -");
  });
});

describe("a figure that looks like a battery's or a tire's, and is none", () => {
  test.for([
    { heard: "if the battery health drops below seventy percent they swap it", zone: "documents", not: "electrical - count" },
    { heard: "the battery health is ninety one percent", zone: "documents", has: "electrical - count 91 -" },
    { heard: "I've had the shop eight years or so and the battery is fine", zone: "documents", not: "electrical - count 8" },
    { heard: "I've only got six months to go", zone: "closing", not: "vehicle - count" },
    { heard: "sidewall says eighty max", zone: "driver-side", has: "tire - pressure 80 psi" },
    { heard: "the title says eighty max", zone: "documents", not: "tire" },
    { heard: "it's got four bolt mains", zone: "engine-bay", not: "exhaust" },
    { heard: "the axle's narrowed two inches", zone: "underside", has: "final-drive - width 2 in" },
    { heard: "doors are four mils and the hatch is five", zone: "driver-side", not: "body driver count" },
  ] as const satisfies readonly Row[])("$heard", check);
});
