import type { LapSpan, ZoneName } from "../../shared-types/index.ts";

/** A player cuts the moment it was sent to down to its own ticks, a millionth of a second or so; half a thousandth is well above that and far below a frame. Seconds. */
const playerTick = 0.0005;

/** The span at a moment; one on a border, or short of it by a player's tick, belongs to the later span. The last span holds everything after it. */
export function spanAt(lap: readonly LapSpan[], seconds: number): LapSpan | undefined {
  const reached = seconds + playerTick;
  return lap.find((span) => reached >= span.start && reached < span.end) ?? (seconds > 0 ? lap.at(-1) : lap[0]);
}

/** Where the playhead is sent so that the picture at a border is the first of the later span, not the last of the span before: a tick past it. Seconds. */
export function justPast(border: number, end: number): number {
  return border <= 0 ? 0 : Math.min(border + playerTick, end);
}

/** The border nearest to a moment, or undefined where the recording is one span. */
export function nearestBorder(lap: readonly LapSpan[], seconds: number): number | undefined {
  return lap
    .slice(1)
    .map((span) => span.start)
    .reduce<number | undefined>(
      (best, border) => (best === undefined || Math.abs(border - seconds) < Math.abs(best - seconds) ? border : best),
      undefined,
    );
}

/** The border before or after a moment, or the recording's start or end. A border closer than a twentieth of a second counts as reached. */
export function borderBeside(lap: readonly LapSpan[], seconds: number, direction: 1 | -1): number {
  const borders = [0, ...lap.map((span) => span.end)];
  return direction === 1
    ? (borders.find((border) => border > seconds + 0.05) ?? borders.at(-1) ?? 0)
    : (borders.findLast((border) => border < seconds - 0.05) ?? 0);
}

/** So many frames beside a border a mark is meant for the border itself: the playhead that was sent there stands a tick past it, or on the frame beside it. */
const nearFrames = 2;

/**
 * Where a mark at a moment stands: on the border that it is a frame or two beside, else where it was set. Without it a stretch marked from
 * border to border would take a sliver of the zone after it along.
 * @param frameSeconds length of a frame.
 */
export function heldToBorder(lap: readonly LapSpan[], seconds: number, frameSeconds: number): number {
  const borders = lap.flatMap((span) => [span.start, span.end]);
  const nearest = borders.reduce(
    (best, border) => (Math.abs(border - seconds) < Math.abs(best - seconds) ? border : best),
    Number.POSITIVE_INFINITY,
  );
  return Math.abs(nearest - seconds) <= nearFrames * frameSeconds + playerTick ? nearest : seconds;
}

/** Where to go when a zone is picked: its next span after the moment, round to its first. Undefined when the zone is never shown. */
export function nextSpanOfZone(lap: readonly LapSpan[], zone: ZoneName, seconds: number): LapSpan | undefined {
  const spans = lap.filter((span) => span.zone === zone);
  return spans.find((span) => span.start > seconds + 0.05) ?? spans[0];
}
