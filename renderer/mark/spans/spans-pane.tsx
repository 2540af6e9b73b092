import { type RecordingDetail, timeLabel, zoneLabels } from "../../../shared-types/index.ts";
import type { Clock } from "../../player/clock.ts";
import { useClockValue } from "../../player/use-clock.ts";
import { Button } from "../../shared/button.tsx";
import { keepFocus } from "../../shared/keep-focus.ts";
import { lengthLabel } from "../../shared/time.ts";
import { ZoneSwatch } from "../../shared/zone-patterns.tsx";
import { spanAt } from "../lap.ts";
import type { MarkActions } from "../use-mark-actions.ts";
import type { MarkKeeper } from "../use-marks.ts";
import "./spans.css";

export interface SpansPaneProps {
  readonly detail: RecordingDetail;
  readonly clock: Clock;
  readonly desk: MarkActions;
  readonly keeper: MarkKeeper;
}

/** All zone spans as a list: the strip, for whoever would rather read. */
export function SpansPane({ detail, clock, desk, keeper }: SpansPaneProps) {
  const { lap } = detail;
  const here = useClockValue(clock, (reading) => spanAt(lap, reading.time));
  const waiting = lap.filter((span) => span.zoneSpanId === null).length;
  const last = lap.at(-1);
  return (
    <div className="pane-scroll">
      <div className="row">
        <Button onClick={() => (last ? void desk.acceptZones(0, last.end) : undefined)} disabled={waiting === 0}>
          Accept all proposed zones
        </Button>
        <Button onClick={desk.actions["accept-stretch"]} disabled={keeper.stretch === null} shortcut="Shift+A">
          Accept marked stretch
        </Button>
      </div>
      <ol className="spans" aria-label="Zone spans">
        {lap.map((span, index) => (
          <li
            key={span.start}
            className="span-row"
            data-here={span === here || undefined}
            data-proposed={span.zoneSpanId === null || undefined}
            aria-current={span === here ? "true" : undefined}
          >
            <ZoneSwatch zone={span.zone} />
            <button type="button" className="span-go" {...keepFocus} onClick={() => clock.seek(span.start)}>
              <span className="visually-hidden">Go to </span>
              <span className="time">{timeLabel(span.start)}</span> {span.title}
              <span className="span-more">
                {lengthLabel(span.end - span.start)}, {span.zoneSpanId === null ? "proposed" : "accepted"}
                {span.title === zoneLabels[span.zone] ? "" : `, ${zoneLabels[span.zone].toLowerCase()}`}
              </span>
            </button>
            <span className="span-row-tools">
              {span.zoneSpanId === null ? (
                <Button
                  onClick={() => void desk.acceptZones(span.start, span.end)}
                  aria-label={`Accept ${span.title}, ${timeLabel(span.start)}`}
                >
                  Accept
                </Button>
              ) : (
                <Button weight="quiet" onClick={() => desk.remove(span)} aria-label={`Remove ${span.title}, ${timeLabel(span.start)}`}>
                  Remove
                </Button>
              )}
              {index > 0 ? (
                <Button
                  weight="quiet"
                  onClick={() => desk.join(span.start)}
                  aria-label={`Join ${span.title}, ${timeLabel(span.start)}, to the span before`}
                  tip="Join to the span before"
                >
                  ⤒
                </Button>
              ) : null}
            </span>
          </li>
        ))}
      </ol>
    </div>
  );
}
