import { memo } from "react";
import { type Caption, type CorrectedCaption, type LapSpan, timeLabel } from "../../../shared-types/index.ts";
import { Button } from "../../shared/button.tsx";
import type { CaptionNotes } from "../../shared/caption-segments.ts";
import { keepFocus } from "../../shared/keep-focus.ts";
import { MarkedCaption } from "../../shared/marked-caption.tsx";
import { ZoneSwatch } from "../../shared/zone-patterns.tsx";

/** What a person may do with a caption, by its place in the list. The same object at each drawing, so that rows that have not changed are left alone. */
export interface CaptionActs {
  readonly go: (place: number) => void;
  readonly correct: (place: number) => void;
  readonly original: (place: number) => void;
  readonly trust: (place: number, trusted: boolean) => void;
}

export interface CaptionRowProps {
  readonly place: number;
  readonly acts: CaptionActs;
  readonly caption: Caption;
  readonly notes: CaptionNotes;
  readonly disputed: ReadonlySet<string>;
  readonly correction: CorrectedCaption | undefined;
  readonly originalShown: boolean;
  /** Who held a doubtful caption for speech. */
  readonly trustedBy: string | undefined;
  /** The span that begins here. */
  readonly heading: LapSpan | undefined;
  /** Takes the place of the words while they are corrected. */
  readonly editor: React.ReactNode;
}

/** One caption: its time, its words, and what a person may do with them. */
export const CaptionRow = memo(function CaptionRow(props: CaptionRowProps) {
  const { place, acts, caption, notes, disputed, correction, originalShown, trustedBy, heading, editor } = props;
  const at = timeLabel(caption.start);
  return (
    <>
      {heading ? (
        <div className="caption-zone">
          <ZoneSwatch zone={heading.zone} /> {heading.title}
          <span className="caption-zone-time">
            {timeLabel(heading.start)} to {timeLabel(heading.end)}
          </span>
        </div>
      ) : null}
      <button type="button" className="caption-time" {...keepFocus} onClick={() => acts.go(place)} aria-label={`Go to ${at}`}>
        {at}
      </button>
      {editor ?? (
        // biome-ignore lint/a11y/noStaticElementInteractions: the pointer's short cut; the button beside the words is the keyboard's way
        <div className="caption-words" onDoubleClick={() => acts.correct(place)}>
          <MarkedCaption caption={caption} notes={notes} disputed={disputed} />
          {correction ? (
            <span className="corrected">
              <button
                type="button"
                className="corrected-sign"
                {...keepFocus}
                aria-expanded={originalShown}
                onClick={() => acts.original(place)}
              >
                corrected, {correction.initials}
                <span className="visually-hidden">, at {at}: the words it came with</span>
              </button>
              {originalShown ? <span className="corrected-original">came as “{correction.original}”</span> : null}
            </span>
          ) : null}
          {trustedBy ? (
            <span className="corrected">
              held for speech, {trustedBy}{" "}
              <button type="button" className="corrected-sign" onClick={() => acts.trust(place, false)}>
                take back<span className="visually-hidden">, at {at}</span>
              </button>
            </span>
          ) : null}
          {notes.doubtful && !trustedBy ? (
            <span className="corrected">
              <button type="button" className="corrected-sign" onClick={() => acts.trust(place, true)}>
                hold for speech<span className="visually-hidden">, the caption at {at}</span>
              </button>
            </span>
          ) : null}
        </div>
      )}
      {editor ? null : (
        <Button weight="quiet" className="caption-correct" onClick={() => acts.correct(place)} aria-label={`Correct the words at ${at}`}>
          Correct
        </Button>
      )}
    </>
  );
});
