import type { Caption, DoubtfulCaption } from "../../shared-types/index.ts";

/** A stretch of neighbouring doubtful captions. Seconds. */
export interface DoubtfulStretch {
  readonly start: number;
  readonly end: number;
  readonly why: string;
}

/** Doubtful captions, with those that follow one another for the same reason joined. */
export function doubtfulStretches(doubtful: readonly DoubtfulCaption[], captions: readonly Caption[]): DoubtfulStretch[] {
  const stretches: DoubtfulStretch[] = [];
  for (const { caption, why } of [...doubtful].sort((a, b) => a.caption - b.caption)) {
    const spoken = captions[caption];
    if (!spoken) continue;
    const last = stretches.at(-1);
    if (last && last.why === why && Math.abs(last.end - spoken.start) < 0.01)
      stretches[stretches.length - 1] = { ...last, end: spoken.end };
    else stretches.push({ start: spoken.start, end: spoken.end, why });
  }
  return stretches;
}
