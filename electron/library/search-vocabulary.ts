import type Database from "better-sqlite3";

/** A word of the search index and in how many places it stands. */
export interface IndexedWord {
  readonly word: string;
  readonly places: number;
}

/** The words that a search can find, as SQLite's index holds them: lower case, without marks over letters. */
export function searchVocabulary(database: Database.Database) {
  // A view on the index that is there, made anew with every opening: nothing is kept on disk for it.
  database.exec("CREATE VIRTUAL TABLE IF NOT EXISTS temp.search_vocabulary USING fts5vocab (main, search_index, row)");
  const all = database.prepare<[], IndexedWord>("SELECT term AS word, doc AS places FROM temp.search_vocabulary");
  const own = database.prepare("SELECT total_changes()").pluck();
  return {
    all: (): IndexedWord[] => all.all(),
    /** Another one after every write to the library, by this program or another; what was kept under the same one still holds. */
    stamp: (): string => `${own.get()} ${database.pragma("data_version", { simple: true })}`,
  };
}
