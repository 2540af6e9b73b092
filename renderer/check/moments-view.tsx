import { useEffect, useMemo } from "react";
import { type Claim, matterName, type RecordingDetail, timeLabel, zoneLabels } from "../../shared-types/index.ts";
import type { Edit } from "../client/use-recording.ts";
import type { Clock, Stretch } from "../player/clock.ts";
import { Picture } from "../player/picture.tsx";
import { useRecordingClock } from "../player/use-recording-clock.ts";
import { Button } from "../shared/button.tsx";
import { captionNotes } from "../shared/caption-segments.ts";
import { asHeading, claimLine } from "../shared/claim-words.ts";
import { useShortcuts } from "../shared/keys.ts";
import { MarkedCaption } from "../shared/marked-caption.tsx";
import { recordingPlace } from "../shared/place.ts";
import { checkActionOf } from "./check-shortcuts.ts";
import { describeItem, type LoneItem } from "./describe-item.ts";
import { MarkedWords } from "./marked-words.tsx";
import { isMatter, matterOf, matterStates, notesOn } from "./matters-at-hand.ts";
import { NextButton, type NextStep } from "./next-button.tsx";
import type { SeenDrafts } from "./seen-draft.ts";
import { SeenForm } from "./seen-form.tsx";
import { SeenList } from "./seen-list.tsx";
import "./side-card.css";

export interface MomentsViewProps {
  readonly item: LoneItem;
  readonly detail: RecordingDetail;
  readonly edit: Edit;
  /** Goes to the next thing that is open; null when there is none. */
  readonly next: NextStep | null;
  readonly drafts: SeenDrafts;
}

const nobody: ReadonlySet<string> = new Set();

/** Lets a doubtful caption give claims, or takes that back. */
function Trust({ caption, detail, edit }: { readonly caption: number; readonly detail: RecordingDetail; readonly edit: Edit }) {
  const trusted = detail.trustedCaptions.some((row) => row.caption === caption);
  const saved = trusted ? "held for noise again" : "held for speech; the recording was analyzed again";
  return (
    <Button onClick={() => void edit("caption.trust", { caption, trusted: !trusted }, saved)}>
      {trusted ? "It is noise after all" : "It is speech: read it"}
    </Button>
  );
}

/** What the sheet says of a claim, a promise, question, remark or doubtful caption with its moments, and the note on it. */
export function MomentsView({ item, detail, edit, next, drafts }: MomentsViewProps) {
  const picture = useRecordingClock(detail.summary);
  const { clock } = picture;
  const { analysis, captions } = detail;
  const described = describeItem(item, detail);
  const claims = (described?.claims ?? []).flatMap((id) => analysis.claims.find((claim) => claim.id === id) ?? []);
  const words = described?.words ?? null;
  const spoken = words?.captions.flatMap((index) => captions[index] ?? []) ?? [];
  const lone = spoken.length > 0 ? { start: spoken[0]?.start ?? 0, end: spoken.at(-1)?.end ?? 0 } : null;
  const stretches: Stretch[] = [...claims, ...(lone ? [lone] : [])].map(({ start, end }) => ({ start, end }));
  const first = stretches[0]?.start;
  useEffect(() => {
    if (first !== undefined) clock.seek(first);
  }, [clock, first]);
  useShortcuts((key) => {
    const action = checkActionOf(key);
    if (action === "hear-first") clock.hear(stretches.slice(0, 1));
    else if (action === "hear-second") clock.hear(stretches.slice(1, 2));
    else if (action === "hear-both") clock.hear(stretches);
    else if (action === "stop") clock.pause();
    else return false;
    return true;
  });
  if (!described) return <p className="check-gone">The analysis has changed; this is no longer found.</p>;
  const matter = isMatter(item) ? matterOf(item, detail) : undefined;
  const state = matter ? matterStates(detail)(matter) : null;
  const notes = matter ? notesOn(detail.seenNotes, matter) : [];
  return (
    <article className="conflict" aria-labelledby="moments-heading">
      <header className="conflict-head">
        <div>
          <h2 id="moments-heading" className="conflict-topic">
            {asHeading(described.heading)}
          </h2>
          <p className="soft">{described.kind}</p>
          <p>{described.why}</p>
          {described.hint ? (
            <p>
              {described.hint} <a href={recordingPlace(detail.summary.id, "mark", {})}>Open the Mark desk</a>
            </p>
          ) : null}
          {described.rule ? (
            <p className="small soft">
              {described.rule.name}. Source: {described.rule.source}. A hint for review, not legal advice.
            </p>
          ) : null}
        </div>
        <div className="row">
          {state ? (
            <span className="chip" data-kind={state.open ? "dispute" : "settled"}>
              {state.sign}
            </span>
          ) : null}
          {stretches.length > 1 ? (
            <Button shortcut="H" onClick={() => clock.hear(stretches)}>
              Hear all
            </Button>
          ) : null}
          <NextButton next={next} />
        </div>
      </header>
      {stretches.length > 0 ? (
        <div className="moments">
          <div className="side-picture">
            <Picture {...picture} />
          </div>
          <ul className="moments-list">
            {claims.map((claim, place) => (
              <SaidMoment key={claim.id} claim={claim} detail={detail} clock={clock} place={place} />
            ))}
            {lone && words ? (
              <li className="moment">
                <p className="small soft">{timeAndZone(words.start, detail)}</p>
                <blockquote className="side-quote">
                  {spoken.map((caption) => (
                    <MarkedWords key={caption.index} caption={caption} spans={words.spans} />
                  ))}
                </blockquote>
                <HearRow clock={clock} stretch={lone} place={0} detail={detail}>
                  {item.kind === "doubtful" ? <Trust caption={words.captions[0] ?? 0} detail={detail} edit={edit} /> : null}
                </HearRow>
              </li>
            ) : null}
          </ul>
        </div>
      ) : null}
      {matter ? <SeenForm key={matterName(matter)} matter={matter} detail={detail} edit={edit} drafts={drafts} /> : null}
      {notes.length > 0 ? (
        <section className="check-part" aria-labelledby="notes-heading">
          <h3 id="notes-heading">Notes</h3>
          <SeenList notes={notes} />
        </section>
      ) : null}
    </article>
  );
}

interface MomentProps {
  readonly detail: RecordingDetail;
  readonly clock: Clock;
}

/** Keys of the first two moments, as with the sides of a conflict; further ones are heard by their buttons. */
const momentKeys = ["A", "B"] as const;

function HearRow({
  clock,
  stretch,
  place,
  detail,
  children,
}: MomentProps & { stretch: Stretch; place: number; children?: React.ReactNode }) {
  return (
    <div className="row">
      <Button shortcut={momentKeys[place]} onClick={() => clock.hear([{ start: stretch.start, end: stretch.end }])}>
        Hear<span className="visually-hidden"> {timeLabel(stretch.start)}</span>
      </Button>
      {place === 0 ? (
        <Button weight="quiet" shortcut="S" onClick={() => clock.pause()}>
          Stop
        </Button>
      ) : null}
      {children}
      <a href={recordingPlace(detail.summary.id, "mark", { at: stretch.start })}>Open at the Mark desk</a>
    </div>
  );
}

function SaidMoment({ claim, detail, clock, place }: MomentProps & { readonly claim: Claim; readonly place: number }) {
  const notes = useMemo(() => captionNotes(detail.analysis, detail.rulings), [detail.analysis, detail.rulings]);
  return (
    <li className="moment">
      <strong>{claimLine(claim)}</strong>
      <p className="small soft">
        {timeLabel(claim.start)}, {zoneLabels[claim.zone]}, {claim.stance}
      </p>
      <blockquote className="side-quote">
        {claim.captions.map((index) => {
          const caption = detail.captions[index];
          return caption ? (
            <MarkedCaption key={index} caption={caption} notes={notes(index)} disputed={nobody} only={new Set([claim.id])} />
          ) : null;
        })}
      </blockquote>
      <HearRow clock={clock} stretch={claim} place={place} detail={detail} />
    </li>
  );
}

/** "4:36, Documents" */
function timeAndZone(start: number, { lap }: RecordingDetail): string {
  const zone = lap.find((span) => span.start <= start && start < span.end)?.zone;
  return zone ? `${timeLabel(start)}, ${zoneLabels[zone]}` : timeLabel(start);
}
