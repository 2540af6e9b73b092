import { memo, useMemo } from "react";
import type { Caption } from "../../shared-types/index.ts";
import { type CaptionNotes, captionSegments } from "./caption-segments.ts";
import { claimLine } from "./claim-words.ts";
import "./marked-caption.css";

export interface MarkedCaptionProps {
  readonly caption: Caption;
  readonly notes: CaptionNotes;
  readonly disputed: ReadonlySet<string>;
  /** Only these claims' words are marked, strongly; without it all are. */
  readonly only?: ReadonlySet<string>;
}

/** A caption's words as they came, with claims underlined, and the reading of each repair after the words that were heard. */
export const MarkedCaption = memo(function MarkedCaption({ caption, notes, disputed, only }: MarkedCaptionProps) {
  const segments = useMemo(() => captionSegments(caption.index, caption.text, notes), [caption, notes]);
  return (
    <span className="marked" data-doubtful={notes.doubtful !== null || undefined}>
      {segments.map((segment) => {
        const claims = only ? segment.claims.filter((claim) => only.has(claim.id)) : segment.claims;
        const kind = only
          ? "shown"
          : claims.some((claim) => disputed.has(claim.id))
            ? "disputed"
            : claims.some((claim) => claim.stance !== "stated")
              ? "hedged"
              : "plain";
        const words = segment.repair ? <span className="heard">{segment.text}</span> : segment.text;
        return (
          <span key={segment.start}>
            {claims.length > 0 ? (
              <mark
                className="claim"
                data-kind={kind}
                title={claims.map((claim) => (disputed.has(claim.id) ? `${claimLine(claim)} (in dispute)` : claimLine(claim))).join("\n")}
              >
                {words}
              </mark>
            ) : (
              words
            )}
            {segment.repair && segment.repairEnds ? (
              <span
                className="meant"
                title={
                  segment.repair.sure ? `Repair: heard “${segment.repair.heard}”` : `Repair to be checked: heard “${segment.repair.heard}”`
                }
              >
                <span className="visually-hidden"> repair, meant </span>
                {segment.repair.meant}
                {segment.repair.sure ? null : <span aria-hidden="true">?</span>}
                {segment.repair.sure ? null : <span className="visually-hidden">, to be checked</span>}
              </span>
            ) : null}
          </span>
        );
      })}
      {notes.rightWords.map((words) => (
        <span key={words} className="misheard">
          misheard; said: “{words}”
        </span>
      ))}
      {notes.doubtful ? <span className="doubt">doubtful: {notes.doubtful}</span> : null}
    </span>
  );
});
