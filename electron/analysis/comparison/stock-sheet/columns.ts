import type { AttributeName, ComponentName, PositionName, UnitName } from "../../../../shared-types/index.ts";

/** How a column's text is read, to be held against claims of one slot. */
export type ColumnReading =
  | { readonly as: "figure"; readonly unit: UnitName | null }
  | { readonly as: "tire-size" }
  | { readonly as: "tire-date" }
  | { readonly as: "color" }
  | { readonly as: "material" }
  | { readonly as: "type" }
  | { readonly as: "count" }
  | { readonly as: "vin" };

export interface StockSheetColumn {
  /** Names dealers give the column: lower-case words, no signs. */
  readonly names: readonly string[];
  readonly component: ComponentName;
  readonly attribute: AttributeName;
  readonly part: string | null;
  readonly position: PositionName | null;
  readonly reading: ColumnReading;
  /** For the reviewer. */
  readonly topic: string;
}

/** Columns of a dealer's own record and the claims they bear on. Names are common practice; a name not listed is left alone. */
export const stockSheetColumns = [
  column(["year", "model year", "yr", "vehicle year", "my"], "vehicle", "year", "model year", { as: "figure", unit: null }),
  column(
    ["mileage", "odometer", "miles", "odo", "odometer reading", "odometer miles", "mileage mi", "current mileage"],
    "odometer",
    "mileage",
    "mileage",
    { as: "figure", unit: "mi" },
  ),
  column(["kilometers", "kilometres", "km", "kms", "odometer km", "mileage km"], "odometer", "mileage", "mileage", {
    as: "figure",
    unit: "km",
  }),
  column(
    ["price", "asking price", "list price", "retail", "retail price", "asking", "sale price", "advertised price", "internet price"],
    "price",
    "price",
    "asking price",
    {
      as: "figure",
      unit: null,
    },
  ),
  column(
    ["displacement", "engine size", "engine displacement", "cubic inches", "ci", "cid", "liters", "litres", "cc", "capacity"],
    "engine",
    "displacement",
    "engine displacement",
    {
      as: "figure",
      unit: null,
    },
  ),
  column(["engine", "motor", "engine description"], "engine", "displacement", "engine displacement", { as: "figure", unit: null }),
  column(["engine", "motor", "engine type", "engine description", "fuel", "fuel type"], "engine", "type", "engine type", { as: "type" }),
  column(["cylinders", "cyl", "number of cylinders"], "engine", "count", "number of cylinders", { as: "count" }, "cylinder"),
  column(["engine year"], "engine", "year", "engine year", { as: "figure", unit: null }),
  column(["horsepower", "power", "hp", "bhp"], "engine", "power", "engine power", { as: "figure", unit: "hp" }),
  column(["torque"], "engine", "torque", "engine torque", { as: "figure", unit: "lb-ft" }),
  column(["transmission", "trans", "gearbox", "transmission type"], "transmission", "type", "transmission type", { as: "type" }),
  column(
    ["transmission", "trans", "gearbox", "gears", "speeds", "number of gears"],
    "transmission",
    "count",
    "number of gears",
    { as: "count" },
    "gear",
  ),
  column(
    [
      "axle ratio",
      "rear axle ratio",
      "gear ratio",
      "rear end ratio",
      "ratio",
      "final drive",
      "final drive ratio",
      "rear gear",
      "rear end",
      "axle",
    ],
    "final-drive",
    "ratio",
    "axle ratio",
    {
      as: "figure",
      unit: null,
    },
  ),
  column(["drivetrain", "drive", "drive type", "driveline", "driven wheels"], "vehicle", "type", "driven wheels", { as: "type" }),
  column(
    ["color", "colour", "exterior color", "exterior colour", "ext color", "body color", "paint", "paint color", "paint colour"],
    "paint",
    "color",
    "paint color",
    { as: "color" },
  ),
  column(
    ["interior color", "interior colour", "int color", "trim color", "seat color", "upholstery color", "interior"],
    "seats",
    "color",
    "seat color",
    { as: "color" },
  ),
  column(["interior", "interior material", "upholstery", "seat material", "seats", "trim material"], "seats", "material", "seat material", {
    as: "material",
  }),
  column(["vin", "vehicle identification number", "chassis number", "serial number", "chassis no", "vin number"], "vin", "type", "VIN", {
    as: "vin",
  }),
  column(["tires", "tyres", "tire size", "tyre size", "tire", "tyre"], "tire", "size", "tire size", { as: "tire-size" }, null, "all"),
  column(
    ["front tires", "front tyres", "front tire", "front tyre", "front tire size", "front tyre size", "tires front", "tyres front"],
    "tire",
    "size",
    "front tire size",
    { as: "tire-size" },
    null,
    "front",
  ),
  column(
    ["rear tires", "rear tyres", "rear tire", "rear tyre", "rear tire size", "rear tyre size", "tires rear", "tyres rear"],
    "tire",
    "size",
    "rear tire size",
    { as: "tire-size" },
    null,
    "rear",
  ),
  column(["spare", "spare size", "spare tire", "spare tyre"], "spare", "size", "spare tire size", { as: "tire-size" }),
  column(
    ["tire date", "tyre date", "dot code", "date code", "tire date code"],
    "tire",
    "date",
    "tire date",
    { as: "tire-date" },
    null,
    "all",
  ),
  column(
    ["wheels", "wheel size", "wheel diameter", "rims", "rim size"],
    "wheel",
    "diameter",
    "wheel diameter",
    { as: "figure", unit: "in" },
    null,
    "all",
  ),
  column(["wheels", "wheel material", "wheel type"], "wheel", "material", "wheel material", { as: "material" }, null, "all"),
  column(
    ["owners", "number of owners", "previous owners", "keepers", "former keepers", "owner count", "no of owners"],
    "vehicle",
    "count",
    "number of owners",
    { as: "count" },
    "owner",
  ),
  column(["keys", "number of keys", "no of keys", "key count"], "vehicle", "count", "number of keys", { as: "count" }, "key"),
  column(["doors", "number of doors"], "body", "count", "number of doors", { as: "count" }, "door"),
  column(["title", "title status", "title type", "title brand"], "title", "type", "title", { as: "type" }),
  column(["carburetor", "carburettor", "carb", "carburetor cfm", "cfm"], "fuel-system", "flow", "carburetor flow", {
    as: "figure",
    unit: "cfm",
  }),
  column(["steering"], "steering", "type", "steering", { as: "type" }),
  column(["front brakes", "brakes front"], "brakes", "type", "front brakes", { as: "type" }, null, "front"),
  column(["rear brakes", "brakes rear"], "brakes", "type", "rear brakes", { as: "type" }, null, "rear"),
  column(["fuel tank", "tank", "tank size", "fuel capacity", "fuel tank size"], "fuel-tank", "size", "fuel tank size", {
    as: "figure",
    unit: "gal",
  }),
] as const satisfies readonly StockSheetColumn[];

function column(
  names: readonly string[],
  component: ComponentName,
  attribute: AttributeName,
  topic: string,
  reading: ColumnReading,
  part: string | null = null,
  position: PositionName | null = null,
): StockSheetColumn {
  return { names, component, attribute, topic, reading, part, position };
}

/** A column's name as the table has it: lower-case words without signs or bracketed units ("Odometer (mi)" is "odometer"). */
export function columnName(written: string): string {
  return written
    .toLowerCase()
    .replace(/\(.*?\)/g, " ")
    .replace(/[^a-z0-9]+/g, " ")
    .replace(/\b(no|nr)\b/g, "no")
    .trim();
}

export function columnsNamed(written: string): readonly StockSheetColumn[] {
  const name = columnName(written);
  return stockSheetColumns.filter((candidate) => (candidate.names as readonly string[]).includes(name));
}
