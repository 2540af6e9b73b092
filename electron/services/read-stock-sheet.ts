import { fieldNamed, type SheetField, type SheetMeanings, type StockSheetFields, type Vehicle } from "../../shared-types/index.ts";
import { bodyStyleOf } from "./stock-sheet/body-style.ts";
import { judgeColumns, type KnownChoices, noChoices } from "./stock-sheet/judge-columns.ts";
import { readTable } from "./stock-sheet/read-table.ts";
import { type TakenRow, takeRow } from "./stock-sheet/take-row.ts";

/** A vehicle's record and the form of the sheet it came in. */
export interface ReadSheet extends TakenRow {
  readonly form: string;
}

/**
 * A dealer's record of one vehicle out of a sheet of one or of many, with what its columns mean. Nothing is asked: a column in doubt is
 * left out.
 * @throws Refusal that names file and line.
 */
export function readSheetRow(bytes: Uint8Array, fileName: string, stockNumber: string, choices: KnownChoices): ReadSheet {
  const table = readTable(bytes, fileName);
  const columns = judgeColumns(table, choices);
  return { ...takeRow(table, columns, stockNumber), form: columns.form };
}

/** The fields alone, by their names. */
export function readStockSheet(bytes: Uint8Array, fileName: string, stockNumber = ""): StockSheetFields {
  return readSheetRow(bytes, fileName, stockNumber, noChoices).fields;
}

/** The value of the first field that means this. Without settled meanings the fields' names tell. */
function meaning(fields: StockSheetFields | null, meanings: SheetMeanings | null, wanted: SheetField): string {
  const named = Object.entries(fields ?? {}).filter(([field]) =>
    meanings === null ? fieldNamed(field) === wanted : meanings[field] === wanted,
  );
  return named.map(([, value]) => value.trim()).find((value) => value !== "") ?? "";
}

/** ISO 8601 date of the recording, where the record has one. Other ways to write a date are ambiguous, so they give null. */
export function recordedOn(fields: StockSheetFields | null, meanings: SheetMeanings | null = null): string | null {
  const written = meaning(fields, meanings, "recorded-on");
  const time = /^\d{4}-\d{2}-\d{2}$/.test(written) ? Date.parse(written) : Number.NaN;
  // A 30th of February is read as a day in March, so the date is held against what was written.
  return !Number.isNaN(time) && new Date(time).toISOString().startsWith(written) ? written : null;
}

/** What a recording is described by, as far as a stock sheet can say it. */
interface Described {
  readonly stockNumber: string;
  readonly vehicle: Vehicle;
  /** The body style given is only one to begin with: the sheet's counts, where it tells one. */
  readonly bodyStyleFromSheet?: boolean;
}

/** The description with its empty fields taken from the sheet; what a person has written stays. Mileage has no field in a description. */
export function withSheetDescription(
  { stockNumber, vehicle, bodyStyleFromSheet }: Described,
  fields: StockSheetFields | null,
  meanings: SheetMeanings | null = null,
): Pick<Described, "stockNumber" | "vehicle"> {
  const value = (field: SheetField) => meaning(fields, meanings, field);
  const makeAndModel = [value("make"), value("model")].filter(Boolean).join(" ");
  return {
    // The contract's own bounds: a longer cell is a remark, not a number or a name.
    stockNumber: stockNumber || value("stock-number").slice(0, 60),
    vehicle: {
      ...vehicle,
      name: vehicle.name || (value("vehicle") || makeAndModel).slice(0, 200),
      year: vehicle.year ?? yearOf(value("year")),
      bodyStyle: (bodyStyleFromSheet === true ? bodyStyleOf(value("body")) : null) ?? vehicle.bodyStyle,
    },
  };
}

function yearOf(written: string): number | null {
  const year = /^\d{4}$/.test(written) ? Number(written) : Number.NaN;
  return year >= 1880 && year <= 2100 ? year : null;
}
