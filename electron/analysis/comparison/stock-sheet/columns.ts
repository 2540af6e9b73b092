import {
  type AttributeName,
  type ComponentName,
  fieldNamed,
  type PositionName,
  type SheetField,
  type SheetMeanings,
  sheetFieldRows,
  type UnitName,
} from "../../../../shared-types/index.ts";

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
  /** The fields of a record that tell it; a field may tell several ("5.7L V8"). */
  readonly fields: readonly SheetField[];
  /** Names dealers give those fields: lower-case words, no signs. */
  readonly names: readonly string[];
  readonly component: ComponentName;
  readonly attribute: AttributeName;
  readonly part: string | null;
  readonly position: PositionName | null;
  readonly reading: ColumnReading;
  /** For the reviewer. */
  readonly topic: string;
}

const bare = { as: "figure", unit: null } as const;
const type = { as: "type" } as const;
const count = { as: "count" } as const;
const size = { as: "tire-size" } as const;

/** What the fields of a dealer's own record say, and the claims they bear on. The fields' names are in `shared-types/stock-sheet.ts`. */
export const stockSheetColumns: readonly StockSheetColumn[] = [
  column(["year"], "vehicle", "year", "model year", bare),
  column(["mileage"], "odometer", "mileage", "mileage", { as: "figure", unit: "mi" }),
  column(["kilometers"], "odometer", "mileage", "mileage", { as: "figure", unit: "km" }),
  column(["price"], "price", "price", "asking price", bare),
  column(["displacement"], "engine", "displacement", "engine displacement", bare),
  column(["engine"], "engine", "displacement", "engine displacement", bare),
  column(["engine", "engine-type"], "engine", "type", "engine type", type),
  column(["cylinders"], "engine", "count", "number of cylinders", count, "cylinder"),
  column(["engine-year"], "engine", "year", "engine year", bare),
  column(["power"], "engine", "power", "engine power", { as: "figure", unit: "hp" }),
  column(["torque"], "engine", "torque", "engine torque", { as: "figure", unit: "lb-ft" }),
  column(["transmission", "transmission-type"], "transmission", "type", "transmission type", type),
  column(["transmission", "gears"], "transmission", "count", "number of gears", count, "gear"),
  column(["axle-ratio"], "final-drive", "ratio", "axle ratio", bare),
  column(["drivetrain"], "vehicle", "type", "driven wheels", type),
  column(["paint-color"], "paint", "color", "paint color", { as: "color" }),
  column(["seat-color", "interior"], "seats", "color", "seat color", { as: "color" }),
  column(["seat-material", "interior"], "seats", "material", "seat material", { as: "material" }),
  column(["vin"], "vin", "type", "VIN", { as: "vin" }),
  column(["tires"], "tire", "size", "tire size", size, null, "all"),
  column(["front-tires"], "tire", "size", "front tire size", size, null, "front"),
  column(["rear-tires"], "tire", "size", "rear tire size", size, null, "rear"),
  column(["spare"], "spare", "size", "spare tire size", size),
  column(["tire-date"], "tire", "date", "tire date", { as: "tire-date" }, null, "all"),
  column(["wheels", "wheel-diameter"], "wheel", "diameter", "wheel diameter", { as: "figure", unit: "in" }, null, "all"),
  column(["wheels", "wheel-material"], "wheel", "material", "wheel material", { as: "material" }, null, "all"),
  column(["owners"], "vehicle", "count", "number of owners", count, "owner"),
  column(["keys"], "vehicle", "count", "number of keys", count, "key"),
  column(["doors"], "body", "count", "number of doors", count, "door"),
  column(["title"], "title", "type", "title", type),
  column(["carburetor"], "fuel-system", "flow", "carburetor flow", { as: "figure", unit: "cfm" }),
  column(["steering"], "steering", "type", "steering", type),
  column(["front-brakes"], "brakes", "type", "front brakes", type, null, "front"),
  column(["rear-brakes"], "brakes", "type", "rear brakes", type, null, "rear"),
  column(["fuel-tank"], "fuel-tank", "size", "fuel tank size", { as: "figure", unit: "gal" }),
];

function column(
  fields: readonly SheetField[],
  component: ComponentName,
  attribute: AttributeName,
  topic: string,
  reading: ColumnReading,
  part: string | null = null,
  position: PositionName | null = null,
): StockSheetColumn {
  const names = fields.flatMap((field) => sheetFieldRows[field].names);
  return { fields, names, component, attribute, topic, reading, part, position };
}

/** The columns that a field's name stands for; none where the name is not known. */
export function columnsNamed(written: string): readonly StockSheetColumn[] {
  return columnsOf(fieldNamed(written) ?? null);
}

/** The columns of one field of a sheet: by what the sheet's columns are set to mean, where that was settled, else by its name. */
export function columnsMeant(field: string, meanings: SheetMeanings | null): readonly StockSheetColumn[] {
  return meanings === null ? columnsNamed(field) : columnsOf(meanings[field] ?? null);
}

function columnsOf(field: SheetField | null): readonly StockSheetColumn[] {
  return field === null ? [] : stockSheetColumns.filter((candidate) => candidate.fields.includes(field));
}
