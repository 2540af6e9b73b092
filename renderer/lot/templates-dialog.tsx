import { useEffect, useId, useRef, useState } from "react";
import {
  firstTemplate,
  type IndexField,
  type IndexTemplate,
  indexFieldRows,
  indexFields,
  longestTemplate,
  type Output,
  type Problem,
  type RecordingSummary,
} from "../../shared-types/index.ts";
import { problemOf } from "../client/client.ts";
import { useClient } from "../client/use-client.ts";
import { Button } from "../shared/button.tsx";
import { Choice } from "../shared/choice.tsx";
import { Ask, Modal } from "../shared/dialog.tsx";
import { ProblemNote } from "../shared/problem-note.tsx";
import { TextField } from "../shared/text-field.tsx";
import "./lot.css";

/** After so long without a key the preview is asked for. */
const settleMilliseconds = 250;

export interface TemplatesDialogProps {
  readonly recordings: readonly RecordingSummary[];
  readonly onClose: () => void;
}

/** Texts with fields, kept in the library, with a look at what they give for a recording. */
export function TemplatesDialog({ recordings, onClose }: TemplatesDialogProps) {
  const client = useClient();
  const area = useRef<HTMLTextAreaElement>(null);
  const areaId = useId();
  const [templates, setTemplates] = useState<readonly IndexTemplate[]>([]);
  const [draft, setDraft] = useState<IndexTemplate>(firstTemplate);
  const [recordingId, setRecordingId] = useState(recordings[0]?.id ?? "");
  const [preview, setPreview] = useState<Output<"template.preview"> | null>(null);
  const [kept, setKept] = useState("");
  const [removing, setRemoving] = useState(false);
  const [problem, setProblem] = useState<Problem | null>(null);
  useEffect(() => {
    client.call("template.list", {}).then(
      (list) => {
        setTemplates(list);
        if (list[0]) setDraft(list[0]);
      },
      (thrown: unknown) => setProblem(problemOf(thrown)),
    );
  }, [client]);
  useEffect(() => {
    if (recordingId === "") return;
    let current = true;
    const asking = setTimeout(() => {
      client.call("template.preview", { recordingId, text: draft.text }).then(
        (shown) => (current ? setPreview(shown) : undefined),
        (thrown: unknown) => (current ? setProblem(problemOf(thrown)) : undefined),
      );
    }, settleMilliseconds);
    return () => {
      current = false;
      clearTimeout(asking);
    };
  }, [client, recordingId, draft.text]);

  const change = (part: Partial<IndexTemplate>) => {
    setDraft({ ...draft, ...part });
    setKept("");
    setProblem(null);
  };
  const put = (field: IndexField) => {
    const box = area.current;
    const at = box?.selectionStart ?? draft.text.length;
    const to = box?.selectionEnd ?? at;
    change({ text: `${draft.text.slice(0, at)}{${field}}${draft.text.slice(to)}` });
    box?.focus();
  };
  const keep = () => {
    client.call("template.keep", { template: draft }).then(
      (list) => {
        setTemplates(list);
        setKept(`“${draft.name.trim()}” is kept.`);
      },
      (thrown: unknown) => setProblem(problemOf(thrown)),
    );
  };
  const remove = () => {
    setRemoving(false);
    client.call("template.remove", { name: draft.name }).then(
      (list) => {
        setTemplates(list);
        setDraft(list[0] ?? firstTemplate);
        setKept(`“${draft.name}” is removed.`);
      },
      (thrown: unknown) => setProblem(problemOf(thrown)),
    );
  };
  const faults = preview?.faults ?? [];
  const known = templates.some(({ name }) => name === draft.name);

  return (
    <Modal
      title="Index text templates"
      open
      onClose={onClose}
      wide
      foot={
        <>
          <span className="soft import-state" role="status">
            {kept}
          </span>
          {known ? <Button onClick={() => setRemoving(true)}>Remove…</Button> : null}
          <Button weight="main" onClick={keep} disabled={draft.name.trim() === "" || faults.length > 0}>
            Keep this template
          </Button>
        </>
      }
    >
      <div className="template-desk">
        <div className="stack">
          <Choice
            label="Template"
            value={known ? draft.name : ""}
            options={[
              ...(known ? [] : [{ value: "", label: "a new one" }]),
              ...templates.map(({ name }) => ({ value: name, label: name })),
            ]}
            onChange={(name) => {
              const chosen = templates.find((each) => each.name === name);
              if (chosen) change(chosen);
            }}
          />
          <TextField
            label="Name"
            value={draft.name}
            onChange={(name) => change({ name })}
            maxLength={60}
            hint="Another name makes another template."
          />
          <div className="field">
            <label htmlFor={areaId}>Text</label>
            <textarea
              ref={area}
              id={areaId}
              className="text-field"
              value={draft.text}
              maxLength={longestTemplate}
              aria-invalid={faults.length > 0 || undefined}
              aria-describedby={faults.length > 0 ? `${areaId}-faults` : undefined}
              onChange={(event) => change({ text: event.target.value })}
            />
          </div>
          {faults.length > 0 ? (
            <ul id={`${areaId}-faults`} className="small field-fault" aria-label="What cannot be filled in">
              {faults.slice(0, 5).map(({ line, column, message }) => (
                <li key={`${line} ${column}`}>
                  Line {line}, column {column}: {message}
                </li>
              ))}
            </ul>
          ) : null}
          <div>
            <span className="small soft">Fields, put in where the text's cursor is:</span>
            <div className="template-fields">
              {indexFields.map((field) => (
                <Button key={field} onClick={() => put(field)} tip={indexFieldRows[field]}>
                  {`{${field}}`}
                </Button>
              ))}
            </div>
          </div>
        </div>
        <div className="stack">
          {recordings.length > 0 ? (
            <Choice
              label="As it reads for"
              value={recordingId}
              options={recordings.map(({ id, title, stockNumber }) => ({
                value: id,
                label: stockNumber ? `${stockNumber} ${title}` : title,
              }))}
              onChange={setRecordingId}
            />
          ) : (
            <p className="soft">Import a recording to see what a template gives.</p>
          )}
          {faults.length > 0 ? <p className="soft">Nothing is filled in before the text has only known fields.</p> : null}
          {preview?.text != null ? (
            // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, so the keyboard must reach it
            <section className="template-preview" tabIndex={0} aria-label="Preview">
              <pre>{preview.text}</pre>
            </section>
          ) : null}
          <p className="small soft">Open conflicts and the cautions stand at the end of every text that does not place them itself.</p>
        </div>
      </div>
      {problem ? <ProblemNote problem={problem} onDismiss={() => setProblem(null)} /> : null}
      <Ask title={`Remove “${draft.name}”?`} open={removing} yes="Remove the template" onYes={remove} onNo={() => setRemoving(false)}>
        <p>Texts that were written by it stay where they are.</p>
      </Ask>
    </Modal>
  );
}
