import { memo, useCallback, useDeferredValue, useMemo, useRef, useState } from "react";
import type { RecordingDetail } from "../../../shared-types/index.ts";
import type { Clock } from "../../player/clock.ts";
import { useClockValue } from "../../player/use-clock.ts";
import { Button } from "../../shared/button.tsx";
import { useShortcuts } from "../../shared/keys.ts";
import { tenthsLabel } from "../../shared/time.ts";
import { doubtfulStretches } from "../doubtful-stretches.ts";
import { nearestBorder } from "../lap.ts";
import type { Marks } from "../use-marks.ts";
import { Arcs } from "./arcs.tsx";
import { Borders } from "./borders.tsx";
import { type StripConflict, stripConflicts } from "./conflict-arcs.ts";
import { ConflictStops, conflictBeside } from "./conflict-stops.tsx";
import { FindingMarks } from "./finding-marks.tsx";
import { type StripView, secondsAt, tickMoments, xOf } from "./geometry.ts";
import { lanes } from "./lanes.ts";
import "./lap-strip.css";
import { Playhead } from "./playhead.tsx";
import { SpanBand } from "./span-band.tsx";
import { useStripView } from "./use-strip-view.ts";

export interface LapStripProps {
  readonly detail: RecordingDetail;
  readonly clock: Clock;
  readonly marks: Marks;
  /** Stands at the head of the strip, before the zoom. */
  readonly tools: React.ReactNode;
  readonly onMoveBorder: (from: number, to: number) => void;
  readonly onPickFinding: (findingId: string) => void;
  readonly onOpenConflict: (conflictKey: string) => void;
}

/** The whole recording as one band: where the camera is, what was found, what is doubtful, and arcs between the sides of each conflict. */
export function LapStrip({ detail, clock, marks, tools, onMoveBorder, onPickFinding, onOpenConflict }: LapStripProps) {
  // The video's own length once it is known; the transcript may end earlier.
  const clockDuration = useClockValue(clock, (reading) => reading.duration);
  const duration = Math.max(detail.summary.duration, clockDuration, detail.lap.at(-1)?.end ?? 0, 1);
  const { element, view: wanted, zoomed, zoom, slide, whole } = useStripView(duration);
  // What is drawn may be a view behind the wheel: a turn of it is never held up by the drawing of the one before.
  const view = useDeferredValue(wanted);
  const conflicts = useMemo(() => stripConflicts(detail.analysis, detail.openConflictKeys), [detail.analysis, detail.openConflictKeys]);
  const [focusedConflict, setFocusedConflict] = useState<string | null>(null);
  const dragging = useRef(false);
  const goToConflict = useCallback(
    (index: number) => {
      const moment = conflicts[index]?.moments[0];
      if (moment === undefined) return;
      const seconds = view.to - view.from;
      if (moment < view.from || moment > view.to) slide(moment - view.from - seconds * 0.1);
      element.current?.querySelector<HTMLElement>(`[data-conflict="${index}"]`)?.focus();
    },
    [conflicts, view, slide, element],
  );
  const leaveConflicts = useCallback(() => element.current?.querySelector<HTMLElement>(".playhead")?.focus(), [element]);
  const besideConflict = (direction: 1 | -1) => {
    if (conflicts.length === 0) return;
    const index = conflicts.findIndex(({ conflict }) => conflict.key === focusedConflict);
    goToConflict(conflictBeside(conflicts, index >= 0 ? { index } : { seconds: clock.read().time }, direction));
  };
  const stripKeys: Record<string, () => void> = {
    "=": () => zoom(clock.read().time, 0.5),
    "+": () => zoom(clock.read().time, 0.5),
    "-": () => zoom(clock.read().time, 2),
    "0": whole,
    c: () => besideConflict(1),
    "shift+c": () => besideConflict(-1),
    b: () => focusNearestBorder(element.current, detail.lap, clock.read().time),
  };
  useShortcuts((key) => {
    const act = stripKeys[key.toLowerCase()];
    act?.();
    return act !== undefined;
  });

  const seekTo = (clientX: number) => {
    const box = element.current?.getBoundingClientRect();
    if (box) clock.seek(secondsAt(view, clientX - box.left));
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
        onPointerDown={(event) => {
          if (event.button !== 0) return;
          dragging.current = true;
          event.currentTarget.setPointerCapture(event.pointerId);
          seekTo(event.clientX);
        }}
        onPointerMove={(event) => {
          if (dragging.current) seekTo(event.clientX);
        }}
        onPointerUp={() => {
          dragging.current = false;
        }}
        onPointerCancel={() => {
          dragging.current = false;
        }}
      >
        <svg width={view.width} height={lanes.height} aria-hidden="true" className="lap-svg">
          <StillStrip
            detail={detail}
            from={view.from}
            to={view.to}
            width={view.width}
            marks={marks}
            conflicts={conflicts}
            focusedConflict={focusedConflict}
            onPickFinding={onPickFinding}
            onOpenConflict={onOpenConflict}
          />
        </svg>
        <ConflictStops
          conflicts={conflicts}
          view={view}
          onOpen={onOpenConflict}
          onPoint={setFocusedConflict}
          onGo={goToConflict}
          onLeave={leaveConflicts}
        />
        <Borders lap={detail.lap} view={view} onMoveBorder={onMoveBorder} />
        <Playhead clock={clock} view={view} lap={detail.lap} />
      </div>
    </section>
  );
}

/** Hands the keyboard to the border nearest to the playhead. */
function focusNearestBorder(strip: HTMLElement | null, lap: RecordingDetail["lap"], seconds: number): void {
  const border = nearestBorder(lap, seconds);
  const index = lap.slice(1).findIndex((span) => span.start === border);
  strip?.querySelector<HTMLElement>(`[data-border="${index}"]`)?.focus();
}

interface StillStripProps extends StripView {
  readonly detail: RecordingDetail;
  readonly marks: Marks;
  readonly conflicts: readonly StripConflict[];
  readonly focusedConflict: string | null;
  readonly onPickFinding: (findingId: string) => void;
  readonly onOpenConflict: (conflictKey: string) => void;
}

/** Everything that does not move while the recording plays. */
const StillStrip = memo(function StillStrip(props: StillStripProps) {
  const { detail, from, to, width, marks, conflicts, focusedConflict, onPickFinding, onOpenConflict } = props;
  const view = useMemo(() => ({ from, to, width }), [from, to, width]);
  const doubtful = useMemo(() => doubtfulStretches(detail.analysis.doubtful, detail.captions), [detail.analysis.doubtful, detail.captions]);
  const { start, end } = marks;
  return (
    <>
      <defs>
        <pattern id="doubtful-pattern" width="5" height="5" patternUnits="userSpaceOnUse">
          <path d="M0 5L5 0" className="doubt-line" />
        </pattern>
      </defs>
      <SpanBand lap={detail.lap} view={view} />
      {doubtful
        .filter((stretch) => stretch.end >= from && stretch.start <= to)
        .map((stretch) => (
          <rect
            key={stretch.start}
            className="lap-doubtful"
            x={xOf(view, stretch.start)}
            width={Math.max(2, xOf(view, stretch.end) - xOf(view, stretch.start))}
            y={lanes.doubtful.top}
            height={lanes.doubtful.height}
          >
            <title>{stretch.why}</title>
          </rect>
        ))}
      <Arcs conflicts={conflicts} view={view} focused={focusedConflict} onOpenConflict={onOpenConflict} />
      <FindingMarks findings={detail.findings} proposals={detail.findingProposals} view={view} onPick={onPickFinding} />
      {tickMoments(view).map((seconds) => {
        // The last tick's label would leave the strip.
        const x = xOf(view, seconds);
        return (
          <g key={seconds} className="lap-tick">
            <path d={`M${x} ${lanes.ticks.top}v4`} />
            {x < view.width - 34 ? (
              <text x={x + 3} y={lanes.ticks.top + 12}>
                {view.to - view.from < 20 ? tenthsLabel(seconds) : tenthsLabel(seconds).slice(0, -2)}
              </text>
            ) : null}
          </g>
        );
      })}
      {start !== null || end !== null ? (
        <g className="lap-marks">
          <rect
            x={xOf(view, start ?? end ?? 0)}
            width={Math.max(1, xOf(view, end ?? start ?? 0) - xOf(view, start ?? end ?? 0))}
            y={lanes.names.top}
            height={lanes.band.top + lanes.band.height - lanes.names.top}
          />
          {start !== null ? (
            <path d={`M${xOf(view, start) + 5} ${lanes.names.top}h-5v${lanes.names.height + lanes.band.height}h5`} />
          ) : null}
          {end !== null ? <path d={`M${xOf(view, end) - 5} ${lanes.names.top}h5v${lanes.names.height + lanes.band.height}h-5`} /> : null}
        </g>
      ) : null}
    </>
  );
});
