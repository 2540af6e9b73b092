import { type Phrase, PhraseBook, type PhraseHit } from "../framing/phrases.ts";
import type { SpokenUnit } from "../framing/spoken-units.ts";
import type { ClauseSign } from "./clause-sign.ts";
import { denialBefore } from "./denial.ts";
import { elsewherePhrases } from "./elsewhere-talk.ts";
import type { RulePhrase } from "./match-rules.ts";
import type { QualityRule } from "./quality-rule.ts";

/** The first phrase of a sign, by which the sign is looked up. */
export interface SignPhrase {
  readonly rule: QualityRule;
  readonly sign: ClauseSign;
}

/** Units over which the words of one sign may be spread, and beyond which an unwanted word is of something else: a long sentence, or one that nothing ends. */
const longestSign = 16;
const unwantedReach = 28;

export function signPhrases(rule: QualityRule): Phrase<SignPhrase>[] {
  return (rule.signs ?? []).map((sign) => ({ text: sign.together[0]!, meaning: { rule, sign } }));
}

/** Every sign whose words all stand in one sentence, as a hit over the stretch from the first of them to the last. */
export function matchSigns(units: readonly SpokenUnit[], found: readonly PhraseHit<RulePhrase | SignPhrase>[]): PhraseHit<RulePhrase>[] {
  const signs: PhraseHit<RulePhrase>[] = [];
  for (const hit of found) {
    const { meaning } = hit.phrase;
    if (!("sign" in meaning)) continue;
    const all = wholeSign(units, meaning.sign, hit);
    if (!all || isOfElsewhere(units, all)) continue;
    const denied = denialWithin(units, all);
    if (denied < 0 || meaning.rule.denial === "turns") signs.push(spanning(meaning, all, denied));
  }
  return signs;
}

type Stretch = Pick<PhraseHit<unknown>, "firstUnit" | "endUnit" | "first" | "end">;

/** A phrase of a sign by its place in `together`, or one that must not stand there. */
type OtherPhrase = number | "never";

/** The phrases of a sign but for its first: looked for only in a sentence that has the first. */
const otherPhrases = new WeakMap<ClauseSign, PhraseBook<OtherPhrase>>();

function othersOf(sign: ClauseSign): PhraseBook<OtherPhrase> {
  const known = otherPhrases.get(sign);
  if (known) return known;
  const others = sign.together.slice(1).map((text, at) => ({ text, meaning: at + 1 }));
  const book = new PhraseBook<OtherPhrase>([...others, ...sign.never.map((text) => ({ text, meaning: "never" as const }))], {
    commas: "part-names",
  });
  otherPhrases.set(sign, book);
  return book;
}

/** One stretch for each phrase of the sign, none over another, each the nearest to the first; null where one is wanting or an unwanted one stands by. */
function wholeSign(units: readonly SpokenUnit[], sign: ClauseSign, head: Stretch): readonly Stretch[] | null {
  if (sign.together.length === 1 && sign.never.length === 0) return [head];
  const from = sentenceStart(units, head.firstUnit);
  const sentence = units.slice(from, sentenceEnd(units, head.endUnit));
  const hits = othersOf(sign)
    .find(sentence)
    .map((hit) => ({ ...hit, firstUnit: hit.firstUnit + from, endUnit: hit.endUnit + from, place: hit.phrase.meaning }));
  if (hits.some((hit) => hit.place === "never" && distance(hit, head) <= unwantedReach)) return null;
  const all: Stretch[] = [head];
  for (let place = 1; place < sign.together.length; place++) {
    let nearest: Stretch | null = null;
    for (const hit of hits) {
      if (hit.place !== place || distance(hit, head) > longestSign || all.some((other) => overlap(hit, other))) continue;
      if (!nearest || distance(hit, head) < distance(nearest, head)) nearest = hit;
    }
    if (!nearest) return null;
    all.push(nearest);
  }
  return all;
}

/** Furthest a sentence is looked through either way, in units. */
const sentenceReach = 40;

function sentenceStart(units: readonly SpokenUnit[], unit: number): number {
  let at = unit;
  while (at > 0 && unit - at < sentenceReach && !units[at - 1]!.endsSentence) at--;
  return at;
}

function sentenceEnd(units: readonly SpokenUnit[], end: number): number {
  let at = end;
  while (at < units.length && at - end < sentenceReach && !units[at - 1]!.endsSentence) at++;
  return at;
}

const elsewhere = new PhraseBook<null>(
  elsewherePhrases.map((text) => ({ text, meaning: null })),
  { commas: "part-names" },
);

/** Units either way within which such words are of the sign. */
const elsewhereReach = 18;

/** Whether the sentence is of another vehicle, of many, or of what might be. */
function isOfElsewhere(units: readonly SpokenUnit[], all: readonly Stretch[]): boolean {
  const first = Math.min(...all.map(({ firstUnit }) => firstUnit));
  const end = Math.max(...all.map(({ endUnit }) => endUnit));
  const from = Math.max(sentenceStart(units, first), first - elsewhereReach);
  return elsewhere.find(units.slice(from, Math.min(sentenceEnd(units, end), end + elsewhereReach))).length > 0;
}

const distance = (one: Stretch, other: Stretch): number => Math.abs(one.firstUnit - other.firstUnit);
const overlap = (one: Stretch, other: Stretch): boolean => one.firstUnit < other.endUnit && other.firstUnit < one.endUnit;

const noMore: ReadonlySet<string> = new Set();

/**
 * Unit of the denial that bears on a word of the sign: "the shoes, no cylinder there", "the brakes don't pull". A "no" that is of the sign itself
 * is none. -1 where none does; whether the first of the words is denied is judged with its rule.
 */
function denialWithin(units: readonly SpokenUnit[], all: readonly Stretch[]): number {
  const begins = Math.min(...all.map(({ firstUnit }) => firstUnit));
  for (const { firstUnit } of all) {
    if (firstUnit === begins) continue;
    const denial = denialBefore(units, firstUnit, { listed: noMore, punctuated: true, presence: false });
    if (denial >= begins && !all.some((stretch) => denial >= stretch.firstUnit && denial < stretch.endUnit)) return denial;
  }
  return -1;
}

function spanning({ rule, sign }: SignPhrase, all: readonly Stretch[], denied: number): PhraseHit<RulePhrase> {
  const opens = all.reduce((first, stretch) => (stretch.firstUnit < first.firstUnit ? stretch : first));
  const closes = all.reduce((last, stretch) => (stretch.endUnit > last.endUnit ? stretch : last));
  return {
    firstUnit: opens.firstUnit,
    endUnit: closes.endUnit,
    first: opens.first,
    end: closes.end,
    phrase: { text: sign.together.join(" + "), meaning: { rule, role: "says", ...(denied >= 0 ? { denied } : {}) } },
  };
}
