import { useEffect, useState } from "react";
import {
  type ChapterGranularity,
  cautions,
  chapterGranularities,
  type EventPayload,
  type ExportFormat,
  exportFormats,
  isPdfFormat,
  type Output,
  type Paper,
  type Problem,
  papers,
  type RecordingDetail,
  timeLabel,
} from "../../shared-types/index.ts";
import { problemOf } from "../client/client.ts";
import { useClient } from "../client/use-client.ts";
import { Button } from "../shared/button.tsx";
import { Choice } from "../shared/choice.tsx";
import { counted } from "../shared/count.ts";
import { Ask, Modal } from "../shared/dialog.tsx";
import { ProblemNote } from "../shared/problem-note.tsx";
import { ExportFormatRow } from "./export-format-row.tsx";
import { bytesLabel, exportWords, granularityWords, paperWords } from "./export-formats.ts";
import { joinedChapters, shortestChapterSeconds } from "./joined-chapters.ts";
import { VideoCopy } from "./video-copy.tsx";
import "./export-panel.css";

export interface ExportPanelProps {
  readonly detail: RecordingDetail;
  readonly open: boolean;
  readonly onClose: () => void;
}

export function ExportPanel({ detail, open, onClose }: ExportPanelProps) {
  return (
    <Modal title="Export" open={open} onClose={onClose} wide>
      <ExportForm detail={detail} />
    </Modal>
  );
}

function ExportForm({ detail }: { readonly detail: RecordingDetail }) {
  const client = useClient();
  const recordingId = detail.summary.id;
  const [formats, setFormats] = useState<readonly ExportFormat[]>(exportFormats);
  const [granularity, setGranularity] = useState<ChapterGranularity>("zones");
  const [written, setWritten] = useState<Output<"export.write"> | null>(null);
  const [preview, setPreview] = useState<(Output<"export.preview"> & { format: ExportFormat }) | null>(null);
  const [inTheWay, setInTheWay] = useState<Problem | null>(null);
  const [problem, setProblem] = useState<Problem | null>(null);
  const [paper, setPaper] = useState<Paper>("letter");
  const [writing, setWriting] = useState(false);
  const [progress, setProgress] = useState<EventPayload<"export.progress"> | null>(null);
  const [abilities, setAbilities] = useState<Pick<Output<"host.abilities">, "revealFiles" | "whyNoPdf">>(untilAsked);
  useEffect(() => {
    // Without an answer there is simply no button to show the folder.
    client.call("host.abilities", {}).then(setAbilities, () => {});
  }, [client]);
  useEffect(
    () =>
      client.on("export.progress", (made) => {
        if (made.recordingId === recordingId) setProgress(made);
      }),
    [client, recordingId],
  );
  const whyNot = (format: ExportFormat) => (isPdfFormat(format) ? abilities.whyNoPdf : null);
  // In the contract's order, whatever was ticked last.
  const possible = exportFormats.filter((format) => whyNot(format) === null);
  const asked = possible.filter((format) => formats.includes(format));

  const write = (overwrite: boolean) => {
    setInTheWay(null);
    setProblem(null);
    setWriting(true);
    setProgress(null);
    client
      .call("export.write", { recordingId, formats: asked, granularity, overwrite, paper })
      .then(setWritten, (thrown: unknown) => {
        const met = problemOf(thrown);
        if (met.code === "file-exists") setInTheWay(met);
        // The person ended it, and sees that nothing was written.
        else if (met.code === "export-cancelled") setProgress(null);
        else setProblem(met);
      })
      .finally(() => setWriting(false));
  };
  const look = (format: ExportFormat) => {
    client.call("export.preview", { recordingId, format, granularity }).then(
      (shown) => setPreview({ ...shown, format }),
      (thrown: unknown) => setProblem(problemOf(thrown)),
    );
  };

  return (
    <>
      <ExportNotes detail={detail} />
      <Choice
        label="What becomes a chapter"
        value={granularity}
        options={chapterGranularities.map((value) => ({ value, label: granularityWords[value] }))}
        onChange={(chosen) => {
          setGranularity(chosen);
          setPreview(null);
        }}
      />
      {abilities.whyNoPdf === null ? (
        <Choice
          label="Paper of PDFs"
          value={paper}
          options={papers.map((value) => ({ value, label: paperWords[value] }))}
          onChange={setPaper}
        />
      ) : null}
      <div className="row">
        <Button weight="quiet" onClick={() => setFormats(exportFormats)} disabled={asked.length === possible.length}>
          Choose all
        </Button>
        <Button weight="quiet" onClick={() => setFormats([])} disabled={asked.length === 0}>
          Choose none
        </Button>
        <span className="small soft">
          {asked.length} of {possible.length} chosen
        </span>
      </div>
      <ul className="export-formats" aria-label="What to export">
        {exportFormats.map((format) => (
          <ExportFormatRow
            key={format}
            format={format}
            chosen={asked.includes(format)}
            whyNot={whyNot(format)}
            onChoose={(on) => setFormats(on ? [...formats, format] : formats.filter((one) => one !== format))}
            onLook={() => look(format)}
          />
        ))}
      </ul>
      <div className="row">
        <Button weight="main" onClick={() => write(false)} disabled={asked.length === 0 || writing}>
          Write {counted(asked.length, "file", "files")}
        </Button>
        {writing ? <Button onClick={() => void client.call("export.cancel", { recordingId }).catch(() => {})}>Cancel</Button> : null}
        <span className="small soft" role="status">
          {writing ? writingWords(progress) : written ? `${counted(written.files.length, "file", "files")} written` : ""}
        </span>
      </div>
      {problem ? <ProblemNote problem={problem} onDismiss={() => setProblem(null)} /> : null}
      <VideoCopy recordingId={recordingId} granularity={granularity} />
      {written ? (
        <Written written={written} reveal={abilities.revealFiles ? () => client.call("export.reveal", { recordingId }) : null} />
      ) : null}
      {preview ? (
        <section aria-labelledby="preview-heading">
          <div className="row">
            <h3 id="preview-heading">{preview.fileName}</h3>
            <Button weight="quiet" onClick={() => setPreview(null)}>
              Close the preview
            </Button>
          </div>
          <Warnings of={preview.warnings} />
          {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, so the keyboard must reach it */}
          <pre className="export-preview" tabIndex={0}>
            {preview.text}
          </pre>
        </section>
      ) : null}
      <p className="caution">{cautions.inspection}</p>
      <Ask
        title="Overwrite the files of the last export?"
        open={inTheWay !== null}
        yes="Overwrite"
        no="Keep them"
        onYes={() => write(true)}
        onNo={() => setInTheWay(null)}
      >
        <FilesInTheWay message={inTheWay?.message ?? ""} />
      </Ask>
    </>
  );
}

/** What a host is taken to be able to do before it has said so; one that can make no PDF then refuses, and says why. */
const untilAsked = { revealFiles: false, whyNoPdf: null };

function writingWords(progress: EventPayload<"export.progress"> | null): string {
  return progress ? `Writing ${exportWords[progress.format].name} (${progress.done + 1} of ${progress.of})…` : "Writing…";
}

/** The refusal's message has a line for the folder, one for each file, and what was done about it. */
function FilesInTheWay({ message }: { readonly message: string }) {
  const [folder, ...rest] = message.split("\n");
  return (
    <div className="export-in-the-way">
      <p>{folder}</p>
      <ul>
        {rest.slice(0, -1).map((name) => (
          <li key={name}>{name}</li>
        ))}
      </ul>
      <p>They are replaced by what the library says now.</p>
    </div>
  );
}

function ExportNotes({ detail: { summary, lap, findingProposals, analysis } }: { readonly detail: RecordingDetail }) {
  const joined = joinedChapters(lap);
  const denied = new Set(analysis.denials.flatMap((denial) => denial.claims)).size;
  const { openConflicts } = summary.counts;
  const proposedSpans = lap.filter((span) => span.zoneSpanId === null).length;
  return (
    <ul className="export-notes">
      {openConflicts > 0 ? (
        <li className="export-open">
          {openConflicts === 1 ? "One conflict is open. It is" : `${openConflicts} conflicts are open. They are`} marked wherever the claims
          appear.
        </li>
      ) : (
        <li>No conflict is open.</li>
      )}
      {denied > 0 ? (
        <li className="export-open">
          {counted(denied, "claim is denied by the stock sheet and is", "claims are denied by the stock sheet and are")} marked as such.
        </li>
      ) : null}
      {joined.length > 0 ? (
        <li>
          {counted(joined.length, "chapter is", "chapters are")} under {shortestChapterSeconds} seconds and joined to a neighbour:{" "}
          {joined.map(({ title, start }) => `${title} (${timeLabel(start)})`).join(", ")}.
        </li>
      ) : null}
      {proposedSpans > 0 ? (
        <li>{counted(proposedSpans, "chapter is only proposed and is", "chapters are only proposed and are")} marked as such.</li>
      ) : null}
      {findingProposals.length > 0 ? (
        <li>
          {counted(findingProposals.length, "proposed finding stays out until it is", "proposed findings stay out until they are")}{" "}
          accepted.
        </li>
      ) : null}
    </ul>
  );
}

function Warnings({ of }: { readonly of: readonly string[] }) {
  if (of.length === 0) return null;
  return (
    <ul className="export-warnings small">
      {of.map((warning) => (
        <li key={warning}>{warning}</li>
      ))}
    </ul>
  );
}

interface WrittenProps {
  readonly written: Output<"export.write">;
  readonly reveal: (() => Promise<unknown>) | null;
}

function Written({ written, reveal }: WrittenProps) {
  const [problem, setProblem] = useState<Problem | null>(null);
  return (
    <section aria-labelledby="written-heading">
      <div className="row">
        <h3 id="written-heading">Written</h3>
        {reveal ? (
          <Button weight="quiet" onClick={() => void reveal().catch((thrown: unknown) => setProblem(problemOf(thrown)))}>
            Show in folder
          </Button>
        ) : null}
      </div>
      <p className="small export-path">{written.folder}</p>
      <ul className="export-files" aria-label="Written files">
        {written.files.map((file) => (
          <li key={file.format}>
            <a href={file.downloadUrl} download>
              Download {exportWords[file.format].name}
            </a>
            <span className="small soft">{bytesLabel(file.bytes)}</span>
            <code className="small export-path">{file.path}</code>
            <Warnings of={file.warnings} />
          </li>
        ))}
      </ul>
      {problem ? <ProblemNote problem={problem} /> : null}
    </section>
  );
}
