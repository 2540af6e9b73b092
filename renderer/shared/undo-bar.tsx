import type { RecordingDetail } from "../../shared-types/index.ts";
import type { Edit } from "../client/use-recording.ts";
import { Button } from "./button.tsx";

export interface UndoBarProps {
  readonly detail: Pick<RecordingDetail, "undoLabel" | "redoLabel">;
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
        tip={undoLabel === null ? "Nothing to undo" : `Undo: ${undoLabel} (Ctrl Z)`}
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

export function undo({ undoLabel }: UndoBarProps["detail"], edit: Edit): void {
  if (undoLabel !== null) void edit("edit.undo", {}, `Undone: ${undoLabel}`);
}

export function redo({ redoLabel }: UndoBarProps["detail"], edit: Edit): void {
  if (redoLabel !== null) void edit("edit.redo", {}, `Done again: ${redoLabel}`);
}
