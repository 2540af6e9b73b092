import type { Speech } from "../../model.ts";
import { isNumberWord } from "./phrase-elements.ts";
import { PhraseBook, type PhraseHit } from "./phrases.ts";
import type { SpokenUnit } from "./spoken-units.ts";

/**
 * Slips put right in the same breath: "215, sorry, 225". The words before the marker are taken back, the words after it count.
 * `always`: the marker says so by itself. `like-for-like`: only between two numbers, or where commas set it apart.
 */
type MarkerStrength = "always" | "like-for-like";

export interface CorrectionRule {
  readonly strength: MarkerStrength;
  readonly phrases: readonly string[];
  readonly example: { readonly says: string; readonly takenBack: string; readonly stands: string };
  readonly quiet: readonly string[];
}

export const correctionRules: readonly CorrectionRule[] = [
  {
    strength: "always",
    phrases: [
      "no i mean",
      "no i 'm sorry",
      "no sorry",
      "no i 'm lying",
      "no i lie",
      "no i tell a lie",
      "no i 'm wrong",
      "nah/no/nope i 'm kidding/joking",
      "just/only kidding/joking",
      "i 'm kidding/joking",
      "no i was wrong",
      "no i 'm thinking",
      "actually it 's/is a/an/the",
      "no hang/hold on",
      "no wait",
      "no wait a minute/second/sec",
      "wait no",
      "hang on no",
      "hold on no",
      "sorry no",
      "no i beg your pardon",
      "i beg your pardon",
      "beg pardon",
      "no excuse me",
      "no pardon me",
      "no my mistake",
      "no my bad",
      "no ma'am",
      "no wrong _",
      "no scratch that",
      "no strike that",
      "scratch that",
      "strike that",
      "correction",
      "i tell a lie",
      "tell a lie",
      "i take that back",
      "take that back",
      "let me correct myself",
      "i stand corrected",
      "i misspoke",
      "i said that wrong",
      "or should i say",
      "or rather",
      "no actually",
      "no make that",
      "make that !$ !happen/work/clear/trip/call/right/noise",
      "no it 's actually",
      "no that 's wrong",
      "no that 's not right",
      "what am i saying",
      "listen to me",
      "no the other one",
      "~no/nope/nah no that 's/is a/an/the !way/deal/last/only/one/first/end/point/problem/lot",
      "no there 's no",
      "no there is n't",
      "no it is n't",
      "no it 's not",
      "well there/it was #",
      "well no",
      "er no",
      "uh no",
      "um no",
      "did i say",
      "i keep saying",
      "silly me",
    ],
    example: { says: "The carburetor is a Hadley, it's a 600, no I'm sorry it's a 650.", takenBack: "600", stands: "650" },
    quiet: ["There is no rust down low and I mean none.", "Hold on, the door sticks.", "No holes in the floor."],
  },
  {
    strength: "like-for-like",
    phrases: [
      "sorry",
      "i 'm sorry",
      "excuse me",
      "pardon me",
      "my mistake",
      "my bad",
      "my apologies",
      "i mean",
      "wait",
      "no",
      "actually",
      "or actually",
      "rather",
      "er",
      "apologies",
      "hang on",
      "hold on",
      "wait let me look/see/check",
      "let me look/see/check",
    ],
    example: { says: "The fronts are 215, sorry, 225 sixties.", takenBack: "215", stands: "225" },
    quiet: [
      "Sorry about the compressor, that was Jimmy.",
      "Oh the horn works, sorry Kenny.",
      "Four sensors, sorry, one's hiding behind the plate.",
    ],
  },
];

const phraseBook = new PhraseBook(correctionRules.flatMap((rule) => rule.phrases.map((text) => ({ text, meaning: rule.strength }))));

/** Most words a slip takes back; longer ones are told as two statements. */
const mostWordsTakenBack = 9;

function setApart(units: readonly SpokenUnit[], hit: PhraseHit<MarkerStrength>): boolean {
  return Boolean(units[hit.firstUnit - 1]?.endsPhrase) && !units[hit.firstUnit - 1]!.endsSentence && units[hit.endUnit - 1]!.endsPhrase;
}

/** An apology may come some words late: "the 302 in it, I'm sorry, the 289". */
const apology = /^(?:sorry|mean|pardon|mistake|bad|apologies)$/;
const fillers = new Set(["oh", "uh", "um", "er", "well", "hmm", "ah", "actually"]);

function betweenNumbers(units: readonly SpokenUnit[], hit: PhraseHit<MarkerStrength>): boolean {
  const back = apology.test(units[hit.endUnit - 1]!.word) ? 5 : 2;
  const before = units.slice(Math.max(0, hit.firstUnit - back), hit.firstUnit).filter((unit) => !fillers.has(unit.word));
  const after = units.slice(hit.endUnit, hit.endUnit + 3);
  if (!before.some((unit) => isNumberWord(unit.word)) || before.some((unit) => unit.endsSentence)) return false;
  const number = after.findIndex((unit) => isNumberWord(unit.word));
  // "sorry, one's hiding": a pronoun, not a number.
  return number >= 0 && !/^(?:'s|is|of|was)$/.test(after[number + 1]?.word ?? units[hit.endUnit + number + 1]?.word ?? "");
}

function takesBack(units: readonly SpokenUnit[], hit: PhraseHit<MarkerStrength>): boolean {
  const before = units[hit.firstUnit - 1];
  if (!before) return false;
  if (hit.phrase.meaning === "like-for-like" && trails(units, hit)) return true;
  if (units[hit.endUnit] === undefined) return false;
  const marker = units[hit.firstUnit]!.word;
  if (hit.phrase.meaning === "like-for-like") {
    if (betweenNumbers(units, hit)) return true;
    if (marker === "no" || marker === "wait" || marker === "actually" || marker === "rather" || marker === "i") return false;
    return (setApart(units, hit) && (shortRepair(units, hit) || toldAgain(units, hit))) || excusesItself(units, hit);
  }
  // "no it's not", "no there's no": an answer to a sentence that is over takes nothing back.
  return (
    !before.endsSentence ||
    /^(?:i|scratch|strike|correction|sorry|wait)$/.test(marker) ||
    /pardon|sorry|mean|lie|lying|misspoke|kidding|joking/.test(units[hit.endUnit - 1]!.word)
  );
}

/** "it's an automatic, sorry, I drove one yesterday, this is the manual": told again after an excuse. */
function toldAgain(units: readonly SpokenUnit[], hit: PhraseHit<MarkerStrength>): boolean {
  for (let at = hit.endUnit; at < Math.min(units.length - 2, hit.endUnit + 14) && !units[at - 1]!.endsSentence; at++) {
    const [first, second, third] = [units[at]!.word, units[at + 1]!.word, units[at + 2]!.word];
    if (units[at - 1]!.endsPhrase && /^(?:this|it|that)$/.test(first) && /^(?:is|'s|one)$/.test(second) && /^(?:a|an|the|'s)$/.test(third))
      return true;
  }
  return false;
}

/** Unpunctuated "it's an automatic sorry i was driving one yesterday this is the manual": the excuse, and then what it is. */
function excusesItself(units: readonly SpokenUnit[], hit: PhraseHit<MarkerStrength>): boolean {
  if (units[hit.firstUnit]!.word !== "sorry" || hit.endUnit - hit.firstUnit > 1 || units[hit.firstUnit - 1]!.endsPhrase) return false;
  const [subject, verb] = [units[hit.endUnit]?.word ?? "", units[hit.endUnit + 1]?.word ?? ""];
  if (subject !== "i" || !/^(?:was|had|drove|did|keep|kept|sold|meant|'ve|'m)$/.test(verb)) return false;
  let another = false;
  for (let at = hit.endUnit + 2; at < Math.min(units.length - 2, hit.endUnit + 12); at++) {
    if (/^(?:one|another|other|them)$/.test(units[at]!.word)) another = true;
    const [first, second, third] = [units[at]!.word, units[at + 1]!.word, units[at + 2]!.word];
    if (another && first === "this" && /^(?:is|'s)$/.test(second) && /^(?:a|an|the)$/.test(third)) return true;
  }
  return false;
}

/** Unit of the number that a trailing apology takes back ("two keys, three keys sorry"): the one before the last; -1 where there is none. */
function numberTakenBack(units: readonly SpokenUnit[], hit: PhraseHit<MarkerStrength>): number {
  const last = units[hit.endUnit - 1]!;
  if (!(last.endsPhrase || last.endsSentence) || !/^(?:sorry|rather|mean)$/.test(last.word)) return -1;
  let repair = hit.firstUnit - 1;
  while (repair > hit.firstUnit - 6 && repair >= 0 && !units[repair]!.endsPhrase) repair--;
  if (repair < 0 || !units[repair]!.endsPhrase || units[repair]!.endsSentence) return -1;
  if (!units.slice(repair + 1, hit.firstUnit).some((unit) => isNumberWord(unit.word))) return -1;
  for (let at = repair; at > repair - 4 && at >= 0 && !units[at]!.endsSentence; at--) if (isNumberWord(units[at]!.word)) return at;
  return -1;
}

function trails(units: readonly SpokenUnit[], hit: PhraseHit<MarkerStrength>): boolean {
  return numberTakenBack(units, hit) >= 0;
}

/** "a disc, sorry, a drum": a word or two on either side, of the same build. */
function shortRepair(units: readonly SpokenUnit[], hit: PhraseHit<MarkerStrength>): boolean {
  let words = 0;
  for (let at = hit.endUnit; at < units.length && words < 5; at++, words++) {
    if (units[at]!.endsPhrase || units[at]!.endsSentence)
      return !/^(?:one|i|that|about|there|kenny|folks)$/.test(units[hit.endUnit]!.word) && words < 3;
  }
  return false;
}

/** Unit where the words taken back begin: where the repair's own opening was said before, else at the clause before the marker. */
function startOfSlip(units: readonly SpokenUnit[], hit: Pick<PhraseHit<MarkerStrength>, "firstUnit" | "endUnit">): number {
  const lowest = Math.max(0, hit.firstUnit - mostWordsTakenBack);
  let last = hit.firstUnit - 1;
  while (last > lowest && fillers.has(units[last]!.word)) last--;
  let clause = last;
  while (clause > lowest && !units[clause - 1]!.endsPhrase && !units[clause - 1]!.endsSentence) clause--;
  const opening = units.slice(hit.endUnit, hit.endUnit + 2).map((unit) => unit.word);
  for (let at = hit.firstUnit - 1; at >= clause; at--) {
    if (units[at]!.word === opening[0] && units[at + 1]?.word === opening[1]) return at;
  }
  if (isNumberWord(units[hit.endUnit]?.word ?? "") || isNumberWord(units[last]!.word)) {
    let at = last;
    // "in 2011, no, 2009", "it's a twenty fourteen, no": the number alone, unless a word or two follow it.
    while (at > clause && !isNumberWord(units[at]!.word)) at--;
    if (isNumberWord(units[at]!.word)) {
      while (at > clause && isNumberWord(units[at - 1]!.word)) at--;
      return at;
    }
  }
  return clause;
}

/** Words between a "no" and the apology that follows what stands: "power windows no crank windows sorry". */
const mostWordsBeforeSorry = 5;

/** Slips whose apology comes last: what stands between "no" and "sorry" counts, what came before the "no" is taken back. */
function apologisedFor(units: readonly SpokenUnit[]): { readonly first: number; readonly end: number }[] {
  const found: { first: number; end: number }[] = [];
  for (let at = 1; at < units.length; at++) {
    if (units[at]!.word !== "no" || units[at - 1]!.endsSentence || units[at - 1]!.word === "there") continue;
    const words = units.slice(at + 1, at + 2 + mostWordsBeforeSorry);
    const sorry = words.findIndex((unit) => unit.word === "sorry");
    // "no sorry" is a marker of its own; "no problem, sorry" takes nothing back.
    if (sorry < 2 || words.slice(0, sorry).some((unit) => unit.endsSentence || /^(?:i|'m|we|you|problem|worries)$/.test(unit.word)))
      continue;
    const hit = { firstUnit: at, endUnit: at + 1 };
    const first = startOfSlip(units, hit);
    if (first < at) found.push({ first: units[first]!.token, end: units[at]!.token + 1 });
  }
  return found;
}

/** Token ranges (end exclusive) taken back, marker included. */
export function findCorrections(speech: Speech, units: readonly SpokenUnit[]): readonly { readonly first: number; readonly end: number }[] {
  const ranges: { first: number; end: number }[] = apologisedFor(units);
  for (const hit of phraseBook.find(units)) {
    if (!takesBack(units, hit)) continue;
    // A longer marker that begins at the same word ("no I'm sorry") has been counted already.
    const trailing = hit.phrase.meaning === "like-for-like" ? numberTakenBack(units, hit) : -1;
    if (trailing >= 0) {
      let first = trailing;
      while (first > 0 && isNumberWord(units[first - 1]!.word) && !units[first - 1]!.endsPhrase) first--;
      ranges.push({ first: units[first]!.token, end: units[trailing]!.token + 1 });
      continue;
    }
    const start = units[startOfSlip(units, hit)]!.token;
    const end = speech.tokens[hit.end - 1] ? hit.end : hit.first;
    // The words after "no there's no" state the fact: the marker ends before them.
    const stated = /^(?:there|it|the|that)$/.test(units[hit.firstUnit + 1]?.word ?? "") && units[hit.firstUnit]!.word === "no";
    const markerEnd = stated || units[hit.firstUnit]!.word === "well" ? hit.first + 1 : end;
    ranges.push({ first: Math.min(start, hit.first), end: Math.max(markerEnd, hit.first) });
  }
  return ranges;
}
