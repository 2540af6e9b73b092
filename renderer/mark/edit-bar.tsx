import type { RecordingDetail } from "../../shared-types/index.ts";
import { Button } from "../shared/button.tsx";
import type { MarkActions } from "./use-mark-actions.ts";

/** Undo, redo, and the sheet of keys. */
export function EditBar({ detail, actions }: { readonly detail: RecordingDetail; readonly actions: MarkActions["actions"] }) {
  const { undoLabel, redoLabel } = detail;
  return (
    <>
      <Button
        weight="quiet"
        onClick={actions.undo}
        disabled={undoLabel === null}
        tip={undoLabel === null ? "Nothing to undo" : `Undo: ${undoLabel} (Ctrl Z)`}
        aria-keyshortcuts="Control+Z"
      >
        Undo
      </Button>
      <Button
        weight="quiet"
        onClick={actions.redo}
        disabled={redoLabel === null}
        tip={redoLabel === null ? "Nothing to do again" : `Redo: ${redoLabel} (Ctrl Shift Z)`}
        aria-keyshortcuts="Control+Shift+Z"
      >
        Redo
      </Button>
      <Button weight="quiet" shortcut="?" onClick={actions.sheet}>
        Keys
      </Button>
    </>
  );
}
