import type { CaptionCorrection, MergeChoice, MergeChoices, Ruling, TrustedCaption, ZoneSpan } from "../../../shared-types/index.ts";
import type { RowChange } from "../../library/edits.ts";
import { findingChanges, rulingChange, zoneSpanChanges } from "../record-edit.ts";
import { inOrder, type NewId, paintOver } from "../span-algebra.ts";
import { type Side, standing } from "./differences.ts";

/** What turns this library's side into what was chosen; groups without a choice stay as they are. */
export function mergeChanges(recordingId: string, mine: Side, theirs: Side, choices: MergeChoices, newId: NewId): RowChange[] {
  const changes: RowChange[] = [];
  const { description, zones, findings, rulings, corrections, trusted } = choices;
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
  if (rulings === "theirs" || rulings === "both") changes.push(...rulingChanges(mine.work.rulings, theirs.work.rulings, rulings));
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
 * Rulings are never taken away or reworded, so every ruling of theirs comes in. Of a conflict that is ruled on here, `both` lets that
 * ruling stand and keeps theirs as superseded by it; `theirs` supersedes it by theirs, or takes it back where they have none.
 */
function rulingChanges(mine: readonly Ruling[], theirs: readonly Ruling[], choice: MergeChoice): RowChange[] {
  const here = new Map(mine.map((ruling) => [ruling.id, ruling]));
  const standingHere = standing(mine);
  const standingThere = standing(theirs);
  const winner = (key: string): string | undefined =>
    choice === "theirs" ? standingThere.get(key)?.id : (standingHere.get(key) ?? standingThere.get(key))?.id;
  const after = (ruling: Ruling): Ruling => {
    const won = winner(ruling.conflictKey);
    if (ruling.id === won) return { ...ruling, supersededBy: null };
    return ruling.supersededBy === null ? { ...ruling, supersededBy: won ?? ruling.id } : ruling;
  };
  const changes: RowChange[] = [];
  for (const ruling of mine) {
    const next = after(ruling);
    if (next.supersededBy !== ruling.supersededBy) changes.push(rulingChange(ruling, next));
  }
  for (const ruling of theirs) {
    if (here.has(ruling.id)) continue;
    const next = after(ruling);
    // Undone, it stays on record as one that does not stand.
    const before = { ...next, supersededBy: next.supersededBy ?? standingHere.get(ruling.conflictKey)?.id ?? ruling.id };
    changes.push(rulingChange(before, next));
  }
  return changes;
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
