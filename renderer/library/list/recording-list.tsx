import { useVirtualizer } from "@tanstack/react-virtual";
import { type ReactNode, useRef } from "react";
import type { RecordingSummary } from "../../../shared-types/index.ts";

/** From so many on only the rows in sight are in the page, in a list that scrolls by itself. */
export const longList = 25;

/** Height of a row before it is measured, in pixels. */
const likelyHeight = 88;

export interface RecordingListProps {
  readonly recordings: readonly RecordingSummary[];
  readonly row: (recording: RecordingSummary) => ReactNode;
}

/** All recordings; hundreds stay quick. */
export function RecordingList({ recordings, row }: RecordingListProps) {
  if (recordings.length >= longList) return <LongList recordings={recordings} row={row} />;
  return (
    <ul className="recordings" aria-label="Recordings">
      {recordings.map((recording) => (
        <li key={recording.id} className="recording">
          {row(recording)}
        </li>
      ))}
    </ul>
  );
}

function LongList({ recordings, row }: RecordingListProps) {
  const scroller = useRef<HTMLElement>(null);
  const rows = useVirtualizer({
    count: recordings.length,
    getScrollElement: () => scroller.current,
    estimateSize: () => likelyHeight,
    overscan: 6,
    getItemKey: (index) => recordings[index]?.id ?? index,
  });
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a list that scrolls must be reachable from the keyboard
    <section ref={scroller} className="recordings recordings-long" tabIndex={0} aria-label="All recordings">
      <ul className="recordings-all" aria-label="Recordings" style={{ height: rows.getTotalSize() }}>
        {rows.getVirtualItems().map(({ key, index, start }) => {
          const recording = recordings[index];
          if (!recording) return null;
          return (
            <li
              key={key}
              ref={rows.measureElement}
              data-index={index}
              className="recording"
              aria-setsize={recordings.length}
              aria-posinset={index + 1}
              style={{ transform: `translateY(${start}px)` }}
            >
              {row(recording)}
            </li>
          );
        })}
      </ul>
    </section>
  );
}
