import { type RefObject, useLayoutEffect } from "react";

const highlightName = "caption-hit";
/** Words that the page adds to a caption; they were not spoken. */
const added = ".visually-hidden, .doubt, .misheard, .corrected";

/** Paints the searched words in the captions that are on the page now; the words themselves stay as they are. */
export function useHitHighlight(list: RefObject<HTMLElement | null>, words: string): void {
  // After every drawing of the list: rows come and go as it scrolls.
  useLayoutEffect(() => {
    if (!("highlights" in CSS)) return;
    const wanted = words.trim().toLowerCase();
    const ranges = wanted === "" ? [] : Array.from(list.current?.querySelectorAll(".marked") ?? [], (row) => rangesOf(row, wanted)).flat();
    if (ranges.length > 0) CSS.highlights.set(highlightName, new Highlight(...ranges));
    else CSS.highlights.delete(highlightName);
  });
  useLayoutEffect(
    () => () => {
      if ("highlights" in CSS) CSS.highlights.delete(highlightName);
    },
    [],
  );
}

function rangesOf(row: Element, wanted: string): Range[] {
  const walker = document.createTreeWalker(row, NodeFilter.SHOW_TEXT, (node) =>
    node.parentElement?.closest(added) ? NodeFilter.FILTER_REJECT : NodeFilter.FILTER_ACCEPT,
  );
  const pieces: { readonly node: Node; readonly start: number; readonly end: number }[] = [];
  let text = "";
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const start = text.length;
    text += (node.nodeValue ?? "").toLowerCase();
    pieces.push({ node, start, end: text.length });
  }
  const ranges: Range[] = [];
  for (let at = text.indexOf(wanted); at >= 0; at = text.indexOf(wanted, at + wanted.length)) {
    const first = pieces.find((piece) => piece.end > at);
    const last = pieces.find((piece) => piece.end >= at + wanted.length);
    if (!first || !last) break;
    const range = new Range();
    range.setStart(first.node, at - first.start);
    range.setEnd(last.node, at + wanted.length - last.start);
    ranges.push(range);
  }
  return ranges;
}
