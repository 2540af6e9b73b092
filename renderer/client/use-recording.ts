import { useCallback, useEffect, useRef, useState } from "react";
import type { Input, MethodName, Output, Problem, RecordingDetail } from "../../shared-types/index.ts";
import { useInitials } from "../shared/initials.tsx";
import { problemOf } from "./client.ts";
import { useClient, useHostAway, useHostEvent } from "./use-client.ts";

/** Methods that make one edit and answer with the recording as it then stands on disk. */
export type EditName = {
  [Name in MethodName]: Output<Name> extends RecordingDetail
    ? Input<Name> extends { recordingId: string; initials: string }
      ? Name
      : never
    : never;
}[MethodName];

export type EditInput<Name extends EditName> = Omit<Input<Name>, "recordingId" | "initials">;

/** Makes an edit; resolves to false when it was refused (the problem is then shown) or when no initials were given. */
export type Edit = <Name extends EditName>(name: Name, input: EditInput<Name>, saved: string) => Promise<boolean>;

export interface OpenRecording {
  readonly detail: RecordingDetail | null;
  readonly problem: Problem | null;
  readonly dismissProblem: () => void;
  readonly saving: boolean;
  /** True while the host does not answer: what is shown may no longer be what is on disk. */
  readonly away: boolean;
  /** What the last edit did, in words, for the live region. */
  readonly lastSaved: string;
  /** How many edits were saved since the recording was opened: tells two with the same words apart. */
  readonly saves: number;
  readonly edit: Edit;
}

/**
 * One recording and the door through which it is edited. Edits run one after another; the screen shows only what the host sent back,
 * so whatever is shown is on disk.
 */
export function useRecording(recordingId: string): OpenRecording {
  const client = useClient();
  const { requireInitials } = useInitials();
  const [detail, setDetail] = useState<RecordingDetail | null>(null);
  const [problem, setProblem] = useState<Problem | null>(null);
  const [pending, setPending] = useState(0);
  const [lastSaved, setLastSaved] = useState("");
  const [saves, setSaves] = useState(0);
  const queue = useRef<Promise<unknown>>(Promise.resolve());
  // Counts edits and reloads, so that an answer which left the host before a later edit cannot put the screen back.
  const turn = useRef(0);

  const reload = useCallback(() => {
    const mine = ++turn.current;
    client.call("recording.get", { id: recordingId }).then(
      (answer) => {
        if (turn.current === mine) setDetail(answer);
      },
      (thrown: unknown) => {
        if (turn.current === mine) setProblem(problemOf(thrown));
      },
    );
  }, [client, recordingId]);
  useEffect(reload, [reload]);
  useHostEvent("library.changed", (changed) => {
    if (pending === 0 && (changed.recordingId === null || changed.recordingId === recordingId)) reload();
  });

  const edit = useCallback<Edit>(
    async (name, input, saved) => {
      const initials = await requireInitials();
      if (initials === null) return false;
      setPending((count) => count + 1);
      const run = queue.current.then(async () => {
        turn.current++;
        try {
          // Every edit's input is these two fields and its own; the compiler cannot see that through the generic.
          const answer = (await client.call(name, { ...input, recordingId, initials } as unknown as Input<typeof name>)) as RecordingDetail;
          turn.current++;
          setDetail(answer);
          setProblem(null);
          setLastSaved(saved);
          setSaves((count) => count + 1);
          return true;
        } catch (thrown) {
          setProblem(problemOf(thrown));
          return false;
        } finally {
          setPending((count) => count - 1);
        }
      });
      queue.current = run;
      return run;
    },
    [client, recordingId, requireInitials],
  );

  const dismissProblem = useCallback(() => setProblem(null), []);
  const away = useHostAway() || problem?.code === "host-unreachable";
  return { detail, problem, dismissProblem, saving: pending > 0, away, lastSaved, saves, edit };
}
