import type Database from "better-sqlite3";

/** How a field is kept: as it is, as JSON text, or as 0 and 1. */
type Keeping = "plain" | "json" | "boolean";

/** For each field the column's name, and the way of keeping where it is not "plain". */
export type RowMap<Item> = { readonly [Field in keyof Item]-?: string | readonly [string, Keeping] };

interface Column {
  readonly field: string;
  readonly column: string;
  readonly keeping: Keeping;
}

/** A table that holds ordered lists, one for each recording. Table and column names come from the program, never from outside. */
export function listTable<Item extends object>(database: Database.Database, name: string, map: RowMap<Item>) {
  const columns: Column[] = Object.entries<string | readonly [string, Keeping]>(map).map(([field, kept]) =>
    typeof kept === "string" ? { field, column: kept, keeping: "plain" } : { field, column: kept[0], keeping: kept[1] },
  );
  const names = columns.map(({ column }) => `"${column}"`).join(", ");
  const insert = database.prepare(
    `INSERT INTO ${name} (recording_id, position, ${names}) VALUES (?, ?, ${columns.map(() => "?").join(", ")})`,
  );
  const select = database.prepare<[string], unknown[]>(`SELECT ${names} FROM ${name} WHERE recording_id = ? ORDER BY position`).raw();

  return {
    addAll(recordingId: string, items: readonly Item[]): void {
      for (const [position, item] of items.entries()) {
        const values = columns.map(({ field, keeping }) => kept(item[field as keyof Item], keeping));
        insert.run(recordingId, position, ...values);
      }
    },
    of: (recordingId: string): Item[] =>
      select
        .all(recordingId)
        .map((row) => Object.fromEntries(columns.map(({ field, keeping }, place) => [field, given(row[place], keeping)])) as Item),
  };
}

function kept(value: unknown, keeping: Keeping): unknown {
  if (keeping === "json") return JSON.stringify(value);
  return keeping === "boolean" ? Number(value) : value;
}

function given(value: unknown, keeping: Keeping): unknown {
  if (keeping === "json") return JSON.parse(value as string);
  return keeping === "boolean" ? value === 1 : value;
}
