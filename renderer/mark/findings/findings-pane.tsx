import {
  componentLabel,
  type Finding,
  type FindingProposal,
  gradeLabels,
  positionLabel,
  type RecordingDetail,
  timeLabel,
  zoneLabels,
} from "../../../shared-types/index.ts";
import type { Edit } from "../../client/use-recording.ts";
import type { Clock } from "../../player/clock.ts";
import { Button } from "../../shared/button.tsx";
import { keepFocus } from "../../shared/keep-focus.ts";
import { spanAt } from "../lap.ts";
import { gradeShapes } from "../strip/finding-marks.tsx";
import type { MarkActions } from "../use-mark-actions.ts";
import type { MarkKeeper } from "../use-marks.ts";
import { draftOfFinding, type FindingDraft, findingOfDraft, newFindingDraft } from "./finding-draft.ts";
import { FindingForm } from "./finding-form.tsx";
import "./findings.css";

export interface FindingsPaneProps {
  readonly detail: RecordingDetail;
  readonly clock: Clock;
  readonly edit: Edit;
  readonly keeper: MarkKeeper;
  readonly desk: MarkActions;
  /** "new", the id of a finding, or null. */
  readonly editing: string | null;
  readonly onEdit: (editing: string | null) => void;
}

type Row =
  | { readonly kind: "finding"; readonly at: number; readonly finding: Finding }
  | { readonly kind: "proposal"; readonly at: number; readonly proposal: FindingProposal };

/** Findings and proposed findings in order of time, and the form for one of them. */
export function FindingsPane({ detail, clock, edit, keeper, desk, editing, onEdit }: FindingsPaneProps) {
  const rows: Row[] = [
    ...detail.findings.map((finding) => ({ kind: "finding" as const, at: finding.start, finding })),
    ...detail.findingProposals.map((proposal) => ({ kind: "proposal" as const, at: proposal.start, proposal })),
  ].sort((a, b) => a.at - b.at);
  const keys = detail.findingProposals.map((proposal) => proposal.key);
  const { stretch, marks } = keeper;
  const keysMarked = stretch
    ? detail.findingProposals.filter(({ start }) => start >= stretch.start && start < stretch.end).map(({ key }) => key)
    : [];
  const edited = detail.findings.find((finding) => finding.id === editing);

  const save = async (draft: FindingDraft) => {
    const saved = edited
      ? await edit("finding.change", { id: edited.id, ...findingOfDraft(draft) }, "Finding changed")
      : await edit("finding.add", findingOfDraft(draft), "Finding added");
    // A refused finding stays in its form, so that nothing typed is lost.
    if (!saved) return;
    onEdit(null);
    if (!edited) keeper.clear();
  };
  const { duration } = detail.summary;
  const fresh = () => {
    const { time } = clock.read();
    const zone = spanAt(detail.lap, stretch?.start ?? time)?.zone ?? "opening";
    return newFindingDraft({ stretch, markedStart: marks.start, now: time, duration, zone });
  };

  return (
    <div className="pane-scroll">
      {editing === "new" || edited ? (
        <FindingForm
          key={editing}
          heading={edited ? "Change the finding" : "New finding"}
          initial={edited ? draftOfFinding(edited) : fresh()}
          duration={duration}
          lap={detail.lap}
          onSave={(draft) => void save(draft)}
          onLeave={() => onEdit(null)}
        />
      ) : (
        <div className="row">
          <Button onClick={() => onEdit("new")} shortcut="F">
            New finding…
          </Button>
          <Button onClick={() => desk.acceptFindings(keys)} disabled={keys.length === 0}>
            Accept all proposed ({keys.length})
          </Button>
          <Button onClick={() => desk.acceptFindings(keysMarked)} disabled={keysMarked.length === 0}>
            Accept marked ({keysMarked.length})
          </Button>
        </div>
      )}
      {rows.length === 0 ? <p className="empty">No findings yet. Mark in and out, then press F; or press F and give the times.</p> : null}
      <ol className="findings" aria-label="Findings">
        {rows.map((row) =>
          row.kind === "finding" ? (
            <FindingRow key={row.finding.id} finding={row.finding} onGo={clock.seek.bind(clock)}>
              <Button weight="quiet" onClick={() => onEdit(row.finding.id)} aria-label={`Change “${row.finding.seen}”`}>
                Change
              </Button>
              <Button
                weight="quiet"
                onClick={() => void edit("finding.remove", { id: row.finding.id }, "Finding removed")}
                aria-label={`Remove “${row.finding.seen}”`}
              >
                Remove
              </Button>
            </FindingRow>
          ) : (
            <FindingRow key={row.proposal.claim} finding={row.proposal} onGo={clock.seek.bind(clock)}>
              <Button onClick={() => desk.acceptFindings([row.proposal.key])} aria-label={`Accept “${row.proposal.seen}”`}>
                Accept
              </Button>
            </FindingRow>
          ),
        )}
      </ol>
    </div>
  );
}

interface FindingRowProps {
  readonly finding: Finding | FindingProposal;
  readonly onGo: (seconds: number) => void;
  readonly children: React.ReactNode;
}

function FindingRow({ finding, onGo, children }: FindingRowProps) {
  const proposed = !("id" in finding);
  const what = [positionLabel(finding.position), componentLabel(finding.component)].filter(Boolean).join(" ");
  return (
    <li className="finding" data-proposed={proposed || undefined}>
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
          {what}, {gradeLabels[finding.grade].toLowerCase()}, {zoneLabels[finding.zone].toLowerCase()}
          {proposed ? ", proposed" : `, ${finding.initials}`}
        </p>
        {!proposed && finding.note ? <p className="small">{finding.note}</p> : null}
      </div>
      <div className="finding-tools">{children}</div>
    </li>
  );
}
