import type Database from "better-sqlite3";
import type {
  CaptionCorrection,
  Finding,
  RecordingDescription,
  Ruling,
  SeenNote,
  TrustedCaption,
  ZoneSpan,
} from "../../shared-types/index.ts";

/** One row as it was and as it became; null where there was or is none. Rulings and notes are never without an `after`. */
export type RowChange =
  | { readonly table: "zone_spans"; readonly id: string; readonly before: ZoneSpan | null; readonly after: ZoneSpan | null }
  | { readonly table: "findings"; readonly id: string; readonly before: Finding | null; readonly after: Finding | null }
  | {
      readonly table: "trusted_captions";
      /** The caption's index. */
      readonly id: string;
      readonly before: TrustedCaption | null;
      readonly after: TrustedCaption | null;
    }
  | {
      readonly table: "caption_corrections";
      /** The caption's index. */
      readonly id: string;
      readonly before: CaptionCorrection | null;
      readonly after: CaptionCorrection | null;
    }
  | {
      readonly table: "recordings";
      readonly id: string;
      readonly before: RecordingDescription | null;
      readonly after: RecordingDescription | null;
    }
  | { readonly table: "rulings"; readonly id: string; readonly before: Ruling; readonly after: Ruling }
  | { readonly table: "seen_notes"; readonly id: string; readonly before: SeenNote; readonly after: SeenNote };

export interface Edit {
  readonly sequence: number;
  readonly label: string;
  readonly initials: string;
  /** ISO 8601, UTC. */
  readonly at: string;
  readonly state: "done" | "undone" | "dropped";
  readonly changes: readonly RowChange[];
}

/** An edit with who last undid or redid it, and when; without its place in the library, which is another in each. */
export interface KeptEdit extends Omit<Edit, "sequence"> {
  readonly movedBy: string | null;
  readonly movedAt: string | null;
}

type Row = Omit<Edit, "changes"> & { changes: string };

export function editsTable(database: Database.Database) {
  const columns = "sequence, label, initials, at, state, changes";
  const insert = database.prepare("INSERT INTO edits (recording_id, label, initials, at, changes) VALUES (?, ?, ?, ?, ?)");
  const drop = database.prepare("UPDATE edits SET state = 'dropped' WHERE recording_id = ? AND state = 'undone'");
  const move = database.prepare("UPDATE edits SET state = ?, moved_by = ?, moved_at = ? WHERE sequence = ?");
  const lastDone = database.prepare<[string], Row>(
    `SELECT ${columns} FROM edits WHERE recording_id = ? AND state = 'done' ORDER BY sequence DESC LIMIT 1`,
  );
  const firstUndone = database.prepare<[string], Row>(
    `SELECT ${columns} FROM edits WHERE recording_id = ? AND state = 'undone' ORDER BY sequence LIMIT 1`,
  );
  const all = database.prepare<[string], Row>(`SELECT ${columns} FROM edits WHERE recording_id = ? ORDER BY sequence`);
  const history = database.prepare<[string], Omit<KeptEdit, "changes"> & { changes: string }>(
    `SELECT label, initials, at, state, moved_by AS movedBy, moved_at AS movedAt, changes FROM edits WHERE recording_id = ? ORDER BY sequence`,
  );
  const restore = database.prepare(
    `INSERT INTO edits (recording_id, label, initials, at, changes, state, moved_by, moved_at)
     VALUES (@recordingId, @label, @initials, @at, @changes, @state, @movedBy, @movedAt)`,
  );

  return {
    /** Adds an edit that was just made. What had been undone can no longer be redone, and is kept as history. */
    add(recordingId: string, edit: Pick<Edit, "label" | "initials" | "at" | "changes">): void {
      drop.run(recordingId);
      insert.run(recordingId, edit.label, edit.initials, edit.at, JSON.stringify(edit.changes));
    },
    /** The edit that undo would take back. */
    lastDone: (recordingId: string): Edit | undefined => read(lastDone.get(recordingId)),
    /** The edit that redo would do again. */
    firstUndone: (recordingId: string): Edit | undefined => read(firstUndone.get(recordingId)),
    move: (sequence: number, state: "done" | "undone", initials: string, at: string): void => {
      move.run(state, initials, at, sequence);
    },
    /** The whole history, dropped edits too, oldest first. */
    of: (recordingId: string): Edit[] => all.all(recordingId).flatMap((row) => read(row) ?? []),
    /** The whole history, oldest first, as another library can take it. */
    history: (recordingId: string): KeptEdit[] =>
      history.all(recordingId).map((row) => ({ ...row, changes: JSON.parse(row.changes) as RowChange[] })),
    /** Puts a history from another library behind a recording that has none here. */
    restore: (recordingId: string, edits: readonly KeptEdit[]): void => {
      for (const edit of edits) restore.run({ ...edit, recordingId, changes: JSON.stringify(edit.changes) });
    },
  };
}

function read(row: Row | undefined): Edit | undefined {
  return row && { ...row, changes: JSON.parse(row.changes) as RowChange[] };
}
