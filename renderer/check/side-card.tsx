import { useEffect, useEffectEvent, useMemo, useState } from "react";
import { type Conflict, type RecordingDetail, timeLabel, zoneLabels } from "../../shared-types/index.ts";
import type { Clock, Stretch } from "../player/clock.ts";
import { Picture } from "../player/picture.tsx";
import { useClockValue } from "../player/use-clock.ts";
import { useRecordingClock } from "../player/use-recording-clock.ts";
import { Button } from "../shared/button.tsx";
import { captionNotes } from "../shared/caption-segments.ts";
import { Choice } from "../shared/choice.tsx";
import { sideLetter, sideValues } from "../shared/claim-words.ts";
import { MarkedCaption } from "../shared/marked-caption.tsx";
import { recordingPlace } from "../shared/place.ts";
import { ZoneSwatch } from "../shared/zone-patterns.tsx";
import { PlayingSign } from "./playing-sign.tsx";
import "./side-card.css";

/** What a side's card hands up, so that both can be heard in turn. */
export interface Hearing {
  readonly clock: Clock;
  readonly stretch: Stretch | null;
}

export interface SideCardProps {
  readonly conflict: Conflict;
  readonly sideIndex: number;
  /** The key that plays this card: A for the left seat, B for the right. */
  readonly seatKey: "A" | "B";
  readonly detail: RecordingDetail;
  readonly onSide: (index: number) => void;
  readonly onHear: () => void;
  readonly hearingRef: (hearing: Hearing | null) => void;
}

const nobody: ReadonlySet<string> = new Set();

/** One side of a conflict: its value, the moment it was said, the words, and how they were read. */
export function SideCard({ conflict, sideIndex, seatKey, detail, onSide, onHear, hearingRef }: SideCardProps) {
  const side = conflict.sides[sideIndex];
  const claims = useMemo(
    () =>
      (side?.claims ?? []).flatMap((id) => detail.analysis.claims.find((claim) => claim.id === id) ?? []).sort((a, b) => a.start - b.start),
    [side, detail.analysis.claims],
  );
  const [moment, setMoment] = useState(0);
  const claim = claims[Math.min(moment, claims.length - 1)];
  const picture = useRecordingClock(detail.summary);
  const { clock } = picture;
  const playing = useClockValue(clock, (reading) => reading.playing);
  const notes = useMemo(() => captionNotes(detail.analysis, detail.rulings), [detail.analysis, detail.rulings]);
  const tellHearing = useEffectEvent(hearingRef);
  // By moments, not by the claim itself: a ruling brings a new copy of the same claim, which must not move the picture.
  const start = claim?.start ?? null;
  const end = claim?.end ?? null;
  useEffect(() => {
    tellHearing({ clock, stretch: start !== null && end !== null ? { start, end } : null });
    return () => tellHearing(null);
  }, [clock, start, end]);
  // The still shows the moment before anyone has pressed play.
  useEffect(() => {
    if (start !== null) clock.seek(start);
  }, [clock, start]);
  if (!side) return null;

  const letter = sideLetter(sideIndex);
  const value = sideValues(conflict, detail.analysis.claims)[sideIndex] ?? "";
  const repairs = claim ? detail.analysis.repairs.filter((repair) => claim.repairs.includes(repair.id)) : [];
  return (
    <section
      className="side"
      data-playing={playing || undefined}
      data-settled={detail.openConflictKeys.includes(conflict.key) ? undefined : true}
      aria-label={`Side ${letter}: ${value}`}
    >
      <div className="side-picture">
        <Picture {...picture} />
      </div>
      <div className="side-words">
        <div className="side-head">
          <span className="side-letter" aria-hidden="true">
            {letter}
          </span>
          <strong className="side-value">{value}</strong>
          <PlayingSign playing={playing} letter={letter} />
          {conflict.sides.length > 2 ? (
            <div className="side-choice">
              <Choice
                label="Side shown"
                labelHidden
                value={String(sideIndex)}
                options={conflict.sides.map((_, index) => ({ value: String(index), label: `side ${sideLetter(index)}` }))}
                onChange={(index) => {
                  setMoment(0);
                  onSide(Number(index));
                }}
              />
            </div>
          ) : null}
        </div>
        {claim ? (
          <>
            <p className="side-place">
              <ZoneSwatch zone={claim.zone} /> {timeLabel(claim.start)}, {zoneLabels[claim.zone]}, <em>{claim.stance}</em>
              {claim.time === "former" ? ", about an earlier state" : ""}
            </p>
            <blockquote className="side-quote">
              {claim.captions.map((index) => {
                const caption = detail.captions[index];
                return caption ? (
                  <MarkedCaption key={index} caption={caption} notes={notes(index)} disputed={nobody} only={new Set([claim.id])} />
                ) : null;
              })}
            </blockquote>
            {repairs.length > 0 ? (
              <ul className="side-repairs" aria-label="Repairs">
                {repairs.map((repair) => (
                  <li key={repair.id}>
                    heard “{repair.heard}”, meant{" "}
                    <span className="chip" data-kind="repair">
                      {repair.meant}
                    </span>
                    {repair.sure ? "" : " (another reading is about as likely: listen)"}
                  </li>
                ))}
              </ul>
            ) : null}
          </>
        ) : (
          <p className="soft">The words of this side are no longer in the analysis.</p>
        )}
        <div className="row side-tools">
          <Button onClick={onHear} shortcut={seatKey} disabled={!claim}>
            Hear {letter}
          </Button>
          {claims.length > 1 ? (
            <Button weight="quiet" onClick={() => setMoment((moment + 1) % claims.length)}>
              Moment {Math.min(moment, claims.length - 1) + 1} of {claims.length}
            </Button>
          ) : null}
          {claim ? <a href={recordingPlace(detail.summary.id, "mark", { at: claim.start })}>Open at the Mark desk</a> : null}
        </div>
      </div>
    </section>
  );
}
