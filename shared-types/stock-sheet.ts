import { z } from "zod";

/** How a cell of a field must look to be read as one. `text` is taken as it stands; `words` needs a letter, `figure` a digit. */
export type CellKind = "text" | "words" | "year" | "distance" | "money" | "count" | "figure" | "vin";

interface SheetFieldRow {
  /** For people, in a choice from a list. */
  readonly label: string;
  /** Names that dealers' own records give it: lower-case words without signs, the likeliest first. Common practice of the trade. */
  readonly names: readonly string[];
  readonly cell: CellKind;
}

/** What a column of a dealer's record may mean. The first six describe the recording; of the others, claims are held against them. */
export const sheetFieldRows = {
  "stock-number": {
    label: "Stock number",
    names: ["stock number", "stock no", "stock", "stock id", "stk", "stk no", "stock nr"],
    cell: "text",
  },
  make: { label: "Make", names: ["make", "manufacturer", "brand"], cell: "text" },
  model: { label: "Model", names: ["model", "model name"], cell: "text" },
  vehicle: { label: "Vehicle's name", names: ["vehicle", "make model", "make and model", "car"], cell: "words" },
  body: { label: "Body style", names: ["body", "body style", "body type", "style"], cell: "text" },
  "recorded-on": {
    label: "Date of the recording",
    names: ["recorded on", "recorded", "filmed on", "filmed", "recording date", "walkaround date"],
    cell: "text",
  },
  year: { label: "Model year", names: ["model year", "year", "yr", "vehicle year", "my"], cell: "year" },
  mileage: {
    label: "Mileage, miles",
    names: [
      "mileage",
      "odometer",
      "miles",
      "odo",
      "odometer reading",
      "odometer miles",
      "odometer mi",
      "mileage mi",
      "mileage miles",
      "current mileage",
    ],
    cell: "distance",
  },
  kilometers: {
    label: "Mileage, kilometers",
    names: ["kilometers", "kilometres", "km", "kms", "odometer km", "mileage km", "odometer kms", "odo km"],
    cell: "distance",
  },
  price: {
    label: "Asking price",
    names: ["price", "asking price", "list price", "retail", "retail price", "asking", "sale price", "advertised price", "internet price"],
    cell: "money",
  },
  engine: { label: "Engine", names: ["engine", "motor", "engine description"], cell: "text" },
  displacement: {
    label: "Engine displacement",
    names: [
      "displacement",
      "engine size",
      "engine displacement",
      "cubic inches",
      "ci",
      "cid",
      "liters",
      "litres",
      "cc",
      "capacity",
      "engine capacity",
    ],
    cell: "figure",
  },
  "engine-type": { label: "Engine type or fuel", names: ["engine type", "fuel", "fuel type"], cell: "words" },
  cylinders: { label: "Number of cylinders", names: ["cylinders", "cyl", "number of cylinders"], cell: "count" },
  "engine-year": { label: "Engine year", names: ["engine year"], cell: "year" },
  power: { label: "Engine power", names: ["horsepower", "power", "hp", "bhp"], cell: "figure" },
  torque: { label: "Engine torque", names: ["torque"], cell: "figure" },
  transmission: { label: "Transmission", names: ["transmission", "trans", "gearbox"], cell: "text" },
  "transmission-type": { label: "Transmission type", names: ["transmission type", "gearbox type"], cell: "words" },
  gears: { label: "Number of gears", names: ["gears", "speeds", "number of gears"], cell: "count" },
  "axle-ratio": {
    label: "Axle ratio",
    names: [
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
    cell: "figure",
  },
  drivetrain: { label: "Driven wheels", names: ["drivetrain", "drive", "drive type", "driveline", "driven wheels"], cell: "text" },
  "paint-color": {
    label: "Paint color",
    names: ["color", "colour", "exterior color", "exterior colour", "ext color", "body color", "paint", "paint color", "paint colour"],
    cell: "words",
  },
  "seat-color": {
    label: "Seat color",
    names: ["interior color", "interior colour", "int color", "trim color", "seat color", "upholstery color"],
    cell: "words",
  },
  interior: { label: "Interior: color and material", names: ["interior"], cell: "words" },
  "seat-material": {
    label: "Seat material",
    names: ["interior material", "upholstery", "seat material", "seats", "trim material"],
    cell: "words",
  },
  vin: {
    label: "VIN",
    names: ["vin", "vehicle identification number", "chassis number", "serial number", "chassis no", "vin number", "vin no"],
    cell: "vin",
  },
  tires: { label: "Tire size, all four", names: ["tires", "tyres", "tire size", "tyre size", "tire", "tyre"], cell: "figure" },
  "front-tires": {
    label: "Front tire size",
    names: ["front tires", "front tyres", "front tire", "front tyre", "front tire size", "front tyre size", "tires front", "tyres front"],
    cell: "figure",
  },
  "rear-tires": {
    label: "Rear tire size",
    names: ["rear tires", "rear tyres", "rear tire", "rear tyre", "rear tire size", "rear tyre size", "tires rear", "tyres rear"],
    cell: "figure",
  },
  spare: { label: "Spare tire size", names: ["spare", "spare size", "spare tire", "spare tyre"], cell: "figure" },
  "tire-date": { label: "Tire date code", names: ["tire date", "tyre date", "dot code", "date code", "tire date code"], cell: "figure" },
  wheels: { label: "Wheels: size and material", names: ["wheels"], cell: "text" },
  "wheel-diameter": { label: "Wheel diameter", names: ["wheel size", "wheel diameter", "rims", "rim size"], cell: "figure" },
  "wheel-material": { label: "Wheel material", names: ["wheel material", "wheel type"], cell: "words" },
  owners: {
    label: "Number of owners",
    names: ["owners", "number of owners", "previous owners", "keepers", "former keepers", "owner count", "no of owners"],
    cell: "count",
  },
  keys: { label: "Number of keys", names: ["keys", "number of keys", "no of keys", "key count"], cell: "count" },
  doors: { label: "Number of doors", names: ["doors", "number of doors"], cell: "count" },
  title: { label: "Title", names: ["title", "title status", "title type", "title brand"], cell: "words" },
  carburetor: { label: "Carburetor flow", names: ["carburetor", "carburettor", "carb", "carburetor cfm", "cfm"], cell: "figure" },
  steering: { label: "Steering", names: ["steering"], cell: "words" },
  "front-brakes": { label: "Front brakes", names: ["front brakes", "brakes front"], cell: "words" },
  "rear-brakes": { label: "Rear brakes", names: ["rear brakes", "brakes rear"], cell: "words" },
  "fuel-tank": {
    label: "Fuel tank size",
    names: ["fuel tank", "tank", "tank size", "fuel capacity", "fuel tank size"],
    cell: "figure",
  },
} as const satisfies Record<string, SheetFieldRow>;

export const sheetFields = Object.keys(sheetFieldRows) as [keyof typeof sheetFieldRows, ...(keyof typeof sheetFieldRows)[]];
export const SheetField = z.enum(sheetFields);
export type SheetField = z.infer<typeof SheetField>;

/** Columns that every dealer's record has and no walk speaks of. Common practice; they are left out without a question. */
export const neverHeldAgainst: ReadonlySet<string> = new Set([
  "notes",
  "note",
  "comments",
  "remarks",
  "description",
  "location",
  "lot",
  "status",
  "photos",
  "days in stock",
  "date in stock",
  "cost",
  "salesman",
  "salesperson",
  "url",
  "link",
]);

/** A column's name as a header is remembered by: lower-case words in any script, signs gone, brackets open. */
export function headerName(written: string): string {
  return written
    .normalize("NFKC")
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, " ")
    .trim();
}

/** A stock number without what is written now and then: spaces, dashes, capitals. Common practice. A leading zero counts. */
export function bareStockNumber(written: string): string {
  return written.toLowerCase().replaceAll(/[^\p{L}\p{N}]/gu, "");
}

const fieldByName: ReadonlyMap<string, SheetField> = new Map(
  sheetFields.flatMap((field) => sheetFieldRows[field].names.map((name) => [name, field] as const)),
);

/** The field that a column's name stands for; a bracketed unit counts where it is known ("Odometer (km)"), and is passed over else. */
export function fieldNamed(written: string): SheetField | undefined {
  return fieldByName.get(headerName(written)) ?? fieldByName.get(headerName(written.replace(/\(.*?\)/g, " ")));
}

/** What each column of a kept sheet means: null where it is left out. By the sheet's own names. */
export const SheetMeanings = z.record(z.string(), SheetField.nullable());
export type SheetMeanings = z.infer<typeof SheetMeanings>;

/** Why a column is read as it is: a person chose; its name is known; its name or cells leave a doubt; nobody knows it. */
export const columnStandings = ["chosen", "known", "doubtful", "unknown"] as const;

export const SheetColumn = z.strictObject({
  /** As the sheet writes it. */
  name: z.string(),
  /** Different cells from the top, as written. */
  samples: z.array(z.string()),
  /** Null is left out. */
  field: SheetField.nullable(),
  /** What it may mean, where that is asked. */
  suggestion: SheetField.nullable(),
  standing: z.enum(columnStandings),
  /** One sentence where there is something to say; else empty. */
  why: z.string(),
});
export type SheetColumn = z.infer<typeof SheetColumn>;

/** The columns of one sheet. */
export const SheetColumns = z.strictObject({
  /** The header's normalised names in alphabetical order: sheets of one form share it, in whatever order their columns stand. */
  form: z.string(),
  columns: z.array(SheetColumn),
  /** Rows of vehicles. */
  rows: z.int().nonnegative(),
});
export type SheetColumns = z.infer<typeof SheetColumns>;
