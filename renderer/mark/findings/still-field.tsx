import { useState } from "react";
import type { Problem } from "../../../shared-types/index.ts";
import { problemOf } from "../../client/client.ts";
import { useClient } from "../../client/use-client.ts";
import { Button } from "../../shared/button.tsx";
import { ProblemNote } from "../../shared/problem-note.tsx";
import { tenthsLabel } from "../../shared/time.ts";
import { keepStillAt, useStill } from "./use-still.ts";

/** What a still is taken from. */
export interface StillSource {
  readonly recordingId: string;
  /** The playhead, seconds. */
  readonly now: () => number;
  /** Why there is no picture to take; null while there is one. */
  readonly noPicture: string | null;
}

export interface StillFieldProps extends StillSource {
  readonly stillAt: number | null;
  readonly onChange: (stillAt: number | null) => void;
  /** Puts the way to take one at the key's disposal. */
  readonly takeRef: { current: (() => void) | null };
}

/** The still of a finding in its form: what it shows, another from the playhead, or none. */
export function StillField({ recordingId, now, noPicture, stillAt, onChange, takeRef }: StillFieldProps) {
  const client = useClient();
  const still = useStill(recordingId, stillAt);
  const [taking, setTaking] = useState(false);
  const [problem, setProblem] = useState<Problem | null>(null);
  const take = async () => {
    if (taking || noPicture !== null) return;
    setTaking(true);
    setProblem(null);
    try {
      onChange(await keepStillAt(client, recordingId, now()));
    } catch (thrown) {
      setProblem(problemOf(thrown));
    } finally {
      setTaking(false);
    }
  };
  takeRef.current = () => void take();
  return (
    // biome-ignore lint/a11y/useSemanticElements: a picture and what is done with it, no fields
    <div className="still-field" role="group" aria-label="Still">
      <div className="row">
        {stillAt !== null && still.src ? (
          <img className="still-small" src={still.src} alt={`The video at ${tenthsLabel(stillAt / 1000)}`} />
        ) : null}
        <Button
          onClick={() => void take()}
          disabled={taking || noPicture !== null}
          shortcut="Alt+S"
          tip="The video's picture at the playhead"
        >
          {taking ? "Taking…" : stillAt === null ? "Take a still" : "Take again"}
        </Button>
        {stillAt === null ? null : (
          <Button weight="quiet" onClick={() => onChange(null)}>
            No still
          </Button>
        )}
        <span className="small soft" role="status">
          {noPicture !== null ? "There is no picture to take." : stillAt === null ? "" : `at ${tenthsLabel(stillAt / 1000)}`}
        </span>
      </div>
      {problem ? <ProblemNote problem={problem} onDismiss={() => setProblem(null)} /> : null}
      {still.problem ? <ProblemNote problem={still.problem} /> : null}
    </div>
  );
}
