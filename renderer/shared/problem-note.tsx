import type { Problem } from "../../shared-types/index.ts";
import { Button } from "./button.tsx";

/** A failure, beside what failed: file and line first where there is one, then what was found and what to do. */
export function ProblemNote({
  problem,
  onDismiss,
  id,
}: {
  readonly problem: Problem;
  readonly onDismiss?: () => void;
  readonly id?: string;
}) {
  // A message that names its file itself needs no second naming.
  const named = problem.file !== undefined && problem.message.includes(problem.file);
  const place = named ? "" : [problem.file, problem.line === undefined ? null : `line ${problem.line}`].filter(Boolean).join(", ");
  return (
    <div className="problem" role="alert" id={id}>
      <div className="problem-words">
        {place ? <span className="problem-place">{place}: </span> : null}
        {problem.message}
      </div>
      {onDismiss ? (
        <Button weight="quiet" onClick={onDismiss}>
          Dismiss
        </Button>
      ) : null}
    </div>
  );
}
