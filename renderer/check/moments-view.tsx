import { useEffect, useMemo } from "react";
import { promiseLabels, type RecordingDetail, timeLabel, zoneLabels } from "../../shared-types/index.ts";
import type { Edit } from "../client/use-recording.ts";
import type { Stretch } from "../player/clock.ts";
import { Picture } from "../player/picture.tsx";
import { useRecordingClock } from "../player/use-recording-clock.ts";
import { Button } from "../shared/button.tsx";
import { captionNotes } from "../shared/caption-segments.ts";
import { asHeading, claimLine } from "../shared/claim-words.ts";
import { MarkedCaption } from "../shared/marked-caption.tsx";
import { recordingPlace } from "../shared/place.ts";
import type { CheckItem } from "./queue.ts";
import "./side-card.css";

/** Something to check that has no sides: what it is, and its moments. */
interface Described {
  readonly heading: string;
  readonly kind: string;
  readonly why: string;
  readonly claims: readonly string[];
  /** A caption to show where there are no claims. */
  readonly caption: number | null;
  /** The published rule behind it. */
  readonly rule?: { readonly name: string; readonly source: string };
}

function describeItem(
  item: Exclude<CheckItem, { kind: "publish" }>,
  { analysis, captions, trustedCaptions }: RecordingDetail,
): Described | null {
  if (item.kind === "denial") {
    const denial = analysis.denials.find(({ key }) => key === item.key);
    return denial
      ? { heading: denial.field, kind: `The stock sheet says ${denial.sheetValue}`, why: denial.why, claims: denial.claims, caption: null }
      : null;
  }
  if (item.kind === "support") {
    const support = analysis.supports.find(({ key }) => key === item.key);
    return support
      ? {
          heading: support.topic,
          kind: `Borne out by the stock sheet, “${support.field}”`,
          why: support.why,
          claims: support.claims,
          caption: null,
        }
      : null;
  }
  if (item.kind === "silence") {
    const silence = analysis.silences.find(({ key }) => key === item.key);
    return silence
      ? {
          heading: silence.topic,
          kind: `On the stock sheet, “${silence.field}”, and not spoken`,
          why: `${silence.why} There is no moment to play. Words that the recogniser lost may still have told it: look through the captions before it is said anew.`,
          claims: [],
          caption: null,
        }
      : null;
  }
  if (item.kind === "promise") {
    const promise = analysis.promises.find(({ id }) => id === item.key);
    return promise
      ? {
          heading: `“${promise.quote}”`,
          kind: promiseLabels[promise.kind],
          why: promise.why,
          claims: [],
          caption: promise.captions[0] ?? null,
          rule: promise.rule,
        }
      : null;
  }
  if (item.kind === "remark") {
    const remark = analysis.remarks.find(({ key }) => key === item.key);
    return remark ? { heading: remark.topic, kind: "Remark", why: remark.why, claims: remark.claims, caption: null } : null;
  }
  const trusted = trustedCaptions.find(({ caption }) => String(caption) === item.key);
  if (trusted) {
    return {
      heading: `Caption at ${timeLabel(captions[trusted.caption]?.start ?? 0)}`,
      kind: `Held for speech by ${trusted.initials}`,
      why: "It was doubtful; its words are now read like any other.",
      claims: [],
      caption: trusted.caption,
    };
  }
  const doubtful = analysis.doubtful.find(({ caption }) => String(caption) === item.key);
  return doubtful
    ? {
        heading: `Caption at ${timeLabel(captions[doubtful.caption]?.start ?? 0)}`,
        kind: "Doubtful caption",
        why: doubtful.why,
        claims: [],
        caption: doubtful.caption,
      }
    : null;
}

export interface MomentsViewProps {
  readonly item: Exclude<CheckItem, { kind: "publish" }>;
  readonly detail: RecordingDetail;
  readonly edit: Edit;
}

const nobody: ReadonlySet<string> = new Set();

/** Lets a doubtful caption give claims, or takes that back. */
function Trust({ caption, detail, edit }: { readonly caption: number; readonly detail: RecordingDetail; readonly edit: Edit }) {
  const trusted = detail.trustedCaptions.some((row) => row.caption === caption);
  const saved = trusted ? "held for noise again" : "held for speech; the recording was analysed again";
  return (
    <Button onClick={() => void edit("caption.trust", { caption, trusted: !trusted }, saved)}>
      {trusted ? "It is noise after all" : "It is speech: read it"}
    </Button>
  );
}

/** What the sheet says of a claim, a promise, remark or doubtful caption with its moments. */
export function MomentsView({ item, detail, edit }: MomentsViewProps) {
  const picture = useRecordingClock(detail.summary);
  const { clock } = picture;
  const { analysis, captions } = detail;
  const notes = useMemo(() => captionNotes(analysis, detail.rulings), [analysis, detail.rulings]);
  const described = describeItem(item, detail);
  const claims = (described?.claims ?? []).flatMap((id) => analysis.claims.find((claim) => claim.id === id) ?? []);
  const lone = described?.caption === null || described?.caption === undefined ? undefined : captions[described.caption];
  const first = claims[0]?.start ?? lone?.start;
  useEffect(() => {
    if (first !== undefined) clock.seek(first);
  }, [clock, first]);
  if (!described) return <p className="check-gone">The analysis has changed; this is no longer found.</p>;
  const hear = (stretch: Stretch) => clock.hear([{ start: stretch.start, end: stretch.end }]);
  return (
    <article className="conflict" aria-labelledby="moments-heading">
      <header>
        <h2 id="moments-heading" className="conflict-topic">
          {asHeading(described.heading)}
        </h2>
        <p className="soft">{described.kind}</p>
        <p>{described.why}</p>
        {described.rule ? (
          <p className="small soft">
            {described.rule.name}. Source: {described.rule.source}. A hint for review, not legal advice.
          </p>
        ) : null}
      </header>
      {claims.length > 0 || lone ? (
        <div className="moments">
          <div className="side-picture">
            <Picture {...picture} />
          </div>
          <ul className="moments-list">
            {claims.map((claim) => (
              <li key={claim.id} className="moment">
                <strong>{claimLine(claim)}</strong>
                <p className="small soft">
                  {timeLabel(claim.start)}, {zoneLabels[claim.zone]}, {claim.stance}
                </p>
                <blockquote className="side-quote">
                  {claim.captions.map((index) => {
                    const caption = captions[index];
                    return caption ? (
                      <MarkedCaption key={index} caption={caption} notes={notes(index)} disputed={nobody} only={new Set([claim.id])} />
                    ) : null;
                  })}
                </blockquote>
                <div className="row">
                  <Button onClick={() => hear(claim)} aria-label={`Hear ${timeLabel(claim.start)}`}>
                    Hear
                  </Button>
                  <a href={recordingPlace(detail.summary.id, "mark", { at: claim.start })}>Open at the Mark desk</a>
                </div>
              </li>
            ))}
            {lone ? (
              <li className="moment">
                <blockquote className="side-quote">“{lone.text}”</blockquote>
                <div className="row">
                  <Button onClick={() => hear(lone)}>Hear</Button>
                  {item.kind === "doubtful" ? <Trust caption={lone.index} detail={detail} edit={edit} /> : null}
                  <a href={recordingPlace(detail.summary.id, "mark", { at: lone.start })}>Open at the Mark desk</a>
                </div>
              </li>
            ) : null}
          </ul>
        </div>
      ) : null}
    </article>
  );
}
