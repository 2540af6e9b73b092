import { describe, expect, test } from "vitest";
import type { ClaimSketch } from "../../../electron/analysis/comparison/standards/rule.ts";
import { columnsMeant, columnsNamed, stockSheetColumns } from "../../../electron/analysis/comparison/stock-sheet/columns.ts";
import { fieldNamed, sheetFieldRows, sheetFields } from "../../../shared-types/index.ts";
import { claimsFrom, compared } from "./support/claims.ts";

interface Row {
  readonly field: string;
  readonly value: string;
  readonly claims: readonly ClaimSketch[];
}

const mileage = (value: number): ClaimSketch => ({ component: "odometer", attribute: "mileage", value, unit: "mi" });
const tire = (value: string, position: "front" | "rear" | "all"): ClaimSketch => ({
  component: "tire",
  attribute: "size",
  value,
  position,
});

const denied: readonly Row[] = [
  { field: "Odometer (mi)", value: "71,308", claims: [mileage(61300)] },
  { field: "Odometer", value: "99000", claims: [{ ...mileage(61000), quote: "showing sixty one thousand miles" }] },
  { field: "price", value: "1990", claims: [{ component: "price", attribute: "price", value: 2990, unit: "USD", quote: "asking 2,990" }] },
  { field: "miles", value: "84312", claims: [mileage(48312)] },
  { field: "mileage", value: "135,000 km", claims: [mileage(135000)] },
  { field: "engine", value: "V8 350ci", claims: [{ component: "engine", attribute: "displacement", value: 305, unit: "cu in" }] },
  { field: "Engine Size", value: "5.7L", claims: [{ component: "engine", attribute: "displacement", value: 454, unit: "cu in" }] },
  { field: "Transmission", value: "4-speed manual", claims: [{ component: "transmission", attribute: "type", value: "automatic" }] },
  {
    field: "transmission",
    value: "5-speed manual",
    claims: [{ component: "transmission", attribute: "count", part: "gear", value: 4, quote: "four speed" }],
  },
  { field: "Axle ratio", value: "3.73:1", claims: [{ component: "final-drive", attribute: "ratio", value: 4.11 }] },
  { field: "Exterior Colour", value: "Midnight Blue", claims: [{ component: "paint", attribute: "color", value: "red" }] },
  { field: "VIN", value: "1M8GDM9AXKP042788", claims: [{ component: "vin", attribute: "type", value: "1M8GDM9AXKP042798" }] },
  { field: "Year", value: "1971", claims: [{ component: "vehicle", attribute: "year", value: 1972 }] },
  { field: "Tyres", value: "235/60R15", claims: [tire("255/60R15", "rear")] },
  { field: "rear tires", value: "235/60R15", claims: [tire("255/60R15", "rear")] },
  { field: "Price", value: "$38,900", claims: [{ component: "price", attribute: "price", value: 36900, unit: "USD" }] },
  { field: "asking", value: "38900", claims: [{ component: "price", attribute: "price", value: 36900, unit: "GBP" }] },
  { field: "Owners", value: "3", claims: [{ component: "vehicle", attribute: "count", part: "owner", value: 2 }] },
  { field: "interior", value: "Black vinyl", claims: [{ component: "seats", attribute: "material", value: "leather" }] },
  { field: "Title status", value: "Rebuilt", claims: [{ component: "title", attribute: "type", value: "clean" }] },
  {
    field: "wheels",
    value: "17 inch alloy",
    claims: [{ component: "wheel", attribute: "diameter", value: 16, unit: "in", position: "all" }],
  },
  { field: "drivetrain", value: "4WD", claims: [{ component: "transmission", attribute: "type", value: "two wheel drive" }] },
];

const agreed: readonly Row[] = [
  { field: "Odometer", value: "58,412", claims: [mileage(58400), mileage(58412)] },
  { field: "km", value: "135,688", claims: [mileage(84312)] },
  {
    field: "engine",
    value: "5.7L V8",
    claims: [
      { component: "engine", attribute: "displacement", value: 350, unit: "cu in" },
      { component: "engine", attribute: "type", value: "v8" },
    ],
  },
  {
    field: "transmission",
    value: "4-speed automatic",
    claims: [
      { component: "transmission", attribute: "type", value: "automatic" },
      { component: "transmission", attribute: "count", value: 4, quote: "four speed" },
    ],
  },
  {
    field: "Axle ratio",
    value: "4.11",
    claims: [
      { component: "final-drive", attribute: "ratio", value: 4.11 },
      { component: "final-drive", attribute: "ratio", value: 3.5, time: "former" },
    ],
  },
  {
    field: "colour",
    value: "Grey",
    claims: [
      { component: "paint", attribute: "color", value: "graphite" },
      { component: "paint", attribute: "color", value: "black", part: "engine bay" },
    ],
  },
  { field: "VIN", value: "1M8GDM9AXKP042788", claims: [{ component: "vin", attribute: "type", value: "042788" }] },
  { field: "front tires", value: "215/70R15", claims: [tire("215/70R15", "front"), tire("255/60R15", "rear")] },
  { field: "tires", value: "215/70R15 front, 255/60R15 rear", claims: [tire("215/70R15", "front"), tire("255/60R15", "rear")] },
  {
    field: "price",
    value: "38900",
    claims: [
      { component: "price", attribute: "price", value: 38900, unit: "USD" },
      { component: "price", attribute: "price", value: 3681, unit: "USD", circumstance: "new" },
    ],
  },
  { field: "keys", value: "2", claims: [{ component: "vehicle", attribute: "count", part: "owner", value: 3 }] },
  {
    field: "interior",
    value: "Oxblood leather",
    claims: [
      { component: "seats", attribute: "color", value: "red" },
      { component: "seats", attribute: "material", value: "leather" },
    ],
  },
  { field: "salesman", value: "71,308", claims: [mileage(61300)] },
  { field: "mileage", value: "", claims: [mileage(61300)] },
  { field: "mileage", value: "unknown", claims: [mileage(61300)] },
];

describe("denies", () => {
  test.for(denied)("$field: $value", ({ field, value, claims }) => {
    const { denials } = compared(claimsFrom(claims), { stockSheet: { [field]: value } });
    expect(denials).toHaveLength(1);
    expect(denials[0]).toMatchObject({ field, sheetValue: value, claims: ["c1"] });
    // A bare figure is written as the spoken one is: 84,312 beside 48,312.
    expect(denials[0]!.why.replaceAll(",", "")).toContain(value.replaceAll(",", ""));
  });
});

describe("says nothing of what agrees or is not understood", () => {
  test.for(agreed)("$field: $value", ({ field, value, claims }) => {
    expect(compared(claimsFrom(claims), { stockSheet: { [field]: value } }).denials).toEqual([]);
  });
});

test("every column is found by each of its names, however written", () => {
  for (const column of stockSheetColumns) {
    for (const name of column.names) {
      expect(fieldNamed(name)).toBeDefined();
      expect(columnsNamed(`  ${name.toUpperCase().replaceAll(" ", "_")} (x) `)).toContain(column);
    }
  }
});

test("a name stands for one field alone", () => {
  const names = sheetFields.flatMap((field) => sheetFieldRows[field].names as readonly string[]);
  expect(names.filter((name, at) => names.indexOf(name) !== at)).toEqual([]);
});

test("a unit in brackets counts where the trade writes it", () => {
  expect([fieldNamed("Odometer (km)"), fieldNamed("Odometer (mi)"), fieldNamed("Odometer (read)")]).toEqual([
    "kilometers",
    "mileage",
    "mileage",
  ]);
  expect(compared(claimsFrom([mileage(84312)]), { stockSheet: { "odometer (km)": "135688" } }).denials).toEqual([]);
});

describe("settled columns", () => {
  const claims = claimsFrom([mileage(61300)]);
  test.for([
    { why: "a column that a person chose is held against claims", meaning: "mileage", denials: 1 },
    { why: "one that was left out is not, whatever its name", meaning: null, denials: 0 },
  ] as const)("$why", ({ meaning, denials }) => {
    const field = meaning === null ? "mileage" : "tacho";
    const outcome = compared(claims, { stockSheet: { [field]: "71,308" }, sheetMeanings: { [field]: meaning } });
    expect(outcome.denials).toHaveLength(denials);
    expect(outcome.silences).toEqual([]);
  });
  test("without settled meanings the name alone tells", () => {
    expect(columnsMeant("tacho", null)).toEqual([]);
    expect(columnsMeant("mileage", null)).toHaveLength(1);
    expect(columnsMeant("mileage", {})).toEqual([]);
  });
});

const key = (value: number): ClaimSketch => ({ component: "vehicle", attribute: "count", part: "key", value });
const engineSize = (value: number, unit: "cu in" | "L" | "cc"): ClaimSketch => ({
  component: "engine",
  attribute: "displacement",
  value,
  unit,
});

const supported: readonly (Row & { readonly says: RegExp })[] = [
  {
    field: "mileage",
    value: "61,240",
    claims: [mileage(61240)],
    says: /spoken as 61,240 mi at 0:00, and the stock sheet says 61,240 mi\.$/,
  },
  { field: "mileage", value: "61,240", claims: [mileage(61000)], says: /61,240 mi: the same as far as the spoken figure goes\.$/ },
  { field: "km", value: "135,687", claims: [mileage(84312)], says: /135,687 km, which is about 84,312 mi\.$/ },
  {
    field: "engine",
    value: "5.7L V8",
    claims: [engineSize(350, "cu in")],
    says: /350 cu in .* 5\.7L V8, which is about 348 cu in: the same as far/,
  },
  { field: "keys", value: "2", claims: [key(2)], says: /number of keys is spoken as 2 / },
  { field: "Axle ratio", value: "4.11", claims: [{ component: "final-drive", attribute: "ratio", value: 4.11 }], says: /4\.11\.$/ },
  {
    field: "colour",
    value: "Grey",
    claims: [{ component: "paint", attribute: "color", value: "graphite" }],
    says: /Grey, which is taken for the same\.$/,
  },
  {
    field: "VIN",
    value: "1M8GDM9AXKP042788",
    claims: [{ component: "vin", attribute: "type", value: "042788" }],
    says: /, which ends so\.$/,
  },
  { field: "rear tires", value: "255/60R15", claims: [tire("255/60R15", "rear"), tire("215/70R15", "front")], says: /rear tire size/ },
  { field: "keys", value: "2", claims: [{ ...key(2), stance: "hedged" }], says: /It is said with a doubt\.$/ },
  { field: "keys", value: "2", claims: [key(2), key(2)], says: /It is said 2 times\.$/ },
];

const unsupported: readonly Row[] = [
  { field: "mileage", value: "61,240", claims: [mileage(71000)] },
  { field: "mileage", value: "61,240", claims: [{ ...mileage(61240), time: "former" }] },
  { field: "keys", value: "2", claims: [{ component: "vehicle", attribute: "count", part: "owner", value: 2 }] },
  { field: "front tires", value: "215/70R15", claims: [tire("215/70R15", "rear")] },
  { field: "price", value: "3681", claims: [{ component: "price", attribute: "price", value: 3681, unit: "USD", circumstance: "new" }] },
  { field: "VIN", value: "1M8GDM9AXKP042788", claims: [{ component: "vin", attribute: "type", value: "88" }] },
  { field: "salesman", value: "61,240", claims: [mileage(61240)] },
  { field: "mileage", value: "", claims: [mileage(61240)] },
];

describe("bears out", () => {
  test.for(supported)("$field: $value $says", ({ field, value, claims, says }) => {
    const { supports, denials } = compared(claimsFrom(claims), { stockSheet: { [field]: value } });
    expect(denials).toEqual([]);
    expect(supports).toHaveLength(1);
    expect(supports[0]).toMatchObject({ id: "s1", field, sheetValue: value, claims: expect.arrayContaining(["c1"]) });
    expect(supports[0]!.why).toMatch(says);
  });
  test("names every claim that it bears out, and none of another place", () => {
    const claims = claimsFrom([tire("255/60R15", "rear"), tire("215/70R15", "front"), tire("255/60R15", "rear")]);
    const { supports } = compared(claims, { stockSheet: { "rear tires": "255/60R15" } });
    expect(supports.map((support) => support.claims)).toEqual([["c1", "c3"]]);
  });
});

describe("bears nothing out that is unlike, former, of another thing or not understood", () => {
  test.for(unsupported)("$field: $value", ({ field, value, claims }) => {
    expect(compared(claimsFrom(claims), { stockSheet: { [field]: value } }).supports).toEqual([]);
  });
});

const unspoken: readonly (Row & { readonly says: string })[] = [
  { field: "keys", value: "2", claims: [], says: "The stock sheet says 2 for the number of keys; no claim says how many." },
  {
    field: "keys",
    value: "2",
    claims: [{ component: "vehicle", attribute: "count", part: "owner", value: 2 }],
    says: "no claim says how many",
  },
  {
    field: "Title status",
    value: "Rebuilt",
    claims: [mileage(61300)],
    says: "The stock sheet says Rebuilt for the title; no claim speaks of it.",
  },
  { field: "VIN", value: "1M8GDM9AXKP042788", claims: [], says: "1M8GDM9AXKP042788 for the VIN" },
  { field: "front tires", value: "215/70R15", claims: [tire("255/60R15", "rear")], says: "front tire size" },
  {
    field: "transmission",
    value: "5-speed manual",
    claims: [{ component: "transmission", attribute: "type", value: "manual" }],
    says: "for the number of gears; no claim says how many",
  },
  { field: "engine", value: "5.7L V8", claims: [], says: "for the engine displacement and engine type; no claim speaks of it" },
  { field: "mileage", value: "61,240", claims: [{ ...mileage(12), time: "former" }], says: "mileage" },
];

const touched: readonly Row[] = [
  { field: "keys", value: "2", claims: [key(2)] },
  { field: "keys", value: "2", claims: [key(3)] },
  { field: "mileage", value: "61,240", claims: [{ ...mileage(71000), stance: "hedged" }] },
  { field: "VIN", value: "1M8GDM9AXKP042788", claims: [{ component: "vin", attribute: "type", value: "88" }] },
  { field: "tires", value: "215/70R15 front, 255/60R15 rear", claims: [] },
  { field: "mileage", value: "unknown", claims: [] },
  { field: "keys", value: "in the safe", claims: [] },
  { field: "salesman", value: "2", claims: [] },
  { field: "stock number", value: "CK-2107", claims: [] },
  { field: "make", value: "Havelin", claims: [] },
  { field: "front tires", value: "215/70R15", claims: [tire("255/60R15", "all")] },
  { field: "colour", value: "see photos", claims: [] },
];

describe("tells what nobody spoke of", () => {
  test.for(unspoken)("$field: $value", ({ field, value, claims, says }) => {
    const { silences } = compared(claimsFrom(claims), { stockSheet: { [field]: value } });
    expect(silences).toHaveLength(1);
    expect(silences[0]).toMatchObject({ id: "u1", field, sheetValue: value });
    expect(silences[0]!.why).toContain(says);
  });
});

describe("does not call unspoken what any claim comes near, what is not understood, and what only names the vehicle", () => {
  test.for(touched)("$field: $value", ({ field, value, claims }) => {
    expect(compared(claimsFrom(claims), { stockSheet: { [field]: value } }).silences).toEqual([]);
  });
});

test("without a sheet nothing is borne out and nothing is missed", () => {
  expect(compared(claimsFrom([mileage(61240)]))).toMatchObject({ denials: [], supports: [], silences: [] });
});
