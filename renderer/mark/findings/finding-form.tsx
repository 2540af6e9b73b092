import { useEffect, useRef, useState } from "react";
import {
  componentLabel,
  componentNames,
  gradeLabels,
  gradeShapes,
  grades,
  type LapSpan,
  positionLabel,
  positionNames,
} from "../../../shared-types/index.ts";
import { Button } from "../../shared/button.tsx";
import { Choice } from "../../shared/choice.tsx";
import { TextField } from "../../shared/text-field.tsx";
import { tenthsLabel } from "../../shared/time.ts";
import { zoneOptions } from "../mark-dialogs.tsx";
import type { FindingAsk } from "../use-mark-actions.ts";
import { type FindingDraft, faultsOfFinding, withPart, withStart } from "./finding-draft.ts";
import { PartField } from "./part-field.tsx";
import { StillField, type StillSource } from "./still-field.tsx";

const componentOptions = componentNames.map((value) => ({ value, label: componentLabel(value) }));
const positionOptions = [
  { value: "none" as const, label: "no position" },
  ...positionNames.map((value) => ({ value, label: positionLabel(value) })),
];

export interface FindingFormProps {
  readonly heading: string;
  readonly initial: FindingDraft;
  readonly duration: number;
  readonly lap: readonly LapSpan[];
  readonly still: StillSource;
  /** Told of every change, so that nothing typed goes with the form. */
  readonly onDraft: (draft: FindingDraft) => void;
  /** What a key pressed outside the form asks of it. */
  readonly ask: FindingAsk | null;
  readonly onAnswered: () => void;
  readonly onSave: (draft: FindingDraft) => void;
  readonly onLeave: () => void;
}

export function FindingForm(props: FindingFormProps) {
  const { heading, initial, duration, lap, still, onDraft, ask, onAnswered, onSave, onLeave } = props;
  const [draft, keepDraft] = useState(initial);
  const latest = useRef(initial);
  // By way of the latest: a still comes after a while, and must not put back what was typed meanwhile.
  const setDraft = (next: FindingDraft) => {
    latest.current = next;
    keepDraft(next);
    onDraft(next);
  };
  const form = useRef<HTMLFormElement>(null);
  const takeStill = useRef<(() => void) | null>(null);
  const [tried, setTried] = useState(false);
  const set = (change: Partial<FindingDraft>) => setDraft({ ...latest.current, ...change });
  const found = faultsOfFinding(draft, duration);
  const faults = tried ? found : {};
  const save = () => {
    setTried(true);
    if (Object.keys(found).length === 0) onSave(draft);
  };
  useEffect(() => {
    if (ask === null) return;
    if (ask === "still") takeStill.current?.();
    else form.current?.querySelector<HTMLElement>("input")?.focus();
    onAnswered();
  }, [ask, onAnswered]);
  return (
    <form
      ref={form}
      className="finding-form"
      aria-label={heading}
      onSubmit={(event) => {
        event.preventDefault();
        save();
      }}
      // On its way down: a closed choice would open at Enter.
      onKeyDownCapture={(event) => {
        if (event.key !== "Enter" || !(event.ctrlKey || event.metaKey)) return;
        event.preventDefault();
        event.stopPropagation();
        save();
      }}
      onKeyDown={(event) => {
        if (event.key === "Escape") {
          event.stopPropagation();
          onLeave();
        } else if (event.altKey && event.code === "KeyS") {
          event.preventDefault();
          takeStill.current?.();
        }
      }}
    >
      <div className="row">
        <h2>{heading}</h2>
        {/* Whoever takes a still by its key in the first field sees that it was taken. */}
        {draft.stillAt === null ? null : (
          <span className="small soft" aria-hidden="true">
            with a still at {tenthsLabel(draft.stillAt / 1000)}
          </span>
        )}
      </div>
      <div className="finding-fields">
        <div data-field="seen">
          {/* The words come first: part and grade are quicker to choose once they stand there. */}
          <TextField
            label="What is seen"
            value={draft.seen}
            onChange={(seen) => set({ seen })}
            fault={faults.seen}
            maxLength={300}
            required
            autoFocus
          />
        </div>
        <div data-field="part">
          <PartField value={draft.part} zone={draft.zone} onChange={(words, named) => setDraft(withPart(draft, words, named))} />
        </div>
        <Choice label="Belongs to" value={draft.component} options={componentOptions} onChange={(component) => set({ component })} />
        <Choice label="Position" value={draft.position} options={positionOptions} onChange={(position) => set({ position })} />
        <div data-field="grade">
          <GradeChoice draft={draft} fault={faults.grade} onChange={set} />
        </div>
        <div data-field="from">
          <TextField label="From" value={draft.start} onChange={(start) => setDraft(withStart(draft, start, lap))} fault={faults.start} />
        </div>
        <div data-field="to">
          <TextField label="To" value={draft.end} onChange={(end) => set({ end })} fault={faults.end} />
        </div>
        <Choice label="Zone" value={draft.zone} options={zoneOptions} onChange={(zone) => set({ zone, zoneChosen: true })} />
        <div data-field="note">
          <TextField label="Note" value={draft.note} onChange={(note) => set({ note })} maxLength={2000} rows={2} />
        </div>
      </div>
      <div className="finding-foot">
        <StillField {...still} stillAt={draft.stillAt} onChange={(stillAt) => set({ stillAt })} takeRef={takeStill} />
        <div className="row">
          <Button type="submit" weight="main" shortcut="Ctrl+Enter">
            Save the finding
          </Button>
          <Button onClick={onLeave}>Close</Button>
        </div>
      </div>
    </form>
  );
}

interface GradeChoiceProps {
  readonly draft: FindingDraft;
  readonly fault: string | undefined;
  readonly onChange: (change: Partial<FindingDraft>) => void;
}

function GradeChoice({ draft, fault, onChange }: GradeChoiceProps) {
  return (
    <fieldset className="grades" aria-describedby={fault ? "grade-fault" : undefined}>
      <legend className="field-name">Grade</legend>
      {grades.map((grade) => (
        <label key={grade} className="grade">
          <input type="radio" name="grade" className="cover" checked={draft.grade === grade} onChange={() => onChange({ grade })} />
          <svg width="14" height="14" viewBox="-7 -7 14 14" aria-hidden="true">
            <path d={gradeShapes[grade]} className="grade-shape" />
          </svg>
          {gradeLabels[grade]}
        </label>
      ))}
      {fault ? (
        <span className="small field-fault" id="grade-fault">
          {fault}
        </span>
      ) : null}
    </fieldset>
  );
}
