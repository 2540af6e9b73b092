import { defaultRangeExtractor, useVirtualizer } from "@tanstack/react-virtual";
import { memo, useCallback, useDeferredValue, useEffect, useEffectEvent, useMemo, useRef, useState } from "react";
import { type LapSpan, type RecordingDetail, timeLabel } from "../../../shared-types/index.ts";
import type { Edit } from "../../client/use-recording.ts";
import { captionAt } from "../../player/caption-at.ts";
import type { Clock } from "../../player/clock.ts";
import { useClockValue } from "../../player/use-clock.ts";
import { Button } from "../../shared/button.tsx";
import { captionNotes, disputedClaims } from "../../shared/caption-segments.ts";
import { counted } from "../../shared/count.ts";
import { useShortcuts } from "../../shared/keys.ts";
import { spanAt } from "../lap.ts";
import type { CaptionsAsk } from "../use-mark-actions.ts";
import { CaptionEditor } from "./caption-editor.tsx";
import { captionHits, hitBeside } from "./caption-hits.ts";
import { type CaptionActs, CaptionRow } from "./caption-row.tsx";
import { CaptionsSearch } from "./captions-search.tsx";
import "./captions-pane.css";
import { claimsCount } from "./claims-count.ts";
import { useCalmPlace } from "./use-calm-place.ts";
import { useHitHighlight } from "./use-hit-highlight.ts";

export interface CaptionsPaneProps {
  readonly detail: RecordingDetail;
  readonly clock: Clock;
  readonly edit: Edit;
  /** What a key asked of this pane; it is answered once. */
  readonly ask: CaptionsAsk | null;
  readonly onAnswered: () => void;
}

/** The transcript, following the playhead while asked to: search it, go to a caption's moment, put its words right. */
export const CaptionsPane = memo(function CaptionsPane({ detail, clock, edit, ask, onAnswered }: CaptionsPaneProps) {
  const { captions, analysis, lap } = detail;
  const scroller = useRef<HTMLDivElement>(null);
  const field = useRef<HTMLInputElement>(null);
  const [words, setWords] = useState("");
  const [follow, setFollow] = useState(true);
  /** Place of the caption whose words are in the field. */
  const [editing, setEditing] = useState<number | null>(null);
  const [originals, setOriginals] = useState<ReadonlySet<number>>(new Set());
  const [hitAt, setHitAt] = useState<number | null>(null);
  const before = useRef<Element | null>(null);
  const heard = useClockValue(clock, (reading) => captionAt(captions, reading.time));
  const current = useCalmPlace(heard);
  const notes = useMemo(() => captionNotes(analysis, detail.rulings), [analysis, detail.rulings]);
  const disputed = useMemo(
    () => disputedClaims(analysis.conflicts, detail.openConflictKeys),
    [analysis.conflicts, detail.openConflictKeys],
  );
  const corrections = useMemo(() => new Map(detail.captionCorrections.map((one) => [one.caption, one])), [detail.captionCorrections]);
  const trusted = useMemo(() => new Map(detail.trustedCaptions.map((one) => [one.caption, one.initials])), [detail.trustedCaptions]);
  const headings = useMemo(() => headingSpans(captions, lap), [captions, lap]);
  // The hits may be a letter behind the hand, which is never held up by the search.
  const sought = useDeferredValue(words);
  const hits = useMemo(() => captionHits(captions, analysis.repairs, sought), [captions, analysis.repairs, sought]);
  // One function for one list: at another one the list reckons the places of all its rows anew, of ten thousand at each drawing.
  const keyOf = useCallback((index: number) => captions[index]?.index ?? index, [captions]);
  const rows = useVirtualizer({
    count: captions.length,
    getScrollElement: () => scroller.current,
    estimateSize: (index) => (headings.has(index) ? 42 : 5) + Math.ceil((captions[index]?.text.length ?? 0) / 40) * 23.25,
    overscan: 6,
    getItemKey: keyOf,
    // What is being typed must not go when its row is scrolled away.
    rangeExtractor: (range) => {
      const shown = defaultRangeExtractor(range);
      return editing === null || shown.includes(editing) ? shown : [...shown, editing].sort((a, b) => a - b);
    },
  });
  useHitHighlight(scroller, sought);
  useEffect(() => {
    if (follow && current >= 0 && editing === null) rows.scrollToIndex(current, { align: "center" });
  }, [follow, current, rows, editing]);

  const open = (place: number) => {
    if (!captions[place]) return;
    if (editing === null) before.current = document.activeElement;
    rows.scrollToIndex(place, { align: "auto" });
    setEditing(place);
  };
  const close = () => {
    setEditing(null);
    // Back to where the keyboard was; a list that was scrolled meanwhile takes it itself.
    const back = before.current instanceof HTMLElement && before.current.isConnected ? before.current : scroller.current;
    back?.focus({ preventScroll: true });
  };
  const goToHit = (direction: 1 | -1) => {
    const found = sought === words ? hits : captionHits(captions, analysis.repairs, words);
    const place = hitBeside(found, hitAt ?? Math.max(0, current), direction, hitAt === null);
    const caption = place === undefined ? undefined : captions[place];
    if (place === undefined || !caption) return;
    setHitAt(place);
    rows.scrollToIndex(place, { align: "center" });
    clock.seek(caption.start);
  };
  const toggleOriginal = (index: number) => {
    const next = new Set(originals);
    if (!next.delete(index)) next.add(index);
    setOriginals(next);
  };
  const acts = useSteadyActs({
    go: (place) => {
      const caption = captions[place];
      if (caption) clock.seek(caption.start);
    },
    correct: open,
    original: (place) => toggleOriginal(captions[place]?.index ?? -1),
    trust: (place, trusted) => {
      const caption = captions[place]?.index;
      if (caption !== undefined) void edit("caption.trust", { caption, trusted }, trusted ? "Held for speech" : "Held for noise");
    },
  });
  const answer = useEffectEvent((asked: CaptionsAsk) => {
    // What a key asks is about the playhead, wherever the list is on its way.
    const here = Math.max(0, heard);
    if (asked === "list") scroller.current?.focus({ preventScroll: true });
    else if (asked === "search") {
      field.current?.focus();
      field.current?.select();
    } else if (asked === "correct") open(here);
    else if (asked === "original") toggleOriginal(captions[here]?.index ?? -1);
    else goToHit(asked === "hit-after" ? 1 : -1);
    onAnswered();
  });
  useShortcuts((key) => {
    if (key !== "Escape" || words === "") return false;
    setHitAt(null);
    setWords("");
    return true;
  });
  useEffect(() => {
    if (ask) answer(ask);
  }, [ask]);

  return (
    <div className="mark-words captions">
      <div className="captions-tools">
        <CaptionsSearch
          ref={field}
          words={words}
          count={hits.length}
          at={hitAt === null ? -1 : hits.indexOf(hitAt)}
          onWords={(next) => {
            setHitAt(null);
            setWords(next);
          }}
          onGo={goToHit}
          onLeave={() => scroller.current?.focus({ preventScroll: true })}
        />
        <Button weight="quiet" aria-pressed={follow} onClick={() => setFollow(!follow)} tip="The list moves with the playhead">
          Follow
        </Button>
        <span className="small soft captions-counts">
          {counted(captions.length, "caption", "captions")}, {claimsCount(analysis.claims)},{" "}
          {counted(analysis.repairs.length, "repair", "repairs")}
          {corrections.size > 0 ? `, ${corrections.size} corrected` : ""}
        </span>
      </div>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a list that scrolls must be reachable from the keyboard */}
      <section ref={scroller} className="captions-scroll" tabIndex={0} aria-label="Captions">
        <ol className="captions-list" style={{ height: rows.getTotalSize() }}>
          {rows.getVirtualItems().map((row) => {
            const caption = captions[row.index];
            if (!caption) return null;
            const noted = notes(caption.index);
            const correction = corrections.get(caption.index);
            return (
              <li
                key={row.key}
                ref={rows.measureElement}
                data-index={row.index}
                className="caption"
                data-current={row.index === current || undefined}
                data-hit={row.index === hitAt || undefined}
                data-doubtful={noted.doubtful !== null || undefined}
                aria-current={row.index === current ? "true" : undefined}
                aria-setsize={captions.length}
                aria-posinset={row.index + 1}
                style={{ transform: `translateY(${row.start}px)` }}
              >
                <CaptionRow
                  place={row.index}
                  acts={acts}
                  caption={caption}
                  notes={noted}
                  disputed={disputed}
                  correction={correction}
                  originalShown={originals.has(caption.index)}
                  trustedBy={trusted.get(caption.index)}
                  heading={headings.get(row.index)}
                  editor={
                    editing === row.index ? (
                      <CaptionEditor
                        caption={caption}
                        correction={correction}
                        onHear={() => clock.hear([caption])}
                        onDrop={close}
                        onKeep={async (kept) => {
                          const saved = await edit(
                            "caption.correct",
                            { caption: caption.index, words: kept },
                            `Caption at ${timeLabel(caption.start)} corrected and read anew`,
                          );
                          if (saved) close();
                          return saved;
                        }}
                      />
                    ) : null
                  }
                />
              </li>
            );
          })}
        </ol>
      </section>
    </div>
  );
});

/** Acts that are one object for good, and do what they were last given to do. */
function useSteadyActs(acts: CaptionActs): CaptionActs {
  const latest = useRef(acts);
  latest.current = acts;
  const [steady] = useState<CaptionActs>(() => ({
    go: (place) => latest.current.go(place),
    correct: (place) => latest.current.correct(place),
    original: (place) => latest.current.original(place),
    trust: (place, trusted) => latest.current.trust(place, trusted),
  }));
  return steady;
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
