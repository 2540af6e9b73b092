import { useEffect, useRef, useState } from "react";
import type { Problem, RecordingSummary } from "../shared-types/index.ts";
import { type CheckDrafts, CheckScreen } from "./check/check-screen.tsx";
import { useRecording } from "./client/use-recording.ts";
import { MarkScreen } from "./mark/mark-screen.tsx";
import { ExportPanel } from "./publish/export-panel.tsx";
import { Button } from "./shared/button.tsx";
import { counted } from "./shared/count.ts";
import { Head } from "./shared/head.tsx";
import { useStillNew } from "./shared/passing.ts";
import { PassingProblem } from "./shared/passing-problem.tsx";
import { hashOfPlace, rememberRecording } from "./shared/place.ts";
import { ProblemNote } from "./shared/problem-note.tsx";
import { UndoBar } from "./shared/undo-bar.tsx";
import "./recording-screen.css";

export interface RecordingScreenProps {
  readonly recordingId: string;
  readonly desk: "mark" | "check";
  /** Seconds to start at. */
  readonly at: number | null;
  readonly conflictKey: string | null;
  /** Something to check that is no conflict, as the address names it. */
  readonly itemName: string | null;
}

/** One recording at the Mark or the Check desk; both work on the same detail and the same edits. */
export function RecordingScreen({ recordingId, desk, at, conflictKey, itemName }: RecordingScreenProps) {
  const recording = useRecording(recordingId);
  const [exporting, setExporting] = useState(false);
  /** Half-written rulings and notes: kept over both desks until the recording is left. */
  const drafts = useRef<CheckDrafts>({ rulings: new Map(), notes: new Map() });
  const { detail, problem } = recording;
  const stillNew = useStillNew(recording.saves);
  const summary = detail?.summary;
  useEffect(() => {
    if (detail) rememberRecording(recordingId);
    else if (problem) rememberRecording(null);
  }, [detail, problem, recordingId]);
  return (
    <div className="screen">
      <Head
        desk={desk}
        title={`${desk === "mark" ? "Mark" : "Check"}: ${summary?.title ?? "a recording"}`}
        recordingId={recordingId}
        subject={
          summary ? (
            <>
              <h1 title={summary.title}>{summary.title}</h1>
              <span className="soft stock" title={summary.stockNumber}>
                {summary.stockNumber}
              </span>
            </>
          ) : (
            <h1>{problem ? "Not opened" : "Opening…"}</h1>
          )
        }
      >
        {summary && detail ? (
          <>
            {/* The Check desk's queue says it, and its top has the least room. */}
            {desk === "mark" ? (
              <span className="chip" data-kind={openChip(summary.counts) === null ? "settled" : "dispute"}>
                {openChip(summary.counts) ?? "nothing open"}
              </span>
            ) : null}
            <span className="head-state" aria-hidden="true" title={stillNew ? recording.lastSaved : undefined}>
              {recording.away ? "not connected" : recording.saving ? "saving…" : "on disk"}
              {recording.lastSaved && stillNew && !recording.saving && !recording.away ? (
                <span className="head-saved">: {recording.lastSaved}</span>
              ) : null}
            </span>
            <UndoBar detail={detail} edit={recording.edit} />
            <Button onClick={() => setExporting(true)}>Export…</Button>
          </>
        ) : null}
      </Head>
      <div className="visually-hidden" role="status" aria-live="polite">
        {recording.lastSaved}
      </div>
      {problem ? (
        detail ? (
          <div className="passing-problem-place">
            <PassingProblem problem={problem} onDismiss={recording.dismissProblem} lasting={recording.away} />
          </div>
        ) : (
          <main className="recording-problem">
            <ProblemNote problem={plainProblem(problem)} />
            <a href={hashOfPlace({ screen: "library" })}>Back to the library</a>
          </main>
        )
      ) : null}
      {detail && desk === "mark" ? <MarkScreen detail={detail} edit={recording.edit} startAt={at} /> : null}
      {detail && desk === "check" ? (
        <CheckScreen detail={detail} edit={recording.edit} conflictKey={conflictKey} itemName={itemName} drafts={drafts.current} />
      ) : null}
      {detail ? <ExportPanel detail={detail} open={exporting} onClose={() => setExporting(false)} /> : null}
    </div>
  );
}

/** What waits for the reviewer, the most serious kind of it; null where nothing does. */
function openChip({ openConflicts, openDenials, openPromises, openQuestions }: RecordingSummary["counts"]): string | null {
  const matters = openDenials + openPromises + openQuestions;
  if (openConflicts > 0) return counted(openConflicts, "open conflict", "open conflicts");
  return matters > 0 ? counted(matters, "open matter", "open matters") : null;
}

/** An address that names no recording is refused by its form before anyone looks it up; the person needs neither to know. */
function plainProblem(problem: Problem): Problem {
  return problem.code === "input-invalid" || problem.code === "recording-unknown"
    ? { code: problem.code, message: "There is no such recording in this library: it was removed, or the address is wrong." }
    : problem;
}
