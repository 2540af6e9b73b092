import type { Caption, Repair } from "../../../shared-types/index.ts";

const folded = (text: string): string => text.toLocaleLowerCase("en").replaceAll(/\s+/g, " ");

/** Folded once for a list, not for each letter that is typed: a long recording has ten thousand captions. */
const foldedLists = new WeakMap<readonly Caption[], readonly string[]>();
function foldedList(captions: readonly Caption[]): readonly string[] {
  const known = foldedLists.get(captions);
  if (known) return known;
  const list = captions.map(({ text }) => folded(text));
  foldedLists.set(captions, list);
  return list;
}

/** Places in the list of captions that hold the words, in what was heard or in what a repair reads there. None for no words. */
export function captionHits(captions: readonly Caption[], repairs: readonly Repair[], words: string): number[] {
  const wanted = folded(words).trim();
  if (wanted === "") return [];
  const meant = new Map<number, string>();
  for (const repair of repairs) meant.set(repair.caption, `${meant.get(repair.caption) ?? ""} ${repair.meant}`);
  const texts = foldedList(captions);
  const hits: number[] = [];
  for (const [place, { index }] of captions.entries()) {
    const read = meant.get(index);
    if (texts[place]?.includes(wanted) || (read !== undefined && folded(read).includes(wanted))) hits.push(place);
  }
  return hits;
}

/**
 * The hit to go to: after or before a place in the list, round its ends.
 * @param from the place last gone to, or the one in view; the first hit from there on may be that place itself when `stay` is set.
 */
export function hitBeside(hits: readonly number[], from: number, direction: 1 | -1, stay = false): number | undefined {
  if (direction === 1) return hits.find((place) => (stay ? place >= from : place > from)) ?? hits[0];
  return hits.findLast((place) => place < from) ?? hits.at(-1);
}
