import { type Caption, type CorrectedCaption, type LapSpan, timeLabel } from "../../../shared-types/index.ts";
import { Button } from "../../shared/button.tsx";
import type { CaptionNotes } from "../../shared/caption-segments.ts";
import { keepFocus } from "../../shared/keep-focus.ts";
import { MarkedCaption } from "../../shared/marked-caption.tsx";
import { ZoneSwatch } from "../../shared/zone-patterns.tsx";

export interface CaptionRowProps {
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
  readonly onGo: () => void;
  readonly onCorrect: () => void;
  readonly onOriginal: () => void;
  readonly onTrust: (trusted: boolean) => void;
}

/** One caption: its time, its words, and what a person may do with them. */
export function CaptionRow(props: CaptionRowProps) {
  const { caption, notes, disputed, correction, originalShown, trustedBy, heading, editor, onGo, onCorrect, onOriginal, onTrust } = props;
  const at = timeLabel(caption.start);
  return (
    <>
      {heading ? (
        <div className="caption-zone">
          <ZoneSwatch zone={heading.zone} /> {heading.title}
        </div>
      ) : null}
      <button type="button" className="caption-time" {...keepFocus} onClick={onGo} aria-label={`Go to ${at}`}>
        {at}
      </button>
      {editor ?? (
        // biome-ignore lint/a11y/noStaticElementInteractions: the pointer's short cut; the button beside the words is the keyboard's way
        <div className="caption-words" onDoubleClick={onCorrect}>
          <MarkedCaption caption={caption} notes={notes} disputed={disputed} />
          {correction ? (
            <span className="corrected">
              <button type="button" className="corrected-sign" {...keepFocus} aria-expanded={originalShown} onClick={onOriginal}>
                corrected, {correction.initials}
                <span className="visually-hidden">, at {at}: the words it came with</span>
              </button>
              {originalShown ? <span className="corrected-original">came as “{correction.original}”</span> : null}
            </span>
          ) : null}
          {trustedBy ? (
            <span className="corrected">
              held for speech, {trustedBy}{" "}
              <button type="button" className="corrected-sign" onClick={() => onTrust(false)}>
                take back<span className="visually-hidden">, at {at}</span>
              </button>
            </span>
          ) : null}
          {notes.doubtful && !trustedBy ? (
            <span className="corrected">
              <button type="button" className="corrected-sign" onClick={() => onTrust(true)}>
                hold for speech<span className="visually-hidden">, the caption at {at}</span>
              </button>
            </span>
          ) : null}
        </div>
      )}
      {editor ? null : (
        <Button weight="quiet" className="caption-correct" onClick={onCorrect} aria-label={`Correct the words at ${at}`}>
          Correct
        </Button>
      )}
    </>
  );
}
