import type { AttributeName, ComponentName, PositionName, ZoneName } from "../../../../shared-types/index.ts";
import { isNumberWord } from "../framing/phrase-elements.ts";
import type { ScenePart, SpokenScene } from "./spoken-scene.ts";

/**
 * Where on the vehicle a quality was seen: from the words about it, from where the part always sits, else from where the camera is.
 */
type Lengthwise = "front" | "rear" | "all";
type Side = "driver" | "passenger" | "both";

/** Components that a vehicle has once, wherever the camera is. */
const placeless: ReadonlySet<ComponentName> = new Set([
  "engine",
  "fuel-system",
  "ignition",
  "exhaust",
  "transmission",
  "steering",
  "cooling",
  "electrical",
  "dash",
  "carpet",
  "headliner",
  "top",
  "audio",
  "air-conditioning",
  "cargo-floor",
  "frame",
  "fuel-tank",
  "odometer",
  "title",
  "vin",
  "price",
  "vehicle",
  "spare",
]);
/** Components seen from outside, whose place is where the camera is. */
const seenOutside: ReadonlySet<ComponentName> = new Set(["body", "paint", "glass", "trim", "wheel", "tire", "lights", "bumper"]);

/** A following word that makes "back" no place: "back to", "back in the day". */
const notAtTheBack = /^(?:to|then|when|together|up|off|and|on|into|from|again|down)$/;
const notBehind = /^(?:the|that|those|it|this|a|my|me|us|you|here|there)$/;
const backVerbs =
  /^(?:go|come|came|went|put|get|got|way|be|been|bring|comes|goes|hold|going|coming|turning|cut|send|peel|step|call|right|years|fold|sit|stand)$/;

/** "all four", "all round", "all the way round"; but not "all the way back". */
function saysAllRound(words: readonly string[], at: number): boolean {
  if (words[at] !== "all") return false;
  const after = words[at + 1] ?? "";
  if (/^(?:four|round|around)$/.test(after)) return true;
  return (
    after === "the" &&
    (words[at + 2] === "way" ? /^(?:round|around)$/.test(words[at + 3] ?? "") : /^(?:round|around)$/.test(words[at + 2] ?? ""))
  );
}

function lengthwiseAt(words: readonly string[], at: number): Lengthwise | null {
  const word = words[at]!;
  const before = words[at - 1] ?? "";
  const after = words[at + 1] ?? "";
  // "thinner than the front" compares with the other end.
  if (before === "than" || (words[at - 2] === "than" && before === "the")) return null;
  if (word === "front" && after === "to" && /^(?:back|rear)$/.test(words[at + 2] ?? "")) return null;
  if (/^(?:front|rear|back)$/.test(word) && after === "and" && /^(?:front|rear|back)$/.test(words[at + 2] ?? "") && words[at + 2] !== word)
    return "all";
  if (/^(?:front|rear|back)$/.test(word) && before === "and" && /^(?:front|rear|back)$/.test(words[at - 2] ?? "")) return "all";
  if (/^(?:front|fronts|ahead|fore|front's)$/.test(word)) return after === "of" || before === "out" ? null : "front";
  if (word === "up" && after === "front") return "front";
  if (/^(?:rear|rears|aft)$/.test(word)) return after === "end" && before !== "the" ? "rear" : "rear";
  if (/^(?:back|backs)$/.test(word)) {
    if (backVerbs.test(before) || (after === "in" && /^(?:there|here)$/.test(words[at + 2] ?? ""))) return null;
    if (
      /^(?:the|in|a|this|that|out|your|each)$/.test(before) ||
      /^(?:here|there|bumper|wheel|seat|seats|tire|tires|door|axle|end|window|glass|half|one|ones|brakes|shocks|fender|quarter|wing|pair|side)$/.test(
        after,
      )
    )
      return after === "of" ? null : "rear";
    return notAtTheBack.test(after) ? null : before === "and" || before === "" ? "rear" : null;
  }
  if (word === "behind") return notBehind.test(after) ? null : "rear";
  if (
    saysAllRound(words, at) ||
    (/^(?:every|each)$/.test(word) && after === "corner") ||
    (word === "four" && (after === "corners" || (after === "wheel" && /^(?:disc|discs|disk|drum|drums)$/.test(words[at + 2] ?? ""))))
  )
    return "all";
  return null;
}

function sideAt(words: readonly string[], at: number, scene: SpokenScene, zone: ZoneName): Side | null {
  const word = words[at]!;
  const before = words[at - 1] ?? "";
  const after = words[at + 1] ?? "";
  const seen: Side | null = zone === "driver-side" ? "driver" : zone === "passenger-side" ? "passenger" : null;
  if (/^drivers?(?:'s?)?$/.test(word)) return "driver";
  // "seven passenger": how many, and not where.
  if (/^passengers?(?:'s?)?$/.test(word)) return isNumberWord(before) || /^(?:car|van|vehicle|miles)$/.test(after) ? null : "passenger";
  const onHand = (hand: "left" | "right"): Side => (hand === scene.wheelSide ? "driver" : "passenger");
  if (word === "offside" || (word === "off" && after === "side")) return onHand(scene.kerbSide === "left" ? "right" : "left");
  if (word === "nearside" || (word === "near" && after === "side")) return onHand(scene.kerbSide);
  if (/^(?:left|right)$/.test(word) && /^(?:side|hand|front|rear|door|fender|wing|one)$/.test(after) && before !== "all")
    return onHand(word as "left" | "right");
  // "on the left" is the vehicle's own left, except from the front, where it is the viewer's.
  if (/^(?:left|right)$/.test(word) && before === "the" && /^(?:on|to|at)$/.test(words[at - 2] ?? "") && zone !== "front")
    return onHand(word as "left" | "right");
  if (word === "side" && /^(?:this|that|my)$/.test(before)) return seen;
  if (/^sides?$/.test(word) && /^(?:both|either)$/.test(before)) return "both";
  // "just like the other side": the two are compared.
  if (word === "side" && before === "other" && /^(?:as|than|like|from|unlike)$/.test(words[at - 3] ?? "")) return null;
  // "Other side, no rust in the rocker this side": the first names the way there, the second what is seen.
  if (word === "side" && before === "other" && /\bthis side\b/.test(words.slice(at + 1, at + 16).join(" "))) return null;
  if (word === "side" && (before === "other" || before === "far"))
    return seen === "driver" ? "passenger" : seen === "passenger" ? "driver" : null;
  return null;
}

function joined(lengthwise: Lengthwise | null, side: Side | null): PositionName | null {
  if (side === null || side === "both") return lengthwise;
  if (lengthwise === null || lengthwise === "all") return side;
  return `${side}-${lengthwise}`;
}

function partsOf(position: PositionName | null): { lengthwise: Lengthwise | null; side: Side | null } {
  if (position === null) return { lengthwise: null, side: null };
  if (position === "all") return { lengthwise: "all", side: null };
  const lengthwise = position.endsWith("front") ? "front" : position.endsWith("rear") ? "rear" : null;
  const side = position.startsWith("driver") ? "driver" : position.startsWith("passenger") ? "passenger" : null;
  return { lengthwise, side };
}

interface Nearest<Place> {
  readonly place: Place;
  readonly distance: number;
}

/** Nearest place word to the words in question; words before count as a little nearer than words after. */
function nearest<Place>(
  first: number,
  end: number,
  from: number,
  to: number,
  isAnother: (token: number) => boolean,
  at: (token: number) => Place | null,
): Nearest<Place> | null {
  let best: Nearest<Place> | null = null;
  for (let token = from; token < to; token++) {
    const place = at(token);
    if (place === null) continue;
    // "it's a replacement, the passenger one's original": the next one's place.
    if (token >= end && isAnother(token + 1)) continue;
    const distance = token < first ? first - token : token >= end ? token - end + 1.5 : 0;
    if (!best || distance < best.distance) best = { place, distance };
  }
  return best;
}

/** Words either way in which a place may stand, and words back over which it is carried on for running gear. */
const reach = 9;
const carriedWords = 60;

export interface Spot {
  readonly first: number;
  readonly end: number;
  readonly part: ScenePart | null;
  readonly component: ComponentName;
  /** The part's name where no mention gives it. */
  readonly partName?: string | null;
  readonly attribute: AttributeName;
  readonly zone: ZoneName;
}

/** Clauses up to this many words after the quality may still place it: "there's a ding, driver side". */
const shortAfterthought = 5;
const shortAfterthoughtOfRunningGear = 8;

/** Where the words that may place a quality end: its clause, and a short one after it. */
function placeEnd(scene: SpokenScene, end: number, sentenceEnd: number, component: ComponentName): number {
  const longest = component === "suspension" || component === "brakes" ? shortAfterthoughtOfRunningGear : shortAfterthought;
  const clause = scene.frames.at(end - 1);
  if (clause.end >= sentenceEnd) return sentenceEnd;
  const next = scene.frames.at(clause.end);
  return next.end - next.first <= longest ? next.end : clause.end;
}

/** Parts of the running gear that serve both ends. */
const bothEnds = new Set(["lines", "abs", "booster", "master cylinder", "actuation", "linkage"]);

const oneOfAKind = /^(?:hood|trunk lid|tailgate|windshield|rear glass|grille|roof skin|nose panel|cowl)$/;

export function findPlace(scene: SpokenScene, spot: Spot): PositionName | null {
  const { component, zone, part } = spot;
  if (placeless.has(component) || (part?.part && bothEnds.has(part.part)) || (spot.partName && bothEnds.has(spot.partName))) return null;
  const said = placeOfFarPart(scene, spot, saidPlace(scene, spot));
  const fixed = partsOf(part?.position ?? null);
  let lengthwise = fixed.lengthwise ?? said.lengthwise;
  const side = fixed.side ?? said.side;
  switch (component) {
    case "suspension":
    case "brakes":
      return lengthwise ?? carried(scene, said.first, zone) ?? (zone === "front" || zone === "rear" ? zone : null);
    // An axle with a drive is the rear one unless the words say otherwise.
    case "final-drive":
      return lengthwise === "front" ? "front" : "rear";
    case "belts":
    case "seats":
      if (lengthwise === null && (said.upHere || (side !== null && side !== "both"))) lengthwise = "front";
      return component === "belts" ? lengthwise : joined(lengthwise, side);
    case "bumper":
      return lengthwise ?? (zone === "front" || zone === "rear" ? zone : null);
    default:
      return fromOutside(spot, lengthwise, side, said.one);
  }
}

/** Where a part of the outside is that the words place only in part: the camera's side or end fills in. */
function fromOutside(spot: Spot, said: Lengthwise | null, saidSide: Side | null, one: boolean): PositionName | null {
  const { component, zone, part } = spot;
  let lengthwise = said;
  const rolling = component === "wheel" || component === "tire";
  const placed = seenOutside.has(component) && (component !== "paint" || part?.component === "body");
  if (lengthwise === null && placed && (zone === "front" || zone === "rear") && !(part?.plural && rolling && !one)) lengthwise = zone;
  if (part && oneOfAKind.test(part.part ?? "")) return lengthwise;
  // Wheels and tires are told for all four, unless the words say which; only their condition is told wheel by wheel.
  if (rolling && said === null && saidSide === null && (spot.attribute !== "condition" || (part?.plural && !one))) return "all";
  if (rolling && part === null && saidSide === null) return lengthwise;
  if (component === "glass" && part?.part === null && said === null) return null;
  let side = saidSide;
  if (side === null && lengthwise !== "all" && placed && part?.part !== "headlight")
    side = zone === "driver-side" ? "driver" : zone === "passenger-side" ? "passenger" : null;
  return joined(lengthwise, side);
}

interface SaidPlace {
  readonly first: number;
  readonly lengthwise: Lengthwise | null;
  readonly side: Side | null;
  readonly upHere: boolean;
  /** "this one's got", "on this side": some of several are meant. */
  readonly one: boolean;
}

/** The words of place nearest to the quality and its part, within the sentence and not past another part. */
function saidPlace(scene: SpokenScene, spot: Spot): SaidPlace {
  const { part, component, zone } = spot;
  const { tokens, sentences } = scene.speech;
  const first = part && part.first < spot.first && spot.first - part.first < reach ? part.first : spot.first;
  const end = part && part.end > spot.end && part.end - spot.end < reach ? part.end : spot.end;
  const sentence = sentences[scene.frames.at(spot.first).sentence];
  let from = Math.max(first - reach, sentence?.first ?? 0);
  let to = Math.min(end + reach, placeEnd(scene, end, sentence?.end ?? tokens.length, component));
  if (component !== "brakes" && component !== "suspension" && component !== "wheel" && component !== "tire") {
    const next = scene.parts[scene.partIndexFrom(end)];
    if (next && next.component !== "vehicle" && next.first < to) to = beforePlaceOf(scene, end, next);
    const before = scene.parts[scene.partIndexFrom(first) - 1];
    if (before && before.component !== "vehicle" && before.end > from) from = before.end;
  }
  // The words of the quality's own clause come before its neighbours'.
  const own = [Math.max(from, scene.frames.at(first).first), Math.min(to, scene.frames.at(end - 1).end)] as const;
  const clauseFirst = <Place>(find: (start: number, stop: number) => Nearest<Place> | null): Place | null =>
    (find(...own) ?? find(from, to))?.place ?? null;
  const isAnother = (token: number) => /^(?:one|one's|ones)$/.test(tokens[token]?.word ?? "");
  const offset = Math.max(0, from - 1);
  const words = tokens.slice(offset, to + 4).map((token) => token.word);
  return {
    first,
    lengthwise: clauseFirst((start, stop) => nearest(first, end, start, stop, isAnother, (token) => lengthwiseAt(words, token - offset))),
    side: clauseFirst((start, stop) => nearest(first, end, start, stop, isAnother, (token) => sideAt(words, token - offset, scene, zone))),
    upHere: saysUpHere(words),
    one: words.some((word) => /^(?:one|one's|side)$/.test(word)),
  };
}

/** Where nothing near the quality places it, the words about its part do: "this driver cab corner … yeah that's been filled". */
function placeOfFarPart(scene: SpokenScene, spot: Spot, said: SaidPlace): SaidPlace {
  const { part } = spot;
  if (!part || said.lengthwise !== null || said.side !== null || Math.abs(spot.first - part.first) < reach) return said;
  const there = saidPlace(scene, { ...spot, first: part.first, end: part.end });
  return { ...said, lengthwise: there.lengthwise, side: there.side };
}

/** Where the words that lead up to the next part begin: "a crack | on the driver's side squab". */
function beforePlaceOf(scene: SpokenScene, end: number, next: ScenePart): number {
  const { tokens } = scene.speech;
  for (let token = next.first - 1; token >= end; token--) {
    if (/^(?:on|in|at|and|the|this|but|so|up|over|under|your|my|by|behind)$/.test(tokens[token]!.word)) return token;
  }
  return end;
}

/** From inside the cabin, "up here" is the front row. */
function saysUpHere(words: readonly string[]): boolean {
  return words.some((word, at) => word === "up" && /^(?:here|front)$/.test(words[at + 1] ?? ""));
}

const runningGear: ReadonlySet<ComponentName> = new Set(["brakes", "suspension", "wheel", "tire", "vehicle"]);

/** "Rear diff": the word places another part than the running gear. */
function placesAnother(scene: SpokenScene, token: number): boolean {
  const index = scene.partIndexFrom(token);
  const part = [scene.parts[index - 1], scene.parts[index]].find((near) => near && near.first <= token + 1 && near.end > token);
  return part !== undefined && !runningGear.has(part.component);
}

/** Running gear is told end by end: the last end named holds until another is. */
function carried(scene: SpokenScene, first: number, zone: ZoneName): Lengthwise | null {
  // Inside, and on the road, "the fronts" are seats and not axles.
  if (!/^(?:underside|front|rear|driver-side|passenger-side)$/.test(zone)) return null;
  const { tokens } = scene.speech;
  const from = Math.max(0, first - carriedWords);
  const words = tokens.slice(from, first + 3).map((token) => token.word);
  for (let at = first - from - 1; at >= 0; at--) {
    if (scene.zoneAt(from + at) !== zone) return null;
    const place = lengthwiseAt(words, at);
    if (place && place !== "all" && !placesAnother(scene, from + at)) return place;
  }
  return null;
}
