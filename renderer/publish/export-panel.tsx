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
} from "../../shared-types/index.ts";
import { problemOf } from "../client/client.ts";
import { useClient } from "../client/use-client.ts";
import { Button } from "../shared/button.tsx";
import { Choice } from "../shared/choice.tsx";
import { counted } from "../shared/count.ts";
import { Ask, Modal } from "../shared/dialog.tsx";
import { ProblemNote } from "../shared/problem-note.tsx";
import { ExportFormatGroups } from "./export-format-groups.tsx";
import { exportWords, granularityWords, paperWords } from "./export-formats.ts";
import { ExportNotes } from "./export-notes.tsx";
import { PicturesBar } from "./pictures-bar.tsx";
import { useTemplates } from "./use-templates.ts";
import { useWriting } from "./use-writing.ts";
import { VideoCopy } from "./video-copy.tsx";
import { intoView, Warnings, WrittenFiles } from "./written-files.tsx";
import "./export-panel.css";

export interface ExportPanelProps {
  readonly detail: RecordingDetail;
  readonly open: boolean;
  readonly onClose: () => void;
}

export function ExportPanel({ open, ...rest }: ExportPanelProps) {
  return open ? <ExportWindow {...rest} /> : null;
}

function ExportWindow({ detail, onClose }: Omit<ExportPanelProps, "open">) {
  const client = useClient();
  const { id: recordingId, title } = detail.summary;
  const writing = useWriting(recordingId, title);
  const [formats, setFormats] = useState<readonly ExportFormat[]>(exportFormats);
  const [granularity, setGranularity] = useState<ChapterGranularity>("zones");
  const [paper, setPaper] = useState<Paper>("letter");
  const [named, setNamed] = useState<string | null>(null);
  const [preview, setPreview] = useState<(Output<"export.preview"> & { format: ExportFormat }) | null>(null);
  const [lookProblem, setLookProblem] = useState<Problem | null>(null);
  const [abilities, setAbilities] = useState<Pick<Output<"host.abilities">, "revealFiles" | "whyNoPdf">>(untilAsked);
  const templates = useTemplates(setLookProblem);
  useEffect(() => {
    // Without an answer there is simply no button to show the folder.
    client.call("host.abilities", {}).then(setAbilities, () => {});
  }, [client]);
  const whyNot = (format: ExportFormat) => (isPdfFormat(format) ? abilities.whyNoPdf : null);
  // In the contract's order, whatever was ticked last.
  const asked = exportFormats.filter((format) => formats.includes(format) && whyNot(format) === null);
  // One that was removed meanwhile gives way to the first.
  const template = templates.find(({ name }) => name === named)?.name ?? templates[0]?.name;
  const byTemplate = template === undefined ? {} : { template };
  const write = (overwrite: boolean) => writing.write({ formats: asked, granularity, paper, ...byTemplate }, overwrite);
  const look = (format: ExportFormat) => {
    setLookProblem(null);
    client.call("export.preview", { recordingId, format, granularity, ...byTemplate }).then(
      (shown) => setPreview({ ...shown, format }),
      (thrown: unknown) => setLookProblem(problemOf(thrown)),
    );
  };
  const { written, working } = writing;

  return (
    <Modal
      title="Export"
      open
      onClose={onClose}
      wide
      foot={
        writing.pictures ? (
          <PicturesBar underWay={writing.pictures} onCancel={writing.cancel} />
        ) : (
          <>
            <span className="small soft export-state" role="status">
              {working ? writingWords(writing.progress) : doneWords(written, writing.said)}
            </span>
            {working ? <Button onClick={writing.cancel}>Cancel</Button> : null}
            <Button weight="main" onClick={() => write(false)} disabled={asked.length === 0 || working}>
              Write {counted(asked.length, "file", "files")}
            </Button>
          </>
        )
      }
    >
      <ExportNotes detail={detail} />
      <div className="export-ways">
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
        {template === undefined ? null : (
          <Choice
            label="Text by the template"
            value={template}
            options={templates.map(({ name }) => ({ value: name, label: name }))}
            onChange={(name) => {
              setNamed(name);
              setPreview(null);
            }}
          />
        )}
      </div>
      <ExportFormatGroups chosen={formats} onChange={setFormats} whyNot={whyNot} onLook={look} />
      {writing.problem ? <ProblemNote problem={writing.problem} onDismiss={() => writing.setProblem(null)} /> : null}
      <VideoCopy recordingId={recordingId} granularity={granularity} />
      {written ? (
        <WrittenFiles written={written} reveal={abilities.revealFiles ? () => client.call("export.reveal", { recordingId }) : null} />
      ) : null}
      {lookProblem ? <ProblemNote problem={lookProblem} onDismiss={() => setLookProblem(null)} /> : null}
      {preview ? <Preview preview={preview} onClose={() => setPreview(null)} /> : null}
      <p className="caution">{cautions.inspection}</p>
      <Ask
        title="Overwrite the files of the last export?"
        open={writing.inTheWay !== null}
        yes="Overwrite"
        no="Keep them"
        onYes={() => write(true)}
        onNo={() => writing.setInTheWay(null)}
      >
        <FilesInTheWay message={writing.inTheWay?.message ?? ""} />
      </Ask>
    </Modal>
  );
}

/** What a host is taken to be able to do before it has said so; one that can make no PDF then refuses, and says why. */
const untilAsked = { revealFiles: false, whyNoPdf: null };

function writingWords(progress: EventPayload<"export.progress"> | null): string {
  return progress ? `Writing ${exportWords[progress.format].name} (${progress.done + 1} of ${progress.of})…` : "Writing…";
}

function doneWords(written: Output<"export.write"> | null, said: string): string {
  return [written ? `${counted(written.files.length, "file", "files")} written.` : "", said].join(" ").trim();
}

/** A file as it would be written, as text. */
function Preview({ preview, onClose }: { readonly preview: Output<"export.preview">; readonly onClose: () => void }) {
  return (
    <section aria-labelledby="preview-heading" ref={intoView}>
      <div className="row">
        <h3 id="preview-heading">{preview.fileName}</h3>
        <Button weight="quiet" onClick={onClose}>
          Close the preview
        </Button>
      </div>
      <Warnings of={preview.warnings} />
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, so the keyboard must reach it */}
      <pre className="export-preview" tabIndex={0}>
        {preview.text}
      </pre>
    </section>
  );
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
