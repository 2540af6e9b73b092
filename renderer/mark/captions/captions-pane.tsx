import { useVirtualizer } from "@tanstack/react-virtual";
import { useEffect, useMemo, useRef, useState } from "react";
import { type LapSpan, type RecordingDetail, timeLabel } from "../../../shared-types/index.ts";
import { captionAt } from "../../player/caption-at.ts";
import type { Clock } from "../../player/clock.ts";
import { useClockValue } from "../../player/use-clock.ts";
import { Button } from "../../shared/button.tsx";
import { captionNotes, disputedClaims } from "../../shared/caption-segments.ts";
import { counted } from "../../shared/count.ts";
import { keepFocus } from "../../shared/keep-focus.ts";
import { MarkedCaption } from "../../shared/marked-caption.tsx";
import { ZoneSwatch } from "../../shared/zone-patterns.tsx";
import { spanAt } from "../lap.ts";
import "./captions-pane.css";

export interface CaptionsPaneProps {
  readonly detail: RecordingDetail;
  readonly clock: Clock;
}

/** The transcript, following the playhead while asked to; a caption's time goes to its moment. */
export function CaptionsPane({ detail, clock }: CaptionsPaneProps) {
  const { captions, analysis, lap } = detail;
  const scroller = useRef<HTMLDivElement>(null);
  const [follow, setFollow] = useState(true);
  const current = useClockValue(clock, (reading) => captionAt(captions, reading.time));
  const notes = useMemo(() => captionNotes(analysis, detail.rulings), [analysis, detail.rulings]);
  const disputed = useMemo(
    () => disputedClaims(analysis.conflicts, detail.openConflictKeys),
    [analysis.conflicts, detail.openConflictKeys],
  );
  const headings = useMemo(() => headingSpans(captions, lap), [captions, lap]);
  const rows = useVirtualizer({
    count: captions.length,
    getScrollElement: () => scroller.current,
    estimateSize: (index) => 34 + Math.ceil((captions[index]?.text.length ?? 0) / 52) * 20,
    overscan: 6,
    getItemKey: (index) => captions[index]?.index ?? index,
  });
  useEffect(() => {
    if (follow && current >= 0) rows.scrollToIndex(current, { align: "center" });
  }, [follow, current, rows]);

  return (
    <div className="captions">
      <div className="captions-tools">
        <Button weight="quiet" aria-pressed={follow} onClick={() => setFollow(!follow)} tip="The list moves with the playhead">
          Follow
        </Button>
        <span className="small soft">
          {counted(captions.length, "caption", "captions")}, {counted(analysis.claims.length, "claim", "claims")},{" "}
          {counted(analysis.repairs.length, "repair", "repairs")}
        </span>
      </div>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a list that scrolls must be reachable from the keyboard */}
      <section ref={scroller} className="captions-scroll" tabIndex={0} aria-label="Captions">
        <ol className="captions-list" style={{ height: rows.getTotalSize() }}>
          {rows.getVirtualItems().map((row) => {
            const caption = captions[row.index];
            if (!caption) return null;
            const heading = headings.get(row.index);
            const noted = notes(caption.index);
            return (
              <li
                key={row.key}
                ref={rows.measureElement}
                data-index={row.index}
                className="caption"
                data-current={row.index === current || undefined}
                data-doubtful={noted.doubtful !== null || undefined}
                aria-current={row.index === current ? "true" : undefined}
                aria-setsize={captions.length}
                aria-posinset={row.index + 1}
                style={{ transform: `translateY(${row.start}px)` }}
              >
                {heading ? (
                  <div className="caption-zone">
                    <ZoneSwatch zone={heading.zone} /> {heading.title}
                  </div>
                ) : null}
                <button
                  type="button"
                  className="caption-time"
                  {...keepFocus}
                  onClick={() => clock.seek(caption.start)}
                  aria-label={`Go to ${timeLabel(caption.start)}`}
                >
                  {timeLabel(caption.start)}
                </button>
                <MarkedCaption caption={caption} notes={noted} disputed={disputed} />
              </li>
            );
          })}
        </ol>
      </section>
    </div>
  );
}

/** The span that begins to be spoken about at each caption, where it is another than before. */
function headingSpans(captions: RecordingDetail["captions"], lap: readonly LapSpan[]): Map<number, LapSpan> {
  const headings = new Map<number, LapSpan>();
  let before: LapSpan | undefined;
  captions.forEach((caption, index) => {
    // A span that starts within a caption is headed at that caption only if most of it lies there.
    const span = spanAt(lap, (caption.start + caption.end) / 2);
    if (span && span !== before) headings.set(index, span);
    before = span;
  });
  return headings;
}
