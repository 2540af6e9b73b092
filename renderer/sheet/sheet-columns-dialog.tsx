import { useState } from "react";
import { type Problem, type SheetColumn, type SheetColumns, sheetFieldRows, sheetFields } from "../../shared-types/index.ts";
import { problemOf } from "../client/client.ts";
import { useClient } from "../client/use-client.ts";
import { Button } from "../shared/button.tsx";
import { Choice, type ChoiceOption } from "../shared/choice.tsx";
import { counted } from "../shared/count.ts";
import { Modal } from "../shared/dialog.tsx";
import { ProblemNote } from "../shared/problem-note.tsx";
import { faultOfAnswers, firstAnswers, isAsked, type SheetAnswer, settledColumns } from "./sheet-answers.ts";
import "./sheet-columns.css";

export interface SheetColumnsDialogProps {
  readonly sheet: SheetColumns;
  readonly onClose: () => void;
  /** The host has the answers now. */
  readonly onSettled: () => void;
}

const fieldOptions: readonly ChoiceOption<SheetAnswer>[] = [
  { value: "leave-out", label: "Leave out" },
  ...sheetFields.map((value) => ({ value, label: sheetFieldRows[value].label })),
];

/** What the columns of a dealer's sheet mean. Asked once; the library remembers it for every sheet with the same header. */
export function SheetColumnsDialog({ sheet, onClose, onSettled }: SheetColumnsDialogProps) {
  const client = useClient();
  const { columns } = sheet;
  const [answers, setAnswers] = useState(() => firstAnswers(columns));
  const [problem, setProblem] = useState<Problem | null>(null);
  const [working, setWorking] = useState(false);
  const asked = columns.filter(isAsked);
  const others = columns.filter((column) => !isAsked(column));

  const settle = async () => {
    const fault = faultOfAnswers(columns, answers);
    if (fault !== null) {
      setProblem({ code: "sheet-answers", message: fault });
      return;
    }
    setWorking(true);
    try {
      const settled = settledColumns(columns, answers);
      if (settled.length > 0) await client.call("stockSheet.map", { form: sheet.form, columns: settled });
      onSettled();
    } catch (thrown) {
      setProblem(problemOf(thrown));
      setWorking(false);
    }
  };
  const row = (column: SheetColumn) => (
    <SheetColumnRow
      key={column.name}
      column={column}
      answer={answers[column.name] ?? "leave-out"}
      onAnswer={(answer) => {
        setAnswers((before) => ({ ...before, [column.name]: answer }));
        setProblem(null);
      }}
    />
  );

  return (
    <Modal
      title="What the stock sheet's columns mean"
      open
      onClose={onClose}
      wide
      foot={
        <>
          {problem ? <ProblemNote problem={problem} /> : null}
          <Button onClick={onClose}>Cancel</Button>
          <Button weight="main" onClick={() => void settle()} disabled={working}>
            Use these columns
          </Button>
        </>
      }
    >
      <p className="small soft">
        Asked once: the next sheet with the same header is read without a question. What the walk says is held against the columns that you
        choose. A column that is left out stays in the library unread, so that you can choose otherwise later.
      </p>
      {asked.length > 0 ? (
        <section aria-label="Columns to choose for">
          <h3>{counted(asked.length, "column", "columns")} to choose for</h3>
          <ul className="column-list">{asked.map(row)}</ul>
        </section>
      ) : null}
      {others.length > 0 ? (
        <details open={asked.length === 0}>
          <summary>
            {counted(others.length, "column", "columns")}
            {asked.length === 0 ? "" : " that need no answer"}
          </summary>
          <ul className="column-list">{others.map(row)}</ul>
        </details>
      ) : null}
    </Modal>
  );
}

interface SheetColumnRowProps {
  readonly column: SheetColumn;
  readonly answer: SheetAnswer;
  readonly onAnswer: (answer: SheetAnswer) => void;
}

function SheetColumnRow({ column, answer, onAnswer }: SheetColumnRowProps) {
  const { name, samples, suggestion, why } = column;
  const options = answer === "open" ? [{ value: "open" as const, label: "Choose…" }, ...fieldOptions] : fieldOptions;
  return (
    <li className="column-row" data-open={answer === "open" || undefined}>
      <div className="column-row-what">
        <strong>{name}</strong>
        <span className="column-row-cells">{samples.length > 0 ? samples.map((cell) => `“${cell}”`).join(", ") : "no cells"}</span>
        {suggestion || why ? (
          <span className="small soft">
            {suggestion ? `Perhaps ${sheetFieldRows[suggestion].label}. ` : ""}
            {why}
          </span>
        ) : null}
      </div>
      <Choice<SheetAnswer> label={`${name} means`} labelHidden value={answer} options={options} onChange={onAnswer} />
    </li>
  );
}
