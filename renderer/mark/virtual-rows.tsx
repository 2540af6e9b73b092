import { defaultRangeExtractor, useVirtualizer } from "@tanstack/react-virtual";
import { type ReactNode, useCallback, useEffect, useRef, useState } from "react";

export interface VirtualRowsProps<Row> {
  readonly label: string;
  readonly className: string;
  readonly rows: readonly Row[];
  readonly rowKey: (row: Row) => string;
  /** Height of a row before it was measured, in CSS pixels. */
  readonly estimate: number;
  /** Stands above the rows, also while they scroll. */
  readonly head: ReactNode;
  /** Place of the row that is in view when the list is opened. */
  readonly startAt: number;
  /** Place of the row that the list keeps in view, unless the keyboard is in the list; left out where it stays where it is. */
  readonly follow?: number;
  /** Key of the row whose first control with `data-first` gets the keyboard; the list itself gets it where there is no such row. */
  readonly focusRow: string | null;
  readonly onFocused: () => void;
  readonly children: (row: Row) => { readonly attributes: Readonly<Record<`data-${string}`, unknown>>; readonly content: ReactNode };
}

/** Whether the keyboard is still in a list, or nowhere since a row of it went: only then may the list hand it on when an edit is on disk. */
export function keyboardStayed(): boolean {
  const { activeElement } = document;
  return activeElement === null || activeElement === document.body || activeElement.closest(".pane-scroll") !== null;
}

/** A list of which only the rows in view are on the page; the row that has the keyboard stays there wherever the list is scrolled. */
export function VirtualRows<Row>(props: VirtualRowsProps<Row>) {
  const { label, className, rows, rowKey, estimate, head, startAt, follow, focusRow, onFocused, children } = props;
  const scroller = useRef<HTMLElement>(null);
  const headElement = useRef<HTMLDivElement>(null);
  const [margin, setMargin] = useState(0);
  const [held, setHeld] = useState<string | null>(null);
  const heldIndex = held === null ? -1 : rows.findIndex((row) => rowKey(row) === held);
  const latestKey = useRef(rowKey);
  latestKey.current = rowKey;
  // One function for one list of rows: at another one the list reckons the places of all of them anew.
  const keyAt = useCallback(
    (index: number) => {
      const row = rows[index];
      return row === undefined ? index : latestKey.current(row);
    },
    [rows],
  );
  const list = useVirtualizer({
    count: rows.length,
    getScrollElement: () => scroller.current,
    estimateSize: () => estimate,
    overscan: 6,
    scrollMargin: margin,
    // What stands above the rows stays there and lies over them.
    scrollPaddingStart: margin,
    getItemKey: keyAt,
    rangeExtractor: (range) => {
      const shown = defaultRangeExtractor(range);
      return heldIndex < 0 || shown.includes(heldIndex) ? shown : [...shown, heldIndex].sort((a, b) => a - b);
    },
  });
  useEffect(() => {
    const measured = headElement.current;
    if (!measured) return;
    const watcher = new ResizeObserver(() => setMargin(measured.offsetHeight));
    watcher.observe(measured);
    return () => watcher.disconnect();
  }, []);

  const [opened] = useState(startAt);
  useEffect(() => {
    if (opened > 0) list.scrollToIndex(opened, { align: "center" });
  }, [list, opened]);

  useEffect(() => {
    if (follow === undefined || follow < 0 || scroller.current?.contains(document.activeElement)) return;
    list.scrollToIndex(follow, { align: "auto" });
  }, [list, follow]);

  useEffect(() => {
    if (focusRow === null) return;
    const index = rows.findIndex((row) => rowKey(row) === focusRow);
    if (index < 0) {
      scroller.current?.focus();
      onFocused();
      return;
    }
    if (held !== focusRow) {
      list.scrollToIndex(index, { align: "auto" });
      setHeld(focusRow);
      return;
    }
    const control = scroller.current?.querySelector<HTMLElement>(`[data-row="${CSS.escape(focusRow)}"] [data-first]`);
    if (!control) return;
    control.focus();
    onFocused();
  }, [focusRow, held, rows, rowKey, list, onFocused]);

  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a list that scrolls must be reachable from the keyboard
    <section ref={scroller} className="pane-scroll" tabIndex={0} aria-label={label}>
      <div ref={headElement} className="pane-head">
        {head}
      </div>
      <ol className={className} aria-label={label} style={{ height: list.getTotalSize() }}>
        {list.getVirtualItems().map((item) => {
          const row = rows[item.index];
          if (row === undefined) return null;
          const { attributes, content } = children(row);
          return (
            <li
              key={item.key}
              ref={list.measureElement}
              data-index={item.index}
              data-row={rowKey(row)}
              {...attributes}
              aria-setsize={rows.length}
              aria-posinset={item.index + 1}
              aria-current={attributes["data-here"] ? "true" : undefined}
              style={{ transform: `translateY(${item.start - margin}px)` }}
              onFocus={() => setHeld(rowKey(row))}
            >
              {content}
            </li>
          );
        })}
      </ol>
    </section>
  );
}
