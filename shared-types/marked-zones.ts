import type { LapSpan } from "./recording.ts";
import type { ZoneName } from "./vocabulary.ts";

type Span = Pick<LapSpan, "start" | "end" | "zone">;

/** The zone in view at a moment; a moment exactly on a border belongs to the later span. */
export function zoneAt(lap: readonly Span[], atSeconds: number): ZoneName {
  const span = lap.findLast(({ start }) => start <= atSeconds) ?? lap[0];
  return span?.zone ?? "opening";
}

/**
 * The things with the zone that a person has marked at their start; where no person has spoken they keep the one the analysis gave.
 * @param marked people's spans alone.
 */
export function inMarkedZones<Thing extends { readonly start: number; readonly zone: ZoneName }>(
  things: readonly Thing[],
  marked: readonly Span[],
): Thing[] {
  return things.map((thing) => {
    const span = marked.find(({ start, end }) => start <= thing.start && thing.start < end);
    return span && span.zone !== thing.zone ? { ...thing, zone: span.zone } : thing;
  });
}
