import type { Finding, RecordingDescription, RecordingDetail, Ruling, SeenNote, ZoneSpan } from "../../shared-types/index.ts";
import type { RowChange } from "../library/edits.ts";
import { indexClaims, indexPeoplesWork, indexRecording, recordingNames } from "./index-for-search.ts";
import type { Parts } from "./parts.ts";
import { recordingDetail } from "./recording-detail.ts";
import { Refusal } from "./refusals.ts";

/** Makes a change, keeps it for undo, and brings the search up to date: all of it on disk, or none of it. */
export function recordEdit(
  parts: Parts,
  recordingId: string,
  edit: { readonly label: string; readonly initials: string; readonly changes: readonly RowChange[] },
): RecordingDetail {
  if (edit.changes.length > 0) {
    parts.library.transaction(() => {
      apply(parts, recordingId, edit.changes, "after");
      parts.library.edits.add(recordingId, { ...edit, at: parts.now() });
      indexAfter(parts, recordingId, edit.changes);
    });
    parts.events.publish("library.changed", { recordingId });
  }
  return recordingDetail(parts, recordingId);
}

export function undo(parts: Parts, recordingId: string, initials: string): RecordingDetail {
  const edit = parts.library.edits.lastDone(recordingId);
  if (!edit) throw new Refusal("nothing-to-undo", "Nothing has been changed in this recording that could be undone.");
  return move(parts, recordingId, { sequence: edit.sequence, changes: edit.changes, to: "before", state: "undone", initials });
}

export function redo(parts: Parts, recordingId: string, initials: string): RecordingDetail {
  const edit = parts.library.edits.firstUndone(recordingId);
  if (!edit) throw new Refusal("nothing-to-redo", "Nothing has been undone in this recording since its last change.");
  return move(parts, recordingId, { sequence: edit.sequence, changes: edit.changes, to: "after", state: "done", initials });
}

interface Move {
  readonly sequence: number;
  readonly changes: readonly RowChange[];
  readonly to: "before" | "after";
  readonly state: "done" | "undone";
  readonly initials: string;
}

function move(parts: Parts, recordingId: string, { sequence, changes, to, state, initials }: Move): RecordingDetail {
  parts.library.transaction(() => {
    apply(parts, recordingId, changes, to);
    parts.library.edits.move(sequence, state, initials, parts.now());
    indexAfter(parts, recordingId, changes);
  });
  parts.events.publish("library.changed", { recordingId });
  return recordingDetail(parts, recordingId);
}

function indexAfter(parts: Parts, recordingId: string, changes: readonly RowChange[]): void {
  if (concernsAnalysis(changes)) {
    // Until the new analysis is stored; should that not come, the next start of the program makes it.
    parts.library.proposals.markOutdated(recordingId);
    indexRecording(parts, recordingId);
    return;
  }
  indexPeoplesWork(parts, recordingId);
  if (changes.some(({ table }) => table === "zone_spans")) indexClaims(parts, recordingId);
}

function apply({ library }: Parts, recordingId: string, changes: readonly RowChange[], to: "before" | "after"): void {
  for (const change of changes) {
    if (change.table === "zone_spans") put(library.zoneSpans, recordingId, change.id, change[to]);
    else if (change.table === "findings") put(library.findings, recordingId, change.id, change[to]);
    else if (change.table === "caption_corrections") put(library.captionCorrections, recordingId, change.id, change[to]);
    else if (change.table === "trusted_captions") put(library.trustedCaptions, recordingId, change.id, change[to]);
    else if (change.table === "recordings") putDescription(library, recordingId, change[to]);
  }
  // A conflict has one standing ruling at most at any moment, and a matter one note: the one that gives way goes first.
  const rulings = changes.flatMap((change) => (change.table === "rulings" ? [change[to]] : []));
  for (const ruling of givingWayFirst(rulings)) library.rulings.put(recordingId, ruling);
  const notes = changes.flatMap((change) => (change.table === "seen_notes" ? [change[to]] : []));
  for (const note of givingWayFirst(notes)) library.seenNotes.put(recordingId, note);
}

function givingWayFirst<Row extends { readonly supersededBy: string | null }>(rows: readonly Row[]): Row[] {
  return rows.toSorted((a, b) => Number(a.supersededBy === null) - Number(b.supersededBy === null));
}

/** Whether these rows change what the analysis is told. */
export function concernsAnalysis(changes: readonly RowChange[]): boolean {
  return changes.some(({ table }) => table === "trusted_captions" || table === "caption_corrections");
}

interface RowTable<Row> {
  readonly put: (recordingId: string, row: Row) => void;
  readonly take: (recordingId: string, id: string) => void;
}

function putDescription(library: Parts["library"], id: string, description: RecordingDescription | null): void {
  // A recording is not made or taken away by an edit, so there is always one.
  if (description === null) return;
  library.recordings.describe({ id, ...description });
  library.search.rename(id, recordingNames(description));
}

function put<Row>(table: RowTable<Row>, recordingId: string, id: string, row: Row | null): void {
  if (row === null) table.take(recordingId, id);
  else table.put(recordingId, row);
}

/** What turns one state of the zone spans into another. */
export function zoneSpanChanges(before: readonly ZoneSpan[], after: readonly ZoneSpan[]): RowChange[] {
  return rowPairs(before, after).map((pair) => ({ table: "zone_spans" as const, ...pair }));
}

export function findingChanges(before: readonly Finding[], after: readonly Finding[]): RowChange[] {
  return rowPairs(before, after).map((pair) => ({ table: "findings" as const, ...pair }));
}

export function rulingChange(before: Ruling, after: Ruling): RowChange {
  return { table: "rulings", id: after.id, before, after };
}

export function seenNoteChange(before: SeenNote, after: SeenNote): RowChange {
  return { table: "seen_notes", id: after.id, before, after };
}

function rowPairs<Row extends { readonly id: string }>(before: readonly Row[], after: readonly Row[]) {
  const former = new Map(before.map((row) => [row.id, row]));
  const present = new Map(after.map((row) => [row.id, row]));
  return [...new Set([...former.keys(), ...present.keys()])]
    .map((id) => ({ id, before: former.get(id) ?? null, after: present.get(id) ?? null }))
    .filter((pair) => JSON.stringify(pair.before) !== JSON.stringify(pair.after));
}
