import { useEffect, useRef, useState } from "react";

/** Farther than this many captions at once is a leap; the list then shows rows that it has not shown before. */
const nearCaptions = 12;
/** A hand that has not leapt for so long is taken to rest, in milliseconds. */
const restMilliseconds = 120;

/**
 * The caption at the playhead as a list should follow it: at once from caption to caption, and at once to where a single leap goes;
 * in a row of leaps, such as a playhead dragged through hours, only when the hand rests. Nobody reads a list that flies past, and
 * drawing it would hold up the hand.
 */
export function useCalmPlace(place: number): number {
  const [followed, setFollowed] = useState(place);
  const last = useRef({ place, leaptAt: Number.NEGATIVE_INFINITY });
  useEffect(() => {
    const { place: before, leaptAt } = last.current;
    const leaps = Math.abs(place - before) > nearCaptions;
    const now = performance.now();
    last.current = { place, leaptAt: leaps ? now : leaptAt };
    if (now - leaptAt > restMilliseconds) {
      setFollowed(place);
      return;
    }
    const rest = setTimeout(() => setFollowed(place), restMilliseconds);
    return () => clearTimeout(rest);
  }, [place]);
  return followed;
}
