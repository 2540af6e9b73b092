import type { ZoneName, ZoneProposal } from "../../../../shared-types/index.ts";
import type { Speech, SpokenNumber, Token } from "../../model.ts";
import type { PartMention } from "../lexicon/find-mentions.ts";
import { soundsBritish } from "../positions/wheel-side.ts";

/** What the talk may be about where a number is spoken; a lower cost is nearer. */
export interface Topic {
  readonly mention: PartMention;
  readonly cost: number;
  readonly reach: "clause" | "sentence" | "recent";
}

export interface NumberSurroundings {
  readonly number: SpokenNumber;
  /**
   * Up to 18 words before and 12 after, lower case, one blank between, American spelling; " . " where a sentence was closed by punctuation,
   * `#` for another number with its unit.
   */
  readonly before: string;
  readonly after: string;
  readonly said: string;
  /** True where punctuation parts the number from what follows. */
  readonly closed: boolean;
  /** What may speak against a slot: the words before, the number's own and those after, joined by " # ", other numbers as "~"; see `nearWords`. */
  readonly near: string;
  /** Nearest first. */
  readonly topics: readonly Topic[];
  readonly zone: ZoneName;
  /** True where the narrator speaks British English: a pound may be money. */
  readonly british: boolean;
  /** Token ranges, end exclusive. */
  readonly clause: { readonly first: number; readonly end: number };
  readonly sentence: { readonly first: number; readonly end: number };
}

/** Spellings brought to one form, so that a cue is written once. */
const oneForm: Readonly<Record<string, string>> = {
  tyre: "tire",
  tyres: "tires",
  its: "it's",
  thats: "that's",
  theres: "there's",
  heres: "here's",
  theyre: "they're",
  breaks: "brakes",
  litre: "liter",
  litres: "liters",
  carburettor: "carburetor",
  carburettors: "carburetors",
  colour: "color",
  millimetre: "millimeter",
  millimetres: "millimeters",
  gray: "gray",
  grey: "gray",
  em: "them",
  askin: "asking",
  wantin: "wanting",
  lookin: "looking",
  hopin: "hoping",
  countin: "counting",
  showin: "showing",
  runnin: "running",
  sittin: "sitting",
  makin: "making",
};

const wordsBefore = 18;
const wordsAfter = 12;

export function phraseOf(tokens: readonly Token[], first: number, end: number): string {
  const words: string[] = [];
  for (let at = Math.max(0, first); at < Math.min(end, tokens.length); at++) {
    const token = tokens[at]!;
    words.push(Object.hasOwn(oneForm, token.word) ? oneForm[token.word]! : token.word);
    if (/[.?!]/.test(token.after) && at < end - 1) words.push(".");
  }
  return words.join(" ");
}

/** Joints inside a sentence: what is said on the other side is another clause. */
const joint = /^(?:and|but|so|because|cause|'cause|then|while|where|whereas|though|although|or|plus)$/;
/** A pair joined by "and" stays one clause ("front and back", "two and a half"). */
const pairWord =
  /^(?:a|an|ring|pinion|rack|half|quarter|three|some|change|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|one|two|four|five|six|seven|eight|nine|both)$/;

const placeWord = /^(?:fronts?|backs?|rears?|behind|ahead)$/;

function joinsPair(last: Token | undefined, next: Token): boolean {
  return pairWord.test(next.word) || (placeWord.test(next.word) && last !== undefined && placeWord.test(last.word));
}

/** For each token the first token of its clause; clauses end at punctuation, at sentence ends and before joints. */
function clauseStarts(speech: Speech): number[] {
  const starts: number[] = [];
  const sentenceStarts = new Set(speech.sentences.map((sentence) => sentence.first));
  let start = 0;
  speech.tokens.forEach((token, at) => {
    const last = speech.tokens[at - 1];
    const next = speech.tokens[at + 1];
    if (
      sentenceStarts.has(at) ||
      (last !== undefined && /[,;:.?!–—]/.test(last.after)) ||
      (joint.test(token.word) && !(token.word === "and" && next !== undefined && joinsPair(last, next)))
    )
      start = at;
    starts.push(start);
  });
  return starts;
}

interface Range {
  readonly first: number;
  readonly end: number;
}

/** Everything about where numbers stand that does not depend on one number; made once for a speech. */
export interface SpeechMap {
  readonly speech: Speech;
  readonly mentions: readonly PartMention[];
  readonly zones: readonly ZoneProposal[];
  readonly clauseStart: readonly number[];
  readonly clauseEnd: readonly number[];
  readonly sentenceOf: readonly number[];
  /** The number a token belongs to, where it is more than a small plain word. */
  readonly numberAt: readonly (SpokenNumber | undefined)[];
  readonly british: boolean;
}

export function mapSpeech(
  speech: Speech,
  mentions: readonly PartMention[],
  zones: readonly ZoneProposal[],
  numbers: readonly SpokenNumber[],
): SpeechMap {
  const clauseStart = clauseStarts(speech);
  const clauseEnd: number[] = new Array(clauseStart.length).fill(clauseStart.length);
  for (let at = clauseStart.length - 2; at >= 0; at--) clauseEnd[at] = clauseStart[at + 1] === at + 1 ? at + 1 : clauseEnd[at + 1]!;
  const sentenceOf: number[] = new Array(speech.tokens.length).fill(0);
  for (const sentence of speech.sentences) for (let at = sentence.first; at < sentence.end; at++) sentenceOf[at] = sentence.index;
  const numberAt: (SpokenNumber | undefined)[] = new Array(speech.tokens.length).fill(undefined);
  for (const number of numbers) if (!isPlainWord(number)) for (let at = number.first; at < number.end; at++) numberAt[at] = number;
  const british = soundsBritish(speech);
  // A British hood is the folding one; what covers the engine is a bonnet.
  const asSpoken = (mention: PartMention): PartMention =>
    british && /^hoods?(?:'s)?$/.test(speech.tokens[mention.first]!.word) && mention.end === mention.first + 1
      ? { ...mention, component: "top", part: null, position: null }
      : mention;
  // The "brake" of "brake horse" and the "gauge" of "sixteen gauge" are units, and name no part.
  const isUnit = ({ first, end }: PartMention): boolean => {
    const number = numberAt[first];
    return number !== undefined && number.first < first && end <= number.end;
  };
  return {
    speech,
    mentions: mentions.filter((mention) => !isUnit(mention)).map(asSpoken),
    zones,
    clauseStart,
    clauseEnd,
    sentenceOf,
    numberAt,
    british,
  };
}

/** Sentences and tokens back that a pronoun or a bare number may reach for what it is about. */
const sentencesBack = 4;
const tokensBack = 70;

/** Index of the first mention that ends after the token. */
function firstMentionAfter(mentions: readonly PartMention[], token: number): number {
  let low = 0;
  let high = mentions.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (mentions[middle]!.end <= token) low = middle + 1;
    else high = middle;
  }
  return low;
}

const linkWords =
  /^(?:(?:on|in|of|for|to|at|from|with|the|a|an|this|that|these|those|its|his|her|all|both|your|my|each|every|inch|wide|big|new|front|rear|back) )*$/;

/** True where only link words lie between, and no punctuation: a pause cut them, not the speaker ("eleven on | this fender"). */
function hangsTogether(tokens: readonly Token[], first: number, end: number): boolean {
  if (!linkWords.test(`${phraseOf(tokens, first, end)} `)) return false;
  for (let at = first - 1; at < end; at++) if (tokens[at]!.after !== "") return false;
  return true;
}

const copula = /^(?:is|are|was|were|'s|reads|says|shows|at)$/;

/**
 * "The fender is 108 the door is 112": a part with a verb or a number of its own after it belongs to that one, where the number before
 * already had its part.
 */
function opensNext(map: SpeechMap, number: Range, mention: PartMention, between: string): boolean {
  const { tokens } = map.speech;
  if (!/^(?:and ?)?(?:the|this|that|a|an)?$/.test(between.trim())) return false;
  const next = tokens[mention.end];
  if (!next || !(copula.test(next.word) || map.numberAt[mention.end])) return false;
  const verb = copula.test(tokens[number.first - 1]?.word ?? "") ? 1 : 0;
  return map.mentions.some((earlier) => earlier.end === number.first - verb);
}

function topicsAround(map: SpeechMap, number: Range, clause: Range, sentence: Range): Topic[] {
  const { mentions, speech, sentenceOf } = map;
  const topics: Topic[] = [];
  const here = sentenceOf[number.first]!;
  const start = firstMentionAfter(mentions, number.first);
  // "What's left on the pads? Six millimetres.": the answer is about what was asked.
  const asked = /\?/.test(speech.tokens[sentence.first - 1]?.after ?? "");
  for (let at = start; at < mentions.length; at++) {
    const mention = mentions[at]!;
    if (mention.first >= sentence.end + 4) break;
    const gap = mention.first - number.end;
    if (gap < 0) topics.push({ mention, cost: 0, reach: "clause" });
    else if (mention.first < clause.end) {
      const between = `${phraseOf(speech.tokens, number.end, mention.first)} `;
      if (opensNext(map, number, mention, between)) {
        topics.push({ mention, cost: 0.5 + 0.02 * gap, reach: "sentence" });
        continue;
      }
      topics.push({ mention, cost: gap === 0 || linkWords.test(between) ? 0.02 * gap : 0.15 + 0.04 * gap, reach: "clause" });
    } else if (
      gap <= 4 &&
      hangsTogether(speech.tokens, number.end, mention.first) &&
      !opensNext(map, number, mention, phraseOf(speech.tokens, number.end, mention.first))
    )
      topics.push({ mention, cost: 0.02 * gap, reach: "clause" });
    else if (mention.first < sentence.end) topics.push({ mention, cost: 0.5 + 0.02 * gap, reach: "sentence" });
  }
  for (let at = start - 1; at >= 0; at--) {
    const mention = mentions[at]!;
    const gap = number.first - mention.end;
    const back = here - sentenceOf[mention.first]!;
    if (back > sentencesBack || gap > tokensBack) break;
    if (mention.first >= clause.first) topics.push({ mention, cost: 0.04 + 0.015 * gap, reach: "clause" });
    else if (back === 0 || (back === 1 && asked)) topics.push({ mention, cost: 0.15 + 0.012 * gap, reach: "sentence" });
    else topics.push({ mention, cost: 0.22 + 0.07 * back + 0.006 * gap, reach: "recent" });
  }
  return topics;
}

function leftTopics(map: SpeechMap, number: Range, left: readonly LeftTopic[]): Topic[] {
  const topics: Topic[] = [];
  for (const { mention } of left) {
    const gap = number.first - mention.end;
    const back = map.sentenceOf[number.first]! - map.sentenceOf[mention.first]!;
    if (gap > tokensBack || back > sentencesBack) continue;
    topics.push({
      mention,
      cost: back === 0 ? 0.2 + 0.012 * gap : 0.3 + 0.07 * back + 0.007 * gap,
      reach: back === 0 ? "sentence" : "recent",
    });
  }
  return topics;
}

export function zoneAt(zones: readonly ZoneProposal[], seconds: number): ZoneName {
  let low = 0;
  let high = zones.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (zones[middle]!.start <= seconds) low = middle;
    else high = middle - 1;
  }
  return zones[low]?.zone ?? "opening";
}

/** Where the talk was left by an earlier claim, for a number that names nothing ("…and it's a 3.70 in here now"). */
export interface LeftTopic {
  readonly mention: PartMention;
}

/** The words of a stretch, every other number in it (small bare ones apart: they are mostly plain words) as `#`. */
function wordsAround(map: SpeechMap, first: number, end: number): string {
  const parts: string[] = [];
  for (let at = Math.max(0, first); at < Math.min(end, map.speech.tokens.length); ) {
    const number = map.numberAt[at];
    if (number && number.first >= first && number.end <= end) {
      parts.push("#");
      if (/[.?!]/.test(map.speech.tokens[number.end - 1]!.after) && number.end < end) parts.push(".");
      at = number.end;
      continue;
    }
    parts.push(phraseOf(map.speech.tokens, at, at + 1));
    if (/[.?!]/.test(map.speech.tokens[at]!.after) && at < end - 1) parts.push(".");
    at++;
  }
  return parts.join(" ");
}

/** A full stop closes what was said; a question is closed by its answer ("Owners? Two."). */
function endsSentence(token: Token | undefined): boolean {
  return token !== undefined && /[.!]/.test(token.after.replace(/\?.*/, ""));
}

const smallest = 13;
function isPlainWord(number: SpokenNumber): boolean {
  const [first] = number.readings;
  // "390 four V": four venturis, not four volts.
  if (first?.kind === "ordinal" || (first?.unit === "V" && first.value === 4)) return true;
  return number.readings.every(({ value, unit }) => unit === null && typeof value === "number" && value < smallest);
}

/** The words close enough to speak against a slot: ten before or six after, of the number's own sentence. */
function nearWords(words: string, side: "before" | "after"): string {
  if (side === "before" && words.endsWith(" .")) return "";
  const sentence = side === "before" ? words.slice(words.lastIndexOf(" . ") + 1) : words.split(/(?:^| )\. ?/)[0]!;
  const list = sentence.split(" ");
  return (side === "before" ? list.slice(-10) : list.slice(0, 6)).join(" ");
}

export function surroundingsOf(
  map: SpeechMap,
  number: SpokenNumber,
  left: readonly LeftTopic[] = [],
  within: { readonly first: number; readonly end: number } = { first: 0, end: map.speech.tokens.length },
): NumberSurroundings {
  const { speech } = map;
  const sentence = speech.sentences[map.sentenceOf[number.first]!] ?? { first: 0, end: speech.tokens.length };
  const last = speech.tokens[number.end - 1]!;
  const clause = { first: map.clauseStart[number.first]!, end: map.clauseEnd[number.end - 1]! };
  const before =
    (within.first > number.first - wordsBefore && within.first > 0 ? ". " : "") +
    wordsAround(map, Math.max(number.first - wordsBefore, within.first), number.first) +
    (endsSentence(speech.tokens[number.first - 1]) ? " ." : "");
  const said = phraseOf(speech.tokens, number.first, number.end);
  const after =
    (/[.?!]/.test(last.after) ? ". " : "") +
    wordsAround(map, number.end, Math.min(number.end + wordsAfter, Math.max(within.end, number.end)));
  return {
    number,
    before,
    closed: last.after !== "",
    said,
    near: `${nearWords(before, "before").replaceAll("#", "~")} # ${said} # ${nearWords(after, "after").replaceAll("#", "~")}`,
    after,
    topics: [...topicsAround(map, number, clause, sentence), ...leftTopics(map, number, left)].sort((a, b) => a.cost - b.cost),
    zone: zoneAt(map.zones, speech.tokens[number.first]!.at),
    british: map.british,
    clause,
    sentence: { first: sentence.first, end: sentence.end },
  };
}
