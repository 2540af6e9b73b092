import { memo, useState } from "react";
import type { LapSpan } from "../../../shared-types/index.ts";
import { tenthsLabel } from "../../shared/time.ts";
import { bordersToShow, heldBorder, type StripView, secondsAt, xOf } from "./geometry.ts";
import { nearestOn, pointOn, type TrackPiece, turnOfWords } from "./track.ts";

export interface BordersProps {
  readonly lap: readonly LapSpan[];
  readonly view: StripView;
  readonly pieces: readonly TrackPiece[];
  readonly radius: number;
  /** The border that Tab comes to; its index, from 0. */
  readonly stop: number;
  readonly onStop: (index: number) => void;
  /** Goes to another border; a view that does not show it is moved. */
  readonly onGo: (index: number) => void;
  readonly onMoveBorder: (from: number, to: number) => void;
}

/**
 * The borders between zone spans: dragged with the pointer, nudged with the arrow keys. One of them is a tab stop; up and down go to the others.
 * A border shows where it would stand while it is moved, and is moved on disk once: when the pointer or the key is let go.
 */
export const Borders = memo(function Borders({ lap, view, pieces, radius, stop, onStop, onGo, onMoveBorder }: BordersProps) {
  const [moving, setMoving] = useState<{ index: number; to: number } | null>(null);
  const borders = lap.slice(1);
  const shown = bordersToShow(borders, view, stop);
  const tabStop = shown.includes(stop) ? stop : shown[0];

  const commit = () => {
    if (!moving) return;
    const from = borders[moving.index]?.start;
    setMoving(null);
    if (from !== undefined && Math.abs(from - moving.to) > 0.001) onMoveBorder(from, moving.to);
  };
  const hold = (index: number, wanted: number) => heldBorder(wanted, lap[index]?.start ?? 0, borders[index]?.end ?? wanted);

  return (
    // biome-ignore lint/a11y/useSemanticElements: no form fields in it
    <div className="borders" role="group" aria-label="Borders between zone spans">
      {shown.map((index) => {
        const span = borders[index];
        if (!span) return null;
        const at = moving?.index === index ? moving.to : span.start;
        const { x, y, degrees } = pointOn(pieces, radius, xOf(view, at));
        const before = lap[index];
        return (
          <div
            key={`${before?.zone}-${span.zone}-${before?.start}`}
            className="border-handle"
            data-border={index}
            data-moving={moving?.index === index || undefined}
            style={{ transform: `translate(${x}px, ${y}px) rotate(${degrees}deg)` }}
            role="slider"
            tabIndex={tabStop === index ? 0 : -1}
            aria-label={`Border, ${before?.title ?? ""} to ${span.title}`}
            aria-valuemin={before?.start ?? 0}
            aria-valuemax={span.end}
            aria-valuenow={at}
            aria-valuetext={tenthsLabel(at)}
            onFocus={() => onStop(index)}
            // Only its own move: the focus also leaves a border because another one was just taken hold of.
            onBlur={() => (moving?.index === index ? commit() : undefined)}
            onPointerDown={(event) => {
              event.stopPropagation();
              event.currentTarget.setPointerCapture(event.pointerId);
              setMoving({ index, to: span.start });
            }}
            onPointerMove={(event) => {
              if (moving?.index !== index || !event.currentTarget.hasPointerCapture(event.pointerId)) return;
              const box = event.currentTarget.parentElement?.getBoundingClientRect();
              if (!box) return;
              const { along } = nearestOn(pieces, radius, event.clientX - box.left, event.clientY - box.top);
              setMoving({ index, to: hold(index, secondsAt(view, along)) });
            }}
            onPointerUp={commit}
            onPointerCancel={() => setMoving(null)}
            onKeyDown={(event) => {
              const step = event.shiftKey ? 1 : 0.1;
              if (event.key === "ArrowLeft" || event.key === "ArrowRight") {
                setMoving({ index, to: hold(index, at + (event.key === "ArrowLeft" ? -step : step)) });
              } else if (event.key === "ArrowUp" || event.key === "ArrowDown") {
                commit();
                onGo(Math.min(borders.length - 1, Math.max(0, index + (event.key === "ArrowUp" ? -1 : 1))));
              } else if (event.key === "Enter") commit();
              else if (event.key === "Escape") setMoving(null);
              else return;
              event.preventDefault();
              event.stopPropagation();
            }}
            onKeyUp={(event) => {
              // One edit for one press, however long it was held.
              if (event.key === "ArrowLeft" || event.key === "ArrowRight") commit();
            }}
          >
            {moving?.index === index ? (
              <span className="border-time" style={{ rotate: `${turnOfWords(degrees) - degrees}deg` }}>
                {tenthsLabel(at)}
              </span>
            ) : null}
          </div>
        );
      })}
    </div>
  );
});
