import {
  fieldNamed,
  headerName,
  type Input,
  type Output,
  type SheetColumn,
  type SheetField,
  type SheetMeanings,
  sheetFieldRows,
} from "../../shared-types/index.ts";
import type { RecordingRow } from "../library/recordings.ts";
import type { Analyst } from "./analyse-recording.ts";
import type { Parts } from "./parts.ts";
import { readOffered } from "./read-offered.ts";
import { findRecording } from "./recording-detail.ts";
import { Refusal } from "./refusals.ts";
import { formOf, judgeColumns } from "./stock-sheet/judge-columns.ts";
import { readTable } from "./stock-sheet/read-table.ts";

/** The columns of a sheet that is about to be imported, with what is asked of them. Nothing is written. */
export function lookAtSheet({ library, files }: Parts, { stockSheet }: Input<"stockSheet.look">): Output<"stockSheet.look"> {
  const file = files.find(stockSheet);
  return judgeColumns(readTable(readOffered(file), file.name), library.sheetChoices);
}

/** The columns of the sheet that a recording came with, as they are read now. */
export function columnsOfRecording(parts: Parts, { id }: Input<"stockSheet.columns">): Output<"stockSheet.columns"> {
  const row = findRecording(parts, id);
  if (row.stockSheet === null)
    throw new Refusal("stock-sheet-missing", `“${row.title}” has no stock sheet. Import the recording again with one.`);
  const names = Object.keys(row.stockSheet);
  const judged = judgeColumns(
    { file: row.title, names, rows: [{ cells: Object.values(row.stockSheet), lineOf: () => 1 }], pairs: true },
    { of: () => parts.library.sheetChoices.of(formOfRow(row)), latest: parts.library.sheetChoices.latest },
  );
  const { sheetMeanings } = row;
  const columns = judged.columns.map(
    (column): SheetColumn =>
      sheetMeanings === null || column.standing === "chosen" ? column : { ...column, field: sheetMeanings[column.name] ?? null },
  );
  return { ...judged, columns, form: formOfRow(row) };
}

/**
 * Remembers what the columns of a form mean. Recordings that came with such a sheet are read by it from now on: they are analysed again
 * behind the reply, and at the next start where that is cut short.
 */
export function mapSheet(parts: Parts, analyst: Analyst, { form, columns }: Input<"stockSheet.map">): Output<"stockSheet.map"> {
  const { library } = parts;
  const choices = new Map(columns.map(({ name, field }) => [headerName(name), field]));
  refuseTwice(columns);
  const foreign = columns.find(({ name }) => !form.split("|").includes(headerName(name)));
  if (foreign) {
    throw new Refusal("sheet-column-unknown", `The sheet has no column “${foreign.name}”. Read the sheet again, and choose anew.`);
  }
  const changed = library.transaction(() => {
    const at = parts.now();
    for (const [name, field] of choices) library.sheetChoices.put(form, name, field, at);
    return library.recordings.all().filter((row) => remap(parts, row, form, choices));
  });
  for (const { id } of changed) parts.events.publish("library.changed", { recordingId: id });
  if (changed.length > 0) analyst.catchUpSoon();
  return { recordings: changed.length };
}

/** One fact from two columns would be held against the walk twice, and may differ. */
function refuseTwice(columns: Input<"stockSheet.map">["columns"]): void {
  const taken = new Map<SheetField, string>();
  for (const { name, field } of columns) {
    if (field === null) continue;
    const first = taken.get(field);
    if (first !== undefined) {
      throw new Refusal(
        "sheet-field-twice",
        `“${first}” and “${name}” are both set to “${sheetFieldRows[field].label}”. Leave one of them out.`,
      );
    }
    taken.set(field, name);
  }
}

/** Whether the recording came with a sheet of this form and now reads it otherwise. */
function remap({ library }: Parts, row: RecordingRow, form: string, choices: ReadonlyMap<string, SheetField | null>): boolean {
  if (row.stockSheet === null || formOfRow(row) !== form) return false;
  const before: SheetMeanings | null = row.sheetMeanings;
  const after: SheetMeanings = Object.fromEntries(
    Object.keys(row.stockSheet).map((field) => {
      const choice = choices.get(headerName(field));
      const unasked = before === null ? (fieldNamed(field) ?? null) : (before[field] ?? null);
      return [field, choice === undefined ? unasked : choice];
    }),
  );
  if (before !== null && Object.keys(after).every((field) => after[field] === (before[field] ?? null))) return false;
  library.recordings.setSheetMeanings(row.id, form, after);
  library.proposals.markOutdated(row.id);
  return true;
}

/** A sheet that came in before forms were kept has the form of the fields that it filled. */
function formOfRow({ sheetForm, stockSheet }: RecordingRow): string {
  return sheetForm ?? formOf(Object.keys(stockSheet ?? {}));
}
