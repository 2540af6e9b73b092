import type { Claim, Conflict } from "../../../shared-types/index.ts";
import type { Speech } from "../model.ts";

/** Longest quote of a doubt, in characters; a run of speech without stops is cut around the figure, between words. Chosen by reading. */
const longestQuote = 160;

/**
 * A figure that is “put in doubt” is quoted with the words that doubt it: a claim's own words are often the bare figure, and “I think” before
 * or “but I can't swear to that” after it is what a reviewer rules on.
 */
export function quotingDoubts(conflicts: readonly Conflict[], claims: readonly Claim[], speech: Speech): Conflict[] {
  const byId = new Map(claims.map((claim) => [claim.id, claim]));
  return conflicts.map((conflict) => {
    const quoted = /^(.* put in doubt at \S+ \(")(.*)("\)\.)$/s.exec(conflict.why);
    if (conflict.kind !== "hedge" || quoted === null) return conflict;
    const [, before = "", quote = "", after = ""] = quoted;
    const doubt = conflict.sides
      .flatMap((side) => side.claims.flatMap((id) => byId.get(id) ?? []))
      .find((claim) => isQuoteOf(claim, quote));
    const words = doubt && sentenceAround(doubt, speech);
    return words === undefined ? conflict : { ...conflict, why: `${before}${words}${after}` };
  });
}

/** Whole, or with its end left off. */
function isQuoteOf({ quote }: Claim, words: string): boolean {
  return words === quote || (words.endsWith("…") && quote.startsWith(words.slice(0, -1)));
}

/**
 * From stop to stop around the claim's own words. Speech is cut into thoughts finer than that, so that “I think” may be another one than the
 * figure: the captions that spoke the claim count too, for recognizers often write no stops at all.
 */
function sentenceAround({ spans }: Claim, { sentences, tokens }: Speech): string | undefined {
  const captions = new Set(spans.map(({ caption }) => caption));
  const own = tokens.filter(({ caption, start, end }) =>
    spans.some((span) => span.caption === caption && start < span.end && end > span.start),
  );
  const [ownFirst, ownLast] = [own[0]?.index, own.at(-1)?.index];
  if (ownFirst === undefined || ownLast === undefined) return undefined;
  const thoughtOf = (index: number) => sentences.find(({ first, end }) => first <= index && index < end);
  const reach = (index: number) =>
    captions.has(tokens[index]?.caption ?? -1) ||
    (index >= (thoughtOf(ownFirst)?.first ?? ownFirst) && index < (thoughtOf(ownLast)?.end ?? ownLast + 1));
  const stops = (index: number) => /[.?!]/.test(tokens[index]!.after);
  let [from, to] = [ownFirst, ownLast + 1];
  while (from > 0 && reach(from - 1) && !stops(from - 1)) from -= 1;
  while (to < tokens.length && reach(to) && !stops(to - 1)) to += 1;
  const [first, last] = [from, to];
  const wordsOf = () =>
    tokens
      .slice(from, to)
      .map(({ text, after }, position) => (position === to - from - 1 ? text : `${text}${after}`))
      .join(" ");
  // What is farther from the claim goes first; the claim's own words stay.
  while (wordsOf().length > longestQuote && (from < ownFirst || to - 1 > ownLast)) {
    if (ownFirst - from > to - 1 - ownLast) from += 1;
    else to -= 1;
  }
  return `${from > first ? "… " : ""}${wordsOf()}${to < last ? " …" : ""}`;
}
