import { useEffect, useState } from "react";
import type { Problem, SearchHit } from "../../shared-types/index.ts";
import { problemOf } from "../client/client.ts";
import { useClient } from "../client/use-client.ts";

/** A pause in typing after which the library is searched, in milliseconds. */
const pauseMilliseconds = 90;
const mostHits = 60;

export interface Search {
  readonly hits: readonly SearchHit[];
  /** The query that the hits answer. */
  readonly answered: string;
  readonly problem: Problem | null;
}

/** Results as the person types; an answer that a later query overtook is dropped. */
export function useSearch(query: string): Search {
  const client = useClient();
  const [search, setSearch] = useState<Search>({ hits: [], answered: "", problem: null });
  const wanted = query.trim();
  useEffect(() => {
    if (wanted === "") {
      setSearch({ hits: [], answered: "", problem: null });
      return;
    }
    let overtaken = false;
    const pause = setTimeout(() => {
      client.call("search.find", { query: wanted.slice(0, 200), limit: mostHits }).then(
        (hits) => {
          if (!overtaken) setSearch({ hits, answered: wanted, problem: null });
        },
        (thrown: unknown) => {
          if (!overtaken) setSearch((before) => ({ ...before, problem: problemOf(thrown) }));
        },
      );
    }, pauseMilliseconds);
    return () => {
      overtaken = true;
      clearTimeout(pause);
    };
  }, [client, wanted]);
  return search;
}
