import type { ClaimTime, Stance } from "../../../../shared-types/index.ts";
import type { Speech } from "../../model.ts";
import type { FrameRule, FrameSubject } from "./frame-rule.ts";

/** Words that answer or turn back from what was supposed. */
const turnsBack = new Set(["but", "yeah", "yes", "yep", "sure"]);
/** Where no punctuation bounds a clause, a phrase reaches no further than this many words either way. */
export const unwrittenClause = 12;

/** Words that are the subject of a phrase they open. */
const phraseSubjects = new Set([
  "the",
  "it",
  "they",
  "these",
  "those",
  "stock",
  "base",
  "most",
  "half",
  "some",
  "every",
  "ours",
  "others",
  "people",
  "if",
  "where",
  "you",
  "i'd",
  "they'd",
  "nobody",
  "another",
  "somebody",
  "someone",
  "a",
  "my",
]);

/** Another vehicle is left after this many words without a word of return: a long way for an aside. */
const longestAside = 70;
/** Where nothing is written, the words of return may have been missed: an aside is taken for shorter. */
const longestUnwrittenAside = 40;

/** What the rules have said of each token so far, and how far a rule's phrase reaches. */
export class FrameMarks {
  readonly stance: Stance[];
  readonly time: ClaimTime[];
  readonly subject: FrameSubject[];
  readonly corrected: Uint8Array;
  readonly #starts: Uint8Array;
  readonly #speech: Speech;
  readonly #sentenceOf: Int32Array;
  /** Words back that a hedge after the words may bear on. */
  readonly #backReach: number;

  constructor(speech: Speech, starts: Uint8Array, sentenceOf: Int32Array) {
    const count = speech.tokens.length;
    this.stance = new Array<Stance>(count).fill("stated");
    this.time = new Array<ClaimTime>(count).fill("today");
    this.subject = new Array<FrameSubject>(count).fill("this-vehicle");
    this.corrected = new Uint8Array(count);
    this.#starts = starts;
    this.#speech = speech;
    this.#sentenceOf = sentenceOf;
    this.#backReach = speech.punctuated ? 25 : unwrittenClause;
  }

  clauseStart(token: number): number {
    let at = token;
    while (at > 0 && !this.#starts[at]) at--;
    return at;
  }

  clauseEnd(token: number): number {
    let at = token + 1;
    while (at < this.#speech.tokens.length && !this.#starts[at]) at++;
    return at;
  }

  sentenceOf(token: number) {
    return this.#speech.sentences[this.#sentenceOf[token] ?? 0];
  }

  /** Without punctuation, a phrase that opens with its own subject ("the stock one hung") begins the clause itself. */
  unwrittenStart(first: number, meaning: FrameRule["meaning"]): number {
    if (!("stance" in meaning) && phraseSubjects.has(this.#speech.tokens[first]!.word)) return first;
    return Math.max(this.clauseStart(first), first - unwrittenClause);
  }

  /** The token range a rule's phrase frames. */
  rangeOf({ reach, meaning }: FrameRule, first: number, end: number, returns: readonly number[]): readonly [number, number] {
    const start = this.#speech.punctuated ? this.clauseStart(first) : this.unwrittenStart(first, meaning);
    const stop = this.#speech.punctuated ? this.clauseEnd(end - 1) : Math.min(this.clauseEnd(end - 1), end + unwrittenClause);
    const sentence = this.sentenceOf(first);
    const sentenceFirst = sentence?.first ?? start;
    const sentenceEnd = Math.max(sentence?.end ?? stop, stop);
    switch (reach) {
      case "from-here":
        return [first, stop];
      case "until-here":
        return [start, end];
      case "next-words":
        return [first, Math.min(end + 4, stop)];
      case "clause": {
        // "As far as I know, it is original" and "it is original, I believe": the hedge stands alone and belongs to its neighbour.
        const alone = "stance" in meaning && stop - start - (end - first) <= 1;
        if (!alone) return [start, stop];
        if (start > sentenceFirst) return [this.clauseStart(start - 1), stop];
        return [start, stop < sentenceEnd ? this.clauseEnd(stop) : stop];
      }
      case "sentence": {
        let until = end;
        while (until < sentenceEnd && !turnsBack.has(this.#speech.tokens[until]!.word)) until++;
        return [start, until];
      }
      case "back": {
        if (start > sentenceFirst) return [Math.max(sentenceFirst, start - this.#backReach), stop];
        const before = start > 0 ? this.sentenceOf(start - 1) : undefined;
        return [before ? Math.max(before.first, start - this.#backReach) : start, stop];
      }
      case "until-return": {
        const back = returns.find((token) => token >= end) ?? Number.POSITIVE_INFINITY;
        return [start, Math.min(this.#speech.tokens.length, back, end + (this.#speech.punctuated ? longestAside : longestUnwrittenAside))];
      }
    }
  }
}
