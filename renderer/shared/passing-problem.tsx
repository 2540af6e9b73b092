import { useEffect, useState } from "react";
import type { Problem } from "../../shared-types/index.ts";
import "./passing-problem.css";
import { ProblemNote } from "./problem-note.tsx";

/** How long a refusal stays before it goes by itself, in milliseconds: it changed nothing, so that nothing is lost with it. */
const refusalMilliseconds = 20_000;

export interface PassingProblemProps {
  readonly problem: Problem;
  readonly onDismiss: () => void;
  /** True for what still holds, such as a host that does not answer: that stays until it is over. */
  readonly lasting: boolean;
}

/** A failure over the desk, which keeps its size: goes with time, with Esc or the next edit; not while the pointer or the keyboard is in it. */
export function PassingProblem({ problem, onDismiss, lasting }: PassingProblemProps) {
  const [held, setHeld] = useState(false);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another problem stays its own time
  useEffect(() => {
    if (held || lasting) return;
    const timer = window.setTimeout(onDismiss, refusalMilliseconds);
    return () => window.clearTimeout(timer);
  }, [problem, held, lasting, onDismiss]);
  useEffect(() => {
    const hear = (event: KeyboardEvent) => {
      if (event.key === "Escape" && !event.defaultPrevented) onDismiss();
    };
    window.addEventListener("keydown", hear);
    return () => window.removeEventListener("keydown", hear);
  }, [onDismiss]);
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: it is only noticed whether someone is still reading
    <div
      className="passing-problem"
      onPointerEnter={() => setHeld(true)}
      onPointerLeave={() => setHeld(false)}
      onFocus={() => setHeld(true)}
      onBlur={() => setHeld(false)}
    >
      <ProblemNote problem={problem} onDismiss={onDismiss} />
    </div>
  );
}
