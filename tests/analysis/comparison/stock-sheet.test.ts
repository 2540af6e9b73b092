import { describe, expect, test } from "vitest";
import type { ClaimSketch } from "../../../electron/analysis/comparison/standards/rule.ts";
import { columnName, columnsNamed, stockSheetColumns } from "../../../electron/analysis/comparison/stock-sheet/columns.ts";
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
    expect(denials[0]!.why).toContain(value);
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
      expect(columnName(name)).toBe(name);
      expect(columnsNamed(`  ${name.toUpperCase().replaceAll(" ", "_")} (x) `)).toContain(column);
    }
  }
});
