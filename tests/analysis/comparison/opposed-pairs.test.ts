import { describe, expect, test } from "vitest";
import { ownerOptions } from "../../../electron/analysis/comparison/facets/count-facets.ts";
import type { ClaimSketch } from "../../../electron/analysis/comparison/standards/rule.ts";
import { faultlessnessOf, impliedDenials } from "../../../electron/analysis/comparison/values/conditions.ts";
import { comparedSketches, named } from "./support/claims.ts";

/**
 * Pairs of claims that look alike: one that a reviewer must be shown and one, as near to it as speech allows, that he must not be.
 * Facts of the trade are common practice unless a source is named.
 */
interface Pair {
  readonly about: string;
  readonly shown: readonly ClaimSketch[];
  readonly as: string;
  readonly quiet: readonly ClaimSketch[];
}

const pairs: readonly Pair[] = [
  {
    about: "gears in an axle and money in a car",
    shown: [
      { component: "final-drive", attribute: "ratio", value: 4.1, quote: "it's four ten gears in it" },
      { component: "final-drive", attribute: "ratio", value: 3.73, zone: "documents" },
    ],
    as: "measure axle ratio",
    quiet: [
      { component: "price", attribute: "price", value: 24000, unit: "USD", quote: "over twenty four in it" },
      { component: "price", attribute: "price", value: 19500, unit: "USD" },
    ],
  },
  {
    about: "torque in two units",
    // 616 lbf·ft × 1.35582 = 835 N·m; 516 lbf·ft = 700 N·m (NIST SP 811, appendix B.8).
    shown: [
      { component: "engine", attribute: "torque", value: 700, unit: "N·m" },
      { component: "engine", attribute: "torque", value: 616, unit: "lb-ft", circumstance: "at the crank" },
    ],
    as: "standard engine torque",
    quiet: [
      { component: "engine", attribute: "torque", value: 700, unit: "N·m" },
      { component: "engine", attribute: "torque", value: 516, unit: "lb-ft", circumstance: "at the crank" },
    ],
  },
  {
    about: "power in two units in one breath",
    // 390 kW = 523 hp = 530 PS (same source; PS by DIN 66036).
    shown: [
      { component: "engine", attribute: "power", value: 150, unit: "kW", start: 100 },
      { component: "engine", attribute: "power", value: 180, unit: "hp", start: 103 },
    ],
    as: "standard engine power",
    quiet: [
      { component: "engine", attribute: "power", value: 390, unit: "kW", start: 100 },
      { component: "engine", attribute: "power", value: 523, unit: "hp", start: 103 },
      { component: "engine", attribute: "power", value: 530, unit: "PS", start: 105 },
    ],
  },
  {
    about: "gallons of one speaker and gallons of two countries",
    // An imperial gallon is 4.54609 L, a US one 3.785 L: 22 of the first are 100 L, 26.4 of the second.
    shown: [
      { component: "fuel-tank", attribute: "size", value: 22, unit: "gal" },
      { component: "fuel-tank", attribute: "size", value: 26, unit: "gal" },
    ],
    as: "measure fuel tank size",
    quiet: [
      { component: "fuel-tank", attribute: "size", value: 22, unit: "gal" },
      { component: "fuel-tank", attribute: "size", value: 100, unit: "L" },
    ],
  },
  {
    about: "leaves of one spring, and lugs of one wheel and of all",
    shown: [
      { component: "suspension", attribute: "count", part: "leaf spring", value: 8, quote: "eight leaf a side" },
      { component: "suspension", attribute: "count", part: "leaf spring", value: 10, position: "rear", quote: "ten leaf packs" },
    ],
    as: "count number of rear leaves",
    quiet: [
      { component: "wheel", attribute: "count", part: "lug", value: 8, quote: "eight lug wheels" },
      { component: "wheel", attribute: "count", part: "lug", value: 32, quote: "thirty two lugs total" },
    ],
  },
  {
    about: "owners, and one of them",
    shown: [
      { component: "vehicle", attribute: "count", value: 2, quote: "two owner truck" },
      { component: "vehicle", attribute: "count", value: 3, quote: "that's three that had it before me" },
    ],
    as: "count number of owners",
    quiet: [
      { component: "vehicle", attribute: "count", part: "owner", value: 2, quote: "two owners" },
      { component: "vehicle", attribute: "count", part: "owner", value: 1, quote: "the first owner had it undersealed" },
    ],
  },
  {
    about: "solid metal and a hole, and solid metal and a scab of rust",
    shown: [
      { component: "floors", attribute: "condition", value: "good", circumstance: "praise", quote: "floors are solid" },
      { component: "floors", attribute: "condition", value: "flawed", quote: "a hole you could put a quarter through" },
    ],
    as: "condition floors condition",
    quiet: [
      { component: "floors", attribute: "condition", value: "good", circumstance: "praise", quote: "floors are solid" },
      { component: "floors", attribute: "condition", value: "flawed", circumstance: "rust", quote: "a bit of surface rust" },
    ],
  },
  {
    about: "a taut headliner that hangs, and one with a stain",
    shown: [
      { component: "headliner", attribute: "condition", value: "good", circumstance: "praise", quote: "headliner's up tight" },
      { component: "headliner", attribute: "condition", value: "flawed", quote: "the headliner come loose over the second seat" },
    ],
    as: "condition headliner condition",
    quiet: [
      { component: "headliner", attribute: "condition", value: "good", circumstance: "praise", quote: "headliner's up tight" },
      { component: "headliner", attribute: "condition", value: "flawed", circumstance: "stains", quote: "one little water stain" },
    ],
  },
  {
    about: "air conditioning that works and does not, and that works and rattles",
    shown: [
      { component: "air-conditioning", attribute: "condition", value: "good", quote: "the air conditioning works beautifully" },
      { component: "air-conditioning", attribute: "condition", value: "flawed", quote: "that's not very cold" },
    ],
    as: "condition air conditioning condition",
    quiet: [
      { component: "air-conditioning", attribute: "condition", value: "good", quote: "the air conditioning works beautifully" },
      { component: "air-conditioning", attribute: "condition", value: "flawed", circumstance: "play", quote: "the fan rattles a bit" },
    ],
  },
  {
    about: "a clear window gone milky, and one with a scratch",
    shown: [
      { component: "glass", attribute: "condition", position: "rear", value: "good", quote: "you could read a paper through that" },
      { component: "glass", attribute: "condition", position: "rear", value: "flawed", quote: "it's gone kind of milky in the corner" },
    ],
    as: "condition rear glass condition",
    quiet: [
      { component: "glass", attribute: "condition", position: "rear", value: "good", quote: "you could read a paper through that" },
      { component: "glass", attribute: "condition", position: "rear", value: "flawed", circumstance: "marks", quote: "a scratch" },
    ],
  },
  {
    about: "rust denied and filler found, and a dent denied and filler found",
    shown: [
      {
        component: "body",
        part: "cab corner",
        position: "driver",
        attribute: "condition",
        value: "good",
        circumstance: "rust",
        quote: "no bubbles",
      },
      {
        component: "body",
        part: "cab corner",
        position: "driver",
        attribute: "condition",
        value: "flawed",
        circumstance: "repairs",
        quote: "that's been filled",
      },
    ],
    as: "condition driver cab corner condition",
    quiet: [
      {
        component: "body",
        part: "cab corner",
        position: "driver",
        attribute: "condition",
        value: "good",
        circumstance: "dents",
        quote: "no dings",
      },
      {
        component: "body",
        part: "cab corner",
        position: "driver",
        attribute: "condition",
        value: "flawed",
        circumstance: "repairs",
        quote: "that's been filled",
      },
    ],
  },
  {
    about: "all floors original and one replaced, and the paint original and one panel replaced",
    shown: [
      { component: "floors", attribute: "originality", value: "original", quote: "them floors is the ones she was born with" },
      { component: "floors", attribute: "originality", value: "replaced", position: "driver", quote: "that's a new pan" },
    ],
    as: "originality driver floors originality",
    quiet: [
      { component: "paint", attribute: "originality", value: "original", quote: "the paint is original" },
      { component: "paint", attribute: "originality", value: "replaced", part: "hood", quote: "the hood's been shot again" },
    ],
  },
  {
    about: "air springs and coils, and helper bags beside leaves",
    shown: [
      { component: "suspension", attribute: "type", value: "self-levelling air", position: "rear" },
      { component: "suspension", attribute: "type", value: "coil", position: "rear" },
    ],
    as: "type rear suspension springs",
    quiet: [
      { component: "suspension", attribute: "type", value: "airbag", position: "rear" },
      { component: "suspension", attribute: "type", value: "leaf", position: "rear" },
    ],
  },
  {
    about: "two woods, and a wood by a wider name",
    shown: [
      { component: "dash", attribute: "material", value: "walnut" },
      { component: "dash", attribute: "material", value: "ash" },
    ],
    as: "material dash material",
    quiet: [
      { component: "dash", attribute: "material", value: "burr walnut" },
      { component: "dash", attribute: "material", value: "wood" },
      { component: "dash", attribute: "material", value: "walnut" },
    ],
  },
  {
    about: "the model year doubted, and the price doubted beside it in a farewell",
    shown: [
      { component: "vehicle", attribute: "year", value: 1974, quote: "a 1974 station wagon" },
      { component: "vehicle", attribute: "year", value: 1974, stance: "hedged", zone: "documents", quote: "I believe it's a seventy four" },
    ],
    as: "hedge model year",
    quiet: [
      { component: "vehicle", attribute: "year", value: 1974, quote: "a 1974 station wagon" },
      { component: "vehicle", attribute: "year", value: 1974, stance: "hedged", zone: "closing", quote: "so it's a 1974" },
    ],
  },
  {
    about: "a reading doubted as it is read, and a reading rounded",
    shown: [
      { component: "odometer", attribute: "mileage", value: 41200, unit: "mi", start: 10 },
      { component: "odometer", attribute: "mileage", value: 41266, unit: "mi", start: 400, quote: "so it says 41,266" },
      {
        component: "odometer",
        attribute: "mileage",
        value: 41200,
        unit: "mi",
        start: 404,
        stance: "hedged",
        quote: "I think that's right",
      },
    ],
    as: "hedge mileage being actual",
    quiet: [
      { component: "odometer", attribute: "mileage", value: 41266, unit: "mi", start: 400, quote: "so it says 41,266" },
      {
        component: "odometer",
        attribute: "mileage",
        value: 41000,
        unit: "mi",
        start: 800,
        stance: "hedged",
        quote: "call it forty one thousand",
      },
    ],
  },
  {
    about: "the belt at two mileages, and work at two mileages",
    shown: [
      { component: "engine", attribute: "mileage", part: "cambelt", circumstance: "when the work was done", value: 98000, unit: "mi" },
      { component: "engine", attribute: "mileage", part: "timing belt", circumstance: "when the work was done", value: 89000, unit: "mi" },
    ],
    as: "measure mileage of engine work",
    quiet: [
      { component: "engine", attribute: "mileage", part: "work", circumstance: "when the work was done", value: 98000, unit: "mi" },
      { component: "engine", attribute: "mileage", part: "work", circumstance: "when the work was done", value: 89000, unit: "mi" },
    ],
  },
  {
    about: "an older reading above today's, and one below it",
    shown: [
      { component: "odometer", attribute: "mileage", value: 94200, unit: "mi", quote: "94,200 miles" },
      { component: "odometer", attribute: "mileage", value: 101400, unit: "mi", zone: "documents", quote: "MOT at 101,400 miles" },
    ],
    as: "standard mileage against an earlier reading",
    quiet: [
      { component: "odometer", attribute: "mileage", value: 94200, unit: "mi", quote: "94,200 miles" },
      { component: "odometer", attribute: "mileage", value: 61000, unit: "mi", zone: "documents", quote: "serviced at 61,000 miles" },
      {
        component: "engine",
        attribute: "mileage",
        part: "timing belt",
        circumstance: "when the work was done",
        value: 120000,
        unit: "mi",
        quote: "the next one's at a hundred and twenty thousand by the book",
      },
    ],
  },
  {
    about: "two prices, and a price beside a year, a stock number and an earlier one",
    shown: [
      { component: "price", attribute: "price", value: 46900, unit: "USD", quote: "price on her is forty six nine" },
      { component: "price", attribute: "price", value: 49600, unit: "USD", zone: "closing", quote: "he'll take forty nine six" },
    ],
    as: "measure asking price",
    quiet: [
      { component: "price", attribute: "price", value: 46900, unit: "USD", quote: "price on her is forty six nine" },
      { component: "price", attribute: "price", value: 1970, unit: "USD", zone: "closing", quote: "that's her folks 1970 vandal" },
      { component: "price", attribute: "price", value: 4417, unit: "USD", zone: "closing", quote: "stock 4417" },
      { component: "price", attribute: "price", value: 52000, unit: "USD", quote: "he had her at fifty two thousand" },
      { component: "price", attribute: "price", value: 180800, unit: "USD", quote: "the kilometre setting 180 thousand eight hundred" },
    ],
  },
  {
    about: "two mileages, and a mileage beside hours and the dial's end",
    shown: [
      { component: "odometer", attribute: "mileage", value: 68412, unit: "mi", quote: "sixty eight thousand four hundred twelve miles" },
      {
        component: "odometer",
        attribute: "mileage",
        value: 86412,
        unit: "mi",
        zone: "closing",
        quote: "eighty six four twelve on the clock",
      },
    ],
    as: "measure mileage",
    quiet: [
      { component: "odometer", attribute: "mileage", value: 68412, unit: "mi", quote: "sixty eight thousand four hundred twelve miles" },
      { component: "odometer", attribute: "mileage", value: 9040, unit: "mi", zone: "cabin", quote: "hours is nine thousand and forty" },
      { component: "odometer", attribute: "mileage", value: 120000, unit: "mi", zone: "cabin", quote: "speedo goes to one twenty" },
    ],
  },
  {
    about: "one tire's tread on one corner, and on two",
    shown: [
      {
        component: "tire",
        attribute: "depth",
        value: 9,
        unit: "32nds",
        position: "front",
        zone: "driver-side",
        quote: "this front one's nine",
      },
      {
        component: "tire",
        attribute: "depth",
        value: 4,
        unit: "32nds",
        position: "driver-front",
        zone: "documents",
        quote: "left front four",
      },
    ],
    as: "measure driver front tire tread depth",
    quiet: [
      {
        component: "tire",
        attribute: "depth",
        value: 9,
        unit: "32nds",
        position: "front",
        zone: "driver-side",
        quote: "this front one's nine",
      },
      {
        component: "tire",
        attribute: "depth",
        value: 4,
        unit: "32nds",
        position: "front",
        zone: "passenger-side",
        quote: "this front one's four",
      },
    ],
  },
  {
    about: "a carburetor on the engine, and another in a box",
    shown: [
      { component: "fuel-system", attribute: "flow", value: 780, unit: "cfm" },
      { component: "fuel-system", attribute: "flow", value: 750, unit: "cfm", zone: "engine-bay" },
    ],
    as: "measure carburetor flow",
    quiet: [
      {
        component: "fuel-system",
        attribute: "flow",
        value: 780,
        unit: "cfm",
        zone: "cargo",
        quote: "a box in here with the seven eighty that come on it",
      },
      { component: "fuel-system", attribute: "flow", value: 750, unit: "cfm", zone: "engine-bay" },
    ],
  },
  {
    about: "charging at home, and at home and on the road",
    // Up to 22 kW is what an on-board charger takes from three phases of 32 A at 230 V (IEC 61851-1, mode 3).
    shown: [
      { component: "electrical", attribute: "power", part: "charger", value: 7.2, unit: "kW" },
      { component: "electrical", attribute: "power", part: "charger", value: 11, unit: "kW" },
    ],
    as: "measure charging power",
    quiet: [
      { component: "electrical", attribute: "power", part: "charger", value: 7.2, unit: "kW" },
      { component: "electrical", attribute: "power", part: "charger", value: 50, unit: "kW" },
    ],
  },
  {
    about: "the paint's color, and the color of what is in hand",
    shown: [
      { component: "paint", attribute: "color", value: "green", zone: "front", quote: "it's racing green" },
      { component: "paint", attribute: "color", value: "blue", zone: "documents", quote: "color blue" },
    ],
    as: "color paint color",
    quiet: [
      { component: "paint", attribute: "color", value: "turquoise", quote: "it's turquoise" },
      { component: "paint", attribute: "color", value: "white", zone: "roof", quote: "it's white" },
      { component: "paint", attribute: "color", value: "black", zone: "front", quote: "and it's black" },
      { component: "paint", attribute: "color", value: "white", zone: "rear", quote: "the letters are painted in white" },
    ],
  },
  {
    about: "a liner there and not there, and a denial taken for one",
    shown: [
      { component: "cargo-floor", attribute: "presence", part: "bed liner", value: "absent", quote: "never had a liner" },
      { component: "cargo-floor", attribute: "presence", part: "bed liner", value: "present", zone: "documents", quote: "sprayed the box" },
    ],
    as: "presence bed liner",
    quiet: [
      { component: "cargo-floor", attribute: "presence", part: "bed liner", value: "present", quote: "the box okay so no liner" },
      { component: "cargo-floor", attribute: "presence", part: "bed liner", value: "absent", quote: "never had a liner" },
    ],
  },
  {
    about: "seats of two materials, and paint that hides",
    shown: [
      { component: "seats", attribute: "material", value: "vinyl", zone: "cabin", quote: "the seats are vinyl" },
      { component: "seats", attribute: "material", value: "leather", quote: "red hide seats" },
    ],
    as: "material seat material",
    quiet: [
      { component: "seats", attribute: "material", value: "vinyl", zone: "cabin", quote: "the seats are vinyl" },
      { component: "seats", attribute: "material", value: "leather", zone: "cargo", quote: "cause a liner hides rust" },
    ],
  },
  {
    about: "spokes all round and in one wheel",
    shown: [
      { component: "wheel", attribute: "count", part: "spoke", value: 60, position: "all" },
      { component: "wheel", attribute: "count", part: "spoke", value: 72, position: "driver-rear" },
    ],
    as: "count number of driver rear spokes",
    quiet: [
      { component: "belts", attribute: "count", part: "belt", value: 5, position: "all" },
      { component: "belts", attribute: "count", part: "belt", value: 2, position: "front" },
    ],
  },
  {
    about: "two beds, and two lengths of a body",
    shown: [
      { component: "body", attribute: "size", value: 11, unit: "ft", quote: "an eleven foot service body" },
      { component: "body", attribute: "size", value: 9, unit: "ft", quote: "nine foot from the bulkhead to the bumper" },
    ],
    as: "measure bed size",
    quiet: [
      { component: "body", attribute: "size", part: "gap", value: 3.5, unit: "mm", position: "driver-front" },
      { component: "body", attribute: "size", part: "gap", value: 5, unit: "mm", position: "driver" },
    ],
  },
  {
    about: "two displacements, and that of one just like it",
    shown: [
      { component: "engine", attribute: "displacement", value: 400, unit: "cu in", quote: "it's a four hundred cubic inch car" },
      { component: "engine", attribute: "displacement", value: 455, unit: "cu in", quote: "the four fifty five cubic inches" },
    ],
    as: "measure engine displacement",
    quiet: [
      { component: "engine", attribute: "displacement", value: 400, unit: "cu in", quote: "it's a four hundred cubic inch car" },
      { component: "engine", attribute: "displacement", value: 455, unit: "cu in", quote: "just like it with a four fifty five in it" },
      { component: "engine", attribute: "displacement", value: 8, unit: "L", quote: "the white one's a gasser eight liter" },
    ],
  },
  {
    about: "one former owner and two, and two former owners and three in all",
    shown: [
      { component: "vehicle", attribute: "count", part: "owner", value: 1, quote: "one former keeper" },
      { component: "vehicle", attribute: "count", part: "owner", value: 2, zone: "documents", quote: "V5 says two former keepers" },
    ],
    as: "count number of owners",
    quiet: [
      { component: "vehicle", attribute: "count", part: "owner", value: 2, quote: "two previous owners" },
      { component: "vehicle", attribute: "count", part: "owner", value: 3, zone: "documents", quote: "three owners" },
    ],
  },
  {
    about: "a stainless exhaust of mild steel, and one of steel",
    shown: [
      { component: "exhaust", attribute: "material", value: "stainless" },
      { component: "exhaust", attribute: "material", value: "mild steel" },
    ],
    as: "material exhaust material",
    quiet: [
      { component: "exhaust", attribute: "material", value: "stainless" },
      { component: "exhaust", attribute: "material", value: "steel" },
    ],
  },
  {
    about: "a bed by two names, and a bed and its payload",
    shown: [
      { component: "body", attribute: "size", part: "truck body", value: 11, unit: "ft" },
      { component: "cargo-floor", attribute: "size", part: "bed", value: 108, unit: "in" },
    ],
    as: "standard bed size",
    quiet: [
      { component: "body", attribute: "size", part: "truck body", value: 9, unit: "ft" },
      { component: "cargo-floor", attribute: "size", part: "bed", value: 108, unit: "in" },
      { component: "cargo-floor", attribute: "width", part: "bed", value: 49, unit: "in" },
    ],
  },
  {
    about: "four-wheel drive denied and driven, and denied and not driven",
    shown: [
      { component: "transmission", attribute: "presence", part: "four-wheel drive", value: "absent" },
      { component: "vehicle", attribute: "type", part: "driven wheels", value: "four-wheel drive" },
    ],
    as: "type driven wheels",
    quiet: [
      { component: "transmission", attribute: "presence", part: "four-wheel drive", value: "absent" },
      { component: "vehicle", attribute: "type", part: "driven wheels", value: "rear-wheel drive" },
    ],
  },
  {
    about: "a tow bar denied and described, and one denied and a bumper described",
    shown: [
      { component: "body", attribute: "presence", part: "tow bar", position: "rear", value: "absent" },
      { component: "bumper", attribute: "condition", part: "hitch", value: "flawed", quote: "the ball's a bit worn" },
    ],
    as: "presence hitch",
    quiet: [
      { component: "body", attribute: "presence", part: "tow bar", position: "rear", value: "absent" },
      { component: "bumper", attribute: "condition", position: "rear", value: "flawed", quote: "a scuff" },
    ],
  },
  {
    about: "two axle ratios in three places, and one worked out and quoted",
    // 43 teeth over 11 make 3.909.
    shown: [
      { component: "final-drive", attribute: "ratio", value: 3.909 },
      { component: "final-drive", attribute: "ratio", value: 3.73, zone: "documents" },
    ],
    as: "measure axle ratio",
    quiet: [
      { component: "final-drive", attribute: "ratio", value: 3.909 },
      { component: "final-drive", attribute: "ratio", value: 3.91 },
      { component: "final-drive", attribute: "ratio", value: 3.9 },
    ],
  },
  {
    about: "two prices, and a price with its tax",
    shown: [
      { component: "price", attribute: "price", value: 7995, unit: "GBP", quote: "seven nine nine five" },
      { component: "price", attribute: "price", value: 9594, unit: "GBP", quote: "nine five nine four" },
    ],
    as: "measure asking price",
    quiet: [
      { component: "price", attribute: "price", value: 7995, unit: "GBP", quote: "seven nine nine five" },
      { component: "price", attribute: "price", value: 9594, unit: "GBP", quote: "so nine five nine four on the road" },
    ],
  },
  {
    about: "two gross weights, and gross weight and payload",
    shown: [
      { component: "vehicle", attribute: "size", part: "weight rating", value: 8600, unit: "lb", quote: "gross is eighty six hundred" },
      { component: "vehicle", attribute: "size", part: "weight rating", value: 9200, unit: "lb", quote: "gvwr ninety two hundred" },
    ],
    as: "measure gross weight size",
    quiet: [
      { component: "vehicle", attribute: "size", part: "weight rating", value: 8600, unit: "lb", quote: "gross is eighty six hundred" },
      { component: "vehicle", attribute: "size", part: "weight rating", value: 3000, unit: "lb", quote: "payload's three thousand" },
    ],
  },
];

describe.for([...pairs])("$about", ({ shown, as, quiet }) => {
  test("is shown", () => {
    expect(named(comparedSketches(shown).conflicts)).toEqual([as]);
  });

  test("stays quiet", () => {
    expect(named(comparedSketches(quiet).conflicts)).toEqual([]);
  });
});

describe("owners counted with and without the last", () => {
  const agree = (first: ReadonlySet<string>, second: ReadonlySet<string>) => [...first].some((option) => second.has(option));
  test.for([
    { first: "two owners", one: 2, second: "two owners", other: 2, same: true },
    { first: "two owners", one: 2, second: "three owners", other: 3, same: false },
    { first: "one former", one: 1, second: "two former", other: 2, same: false },
    { first: "one former", one: 1, second: "two owners", other: 2, same: true },
    { first: "two former", one: 2, second: "two owners", other: 2, same: true },
    { first: "two former", one: 2, second: "one owner", other: 1, same: false },
  ])("$first and $second", ({ first, one, second, other, same }) => {
    expect(agree(ownerOptions({ quote: first, circumstance: null }, one), ownerOptions({ quote: second, circumstance: null }, other))).toBe(
      same,
    );
  });
});

describe("praise that rules out its opposite", () => {
  test.for([...impliedDenials])("$example", ({ example, kinds }) => {
    const said = faultlessnessOf({ quote: example, circumstance: "praise" });
    expect(said.strength).toBe("implied");
    expect(said.strength === "implied" ? [...said.kinds] : []).toEqual(expect.arrayContaining([...kinds]));
  });
});
