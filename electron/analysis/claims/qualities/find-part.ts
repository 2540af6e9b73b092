import type { ComponentName } from "../../../../shared-types/index.ts";
import { wordClasses } from "../framing/phrases.ts";
import type { NamedPart } from "./quality-rule.ts";
import type { ScenePart, SpokenScene } from "./spoken-scene.ts";

/** Words that may stand between a quality and the part right after it: "black vinyl buckets". */
const describing = new Set<string>([
  ...wordClasses.color,
  ..."vinyl leather cloth hide steel aluminum alloy wool wood wooden plastic stainless original factory new old nice little big good real proper correct stock soft dark light plain regular front rear back driver passenger side whole lower upper inner outer full power electric dual single two four floor one three small tiny repop reproduction".split(
    " ",
  ),
]);
const placing = new Set([
  "in",
  "on",
  "of",
  "at",
  "along",
  "under",
  "inside",
  "across",
  "around",
  "by",
  "near",
  "above",
  "below",
  "from",
  "to",
  "up",
  "down",
  "behind",
  "off",
  "over",
  "right",
]);
const pronouns = /^(?:it|it's|its|they|they're|theyre|that|that's|thats|this|them|em|these|those|one|ones|each|both|either)$/;
/** Words that lay out a part before its quality: "look at the grille, that's the die cast one". */
const pointing = new Set(["the", "this", "that", "these", "those", "your", "my", "our", "a", "them", "her", "his"]);

/** Words back over which a pronoun may point, and a defect may lie from its part. */
const pronounReach = 34;
const clauseReach = 12;

function among(components: readonly ComponentName[], part: ScenePart): boolean {
  return components.includes(part.component);
}

/** The part that the words from `first` to `end` speak of; null where the sentence does not say. */
export function findPart(scene: SpokenScene, first: number, end: number, about: NamedPart): ScenePart | null {
  const within = partsBetween(scene, first, end).find((part) => among(about.among, part));
  if (within) return within;
  const after =
    about.order === "place" ? (placedAfter(scene, end, about) ?? describedAfter(scene, end, about)) : describedAfter(scene, end, about);
  if (after) return after;
  return (
    named(scene, first, about) ??
    (about.order === "place" ? laterInSentence(scene, first, end, about) : null) ??
    meant(scene, first, end, about)
  );
}

function partsBetween(scene: SpokenScene, first: number, end: number): readonly ScenePart[] {
  const found: ScenePart[] = [];
  for (let at = scene.partIndexFrom(first); at < scene.parts.length && scene.parts[at]!.first < end; at++) found.push(scene.parts[at]!);
  return found;
}

/** "new shocks", "black vinyl buckets": the part right after its quality. */
function describedAfter(scene: SpokenScene, end: number, about: NamedPart): ScenePart | null {
  const { tokens } = scene.speech;
  const next = scene.parts[scene.partIndexFrom(end)];
  if (!next || next.first - end > 3) return null;
  for (let token = end - 1; token < next.first; token++) {
    if (tokens[token]!.after !== "") return null;
    if (token >= end && !describing.has(tokens[token]!.word)) return null;
  }
  return among(about.among, next) ? next : null;
}

/** "a crack in the lens": the part after a word of place. */
function placedAfter(scene: SpokenScene, end: number, about: NamedPart): ScenePart | null {
  const { tokens, sentences } = scene.speech;
  const sentence = sentences[scene.frames.at(end - 1).sentence];
  let placed = false;
  for (let token = end; token < Math.min(sentence?.end ?? end, end + 9); token++) {
    if (tokens[token - 1]!.after !== "" && !placed) return null;
    if (tokens[token - 1]!.after !== "" && token > end + 4) return null;
    if (placing.has(tokens[token]!.word)) placed = true;
    const part = scene.parts[scene.partIndexFrom(token)];
    if (placed && part && part.first === token && !startsNewSubject(scene, token)) return among(about.among, part) ? part : null;
    if (placed && /^(?:and|but|so)$/.test(tokens[token]!.word)) return null;
  }
  return null;
}

/** "… in it and the dash is": the part begins the next statement. */
function startsNewSubject(scene: SpokenScene, token: number): boolean {
  const { tokens } = scene.speech;
  for (let at = token - 1; at > token - 4 && at >= 0; at--) {
    if (placing.has(tokens[at]!.word)) return false;
    if (!pointing.has(tokens[at]!.word) && !describing.has(tokens[at]!.word)) return true;
  }
  return false;
}

/** The nearest part named before in the same clause, then in the same sentence. */
function named(scene: SpokenScene, first: number, about: NamedPart): ScenePart | null {
  const { frames, speech } = scene;
  const clause = frames.at(first);
  const sentence = speech.sentences[clause.sentence];
  const from = Math.max(sentence?.first ?? clause.first, first - clauseReach * 2);
  for (let at = scene.partIndexFrom(first) - 1; at >= 0; at--) {
    const part = scene.parts[at]!;
    if (part.first < from) return null;
    if (frames.at(part.first).subject !== "this-vehicle") continue;
    // A part further back than the clause must not be passed over another part that the words could be about.
    if (among(about.among, part)) return part;
    if (part.first >= clause.first && isSubject(scene, part)) return null;
  }
  return null;
}

/** "the motor is": the part and its verb. */
function isSubject(scene: SpokenScene, part: ScenePart): boolean {
  const { tokens } = scene.speech;
  return /'s$/.test(tokens[part.end - 1]!.word) || /^(?:is|are|was|were|has|have|ain't|isn't)$/.test(tokens[part.end]?.word ?? "");
}

/** "you'll see a square of new metal, that's the only place in the trunk pan": the place comes last. */
function laterInSentence(scene: SpokenScene, first: number, end: number, about: NamedPart): ScenePart | null {
  const sentence = scene.speech.sentences[scene.frames.at(first).sentence];
  const part = scene.parts[scene.partIndexFrom(end)];
  if (!part || part.first >= Math.min(sentence?.end ?? end, end + 22) || !among(about.among, part)) return null;
  const { tokens } = scene.speech;
  for (let token = Math.max(end, part.first - 4); token < part.first; token++) if (placing.has(tokens[token]!.word)) return part;
  return null;
}

/** "it's the one it was born with": what a pronoun, or a clause without a subject, points back to. */
function meant(scene: SpokenScene, first: number, end: number, about: NamedPart): ScenePart | null {
  const { frames, speech } = scene;
  const clause = frames.at(first);
  let pronoun = false;
  for (let token = Math.max(clause.first, first - 8); token < Math.min(clause.end, end + 3); token++)
    if (pronouns.test(speech.tokens[token]!.word)) pronoun = true;
  const short = clause.end - clause.first <= 5;
  if (!pronoun && !short) return null;
  const zone = scene.zoneAt(first);
  let passed = 0;
  for (let at = scene.partIndexFrom(first) - 1; at >= 0; at--) {
    const part = scene.parts[at]!;
    if (first - part.first > pronounReach) return null;
    if (scene.zoneAt(part.first) !== zone && first - part.first > clauseReach) return null;
    if (frames.at(part.first).subject !== "this-vehicle") continue;
    if (among(about.among, part)) return part;
    if (part.component !== "vehicle" && ++passed > 1) return null;
  }
  return null;
}
