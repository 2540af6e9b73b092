import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type Database from "better-sqlite3";
import { Refusal } from "./refusal.ts";

/** "RWLK" as SQLite's application id, so that another program's database is not taken for a library. */
const applicationId = 0x52574c4b;

interface Migration {
  readonly number: number;
  readonly name: string;
  readonly sql: string;
}

/** Migrations in order; numbers run from 1 without gap, which a damaged installation would break. */
export function readMigrations(folder = join(import.meta.dirname, "migrations")): Migration[] {
  const names = readdirSync(folder)
    .filter((name) => /^\d{4}-.+\.sql$/.test(name))
    .sort();
  return names.map((name, position) => {
    const number = Number(name.slice(0, 4));
    if (number !== position + 1) throw new Error(`${join(folder, name)}: migration ${position + 1} is missing; install the program again.`);
    return { number, name, sql: readFileSync(join(folder, name), "utf8") };
  });
}

/**
 * Brings a library to the newest form. All pending migrations run in one transaction: it ends migrated or as it was.
 * A library that holds something is copied beside itself first (`library.sqlite.before-3`).
 * @throws Refusal when the file is another program's database or a newer Roundwalk wrote it; the file is then untouched.
 */
export function migrate(database: Database.Database, file: string, migrations: readonly Migration[] = readMigrations()): void {
  const version = database.pragma("user_version", { simple: true }) as number;
  const id = database.pragma("application_id", { simple: true }) as number;
  const tables = database.prepare("SELECT count(*) FROM sqlite_schema").pluck().get() as number;
  if (id !== applicationId && (tables > 0 || version > 0)) {
    throw new Refusal("library-foreign", `${file} is another program's database. Name another file with --library.`, { file });
  }
  if (version > migrations.length) {
    throw new Refusal(
      "library-newer",
      `${file} was written by a newer Roundwalk (library form ${version}; this program knows ${migrations.length}). ` +
        "Update the program, or name another file with --library. Nothing was changed.",
      { file },
    );
  }
  const pending = migrations.slice(version);
  if (pending.length === 0) return;
  if (version > 0 && file !== ":memory:") {
    const copy = `${file}.before-${migrations.length}`;
    if (!existsSync(copy)) database.prepare("VACUUM INTO ?").run(copy);
  }
  database
    .transaction(() => {
      for (const migration of pending) database.exec(migration.sql);
      database.pragma(`application_id = ${applicationId}`);
      database.pragma(`user_version = ${migrations.length}`);
    })
    .immediate();
}
