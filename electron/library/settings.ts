import type Database from "better-sqlite3";

export function settingsTable(database: Database.Database) {
  const put = database.prepare("INSERT INTO settings (name, value) VALUES (?, ?) ON CONFLICT (name) DO UPDATE SET value = excluded.value");
  const select = database.prepare<[string], string>("SELECT value FROM settings WHERE name = ?").pluck();
  return {
    put: (name: "initials" | "demo", value: string): void => {
      put.run(name, value);
    },
    get: (name: "initials" | "demo"): string | undefined => select.get(name),
  };
}
