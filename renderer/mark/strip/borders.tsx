import { memo, useState } from "react";
import type { LapSpan } from "../../../shared-types/index.ts";
import { tenthsLabel } from "../../shared/time.ts";
import { heldBorder, type StripView, secondsAt, xOf } from "./geometry.ts";

export interface BordersProps {
  readonly lap: readonly LapSpan[];
  readonly view: StripView;
  readonly onMoveBorder: (from: number, to: number) => void;
}

/**
 * The borders between zone spans: dragged with the pointer, nudged with the arrow keys. One of them is a tab stop; up and down go to the others.
 * A border shows where it would stand while it is moved, and is moved on disk once: when the pointer or the key is let go.
 */
export const Borders = memo(function Borders({ lap, view, onMoveBorder }: BordersProps) {
  const [stop, setStop] = useState(0);
  const [moving, setMoving] = useState<{ index: number; to: number } | null>(null);
  const borders = lap.slice(1);

  const commit = () => {
    if (!moving) return;
    const from = borders[moving.index]?.start;
    setMoving(null);
    if (from !== undefined && Math.abs(from - moving.to) > 0.001) onMoveBorder(from, moving.to);
  };
  const hold = (index: number, wanted: number) => heldBorder(wanted, lap[index]?.start ?? 0, borders[index]?.end ?? wanted);
  const focusBorder = (from: HTMLElement, index: number) => {
    setStop(index);
    from.parentElement?.querySelector<HTMLElement>(`[data-border="${index}"]`)?.focus();
  };

  return (
    // biome-ignore lint/a11y/useSemanticElements: no form fields in it
    <div className="borders" role="group" aria-label="Borders between zone spans">
      {borders.map((span, index) => {
        const at = moving?.index === index ? moving.to : span.start;
        const x = xOf(view, at);
        if (x < 0 || x > view.width) return null;
        const before = lap[index];
        return (
          <div
            key={`${before?.zone}-${span.zone}-${before?.start}`}
            className="border-handle"
            data-border={index}
            data-moving={moving?.index === index || undefined}
            style={{ transform: `translateX(${x}px)` }}
            role="slider"
            tabIndex={Math.min(stop, borders.length - 1) === index ? 0 : -1}
            aria-label={`Border, ${before?.title ?? ""} to ${span.title}`}
            aria-valuemin={before?.start ?? 0}
            aria-valuemax={span.end}
            aria-valuenow={at}
            aria-valuetext={tenthsLabel(at)}
            onFocus={() => setStop(index)}
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
              if (box) setMoving({ index, to: hold(index, secondsAt(view, event.clientX - box.left)) });
            }}
            onPointerUp={commit}
            onPointerCancel={() => setMoving(null)}
            onKeyDown={(event) => {
              const step = event.shiftKey ? 1 : 0.1;
              if (event.key === "ArrowLeft" || event.key === "ArrowRight") {
                setMoving({ index, to: hold(index, at + (event.key === "ArrowLeft" ? -step : step)) });
              } else if (event.key === "ArrowUp" || event.key === "ArrowDown") {
                commit();
                focusBorder(event.currentTarget, Math.min(borders.length - 1, Math.max(0, index + (event.key === "ArrowUp" ? -1 : 1))));
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
            {moving?.index === index ? <span className="border-time">{tenthsLabel(at)}</span> : null}
          </div>
        );
      })}
    </div>
  );
});
