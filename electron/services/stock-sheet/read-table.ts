import { CsvError, parse } from "csv-parse/sync";
import { fieldNamed } from "../../../shared-types/index.ts";
import { Refusal } from "../refusals.ts";

/** A dealer's sheet as a table: names over rows of vehicles. */
export interface SheetTable {
  readonly file: string;
  /** As written; an empty one has no name. */
  readonly names: readonly string[];
  readonly rows: readonly SheetRow[];
  /** True where the file has a row for each field, so that a cell's line is its own and columns have no letters. */
  readonly pairs: boolean;
}

export interface SheetRow {
  readonly cells: readonly string[];
  /** 1-based line of the file, for each cell. */
  readonly lineOf: (cell: number) => number;
}

interface Line {
  readonly cells: readonly string[];
  /** 1-based. */
  readonly line: number;
}

/** First cells that tell a sheet of "field, value" rows from one with a row of names. */
const pairHeads = new Set(["field", "name", "item", "key"]);

/** Most columns of a sheet; a dealer's record has some dozens. */
const mostColumns = 500;

/**
 * A dealer's record as it stands in the file: either a first row of field names over a row for each vehicle, or a row for each field with
 * its value. Comma, semicolon or tab.
 * @throws Refusal that names file and line.
 */
export function readTable(bytes: Uint8Array, file: string): SheetTable {
  const lines = readLines(decode(bytes), file);
  const pairs = lines.every(({ cells }) => cells.length === 2) && (isPairHead(lines[0]) || looksPaired(lines));
  const table = pairs ? tableOfPairs(lines, file) : tableOfRows(lines, file);
  const named = table.names.filter((name) => name !== "").length;
  if (named > mostColumns) throw sheetRefusal(file, 1, `${named} fields are more than the ${mostColumns} that are taken.`);
  return table;
}

export function sheetRefusal(file: string, line: number, complaint: string): Refusal {
  return new Refusal("stock-sheet-unreadable", `${file}, line ${line}: ${complaint}`, { file, line });
}

function tableOfPairs(lines: readonly Line[], file: string): SheetTable {
  const withoutHead = isPairHead(lines[0]) ? lines.slice(1) : lines;
  return {
    file,
    names: withoutHead.map(({ cells }) => cells[0] ?? ""),
    rows:
      withoutHead.length === 0
        ? []
        : [{ cells: withoutHead.map(({ cells }) => cells[1] ?? ""), lineOf: (cell) => withoutHead[cell]?.line ?? 1 }],
    pairs: true,
  };
}

function tableOfRows([head, ...rows]: readonly Line[], file: string): SheetTable {
  if (head && rows.length === 0)
    throw sheetRefusal(file, 1, "a first row of field names and a row of values is expected; only one row was found.");
  return { file, names: head?.cells ?? [], rows: rows.map(({ cells, line }) => ({ cells, lineOf: () => line })), pairs: false };
}

/** Whether two columns are names and values. Under a name of a column stand no further names: then they are a lot of two columns. */
function looksPaired([head, ...rest]: readonly Line[]): boolean {
  if (rest.length < 2) return rest.length === 0;
  const underNames = rest.some(({ cells }) => fieldNamed(cells[0] ?? "") !== undefined);
  return underNames || fieldNamed(head?.cells[0] ?? "") === undefined;
}

function isPairHead(line: Line | undefined): boolean {
  return line !== undefined && pairHeads.has((line.cells[0] ?? "").toLowerCase());
}

function readLines(text: string, file: string): Line[] {
  if (text.includes("\0")) throw sheetRefusal(file, 1, "this is no text. Save the stock sheet as CSV.");
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
    throw sheetRefusal(file, line, `the table cannot be read (${failure.message}). Save the stock sheet as CSV again.`);
  }
}

/** The separator that the first line has most of: programs in some countries write semicolons. */
function delimiterOf(text: string): string {
  const line = text.replace(/^[\r\n]+/, "").split(/\r\n|\n|\r/, 1)[0] ?? "";
  return [",", ";", "\t"].reduce((best, each) => (line.split(each).length > line.split(best).length ? each : best), ",");
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
