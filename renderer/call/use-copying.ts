import { useState } from "react";

export interface Copying {
  /** What was copied last, and whether the window allowed it; null before. */
  readonly last: { readonly text: string; readonly done: boolean } | null;
  /** The moment that copying was asked for and that had no sentence; null once something was copied. */
  readonly refused: string | null;
  /** @param moment tells one moment from another, so that a refusal is shown beside its own. */
  readonly copy: (text: string | null, moment: string) => void;
}

/** Copies an answer to the clipboard and remembers which one, so that the screen can say so beside it. */
export function useCopying(): Copying {
  const [last, setLast] = useState<Copying["last"]>(null);
  const [refused, setRefused] = useState<string | null>(null);
  const copy = (text: string | null, moment: string) => {
    setRefused(text === null ? moment : null);
    // What was copied before is not what stands here.
    if (text === null) return setLast(null);
    navigator.clipboard.writeText(text).then(
      () => setLast({ text, done: true }),
      () => setLast({ text, done: false }),
    );
  };
  return { last, refused, copy };
}
