import type { Claim, ClaimValue, ComponentName, PositionName, Repair, UnitName } from "../../../../shared-types/index.ts";
import type { NumberKind, Speech, SpokenNumber } from "../../model.ts";
import { spansOfTokens } from "../../model.ts";
import type { Frames } from "../framing/index.ts";
import type { PartMention } from "../lexicon/find-mentions.ts";
import { resolvePosition } from "../positions/resolve-position.ts";
import { type WheelSide, wheelSideOf } from "../positions/wheel-side.ts";
import {
  type Candidate,
  candidateIn,
  candidatesFor,
  continued,
  countAdjective,
  type EarlierMeasure,
  leastScore,
  repeated,
} from "./choose-slot.ts";
import { circumstanceOf } from "./circumstance.ts";
import { partsOfCount } from "./count-parts.ts";
import { writtenMeaning } from "./spoken-form.ts";
import { type LeftTopic, type NumberSurroundings, phraseOf, type SpeechMap, surroundingsOf } from "./surroundings.ts";

export interface Measures {
  readonly claims: readonly Claim[];
  readonly repairs: readonly Repair[];
  /** Indexes of the numbers that became claims. */
  readonly used: ReadonlySet<number>;
}

/** Words of a speaker who puts a number right; the number before them is no claim. */
const takesBack =
  /^(?!and\b)(?:\S+ ){0,2}?(?:no(?= (?:i|i'm|it|it's|that's|sorry|wait|hang|hold|not|make|actually|ma'am|sir|the|a|you)\b|$)|sorry|wait|correction|rather|i mean|i'm lying|i beg your pardon|beg your pardon|pardon me|scratch that|strike that|make that|make it|hang on|hold on|let me|excuse me|count (?:them|with))(?: |$)/;

/** Numbers a speaker put right within a breath ("it's a 600, no I'm sorry it's a 650"), and the number that puts each right. */
function takenBack(speech: Speech, numbers: readonly SpokenNumber[]): Map<number, number> {
  const slips = new Map<number, number>();
  numbers.forEach((number, at) => {
    const next = numbers[at + 1];
    if (!next || next.first - number.end < 1 || next.first - number.end > 8) return;
    const between = phraseOf(speech.tokens, number.end, next.first);
    if (!takesBack.test(between) || /\b(?:and|but) (?!no\b)/.test(between)) return;
    const kinds = new Set(number.readings.map((reading) => reading.kind));
    const [said] = number.readings;
    const [meant] = next.readings;
    // Another order of size is another thing: "forty five pounds and no smoke, the four speed …".
    const apart =
      typeof said?.value === "number" && typeof meant?.value === "number" && (meant.value > said.value * 5 || said.value > meant.value * 5);
    if (!apart && next.readings.some((reading) => kinds.has(reading.kind))) slips.set(number.index, next.index);
  });
  return slips;
}

const asides: ReadonlySet<NumberKind> = new Set([
  "percent",
  "angle",
  "engine-speed",
  "road-speed",
  "fuel-economy",
  "duration",
  "clock-time",
  "telephone",
]);

/** Said in passing: most likely a percentage, a speed, a span of time. */
function isAside(number: SpokenNumber, words: string): boolean {
  // Hours on a meter are no span of time.
  if (number.readings[0]!.kind === "duration" && /\b(?:hour meter|engine hours|pto hours)\b/.test(words)) return false;
  return asides.has(number.readings[0]!.kind);
}

/** "The other three" points; it measures nothing. */
const otherOnes = /\bother$/;

/** Other people's vehicles and other builds, where the number itself stands in the phrase; tested on the words before, "#", and the words after. */
const othersVehicles: readonly RegExp[] = [
  /\bmy (?:\w+ )?(?:neighbou?r|buddy|friend|mate|brother|cousin|uncle|dad|father|boss|wife|husband|son|nephew)(?:'s)?(?: in law)?(?: has| had| owns| bought| drives|'s)? (?:got |had )?(?:a|an|one|the)\b[^.]*#/,
  /\bi (?:had|used to have|once had|owned) (?:a|an|one)\b[^.]*#(?:[^.]*\bin (?:my|an?) (?:old|other|last|first)\b)/,
  /#[^.]{0,30}\bthis (?:one|car|truck) (?:has less|doesn't|does not|isn't|ain't|hasn't)\b/,
  /\bthey (?:only )?(?:made|built|sold)\b[^.]*\b(?:of these|of them)\b[^.]*#/,
];

/** Units and things no claim carries. */
const unclaimed = /^(?:amps?|watts?|lumens?|cranking|cold cranking|channels?|megabytes?|songs|people|bucks off|pages?)\b/;

interface LastClaim extends EarlierMeasure {
  readonly first: number;
  readonly position: PositionName | null;
  readonly component: ComponentName;
  readonly part: string | null;
}

/** Reads every number that says something checkable about this vehicle. Works through the speech once, in order. */
export function findMeasures(map: SpeechMap, numbers: readonly SpokenNumber[], frames: Frames): Measures {
  const { speech } = map;
  const wheel = wheelSideOf(speech);
  const claims: Claim[] = [];
  const repairs: Repair[] = [];
  const used = new Set<number>();
  const slips = takenBack(speech, numbers);
  const corrections = new Map<number, Candidate>();
  const parts = new Map<number, Candidate>();
  const isSlip = (number: SpokenNumber): boolean => slips.has(number.index) || frames.at(number.first).corrected;
  const earlier: LastClaim[] = [];
  const byValue = new Map<ClaimValue, LastClaim[]>();

  numbers.forEach((number, order) => {
    if (number.readings.length === 0) return;
    if (isAside(number, phraseOf(speech.tokens, number.first - 8, number.end + 3))) return;
    const frame = frames.at(number.first);
    const recent = earlier.slice(-recentMeasures);
    const around = surroundingsOf(map, number, recent.map(leftBy));
    const chosen =
      putRight(corrections.get(number.index), around) ??
      bestCandidate(speech, around, recent, (value) => byValue.get(value) ?? []) ??
      parts.get(number.index) ??
      null;
    if (unclaimed.test(around.after) || othersVehicles.some((others) => others.test(`${around.before} # ${around.after}`))) return;
    if (otherOnes.test(around.before) && number.readings[0]!.kind === "integer" && number.end - number.first === 1) return;
    if (chosen && slips.has(number.index)) corrections.set(slips.get(number.index)!, chosen);
    const best = withRim(chosen, earlier.slice(-rimWithinMeasures));
    if (!best || best.score < leastScore) return;
    const repair = best.reading.repaired ? repairOf(speech, number, best, repairs.length) : null;
    // A broken number about another vehicle is still read for whoever follows the words.
    if (repair) repairs.push(repair);
    if (frame.subject !== "this-vehicle" || isSlip(number)) return;
    const context: BuildContext = {
      map,
      around,
      frame,
      wheel,
      repair,
      earlier: recent,
      notBefore: endOfMeasureBefore(map, numbers, order, (earlierNumber) => used.has(earlierNumber.index), isSlip),
      notAfter: numbers[order + 1]?.first ?? speech.tokens.length,
    };
    for (const claim of buildClaims(context, best, claims.length)) claims.push(claim);
    used.add(number.index);
    for (const [index, part] of partsOfCount(speech, numbers, order, best)) parts.set(index, part);
    const made = claims.at(-1)!;
    const read: LastClaim = {
      candidate: best,
      first: number.first,
      end: number.end,
      value: made.value,
      unit: made.unit,
      position: made.position,
      component: made.component,
      part: made.part,
    };
    earlier.push(read);
    byValue.set(read.value, [...(byValue.get(read.value) ?? []).slice(-repeatsKept), read]);
  });
  return { claims, repairs, used };
}

/** Measures and tokens back to a rim that completes a tire's width and aspect ("on eighteens with 275 35s"). */
const rimWithinTokens = 60;
const rimWithinMeasures = 8;

/** A width and aspect whose rim was said just before is a whole size. */
function withRim(candidate: Candidate | null, earlier: readonly LastClaim[]): Candidate | null {
  const [width, aspect] = candidate?.reading.kind === "tire-partial" ? (candidate.reading.parts ?? []) : [];
  if (!candidate || width === undefined || aspect === undefined) return candidate;
  const rim = earlier.findLast(
    (measure) => measure.component === "wheel" && measure.candidate.slot.attribute === "diameter" && measure.unit === "in",
  );
  if (!rim || candidate.topic === null || candidate.topic.mention.first - rim.end > rimWithinTokens) return null;
  return { ...candidate, value: `${width}/${aspect}R${rim.value}` };
}

/** A number that puts a slip right fills the slip's slot, whatever stands around it. */
function putRight(slip: Candidate | undefined, around: NumberSurroundings): Candidate | null {
  return slip ? candidateIn(slip, around) : null;
}

/** End of the last number before this one that is more than a plain small word or was itself a claim. */
function endOfMeasureBefore(
  map: SpeechMap,
  numbers: readonly SpokenNumber[],
  order: number,
  isUsed: (number: SpokenNumber) => boolean,
  isSlip: (number: SpokenNumber) => boolean,
): number {
  for (let at = order - 1; at >= Math.max(0, order - 4); at--) {
    const number = numbers[at]!;
    if (isSlip(number)) continue;
    if (isUsed(number) || map.numberAt[number.first]) return number.end;
  }
  return 0;
}

/** Measures kept of each value: the latest of a few kinds is enough to name one again. */
const repeatsKept = 7;

/** Measures back that a number may continue. */
const recentMeasures = 4;

function bestCandidate(
  speech: Speech,
  around: NumberSurroundings,
  recent: readonly LastClaim[],
  saidBefore: (value: ClaimValue) => readonly LastClaim[],
): Candidate | null {
  let [best] = candidatesFor(speech, around);
  for (const measure of recent.toReversed()) {
    const carried = continued(measure, around);
    if (carried && (!best || carried.score > best.score)) best = carried;
  }
  const again = repeated(saidBefore, around);
  return again && (!best || again.score > best.score) ? again : (best ?? null);
}

/** What the talk was about when an earlier measure was read, standing where its number stood. */
function leftBy({ component, part, position, first, end }: LastClaim): LeftTopic {
  return { mention: { first, end, component, part, position } };
}

interface BuildContext {
  readonly map: SpeechMap;
  readonly around: NumberSurroundings;
  readonly frame: ReturnType<Frames["at"]>;
  readonly wheel: WheelSide;
  readonly repair: Repair | null;
  /** Most recent last. */
  readonly earlier: readonly LastClaim[];
  readonly notBefore: number;
  readonly notAfter: number;
}

interface Described {
  readonly component: ComponentName;
  readonly part: string | null;
  readonly mention: PartMention | null;
}

/** The last measure of the same slot, which this one continues. */
function sameSlotBefore({ earlier, around }: BuildContext, { slot }: Candidate): LastClaim | undefined {
  return earlier.findLast((measure) => measure.candidate.slot === slot && around.number.first - measure.end < 45);
}

/** The side the talk has been at, where the last measure of the component named one ("tires this side … nine on the front"). */
function sideLeft({ earlier, around }: BuildContext, component: ComponentName): PositionName | null {
  const last = earlier.findLast((measure) => measure.component === component && around.number.first - measure.end < 30);
  return last?.position === "driver" || last?.position === "passenger" ? last.position : null;
}

/** Work on the paint alone; a panel that was skinned or let in is body work, whoever painted it after. */
const paintWork = /^(?!.*\b(?:skin|skinned|welded|patch|replaced|let in)\b).*\b(?:painted|repainted|resprayed|sprayed)\b/;

/** Component and part: the slot's own, or what the talk is about; the spare's tire and wheel are the spare's. */
function aboutWhat(context: BuildContext, candidate: Candidate): Described {
  const { around } = context;
  const { slot } = candidate;
  const last = sameSlotBefore(context, candidate);
  const carries = last !== undefined && candidate.topic === null;
  const mention = candidate.topic?.mention ?? null;
  let component: ComponentName = slot.component === "topic" ? mention!.component : slot.component;
  let part = slot.part;
  if (slot.component === "topic" && slot.attribute !== "year") part = mention?.part ?? slot.part;
  // A TR rim is named like its tire: "the back of the wheel says 165 TR 390".
  if (slot.name === "tire size" && /TR/.test(String(candidate.value)) && mention?.component !== "tire") component = "wheel";
  if (
    component === "body" &&
    slot.attribute === "date" &&
    paintWork.test(phraseOf(context.map.speech.tokens, around.number.first - 30, around.number.end + 8))
  )
    component = "paint";
  if ((component === "tire" || component === "wheel") && isSpare(around)) {
    component = "spare";
    part = slot.component === "wheel" ? "wheel" : null;
  } else if (carries && last.component === "spare") component = "spare";
  if (component === "paint" && slot.attribute === "thickness") {
    const panel =
      around.topics.find(({ mention: named, reach, cost }) => named.component === "body" && (reach !== "recent" || cost < 0.5))?.mention ??
      null;
    return { component, part: panel?.part ?? null, mention: panel };
  }
  if (slot.name === "gears" && /^speed (?:transfer|rear|axle|blower)/.test(around.after)) part = "transfer case";
  // A tip, a header tube and the pipe between them have diameters of their own.
  if (component === "exhaust" && slot.attribute === "diameter") part = mention?.part ?? slot.part;
  if (slot.name.startsWith("brake rotor") && mention?.part) part = mention.part === "drum" ? "drum" : slot.part;
  return { component, part, mention };
}

/** True where the nearest tire, wheel or spare the talk turned to is the spare. */
function isSpare(around: NumberSurroundings): boolean {
  const rolling = around.topics.filter(
    ({ mention }) => mention.component === "spare" || mention.component === "tire" || mention.component === "wheel",
  );
  const spare = rolling.find(({ mention }) => mention.component === "spare");
  if (!spare) return false;
  // Named after the number in another clause it is the next thing said, not this one.
  if (spare.mention.first > around.number.first && spare.reach !== "clause") return false;
  const road = rolling.find(({ mention }) => mention.component !== "spare");
  if (spare.reach === "recent" && !whereSparesLie.has(around.zone)) return false;
  // The spare has a tire and a wheel of its own: they take the talk away from it only where they are plainly nearer.
  return !road || spare.cost < road.cost + 0.15;
}

const whereSparesLie: ReadonlySet<string> = new Set(["cargo", "rear", "underside", "front", "engine-bay", "opening"]);

function buildClaims(context: BuildContext, candidate: Candidate, made: number): Claim[] {
  const { slot, reading } = candidate;
  const { around } = context;
  if (reading.kind === "dimensions" && slot.component === "wheel" && reading.parts) {
    const [first, second] = reading.parts;
    if (first !== undefined && second !== undefined) {
      const diameter = Math.max(first, second);
      const width = Math.min(first, second);
      return [claimOf(context, candidate, made, diameter, "in", "diameter"), claimOf(context, candidate, made + 1, width, "in", "width")];
    }
  }
  const unit = slot.unit === "said" ? unitSaid(context, candidate) : slot.unit;
  const claim = claimOf(context, candidate, made, candidate.value, unit, slot.attribute);
  // "185 section 80 profile on the fifteen inch rim" says the rim as well.
  const rim =
    reading.kind === "tire-size" && / on (?:a|the) /.test(around.said) && /^(?:inch )?(?:rims?|wheels?)\b/.test(around.after)
      ? /(\d\d)$/.exec(String(candidate.value))?.[1]
      : undefined;
  if (!rim) return [claim];
  const asWheel: Candidate = { ...candidate, slot: { ...slot, component: "wheel", attribute: "diameter" } };
  return [claim, claimOf(context, asWheel, made + 1, Number(rim), "in", "diameter")];
}

/** The unit as said; money without one is in the narrator's currency, and a number that continues another takes over its unit. */
function unitSaid(context: BuildContext, candidate: Candidate): UnitName | null {
  const { reading, slot } = candidate;
  if (reading.unit) return reading.unit;
  const last =
    sameSlotBefore(context, candidate) ??
    context.earlier.findLast(
      ({ candidate: before }) =>
        before.slot === slot || (before.slot.attribute === slot.attribute && before.slot.component === slot.component),
    );
  if (last) return last.unit;
  const { british } = context.around;
  if (slot.attribute === "mileage") return "mi";
  if (slot.attribute === "price") return british ? "GBP" : "USD";
  if (slot.attribute === "depth") return british ? "mm" : "32nds";
  return null;
}

function claimOf(
  context: BuildContext,
  candidate: Candidate,
  made: number,
  value: ClaimValue,
  unit: UnitName | null,
  attribute: Claim["attribute"],
): Claim {
  const { map, around, frame, wheel, repair } = context;
  const { speech } = map;
  const { number } = around;
  const { slot } = candidate;
  const { component, part, mention } = aboutWhat(context, candidate);
  const last = sameSlotBefore(context, candidate);
  const position = resolvePosition(speech, {
    component,
    mention,
    pairedBySide:
      (component === "tire" || component === "wheel") && (attribute === "size" || attribute === "width" || attribute === "diameter"),
    fixed: slot.position ?? null,
    number,
    clause: around.clause,
    sentence: around.sentence,
    notBefore: context.notBefore,
    notAfter: context.notAfter,
    zone: around.zone,
    wheel,
    carried: component === "paint" && mention?.component === "body" ? null : (last?.position ?? sideLeft(context, component)),
  });
  const words = quoteRange(context, candidate);
  const spans = spansOfTokens(speech.tokens, words.first, words.end);
  const tokens = speech.tokens.slice(number.first, number.end);
  const nearFirst = Math.max(around.clause.first, context.notBefore, mention && mention.end <= number.first ? mention.first - 1 : 0);
  const nearEnd = Math.min(
    clauseBound.has(attribute) ? around.clause.end : around.sentence.end,
    context.notAfter,
    number.end + (attribute === "price" ? 2 : 10),
  );
  const near = phraseOf(speech.tokens, nearFirst, nearEnd);
  const adjective =
    attribute === "count" && mention && mention.first >= number.end && mention.first - number.end <= 2 && setsApart.has(slot.name)
      ? countAdjective(speech, number.end, mention.first)
      : null;
  let circumstance = slot.circumstance ?? circumstanceOf(attribute, component, near) ?? adjective;
  // Every cylinder has its own figure, and nobody says which is which the same way twice.
  if (slot.name === "compression") circumstance = `cylinder, reading ${made + 1}`;
  return {
    id: `m${made + 1}`,
    captions: [...new Set(spans.map((span) => span.caption))],
    start: speech.tokens[words.first]!.at,
    end: endOf(speech, words.end - 1),
    quote: spans.map((span) => speech.captions[span.caption]!.text.slice(span.start, span.end)).join(" "),
    spans,
    component,
    part,
    position: position ?? null,
    attribute,
    value,
    unit,
    stance: frame.stance,
    // "One owner from new" counts the owners of today.
    time: part === "owner" ? "today" : frame.time,
    circumstance,
    zone: around.zone,
    rule: tokens.length > 0 ? slot.name : "",
    repairs: repair ? [repair.id] : [],
  };
}

/** Seconds at which a token has been spoken: the next token's start within its caption, else the caption's end. */
function endOf(speech: Speech, token: number): number {
  const here = speech.tokens[token]!;
  const next = speech.tokens[token + 1];
  const caption = speech.captions[here.caption]!;
  return next && next.caption === here.caption ? Math.max(next.at, here.at) : Math.max(caption.end, here.at);
}

/** Attributes whose circumstance is said in the clause itself; others may add it after ("twelve point six, and that's just sitting"). */
const clauseBound: ReadonlySet<string> = new Set(["size", "diameter", "width", "price"]);

/** Counts in which an adjective names other things ("two American owners"). */
const setsApart: ReadonlySet<string> = new Set(["counted part", "owners", "keys"]);

/** Words of a quote before and after the number that show what it is about; never another caption's, unless the number itself runs over. */
const quoteWordsBefore = 5;
const quoteWordsAfter = 4;

function quoteRange({ map, around, notBefore, notAfter }: BuildContext, candidate: Candidate): { first: number; end: number } {
  const { tokens } = map.speech;
  const { number, clause } = around;
  let first = Math.max(clause.first, notBefore, number.first - quoteWordsBefore);
  let end = Math.min(clause.end, notAfter, number.end + quoteWordsAfter);
  const mention = candidate.topic?.mention;
  if (mention && mention.first < first && mention.first >= Math.max(around.sentence.first, notBefore) && number.first - mention.first <= 9)
    first = mention.first;
  if (mention && mention.end > end && mention.end <= Math.min(around.sentence.end, notAfter) && mention.end - number.end <= 8)
    end = mention.end;
  const firstCaption = tokens[number.first]!.caption;
  const lastCaption = tokens[number.end - 1]!.caption;
  while (first < number.first && tokens[first]!.caption < firstCaption) first++;
  while (end > number.end && tokens[end - 1]!.caption > lastCaption) end--;
  return { first: Math.min(first, number.first), end: Math.max(end, number.end) };
}

function repairOf(speech: Speech, number: SpokenNumber, candidate: Candidate, made: number): Repair {
  const spans = spansOfTokens(speech.tokens, number.first, number.end);
  const [first, second] = number.readings;
  return {
    id: `q${made + 1}`,
    caption: spans[0]!.caption,
    spans,
    heard: spans.map((span) => speech.captions[span.caption]!.text.slice(span.start, span.end)).join(" "),
    meant: writtenMeaning(candidate, candidate.value),
    rule: candidate.reading.rule,
    sure:
      !second || candidate.reading === first
        ? (first?.likelihood ?? 0) - (second?.likelihood ?? 0) > 0.05 || candidate.score > 0.9
        : candidate.score > 0.9,
  };
}
