import { useEffect, useState } from "react";
import { CheckScreen } from "./check/check-screen.tsx";
import { ExportPanel } from "./check/export-panel.tsx";
import { useRecording } from "./client/use-recording.ts";
import { MarkScreen } from "./mark/mark-screen.tsx";
import { Button } from "./shared/button.tsx";
import { counted } from "./shared/count.ts";
import { Head } from "./shared/head.tsx";
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
}

/** One recording at the Mark or the Check desk; both work on the same detail and the same edits. */
export function RecordingScreen({ recordingId, desk, at, conflictKey }: RecordingScreenProps) {
  const recording = useRecording(recordingId);
  const [exporting, setExporting] = useState(false);
  const { detail, problem } = recording;
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
              <h1>{summary.title}</h1>
              <span className="soft stock">{summary.stockNumber}</span>
            </>
          ) : (
            <h1>{problem ? "Not opened" : "Opening…"}</h1>
          )
        }
      >
        {summary && detail ? (
          <>
            <span className="chip" data-kind={summary.counts.openConflicts > 0 ? "dispute" : "settled"}>
              {summary.counts.openConflicts === 0
                ? "no open conflicts"
                : counted(summary.counts.openConflicts, "open conflict", "open conflicts")}
            </span>
            <span className="head-state" aria-hidden="true">
              {recording.saving ? "saving…" : "on disk"}
              {recording.lastSaved && !recording.saving ? <span className="head-saved">: {recording.lastSaved}</span> : null}
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
        <div className="recording-problem">
          <ProblemNote problem={problem} onDismiss={detail ? recording.dismissProblem : undefined} />
          {detail ? null : <a href={hashOfPlace({ screen: "library" })}>Back to the library</a>}
        </div>
      ) : null}
      {detail && desk === "mark" ? <MarkScreen detail={detail} edit={recording.edit} startAt={at} /> : null}
      {detail && desk === "check" ? <CheckScreen detail={detail} edit={recording.edit} conflictKey={conflictKey} /> : null}
      {detail ? <ExportPanel detail={detail} open={exporting} onClose={() => setExporting(false)} /> : null}
    </div>
  );
}
