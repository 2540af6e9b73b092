import { useEffect, useState } from "react";

/** How long a notice that asks nothing of anyone stays, in milliseconds: long enough to read two lines twice (common practice). */
export const noticeMilliseconds = 12_000;

/** Whether a notice is still new. @param turn a number that is another for each notice, also for one with the same words. */
export function useStillNew(turn: number, milliseconds = noticeMilliseconds): boolean {
  const [past, setPast] = useState<number | null>(null);
  useEffect(() => {
    const timer = window.setTimeout(() => setPast(turn), milliseconds);
    return () => window.clearTimeout(timer);
  }, [turn, milliseconds]);
  return past !== turn;
}
