import { useCallback, useEffect, useRef, useState } from "react";
import type { Problem, RecordingSummary } from "../../shared-types/index.ts";
import { problemOf } from "./client.ts";
import { useClient, useHostEvent } from "./use-client.ts";

/** All recordings of the library, kept in step with the host. `null` until the first answer. */
export function useLibrary() {
  const client = useClient();
  const [recordings, setRecordings] = useState<RecordingSummary[] | null>(null);
  const [problem, setProblem] = useState<Problem | null>(null);
  // While an answer is under way, however many changes are told ask for one more list and not for one each.
  const asking = useRef({ now: false, again: false });
  const reload = useCallback(() => {
    if (asking.current.now) {
      asking.current.again = true;
      return;
    }
    asking.current = { now: true, again: false };
    client
      .call("recording.list", {})
      .then(
        (list) => {
          setRecordings(list);
          setProblem(null);
        },
        (thrown: unknown) => setProblem(problemOf(thrown)),
      )
      .finally(() => {
        const { again } = asking.current;
        asking.current = { now: false, again: false };
        if (again) reload();
      });
  }, [client]);
  useEffect(reload, [reload]);
  useHostEvent("library.changed", reload);
  return { recordings, problem, reload };
}
