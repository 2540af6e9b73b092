import { type PointerEvent, useCallback, useLayoutEffect, useMemo, useRef, useState } from "react";
import type { RecordingDetail } from "../../../shared-types/index.ts";
import type { Clock } from "../../player/clock.ts";
import { useClockValue } from "../../player/use-clock.ts";
import { Button } from "../../shared/button.tsx";
import { useShortcuts } from "../../shared/keys.ts";
import { tenthsLabel } from "../../shared/time.ts";
import { nearestBorder } from "../lap.ts";
import type { Marks } from "../use-marks.ts";
import { Borders } from "./borders.tsx";
import { stripConflicts } from "./conflict-arcs.ts";
import { ConflictStops, conflictBeside } from "./conflict-stops.tsx";
import { secondsAt } from "./geometry.ts";
import { innerReach, lanes, outerReach } from "./lanes.ts";
import { LapCanvas } from "./lap-canvas.tsx";
import { hitAt, type LapHit } from "./lap-hits.ts";
import "./lap-strip.css";
import { Playhead } from "./playhead.tsx";
import { nearestOn } from "./track.ts";
import { useStripView } from "./use-strip-view.ts";

export interface LapStripProps {
  readonly detail: RecordingDetail;
  readonly clock: Clock;
  readonly marks: Marks;
  /** Stands at the head of the strip, before the zoom. */
  readonly tools: React.ReactNode;
  /** What the lap goes round. */
  readonly children: React.ReactNode;
  readonly onMoveBorder: (from: number, to: number) => void;
  readonly onPickFinding: (findingId: string) => void;
  readonly onOpenConflict: (conflictKey: string) => void;
}

/** What the pointer or the keyboard is at. */
interface Pointed {
  readonly conflict: string | null;
  readonly note: { readonly x: number; readonly y: number; readonly words: string } | null;
}
const nothing: Pointed = { conflict: null, note: null };

/** The whole recording as one band round the plan: where the camera is, what was found, what is doubtful, and lines between the sides of each conflict. */
export function LapStrip({ detail, clock, marks, tools, children, onMoveBorder, onPickFinding, onOpenConflict }: LapStripProps) {
  const { lap } = detail;
  // The video's own length once it is known; the transcript may end earlier.
  const clockDuration = useClockValue(clock, (reading) => reading.duration);
  const duration = Math.max(detail.summary.duration, clockDuration, lap.at(-1)?.end ?? 0, 1);
  const { element, track, pieces, view, zoomed, zoom, bring, whole } = useStripView(duration);
  const conflicts = useMemo(() => stripConflicts(detail.analysis, detail.openConflictKeys), [detail.analysis, detail.openConflictKeys]);
  const [focusedConflict, setFocusedConflict] = useState<string | null>(null);
  const [pointed, setPointed] = useState(nothing);
  const [borderStop, setBorderStop] = useState(0);
  /** A border that gets the keyboard as soon as it is on the page. */
  const [wantedBorder, setWantedBorder] = useState<number | null>(null);
  const hits = useRef<readonly LapHit[]>([]);
  const dragging = useRef(false);

  const goToConflict = useCallback(
    (index: number) => {
      const moment = conflicts[index]?.moments[0];
      if (moment === undefined) return;
      bring(moment);
      element.current?.querySelector<HTMLElement>(`[data-conflict="${index}"]`)?.focus();
    },
    [conflicts, bring, element],
  );
  const leaveConflicts = useCallback(() => element.current?.querySelector<HTMLElement>(".playhead")?.focus(), [element]);
  const besideConflict = (direction: 1 | -1) => {
    if (conflicts.length === 0) return;
    const index = conflicts.findIndex(({ conflict }) => conflict.key === focusedConflict);
    goToConflict(conflictBeside(conflicts, index >= 0 ? { index } : { seconds: clock.read().time }, direction));
  };
  const goToBorder = useCallback(
    (index: number) => {
      const border = lap[index + 1];
      if (!border) return;
      bring(border.start);
      setBorderStop(index);
      setWantedBorder(index);
    },
    [lap, bring],
  );
  useLayoutEffect(() => {
    if (wantedBorder === null) return;
    element.current?.querySelector<HTMLElement>(`[data-border="${wantedBorder}"]`)?.focus();
    setWantedBorder(null);
  }, [wantedBorder, element]);
  const stripKeys: Record<string, () => void> = {
    "=": () => zoom(clock.read().time, 0.5),
    "+": () => zoom(clock.read().time, 0.5),
    "-": () => zoom(clock.read().time, 2),
    "0": whole,
    c: () => besideConflict(1),
    "shift+c": () => besideConflict(-1),
    b: () => {
      const border = nearestBorder(lap, clock.read().time);
      goToBorder(lap.slice(1).findIndex((span) => span.start === border));
    },
  };
  useShortcuts((key) => {
    const act = stripKeys[key.toLowerCase()];
    act?.();
    return act !== undefined;
  });

  const placeOf = ({ clientX, clientY }: PointerEvent) => {
    const { left = 0, top = 0 } = element.current?.getBoundingClientRect() ?? {};
    const [x, y] = [clientX - left, clientY - top];
    const { along, outwards } = nearestOn(pieces, track.radius, x, y);
    // Only towards the plan is there anything to pick, so that the band itself is free for the hand that seeks.
    const hit = outwards < lanes.doubtful.from ? hitAt(hits.current, x, y) : null;
    return { seconds: secondsAt(view, along), onStrip: outwards > -innerReach && outwards < outerReach, hit };
  };
  const point = (hit: LapHit | null) => {
    const words = hit?.words ?? null;
    if (words === (pointed.note?.words ?? null)) return;
    setPointed(hit ? { conflict: hit.kind === "conflict" ? hit.key : null, note: { x: hit.x, y: hit.y, words: hit.words } } : nothing);
  };
  const pick = (hit: LapHit | null): boolean => {
    if (hit?.kind === "conflict") onOpenConflict(hit.key);
    else if (hit?.kind === "finding" && hit.id !== null) onPickFinding(hit.id);
    else return false;
    return true;
  };

  return (
    <section className="lap" aria-label="Lap strip">
      <div className="lap-tools">
        {tools}
        <span className="small soft lap-shown">{zoomed ? `${tenthsLabel(view.from)} to ${tenthsLabel(view.to)}` : "whole recording"}</span>
        <Button weight="quiet" shortcut="=" tip="Shows less of the recording, larger" onClick={() => zoom(clock.read().time, 0.5)}>
          Closer
        </Button>
        <Button
          weight="quiet"
          shortcut="-"
          tip="Shows more of the recording, smaller"
          onClick={() => zoom(clock.read().time, 2)}
          disabled={!zoomed}
        >
          Wider
        </Button>
        <Button weight="quiet" shortcut="0" onClick={whole} disabled={!zoomed}>
          Whole
        </Button>
      </div>
      <div
        className="lap-drawing"
        ref={element}
        data-picks={pointed.note !== null || undefined}
        onPointerDown={(event) => {
          if (event.button !== 0) return;
          const { seconds, onStrip, hit } = placeOf(event);
          if (!onStrip || pick(hit)) return;
          dragging.current = true;
          event.currentTarget.setPointerCapture(event.pointerId);
          clock.seek(seconds);
        }}
        onPointerMove={(event) => {
          const { seconds, onStrip, hit } = placeOf(event);
          if (dragging.current) clock.seek(seconds);
          else point(onStrip ? hit : null);
        }}
        onPointerLeave={() => point(null)}
        onPointerUp={() => {
          dragging.current = false;
        }}
        onPointerCancel={() => {
          dragging.current = false;
        }}
      >
        <div className="lap-inside">{children}</div>
        <LapCanvas
          detail={detail}
          track={track}
          pieces={pieces}
          view={view}
          marks={marks}
          conflicts={conflicts}
          pointed={pointed.conflict ?? focusedConflict}
          hits={hits}
        />
        <ConflictStops
          conflicts={conflicts}
          view={view}
          pieces={pieces}
          radius={track.radius}
          focused={focusedConflict}
          onOpen={onOpenConflict}
          onPoint={setFocusedConflict}
          onGo={goToConflict}
          onLeave={leaveConflicts}
        />
        <Borders
          lap={lap}
          view={view}
          pieces={pieces}
          radius={track.radius}
          stop={borderStop}
          onStop={setBorderStop}
          onGo={goToBorder}
          onMoveBorder={onMoveBorder}
        />
        <Playhead clock={clock} view={view} pieces={pieces} radius={track.radius} lap={lap} />
        {pointed.note ? <LapNote {...pointed.note} width={track.width} /> : null}
      </div>
    </section>
  );
}

/** What the pointer is at, in words, beside it. */
function LapNote({ x, y, words, width }: { readonly x: number; readonly y: number; readonly words: string; readonly width: number }) {
  return (
    <p className="lap-note" data-side={x > width / 2 ? "before" : "after"} style={{ left: x, top: y }}>
      {words}
    </p>
  );
}
