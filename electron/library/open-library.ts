import { closeSync, existsSync, mkdirSync, openSync, readSync } from "node:fs";
import { dirname, resolve } from "node:path";
import Database from "better-sqlite3";
import { captionCorrectionsTable } from "./caption-corrections.ts";
import { captionsTable } from "./captions.ts";
import { editsTable } from "./edits.ts";
import { findingsTable } from "./findings.ts";
import { migrate } from "./migrate.ts";
import { proposalTables } from "./proposals.ts";
import { publicationsTable } from "./publications.ts";
import { recordingsTable } from "./recordings.ts";
import { Refusal } from "./refusal.ts";
import { rowOwners } from "./row-owners.ts";
import { rulingsTable } from "./rulings.ts";
import { searchTable } from "./search-entries.ts";
import { seenNotesTable } from "./seen-notes.ts";
import { settingsTable } from "./settings.ts";
import { sheetChoicesTable } from "./sheet-choices.ts";
import { stillsTable } from "./stills.ts";
import { trustedCaptionsTable } from "./trusted-captions.ts";
import { videoFingerprintsTable } from "./video-fingerprints.ts";
import { zoneSpansTable } from "./zone-spans.ts";

/** All recordings on this machine. One process at a time writes; readers never wait (WAL). */
export type Library = ReturnType<typeof openLibrary>;

const sqliteSignature = "SQLite format 3\0";

/**
 * Opens a library, making it where there is none.
 * @param file path of the SQLite file; its folder also takes `media/` and `exports/`. ":memory:" is for tests.
 * @throws Refusal when the file is no library, is a newer program's, or cannot be written.
 */
export function openLibrary(file: string) {
  const place = file === ":memory:" ? file : resolve(file);
  const database = openDatabase(place);
  try {
    database.pragma("journal_mode = WAL");
    // Every edit is on disk before the screen shows it, also when the power goes.
    database.pragma("synchronous = FULL");
    database.pragma("foreign_keys = ON");
    database.pragma("busy_timeout = 3000");
    migrate(database, place);
  } catch (failure) {
    database.close();
    throw explained(failure, place);
  }
  return {
    file: place,
    folder: dirname(place),
    recordings: recordingsTable(database),
    captions: captionsTable(database),
    proposals: proposalTables(database),
    zoneSpans: zoneSpansTable(database),
    findings: findingsTable(database),
    rulings: rulingsTable(database),
    seenNotes: seenNotesTable(database),
    sheetChoices: sheetChoicesTable(database),
    trustedCaptions: trustedCaptionsTable(database),
    captionCorrections: captionCorrectionsTable(database),
    stills: stillsTable(database),
    videoFingerprints: videoFingerprintsTable(database),
    publications: publicationsTable(database),
    edits: editsTable(database),
    rows: rowOwners(database),
    search: searchTable(database),
    settings: settingsTable(database),
    /** Runs `work` whole or not at all. It must not wait for anything. */
    transaction: <Result>(work: () => Result): Result => database.transaction(work).immediate(),
    /** A number that is another one after somebody else, over a connection of his own, has written into the file. */
    changesElsewhere: (): number => database.pragma("data_version", { simple: true }) as number,
    /** What SQLite itself says about the file; "ok" when all is well. */
    integrity: (): string => database.pragma("integrity_check", { simple: true }) as string,
    close: () => {
      if (database.open) database.close();
    },
  };
}

function openDatabase(file: string): Database.Database {
  try {
    if (file !== ":memory:") {
      // Other users of the machine have no business in a folder that is made for the library.
      mkdirSync(dirname(file), { recursive: true, mode: 0o700 });
      refuseOtherFiles(file);
    }
    return new Database(file);
  } catch (failure) {
    throw explained(failure, file);
  }
}

/** A picture or a text named by mistake must not reach SQLite, which would only say that it is no database. */
function refuseOtherFiles(file: string): void {
  if (!existsSync(file)) return;
  const start = Buffer.alloc(sqliteSignature.length);
  const handle = openSync(file, "r");
  const length = readSync(handle, start);
  closeSync(handle);
  if (length > 0 && start.toString("latin1") !== sqliteSignature) {
    throw new Refusal("library-foreign", `${file} is not a Roundwalk library. Name another file with --library.`, { file });
  }
}

function explained(failure: unknown, file: string): Error {
  if (failure instanceof Refusal) return failure;
  const code = (failure as { code?: unknown }).code;
  const reason = failure instanceof Error ? failure.message : String(failure);
  if (code === "SQLITE_CORRUPT" || code === "SQLITE_NOTADB") {
    return new Refusal("library-damaged", `${file} is damaged (${reason}). Put back a copy of it, or name another file with --library.`, {
      file,
    });
  }
  if (code === "SQLITE_BUSY") {
    return new Refusal("library-busy", `${file} is in use by another Roundwalk. Close that one, or name another file with --library.`, {
      file,
    });
  }
  return new Refusal(
    "library-unusable",
    `${file} cannot be opened (${reason}). Check the folder's permissions, or name another file with --library.`,
    { file },
  );
}
