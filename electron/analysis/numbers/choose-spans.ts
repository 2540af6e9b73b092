import type { Line } from "./pieces.ts";
import type { WeighedSpan } from "./weigh-spans.ts";

/**
 * Of all stretches that may be numbers, the set without overlap that explains the words best. A stretch that reads several pieces as one
 * number counts for more than its pieces read one by one, so "235 60 15" is one tire size and not three counts, if it is a likely one.
 */
export function chooseSpans(line: Line, spans: readonly WeighedSpan[]): WeighedSpan[] {
  const byStart = new Map<number, WeighedSpan[]>();
  for (const span of spans) byStart.set(span.first, [...(byStart.get(span.first) ?? []), span]);
  const length = line.pieces.length;
  const best = new Float64Array(length + 1);
  const taken: (WeighedSpan | undefined)[] = new Array(length + 1).fill(undefined);
  for (let at = length - 1; at >= 0; at -= 1) {
    best[at] = best[at + 1]!;
    for (const span of byStart.get(at) ?? []) {
      const worth = worthOf(line, span) + best[span.end]! - (touches(line, span, taken[span.end]) ? touchingCost : 0);
      if (worth > best[at]! + 1e-9) {
        best[at] = worth;
        taken[at] = span;
      }
    }
  }
  const chosen: WeighedSpan[] = [];
  for (let at = 0; at < length; ) {
    const span = taken[at];
    if (span) {
      chosen.push(span);
      at = span.end;
    } else at += 1;
  }
  return chosen;
}

/** Two numbers right after one another with nothing said between are rarely two: a separator was lost. */
const touchingCost = 0.35;

function touches(line: Line, span: WeighedSpan, next: WeighedSpan | undefined): boolean {
  if (!next || next.first !== span.end) return false;
  const [last, first] = [line.pieces[span.end - 1]!, line.pieces[next.first]!];
  if (borderBetween(line, span.end - 1, next.first)) return false;
  // "a 69 350" and "three ninety four speed" are two numbers by what they are.
  return last.written !== "none" && first.written !== "none" && span.drafts[0]!.kind === "integer" && next.drafts[0]!.kind === "integer";
}

/** True where a caption ends between two pieces: speakers pause there more often than within a number. */
function borderBetween(line: Line, before: number, after: number): boolean {
  const [from, to] = [line.tokens[line.pieces[before]!.end - 1], line.tokens[line.pieces[after]!.first]];
  return from !== undefined && to !== undefined && from.caption !== to.caption;
}

const partWords: ReadonlySet<string> = new Set("half quarter quarters oh point comma dot".split(" "));

function worthOf(line: Line, span: WeighedSpan): number {
  let numbers = 0;
  for (let at = span.first; at < span.end; at += 1) {
    const piece = line.pieces[at]!;
    if (piece.written !== "none" || partWords.has(piece.text)) numbers += 1;
  }
  const words = span.end - span.first - numbers;
  return span.drafts[0]!.weight * (Math.max(1, numbers) ** 1.35 + Math.min(words, 6) * 0.2);
}
