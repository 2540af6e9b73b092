import { useState } from "react";

export interface Copying {
  /** What was copied last, and whether the window allowed it; null before. */
  readonly last: { readonly text: string; readonly done: boolean } | null;
  readonly copy: (text: string | null) => void;
}

/** Copies an answer to the clipboard and remembers which one, so that the screen can say so beside it. */
export function useCopying(): Copying {
  const [last, setLast] = useState<Copying["last"]>(null);
  const copy = (text: string | null) => {
    if (text === null) return;
    navigator.clipboard.writeText(text).then(
      () => setLast({ text, done: true }),
      () => setLast({ text, done: false }),
    );
  };
  return { last, copy };
}
