import type { ClaimTime, Stance } from "../../../../shared-types/index.ts";
import type { Speech } from "../../model.ts";
import type { FrameRule, FrameSubject } from "./frame-rule.ts";

/** Words that answer or turn back from what was supposed. */
const turnsBack = new Set(["but", "yeah", "yes", "yep", "sure", "no", "nope", "nah"]);
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
  "everybody",
  "everyone",
  "folks",
  "another",
  "somebody",
  "someone",
  "a",
  "my",
]);

/** Of them, those that always begin a clause, whatever stands before. */
const personalSubjects = new Set(["they", "if", "you", "i'd", "they'd", "nobody", "everybody", "everyone", "my"]);

/** A sentence about the vehicle just pointed at opens so; one that names a part, or "I", is about the one in hand again. */
const goesOn = /^(?:it|it's|it'll|its|that|that's|that'll|thats|those|they|they're|he|he's|she|she's|and|with|got|has|had|same|also|not)$/;
/** Words after which "it's" is still what was reported. */
const opensReport =
  /^(?:said|says|say|saying|told|tell|me|us|him|her|asked|asks|ask|thinks|thought|think|reckons|claims|swears|brother|cousin|uncle|dad|wife|buddy|neighbou?r|friend|if|that|whether|because|cause|when|and)$/;
/** Where nothing is written, a sentence may have been cut before any of its phrases. */
const goesOnUnwritten = new RegExp(`${goesOn.source.slice(0, -2)}|a|an|no|or|in|on|at|to|of|for|from|which|who|so|because|cause|well)$`);
const pastSubjects = new Set(["it", "that", "he", "she", "they", "mine", "his", "hers", "theirs", "which"]);
const pastVerbs =
  /^(?:had|was|were|did|didn't|ran|drank|came|went|would|never|used|took|needed|wasn't|wouldn't|sold|made|lasted|rusted|leaked)$/;

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

  #startOf(reach: FrameRule["reach"], first: number, meaning: FrameRule["meaning"]): number {
    if (!this.#speech.punctuated) return this.unwrittenStart(first, meaning);
    // Some clauses stay unwritten even there: "… never changed the sticker my brother had one".
    const opensItself = (reach === "clause" ? personalSubjects : phraseSubjects).has(this.#speech.tokens[first]!.word);
    return "subject" in meaning && opensItself ? first : this.clauseStart(first);
  }

  /** Where, before `limit`, the speaker turns back to this vehicle. */
  #turnOf(from: number, limit: number, returns: readonly number[], itIsToday: boolean): number {
    let until = from;
    while (
      until < limit &&
      !turnsBack.has(this.#speech.tokens[until]!.word) &&
      !returns.includes(until) &&
      !(itIsToday && this.#saysWhatItIs(until))
    )
      until++;
    return until;
  }

  /** Where nothing is written: "… would it take a 427 | it's the 350". What was asked, supposed or had before is over. */
  #saysWhatItIs(token: number): boolean {
    const { tokens, punctuated } = this.#speech;
    if (punctuated || !this.#starts[token] || opensReport.test(tokens[token - 1]?.word ?? "")) return false;
    return (
      tokens[token]!.word === "it's" || (tokens[token]!.word === "it" && /^(?:is|has|shows|says)$/.test(tokens[token + 1]?.word ?? ""))
    );
  }

  /** The end of the last one in a row that goes on about what was pointed at. */
  #lastGoingOn(token: number): number {
    const goes = this.#speech.punctuated ? goesOn : goesOnUnwritten;
    let until = this.sentenceOf(token)?.end ?? token + 1;
    while (until < this.#speech.tokens.length && goes.test(this.#speech.tokens[until]!.word)) until = this.sentenceOf(until)!.end;
    return until;
  }

  #goesOnInThePast(first: number): boolean {
    const { tokens, punctuated } = this.#speech;
    const opening = tokens[first]?.word ?? "";
    const next = tokens[first + 1]?.word ?? "";
    // Where nothing is written, a list may have been cut at its parts: "… had the three speed | and the bench seat".
    if (!punctuated && /^(?:and|with)$/.test(opening) && /^(?:the|a|an|no)$/.test(next)) return true;
    const at = opening === "and" ? first + 1 : first;
    return pastSubjects.has(tokens[at]?.word ?? "") && pastVerbs.test(tokens[at + 1]?.word ?? "");
  }

  /** The token range a rule's phrase frames; what is not about this vehicle ends where the speaker is back at it. */
  rangeOf(rule: FrameRule, first: number, end: number, returns: readonly number[]): readonly [number, number] {
    const [start, stop] = this.#reachOf(rule, first, end, returns);
    if ("stance" in rule.meaning) return [start, stop];
    return [start, Math.min(stop, returns.find((token) => token >= end) ?? stop)];
  }

  #reachOf({ reach, meaning }: FrameRule, first: number, end: number, returns: readonly number[]): readonly [number, number] {
    const start = this.#startOf(reach, first, meaning);
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
      case "sentence":
        return [start, this.#turnOf(end, sentenceEnd, returns, !("subject" in meaning && meaning.subject === "other-vehicle"))];
      case "aside": {
        let until = this.#turnOf(end, sentenceEnd, returns, true);
        // "My dad had one. It leaked. It was a three speed.": told on in the past, as long as it lasts.
        while (until < this.#speech.tokens.length && until - end < longestUnwrittenAside) {
          const next = this.sentenceOf(until);
          if (next?.first !== until || !this.#goesOnInThePast(until) || returns.includes(until)) break;
          until = this.#turnOf(until + 1, next.end, returns, true);
        }
        return [start, until];
      }
      case "last-words":
        return [Math.max(sentenceFirst, first - 4), end];
      case "back": {
        if (start > sentenceFirst) return [Math.max(sentenceFirst, start - this.#backReach), stop];
        const before = start > 0 ? this.sentenceOf(start - 1) : undefined;
        return [before ? Math.max(before.first, start - this.#backReach) : start, stop];
      }
      case "until-return": {
        const back = returns.find((token) => token >= end) ?? Number.POSITIVE_INFINITY;
        const longest = this.#speech.punctuated ? longestAside : longestUnwrittenAside;
        return [start, Math.min(this.#speech.tokens.length, back, end + longest, this.#lastGoingOn(end - 1))];
      }
    }
  }
}
