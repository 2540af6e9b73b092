import type Database from "better-sqlite3";

/** Tables whose rows have ids of their own, not only within their recording. */
const ownedTables = ["zone_spans", "findings", "rulings", "seen_notes"] as const;
export type OwnedTable = (typeof ownedTables)[number];

export function isOwnedTable(table: string): table is OwnedTable {
  return (ownedTables as readonly string[]).includes(table);
}

/** Whose a row is: what comes from outside must not reach into another recording by naming a row of it. */
export function rowOwners(database: Database.Database) {
  const select = (table: OwnedTable) => database.prepare<[string], string>(`SELECT recording_id FROM ${table} WHERE id = ?`).pluck();
  const owners = {
    zone_spans: select("zone_spans"),
    findings: select("findings"),
    rulings: select("rulings"),
    seen_notes: select("seen_notes"),
  };
  return {
    /** The recording that a row belongs to; undefined where there is no such row. */
    ownerOf: (table: OwnedTable, id: string): string | undefined => owners[table].get(id),
  };
}
