import type { ClaimTime, Stance } from "../../../../shared-types/index.ts";
import type { Speech } from "../../model.ts";
import { findCorrections } from "./corrections.ts";
import type { FrameRule, FrameSubject } from "./frame-rule.ts";
import { frameRules, returnPhrases } from "./frame-rules.ts";
import { PhraseBook, type PhraseHit } from "./phrases.ts";
import { type SpokenUnit, spokenUnits } from "./spoken-units.ts";

/** A stretch of speech said in one way: how firmly, of what time, of which vehicle. */
export interface Clause {
  readonly index: number;
  /** Token range, end exclusive. Clauses cover the speech in order without gap. */
  readonly first: number;
  readonly end: number;
  readonly stance: Stance;
  readonly time: ClaimTime;
  readonly subject: FrameSubject;
  /** Taken back in the same breath: gives no claims. */
  readonly corrected: boolean;
  /** Sentence of `Speech.sentences` it belongs to. */
  readonly sentence: number;
}

export interface Frames {
  readonly clauses: readonly Clause[];
  /** The clause a token stands in. Throws where there is no such token. */
  at(token: number): Clause;
}

interface RulePhrase {
  readonly rule: FrameRule;
  /** True for a phrase that keeps the rule from applying. */
  readonly cancels: boolean;
}
const ruleBook = new PhraseBook<RulePhrase>(
  frameRules.flatMap((rule) => [
    ...rule.phrases.map((text) => ({ text, meaning: { rule, cancels: false } })),
    ...(rule.unless ?? []).map((text) => ({ text, meaning: { rule, cancels: true } })),
  ]),
);
const returnBook = new PhraseBook<null>(returnPhrases.map((text) => ({ text, meaning: null })));

/** Words that begin a clause wherever they stand. */
const clauseOpeners = new Set(["but", "because", "although", "though", "whereas", "unless", "while", "which"]);
/** Words that answer or turn back from what was supposed. */
const turnsBack = new Set(["but", "yeah", "yes", "yep", "sure"]);
/** Words after "and" or "so" that show a new clause and not a second noun. */
const clauseSubjects = new Set([
  "it",
  "somebody",
  "someone",
  "nobody",
  "everything",
  "that",
  "there",
  "he",
  "she",
  "they",
  "we",
  "i",
  "you",
  "then",
  "this",
  "these",
  "those",
  "now",
  "on",
  "of",
  "here",
  "what",
  "today",
  "its",
]);

/** Subject and verb written as one word: where no punctuation is written, they begin a clause. */
const spokenSubjects = new Set([
  "it's",
  "that's",
  "there's",
  "they're",
  "here's",
  "he's",
  "she's",
  "i'm",
  "we're",
  "you're",
  "we've",
  "i've",
  "they've",
  "thats",
  "theres",
  "heres",
]);
const subjectPronouns = new Set(["it", "they", "he", "she", "i", "you", "we", "that", "this", "there"]);
const verbsAfterPronoun = new Set([
  "had",
  "was",
  "were",
  "is",
  "are",
  "has",
  "have",
  "used",
  "came",
  "come",
  "got",
  "went",
  "looks",
  "runs",
  "drives",
  "took",
  "did",
  "put",
  "said",
  "says",
  "told",
  "believe",
  "think",
  "guess",
  "reckon",
  "can",
  "will",
  "don't",
  "doesn't",
  "didn't",
  "ain't",
  "isn't",
  "wasn't",
  "never",
]);
/** After these a subject goes on with the clause: "what it had", "because it's", "i think it's". */
const leadsOn = new Set([
  "what",
  "that",
  "which",
  "where",
  "when",
  "if",
  "how",
  "who",
  "and",
  "but",
  "so",
  "because",
  "cause",
  "think",
  "believe",
  "say",
  "guess",
  "know",
  "than",
  "like",
  "as",
  "while",
  "until",
  "since",
  "or",
  "then",
  "way",
  "one",
  "ones",
  "all",
  "i",
  "you",
  "he",
  "they",
  "we",
  "the",
]);

/** Captions of this many words end where a sentence does; shorter ones may cut a size in two. */
const wholeSentenceCaption = 25;

/** Where no punctuation bounds a clause, a phrase reaches no further than this many words either way. */
const unwrittenClause = 12;

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

function clauseStarts(speech: Speech, units: readonly SpokenUnit[]): Uint8Array {
  const starts = new Uint8Array(speech.tokens.length + 1);
  for (const sentence of speech.sentences) starts[sentence.first] = 1;
  for (let at = 0; at < units.length; at++) {
    const unit = units[at]!;
    if (unit.endsPhrase && unit.token + 1 <= speech.tokens.length) starts[unit.token + 1] = 1;
    if (clauseOpeners.has(unit.word)) starts[unit.token] = 1;
    const next = units[at + 1];
    if ((unit.word === "and" || unit.word === "so") && next && clauseSubjects.has(next.word)) starts[unit.token] = 1;
  }
  const { tokens } = speech;
  let captionFirst = 0;
  for (let at = 1; at < tokens.length; at++) {
    const before = tokens[at - 1]!;
    const token = tokens[at]!;
    if (token.caption !== before.caption) {
      if (at - captionFirst >= wholeSentenceCaption) starts[at] = 1;
      captionFirst = at;
    }
    if (token.word === "not" && (tokens[at + 1]?.word === "the" || tokens[at + 1]?.word === "a")) starts[at] = 1;
    if (speech.punctuated || leadsOn.has(before.word)) continue;
    const next = tokens[at + 1]?.word ?? "";
    if (spokenSubjects.has(token.word) || (subjectPronouns.has(token.word) && verbsAfterPronoun.has(next))) starts[at] = 1;
  }
  starts[0] = 1;
  return starts;
}

const changedSince = /^(?:re\w+|changed|swapped|converted|taken|put|fitted|done|upgraded|turned)$/;

class FrameMarks {
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
        return [start, Math.min(this.#speech.tokens.length, back, end + longestAside)];
      }
    }
  }
}

function sentenceIndexes(speech: Speech): Int32Array {
  const of = new Int32Array(speech.tokens.length);
  for (const sentence of speech.sentences) of.fill(sentence.index, sentence.first, sentence.end);
  return of;
}

/** Tokens at which the speaker is back at this vehicle: a word of return at the head of a sentence or clause. */
function returnTokens(units: readonly SpokenUnit[], starts: Uint8Array): readonly number[] {
  const heads = (token: number) => starts[token] === 1;
  return returnBook
    .find(units)
    .filter((hit: PhraseHit<null>) => heads(hit.first) || heads(Math.max(0, hit.first - 1)))
    .map((hit) => hit.first);
}

/**
 * How each clause is meant: flat or doubtful, of today or of before, of this vehicle or of something else, kept or taken back.
 * Pure and linear in the length of the speech.
 */
export function frameSpeech(speech: Speech): Frames {
  const units = spokenUnits(speech);
  const starts = clauseStarts(speech, units);
  const sentenceOf = sentenceIndexes(speech);
  const marks = new FrameMarks(speech, starts, sentenceOf);
  const returns = returnTokens(units, starts);
  let nextReturn = 0;
  const hits = ruleBook.find(units);
  const cancelled = new Map<FrameRule, Set<number>>();
  for (const { phrase, firstUnit } of hits) {
    if (!phrase.meaning.cancels) continue;
    const units = cancelled.get(phrase.meaning.rule) ?? new Set<number>();
    cancelled.set(phrase.meaning.rule, units.add(firstUnit));
  }
  for (const hit of hits) {
    const { rule, cancels } = hit.phrase.meaning;
    if (cancels || cancelled.get(rule)?.has(hit.firstUnit)) continue;
    while (nextReturn < returns.length && returns[nextReturn]! < hit.first) nextReturn++;
    const [first, end] = marks.rangeOf(rule, hit.first, hit.end, returns.slice(nextReturn, nextReturn + 40));
    for (let token = first; token < end; token++) {
      if ("time" in rule.meaning) marks.time[token] = rule.meaning.time;
      // The first of two subjects stands: an aside inside a hypothetical stays one.
      else if ("subject" in rule.meaning)
        marks.subject[token] = marks.subject[token] === "this-vehicle" ? rule.meaning.subject : marks.subject[token]!;
      // Doubt outweighs report: both together are the speaker's own doubt.
      else if (marks.stance[token] !== "hedged") marks.stance[token] = rule.meaning.stance;
    }
  }
  carryFormerOn(speech, marks, starts);
  for (const range of findCorrections(speech, units)) marks.corrected.fill(1, range.first, range.end);
  return framesOf(speech, marks, starts, sentenceOf);
}

/** "The stock one hung under the back, and that was fourteen": a past tense that points back stays in the past. */
function carryFormerOn(speech: Speech, marks: FrameMarks, starts: Uint8Array): void {
  const { tokens } = speech;
  for (let at = 1; at < tokens.length; at++) {
    if (!starts[at] || marks.time[at - 1] !== "former") continue;
    const verb = /^(?:and|which|that)$/.test(tokens[at]!.word)
      ? at + (/^(?:that|it|they|which)$/.test(tokens[at + 1]?.word ?? "") ? 2 : 1)
      : -1;
    if (verb < 0 || !/^(?:was|were|had|wore|ran)$/.test(tokens[verb]?.word ?? "")) continue;
    if (changedSince.test(tokens[verb + 1]?.word ?? "")) continue;
    for (let token = at; token < tokens.length && (token === at || !starts[token]) && token < at + unwrittenClause; token++)
      marks.time[token] = "former";
  }
}

function framesOf(speech: Speech, marks: FrameMarks, starts: Uint8Array, sentenceOf: Int32Array): Frames {
  const clauses: Clause[] = [];
  const clauseOf = new Int32Array(speech.tokens.length);
  let first = 0;
  for (let token = 1; token <= speech.tokens.length; token++) {
    const same =
      token < speech.tokens.length &&
      !starts[token] &&
      marks.stance[token] === marks.stance[first] &&
      marks.time[token] === marks.time[first] &&
      marks.subject[token] === marks.subject[first] &&
      marks.corrected[token] === marks.corrected[first];
    if (same) continue;
    clauseOf.fill(clauses.length, first, token);
    clauses.push({
      index: clauses.length,
      first,
      end: token,
      stance: marks.stance[first]!,
      time: marks.time[first]!,
      subject: marks.subject[first]!,
      corrected: marks.corrected[first] === 1,
      sentence: sentenceOf[first]!,
    });
    first = token;
  }
  if (speech.tokens.length === 0) clauses.length = 0;
  return {
    clauses,
    at(token) {
      const clause = clauses[clauseOf[token] ?? -1];
      if (!clause) throw new RangeError(`frames: no token ${token}; the speech has ${speech.tokens.length}`);
      return clause;
    },
  };
}
