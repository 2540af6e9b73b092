import { type ReactNode, useId, useRef } from "react";
import type { Problem } from "../../shared-types/index.ts";
import { Button } from "../shared/button.tsx";
import { ProblemNote } from "../shared/problem-note.tsx";

export interface FileSlotProps {
  readonly label: string;
  readonly hint: string;
  /** Endings that the file window offers first; any file may be dropped. */
  readonly accept: string;
  readonly file: File | null;
  readonly onFile: (file: File | null) => void;
  readonly problem: Problem | null;
  /** Another button, for a file that is there. */
  readonly more?: ReactNode;
}

/** A place for one file: chosen in the system's window or dropped here. */
export function FileSlot({ label, hint, accept, file, onFile, problem, more }: FileSlotProps) {
  const id = useId();
  const input = useRef<HTMLInputElement>(null);
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset would bring its own frame; the group names the controls inside
    <div
      className="file-slot"
      role="group"
      aria-label={label}
      data-filled={file !== null || undefined}
      onDragOver={(event) => event.preventDefault()}
      onDrop={(event) => {
        event.preventDefault();
        event.stopPropagation();
        onFile(event.dataTransfer.files[0] ?? null);
      }}
    >
      <label htmlFor={id}>{label}</label>
      <input
        ref={input}
        id={id}
        type="file"
        accept={accept}
        className="visually-hidden"
        tabIndex={-1}
        onChange={(event) => {
          onFile(event.target.files?.[0] ?? null);
          // The same file again, mended, must count as a change.
          event.target.value = "";
        }}
      />
      <span className="file-slot-name">{file ? file.name : <span className="soft">{hint}</span>}</span>
      <span className="row">
        {file ? more : null}
        <Button onClick={() => input.current?.click()} aria-label={`${file ? "Another" : "Choose"} ${label.toLowerCase()}`}>
          {file ? "Another…" : "Choose…"}
        </Button>
        {file ? (
          <Button weight="quiet" onClick={() => onFile(null)} aria-label={`Leave out ${label.toLowerCase()}`}>
            Leave out
          </Button>
        ) : null}
      </span>
      {problem ? <ProblemNote problem={problem} /> : null}
    </div>
  );
}
