import {
  type CaptionCorrection,
  type MergeChoice,
  type MergeChoices,
  matterName,
  type TrustedCaption,
  type ZoneSpan,
} from "../../../shared-types/index.ts";
import type { RowChange } from "../../library/edits.ts";
import { findingChanges, rulingChange, seenNoteChange, zoneSpanChanges } from "../record-edit.ts";
import { inOrder, type NewId, paintOver } from "../span-algebra.ts";
import { type RecordRow, type Side, standing } from "./differences.ts";

/** What turns this library's side into what was chosen; groups without a choice stay as they are. */
export function mergeChanges(recordingId: string, mine: Side, theirs: Side, choices: MergeChoices, newId: NewId): RowChange[] {
  const changes: RowChange[] = [];
  const { description, zones, findings, rulings, seen, corrections, trusted } = choices;
  if (description === "theirs" && JSON.stringify(mine.description) !== JSON.stringify(theirs.description))
    changes.push({ table: "recordings", id: recordingId, before: mine.description, after: theirs.description });
  if (zones === "theirs") changes.push(...zoneSpanChanges(mine.work.zoneSpans, theirs.work.zoneSpans));
  if (zones === "both")
    changes.push(...zoneSpanChanges(mine.work.zoneSpans, spansOfBoth(mine.work.zoneSpans, theirs.work.zoneSpans, newId)));
  if (findings === "theirs") changes.push(...findingChanges(mine.work.findings, theirs.work.findings));
  if (findings === "both") {
    const here = new Set(mine.work.findings.map(({ id }) => id));
    const added = theirs.work.findings.filter(({ id }) => !here.has(id));
    changes.push(...findingChanges(mine.work.findings, [...mine.work.findings, ...added]));
  }
  if (rulings === "theirs" || rulings === "both") {
    const pairs = recordPairs(mine.work.rulings, theirs.work.rulings, rulings, ({ conflictKey }) => conflictKey);
    changes.push(...pairs.map(([before, after]) => rulingChange(before, after)));
  }
  if (seen === "theirs" || seen === "both") {
    const pairs = recordPairs(mine.work.seenNotes, theirs.work.seenNotes, seen, matterName);
    changes.push(...pairs.map(([before, after]) => seenNoteChange(before, after)));
  }
  for (const { caption, before, after } of captionPairs(mine.work.captionCorrections, theirs.work.captionCorrections, corrections))
    changes.push({ table: "caption_corrections", id: String(caption), before, after });
  for (const { caption, before, after } of captionPairs(mine.work.trustedCaptions, theirs.work.trustedCaptions, trusted))
    changes.push({ table: "trusted_captions", id: String(caption), before, after });
  return changes;
}

/** Mine as they are; theirs where I have drawn nothing. A span of theirs that reaches under mine is cut there. */
function spansOfBoth(mine: readonly ZoneSpan[], theirs: readonly ZoneSpan[], newId: NewId): ZoneSpan[] {
  const ids = new Set(mine.map(({ id }) => id));
  // The same span, moved on one of the machines, keeps its id here; what is left of the other's is a span of its own.
  const others = theirs.map((span) => (ids.has(span.id) ? { ...span, id: newId() } : span));
  return inOrder(mine.reduce<ZoneSpan[]>((spans, span) => paintOver(spans, span, newId), [...others]));
}

/**
 * Rulings and notes are never taken away or reworded, so each of theirs comes in. Of what is ruled on or noted here, `both` lets that stand
 * and keeps theirs as superseded by it; `theirs` supersedes it by theirs, or takes it back where they have none.
 * @returns each row that changes as it was and as it becomes.
 */
function recordPairs<Row extends RecordRow>(
  mine: readonly Row[],
  theirs: readonly Row[],
  choice: MergeChoice,
  subjectOf: (row: Row) => string,
): [before: Row, after: Row][] {
  const here = new Set(mine.map(({ id }) => id));
  const standingHere = standing(mine, subjectOf);
  const standingThere = standing(theirs, subjectOf);
  const winner = (subject: string): string | undefined =>
    choice === "theirs" ? standingThere.get(subject)?.id : (standingHere.get(subject) ?? standingThere.get(subject))?.id;
  const after = (row: Row): Row => {
    const won = winner(subjectOf(row));
    if (row.id === won) return { ...row, supersededBy: null };
    return row.supersededBy === null ? { ...row, supersededBy: won ?? row.id } : row;
  };
  const pairs: [Row, Row][] = [];
  for (const row of mine) {
    const next = after(row);
    if (next.supersededBy !== row.supersededBy) pairs.push([row, next]);
  }
  for (const row of theirs) {
    if (here.has(row.id)) continue;
    const next = after(row);
    // Undone, it stays on record as one that does not stand.
    pairs.push([{ ...next, supersededBy: next.supersededBy ?? standingHere.get(subjectOf(row))?.id ?? row.id }, next]);
  }
  return pairs;
}

type CaptionRow = TrustedCaption | CaptionCorrection;

function captionPairs<Row extends CaptionRow>(mine: readonly Row[], theirs: readonly Row[], choice: MergeChoice | undefined) {
  if (choice === undefined || choice === "mine") return [];
  const here = new Map(mine.map((row) => [row.caption, row]));
  const there = new Map(theirs.map((row) => [row.caption, row]));
  return [...new Set([...here.keys(), ...there.keys()])]
    .toSorted((a, b) => a - b)
    .map((caption) => {
      const before = here.get(caption) ?? null;
      const after = choice === "both" ? (before ?? there.get(caption) ?? null) : (there.get(caption) ?? null);
      return { caption, before, after };
    })
    .filter(({ before, after }) => JSON.stringify(before) !== JSON.stringify(after));
}
