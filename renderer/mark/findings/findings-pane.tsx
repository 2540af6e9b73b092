import { useCallback, useEffect, useMemo, useRef, useState } from "react";
import { createPortal } from "react-dom";
import type { Finding, FindingProposal, RecordingDetail } from "../../../shared-types/index.ts";
import type { Edit } from "../../client/use-recording.ts";
import type { Clock } from "../../player/clock.ts";
import { Button } from "../../shared/button.tsx";
import { Modal } from "../../shared/dialog.tsx";
import { recordingPlace } from "../../shared/place.ts";
import { tenthsLabel } from "../../shared/time.ts";
import { spanAt } from "../lap.ts";
import { type FindingAsk, type MarkActions, proposalAfter, proposalsIn } from "../use-mark-actions.ts";
import type { MarkKeeper } from "../use-marks.ts";
import { keyboardStayed, VirtualRows } from "../virtual-rows.tsx";
import { disputeOfFinding } from "./finding-dispute.ts";
import { draftOfFinding, type FindingDraft, findingOfDraft, newFindingDraft } from "./finding-draft.ts";
import { FindingForm } from "./finding-form.tsx";
import { FindingRow } from "./finding-row.tsx";
import "./findings.css";
import { useStill } from "./use-still.ts";

export interface FindingsPaneProps {
  readonly detail: RecordingDetail;
  readonly clock: Clock;
  /** Why there is no picture; null while there is one. */
  readonly noPicture: string | null;
  readonly edit: Edit;
  readonly keeper: MarkKeeper;
  readonly desk: MarkActions;
  /** "new", the id of a finding, or null. */
  readonly editing: string | null;
  readonly onEdit: (editing: string | null) => void;
  /** Where the form stands: it needs more room than the list has. */
  readonly formPlace: HTMLElement | null;
  /** Half-written findings, as `editing` names them. */
  readonly drafts: Map<string, FindingDraft>;
  /** What a key asks of the form. */
  readonly ask: FindingAsk | null;
  readonly onAnswered: () => void;
  /** Key of the row that the keyboard was sent to. */
  readonly focusRow: string | null;
  readonly onFocusRow: (row: string | null) => void;
}

type Row =
  | { readonly kind: "finding"; readonly at: number; readonly finding: Finding }
  | { readonly kind: "proposal"; readonly at: number; readonly proposal: FindingProposal };
const rowKey = (row: Row): string => (row.kind === "finding" ? row.finding.id : row.proposal.key);

/** Findings and proposed findings in order of time, and the form for one of them. */
export function FindingsPane(props: FindingsPaneProps) {
  const { detail, clock, noPicture, edit, keeper, desk, editing, onEdit, formPlace, drafts, ask, onAnswered, focusRow, onFocusRow } = props;
  const [stillOf, setStillOf] = useState<Finding | null>(null);
  const focused = useCallback(() => onFocusRow(null), [onFocusRow]);
  const { findings, findingProposals } = detail;
  const rows = useMemo<Row[]>(
    () =>
      [
        ...findings.map((finding) => ({ kind: "finding" as const, at: finding.start, finding })),
        ...findingProposals.map((proposal) => ({ kind: "proposal" as const, at: proposal.start, proposal })),
      ].sort((a, b) => a.at - b.at),
    [findings, findingProposals],
  );
  const proposed = detail.findingProposals.length;
  const { stretch, marks } = keeper;
  const marked = stretch ? proposalsIn(detail.findingProposals, stretch).length : 0;
  const edited = detail.findings.find((finding) => finding.id === editing);
  const recordingId = detail.summary.id;
  const { duration } = detail.summary;
  const disputeOf = (finding: Finding | FindingProposal) => {
    const conflict = disputeOfFinding(finding, detail);
    return conflict === null ? null : recordingPlace(recordingId, "check", { conflict });
  };

  /** The findings before one was added, until the new one is in the list and has the keyboard. */
  const known = useRef<ReadonlySet<string> | null>(null);
  useEffect(() => {
    const added = detail.findings.find(({ id }) => known.current && !known.current.has(id));
    if (!added) return;
    known.current = null;
    if (keyboardStayed()) onFocusRow(added.id);
  }, [detail.findings, onFocusRow]);
  const close = () => {
    if (editing !== null) drafts.delete(editing);
    onEdit(null);
  };
  const leave = () => {
    close();
    onFocusRow(edited?.id ?? "");
  };
  const remove = async ({ id }: Finding) => {
    const place = rows.findIndex((row) => rowKey(row) === id);
    const beside = rows[place + 1] ?? rows[place - 1];
    if ((await edit("finding.remove", { id }, "Finding removed")) && keyboardStayed()) onFocusRow(beside ? rowKey(beside) : "");
  };
  const save = async (draft: FindingDraft) => {
    known.current = edited ? null : new Set(detail.findings.map(({ id }) => id));
    const saved = edited
      ? await edit("finding.change", { id: edited.id, ...findingOfDraft(draft) }, "Finding changed")
      : await edit("finding.add", findingOfDraft(draft), "Finding added");
    // A refused finding stays in its form, so that nothing typed is lost.
    if (!saved) {
      known.current = null;
      return;
    }
    if (edited) return leave();
    close();
    keeper.clear();
  };
  const fresh = () => {
    const { time } = clock.read();
    const zone = spanAt(detail.lap, stretch?.start ?? time)?.zone ?? "opening";
    return newFindingDraft({ stretch, markedStart: marks.start, now: time, duration, zone });
  };
  /** The accepted row's button goes; the keyboard goes on to the next proposal, so that one key accepts one after another. */
  const accept = async (proposal: FindingProposal) => {
    const next = proposalAfter(detail.findingProposals, proposal);
    if (!(await desk.acceptFindings([proposal.key])) || !keyboardStayed()) return;
    // The picture goes along, as with N: nobody is to accept what they do not see.
    if (next) clock.seek(next.start);
    onFocusRow(next?.key ?? "");
  };

  return (
    <>
      <VirtualRows
        label="Findings"
        className="findings"
        rows={rows}
        rowKey={rowKey}
        estimate={58}
        startAt={rows.findLastIndex(({ at }) => at <= clock.read().time)}
        focusRow={focusRow}
        onFocused={focused}
        head={
          <>
            <div className="row">
              <Button onClick={() => onEdit("new")} shortcut="F">
                New finding…
              </Button>
              <Button onClick={desk.actions["accept-all"]} disabled={proposed === 0} shortcut="Shift+Y">
                Accept all ({proposed})
              </Button>
              <Button onClick={desk.actions["accept-stretch"]} disabled={marked === 0} shortcut="Shift+A">
                Accept marked ({marked})
              </Button>
            </div>
            {rows.length === 0 ? (
              <p className="empty">No findings yet. Mark in and out, then press F; or press F and give the times.</p>
            ) : null}
          </>
        }
      >
        {(row) => ({
          attributes: { "data-proposed": row.kind === "proposal" || undefined },
          content:
            row.kind === "finding" ? (
              <FindingRow
                recordingId={recordingId}
                finding={row.finding}
                dispute={disputeOf(row.finding)}
                onGo={clock.seek.bind(clock)}
                onShowStill={setStillOf}
              >
                <Button weight="quiet" data-first onClick={() => onEdit(row.finding.id)} aria-label={`Change “${row.finding.seen}”`}>
                  Change
                </Button>
                <Button weight="quiet" onClick={() => void remove(row.finding)} aria-label={`Remove “${row.finding.seen}”`}>
                  Remove
                </Button>
              </FindingRow>
            ) : (
              <FindingRow
                recordingId={recordingId}
                finding={row.proposal}
                dispute={disputeOf(row.proposal)}
                onGo={clock.seek.bind(clock)}
                onShowStill={setStillOf}
              >
                <Button data-first onClick={() => void accept(row.proposal)} aria-label={`Accept “${row.proposal.seen}”`}>
                  Accept
                </Button>
              </FindingRow>
            ),
        })}
      </VirtualRows>
      {formPlace && (editing === "new" || edited)
        ? createPortal(
            <FindingForm
              key={editing}
              heading={edited ? "Change the finding" : "New finding"}
              initial={(editing === null ? undefined : drafts.get(editing)) ?? (edited ? draftOfFinding(edited) : fresh())}
              onDraft={(draft) => editing !== null && drafts.set(editing, draft)}
              ask={ask}
              onAnswered={onAnswered}
              duration={duration}
              lap={detail.lap}
              still={{ recordingId, noPicture, now: () => clock.read().time }}
              onSave={(draft) => void save(draft)}
              onLeave={leave}
            />,
            formPlace,
          )
        : null}
      <Modal title={stillOf?.seen ?? ""} open={stillOf !== null} onClose={() => setStillOf(null)} wide>
        {stillOf ? <LargeStill recordingId={recordingId} at={stillOf.stillAt ?? 0} /> : null}
      </Modal>
    </>
  );
}

function LargeStill({ recordingId, at }: { readonly recordingId: string; readonly at: number }) {
  const { src, problem } = useStill(recordingId, at);
  if (problem) return <p className="field-fault">{problem.message}</p>;
  return (
    <figure className="still-figure">
      {src ? <img className="still-large" src={src} alt={`The video at ${tenthsLabel(at / 1000)}`} /> : null}
      <figcaption className="small soft">The video at {tenthsLabel(at / 1000)}</figcaption>
    </figure>
  );
}
