import { useLayoutEffect, useRef } from "react";
import type { LapSpan } from "../../../shared-types/index.ts";
import type { Clock } from "../../player/clock.ts";
import { tenthsLabel } from "../../shared/time.ts";
import { spanAt } from "../lap.ts";
import { type StripView, xOf } from "./geometry.ts";
import { pointOn, type TrackPiece } from "./track.ts";

export interface PlayheadProps {
  readonly clock: Clock;
  readonly view: StripView;
  readonly pieces: readonly TrackPiece[];
  readonly radius: number;
  readonly lap: readonly LapSpan[];
}

/**
 * The moment that is shown, as a line across the strip and as the keyboard's slider. It moves with every frame of the film, so it is moved by
 * its transform alone and nothing else of the page is drawn anew; what it says to screen readers follows at most four times in a second.
 */
export function Playhead({ clock, view, pieces, radius, lap }: PlayheadProps) {
  const line = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    let spoken = "";
    let speaking: ReturnType<typeof setTimeout> | undefined;
    const speak = () => {
      speaking = undefined;
      const element = line.current;
      const { time, duration } = clock.read();
      const words = `${tenthsLabel(time)}, ${spanAt(lap, time)?.title ?? ""}`;
      if (!element || words === spoken) return;
      spoken = words;
      element.setAttribute("aria-valuemax", String(Math.round(duration * 10) / 10));
      element.setAttribute("aria-valuenow", String(Math.round(time * 10) / 10));
      element.setAttribute("aria-valuetext", words);
    };
    const move = () => {
      const element = line.current;
      if (!element) return;
      const along = xOf(view, clock.read().time);
      const shown = along >= -1 && along <= view.width + 1;
      if (element.hidden === shown) element.hidden = !shown;
      const { x, y, degrees } = pointOn(pieces, radius, along);
      element.style.transform = `translate(${x.toFixed(2)}px, ${y.toFixed(2)}px) rotate(${degrees.toFixed(2)}deg)`;
      speaking ??= setTimeout(speak, 250);
    };
    move();
    speak();
    const stop = clock.subscribe(move);
    return () => {
      stop();
      clearTimeout(speaking);
    };
  }, [clock, view, pieces, radius, lap]);
  return (
    <div
      ref={line}
      className="playhead"
      role="slider"
      tabIndex={0}
      aria-label="Playhead"
      aria-valuemin={0}
      aria-valuenow={0}
      onKeyDown={(event) => {
        const { time, duration } = clock.read();
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
