import { useEffect, useState } from "react";
import type { Problem } from "../../shared-types/index.ts";
import { problemOf } from "../client/client.ts";
import { useHostEvent } from "../client/use-client.ts";

/** A pause in typing after which the library is asked, in milliseconds. */
const pauseMilliseconds = 90;

export interface Answer<Value> {
  readonly value: Value;
  /** The question that the value answers. */
  readonly answered: string;
  readonly problem: Problem | null;
}

/**
 * An answer as the person types; one that a later question overtook is dropped. Asked again whenever the library changes, so that a ruling
 * made elsewhere is seen here at once.
 * @param question what is asked, as one string; "" asks nothing and answers `nothing`.
 */
export function useAnswer<Value>(question: string, nothing: Value, ask: (question: string) => Promise<Value>): Answer<Value> {
  const [answer, setAnswer] = useState<Answer<Value>>({ value: nothing, answered: "", problem: null });
  const [turn, setTurn] = useState(0);
  useHostEvent("library.changed", () => setTurn((before) => before + 1));
  // biome-ignore lint/correctness/useExhaustiveDependencies: a turn of the library asks the same question anew
  useEffect(() => {
    if (question === "") {
      setAnswer({ value: nothing, answered: "", problem: null });
      return;
    }
    let overtaken = false;
    const pause = setTimeout(() => {
      ask(question).then(
        (value) => {
          if (!overtaken) setAnswer({ value, answered: question, problem: null });
        },
        (thrown: unknown) => {
          if (!overtaken) setAnswer((before) => ({ ...before, problem: problemOf(thrown) }));
        },
      );
    }, pauseMilliseconds);
    return () => {
      overtaken = true;
      clearTimeout(pause);
    };
  }, [question, nothing, ask, turn]);
  return answer;
}
