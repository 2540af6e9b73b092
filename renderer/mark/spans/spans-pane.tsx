import { useCallback, useState } from "react";
import { type LapSpan, type RecordingDetail, timeLabel, zoneLabels } from "../../../shared-types/index.ts";
import type { Clock } from "../../player/clock.ts";
import { useClockValue } from "../../player/use-clock.ts";
import { Button } from "../../shared/button.tsx";
import { keepFocus } from "../../shared/keep-focus.ts";
import { lengthLabel } from "../../shared/time.ts";
import { ZoneSwatch } from "../../shared/zone-patterns.tsx";
import { useCalmPlace } from "../captions/use-calm-place.ts";
import { spanAt } from "../lap.ts";
import type { MarkActions } from "../use-mark-actions.ts";
import type { MarkKeeper } from "../use-marks.ts";
import { keyboardStayed, VirtualRows } from "../virtual-rows.tsx";
import "./spans.css";

export interface SpansPaneProps {
  readonly detail: RecordingDetail;
  readonly clock: Clock;
  readonly desk: MarkActions;
  readonly keeper: MarkKeeper;
}

const spanKey = (span: LapSpan): string => String(span.start);

/** All zone spans as a list: the strip, for whoever would rather read. */
export function SpansPane({ detail, clock, desk, keeper }: SpansPaneProps) {
  const { lap } = detail;
  const here = useClockValue(clock, (reading) => spanAt(lap, reading.time));
  const at = here ? lap.indexOf(here) : 0;
  const calm = useCalmPlace(at);
  const [focusRow, setFocusRow] = useState<string | null>(null);
  const focused = useCallback(() => setFocusRow(null), []);
  const waiting = lap.filter((span) => span.zoneSpanId === null).length;
  /** The accepted row's button goes; the keyboard goes on to the next proposed span, so that one key accepts one after another. */
  const accept = async (span: LapSpan) => {
    const proposed = lap.filter((each) => each.zoneSpanId === null && each !== span);
    const next = proposed.find((each) => each.start > span.start) ?? proposed[0];
    if ((await desk.acceptZones(span.start, span.end)) && keyboardStayed()) setFocusRow(next ? spanKey(next) : "");
  };
  return (
    <VirtualRows
      label="Zone spans"
      className="spans"
      rows={lap}
      rowKey={spanKey}
      estimate={48}
      startAt={at}
      follow={calm}
      focusRow={focusRow}
      onFocused={focused}
      head={
        <div className="row">
          <Button onClick={desk.actions["accept-all"]} disabled={waiting === 0} shortcut="Shift+Y">
            Accept all ({waiting})
          </Button>
          <Button onClick={desk.actions["accept-stretch"]} disabled={keeper.stretch === null} shortcut="Shift+A">
            Accept marked
          </Button>
        </div>
      }
    >
      {(span) => ({
        attributes: {
          "data-here": span === here || undefined,
          "data-proposed": span.zoneSpanId === null || undefined,
        },
        content: (
          <>
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
                <Button data-first onClick={() => void accept(span)} aria-label={`Accept ${span.title}, ${timeLabel(span.start)}`}>
                  Accept
                </Button>
              ) : (
                <Button
                  weight="quiet"
                  data-first
                  onClick={() => desk.remove(span)}
                  aria-label={`Remove ${span.title}, ${timeLabel(span.start)}`}
                >
                  Remove
                </Button>
              )}
              {span === lap[0] ? null : (
                <Button
                  weight="quiet"
                  onClick={() => desk.join(span.start)}
                  aria-label={`Join ${span.title}, ${timeLabel(span.start)}, to the span before`}
                  tip="Join to the span before"
                >
                  ⤒
                </Button>
              )}
            </span>
          </>
        ),
      })}
    </VirtualRows>
  );
}
