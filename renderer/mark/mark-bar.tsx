import type { RecordingDetail } from "../../shared-types/index.ts";
import { Button } from "../shared/button.tsx";
import { tenthsLabel } from "../shared/time.ts";
import type { MarkActions } from "./use-mark-actions.ts";
import type { MarkKeeper } from "./use-marks.ts";

export interface MarkBarProps {
  readonly detail: RecordingDetail;
  readonly desk: MarkActions;
  readonly keeper: MarkKeeper;
}

/** Marking at the playhead, and what to make of the marked stretch. */
export function MarkBar({ detail, desk: { actions }, keeper: { marks } }: MarkBarProps) {
  return (
    // biome-ignore lint/a11y/useSemanticElements: a toolbar has no element of its own
    <div className="mark-bar" role="group" aria-label="Marking">
      <Button className="mark-value" shortcut="I" onClick={actions["mark-start"]}>
        In {marks.start === null ? "" : tenthsLabel(marks.start)}
      </Button>
      <Button className="mark-value" shortcut="O" onClick={actions["mark-end"]}>
        Out {marks.end === null ? "" : tenthsLabel(marks.end)}
      </Button>
      <Button shortcut="Z" onClick={actions.zone}>
        Zone…
      </Button>
      <Button shortcut="F" onClick={actions.finding}>
        Finding…
      </Button>
      <span className="mark-bar-line" />
      <Button
        weight="quiet"
        onClick={actions.undo}
        disabled={detail.undoLabel === null}
        tip={detail.undoLabel === null ? "Nothing to undo" : `Undo: ${detail.undoLabel}`}
        aria-keyshortcuts="Control+Z"
      >
        Undo
      </Button>
      <Button
        weight="quiet"
        onClick={actions.redo}
        disabled={detail.redoLabel === null}
        tip={detail.redoLabel === null ? "Nothing to do again" : `Redo: ${detail.redoLabel}`}
        aria-keyshortcuts="Control+Shift+Z"
      >
        Redo
      </Button>
      <Button weight="quiet" shortcut="?" onClick={actions.sheet}>
        Keys
      </Button>
    </div>
  );
}
