import { useEffect, useState } from "react";
import {
  type ChapterGranularity,
  chapterGranularities,
  type ExportFormat,
  exportFormats,
  type IndexTemplate,
  isPdfFormat,
  type Output,
  type Problem,
} from "../../shared-types/index.ts";
import { exportWords, granularityWords } from "../check/export-formats.ts";
import { problemOf } from "../client/client.ts";
import { useClient } from "../client/use-client.ts";
import { Button } from "../shared/button.tsx";
import { Choice } from "../shared/choice.tsx";
import { counted } from "../shared/count.ts";
import { Modal } from "../shared/dialog.tsx";
import { ProblemNote } from "../shared/problem-note.tsx";
import { TextField } from "../shared/text-field.tsx";
import { Tick } from "./tick.tsx";
import { useWork } from "./use-work.ts";
import { WorkBar } from "./work-bar.tsx";
import "./lot.css";

/** What a lot is usually indexed as: a page, a table, a list of chapters, and the record to keep. */
const usualFormats: readonly ExportFormat[] = ["index-html", "index-csv", "index-json", "chapters-list", "record-json"];
const noTemplate = "";

/** The files of every recording that is ready, in one go. */
export function IndexLotDialog({ onClose }: { readonly onClose: () => void }) {
  const client = useClient();
  const work = useWork();
  const [ready, setReady] = useState<Output<"lot.ready">>([]);
  const [templates, setTemplates] = useState<readonly IndexTemplate[]>([]);
  const [template, setTemplate] = useState(noTemplate);
  const [also, setAlso] = useState<ReadonlySet<string>>(new Set());
  const [formats, setFormats] = useState<readonly ExportFormat[]>(usualFormats);
  const [granularity, setGranularity] = useState<ChapterGranularity>("zones");
  const [folder, setFolder] = useState("");
  const [overwrite, setOverwrite] = useState(false);
  const [whyNoPdf, setWhyNoPdf] = useState<string | null>(null);
  const [done, setDone] = useState<Output<"lot.index"> | null>(null);
  const [problem, setProblem] = useState<Problem | null>(null);
  useEffect(() => {
    const show = (thrown: unknown) => setProblem(problemOf(thrown));
    client.call("lot.ready", {}).then(setReady, show);
    client.call("template.list", {}).then(setTemplates, show);
    client.call("host.abilities", {}).then((abilities) => setWhyNoPdf(abilities.whyNoPdf), show);
  }, [client]);

  const going = ready.filter((each) => each.ready || also.has(each.recordingId));
  const waiting = ready.filter((each) => !each.ready);
  const asked = exportFormats.filter((format) => formats.includes(format) && !(isPdfFormat(format) && whyNoPdf !== null));
  const write = () => {
    setProblem(null);
    setDone(null);
    work
      .run((ticket) =>
        client.call("lot.index", {
          ticket,
          recordingIds: going.map(({ recordingId }) => recordingId),
          formats: asked,
          granularity,
          template: template === noTemplate ? null : template,
          folder: folder.trim() || null,
          overwrite,
        }),
      )
      .then(setDone, (thrown: unknown) => setProblem(problemOf(thrown)));
  };

  return (
    <Modal
      title="Index all that is ready"
      open
      onClose={onClose}
      wide
      foot={
        work.working ? (
          <WorkBar name="Writing indexes" progress={work.progress} onCancel={work.cancel} />
        ) : (
          <Button weight="main" onClick={write} disabled={going.length === 0 || (asked.length === 0 && template === noTemplate)}>
            Index {counted(going.length, "recording", "recordings")}
          </Button>
        )
      }
    >
      <p>
        {counted(going.length, "recording goes", "recordings go")} out
        {waiting.length > 0 ? `; ${waiting.length} ${waiting.length === 1 ? "is" : "are"} not ready.` : "."}
      </p>
      {waiting.length > 0 ? (
        <details>
          <summary>Not ready ({waiting.length}): tick one to send it out all the same</summary>
          <ul className="lot-lines" aria-label="Not ready">
            {waiting.map(({ recordingId, title, stockNumber, why }) => (
              <li key={recordingId}>
                <Tick
                  on={also.has(recordingId)}
                  onChange={(on) => setAlso(on ? new Set([...also, recordingId]) : new Set([...also].filter((id) => id !== recordingId)))}
                >
                  {stockNumber ? `${stockNumber} ` : ""}
                  {title}
                  <span className="merge-by">{why}; every file then says so</span>
                </Tick>
              </li>
            ))}
          </ul>
        </details>
      ) : null}
      <Choice
        label="A text for each, by the template"
        value={template}
        options={[{ value: noTemplate, label: "no text" }, ...templates.map(({ name }) => ({ value: name, label: name }))]}
        onChange={setTemplate}
      />
      <details>
        <summary>Files for each ({asked.length})</summary>
        <div className="lot-formats">
          {exportFormats.map((format) => (
            <Tick
              key={format}
              on={asked.includes(format)}
              disabled={isPdfFormat(format) && whyNoPdf !== null}
              onChange={(on) => setFormats(on ? [...formats, format] : formats.filter((one) => one !== format))}
            >
              {exportWords[format].name}
            </Tick>
          ))}
        </div>
        {whyNoPdf ? <p className="small soft">{whyNoPdf}</p> : null}
        <Choice
          label="What becomes a chapter"
          value={granularity}
          options={chapterGranularities.map((value) => ({ value, label: granularityWords[value] }))}
          onChange={setGranularity}
        />
      </details>
      <TextField
        label="Folder"
        value={folder}
        onChange={setFolder}
        hint="In full. Left empty, each recording's files go to its own place beside the library."
      />
      <Tick on={overwrite} onChange={setOverwrite}>
        Write over files that are there already
      </Tick>
      {problem ? <ProblemNote problem={problem} onDismiss={() => setProblem(null)} /> : null}
      {done ? <DoneList done={done} /> : null}
    </Modal>
  );
}

function DoneList({ done }: { readonly done: Output<"lot.index"> }) {
  return (
    <section className="stack" aria-label="What was written">
      <p role="status">
        {done.cancelled ? "Cancelled; what is listed is whole. " : ""}
        {counted(done.written.length, "recording", "recordings")} written{done.failed.length > 0 ? `, ${done.failed.length} not` : ""}.
      </p>
      {done.written.length > 0 ? (
        <ul className="lot-lines" aria-label="Written">
          {done.written.map(({ recordingId, title, folder, files }) => (
            <li key={recordingId}>
              {title}: {counted(files.length, "file", "files")} in <span className="lot-path small">{folder}</span>
            </li>
          ))}
        </ul>
      ) : null}
      {done.failed.map(({ recordingId, title, why }) => (
        <ProblemNote key={recordingId} problem={{ code: "not-written", message: `“${title}”: ${why}` }} />
      ))}
    </section>
  );
}
