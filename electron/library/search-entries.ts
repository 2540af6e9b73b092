import type Database from "better-sqlite3";
import type { SearchHit, ZoneName } from "../../shared-types/index.ts";
import { searchVocabulary } from "./search-vocabulary.ts";

export type SearchKind = SearchHit["kind"];

/** A place that a search can lead to. */
export interface SearchEntry {
  readonly kind: SearchKind;
  /** Claim id, finding id, caption index or zone name. */
  readonly reference: string;
  readonly start: number;
  readonly end: number;
  readonly zone: ZoneName;
  /** What the person reads. */
  readonly said: string;
  /** What else it may be found by. */
  readonly terms: string;
}

export interface FoundEntry extends SearchEntry {
  readonly recordingId: string;
  readonly recordingTitle: string;
  readonly stockNumber: string;
  /** True where a claim takes part in a conflict that is open now. */
  readonly disputed: boolean;
}

type Row = Omit<FoundEntry, "disputed"> & { disputed: number };

export function searchTable(database: Database.Database) {
  const insert = database.prepare(
    `INSERT INTO search_entries (recording_id, kind, reference, start, "end", zone, said, terms, recording)
     VALUES (@recordingId, @kind, @reference, @start, @end, @zone, @said, @terms, @recording)`,
  );
  const remove = database.prepare("DELETE FROM search_entries WHERE recording_id = ? AND kind = ?");
  const rename = database.prepare("UPDATE search_entries SET recording = ? WHERE recording_id = ?");
  // bm25 weights: the words read, the other terms, and nothing for the recording's names, so that a stock number alone gives the
  // recording in order of time. SQLite's rank is smaller for the better match.
  const find = database.prepare<[{ match: string; limit: number; recordingId: string | null }], Row>(
    `SELECT search_entries.recording_id AS recordingId, recordings.title AS recordingTitle, recordings.stock_number AS stockNumber,
       kind, reference, start, "end", zone, search_entries.said, search_entries.terms,
       kind = 'claim' AND EXISTS (
         SELECT 1 FROM conflict_claims
         LEFT JOIN rulings ON rulings.recording_id = conflict_claims.recording_id
           AND rulings.conflict_key = conflict_claims.conflict_key AND superseded_by IS NULL
         WHERE conflict_claims.recording_id = search_entries.recording_id AND claim_id = reference
           AND (decision IS NULL OR decision = 'look-at-vehicle')
       ) AS disputed
     FROM search_index JOIN search_entries ON entry = search_index.rowid JOIN recordings ON recordings.id = search_entries.recording_id
     WHERE search_index MATCH @match AND (@recordingId IS NULL OR search_entries.recording_id = @recordingId)
     ORDER BY CASE kind WHEN 'zone' THEN 0 WHEN 'claim' THEN 1 WHEN 'finding' THEN 1 ELSE 2 END,
       bm25(search_index, 4.0, 6.0, 0.0), recordings.imported_at DESC, start
     LIMIT @limit`,
  );
  const findAny = database.prepare("SELECT 1 FROM search_index WHERE search_index MATCH ? LIMIT 1").pluck();
  return {
    vocabulary: searchVocabulary(database),
    /** Puts entries in the place of all former ones of these kinds. `names`: stock number, title and vehicle. */
    replace(recordingId: string, names: string, kinds: readonly SearchKind[], entries: readonly SearchEntry[]): void {
      for (const kind of kinds) remove.run(recordingId, kind);
      for (const entry of entries) insert.run({ ...entry, recordingId, recording: names });
    },
    rename: (recordingId: string, names: string): void => {
      rename.run(names, recordingId);
    },
    /** Whether an FTS5 query finds anything at all. */
    findsAny: (match: string): boolean => findAny.get(match) !== undefined,
    /**
     * @param match an FTS5 query; the caller has quoted every word.
     * @param recordingId the one recording that is asked of; null for all.
     */
    find: (match: string, limit: number, recordingId: string | null): FoundEntry[] =>
      find.all({ match, limit, recordingId }).map((row) => ({ ...row, disputed: row.disputed === 1 })),
  };
}
