import { Button } from "../shared/button.tsx";
import { tenthsLabel } from "../shared/time.ts";
import type { MarkActions } from "./use-mark-actions.ts";
import type { MarkKeeper } from "./use-marks.ts";

export interface MarkBarProps {
  readonly desk: MarkActions;
  readonly keeper: MarkKeeper;
}

/** Marking at the playhead, and what to make of the marked stretch. */
export function MarkBar({ desk: { actions }, keeper: { marks } }: MarkBarProps) {
  return (
    // biome-ignore lint/a11y/useSemanticElements: a toolbar has no element of its own
    <div className="mark-bar" role="group" aria-label="Marking">
      <Button shortcut="I" onClick={actions["mark-start"]}>
        In {marks.start === null ? "" : tenthsLabel(marks.start)}
      </Button>
      <Button shortcut="O" onClick={actions["mark-end"]}>
        Out {marks.end === null ? "" : tenthsLabel(marks.end)}
      </Button>
      <Button shortcut="Z" onClick={actions.zone}>
        Zone…
      </Button>
      <Button shortcut="F" onClick={actions.finding}>
        Finding…
      </Button>
    </div>
  );
}
