import { memo } from "react";
import type { RecordingDetail } from "../../../shared-types/index.ts";
import type { Clock } from "../../player/clock.ts";
import { useClockValue } from "../../player/use-clock.ts";
import { Button } from "../../shared/button.tsx";
import { tenthsLabel } from "../../shared/time.ts";
import { ZoneSwatch } from "../../shared/zone-patterns.tsx";
import { spanAt } from "../lap.ts";
import type { MarkActions } from "../use-mark-actions.ts";
import "./spans.css";

export interface SpanBarProps {
  readonly detail: RecordingDetail;
  readonly clock: Clock;
  readonly desk: MarkActions;
}

/** The span at the playhead and what can be done with it. */
export const SpanBar = memo(function SpanBar({ detail, clock, desk: { actions, acceptedBefore } }: SpanBarProps) {
  const span = useClockValue(clock, (reading) => spanAt(detail.lap, reading.time));
  if (!span) return null;
  const proposed = span.zoneSpanId === null;
  return (
    <section className="span-bar" aria-label="Span at the playhead" data-proposed={proposed || undefined}>
      <ZoneSwatch zone={span.zone} />
      <strong className="span-bar-title">{span.title}</strong>
      <span className="time small">
        {tenthsLabel(span.start)} to {tenthsLabel(span.end)}
      </span>
      {proposed ? (
        <span className="chip" data-kind="proposed" title={span.evidence.map((words) => `“${words}”`).join("\n")}>
          {/* One run of text: a chip lays its children out with gaps between them. */}
          <span className="span-proposed">
            proposed{span.evidence[0] ? <span className="span-evidence">: “{span.evidence[0]}”</span> : null}
          </span>
        </span>
      ) : null}
      <span role="status" className="small soft">
        {acceptedBefore !== null && acceptedBefore.id === span.zoneSpanId ? (
          <span key={acceptedBefore.presses}>Accepted already: there is nothing to accept here.</span>
        ) : null}
      </span>
      <span className="span-bar-tools">
        {proposed ? (
          <Button shortcut="A" onClick={actions.accept}>
            Accept
          </Button>
        ) : null}
        <Button weight="quiet" shortcut="S" onClick={actions.split}>
          Split
        </Button>
        <Button weight="quiet" shortcut="Shift+S" onClick={actions.join} tip="Joins the two spans at the border nearest to the playhead">
          Join
        </Button>
        <Button weight="quiet" shortcut="T" onClick={actions.retitle}>
          Retitle…
        </Button>
        {proposed ? null : (
          <Button weight="quiet" onClick={actions.remove} tip="Takes your span away; the proposal shows again" aria-keyshortcuts="Delete">
            Remove
          </Button>
        )}
      </span>
    </section>
  );
});
