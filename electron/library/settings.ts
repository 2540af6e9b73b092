import type Database from "better-sqlite3";

/**
 * `bundlesSeen`, `bundleFolder`: bundles that were written or brought in, and the folder they were last kept in. `indexTemplates`: texts
 * with fields, as JSON. `searchIndex`: the form of the search entries, see index-for-search.ts. `demo`: the id under which the demo came in.
 * `firstMinutes`: "done" once they were ended. `toldVersion`: the version whose news were told. `updateAddress`: "" where none is asked.
 * `playing`: volume, mute and rate of the films, as JSON.
 */
export type SettingName =
  | "initials"
  | "demo"
  | "searchIndex"
  | "bundlesSeen"
  | "bundleFolder"
  | "indexTemplates"
  | "firstMinutes"
  | "toldVersion"
  | "updateAddress"
  | "playing";

export function settingsTable(database: Database.Database) {
  const put = database.prepare("INSERT INTO settings (name, value) VALUES (?, ?) ON CONFLICT (name) DO UPDATE SET value = excluded.value");
  const select = database.prepare<[string], string>("SELECT value FROM settings WHERE name = ?").pluck();
  return {
    put: (name: SettingName, value: string): void => {
      put.run(name, value);
    },
    get: (name: SettingName): string | undefined => select.get(name),
  };
}
