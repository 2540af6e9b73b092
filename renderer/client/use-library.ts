import { useCallback, useEffect, useState } from "react";
import type { Problem, RecordingSummary } from "../../shared-types/index.ts";
import { problemOf } from "./client.ts";
import { useClient, useHostEvent } from "./use-client.ts";

/** All recordings of the library, kept in step with the host. `null` until the first answer. */
export function useLibrary() {
  const client = useClient();
  const [recordings, setRecordings] = useState<RecordingSummary[] | null>(null);
  const [problem, setProblem] = useState<Problem | null>(null);
  const reload = useCallback(() => {
    client.call("recording.list", {}).then(
      (list) => {
        setRecordings(list);
        setProblem(null);
      },
      (thrown: unknown) => setProblem(problemOf(thrown)),
    );
  }, [client]);
  useEffect(reload, [reload]);
  useHostEvent("library.changed", reload);
  return { recordings, problem, reload };
}
