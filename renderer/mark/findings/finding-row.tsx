import {
  componentLabel,
  type Finding,
  type FindingProposal,
  findingSubject,
  gradeLabels,
  gradeShapes,
  timeLabel,
  zoneLabels,
} from "../../../shared-types/index.ts";
import { keepFocus } from "../../shared/keep-focus.ts";
import { useStill } from "./use-still.ts";

export interface FindingRowProps {
  readonly recordingId: string;
  readonly finding: Finding | FindingProposal;
  /** Where the dispute about it is shown; null where what was said is in none. */
  readonly dispute: string | null;
  readonly onGo: (seconds: number) => void;
  readonly onShowStill: (finding: Finding) => void;
  readonly children: React.ReactNode;
}

/** What a row of the findings list says, with its still where it has one. */
export function FindingRow({ recordingId, finding, dispute, onGo, onShowStill, children }: FindingRowProps) {
  const proposed = !("id" in finding);
  // A part in its own words does not say what it belongs to.
  const group = !proposed && finding.part && !finding.part.includes(componentLabel(finding.component)) ? finding.component : null;
  return (
    <>
      <svg width="14" height="14" viewBox="-7 -7 14 14" aria-hidden="true" className="finding-mark">
        <path d={gradeShapes[finding.grade]} className="grade-shape" />
      </svg>
      <div className="finding-words">
        <button
          type="button"
          className="finding-go"
          {...keepFocus}
          onClick={() => onGo(finding.start)}
          aria-label={`Go to ${timeLabel(finding.start)}: ${finding.seen}`}
        >
          <span className="time">{timeLabel(finding.start)}</span> {finding.seen}
        </button>
        <p className="small soft">
          {findingSubject(finding)}
          {group ? ` (${componentLabel(group)})` : ""}, {gradeLabels[finding.grade].toLowerCase()}, {zoneLabels[finding.zone].toLowerCase()}
          {proposed ? ", proposed" : `, ${finding.initials}`}
        </p>
        {dispute === null ? null : (
          <a
            className="chip"
            data-kind="dispute"
            href={dispute}
            aria-label={`“${finding.seen}” is in dispute: look at it at the Check desk`}
          >
            <span aria-hidden="true">▼</span> in dispute
          </a>
        )}
        {!proposed && finding.note ? <p className="small">{finding.note}</p> : null}
      </div>
      <div className="finding-tools">{children}</div>
      {!proposed && finding.stillAt !== null ? (
        <RowStill recordingId={recordingId} finding={finding} at={finding.stillAt} onShow={() => onShowStill(finding)} />
      ) : null}
    </>
  );
}

interface RowStillProps {
  readonly recordingId: string;
  readonly finding: Finding;
  readonly at: number;
  readonly onShow: () => void;
}

function RowStill({ recordingId, finding, at, onShow }: RowStillProps) {
  const { src, problem } = useStill(recordingId, at);
  if (problem) return <p className="small field-fault finding-still">Its still is gone; change the finding to take it again.</p>;
  return (
    <button type="button" className="finding-still" onClick={onShow} aria-label={`Show the still of “${finding.seen}”`}>
      {src ? <img src={src} alt="" /> : <span className="finding-still-coming" />}
    </button>
  );
}
