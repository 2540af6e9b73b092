import type Database from "better-sqlite3";
import type { SheetField } from "../../shared-types/index.ts";

/** What people chose for the columns of sheets, by form and normalised name; null is left out. */
export type SheetChoices = ReadonlyMap<string, SheetField | null>;

interface Row {
  readonly name: string;
  readonly field: SheetField | null;
}

export function sheetChoicesTable(database: Database.Database) {
  const put = database.prepare(
    `INSERT INTO stock_sheet_choices (form, name, field, chosen_at) VALUES (?, ?, ?, ?)
     ON CONFLICT (form, name) DO UPDATE SET field = excluded.field, chosen_at = excluded.chosen_at`,
  );
  const select = database.prepare<[string], Row>("SELECT name, field FROM stock_sheet_choices WHERE form = ?");
  const selectLatest = database
    .prepare<[string], SheetField | null>("SELECT field FROM stock_sheet_choices WHERE name = ? ORDER BY chosen_at DESC, form LIMIT 1")
    .pluck();
  return {
    put: (form: string, name: string, field: SheetField | null, at: string): void => {
      put.run(form, name, field, at);
    },
    of: (form: string): SheetChoices => new Map(select.all(form).map(({ name, field }) => [name, field])),
    /** What a column of this name was last chosen to be in a sheet of any form; undefined where it never was. */
    latest: (name: string): SheetField | null | undefined => selectLatest.get(name),
  };
}
