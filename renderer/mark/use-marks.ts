import { useMemo, useState } from "react";

/** The stretch that the person has marked. Seconds; either end may still be missing. */
export interface Marks {
  readonly start: number | null;
  readonly end: number | null;
}

export const noMarks: Marks = { start: null, end: null };

/** Marks with a new start; an end that no longer lies after it is dropped. */
export function markStart(marks: Marks, seconds: number): Marks {
  return { start: seconds, end: marks.end !== null && marks.end > seconds ? marks.end : null };
}

/** Marks with a new end; a start that no longer lies before it is dropped. */
export function markEnd(marks: Marks, seconds: number): Marks {
  return { start: marks.start !== null && marks.start < seconds ? marks.start : null, end: seconds };
}

/** The marked stretch, or null while an end is missing. */
export function markedStretch(marks: Marks): { start: number; end: number } | null {
  return marks.start !== null && marks.end !== null ? { start: marks.start, end: marks.end } : null;
}

export function useMarks() {
  const [marks, setMarks] = useState<Marks>(noMarks);
  return useMemo(
    () => ({
      marks,
      stretch: markedStretch(marks),
      setStart: (seconds: number) => setMarks((before) => markStart(before, seconds)),
      setEnd: (seconds: number) => setMarks((before) => markEnd(before, seconds)),
      setBoth: (start: number, end: number) => setMarks({ start, end }),
      clear: () => setMarks(noMarks),
    }),
    [marks],
  );
}
export type MarkKeeper = ReturnType<typeof useMarks>;
