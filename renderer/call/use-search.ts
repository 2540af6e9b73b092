import { useCallback } from "react";
import type { Comparison, SearchHit } from "../../shared-types/index.ts";
import { useClient } from "../client/use-client.ts";
import { type Answer, useAnswer } from "./use-answer.ts";

const mostHits = 60;
const noHits: readonly SearchHit[] = [];

/** Moments that answer a question. @param only the one recording that is asked of; null for the whole library. */
export function useSearch(query: string, only: string | null): Answer<readonly SearchHit[]> {
  const client = useClient();
  const ask = useCallback(
    (question: string): Promise<readonly SearchHit[]> =>
      client.call("search.find", { query: question, limit: mostHits, ...(only === null ? {} : { recordingId: only }) }),
    [client, only],
  );
  return useAnswer(query.trim().slice(0, 200), noHits, ask);
}

/** Vehicles side by side by one claim; null before anything was asked of any of them. */
export function useComparison(query: string, recordingIds: readonly string[]): Answer<Comparison | null> {
  const client = useClient();
  const ids = recordingIds.join(",");
  const ask = useCallback(
    (question: string): Promise<Comparison | null> => client.call("search.compare", { query: question, recordingIds: ids.split(",") }),
    [client, ids],
  );
  return useAnswer(ids === "" ? "" : query.trim().slice(0, 200), null, ask);
}
