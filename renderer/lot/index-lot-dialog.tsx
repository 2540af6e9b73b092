import { useEffect, useState } from "react";
import {
  type ChapterGranularity,
  chapterGranularities,
  type ExportFormat,
  exportFormats,
  isPdfFormat,
  type Output,
  type Paper,
  type Problem,
  papers,
} from "../../shared-types/index.ts";
import { problemOf } from "../client/client.ts";
import { useClient } from "../client/use-client.ts";
import { ExportFormatGroups } from "../publish/export-format-groups.tsx";
import { granularityWords, paperWords } from "../publish/export-formats.ts";
import { showsPictures, useIndexPictures } from "../publish/index-pictures.ts";
import { PicturesBar } from "../publish/pictures-bar.tsx";
import { useTemplates } from "../publish/use-templates.ts";
import { Button } from "../shared/button.tsx";
import { Choice } from "../shared/choice.tsx";
import { counted } from "../shared/count.ts";
import { Modal } from "../shared/dialog.tsx";
import { ProblemNote } from "../shared/problem-note.tsx";
import { Tick } from "../shared/tick.tsx";
import { FolderField } from "./folder-field.tsx";
import { useWork } from "./use-work.ts";
import { WorkBar } from "./work-bar.tsx";
import "./lot.css";

/** What a lot is usually indexed as: a page, on paper too, a table, a list of chapters, and the record to keep. */
const usualFormats: readonly ExportFormat[] = ["index-html", "index-pdf", "index-csv", "index-json", "chapters-list", "record-json"];
const noTemplate = "";

/** The files of every recording that is ready, in one go. */
export function IndexLotDialog({ onClose }: { readonly onClose: () => void }) {
  const client = useClient();
  const work = useWork();
  const [ready, setReady] = useState<Output<"lot.ready">>([]);
  const pictures = useIndexPictures();
  const [template, setTemplate] = useState(noTemplate);
  const [also, setAlso] = useState<ReadonlySet<string>>(new Set());
  const [formats, setFormats] = useState<readonly ExportFormat[]>(usualFormats);
  const [granularity, setGranularity] = useState<ChapterGranularity>("zones");
  const [folder, setFolder] = useState("");
  const [overwrite, setOverwrite] = useState(false);
  const [whyNoPdf, setWhyNoPdf] = useState<string | null>(null);
  const [done, setDone] = useState<Output<"lot.index"> | null>(null);
  const [paper, setPaper] = useState<Paper>("letter");
  const [lacking, setLacking] = useState<readonly { title: string; why: string }[]>([]);
  const [said, setSaid] = useState("");
  const [problem, setProblem] = useState<Problem | null>(null);
  const templates = useTemplates(setProblem);
  useEffect(() => {
    const show = (thrown: unknown) => setProblem(problemOf(thrown));
    client.call("lot.ready", {}).then(setReady, show);
    client.call("host.abilities", {}).then((abilities) => setWhyNoPdf(abilities.whyNoPdf), show);
  }, [client]);

  const going = ready.filter((each) => each.ready || also.has(each.recordingId));
  const waiting = ready.filter((each) => !each.ready);
  const undealt = going.filter(({ openMatters }) => openMatters > 0).length;
  const whyNot = (format: ExportFormat) => (isPdfFormat(format) ? whyNoPdf : null);
  const asked = exportFormats.filter((format) => formats.includes(format) && whyNot(format) === null);
  const withText = asked.includes("index-text");
  const named = templates.some(({ name }) => name === template) ? template : (templates[0]?.name ?? null);
  const write = async () => {
    setProblem(null);
    setDone(null);
    setLacking([]);
    setSaid("");
    try {
      const without = asked.some(showsPictures) ? await pictures.take(going) : [];
      if (without === null) {
        setSaid("Cancelled. No file was written; the pictures taken so far are kept.");
        return;
      }
      setLacking(without);
      const recordingIds = going.map(({ recordingId }) => recordingId);
      const rest = { recordingIds, formats: asked, granularity, paper, folder: folder.trim() || null, overwrite };
      setDone(await work.run((ticket) => client.call("lot.index", { ticket, template: withText ? named : null, ...rest })));
    } catch (thrown) {
      setProblem(problemOf(thrown));
    }
  };
  const busy = work.working || pictures.taking;

  return (
    <Modal
      title="Index all that is ready"
      open
      onClose={onClose}
      wide
      foot={
        pictures.underWay ? (
          <PicturesBar underWay={pictures.underWay} onCancel={pictures.cancel} />
        ) : work.working ? (
          <WorkBar name="Writing indexes" progress={work.progress} onCancel={work.cancel} />
        ) : (
          <Button weight="main" onClick={() => void write()} disabled={busy || going.length === 0 || asked.length === 0}>
            Index {counted(going.length, "recording", "recordings")}
          </Button>
        )
      }
    >
      <p>
        {counted(going.length, "recording goes", "recordings go")} out
        {waiting.length > 0 ? `; ${waiting.length} ${waiting.length === 1 ? "is" : "are"} not ready.` : "."}
      </p>
      {undealt > 0 ? (
        <p className="small soft">
          No conflict is open in those that are ready. In {undealt} of those that go out nobody has dealt with every denial by the stock
          sheet, promise and question: the Check desk names them.
        </p>
      ) : null}
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
      <div className="export-ways">
        <Choice
          label="A text for each, by the template"
          value={withText ? (named ?? noTemplate) : noTemplate}
          options={[{ value: noTemplate, label: "no text" }, ...templates.map(({ name }) => ({ value: name, label: name }))]}
          onChange={(chosen) => {
            setTemplate(chosen);
            setFormats(chosen === noTemplate ? formats.filter((format) => format !== "index-text") : [...formats, "index-text"]);
          }}
        />
        <Choice
          label="What becomes a chapter"
          value={granularity}
          options={chapterGranularities.map((value) => ({ value, label: granularityWords[value] }))}
          onChange={setGranularity}
        />
        {whyNoPdf === null ? (
          <Choice
            label="Paper of PDFs"
            value={paper}
            options={papers.map((value) => ({ value, label: paperWords[value] }))}
            onChange={setPaper}
          />
        ) : null}
      </div>
      <ExportFormatGroups chosen={formats} onChange={setFormats} whyNot={whyNot} onLook={null} />
      <FolderField
        label="Folder"
        value={folder}
        onChange={setFolder}
        onProblem={setProblem}
        hint="In full. Left empty, each recording's files go to its own place beside the library."
      />
      <Tick on={overwrite} onChange={setOverwrite}>
        Write over files that are there already
      </Tick>
      {problem ? <ProblemNote problem={problem} onDismiss={() => setProblem(null)} /> : null}
      <p role="status" className={said === "" ? "visually-hidden" : "small soft"}>
        {said}
      </p>
      {done ? <DoneList done={done} lacking={lacking} /> : null}
    </Modal>
  );
}

interface DoneListProps {
  readonly done: Output<"lot.index">;
  /** Recordings of which pictures are missing, and why. */
  readonly lacking: readonly { readonly title: string; readonly why: string }[];
}

function DoneList({ done, lacking }: DoneListProps) {
  return (
    <section className="stack" aria-label="What was written">
      <p role="status">
        {done.cancelled ? "Cancelled; what is listed is whole. " : ""}
        {counted(done.written.length, "recording", "recordings")} written{done.failed.length > 0 ? `, ${done.failed.length} not` : ""}.
      </p>
      {done.written.length > 0 ? (
        <ul className="lot-lines" aria-label="Written">
          {done.written.map(({ recordingId, title, folder, files, warnings }) => (
            <li key={recordingId}>
              {title}: {counted(files.length, "file", "files")} in <span className="lot-path small">{folder}</span>
              {[...lacking.filter((each) => each.title === title).map(({ why }) => why), ...warnings].map((warning) => (
                <span key={warning} className="small lot-warning">
                  {warning}
                </span>
              ))}
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
