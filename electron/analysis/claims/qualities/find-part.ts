import type { AttributeName } from "../../../../shared-types/index.ts";
import { isNumberWord } from "../framing/phrase-elements.ts";
import { wordClasses } from "../framing/word-classes.ts";
import type { NamedPart } from "./quality-rule.ts";
import type { ScenePart, SpokenScene } from "./spoken-scene.ts";

/** Words that may stand between a quality and the part right after it: "black vinyl buckets". */
const describing = new Set<string>([
  ...wordClasses.color,
  ..."vinyl leather cloth hide steel aluminum alloy wool wood wooden plastic stainless original factory new old nice little big good real proper correct stock soft dark light plain regular front rear back driver passenger side whole lower upper inner outer full power electric dual single two four floor one three small tiny repop reproduction galvanised galvanized rearview driver's passenger's drivers passengers offside nearside left right wrapped covered trimmed rimmed stitched topped".split(
    " ",
  ),
]);
/** Words that put damage next to a part, and not in it: "a ding above the wheel". */
const besides = new Set([
  "above",
  "below",
  "behind",
  "near",
  "by",
  "under",
  "over",
  "around",
  "beside",
  "off",
  "beneath",
  "past",
  "inboard",
  "outboard",
  "ahead",
  "forward",
]);
const placing = new Set(["in", "through", "on", "of", "at", "along", "inside", "across", "from", "to", "up", "down", "right"]);
const pronouns =
  /^(?:there's|theres|got|it|it's|its|they|they're|theyre|that|that's|thats|this|them|em|these|those|one|ones|each|both|either)$/;
/** Words that lay out a part before its quality: "look at the grille, that's the die cast one". */
const pointing = new Set(["the", "this", "that", "these", "those", "your", "my", "our", "a", "them", "her", "his"]);

const aboutPart =
  /^(?:warranty|card|receipt|receipts|sticker|stickers|manual|bill|bills|paperwork|invoice|invoices|code|codes|brochure|box)$/;

/** Words back over which a pronoun may point, and a defect may lie from its part. */
const pronounReach = 34;
const clauseReach = 12;
/** Other parts that a pronoun may pass over on its way back. */
const mostPassed = 0;

/** Parts within a part: they wear by themselves, but have no make or material of their own. */
const within = new Set(["chrome", "bolster", "gap", "body line", "side", "lug", "latch", "bow"]);

export interface Asked {
  readonly attribute: AttributeName;
  readonly circumstance: string | null;
  readonly value: string;
  /** The part last spoken of with a quality. */
  readonly last: ScenePart | null;
}

const castMetals: ReadonlySet<string> = new Set(["aluminum", "iron", "steel", "magnesium"]);

/** Whether a part has no such quality by itself: a gap may be even, but it is the panel that is chipped. */
function leftOut(part: ScenePart, { attribute, circumstance, value }: Asked): boolean {
  // A gearbox is of metal; only its knob and its boot are trimmed.
  if (attribute === "material" && part.component === "transmission" && !/^(?:shift|boot)/.test(part.part ?? "") && !castMetals.has(value))
    return true;
  // Of what is electrical only its boxes and trays are told by their material.
  if (attribute === "material" && part.component === "electrical" && part.part !== "battery tray") return true;
  // Of what is electrical only the tray under the floor is seen to be scraped.
  if (part.component === "electrical" && (circumstance === "marks" || circumstance === "dents")) return part.part !== "battery tray";
  if (attribute !== "condition") return within.has(part.part ?? "");
  if (circumstance === "praise") return false;
  // What is heard with the hood up is the engine's.
  if (circumstance === "play" && part.part === "hood") return true;
  // Nothing drips from the outside of an exhaust.
  if (circumstance === "leaks" && part.component === "exhaust" && /^(?:flange|hanger|heat shield|tip)$/.test(part.part ?? "")) return true;
  if (circumstance === "leaks" && /^(?:timing chain|drive belt|spark plug)$/.test(part.part ?? "")) return true;
  return part.part === "oil" || part.part === "gap" || part.part === "body line";
}

type Fits = (part: ScenePart) => boolean;

/** The number stamped on an engine vouches for the engine: "as to the engine number, one supposes it to be the original". */
function isVoucherFor({ among }: NamedPart, { component, part }: ScenePart): boolean {
  return component === "vin" && part === "engine number" && among.includes("engine");
}

/** The part that the words from `first` to `end` speak of; null where the sentence does not say. */
export function findPart(scene: SpokenScene, first: number, end: number, about: NamedPart, asked: Asked): ScenePart | null {
  const fits: Fits = (part) =>
    (about.among.includes(part.component) && !leftOut(part, asked)) || (asked.attribute === "originality" && isVoucherFor(about, part));
  const part = partSpokenOf(scene, first, end, about, asked, fits);
  return part && isVoucherFor(about, part) ? { ...part, component: "engine", part: null } : part;
}

function partSpokenOf(scene: SpokenScene, first: number, end: number, about: NamedPart, asked: Asked, fits: Fits): ScenePart | null {
  const spanned = partsBetween(scene, first, end).find(fits);
  if (spanned) return spanned;
  switch (about.order) {
    case "after": {
      const part = describedAfter(scene, end, fits);
      return part && beginsNext(scene, first, part) ? null : part;
    }
    case "bill":
      return listedOnBill(scene, end, fits);
    case "before":
      return (
        named(scene, first, fits) ??
        another(scene, first, fits, asked.last) ??
        meant(scene, first, end, fits) ??
        justSpokenOf(scene, first, fits, asked.last)
      );
    case "subject":
      return (
        (isActive(scene, first) ? doneTo(scene, end, fits) : null) ??
        named(scene, first, fits) ??
        another(scene, first, fits, asked.last) ??
        doneTo(scene, end, fits) ??
        meant(scene, first, end, fits) ??
        placedAfter(scene, end, fits) ??
        justSpokenOf(scene, first, fits, asked.last)
      );
    case "quality":
      return (
        describedAfter(scene, end, fits) ??
        named(scene, first, fits) ??
        another(scene, first, fits, asked.last) ??
        placedAfter(scene, end, fits) ??
        meant(scene, first, end, fits)
      );
    case "place":
      return (
        placedAfter(scene, end, fits) ??
        (/ed$/.test(scene.speech.tokens[end - 1]!.word) && isActive(scene, first) ? doneTo(scene, end, fits) : null) ??
        describedAfter(scene, end, fits) ??
        (pointsAt(scene, first) ? toldNext(scene, end, fits) : null) ??
        named(scene, first, fits) ??
        another(scene, first, fits, asked.last) ??
        toldNext(scene, end, fits) ??
        laterInSentence(scene, first, end, fits) ??
        meant(scene, first, end, fits)
      );
  }
}

/** "the back one on this side is clean": one more of what was just spoken of. */
function another(scene: SpokenScene, first: number, fits: Fits, last: ScenePart | null): ScenePart | null {
  const { tokens } = scene.speech;
  const clause = scene.frames.at(first);
  // Without punctuation the clause may have been cut between ("the back one on | this side is clean").
  const from = scene.speech.punctuated ? Math.max(clause.first + 1, first - 9) : Math.max(1, first - 11);
  for (let token = from; token < first; token++) {
    if (!/^(?:one|ones|one's|two|three)$/.test(tokens[token]!.word)) continue;
    if (!/^(?:front|back|rear|other|left|right|driver's?|passenger|passenger's|this|that)$/.test(tokens[token - 1]!.word)) continue;
    const next = scene.parts[scene.partIndexFrom(token)];
    if (next && next.first <= first) continue;
    const nearest = scene.parts[scene.partIndexFrom(token) - 1];
    if (nearest && token - nearest.end < clauseReach && fits(nearest)) return nearest;
    const recent = last && fits(last) && first - last.end <= pronounReach * 2 && scene.zoneAt(last.first) === scene.zoneAt(first);
    return recent ? { ...last, position: null, plural: false } : null;
  }
  return null;
}

/** "red leather, never been touched": what the words just before were about, though they did not name it. */
function justSpokenOf(scene: SpokenScene, first: number, fits: Fits, last: ScenePart | null): ScenePart | null {
  if (!last || !fits(last) || first - last.end > 6 || scene.zoneAt(last.first) !== scene.zoneAt(first)) return null;
  const between = scene.parts[scene.partIndexFrom(first) - 1];
  return between && between.first > last.first ? null : last;
}

function partsBetween(scene: SpokenScene, first: number, end: number): readonly ScenePart[] {
  const found: ScenePart[] = [];
  for (let at = scene.partIndexFrom(first); at < scene.parts.length && scene.parts[at]!.first < end; at++) found.push(scene.parts[at]!);
  return found;
}

/** "new shocks", "black vinyl buckets": the part right after its quality. */
function describedAfter(scene: SpokenScene, end: number, fits: Fits): ScenePart | null {
  const { tokens } = scene.speech;
  const next = scene.parts[scene.partIndexFrom(end)];
  if (!next || next.first - end > 3 || scene.frames.at(next.first).index !== scene.frames.at(end - 1).index) return null;
  for (let token = end - 1; token < next.first; token++) {
    if (tokens[token]!.after !== "") return null;
    if (token >= end && !describing.has(tokens[token]!.word) && !isNumberWord(tokens[token]!.word)) return null;
  }
  // "the original battery warranty": something about the part, and not the part.
  if (aboutPart.test(tokens[next.end]?.word ?? "") && tokens[next.end - 1]!.after === "") return null;
  return fits(next) ? next : null;
}

/** "a crack in the lens": the part after a word of place. */
function placedAfter(scene: SpokenScene, end: number, fits: Fits): ScenePart | null {
  const { tokens, sentences } = scene.speech;
  const sentence = sentences[scene.frames.at(end - 1).sentence];
  let placed = placing.has(tokens[end - 1]?.word ?? "");
  for (let token = end; token < Math.min(sentence?.end ?? end, end + 9); token++) {
    if (tokens[token - 1]!.after !== "" && !placed) return null;
    if (tokens[token - 1]!.after !== "" && token > end + 4) return null;
    const offSide = namesOffSide(scene, token);
    if (besides.has(tokens[token]!.word) && !offSide && !comesOff(tokens[token - 1]?.word ?? "", tokens[token]!.word)) return null;
    if (placing.has(tokens[token]!.word) || besides.has(tokens[token]!.word)) placed = true;
    const part = scene.parts[scene.partIndexFrom(token)];
    if (placed && part && part.first === token && !startsNewSubject(scene, token)) {
      if (fits(part)) return part;
      // "a rip down the side of the seat": the part of which it is the side.
      if (tokens[part.end]?.word !== "of") return null;
    }
    if (placed && /^(?:and|but|so)$/.test(tokens[token]!.word)) return null;
  }
  return null;
}

/** "flaking off the back of the cowl": off the part it was on. */
function comesOff(before: string, word: string): boolean {
  return word === "off" && /^(?:flak|peel|com|came|fall|fell|lift|chip|break|rust)(?:e?s|ing|e)?$/.test(before);
}

/** "… in it and the dash is": the part begins the next statement. */
function startsNewSubject(scene: SpokenScene, token: number): boolean {
  const { tokens } = scene.speech;
  for (let at = token - 1; at > token - 4 && at >= 0; at--) {
    if (placing.has(tokens[at]!.word)) return false;
    if (!pointing.has(tokens[at]!.word) && !describing.has(tokens[at]!.word) && !namesOffSide(scene, at)) return true;
  }
  return false;
}

/** "The off side rear door", "the near side wing": the side of the vehicle, and no word of place. */
function namesOffSide(scene: SpokenScene, token: number): boolean {
  const { tokens } = scene.speech;
  return (
    /^(?:off|near)$/.test(tokens[token]!.word) &&
    tokens[token]!.after.trim().length <= 1 &&
    /^(?:side|hand)$/.test(tokens[token + 1]?.word ?? "")
  );
}

/** The nearest part named before in the same clause, then in the same sentence. */
function named(scene: SpokenScene, first: number, fits: Fits): ScenePart | null {
  const singular = saysIt(scene, first);
  // "It runs the locks and the wipers, and it's brand new": the "it" right before the words.
  const itsBefore = first > 0 && /^(?:it|it's|its)$/.test(scene.speech.tokens[first - 1]!.word) ? first - 1 : first;
  const singularAt = /^(?:it|it's|its)$/.test(scene.speech.tokens[itsBefore]?.word ?? "") ? itsBefore : -1;
  const { frames, speech } = scene;
  const clause = frames.at(first);
  const sentence = speech.sentences[clause.sentence];
  const from = Math.max(sentence?.first ?? clause.first, first - (speech.punctuated ? clauseReach * 2 : clauseReach));
  for (let at = scene.partIndexFrom(first) - 1; at >= 0; at--) {
    const part = headOf(scene, at);
    if (part.first < from) return null;
    if (frames.at(part.first).subject !== "this-vehicle" || excepted(scene, part)) continue;
    // A part further back than the clause must not be passed over another part that the words could be about.
    // "the exhaust is two inch with turbo mufflers, and it's aluminized": "it" is none of the plural parts between.
    const behindPronoun = part.first < clause.first || (singularAt >= 0 && part.end <= singularAt);
    if (fits(part) && !((singular || singularAt >= 0) && part.plural && behindPronoun && hasSingularBefore(scene, at, from, fits)))
      return part;
    if (isSubject(scene, part) && (part.component !== "vehicle" || part.end >= first - 1)) return null;
    // "this truck came out of a fleet": the vehicle itself is meant.
    if (part.component === "vehicle" && part.end === first) return null;
  }
  return null;
}

/** Unpunctuated "the hoses are new steering is quick": the part after begins the next statement. */
function beginsNext(scene: SpokenScene, first: number, part: ScenePart): boolean {
  const { tokens, punctuated } = scene.speech;
  const verb = tokens.slice(Math.max(0, first - 2), first).some((token) => /(?:^(?:is|are|was|were)|'s|'re)$/.test(token.word));
  return !punctuated && verb && isSubject(scene, part);
}

function saysIt(scene: SpokenScene, first: number): boolean {
  const { tokens } = scene.speech;
  const clause = scene.frames.at(first);
  for (let token = clause.first; token < Math.min(first, clause.first + 3); token++)
    if (/^(?:it|it's|its)$/.test(tokens[token]!.word)) return true;
  return false;
}

function hasSingularBefore(scene: SpokenScene, index: number, from: number, fits: Fits): boolean {
  for (let at = index - 1; at >= 0 && scene.parts[at]!.first >= from; at--)
    if (fits(scene.parts[at]!) && !scene.parts[at]!.plural) return true;
  return false;
}

/** "the clock in the dash": the part before the word of place is the one spoken of. */
function headOf(scene: SpokenScene, index: number): ScenePart {
  const { tokens } = scene.speech;
  const part = scene.parts[index]!;
  const head = scene.parts[index - 1];
  if (!head) return part;
  const between = tokens.slice(head.end, part.first);
  // "the receipt for the seats": paper about the part, and not the thing spoken of.
  if (head.part === "paperwork") return part;
  // "The paint on the hood" is the hood's.
  if (head.component === "paint" && part.component === "body" && part.part !== null && joinsTo(head, part, tokens))
    return { ...part, component: "paint" };
  const joins = between.length > 0 && between.length <= 2 && /^(?:in|on|of|for|inside|from)$/.test(between[0]!.word);
  return joins && (between.length === 1 || pointing.has(between[1]!.word)) && tokens[head.end - 1]!.after === "" ? head : part;
}

/** Whether only "on the" stands between two parts. */
function joinsTo(head: ScenePart, part: ScenePart, tokens: SpokenScene["speech"]["tokens"]): boolean {
  const between = tokens.slice(head.end, part.first);
  return between.length > 0 && between.length <= 2 && /^(?:on|of)$/.test(between[0]!.word) && tokens[head.end - 1]!.after === "";
}

const passive = /^(?:is|are|was|were|been|be|being|has|have|had|got|getting|'s|'re|'ve|n't|never|not)$/;

/** "retrimming the seats", "they repainted the hood": something done to what follows, where "has been repainted" looks back. */
function isActive(scene: SpokenScene, first: number): boolean {
  const unit = scene.unitOf(first);
  return !passive.test(scene.units[unit]?.word ?? "") && !passive.test(scene.units[unit - 1]?.word ?? "");
}

/** "they repainted the fender": the part right after what was done to it. */
function doneTo(scene: SpokenScene, end: number, fits: Fits): ScenePart | null {
  const { tokens, punctuated } = scene.speech;
  const part = scene.parts[scene.partIndexFrom(end)];
  if (!part || part.first - end > 4 || !fits(part) || tokens[end - 1]!.after !== "") return null;
  if (!punctuated && isSubject(scene, part)) return null;
  for (let token = end; token < part.first; token++) {
    const { word, after } = tokens[token]!;
    if (after !== "" || !(pointing.has(word) || describing.has(word) || /^(?:both|all)$/.test(word))) return null;
  }
  return part;
}

/** "everything but the hood", "down behind the distributor": named to leave it out, or to say where. */
function excepted(scene: SpokenScene, part: ScenePart): boolean {
  const { tokens, sentences } = scene.speech;
  const subject = isSubject(scene, part);
  const sentence = sentences[scene.frames.at(part.first).sentence];
  for (let at = part.first - 1; at >= Math.max(sentence?.first ?? 0, part.first - 3); at--) {
    if (/^(?:except|besides)$/.test(tokens[at]!.word)) return true;
    // "looking up at the side step": what is looked at is meant.
    if (tokens[at]!.word === "at" && tokens.slice(Math.max(0, at - 3), at).some(({ word }) => /^(?:look|looks|looking|looked)$/.test(word)))
      return false;
    if (namesOffSide(scene, at)) continue;
    if (!subject && /^(?:behind|beside|above|below|beneath|over|under|at|onto|near|not|than|past)$/.test(tokens[at]!.word)) return true;
    if (tokens[at]!.word === "but" && /^(?:everything|all|anything|every|nothing)$/.test(tokens[at - 1]?.word ?? "")) return true;
    // "the bumper back here was the front bumper off another": what it was, not what it is.
    if (!subject && /^(?:was|were)$/.test(tokens[at]!.word)) return true;
    if (!pointing.has(tokens[at]!.word) && !describing.has(tokens[at]!.word)) return false;
  }
  return false;
}

/** "the motor is": the part and its verb. */
function isSubject(scene: SpokenScene, part: ScenePart): boolean {
  const { tokens } = scene.speech;
  return /'s$/.test(tokens[part.end - 1]!.word) || /^(?:is|are|was|were|has|have|ain't|isn't)$/.test(tokens[part.end]?.word ?? "");
}

/** "you'll see a square of new metal, that's the only place in the trunk pan": the place comes last. */
function laterInSentence(scene: SpokenScene, first: number, end: number, fits: Fits): ScenePart | null {
  const sentence = scene.speech.sentences[scene.frames.at(first).sentence];
  const part = scene.parts[scene.partIndexFrom(end)];
  if (!part || part.first >= Math.min(sentence?.end ?? end, end + 22) || !fits(part)) return null;
  const { tokens } = scene.speech;
  // "No rust, that's surface on the flange": what follows is told for itself.
  if (tokens.slice(end, part.first).some(({ word }) => word === "surface")) return null;
  for (let token = part.first - 1; token >= Math.max(end, part.first - 4); token--) {
    if (besides.has(tokens[token]!.word) || besides.has(tokens[token - 1]?.word ?? "")) return null;
    if (placing.has(tokens[token]!.word)) return part;
    if (!pointing.has(tokens[token]!.word) && !describing.has(tokens[token]!.word)) return null;
  }
  return null;
}

/** Words from a bill's name to what it lists. */
const billReach = 14;
/** Work that leaves the part in place, and wear that is no part. */
const leavesInPlace =
  /^(?:rebuil\w+|rebore\w*|repair\w*|service\w*|serviced|adjust\w*|clean\w*|weld\w*|fluid|oil|filter|filters|gasket|gaskets|seal|seals|leak|check\w*|test|polish\w*|detail\w*|flush|regas\w*|recharge\w*|align\w*|mount|mounts|bracket|bulb|bulbs|wash|rust\w*|tune|tracking|balance|refurb\w*|warranty|inspection|diagnos\w*|quote|estimate|no|not|never|isn't|without)$/;

/** "Receipt from the salvage yard, one left front door": the first part that the bill lists. */
function listedOnBill(scene: SpokenScene, end: number, fits: Fits): ScenePart | null {
  const { tokens, sentences } = scene.speech;
  const sentence = sentences[scene.frames.at(end - 1).sentence];
  const part = scene.parts[scene.partIndexFrom(end)];
  if (!part || part.first - end > billReach || part.first >= (sentence?.end ?? part.first) || !fits(part) || isSubject(scene, part))
    return null;
  for (let token = end; token < Math.min(tokens.length, part.end + 4); token++) if (leavesInPlace.test(tokens[token]!.word)) return null;
  return part;
}

/** "see that come off": what is seen is named afterwards. */
function pointsAt(scene: SpokenScene, first: number): boolean {
  const clause = scene.frames.at(first);
  const { tokens } = scene.speech;
  for (let token = Math.max(clause.first, first - 4); token < first; token++)
    if (/^(?:see|look|watch|that|this|there)$/.test(tokens[token]!.word)) return true;
  return false;
}

/** Words from what is seen to the words that name it: "it goes straight in … that's the bottom of the rocker". */
const toldNextReach = 16;

/** What is seen first and named after: "see that come off in my hand, that's an ear of rail". */
function toldNext(scene: SpokenScene, end: number, fits: Fits): ScenePart | null {
  const { tokens } = scene.speech;
  const part = scene.parts[scene.partIndexFrom(end)];
  if (!part || part.first - end > toldNextReach || !fits(part) || isSubject(scene, part)) return null;
  for (let token = end; token < part.first; token++) {
    if (
      !/^(?:that's|thats|this's|there's|that'd)$/.test(tokens[token]!.word) &&
      !(tokens[token]!.word === "that" && tokens[token + 1]?.word === "is")
    )
      continue;
    const between = tokens.slice(token + 1, part.first).map(({ word }) => word);
    return between.length <= 6 && between.every((word) => namingWords.has(word) || describing.has(word) || pointing.has(word))
      ? part
      : null;
  }
  return null;
}

const namingWords = new Set(
  "is of the a an bit piece part bottom end edge corner side back top ear lip section inner outer your".split(" "),
);

/** A bolster is spoken of for its seat. */
function wholeOf(part: ScenePart): ScenePart {
  return part.part === "bolster" ? { ...part, part: null, position: null } : part;
}

/** "it's the one it was born with": what a pronoun, or a clause without a subject, points back to. */
function meant(scene: SpokenScene, first: number, end: number, fits: Fits): ScenePart | null {
  const { frames, speech } = scene;
  const clause = frames.at(first);
  let pronoun = false;
  for (let token = Math.max(clause.first, first - 8); token < Math.min(clause.end, end + 3); token++)
    if (pronouns.test(speech.tokens[token]!.word)) pronoun = true;
  const short = clause.end - clause.first <= 5;
  if (!pronoun && !short) return null;
  const zone = scene.zoneAt(first);
  const { sentence } = clause;
  let passed = 0;
  for (let at = scene.partIndexFrom(first) - 1; at >= 0; at--) {
    const part = headOf(scene, at);
    if (first - part.first > pronounReach) return null;
    if (scene.zoneAt(part.first) !== zone && first - part.first > 4) return null;
    if (frames.at(part.first).subject !== "this-vehicle" || excepted(scene, part)) continue;
    // "Let's pop the hood. It's got rust on it": what lies behind is meant, and not what was opened to see it.
    if (frames.at(part.first).sentence !== sentence && isOpenedToSee(scene, part)) return null;
    if (fits(part)) return part;
    const whole = wholeOf(part);
    if (whole !== part && fits(whole)) return whole;
    // Another part in the same sentence is what the words are about, though it is none of theirs.
    if (part.component !== "vehicle" && (frames.at(part.first).sentence === sentence || ++passed > mostPassed)) return null;
  }
  return null;
}

const opens = /^(?:pop|popped|popping|open|opened|opening|lift|lifted|lifting|raise|raised|drop|dropped|under|behind|up|prop|propped)$/;

/** "Pop the hood", "let's open up the trunk": named only as the way in. */
function isOpenedToSee(scene: SpokenScene, { first, component, part }: ScenePart): boolean {
  if (!(component === "body" && /^(?:hood|trunk|trunk lid|tailgate|door)$/.test(part ?? "")) && component !== "cargo-floor") return false;
  const { tokens } = scene.speech;
  return pointing.has(tokens[first - 1]?.word ?? "") && opens.test(tokens[first - 2]?.word ?? "");
}

/** Words that may stand for the part, or between it and its verb: "carpet in here's good". */
const subjectWords = new Set(
  "it they that this these those one ones sides ends corners throughout everything all both she he which what here there side inside underneath now too front back rear end top bottom them it's still also".split(
    " ",
  ),
);

/** Whether a phrase that opens with its verb ("is good") has a subject that may be a part, and not another noun ("my hands are clean"). */
export function hasPartAsSubject(scene: SpokenScene, firstUnit: number): boolean {
  const before = scene.units[firstUnit - 1];
  if (!before || before.endsSentence) return false;
  // "The folder, which is pink": said of the noun before.
  const noun = before.word === "which" ? scene.units[firstUnit - 2] : undefined;
  if (noun) return scene.parts.some((part) => part.end === noun.token + 1);
  if (subjectWords.has(before.word)) return true;
  const index = scene.partIndexFrom(before.token + 1) - 1;
  const part = scene.parts[index];
  return part !== undefined && part.end > before.token;
}
