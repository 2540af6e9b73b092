import { useCallback, useEffect, useMemo, useRef, useState } from "react";
import { type StripView, secondsAt, slideView, zoomView } from "./geometry.ts";
import { cornerRadius, outerReach } from "./lanes.ts";
import { nearestOn, type Track, trackPieces } from "./track.ts";

/** The strip's way round the plan as its box has room for it, and the stretch of the recording that the person zoomed to. */
export function useStripView(duration: number) {
  const element = useRef<HTMLDivElement>(null);
  const [box, setBox] = useState({ width: 0, height: 0 });
  const [stretch, setStretch] = useState<{ from: number; to: number } | null>(null);
  useEffect(() => {
    if (!element.current) return;
    const watcher = new ResizeObserver(([entry]) => {
      const { width = 0, height = 0 } = entry?.contentRect ?? {};
      setBox({ width: Math.floor(width), height: Math.floor(height) });
    });
    watcher.observe(element.current);
    return () => watcher.disconnect();
  }, []);
  const track = useMemo<Track>(() => ({ ...box, inset: outerReach, radius: cornerRadius }), [box]);
  const pieces = useMemo(() => trackPieces(track), [track]);
  const length = pieces.at(-1)?.to ?? 0;

  const shown = stretch ?? { from: 0, to: Math.max(duration, 1) };
  const { from, to } = shown;
  const view = useMemo<StripView>(() => ({ from, to, width: Math.max(length, 1) }), [from, to, length]);
  /** The view as the hand has it: several turns of a wheel come before the next drawing. */
  const latest = useRef(view);
  latest.current = view;

  const show = useCallback(
    (next: StripView) => {
      latest.current = next;
      setStretch(next.from <= 0 && next.to >= duration ? null : { from: next.from, to: next.to });
    },
    [duration],
  );
  const zoom = useCallback((around: number, factor: number) => show(zoomView(latest.current, duration, around, factor)), [show, duration]);
  const slide = useCallback((seconds: number) => show(slideView(latest.current, duration, seconds)), [show, duration]);
  const whole = useCallback(() => setStretch(null), []);
  /** Slides to a moment that the view does not show. */
  const bring = useCallback(
    (moment: number) => {
      const { from: first, to: last } = latest.current;
      if (moment < first || moment > last) slide(moment - first - (last - first) * 0.1);
    },
    [slide],
  );

  // React listens to wheels passively, where the page's own scrolling could not be held back.
  useEffect(() => {
    const strip = element.current;
    if (!strip) return;
    let turned: { along: number; zoomed: number; slid: number } | null = null;
    let frame = 0;
    // What turns between two frames is one change.
    const take = () => {
      const turns = turned;
      turned = null;
      if (!turns) return;
      if (turns.zoomed !== 1) zoom(secondsAt(latest.current, turns.along), turns.zoomed);
      if (turns.slid !== 0) slide((turns.slid / latest.current.width) * (latest.current.to - latest.current.from));
    };
    const turn = (event: WheelEvent) => {
      if (!event.ctrlKey && latest.current.to - latest.current.from >= duration) return;
      event.preventDefault();
      const { left, top } = strip.getBoundingClientRect();
      const { along } = nearestOn(pieces, track.radius, event.clientX - left, event.clientY - top);
      if (!turned) frame = requestAnimationFrame(take);
      turned ??= { along, zoomed: 1, slid: 0 };
      turned.along = along;
      if (event.ctrlKey) turned.zoomed *= event.deltaY > 0 ? 1.25 : 0.8;
      else turned.slid += event.deltaX || event.deltaY;
    };
    strip.addEventListener("wheel", turn, { passive: false });
    return () => {
      cancelAnimationFrame(frame);
      strip.removeEventListener("wheel", turn);
    };
  }, [zoom, slide, duration, pieces, track]);

  return { element, track, pieces, view, zoomed: stretch !== null, zoom, bring, whole };
}
