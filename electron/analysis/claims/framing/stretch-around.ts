import type { Clause, Frames } from "./frame-speech.ts";

/** An aside of fewer words ("than the two litre") parts nothing: what is said around it is one thought. */
const shortestAside = 4;
/** No cue of a number is looked for further away. */
const furthestCue = 20;

/**
 * The token range (end exclusive) around a number that speaks of the same vehicle: words of an aside say nothing of a number outside it,
 * nor the other way round. Bounds further away than any cue are not looked for.
 */
export function stretchAround(frames: Frames, number: { readonly first: number; readonly end: number }): { first: number; end: number } {
  const own = frames.at(number.first);
  const isSame = (clause: Clause) => (clause.subject === "this-vehicle") === (own.subject === "this-vehicle");
  const bound = (step: 1 | -1): Clause | undefined => {
    let run: Clause | undefined;
    let words = 0;
    for (let at = own.index + step; at >= 0 && at < frames.clauses.length; at += step) {
      const clause = frames.clauses[at]!;
      if (step > 0 ? clause.first > number.end + furthestCue : clause.end < number.first - furthestCue) break;
      if (isSame(clause)) {
        run = undefined;
        words = 0;
        continue;
      }
      run ??= clause;
      words += clause.end - clause.first;
      if (words >= shortestAside) return run;
    }
    return undefined;
  };
  return { first: bound(-1)?.end ?? 0, end: bound(1)?.first ?? Number.POSITIVE_INFINITY };
}
