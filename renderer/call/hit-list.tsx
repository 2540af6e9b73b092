import { useEffect, useRef } from "react";
import { type SearchHit, timeLabel, zoneLabels } from "../../shared-types/index.ts";
import { keepFocus } from "../shared/keep-focus.ts";
import { ZoneSwatch } from "../shared/zone-patterns.tsx";
import { standingOf } from "./answer-words.ts";

const kindWords = { zone: "zone", claim: "claim", finding: "finding", caption: "said" } as const satisfies Record<
  SearchHit["kind"],
  string
>;

export function hitId(index: number): string {
  return `call-hit-${index}`;
}

export interface HitListProps {
  readonly hits: readonly SearchHit[];
  readonly chosen: number;
  readonly onChoose: (index: number) => void;
  readonly onPlay: (index: number) => void;
}

/** Moments that answer the query; the focus stays in the field, the chosen one is told to screen readers from there. */
export function HitList({ hits, chosen, onChoose, onPlay }: HitListProps) {
  const list = useRef<HTMLDivElement>(null);
  useEffect(() => {
    list.current?.children[chosen]?.scrollIntoView({ block: "nearest" });
  }, [chosen]);
  return (
    <div className="hits" id="call-hits" role="listbox" aria-label="Moments" ref={list} tabIndex={-1}>
      {hits.map((hit, index) => (
        // biome-ignore lint/a11y/useFocusableInteractive: an option of a list whose focus stays in the field
        // biome-ignore lint/a11y/useKeyWithClickEvents: the field's arrow keys and Enter do the same
        <div
          key={`${hit.recordingId} ${hit.kind} ${hit.start} ${hit.text}`}
          id={hitId(index)}
          className="hit"
          role="option"
          aria-selected={index === chosen}
          {...keepFocus}
          onClick={() => onChoose(index)}
          onDoubleClick={() => onPlay(index)}
        >
          <span className="hit-time">{timeLabel(hit.start)}</span>
          <span className="hit-text">
            {hit.text}
            {standingOf(hit) ? (
              <span className="chip" data-kind={hit.disputed ? "dispute" : undefined}>
                {standingOf(hit)}
              </span>
            ) : null}
          </span>
          <span className="hit-place small">
            <ZoneSwatch zone={hit.zone} /> {zoneLabels[hit.zone]}, {kindWords[hit.kind]}.{" "}
            {[hit.stockNumber, hit.recordingTitle].filter(Boolean).join(", ")}
            {hit.readAs === null ? null : <> (read as “{hit.readAs}”)</>}
          </span>
        </div>
      ))}
    </div>
  );
}
