import { type LapSpan, type ZoneSpan, zoneLabels } from "../../shared-types/index.ts";

/** How near, in seconds, a time must be to a border to mean it: half of what a person could set at 60 frames a second. */
export const borderTolerance = 0.008;

/** Gives new spans their ids; handed in so that these functions stay plain. */
export type NewId = () => string;

/**
 * The spans without anything between two times. A span that reaches over both ends leaves two pieces: the earlier keeps the id.
 * @param spans in order, never overlapping.
 */
export function cutOut(spans: readonly ZoneSpan[], start: number, end: number, newId: NewId): ZoneSpan[] {
  return spans.flatMap((span) => {
    if (span.end <= start || span.start >= end) return [span];
    const before = span.start < start ? [{ ...span, end: start }] : [];
    const after = span.end > end ? [{ ...span, id: before.length > 0 ? newId() : span.id, start: end }] : [];
    return [...before, ...after];
  });
}

/** The spans with one more, which takes its time from whatever was there. */
export function paintOver(spans: readonly ZoneSpan[], span: ZoneSpan, newId: NewId): ZoneSpan[] {
  return inOrder([...cutOut(spans, span.start, span.end, newId), span]);
}

/** A lap span as a person's: the one it is already, or a new one with the title that was shown; null takes the zone's own. */
export function asZoneSpan(lapSpan: LapSpan, spans: readonly ZoneSpan[], initials: string, newId: NewId): ZoneSpan {
  return (
    spans.find(({ id }) => id === lapSpan.zoneSpanId) ?? {
      id: newId(),
      zone: lapSpan.zone,
      start: lapSpan.start,
      end: lapSpan.end,
      title: lapSpan.title === zoneLabels[lapSpan.zone] ? null : lapSpan.title,
      initials,
    }
  );
}

/** The two lap spans that meet at a border; undefined where none is near enough. */
export function spansAtBorder(lap: readonly LapSpan[], border: number): { earlier: LapSpan; later: LapSpan } | undefined {
  let nearest: { earlier: LapSpan; later: LapSpan; distance: number } | undefined;
  for (const [position, later] of lap.entries()) {
    const earlier = lap[position - 1];
    const distance = Math.abs(later.start - border);
    if (earlier && distance <= borderTolerance && (!nearest || distance < nearest.distance)) nearest = { earlier, later, distance };
  }
  return nearest;
}

export function inOrder(spans: readonly ZoneSpan[]): ZoneSpan[] {
  return spans.toSorted((a, b) => a.start - b.start);
}
