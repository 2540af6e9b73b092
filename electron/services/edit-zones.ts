import { randomUUID } from "node:crypto";
import { type Input, type LapSpan, type RecordingDetail, timeLabel, type ZoneSpan, zoneLabels } from "../../shared-types/index.ts";
import { effectiveLap } from "./effective-lap.ts";
import type { Parts } from "./parts.ts";
import { recordEdit, zoneSpanChanges } from "./record-edit.ts";
import { findRecording, storedAnalysis } from "./recording-detail.ts";
import { Refusal } from "./refusals.ts";
import { asZoneSpan, borderTolerance, cutOut, inOrder, paintOver, spansAtBorder } from "./span-algebra.ts";

/** Shortest zone span in seconds: one frame at 25 frames a second. */
export const shortestSpan = 0.04;

interface Ground {
  readonly duration: number;
  readonly spans: readonly ZoneSpan[];
  readonly lap: readonly LapSpan[];
}

function ground(parts: Parts, recordingId: string): Ground {
  const { duration } = findRecording(parts, recordingId);
  const spans = parts.library.zoneSpans.of(recordingId);
  return { duration, spans, lap: effectiveLap(duration, spans, storedAnalysis(parts.library, recordingId)) };
}

/** A range within the recording. A player's time may run a little past the end, so the end is taken back to it. */
function range(start: number, end: number, duration: number): { start: number; end: number } {
  const last = Math.min(end, duration);
  if (last - start < shortestSpan) {
    throw new Refusal(
      "range-empty",
      `From ${timeLabel(start)} to ${timeLabel(end)} there is nothing to mark: the end must lie after the start, and both within the recording's ${timeLabel(duration)}.`,
    );
  }
  return { start, end: last };
}

export function paintZone(parts: Parts, input: Input<"zone.paint">): RecordingDetail {
  const { recordingId, zone, initials } = input;
  const { duration, spans } = ground(parts, recordingId);
  const { start, end } = range(input.start, input.end, duration);
  const title = input.title?.trim() || null;
  const after = paintOver(spans, { id: randomUUID(), zone, start, end, title, initials }, randomUUID);
  const label = `mark ${zoneLabels[zone]} ${timeLabel(start)} to ${timeLabel(end)}`;
  return recordEdit(parts, recordingId, { label, initials, changes: zoneSpanChanges(spans, after) });
}

/** Makes every proposal in the range a person's, cut to the range; what people drew stays as it is. */
export function acceptZones(parts: Parts, { recordingId, initials, ...asked }: Input<"zone.accept">): RecordingDetail {
  const { duration, spans, lap } = ground(parts, recordingId);
  const { start, end } = range(asked.start, asked.end, duration);
  const accepted = lap
    .filter((span) => span.zoneSpanId === null)
    .map((span) => ({ ...span, start: Math.max(span.start, start), end: Math.min(span.end, end) }))
    .filter((span) => span.end - span.start > 0)
    .map((span) => asZoneSpan(span, spans, initials, randomUUID));
  const first = accepted[0];
  const label = accepted.length === 1 && first ? `accept ${zoneLabels[first.zone]}` : `accept ${accepted.length} zones`;
  return recordEdit(parts, recordingId, { label, initials, changes: zoneSpanChanges(spans, inOrder([...spans, ...accepted])) });
}

/**
 * Moves the border where two spans of the lap meet. Beside a person's span only that one changes, and the proposal fills what is left;
 * between two proposals both become the person's, who has now said where they meet.
 */
export function moveBorder(parts: Parts, { recordingId, from, to, initials }: Input<"zone.moveBorder">): RecordingDetail {
  const { spans, lap } = ground(parts, recordingId);
  const { earlier, later } = atBorder(lap, from);
  if (to < earlier.start + shortestSpan || to > later.end - shortestSpan) {
    throw new Refusal(
      "border-out-of-reach",
      `The border at ${timeLabel(from)} can move between ${timeLabel(earlier.start)} and ${timeLabel(later.end)}, not to ${timeLabel(to)}. Remove or join a span to go further.`,
    );
  }
  const bothProposed = earlier.zoneSpanId === null && later.zoneSpanId === null;
  const moved: ZoneSpan[] = [];
  if (bothProposed || earlier.zoneSpanId !== null) moved.push({ ...asZoneSpan(earlier, spans, initials, randomUUID), end: to, initials });
  if (bothProposed || later.zoneSpanId !== null) moved.push({ ...asZoneSpan(later, spans, initials, randomUUID), start: to, initials });
  const ids = new Set(moved.map(({ id }) => id));
  const after = inOrder([...spans.filter(({ id }) => !ids.has(id)), ...moved]);
  const label = `move the border at ${timeLabel(from)} to ${timeLabel(to)}`;
  return recordEdit(parts, recordingId, { label, initials, changes: zoneSpanChanges(spans, after) });
}

export function splitZone(parts: Parts, { recordingId, at, initials }: Input<"zone.split">): RecordingDetail {
  const { spans, lap } = ground(parts, recordingId);
  const lapSpan = lap.find(({ start, end }) => start <= at && at < end);
  if (!lapSpan || at - lapSpan.start < shortestSpan || lapSpan.end - at < shortestSpan) {
    throw new Refusal("split-at-border", `At ${timeLabel(at)} there is no span to split: it must lie inside one, not on its border.`);
  }
  const whole = asZoneSpan(lapSpan, spans, initials, randomUUID);
  const pieces = [
    { ...whole, end: at, initials },
    { ...whole, id: randomUUID(), start: at, title: null, initials },
  ];
  const after = inOrder([...spans.filter(({ id }) => id !== whole.id), ...pieces]);
  const label = `split ${zoneLabels[whole.zone]} at ${timeLabel(at)}`;
  return recordEdit(parts, recordingId, { label, initials, changes: zoneSpanChanges(spans, after) });
}

export function joinZones(parts: Parts, { recordingId, border, initials }: Input<"zone.join">): RecordingDetail {
  const { spans, lap } = ground(parts, recordingId);
  const { earlier, later } = atBorder(lap, border);
  const joined = { ...asZoneSpan(earlier, spans, initials, randomUUID), end: later.end, initials };
  const others = spans.filter(({ id }) => id !== joined.id && id !== later.zoneSpanId);
  const label = `join ${zoneLabels[earlier.zone]} and ${zoneLabels[later.zone]} at ${timeLabel(border)}`;
  return recordEdit(parts, recordingId, { label, initials, changes: zoneSpanChanges(spans, inOrder([...others, joined])) });
}

export function retitleZone(parts: Parts, { recordingId, zoneSpanId, initials, ...asked }: Input<"zone.retitle">): RecordingDetail {
  const { spans } = ground(parts, recordingId);
  const span = ownSpan(spans, zoneSpanId);
  const title = asked.title || null;
  const after = spans.map((each) => (each.id === span.id ? { ...each, title, initials } : each));
  const label = title === null ? `take the title from ${zoneLabels[span.zone]}` : `title ${zoneLabels[span.zone]} “${title}”`;
  return recordEdit(parts, recordingId, { label, initials, changes: span.title === title ? [] : zoneSpanChanges(spans, after) });
}

/** Takes a person's span away; the proposal shows again. */
export function removeZone(parts: Parts, { recordingId, zoneSpanId, initials }: Input<"zone.remove">): RecordingDetail {
  const { spans } = ground(parts, recordingId);
  const span = ownSpan(spans, zoneSpanId);
  const after = cutOut(spans, span.start, span.end, randomUUID);
  const label = `remove ${zoneLabels[span.zone]} at ${timeLabel(span.start)}`;
  return recordEdit(parts, recordingId, { label, initials, changes: zoneSpanChanges(spans, after) });
}

function atBorder(lap: readonly LapSpan[], border: number) {
  const pair = spansAtBorder(lap, border);
  if (pair) return pair;
  const borders = lap.slice(1).map(({ start }) => start.toFixed(2));
  throw new Refusal(
    "border-unknown",
    `No two zones meet within ${borderTolerance} s of ${border.toFixed(2)} s. ${borders.length > 0 ? `Borders are at ${borders.join(", ")} s.` : "This recording has one zone only."}`,
  );
}

function ownSpan(spans: readonly ZoneSpan[], id: string): ZoneSpan {
  const span = spans.find((each) => each.id === id);
  if (!span)
    throw new Refusal(
      "zone-span-unknown",
      "This zone span is no longer there; somebody removed or joined it. Look at the lap strip again.",
    );
  return span;
}
