import type { Caption } from "../../shared-types/index.ts";

/** Index of the caption spoken at a moment, or the last one before it; -1 before the first. Captions are in order of time. */
export function captionAt(captions: readonly Pick<Caption, "start">[], seconds: number): number {
  let low = 0;
  let high = captions.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((captions[middle]?.start ?? 0) <= seconds + 0.001) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}
