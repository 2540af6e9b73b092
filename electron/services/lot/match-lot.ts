import { bareStockNumber, type Input, type LotMatch, type SheetColumns } from "../../../shared-types/index.ts";
import type { RecordingRow } from "../../library/recordings.ts";
import type { Analyst } from "../analyse-recording.ts";
import type { Parts } from "../parts.ts";
import { readOffered } from "../read-offered.ts";
import { Refusal } from "../refusals.ts";
import { judgeColumns } from "../stock-sheet/judge-columns.ts";
import { readTable, type SheetRow, type SheetTable, sheetRefusal } from "../stock-sheet/read-table.ts";
import { type TakenRow, takeRow } from "../stock-sheet/take-row.ts";

/** Letters of a row that no recording goes with, to know it by. */
const longestRowWords = 120;

interface Matching {
  readonly match: LotMatch;
  readonly columns: SheetColumns;
  /** The rows to be taken, by the recording's id. */
  readonly taken: ReadonlyMap<string, TakenRow>;
}

/** A sheet of the whole lot against all recordings, by stock number; writes nothing. @throws Refusal that names file and line. */
export function matchLot(parts: Pick<Parts, "library" | "files">, { stockSheet }: Input<"lot.match">): LotMatch {
  return matching(parts, stockSheet).match;
}

/**
 * Gives the named recordings their rows, in the place of whatever sheet they came with; they are analysed again behind the reply. A row
 * that stands twice, or cannot be read, is never taken.
 */
export function takeLot(parts: Parts, analyst: Analyst, { stockSheet, recordingIds }: Input<"lot.take">): { recordings: number } {
  const { library } = parts;
  const { columns, taken } = matching(parts, stockSheet);
  const unmatched = recordingIds.find((id) => !taken.has(id));
  if (unmatched !== undefined) {
    throw new Refusal("lot-unmatched", `No row of the sheet goes with recording ${unmatched}. Match the sheet again; nothing was changed.`);
  }
  const ids = [...new Set(recordingIds)];
  library.transaction(() => {
    for (const id of ids) {
      const { fields, meanings } = taken.get(id) as TakenRow;
      library.recordings.setStockSheet(id, { fields, form: columns.form, meanings });
      library.proposals.markOutdated(id);
    }
  });
  for (const recordingId of ids) parts.events.publish("library.changed", { recordingId });
  if (ids.length > 0) analyst.catchUpSoon();
  parts.files.letGo([stockSheet]);
  return { recordings: ids.length };
}

function matching({ library, files }: Pick<Parts, "library" | "files">, stockSheet: string): Matching {
  const file = files.find(stockSheet);
  const table = readTable(readOffered(file), file.name);
  const columns = judgeColumns(table, library.sheetChoices);
  const column = columns.columns.find(({ field }) => field === "stock-number");
  if (!column) {
    throw sheetRefusal(file.name, 1, "no column is known to hold stock numbers. Name it “Stock Number”, or choose it among the columns.");
  }
  const at = table.names.indexOf(column.name);
  const rowsByNumber = Map.groupBy(
    table.rows.map((row) => ({ row, written: (row.cells[at] ?? "").trim() })),
    ({ written }) => bareStockNumber(written),
  );
  const twice = [...rowsByNumber].filter(([number, rows]) => number !== "" && rows.length > 1);
  const taken = new Map<string, TakenRow>();
  const match: LotMatch = {
    rows: table.rows.length,
    matched: [],
    rowsLeft: [],
    recordingsLeft: [],
    twice: twice.map(([, rows]) => ({ stockNumber: rows[0]?.written ?? "", lines: rows.map(({ row }) => row.lineOf(at)) })),
    unreadable: [],
  };
  const gone = new Set<string>();
  for (const recording of library.recordings.all()) {
    const number = bareStockNumber(recording.stockNumber);
    const shared = { recordingId: recording.id, title: recording.title, stockNumber: recording.stockNumber };
    const rows = number === "" ? [] : (rowsByNumber.get(number) ?? []);
    if (rows.length > 0) gone.add(number);
    const [found] = rows;
    if (!found || rows.length > 1) {
      match.recordingsLeft.push({ ...shared, why: whyLeft(number, rows.length) });
      continue;
    }
    try {
      const one = takeOne(table, columns, found.row);
      taken.set(recording.id, one);
      match.matched.push({ ...shared, line: found.row.lineOf(at), ...comparison(recording, one) });
    } catch (failure) {
      if (!(failure instanceof Refusal)) throw failure;
      match.unreadable.push({ recordingId: recording.id, title: recording.title, why: failure.message });
    }
  }
  for (const [number, rows] of rowsByNumber) {
    if (gone.has(number) && number !== "") continue;
    for (const { row, written } of rows) match.rowsLeft.push({ line: row.lineOf(at), stockNumber: written, cells: words(row) });
  }
  match.rowsLeft.sort((a, b) => a.line - b.line);
  return { match, columns, taken };
}

/** The row alone, so that its number need not be looked for again. */
function takeOne(table: SheetTable, columns: SheetColumns, row: SheetRow): TakenRow {
  return takeRow({ ...table, rows: [row] }, columns, "");
}

function whyLeft(number: string, rows: number): string {
  if (number === "") return "It has no stock number. Give it one under “Describe…”.";
  return rows > 1 ? "Its number stands in more than one row." : "No row has its number.";
}

function comparison({ stockSheet }: RecordingRow, { fields }: TakenRow): Pick<LotMatch["matched"][number], "standing" | "changes"> {
  if (stockSheet === null) return { standing: "first", changes: [] };
  const names = [...new Set([...Object.keys(stockSheet), ...Object.keys(fields)])];
  const changes = names
    .map((field) => ({ field, before: stockSheet[field] ?? null, after: fields[field] ?? null }))
    .filter(({ before, after }) => before !== after);
  return { standing: changes.length === 0 ? "same" : "other", changes };
}

function words({ cells }: SheetRow): string {
  const written = cells.filter((cell) => cell !== "").join(", ");
  return written.length > longestRowWords ? `${written.slice(0, longestRowWords)}…` : written;
}
