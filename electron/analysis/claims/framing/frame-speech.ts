import type { ClaimTime, Stance } from "../../../../shared-types/index.ts";
import type { Speech } from "../../model.ts";
import { clauseStarts } from "./clause-starts.ts";
import { findCorrections } from "./corrections.ts";
import { FrameMarks, unwrittenClause } from "./frame-marks.ts";
import type { FrameRule, FrameSubject } from "./frame-rule.ts";
import { asideEnds, frameRules, plainReturns, returnPhrases } from "./frame-rules.ts";
import { isNumberWord } from "./phrase-elements.ts";
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
const returnBook = new PhraseBook<null>([...returnPhrases, ...plainReturns].map((text) => ({ text, meaning: null })));
const plainReturnBook = new PhraseBook<null>(plainReturns.map((text) => ({ text, meaning: null })));
const asideEndBook = new PhraseBook<null>(asideEnds.map((text) => ({ text, meaning: null })));

const changedSince = /^(?:re\w+|changed|swapped|converted|taken|put|fitted|done|upgraded|turned)$/;

function sentenceIndexes(speech: Speech): Int32Array {
  const of = new Int32Array(speech.tokens.length);
  for (const sentence of speech.sentences) of.fill(sentence.index, sentence.first, sentence.end);
  return of;
}

/** Tokens at which the speaker is back at this vehicle: a word of return at the head of a sentence or clause. */
function returnTokens(units: readonly SpokenUnit[], starts: Uint8Array, punctuated: boolean): readonly number[] {
  const heads = (token: number) => starts[token] === 1;
  const returned = returnBook
    .find(units)
    .filter((hit: PhraseHit<null>) => heads(hit.first) || heads(Math.max(0, hit.first - 1)))
    .map((hit) => hit.first);
  const plain = punctuated ? [] : plainReturnBook.find(units).map((hit) => hit.first);
  return [...returned, ...plain, ...asideEndBook.find(units).map((hit) => hit.end)].sort((a, b) => a - b);
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
  const returns = returnTokens(units, starts, speech.punctuated);
  let nextReturn = 0;
  const hits = ruleBook.find(units);
  const roundings: PhraseHit<RulePhrase>[] = [];
  const cancelled = new Map<FrameRule, Set<number>>();
  for (const { phrase, firstUnit } of hits) {
    if (!phrase.meaning.cancels) continue;
    const units = cancelled.get(phrase.meaning.rule) ?? new Set<number>();
    cancelled.set(phrase.meaning.rule, units.add(firstUnit));
  }
  for (const hit of hits) {
    const { rule, cancels } = hit.phrase.meaning;
    if (cancels || cancelled.get(rule)?.has(hit.firstUnit)) continue;
    if ("time" in rule.meaning && saysWhichOne(units, hit)) continue;
    if ("stance" in rule.meaning && saysHowItIs(units, hit)) continue;
    if (rounds.has(rule.name)) {
      roundings.push(hit);
      continue;
    }
    while (nextReturn < returns.length && returns[nextReturn]! < hit.first) nextReturn++;
    const [reachFirst, reachEnd] = marks.rangeOf(rule, hit.first, hit.end, returns.slice(nextReturn, nextReturn + 40));
    const forward = !speech.punctuated && leadsForward(units, hit);
    const first = "stance" in rule.meaning && (forward || isParenthetical(units, hit)) ? hit.first : reachFirst;
    // "… i think | it's a 350": a joint before the subject parts a belief from what is believed.
    const end =
      forward && hit.end < speech.tokens.length
        ? Math.max(reachEnd, Math.min(marks.clauseEnd(hit.end), hit.end + unwrittenClause))
        : reachEnd;
    for (let token = first; token < end; token++) {
      if ("time" in rule.meaning) marks.time[token] = rule.meaning.time;
      // The first of two subjects stands: an aside inside a hypothetical stays one.
      else if ("subject" in rule.meaning)
        marks.subject[token] = marks.subject[token] === "this-vehicle" ? rule.meaning.subject : marks.subject[token]!;
      // Doubt outweighs report: both together are the speaker's own doubt.
      else if (marks.stance[token] !== "hedged") marks.stance[token] = rule.meaning.stance;
    }
  }
  // A rounding leaves a report a report.
  for (const hit of roundings) {
    const [first, end] = marks.rangeOf(hit.phrase.meaning.rule, hit.first, hit.end, []);
    for (let token = first; token < end; token++) if (marks.stance[token] === "stated") marks.stance[token] = "hedged";
  }
  carryFormerOn(speech, marks, starts);
  carryDoubtOn(speech, marks, starts);
  for (const range of findCorrections(speech, units)) marks.corrected.fill(1, range.first, range.end);
  return framesOf(speech, marks, starts, sentenceOf);
}

const rounds: ReadonlySet<string> = new Set(["approximation of a number", "approximation after a number"]);

/** "Opens like it should be", "just as it ought to be": says that it is so. */
function saysHowItIs(units: readonly SpokenUnit[], hit: PhraseHit<RulePhrase>): boolean {
  if (!/^(?:should|ought|supposed|meant)$/.test(units[hit.firstUnit]!.word)) return false;
  const before = units.slice(Math.max(0, hit.firstUnit - 4), hit.firstUnit).map(({ word }) => word);
  const pronoun = before.findLastIndex((word) => /^(?:it|they|she|he|that|everything)$/.test(word));
  return pronoun > 0 && /^(?:like|as|where|how|way|all|what|exactly)$/.test(before[pronoun - 1]!);
}

/** "Redone in, I think, 2012": the doubt stands within the clause and is about what follows it. */
function isParenthetical(units: readonly SpokenUnit[], hit: PhraseHit<RulePhrase>): boolean {
  if (hit.phrase.meaning.rule.reach !== "clause" || !/^(?:i|maybe|probably|possibly|perhaps)$/.test(units[hit.firstUnit]!.word))
    return false;
  const after = units[hit.endUnit]?.word ?? "";
  return /^(?:in|at|from|of|a|the|about|with|since|to|by|for)$/.test(units[hit.firstUnit - 1]?.word ?? "") && isNumberWord(after);
}

/** Unpunctuated "… four two oh six | i'd say it's …": a belief that a subject follows is about what follows. */
function leadsForward(units: readonly SpokenUnit[], hit: PhraseHit<RulePhrase>): boolean {
  if (hit.phrase.meaning.rule.name !== "belief") return false;
  return /^(?:it|that|they|this|these|those|the|there|he|she|we)$/.test(units[hit.endUnit]?.word ?? "");
}

const articleOfIdentity = /^(?:the|that|same|very|first|those|these|them|this|original)$/;
const noNoun =
  /^(?:and|but|so|or|then|when|because|cause|now|if|is|was|are|were|of|on|in|at|to|with|well|yeah|okay|think|believe|say|says|said|know|guess|a|an|the)$/;

/** "The pack it was built with", "what she came with": says which one it is, and not what there was before. */
function saysWhichOne(units: readonly SpokenUnit[], hit: PhraseHit<RulePhrase>): boolean {
  if (!/^(?:what it came with|when new)$/.test(hit.phrase.meaning.rule.name)) return false;
  let subject = hit.firstUnit;
  while (subject >= Math.max(1, hit.firstUnit - 2) && !/^(?:it|she|he|they)$/.test(units[subject]!.word)) subject--;
  if (subject < 1 || !/^(?:it|she|he|they)$/.test(units[subject]!.word)) return false;
  const noun = units[subject - 1]!;
  if (noun.endsPhrase || noun.endsSentence) return false;
  const after = units.slice(hit.endUnit, hit.endUnit + 2).map((unit) => unit.word);
  // "What it had new was a …": told of before.
  if (after.some((word) => /^(?:was|were)$/.test(word))) return false;
  const object = /^(?:with|in|on|as|wearing)$/.test(after[0] ?? "") ? after[1] : after[0];
  if (!units[hit.endUnit - 1]!.endsPhrase && /^(?:a|an|\d.*)$/.test(object ?? "")) return false;
  if (/^(?:one|ones|what|how)$/.test(noun.word)) return true;
  if (noNoun.test(noun.word)) return false;
  return [2, 3].some((back) => {
    const unit = units[subject - back];
    return unit !== undefined && !unit.endsPhrase && articleOfIdentity.test(unit.word);
  });
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

/** Words that a belief is put in: a stretch of nothing else says nothing yet. */
const wordsOfBelief = new Set(
  "and so but now then well um uh i i'd i'm one as far best near can we could should would might say think thought believe reckon guess suppose tell gather imagine know see remember recall understand just only really rather sort kind of from memory my guess is".split(
    " ",
  ),
);
const leadsOn = /^(?:and|so|but|now|then|well|i'd|as)$/;

/** Unpunctuated "as far as I can tell | it's its own engine": a belief that a pause cut off from what is believed. */
function carryDoubtOn(speech: Speech, marks: FrameMarks, starts: Uint8Array): void {
  const { tokens, sentences } = speech;
  for (const sentence of sentences) {
    const next = sentences[sentence.index + 1];
    if (!next || sentence.end - sentence.first > 9 || /[.!?]/.test(tokens[sentence.end - 1]?.after ?? "")) continue;
    if (marks.stance[sentence.end - 1] !== "hedged" || !leadsOn.test(tokens[sentence.first]!.word)) continue;
    if (leadsOn.test(tokens[next.first]!.word)) continue;
    if (!tokens.slice(sentence.first, sentence.end).every(({ word }) => wordsOfBelief.has(word))) continue;
    for (
      let token = next.first;
      token < next.end && (token === next.first || !starts[token]) && token < next.first + unwrittenClause;
      token++
    )
      marks.stance[token] = "hedged";
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
