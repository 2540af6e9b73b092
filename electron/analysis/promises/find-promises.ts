import type { Claim, SpokenPromise } from "../../../shared-types/index.ts";
import type { Frames } from "../claims/framing/index.ts";
import { type Speech, spansOfTokens } from "../model.ts";
import { type PromiseRule, promiseRules, publishedRules } from "./promise-rules.ts";

/**
 * What a buyer may hold the dealer to: guarantees, safety, words without exception, praise; and facts a buyer relies on that were given
 * with a doubt. Each with the reason and the published rule, as a hint for review.
 */
export function findPromises(speech: Speech, frames: Frames, claims: readonly Claim[]): SpokenPromise[] {
  const spoken = frames.clauses.flatMap((clause) => {
    if (clause.corrected || clause.subject !== "this-vehicle") return [];
    const words = wordsOf(speech, clause.first, clause.end);
    for (const rule of promiseRules as readonly PromiseRule[]) {
      const match = rule.pattern.exec(words.text);
      if (!match || rule.unless?.test(words.text)) continue;
      const [first, end] = words.tokensWithin(match.index, match.index + match[0].length);
      return end > first ? [promiseAt(speech, first, end, rule)] : [];
    }
    return [];
  });
  return [...spoken, ...hedgedFacts(claims)]
    .sort((a, b) => a.start - b.start || a.key.localeCompare(b.key, "en"))
    .map((promise, position) => ({ ...promise, id: `p${position + 1}` }));
}

/** Facts that decide a purchase: where one of them is only believed or reported, its source must be named. Common practice. */
const reliedOn: ReadonlySet<string> = new Set([
  "engine.year",
  "engine.originality",
  "transmission.originality",
  "odometer.mileage",
  "odometer.originality",
  "vehicle.year",
  "title.type",
  "title.condition",
  "vehicle.condition",
  "vehicle.presence",
  "vehicle.count",
  "frame.condition",
  "vin.originality",
  "paint.originality",
]);

function hedgedFacts(claims: readonly Claim[]): SpokenPromise[] {
  return claims
    .filter((claim) => claim.stance !== "stated" && claim.time === "today" && reliedOn.has(`${claim.component}.${claim.attribute}`))
    .map((claim) => ({
      id: "",
      key: keyOf("hedged-fact", claim.quote),
      kind: "hedged-fact" as const,
      captions: claim.captions,
      start: claim.start,
      end: claim.end,
      quote: claim.quote,
      spans: claim.spans,
      why:
        claim.stance === "hedged"
          ? "A buyer relies on this, and it was given with a doubt: keep the doubt, or find the paper."
          : "A buyer relies on this, and it was only reported: name who said it, or find the paper.",
      rule: publishedRules.expressWarranty,
    }));
}

function promiseAt(speech: Speech, first: number, end: number, rule: PromiseRule): SpokenPromise {
  const spans = spansOfTokens(speech.tokens, first, end);
  const quote = spans.map(({ caption, start, end: stop }) => captionText(speech, caption).slice(start, stop)).join(" ");
  const last = speech.tokens[end - 1]!;
  return {
    id: "",
    key: keyOf(rule.kind, quote),
    kind: rule.kind,
    captions: spans.map(({ caption }) => caption),
    start: speech.tokens[first]!.at,
    end: Math.max(last.at, speech.tokens[end]?.at ?? speech.duration),
    quote,
    spans,
    why: rule.why,
    rule: publishedRules[rule.rule],
  };
}

function captionText(speech: Speech, index: number): string {
  return speech.captions.find((caption) => caption.index === index)?.text ?? "";
}

/** Stays with the words, wherever a new analysis puts them. */
function keyOf(kind: string, quote: string): string {
  return `${kind}:${quote.toLowerCase().replaceAll(/[^\p{L}\p{N}]+/gu, "-")}`;
}

/** The words of a token range as one line, and the way back from its characters to the tokens. */
function wordsOf({ tokens }: Speech, first: number, end: number) {
  const starts: number[] = [];
  let text = "";
  for (const token of tokens.slice(first, end)) {
    if (text) text += " ";
    starts.push(text.length);
    text += token.word;
  }
  const tokenAt = (character: number) =>
    first +
    Math.max(
      0,
      starts.findLastIndex((start) => start <= character),
    );
  return {
    text,
    tokensWithin: (from: number, to: number): [first: number, end: number] => [tokenAt(from), tokenAt(to - 1) + 1],
  };
}
