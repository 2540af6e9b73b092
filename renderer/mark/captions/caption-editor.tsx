import { useEffect, useRef, useState } from "react";
import { type Caption, type CorrectedCaption, timeLabel } from "../../../shared-types/index.ts";
import { Button } from "../../shared/button.tsx";

export interface CaptionEditorProps {
  readonly caption: Caption;
  readonly correction: CorrectedCaption | undefined;
  /** Resolves to false where the words were refused; they then stay in the field. */
  readonly onKeep: (words: string) => Promise<boolean>;
  readonly onDrop: () => void;
  readonly onHear: () => void;
}

/** A caption's words in a field in their own place: Enter keeps, Escape drops, Ctrl Space plays the caption. */
export function CaptionEditor({ caption, correction, onKeep, onDrop, onHear }: CaptionEditorProps) {
  const [words, setWords] = useState(caption.text);
  const [keeping, setKeeping] = useState(false);
  const field = useRef<HTMLTextAreaElement>(null);
  useEffect(() => {
    const { current } = field;
    // At the end, with nothing selected: one key must not take a whole sentence away.
    current?.focus();
    current?.setSelectionRange(current.value.length, current.value.length);
  }, []);
  const keep = async (kept: string) => {
    if (kept.trim() === "" || keeping) return;
    setKeeping(true);
    if (!(await onKeep(kept))) setKeeping(false);
  };
  const empty = words.trim() === "";
  return (
    <div className="caption-editor">
      <textarea
        ref={field}
        className="text-field"
        aria-label={`Words of the caption at ${timeLabel(caption.start)}`}
        aria-describedby={empty ? "caption-editor-fault" : undefined}
        aria-invalid={empty || undefined}
        value={words}
        rows={Math.max(2, Math.ceil(words.length / 44))}
        maxLength={2000}
        readOnly={keeping}
        onChange={(event) => setWords(event.target.value)}
        onKeyDown={(event) => {
          if (event.nativeEvent.isComposing) return;
          if (event.key === "Enter") void keep(words);
          else if (event.key === "Escape") onDrop();
          else if (event.key === " " && event.ctrlKey) onHear();
          else return;
          event.preventDefault();
          event.stopPropagation();
        }}
      />
      {empty ? (
        <span className="small field-fault" id="caption-editor-fault">
          A caption cannot be empty. Escape leaves its words as they were.
        </span>
      ) : null}
      <div className="caption-editor-tools">
        <Button weight="main" shortcut="Enter" disabled={empty || keeping} onClick={() => void keep(words)}>
          {keeping ? "Reading anew…" : "Keep"}
        </Button>
        <Button shortcut="Escape" onClick={onDrop}>
          Drop
        </Button>
        <Button weight="quiet" shortcut="Ctrl+Space" onClick={onHear}>
          Hear
        </Button>
        {correction ? (
          <Button weight="quiet" disabled={keeping} onClick={() => void keep(correction.original)} tip="Takes the correction back">
            Put back
          </Button>
        ) : null}
      </div>
    </div>
  );
}
