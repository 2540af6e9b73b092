import type { TextSpan } from "../../shared-types/index.ts";
import "../shared/marked-caption.css";

export interface MarkedWordsProps {
  readonly caption: { readonly index: number; readonly text: string };
  readonly spans: readonly TextSpan[];
}

/** A caption's words with some of them marked: those that a promise was heard in. */
export function MarkedWords({ caption: { index, text }, spans }: MarkedWordsProps) {
  return (
    <span className="marked">
      {wordRuns(
        text,
        spans.filter((span) => span.caption === index),
      ).map(({ start, words, marked }) =>
        marked ? (
          <mark key={start} className="claim" data-kind="shown">
            {words}
          </mark>
        ) : (
          <span key={start}>{words}</span>
        ),
      )}
    </span>
  );
}

/** The text cut where marks begin and end. Put together, the runs are the text. */
export function wordRuns(text: string, spans: readonly Pick<TextSpan, "start" | "end">[]) {
  const within = (offset: number) => Math.min(text.length, Math.max(0, offset));
  const cuts = [...new Set([0, ...spans.flatMap(({ start, end }) => [within(start), within(end)]), text.length])].sort((a, b) => a - b);
  return cuts.slice(0, -1).map((start, at) => {
    const end = cuts[at + 1] ?? text.length;
    return { start, words: text.slice(start, end), marked: spans.some((span) => span.start <= start && span.end >= end) };
  });
}
