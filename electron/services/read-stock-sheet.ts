import { CsvError, parse } from "csv-parse/sync";
import type { StockSheetFields, Vehicle } from "../../shared-types/index.ts";
import { Refusal } from "./refusals.ts";

/** Most fields and letters a sheet is taken with; a dealer's record has some dozens of fields. */
const mostFields = 500;
const mostLetters = 20_000;

/** First cells that tell a sheet of "field, value" rows from one with a row of names. */
const pairHeads = new Set(["field", "name", "item", "key"]);

/**
 * A dealer's record of one vehicle: either a first row of field names over one row of values, or a row for each field with its value.
 * Comma, semicolon or tab; field names come out in lower case with single spaces; empty values are left out.
 * @throws Refusal that names file and line.
 */
export function readStockSheet(bytes: Uint8Array, fileName: string): StockSheetFields {
  const rows = readRows(decode(bytes), fileName);
  const pairs = rows.every(({ cells }) => cells.length === 2) && (rows.length !== 2 || isPairHead(rows[0]));
  const fields = pairs ? fieldsOfPairs(rows) : fieldsOfRow(rows, fileName);
  const named = new Map<string, string>();
  for (const { name, value, line } of fields) {
    const field = name
      .toLowerCase()
      .replaceAll(/[\s_]+/g, " ")
      .trim();
    if (!field || !value.trim()) continue;
    const former = named.get(field);
    if (former !== undefined && former !== value.trim()) {
      throw refusal(fileName, line, `the field “${field}” stands twice, with “${former}” and “${value.trim()}”. Keep the right one.`);
    }
    named.set(field, value.trim().slice(0, mostLetters));
  }
  if (named.size === 0)
    throw refusal(fileName, 1, "no field with a value was found. A first row of field names and a row of values is expected.");
  if (named.size > mostFields) throw refusal(fileName, 1, `${named.size} fields are more than the ${mostFields} that are taken.`);
  return Object.fromEntries(named);
}

interface Row {
  readonly cells: readonly string[];
  /** 1-based. */
  readonly line: number;
}

interface Field {
  readonly name: string;
  readonly value: string;
  readonly line: number;
}

function readRows(text: string, fileName: string): Row[] {
  if (text.includes("\0")) throw refusal(fileName, 1, "this is no text. Save the stock sheet as CSV.");
  try {
    const records = parse(text, {
      bom: true,
      delimiter: delimiterOf(text),
      info: true,
      relax_column_count: true,
      skip_empty_lines: true,
      trim: true,
    }) as unknown as { record: string[]; info: { lines: number } }[];
    return records
      .map(({ record, info }) => ({ cells: record, line: info.lines }))
      .filter(({ cells }) => cells.some((cell) => cell !== ""));
  } catch (failure) {
    if (!(failure instanceof CsvError)) throw failure;
    const line = (failure as CsvError & { lines?: number }).lines ?? 1;
    throw refusal(fileName, line, `the table cannot be read (${failure.message}). Save the stock sheet as CSV again.`);
  }
}

/** The separator that the first line has most of: programs in some countries write semicolons. */
function delimiterOf(text: string): string {
  const line = text.split(/\r\n|\n|\r/, 1)[0] ?? "";
  return [",", ";", "\t"].reduce((best, each) => (line.split(each).length > line.split(best).length ? each : best), ",");
}

function isPairHead(row: Row | undefined): boolean {
  return row !== undefined && pairHeads.has((row.cells[0] ?? "").toLowerCase());
}

function fieldsOfPairs(rows: readonly Row[]): Field[] {
  const withoutHead = isPairHead(rows[0]) ? rows.slice(1) : rows;
  return withoutHead.map(({ cells, line }) => ({ name: cells[0] ?? "", value: cells[1] ?? "", line }));
}

function fieldsOfRow(rows: readonly Row[], fileName: string): Field[] {
  const [names, values, third] = rows;
  if (!names || !values) throw refusal(fileName, 1, "a first row of field names and a row of values is expected; only one row was found.");
  if (third)
    throw refusal(
      fileName,
      third.line,
      "a third row was found. A stock sheet describes one vehicle: keep the row of names and its own row.",
    );
  if (values.cells.length > names.cells.length) {
    throw refusal(
      fileName,
      values.line,
      `${values.cells.length} values stand under ${names.cells.length} field names. Quote values that hold the separator.`,
    );
  }
  return names.cells.map((name, position) => ({ name, value: values.cells[position] ?? "", line: values.line }));
}

/** UTF-8 or UTF-16 by its mark; anything that is no UTF-8 is read as Windows-1252, which spreadsheets still write. */
function decode(bytes: Uint8Array): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder("utf-16le").decode(bytes);
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return new TextDecoder("utf-16be").decode(bytes);
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder("windows-1252").decode(bytes);
  }
}

function refusal(file: string, line: number, complaint: string): Refusal {
  return new Refusal("stock-sheet-unreadable", `${file}, line ${line}: ${complaint}`, { file, line });
}

/** Fields in which a dealer writes when the walk was filmed. */
const dateFields = ["recorded on", "recorded", "filmed on", "filmed", "recording date", "walkaround date"];

/** ISO 8601 date of the recording, where the record has one. Other ways to write a date are ambiguous, so they give null. */
export function recordedOn(fields: StockSheetFields | null): string | null {
  const written = dateFields.map((field) => fields?.[field]).find((value) => value !== undefined) ?? "";
  const time = /^\d{4}-\d{2}-\d{2}$/.test(written) ? Date.parse(written) : Number.NaN;
  // A 30th of February is read as a day in March, so the date is held against what was written.
  return !Number.isNaN(time) && new Date(time).toISOString().startsWith(written) ? written : null;
}

/** Columns in which dealers' records name the vehicle; common practice. The first that the sheet has counts. */
const descriptionFields = {
  stockNumber: ["stock number", "stock no", "stock no.", "stock #", "stock"],
  year: ["model year", "year", "my"],
  make: ["make", "manufacturer", "brand"],
  model: ["model", "model name"],
  vehicle: ["vehicle", "make/model", "make / model", "make and model", "car"],
} as const satisfies Record<string, readonly string[]>;

/** What a recording is described by, as far as a stock sheet can say it. */
interface Described {
  readonly stockNumber: string;
  readonly vehicle: Vehicle;
}

/** The description with its empty fields taken from the sheet; what a person has written stays. Mileage has no field in a description. */
export function withSheetDescription({ stockNumber, vehicle }: Described, fields: StockSheetFields | null): Described {
  const value = (name: keyof typeof descriptionFields) =>
    descriptionFields[name].map((field) => fields?.[field]?.trim()).find((found) => found) ?? "";
  const makeAndModel = [value("make"), value("model")].filter(Boolean).join(" ");
  return {
    // The contract's own bounds: a longer cell is a remark, not a number or a name.
    stockNumber: stockNumber || value("stockNumber").slice(0, 60),
    vehicle: {
      ...vehicle,
      name: vehicle.name || (value("vehicle") || makeAndModel).slice(0, 200),
      year: vehicle.year ?? yearOf(value("year")),
    },
  };
}

function yearOf(written: string): number | null {
  const year = /^\d{4}$/.test(written) ? Number(written) : Number.NaN;
  return year >= 1880 && year <= 2100 ? year : null;
}
