import type { EventPayload } from "../../shared-types/index.ts";
import { Button } from "../shared/button.tsx";

export interface WorkBarProps {
  readonly name: string;
  readonly progress: Pick<EventPayload<"work.progress">, "what" | "done" | "of"> | null;
  readonly onCancel: () => void;
}

/** How far a piece of work is, and the way to end it. */
export function WorkBar({ name, progress, onCancel }: WorkBarProps) {
  const share = progress && progress.of > 0 ? { value: progress.done / progress.of } : {};
  return (
    <div className="work-bar">
      <span className="small" role="status">
        {progress?.what || "Starting…"}
      </span>
      <progress className="run-bar" aria-label={name} max={1} {...share} />
      <Button onClick={onCancel}>Cancel</Button>
    </div>
  );
}
