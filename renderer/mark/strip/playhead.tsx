import type { LapSpan } from "../../../shared-types/index.ts";
import type { Clock } from "../../player/clock.ts";
import { useReading } from "../../player/use-clock.ts";
import { tenthsLabel } from "../../shared/time.ts";
import { spanAt } from "../lap.ts";
import { type StripView, xOf } from "./geometry.ts";

/** The moment that is shown, as a line over the strip and as the keyboard's slider. */
export function Playhead({ clock, view, lap }: { readonly clock: Clock; readonly view: StripView; readonly lap: readonly LapSpan[] }) {
  const { time, duration } = useReading(clock);
  const x = xOf(view, time);
  if (x < -1 || x > view.width + 1) return null;
  const place = spanAt(lap, time)?.title ?? "";
  return (
    <div
      className="playhead"
      style={{ transform: `translateX(${x}px)` }}
      role="slider"
      tabIndex={0}
      aria-label="Playhead"
      aria-valuemin={0}
      aria-valuemax={Math.round(duration * 10) / 10}
      aria-valuenow={Math.round(time * 10) / 10}
      aria-valuetext={`${tenthsLabel(time)}, ${place}`}
      onKeyDown={(event) => {
        const by = { ArrowLeft: -1, ArrowDown: -1, ArrowRight: 1, ArrowUp: 1, PageUp: 10, PageDown: -10 }[event.key];
        const to =
          event.key === "Home" ? 0 : event.key === "End" ? duration : by === undefined ? null : time + by * (event.shiftKey ? 5 : 1);
        if (to === null) return;
        event.preventDefault();
        clock.seek(to);
      }}
    />
  );
}
