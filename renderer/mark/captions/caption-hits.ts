import type { Caption, Repair } from "../../../shared-types/index.ts";

const folded = (text: string): string => text.toLocaleLowerCase("en").replaceAll(/\s+/g, " ");

/** Places in the list of captions that hold the words, in what was heard or in what a repair reads there. None for no words. */
export function captionHits(captions: readonly Caption[], repairs: readonly Repair[], words: string): number[] {
  const wanted = folded(words).trim();
  if (wanted === "") return [];
  const meant = new Map<number, string>();
  for (const repair of repairs) meant.set(repair.caption, `${meant.get(repair.caption) ?? ""} ${repair.meant}`);
  return captions.flatMap(({ index, text }, place) =>
    folded(text).includes(wanted) || folded(meant.get(index) ?? "").includes(wanted) ? [place] : [],
  );
}

/**
 * The hit to go to: after or before a place in the list, round its ends.
 * @param from the place last gone to, or the one in view; the first hit from there on may be that place itself when `stay` is set.
 */
export function hitBeside(hits: readonly number[], from: number, direction: 1 | -1, stay = false): number | undefined {
  if (direction === 1) return hits.find((place) => (stay ? place >= from : place > from)) ?? hits[0];
  return hits.findLast((place) => place < from) ?? hits.at(-1);
}
