import { useMemo, useState } from "react";
import type { Problem, RecordingSummary, Vehicle } from "../../../shared-types/index.ts";
import { problemOf } from "../../client/client.ts";
import { useClient } from "../../client/use-client.ts";
import { Button } from "../../shared/button.tsx";
import { Choice } from "../../shared/choice.tsx";
import { counted } from "../../shared/count.ts";
import { Modal } from "../../shared/dialog.tsx";
import { ProblemNote } from "../../shared/problem-note.tsx";
import { SheetColumnsDialog } from "../../sheet/sheet-columns-dialog.tsx";
import { bySheet, bySheetOption, type ChosenStyle, importedStyle, styleOptions } from "../body-styles.ts";
import { type FoundFile, placeOfFile } from "../files/found-file.ts";
import { KnownDialog } from "../known-dialog.tsx";
import type { ImportOrder } from "../run/import-run.ts";
import { partOfKnownEnding } from "../sort-files.ts";
import { addRow, changeRow, faultOfPlan, type KnownRow, knownRows, leftOver, planOfFiles, sheetOfRow } from "./import-plan.ts";
import { LeftOverList } from "./left-over-list.tsx";
import "./plan.css";
import { PlanRows } from "./plan-rows.tsx";
import { useSheetQuestions } from "./use-sheet-questions.ts";

export interface PlanDialogProps {
  readonly files: readonly FoundFile[];
  /** Name of the folder that was chosen; null for files dropped or chosen one by one. */
  readonly folder: string | null;
  /** Those of the library, whose stock numbers are looked at. */
  readonly recordings: readonly RecordingSummary[];
  readonly onClose: () => void;
  readonly onImport: (orders: readonly ImportOrder[]) => void;
}

/** What was paired and what is left over, before anything is imported; all of it can be changed. */
export function PlanDialog({ files, folder, recordings, onClose, onImport }: PlanDialogProps) {
  const client = useClient();
  const [plan, setPlan] = useState(() => planOfFiles(files));
  const [bodyStyle, setBodyStyle] = useState<ChosenStyle>(bySheet);
  const [drive, setDrive] = useState<Vehicle["drive"]>("left-hand");
  const [problem, setProblem] = useState<Problem | null>(null);
  const [working, setWorking] = useState(false);
  const { question, settleSheets } = useSheetQuestions(client);
  const fileOf = useMemo(() => {
    const byKey = new Map(files.map((file) => [file.key, file]));
    return (key: string | null) => (key === null ? null : (byKey.get(key) ?? null));
  }, [files]);
  const sheets = files.filter(({ name, bytes }) => bytes > 0 && partOfKnownEnding(name) === "stockSheet");
  const rest = leftOver(plan);
  const taken = plan.rows.filter((row) => row.taken);
  const fault = faultOfPlan(plan);

  /** Recordings that would stand there twice, while the person is asked about them. */
  const [known, setKnown] = useState<readonly KnownRow[] | null>(null);
  const importRows = (beside: ReadonlySet<string>, left: ReadonlySet<string>) =>
    onImport(
      taken.flatMap((row) => {
        const transcript = fileOf(row.transcript);
        if (!transcript || left.has(row.transcript)) return [];
        const { bodyStyle: style, bodyStyleFromSheet } = importedStyle(row.bodyStyle ?? bodyStyle);
        return [
          {
            title: row.title.trim(),
            stockNumber: row.stockNumber.trim(),
            vehicle: { name: "", year: null, bodyStyle: style, drive },
            bodyStyleFromSheet,
            besideKnown: beside.has(row.transcript),
            transcript,
            video: fileOf(row.video),
            stockSheet: fileOf(sheetOfRow(plan, row)),
          },
        ];
      }),
    );

  const begin = async () => {
    setProblem(null);
    setWorking(true);
    try {
      const used = new Set(taken.map((row) => sheetOfRow(plan, row)));
      if (await settleSheets(files.filter(({ key }) => used.has(key)))) {
        const twice = knownRows(plan, recordings);
        if (twice.length === 0) importRows(new Set(), new Set());
        else setKnown(twice);
        if (twice.length === 0) return;
      }
    } catch (thrown) {
      setProblem(problemOf(thrown));
    }
    setWorking(false);
  };

  return (
    <Modal
      title={folder === null ? "Import several recordings" : `Import from “${folder}”`}
      open
      onClose={onClose}
      wide
      foot={
        <>
          <span className="soft import-state" role="status">
            {working ? "Looking at the stock sheets…" : (fault ?? "")}
          </span>
          <Button weight="main" onClick={() => void begin()} disabled={working || fault !== null}>
            {taken.length === 1 ? "Import 1 recording" : `Import ${taken.length} recordings`}
          </Button>
        </>
      }
    >
      <p>
        {plan.rows.length === 0
          ? "No transcript is among these files, and a recording needs one: timed text (txt), SRT, WebVTT or recognizer JSON. Choose a folder that has them."
          : `${counted(plan.rows.length, "recording", "recordings")} from ${counted(files.length, "file", "files")}. Nothing is imported yet; see whether the right files are together.`}
      </p>
      {problem ? <ProblemNote problem={problem} onDismiss={() => setProblem(null)} /> : null}
      {plan.rows.length > 0 ? (
        <div className="plan-common">
          {sheets.length > 0 ? (
            <Choice
              label="One stock sheet for all"
              value={plan.lotSheet ?? ""}
              options={[{ value: "", label: "none" }, ...sheets.map((file) => ({ value: file.key, label: placeOfFile(file) }))]}
              onChange={(key) => setPlan({ ...plan, lotSheet: key || null })}
            />
          ) : null}
          <Choice label="Body style of all" value={bodyStyle} options={[bySheetOption, ...styleOptions]} onChange={setBodyStyle} />
          <Choice
            label="Driver sits on the"
            value={drive}
            options={[
              { value: "left-hand", label: "left (left-hand drive)" },
              { value: "right-hand", label: "right (right-hand drive)" },
            ]}
            onChange={setDrive}
          />
        </div>
      ) : null}
      {plan.rows.length > 0 ? (
        <PlanRows plan={plan} onChange={(transcript, change) => setPlan((before) => changeRow(before, transcript, change))} />
      ) : null}
      <LeftOverList rest={rest} onAdd={(key) => setPlan((before) => addRow(before, key))} />
      <p className="small soft">
        Stock number, model year and vehicle that are not given come from the stock sheet where it has them. Of a sheet of many vehicles,
        the row with the stock number counts. Each recording can be described afterwards.
      </p>
      {known ? (
        <KnownDialog
          title={`${counted(known.length, "stock number is", "stock numbers are")} taken already`}
          lines={known.map(({ row, why }) => ({ key: row.transcript, title: row.title, why }))}
          otherwise="left out"
          onClose={() => setKnown(null)}
          onSettled={(beside) => {
            const left = known.flatMap(({ row }) => (beside.has(row.transcript) ? [] : [row.transcript]));
            setKnown(null);
            // Where nothing is left to import, the plan stays to be changed.
            if (left.length < taken.length) importRows(beside, new Set(left));
          }}
        />
      ) : null}
      {question ? (
        <SheetColumnsDialog
          key={question.fileName}
          sheet={question.sheet}
          onClose={() => question.answer(false)}
          onSettled={() => question.answer(true)}
        />
      ) : null}
    </Modal>
  );
}
