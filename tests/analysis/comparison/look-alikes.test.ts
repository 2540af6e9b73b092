import { describe, expect, test } from "vitest";
import type { ClaimSketch } from "../../../electron/analysis/comparison/standards/rule.ts";
import { comparedSketches, named } from "./support/claims.ts";

/**
 * What a naive tool would flag and a reviewer would not want, each beside a real contradiction of the same shape.
 * Facts of the trade are common practice unless a source is named.
 */
interface Row {
  readonly why: string;
  readonly claims: readonly ClaimSketch[];
}

const quiet: readonly Row[] = [
  {
    why: "a taller rear tire is deliberate",
    claims: [
      { component: "tire", attribute: "size", value: "225/60R15", position: "front" },
      { component: "tire", attribute: "size", value: "235/60R15", position: "rear" },
      { component: "wheel", attribute: "diameter", value: 15, unit: "in", position: "all" },
    ],
  },
  {
    why: "front and rear said again without a place while standing at the wheels",
    claims: [
      { component: "tire", attribute: "size", value: "215/70R15", position: "front" },
      { component: "tire", attribute: "size", value: "235/60R15", position: "rear" },
      { component: "tire", attribute: "size", value: "235/60R15", zone: "driver-side" },
      { component: "tire", attribute: "size", value: "215/70R15", zone: "driver-side" },
    ],
  },
  {
    why: "this side's tires, standing at the rear one",
    claims: [
      { component: "tire", attribute: "size", value: "215/70R15", position: "front" },
      { component: "tire", attribute: "size", value: "235/60R15", position: "rear" },
      { component: "tire", attribute: "size", value: "215/70R15", position: "driver-front" },
      { component: "tire", attribute: "size", value: "235/60R15", position: "driver" },
    ],
  },
  {
    why: "a size of another rim, once front and rear are known",
    claims: [
      { component: "tire", attribute: "size", value: "215/70R15", position: "front" },
      { component: "tire", attribute: "size", value: "235/60R15", position: "rear" },
      { component: "tire", attribute: "size", value: "195/70R14", zone: "rear" },
    ],
  },
  {
    why: "one size without a place, the front's with one",
    claims: [
      { component: "tire", attribute: "size", value: "215/70R15", position: "front" },
      { component: "tire", attribute: "size", value: "235/60R15", zone: "driver-side" },
    ],
  },
  {
    why: "size prefixes, speed letters and spelling",
    claims: ["P235/60R15", "235/60-15", "235/60ZR15", "235/60R15 98H", "235/60"].map((value) => ({
      component: "tire" as const,
      attribute: "size" as const,
      value,
      position: "rear" as const,
    })),
  },
  {
    why: "the spare is not a road tire",
    claims: [
      { component: "tire", attribute: "size", value: "225/50R17", position: "all" },
      { component: "spare", attribute: "size", value: "T135/80D16" },
      { component: "wheel", attribute: "diameter", value: 17, unit: "in", position: "all" },
      { component: "spare", attribute: "date", value: "454" },
      { component: "tire", attribute: "date", value: "2318", position: "all" },
    ],
  },
  {
    why: "a former state against today's",
    claims: [
      { component: "engine", attribute: "displacement", value: 302, unit: "cu in", time: "former" },
      { component: "engine", attribute: "displacement", value: 351, unit: "cu in" },
      { component: "electrical", attribute: "type", value: "dynamo", time: "former" },
      { component: "electrical", attribute: "type", value: "alternator" },
    ],
  },
  {
    why: "mileage spoken with fewer digits",
    claims: [58412, 58400, 58000].map((value) => ({
      component: "odometer" as const,
      attribute: "mileage" as const,
      value,
      unit: "mi" as const,
    })),
  },
  {
    why: "the rest of the figure dropped",
    claims: [
      { component: "odometer", attribute: "mileage", value: 84000, unit: "mi", quote: "eighty four thousand and some change" },
      { component: "odometer", attribute: "mileage", value: 84912, unit: "mi" },
    ],
  },
  {
    why: "miles and kilometers",
    claims: [
      { component: "odometer", attribute: "mileage", value: 92157, unit: "mi" },
      { component: "odometer", attribute: "mileage", value: 148312, unit: "km" },
      { component: "odometer", attribute: "mileage", value: 92000, unit: "mi", quote: "ninety two thousand miles" },
    ],
  },
  {
    why: "the mileage at which the head was off",
    claims: [
      { component: "odometer", attribute: "mileage", value: 148312, unit: "km", zone: "cabin" },
      {
        component: "odometer",
        attribute: "mileage",
        value: 131000,
        unit: "km",
        zone: "engine-bay",
        quote: "that was at a hundred thirty one thousand on the clock",
      },
      {
        component: "odometer",
        attribute: "mileage",
        value: 81400,
        unit: "mi",
        zone: "engine-bay",
        stance: "hedged",
        quote: "call it eighty one four",
      },
    ],
  },
  {
    why: "the wheel in the cabin is the steering wheel",
    claims: [
      { component: "wheel", attribute: "diameter", value: 14, unit: "in", position: "all" },
      { component: "wheel", attribute: "material", value: "steel", position: "all" },
      { component: "wheel", attribute: "diameter", value: 15, unit: "in", zone: "cabin", quote: "the wheel's a fifteen inch wood" },
      { component: "wheel", attribute: "material", value: "wood", zone: "cabin", quote: "the wheel's a fifteen inch wood" },
      { component: "tire", attribute: "size", value: "G70-14", position: "all" },
    ],
  },
  {
    why: "the price said again, taken for a mileage",
    claims: [
      { component: "odometer", attribute: "mileage", value: 41200, unit: "mi", quote: "forty one thousand two hundred miles" },
      { component: "price", attribute: "price", value: 15495, unit: "GBP" },
      { component: "odometer", attribute: "mileage", value: 15495, unit: "mi", quote: "fifteen four nine five any questions" },
      { component: "odometer", attribute: "mileage", value: 13500, unit: "mi", quote: "he wanted thirteen five" },
    ],
  },
  {
    why: "a price rounded in speech",
    claims: [
      { component: "price", attribute: "price", value: 18950, unit: "GBP" },
      { component: "price", attribute: "price", value: 19000, unit: "GBP", stance: "hedged", quote: "nineteen thousand near enough" },
    ],
  },
  {
    why: "the new price of its day",
    claims: [
      { component: "price", attribute: "price", value: 3681, unit: "USD", circumstance: "new" },
      { component: "price", attribute: "price", value: 38900, unit: "USD" },
    ],
  },
  {
    why: "cold and hot, at rest and running, cylinder by cylinder",
    claims: [
      { component: "engine", attribute: "pressure", part: "oil pressure", value: 55, unit: "psi", circumstance: "cold" },
      { component: "engine", attribute: "pressure", part: "oil pressure", value: 30, unit: "psi", circumstance: "hot" },
      { component: "electrical", attribute: "voltage", value: 12.6, unit: "V" },
      { component: "electrical", attribute: "voltage", value: 14.2, unit: "V" },
      { component: "engine", attribute: "pressure", part: "compression", value: 155, unit: "psi" },
      { component: "engine", attribute: "pressure", part: "compression", value: 162, unit: "psi" },
    ],
  },
  {
    why: "one engine in three units",
    claims: [
      { component: "engine", attribute: "displacement", value: 2.4, unit: "L" },
      { component: "engine", attribute: "displacement", value: 2359, unit: "cc" },
      { component: "engine", attribute: "displacement", value: 144, unit: "cu in" },
    ],
  },
  {
    why: "a 350 bored thirty over is a 355",
    claims: [
      { component: "engine", attribute: "displacement", value: 350, unit: "cu in" },
      { component: "engine", attribute: "size", value: 0.03, unit: "in", quote: "thirty over" },
      { component: "engine", attribute: "displacement", value: 355, unit: "cu in" },
    ],
  },
  {
    why: "German, American and metric power",
    claims: [
      { component: "engine", attribute: "power", value: 218, unit: "PS" },
      { component: "engine", attribute: "power", value: 215, unit: "hp" },
      { component: "engine", attribute: "power", value: 160, unit: "kW" },
      { component: "engine", attribute: "power", value: 318, unit: "hp", circumstance: "at the wheels" },
    ],
  },
  {
    why: "disc in front, drum behind",
    claims: [
      { component: "brakes", attribute: "type", value: "disc", position: "front" },
      { component: "brakes", attribute: "type", value: "drum", position: "rear" },
      { component: "brakes", attribute: "type", value: "power" },
      { component: "brakes", attribute: "type", value: "vented disc", position: "front" },
    ],
  },
  {
    why: "two panels, two bumpers, two seats",
    claims: [
      { component: "body", attribute: "originality", part: "quarter panel", value: "replaced", position: "passenger-rear" },
      { component: "body", attribute: "originality", part: "quarter panel", value: "original", position: "driver-rear" },
      { component: "bumper", attribute: "originality", value: "replaced", position: "front" },
      { component: "bumper", attribute: "originality", value: "original", position: "rear" },
      { component: "seats", attribute: "originality", value: "replaced", position: "front" },
      { component: "seats", attribute: "originality", value: "original", position: "rear" },
    ],
  },
  {
    why: "everything but the hood is original paint",
    claims: [
      { component: "paint", attribute: "originality", part: "hood", value: "replaced", position: "front" },
      { component: "paint", attribute: "originality", value: "original" },
    ],
  },
  {
    why: "shades of one color",
    claims: ["dark red", "red", "oxblood", "burgundy"].map((value) => ({
      component: "seats" as const,
      attribute: "color" as const,
      value,
    })),
  },
  {
    why: "gray, graphite and silver gray",
    claims: ["gray", "dark gray metallic", "graphite", "grey"].map((value) => ({
      component: "paint" as const,
      attribute: "color" as const,
      value,
    })),
  },
  {
    why: "a material and a kind of it",
    claims: [
      { component: "exhaust", attribute: "material", value: "steel" },
      { component: "exhaust", attribute: "material", value: "stainless" },
      { component: "wheel", attribute: "material", value: "alloy", position: "all" },
      { component: "wheel", attribute: "material", value: "aluminum", position: "all" },
    ],
  },
  {
    why: "timing chain and drive belt are two parts",
    claims: [
      { component: "engine", attribute: "type", part: "timing chain", value: "chain" },
      { component: "engine", attribute: "type", part: "drive belt", value: "belt" },
    ],
  },
  {
    why: "splines are not gears, owners not keys",
    claims: [
      { component: "transmission", attribute: "count", value: 4, quote: "four speed" },
      { component: "transmission", attribute: "count", value: 28, quote: "twenty eight spline output" },
      { component: "vehicle", attribute: "count", value: 3, quote: "three owners" },
      { component: "vehicle", attribute: "count", value: 2, quote: "two keys" },
    ],
  },
  {
    why: "a hatch is a fifth door, a previous owner one of several, an overdrive a gear",
    claims: [
      { component: "body", attribute: "count", part: "door", value: 5 },
      { component: "body", attribute: "count", part: "door", value: 4 },
      { component: "vehicle", attribute: "count", part: "owner", value: 2, quote: "two previous owners" },
      { component: "vehicle", attribute: "count", part: "owner", value: 3, quote: "third owner" },
      { component: "transmission", attribute: "count", part: "gears", value: 4, quote: "four speed with overdrive" },
      { component: "transmission", attribute: "count", part: "gears", value: 5, quote: "five speed" },
      { component: "engine", attribute: "count", part: "valve", value: 4, quote: "four valves a cylinder" },
      { component: "engine", attribute: "count", part: "valve", value: 24, quote: "twenty four valve" },
    ],
  },
  {
    why: "belts in front and behind make all",
    claims: [
      { component: "belts", attribute: "count", value: 5, position: "all" },
      { component: "belts", attribute: "count", value: 2, position: "front" },
      { component: "belts", attribute: "count", value: 3, position: "rear" },
    ],
  },
  {
    why: "a slip put right in the same breath",
    claims: [
      { component: "fuel-system", attribute: "flow", value: 600, unit: "cfm", start: 100 },
      { component: "fuel-system", attribute: "flow", value: 650, unit: "cfm", start: 103 },
    ],
  },
  {
    why: "a value named only to be set against another, long after that other",
    claims: [
      { component: "transmission", attribute: "count", value: 4, quote: "four speed", start: 10 },
      { component: "transmission", attribute: "count", value: 3, quote: "folks say three speed", start: 300 },
      { component: "transmission", attribute: "count", value: 4, quote: "three and one is four", start: 305 },
    ],
  },
  {
    why: "praise of the same tread twice",
    claims: [
      { component: "tire", attribute: "condition", value: "good", quote: "plenty of life" },
      { component: "tire", attribute: "condition", value: "good", quote: "nubs on em" },
    ],
  },
  {
    why: "no rust is not no scratch",
    claims: [
      {
        component: "body",
        attribute: "condition",
        part: "fender",
        value: "good",
        position: "driver-front",
        quote: "no rust in this fender",
      },
      {
        component: "body",
        attribute: "condition",
        part: "fender",
        value: "flawed",
        position: "driver-front",
        quote: "little scratch on the fender",
      },
    ],
  },
  {
    why: "no dings, said of the part in hand during one visit to a side",
    claims: [
      {
        component: "body",
        attribute: "condition",
        part: "fender",
        value: "flawed",
        position: "driver-front",
        zone: "driver-side",
        quote: "ding in the fender",
        circumstance: "dents",
      },
      {
        component: "body",
        attribute: "condition",
        value: "good",
        position: "driver",
        zone: "driver-side",
        quote: "no dings",
        circumstance: "dents",
      },
    ],
  },
  {
    why: "nice, straight and clean beside a small fault",
    claims: [
      {
        component: "body",
        attribute: "condition",
        part: "door",
        value: "good",
        position: "driver-front",
        quote: "door's good",
        circumstance: "praise",
      },
      {
        component: "body",
        attribute: "condition",
        part: "door",
        value: "flawed",
        position: "driver-front",
        quote: "a touch up on the door",
        circumstance: "marks",
      },
      { component: "carpet", attribute: "condition", value: "good", quote: "Carpet is clean", circumstance: "praise" },
      { component: "carpet", attribute: "condition", part: "mats", value: "flawed", quote: "the mats are rough", circumstance: "stains" },
    ],
  },
  {
    why: "dings on one side only",
    claims: [
      { component: "body", attribute: "condition", value: "good", position: "passenger", quote: "no dings on this side" },
      { component: "body", attribute: "condition", value: "flawed", position: "driver-front", quote: "this door's got one ding" },
    ],
  },
  {
    why: "two batteries of six volts make twelve",
    claims: [
      { component: "electrical", attribute: "voltage", value: 6, unit: "V", part: "battery" },
      { component: "electrical", attribute: "voltage", value: 12, unit: "V" },
    ],
  },
  {
    why: "built, titled and sold in different years",
    claims: [
      { component: "vehicle", attribute: "year", value: 1985 },
      { component: "vehicle", attribute: "date", value: "1984-11", circumstance: "built" },
      { component: "title", attribute: "year", value: 1985 },
      { component: "title", attribute: "date", value: 1986 },
    ],
  },
  {
    why: "donor years of different parts",
    claims: [
      { component: "vehicle", attribute: "year", value: 1948, zone: "rear", quote: "forty eight lights" },
      { component: "vehicle", attribute: "year", value: 1935 },
      { component: "steering", attribute: "year", part: "steering box", value: 1974 },
      { component: "steering", attribute: "year", part: "column", value: 1979 },
      { component: "final-drive", attribute: "year", value: 1971 },
    ],
  },
  {
    why: "a rounded figure is no doubt about it",
    claims: [
      { component: "odometer", attribute: "mileage", value: 84312, unit: "mi" },
      { component: "odometer", attribute: "mileage", value: 84000, unit: "mi", stance: "hedged", quote: "about eighty four thousand" },
    ],
  },
  {
    why: "no doubt where nobody cares",
    claims: [
      { component: "suspension", attribute: "count", part: "leaf", value: 4, position: "rear" },
      { component: "suspension", attribute: "count", part: "leaf", value: 4, position: "rear", stance: "hedged" },
    ],
  },
  {
    why: "spare present, and described",
    claims: [
      { component: "spare", attribute: "presence", value: "present" },
      { component: "spare", attribute: "size", value: "F70-14" },
    ],
  },
];

const loud: readonly (Row & { readonly conflict: string })[] = [
  {
    why: "a word for every wheel covers the rear",
    conflict: "measure rear tire size",
    claims: [
      { component: "tire", attribute: "size", value: "235/60R15", position: "all" },
      { component: "tire", attribute: "size", value: "255/60R15", position: "rear" },
    ],
  },
  {
    why: "a size in view that is neither the front's nor the rear's",
    conflict: "measure tire size",
    claims: [
      { component: "tire", attribute: "size", value: "215/70R15", position: "front" },
      { component: "tire", attribute: "size", value: "235/60R15", position: "rear" },
      { component: "tire", attribute: "size", value: "255/60R15", zone: "driver-side" },
    ],
  },
  {
    why: "liters against cubic inches, with another model's engine named in between",
    conflict: "standard engine displacement",
    claims: [
      { component: "engine", attribute: "displacement", value: 2.6, unit: "L", start: 268 },
      { component: "engine", attribute: "displacement", value: 2597, unit: "cc", start: 270 },
      { component: "engine", attribute: "displacement", value: 2, unit: "L", start: 275 },
      { component: "engine", attribute: "displacement", value: 178, unit: "cu in", quote: "178 cubic inches", start: 539 },
      { component: "engine", attribute: "displacement", value: 2.6, unit: "L", start: 842 },
    ],
  },
  {
    why: "a 15-inch rear tire on fourteens that the front tires fit",
    conflict: "standard wheel diameter against tire rim size",
    claims: [
      { component: "wheel", attribute: "diameter", value: 14, unit: "in", position: "all" },
      { component: "tire", attribute: "size", value: "225/70R14", position: "front" },
      { component: "tire", attribute: "size", value: "255/60R15", position: "rear" },
    ],
  },
  {
    why: "one rear tire size that fits its wheel and one that does not",
    conflict: "measure rear tire size",
    claims: [
      { component: "wheel", attribute: "diameter", value: 14, unit: "in", position: "all" },
      { component: "tire", attribute: "size", value: "225/70R14", position: "rear" },
      { component: "tire", attribute: "size", value: "255/60R15", position: "rear" },
    ],
  },
  {
    why: "a round mileage doubted in so many words",
    conflict: "hedge mileage being actual",
    claims: [
      { component: "odometer", attribute: "mileage", value: 68214, unit: "mi" },
      {
        component: "odometer",
        attribute: "mileage",
        value: 68000,
        unit: "mi",
        stance: "hedged",
        quote: "it says sixty eight thousand whether that's right",
      },
    ],
  },
  {
    why: "four wheel disc against a rear drum",
    conflict: "type rear brakes",
    claims: [
      { component: "brakes", attribute: "type", value: "disc", position: "all" },
      { component: "brakes", attribute: "type", value: "drum", position: "rear" },
    ],
  },
  {
    why: "no spare, and then its size",
    conflict: "presence spare",
    claims: [
      { component: "spare", attribute: "presence", value: "absent" },
      { component: "spare", attribute: "size", value: "F70-14" },
    ],
  },
  {
    why: "a straight six with eight cylinders",
    conflict: "count number of cylinders",
    claims: [
      { component: "engine", attribute: "type", value: "straight six" },
      { component: "engine", attribute: "count", value: 8, quote: "eight cylinders" },
    ],
  },
  {
    why: "every panel steel against one of fiberglass",
    conflict: "material passenger rear body panels",
    claims: [
      { component: "body", attribute: "material", value: "steel", position: "all" },
      { component: "body", attribute: "material", part: "fender", value: "fiberglass", position: "passenger-rear" },
    ],
  },
  {
    why: "never been painted, and a fender resprayed",
    conflict: "originality passenger front fender paint originality",
    claims: [
      { component: "paint", attribute: "originality", value: "original", position: "rear", zone: "opening", quote: "Never been painted" },
      {
        component: "paint",
        attribute: "originality",
        part: "front fender",
        value: "replaced",
        position: "passenger-front",
        quote: "front fender was resprayed",
      },
    ],
  },
  {
    why: "not a mark in the glass, and a star",
    conflict: "condition front windshield condition",
    claims: [
      { component: "glass", attribute: "condition", value: "good", quote: "not a mark in the glass" },
      {
        component: "glass",
        attribute: "condition",
        part: "windshield",
        value: "flawed",
        position: "front",
        quote: "tiny star, you can barely see it",
      },
    ],
  },
  {
    why: "no dings on this side, and one found there on the way back",
    conflict: "condition passenger front door condition",
    claims: [
      {
        component: "body",
        attribute: "condition",
        value: "good",
        position: "passenger",
        zone: "passenger-side",
        quote: "No dings on this side",
        circumstance: "dents",
      },
      {
        component: "body",
        attribute: "condition",
        part: "door",
        value: "flawed",
        position: "passenger-front",
        zone: "closing",
        quote: "that ding in the door",
        circumstance: "dents",
      },
    ],
  },
  {
    why: "no rust anywhere, and rust in the floor",
    conflict: "condition driver front floors condition",
    claims: [
      {
        component: "body",
        attribute: "condition",
        value: "good",
        zone: "opening",
        quote: "there's no rust anywhere on this truck",
        circumstance: "rust",
      },
      {
        component: "floors",
        attribute: "condition",
        value: "flawed",
        position: "driver-front",
        zone: "underside",
        quote: "rusted through right there",
        circumstance: "rust",
      },
    ],
  },
  {
    why: "no tears in the seats, and a split bolster",
    conflict: "condition driver front bolster condition",
    claims: [
      { component: "seats", attribute: "condition", value: "good", zone: "cabin", quote: "no tears", circumstance: "tears" },
      {
        component: "seats",
        attribute: "condition",
        part: "bolster",
        value: "flawed",
        position: "driver-front",
        zone: "cabin",
        quote: "driver's bolster is torn",
        circumstance: "tears",
      },
    ],
  },
  {
    why: "never patched, and a patch",
    conflict: "condition cargo floor condition",
    claims: [
      { component: "cargo-floor", attribute: "condition", value: "good", quote: "never been cut, never been patched" },
      { component: "cargo-floor", attribute: "condition", value: "flawed", quote: "the only place they had to let one in" },
    ],
  },
  {
    why: "a tire size given in the greeting is about the car",
    conflict: "measure rear tire size",
    claims: [
      { component: "tire", attribute: "size", value: "33x12.50R15", zone: "opening" },
      { component: "tire", attribute: "size", value: "35x12.50R15", position: "rear" },
    ],
  },
  {
    why: "clean title and a rebuilt one",
    conflict: "type title",
    claims: [
      { component: "title", attribute: "type", value: "clean" },
      { component: "title", attribute: "type", value: "rebuilt" },
    ],
  },
  {
    why: "engine flat and doubtful",
    conflict: "hedge engine being the original one",
    claims: [
      { component: "engine", attribute: "originality", value: "original" },
      {
        component: "engine",
        attribute: "originality",
        value: "original",
        stance: "hedged",
        quote: "I believe it's the one it set out with",
      },
    ],
  },
];

describe("stays quiet", () => {
  test.for(quiet)("$why", ({ claims }) => {
    expect(named(comparedSketches(claims).conflicts)).toEqual([]);
  });
});

describe("speaks up", () => {
  test.for(loud)("$why", ({ claims, conflict }) => {
    expect(named(comparedSketches(claims).conflicts)).toEqual([conflict]);
  });
});
