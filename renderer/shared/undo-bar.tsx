import type { Edit } from "../client/use-recording.ts";
import { Button } from "./button.tsx";
import { type UndoDetail, undoneWords, undoTip } from "./undo-words.ts";

export interface UndoBarProps {
  readonly detail: UndoDetail;
  readonly edit: Edit;
}

/** Undo and redo, for every desk of a recording: one history holds marks, findings and rulings. */
export function UndoBar({ detail, edit }: UndoBarProps) {
  const { undoLabel, redoLabel } = detail;
  return (
    <>
      <Button
        weight="quiet"
        onClick={() => undo(detail, edit)}
        disabled={undoLabel === null}
        tip={undoTip(detail)}
        aria-keyshortcuts="Control+Z"
      >
        Undo
      </Button>
      <Button
        weight="quiet"
        onClick={() => redo(detail, edit)}
        disabled={redoLabel === null}
        tip={redoLabel === null ? "Nothing to do again" : `Redo: ${redoLabel} (Ctrl Shift Z)`}
        aria-keyshortcuts="Control+Shift+Z"
      >
        Redo
      </Button>
    </>
  );
}

export function undo(detail: UndoDetail, edit: Edit): void {
  const { undoLabel } = detail;
  if (undoLabel !== null) void edit("edit.undo", {}, undoneWords({ ...detail, undoLabel }));
}

export function redo({ redoLabel }: UndoDetail, edit: Edit): void {
  if (redoLabel !== null) void edit("edit.redo", {}, `Done again: ${redoLabel}`);
}
