import { useCallback, useEffect, useMemo, useRef, useState } from "react";
import { type StripView, slideView, zoomView } from "./geometry.ts";

/** The strip's view: its measured width, and the stretch of the recording that the person zoomed to. */
export function useStripView(duration: number) {
  const element = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(0);
  const [stretch, setStretch] = useState<{ from: number; to: number } | null>(null);
  useEffect(() => {
    if (!element.current) return;
    const watcher = new ResizeObserver(([entry]) => setWidth(Math.floor(entry?.contentRect.width ?? 0)));
    watcher.observe(element.current);
    return () => watcher.disconnect();
  }, []);

  const shown = stretch ?? { from: 0, to: Math.max(duration, 1) };
  const { from, to } = shown;
  const view = useMemo<StripView>(() => ({ from, to, width: Math.max(width, 1) }), [from, to, width]);
  const latest = useRef(view);
  latest.current = view;

  const show = useCallback(
    (next: StripView) => setStretch(next.from <= 0 && next.to >= duration ? null : { from: next.from, to: next.to }),
    [duration],
  );
  const zoom = useCallback((around: number, factor: number) => show(zoomView(latest.current, duration, around, factor)), [show, duration]);
  const slide = useCallback((seconds: number) => show(slideView(latest.current, duration, seconds)), [show, duration]);
  const whole = useCallback(() => setStretch(null), []);

  // React listens to wheels passively, where the page's own scrolling could not be held back.
  useEffect(() => {
    const strip = element.current;
    if (!strip) return;
    const turn = (event: WheelEvent) => {
      const seconds = latest.current.to - latest.current.from;
      if (event.ctrlKey) {
        event.preventDefault();
        const box = strip.getBoundingClientRect();
        const at = latest.current.from + ((event.clientX - box.left) / box.width) * seconds;
        zoom(at, event.deltaY > 0 ? 1.25 : 0.8);
      } else if (latest.current.to - latest.current.from < duration) {
        event.preventDefault();
        slide(((event.deltaX || event.deltaY) / latest.current.width) * seconds);
      }
    };
    strip.addEventListener("wheel", turn, { passive: false });
    return () => strip.removeEventListener("wheel", turn);
  }, [zoom, slide, duration]);

  return { element, view, zoomed: stretch !== null, zoom, slide, whole };
}
