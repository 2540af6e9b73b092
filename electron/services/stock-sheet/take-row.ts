import {
  bareStockNumber,
  type SheetColumns,
  type SheetMeanings,
  type StockSheetFields,
  sheetFieldRows,
} from "../../../shared-types/index.ts";
import { Refusal } from "../refusals.ts";
import { fitsKind, isBlank, misfitOf } from "./cell-kinds.ts";
import { type SheetRow, type SheetTable, sheetRefusal } from "./read-table.ts";

/** Most letters that a cell is taken with. */
const mostLetters = 20_000;

/** One vehicle's record out of a sheet. */
export interface TakenRow {
  /** Field names in lower case with single spaces; empty values are left out. */
  readonly fields: StockSheetFields;
  readonly meanings: SheetMeanings;
}

/**
 * The row of one vehicle: the only one, or the one with the stock number.
 * @throws Refusal that names file, row and column, what was found and what to do.
 */
export function takeRow(table: SheetTable, columns: SheetColumns, stockNumber: string): TakenRow {
  const row = table.rows.length > 1 ? rowOf(table, columns, stockNumber) : table.rows[0];
  if (!row) throw nothingIn(table);
  refuseRagged(table, row);
  const meaningOf = new Map(columns.columns.map(({ name, field }) => [name, field]));
  const fields = new Map<string, string>();
  const meanings = new Map<string, SheetMeanings[string]>();
  for (const [at, written] of table.names.entries()) {
    const field = fieldName(written);
    const value = (row.cells[at] ?? "").trim();
    if (!field || !value) continue;
    const former = fields.get(field);
    if (former !== undefined && former !== value) {
      throw sheetRefusal(
        table.file,
        row.lineOf(at),
        `the field “${field}” stands twice, with “${former}” and “${value}”. Keep the right one.`,
      );
    }
    const meaning = meaningOf.get(written) ?? null;
    if (meaning !== null && !fitsKind(sheetFieldRows[meaning].cell, value)) {
      const { label, cell } = sheetFieldRows[meaning];
      throw sheetRefusal(
        table.file,
        row.lineOf(at),
        `${columnWords(table, at)}: “${value.slice(0, 60)}” ${misfitOf(cell)}, empty the cell, or choose another meaning than “${label}” for the column.`,
      );
    }
    fields.set(field, value.slice(0, mostLetters));
    if (former === undefined) meanings.set(field, isBlank(value) ? null : meaning);
  }
  if (fields.size === 0) throw nothingIn(table);
  return { fields: Object.fromEntries(fields), meanings: Object.fromEntries(meanings) };
}

/** A field's name as it is kept: lower case, single spaces. */
export function fieldName(written: string): string {
  return written
    .toLowerCase()
    .replaceAll(/[\s_]+/g, " ")
    .trim();
}

function rowOf(table: SheetTable, { columns }: SheetColumns, stockNumber: string): SheetRow {
  const { file, rows, names } = table;
  const second = rows[1]?.lineOf(0) ?? 1;
  const column = columns.find(({ field }) => field === "stock-number");
  if (!column) {
    throw sheetRefusal(
      file,
      1,
      `${rows.length} rows were found, and a recording is of one vehicle, but no column is known to hold stock numbers. Name it “Stock Number”, or choose it among the columns.`,
    );
  }
  if (stockNumber.trim() === "") {
    throw sheetRefusal(
      file,
      second,
      `${rows.length} rows were found, and a recording is of one vehicle. Give its stock number, so that its row can be picked.`,
    );
  }
  const at = names.indexOf(column.name);
  const numberOf = (row: SheetRow) => row.cells[at] ?? "";
  const exact = rows.filter((row) => numberOf(row).trim() === stockNumber.trim());
  const found = exact.length > 0 ? exact : rows.filter((row) => bareStockNumber(numberOf(row)) === bareStockNumber(stockNumber));
  const [row, other] = found;
  if (!row) {
    const ragged = rows.find(({ cells }) => cells.length > names.length);
    const some = rows
      .map(numberOf)
      .filter((number) => number !== "")
      .slice(0, 3);
    throw rowRefusal(
      file,
      1,
      `none of the ${rows.length} rows has the stock number “${stockNumber}” under “${column.name}”, where ${some.length > 0 ? `“${some.join("”, “")}” and others stand` : "all cells are empty"}. Correct the number, or add the row.${ragged ? ` Line ${ragged.lineOf(0)} has more values than names and may hold it.` : ""}`,
    );
  }
  if (other) {
    throw rowRefusal(
      file,
      other.lineOf(at),
      `${found.length} rows have the stock number “${stockNumber}” under “${column.name}” (lines ${found.map((one) => one.lineOf(at)).join(", ")}). Keep the right one.`,
    );
  }
  return row;
}

function rowRefusal(file: string, line: number, complaint: string): Refusal {
  return new Refusal("stock-sheet-row", `${file}, line ${line}: ${complaint}`, { file, line });
}

function refuseRagged({ file, names, pairs }: SheetTable, row: SheetRow): void {
  if (pairs || row.cells.length <= names.length) return;
  const first = row.cells[names.length] ?? "";
  throw sheetRefusal(
    file,
    row.lineOf(0),
    `${row.cells.length} values stand under ${names.length} field names; the first without a name is “${first.slice(0, 60)}” in column ${columnLetter(names.length)}. Quote values that hold the separator.`,
  );
}

function nothingIn({ file }: SheetTable): Refusal {
  return sheetRefusal(file, 1, "no field with a value was found. A first row of field names and a row of values is expected.");
}

function columnWords({ names, pairs }: SheetTable, at: number): string {
  return pairs ? `field “${names[at]}”` : `column ${columnLetter(at)} “${names[at]}”`;
}

/** As spreadsheets name their columns: A to Z, then AA. */
function columnLetter(at: number): string {
  return at < 26 ? String.fromCharCode(65 + at) : columnLetter(Math.floor(at / 26) - 1) + columnLetter(at % 26);
}
