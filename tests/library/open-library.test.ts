import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import Database from "better-sqlite3";
import { describe, expect, test } from "vitest";
import { migrate, readMigrations } from "../../electron/library/migrate.ts";
import { openLibrary } from "../../electron/library/open-library.ts";
import { temporaryFolder } from "../support/builders/temporary-folder.ts";

function problemOf(work: () => unknown): unknown {
  try {
    work();
  } catch (failure) {
    return (failure as { problem?: unknown }).problem;
  }
  return undefined;
}

describe("opening a library", () => {
  test("makes folders and file, and can be opened again", () => {
    const file = join(temporaryFolder(), "a", "b", "library.sqlite");
    const first = openLibrary(file);
    first.settings.put("initials", "AB");
    first.close();
    const second = openLibrary(file);
    expect([second.settings.get("initials"), second.integrity()]).toEqual(["AB", "ok"]);
    second.close();
  });

  test("writes ahead, on disk before the reply, with foreign keys held", () => {
    const file = join(temporaryFolder(), "library.sqlite");
    openLibrary(file).close();
    const database = new Database(file);
    expect(database.pragma("journal_mode", { simple: true })).toBe("wal");
    const tables = database.prepare("SELECT name FROM sqlite_schema WHERE type = 'table'").pluck().all();
    expect(tables).toEqual(
      expect.arrayContaining(["recordings", "captions", "zone_spans", "findings", "claims", "repairs", "conflicts", "rulings", "edits"]),
    );
    expect(database.pragma("foreign_key_check")).toEqual([]);
    database.close();
  });

  test("a library of a newer program is refused and left as it is", () => {
    const file = join(temporaryFolder(), "library.sqlite");
    openLibrary(file).close();
    const database = new Database(file);
    database.pragma("user_version = 99");
    database.close();
    const before = readFileSync(file);
    expect(problemOf(() => openLibrary(file))).toMatchObject({
      code: "library-newer",
      file,
      message: expect.stringMatching(
        /newer Roundwalk \(library form 99; this program knows \d+\).*Update the program.*Nothing was changed/,
      ),
    });
    expect(readFileSync(file).equals(before)).toBe(true);
  });

  test("another program's database, a text and a folder are refused and left as they are", () => {
    const folder = temporaryFolder();
    const foreign = join(folder, "foreign.sqlite");
    const database = new Database(foreign);
    database.exec("CREATE TABLE accounts (id INTEGER)");
    database.close();
    const text = join(folder, "notes.txt");
    writeFileSync(text, "not a library, but long enough to have a header");
    const directory = join(folder, "folder");
    mkdirSync(directory);
    expect(problemOf(() => openLibrary(foreign))).toMatchObject({ code: "library-foreign", file: foreign });
    expect(problemOf(() => openLibrary(text))).toMatchObject({ code: "library-foreign", file: text });
    expect(problemOf(() => openLibrary(directory))).toMatchObject({ code: "library-unusable" });
    expect(readFileSync(text, "utf8")).toMatch(/^not a library/);
    const still = new Database(foreign);
    expect(still.prepare("SELECT name FROM sqlite_schema").pluck().all()).toEqual(["accounts"]);
    still.close();
  });

  test("a damaged library is named as such", () => {
    const file = join(temporaryFolder(), "library.sqlite");
    openLibrary(file).close();
    const bytes = readFileSync(file);
    bytes.fill(0xab, 100, 4096);
    writeFileSync(file, bytes);
    expect(problemOf(() => openLibrary(file))).toMatchObject({
      code: "library-damaged",
      message: expect.stringContaining("Put back a copy"),
    });
  });
});

describe("migrations", () => {
  test("are numbered from 1 without a gap", () => {
    expect(readMigrations().map(({ number }) => number)).toEqual(readMigrations().map((_, position) => position + 1));
    const folder = temporaryFolder();
    writeFileSync(join(folder, "0001-a.sql"), "");
    writeFileSync(join(folder, "0003-c.sql"), "");
    expect(() => readMigrations(folder)).toThrow(/migration 2 is missing/);
  });

  test("from every earlier form lead to the same tables as a new library has, rows kept, with a copy of what was", () => {
    const all = readMigrations();
    const newest = join(temporaryFolder(), "newest.sqlite");
    openLibrary(newest).close();
    const schemaOf = (file: string) => {
      const database = new Database(file, { readonly: true });
      const schema = database.prepare("SELECT name, sql FROM sqlite_schema ORDER BY name").all();
      database.close();
      return schema;
    };
    for (let form = 1; form < all.length; form += 1) {
      const file = join(temporaryFolder(), "library.sqlite");
      const database = new Database(file);
      migrate(database, file, all.slice(0, form));
      database.prepare("INSERT INTO settings VALUES ('initials', 'AB')").run();
      database.close();
      const library = openLibrary(file);
      expect(library.settings.get("initials")).toBe("AB");
      library.close();
      expect(schemaOf(file)).toEqual(schemaOf(newest));
      expect(existsSync(`${file}.before-${all.length}`)).toBe(true);
    }
  });

  test("that fail leave the library in its former form", () => {
    const file = join(temporaryFolder(), "library.sqlite");
    const database = new Database(file);
    const all = readMigrations();
    migrate(database, file, all);
    const broken = [...all, { number: all.length + 1, name: "broken", sql: "CREATE TABLE half (id); INSERT INTO nowhere VALUES (1);" }];
    expect(() => migrate(database, file, broken)).toThrow(/nowhere/);
    expect(database.pragma("user_version", { simple: true })).toBe(all.length);
    expect(database.prepare("SELECT count(*) FROM sqlite_schema WHERE name = 'half'").pluck().get()).toBe(0);
    database.close();
  });
});
