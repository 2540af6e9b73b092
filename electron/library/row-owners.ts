import type Database from "better-sqlite3";

/** Tables whose rows have ids of their own, not only within their recording. */
export type OwnedTable = "zone_spans" | "findings" | "rulings";

/** Whose a row is: what comes from outside must not reach into another recording by naming a row of it. */
export function rowOwners(database: Database.Database) {
  const select = (table: OwnedTable) => database.prepare<[string], string>(`SELECT recording_id FROM ${table} WHERE id = ?`).pluck();
  const owners = { zone_spans: select("zone_spans"), findings: select("findings"), rulings: select("rulings") };
  return {
    /** The recording that a row belongs to; undefined where there is no such row. */
    ownerOf: (table: OwnedTable, id: string): string | undefined => owners[table].get(id),
  };
}
