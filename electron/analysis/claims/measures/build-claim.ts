import type { Claim, ClaimValue, ComponentName, PositionName, Repair, UnitName } from "../../../../shared-types/index.ts";
import type { Speech, SpokenNumber } from "../../model.ts";
import { spansOfTokens } from "../../model.ts";
import type { Frames } from "../framing/index.ts";
import type { PartMention } from "../lexicon/find-mentions.ts";
import { discsBeforeDrums } from "../positions/discs-before-drums.ts";
import { resolvePosition } from "../positions/resolve-position.ts";
import type { WheelSide } from "../positions/wheel-side.ts";
import type { Candidate } from "./candidate.ts";
import type { EarlierMeasure } from "./carry-over.ts";
import { circumstanceOf } from "./circumstance.ts";
import { countAdjective } from "./counted-parts.ts";
import { brakeJustRead, isBareTread, panelUnderMeter } from "./read-before.ts";
import { writtenMeaning } from "./spoken-form.ts";
import { stanceOf } from "./stance.ts";
import { type NumberSurroundings, phraseOf, type SpeechMap } from "./surroundings.ts";
import { tireInHand } from "./tire-in-hand.ts";

/** A measure with what its claim came to. */
export interface ReadMeasure extends EarlierMeasure {
  readonly first: number;
  readonly position: PositionName | null;
  readonly component: ComponentName;
  readonly part: string | null;
  readonly circumstance: string | null;
}

export interface BuildContext {
  readonly map: SpeechMap;
  readonly around: NumberSurroundings;
  readonly frame: ReturnType<Frames["at"]>;
  readonly wheel: WheelSide;
  readonly repair: Repair | null;
  /** Most recent last. */
  readonly earlier: readonly ReadMeasure[];
  /** The first tread of the whole walk. */
  readonly firstTread: ReadMeasure | null;
  readonly numberBefore: SpokenNumber | undefined;
  readonly numberAfter: SpokenNumber | undefined;
  readonly notBefore: number;
  readonly notAfter: number;
}

interface Described {
  readonly component: ComponentName;
  readonly part: string | null;
  readonly mention: PartMention | null;
}

/** The last measure of the same slot, which this one continues. */
function sameSlotBefore({ earlier, around }: BuildContext, { slot }: Candidate): ReadMeasure | undefined {
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
  } else if (carries && last.component === "spare" && around.zone === "cargo") component = "spare";
  if (component === "paint" && slot.attribute === "thickness") {
    const panel =
      around.topics.find(({ mention: named, reach, cost }) => named.component === "body" && (reach !== "recent" || cost < 0.5))?.mention ??
      panelUnderMeter(context);
    return { component, part: panel?.part ?? null, mention: panel };
  }
  // What drives the camshaft is one job, by whichever name: "the timing belt and water pump were changed at …", "the belt was done at …".
  if (component === "engine" && part === "timing chain" && slot.attribute === "mileage") part = "timing belt";
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
  // "The spare is the skinny one, 155 80 13 on a steel wheel": where spares lie, one tire and one wheel are the spare's own.
  if (whereSparesLie.has(around.zone) && spare.mention.end <= around.number.first && spare.cost < 0.6 && !roadSet.test(around.near))
    return true;
  if (spare.reach === "recent" && !whereSparesLie.has(around.zone)) return false;
  // The spare has a tire and a wheel of its own: they take the talk away from it only where they are plainly nearer.
  return !road || spare.cost < road.cost + 0.15;
}

/** The wheels it stands on, named beside a figure of the spare's. */
const roadSet =
  /\b(?:road (?:wheels?|tires?)|(?:all )?four (?:wheels|tires)|the other four|on the (?:car|truck|ground)|fronts|rears|wheels|tires)\b/;

const whereSparesLie: ReadonlySet<string> = new Set(["cargo", "rear", "underside"]);

export function buildClaims(context: BuildContext, candidate: Candidate, made: number): Claim[] {
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
  // "Sixty five to seventy five thousand": each end is a claim of its own.
  if (reading.kind === "range" && reading.parts && slot.need.kinds?.includes("range")) {
    const unit = slot.unit === "said" ? unitSaid(context, candidate) : slot.unit;
    // "The book's at sixty five to seventy five": thousands, where nobody would ask so little.
    const scale = slot.attribute === "price" && reading.parts.every((end) => end < 400) ? 1000 : 1;
    return reading.parts.map((end, at) => ({
      ...claimOf(context, candidate, made + at, end * scale, unit, slot.attribute),
      circumstance: `${slot.circumstance ?? slot.name}, ${at === 0 ? "low" : "high"}`,
    }));
  }
  // "A drum, eleven inch by two and a quarter": across the shoes as well as across the drum.
  if (reading.kind === "dimensions" && slot.name === "drum diameter by width" && reading.parts?.[1] !== undefined) {
    const width = Math.min(reading.parts[0]!, reading.parts[1]);
    return [
      claimOf(context, candidate, made, candidate.value, "in", "diameter"),
      claimOf(context, candidate, made + 1, width, "in", "width"),
    ];
  }
  const unit = isBareTread(context, candidate) ? context.firstTread!.unit : slot.unit === "said" ? unitSaid(context, candidate) : slot.unit;
  const claim = claimOf(context, candidate, made, candidate.value, unit, slot.attribute);
  // "185 section 80 profile on the fifteen inch rim" says the rim as well.
  const rim =
    reading.kind === "tire-size" && / on (?:a|the) /.test(around.said) && /^(?:inch )?(?:rims?|wheels?)\b/.test(around.after)
      ? /(\d\d)$/.exec(String(candidate.value))?.[1]
      : undefined;
  const second = slot.also?.value(around.said);
  if (slot.also && second !== undefined)
    return [claim, { ...claimOf(context, candidate, made + 1, second, slot.also.unit, slot.also.attribute), circumstance: null }];
  if (!rim) return [claim];
  const asWheel: Candidate = { ...candidate, slot: { ...slot, component: "wheel", attribute: "diameter" } };
  return [claim, claimOf(context, asWheel, made + 1, Number(rim), "in", "diameter")];
}

/** The unit of a mileage said a word or two later: "148,312. And that is kilometers." */
const kilometersAfter =
  /^(?:on the (?:clock|odometer|dash|dial) )?(?:\. )?(?:and |but )?(?:that is |that's |those are |they're |it's |now )?(?:in )?(?:kilometers|kilometres|klicks|km\b|k m\b)/;

/** The unit as said; money without one is in the narrator's currency, and a number that continues another takes over its unit. */
function unitSaid(context: BuildContext, candidate: Candidate): UnitName | null {
  const { reading, slot } = candidate;
  if (reading.unit) return reading.unit;
  if (slot.attribute === "mileage" && kilometersAfter.test(context.around.after)) return "km";
  const sameThing = ({ candidate: before }: ReadMeasure) =>
    before.slot.attribute === slot.attribute && before.slot.component === slot.component;
  // "Five and a half mil, so that's seven thirty seconds. Backs have got six and a half": the gauge reads in what it read in first.
  if (slot.attribute === "depth" && context.firstTread && sameThing(context.firstTread)) return context.firstTread.unit;
  const first = slot.attribute === "depth" ? context.earlier.find(sameThing) : undefined;
  if (first) return first.unit;
  const last = sameSlotBefore(context, candidate) ?? context.earlier.findLast(sameThing);
  if (last && slot.attribute !== "mileage") return last.unit;
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
    part,
    pairedBySide:
      (component === "tire" || component === "wheel") && (attribute === "size" || attribute === "width" || attribute === "diameter"),
    readAtOneCorner: component === "tire" && (attribute === "depth" || attribute === "date"),
    fixed: slot.position ?? (component === "tire" && attribute === "date" ? tireInHand(context) : null),
    number,
    clause: around.clause,
    sentence: around.sentence,
    notBefore: context.notBefore,
    notAfter: context.notAfter,
    zone: around.zone,
    sideLast: sideLast(map, number.first),
    wheel,
    carried:
      component === "paint" && mention?.component === "body"
        ? null
        : ((component === "wheel" && onTheWheel.test(around.before)
            ? tireJustRead(context)
            : (dualJustRead(context, last) ?? last?.position)) ??
          (component === "brakes" ? brakeJustRead(context) : null) ??
          sideLeft(context, component)),
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
  const counted = around.topics.find(({ mention: named }) => named.component === component && named.first >= number.end)?.mention;
  const adjective =
    attribute === "count" && counted && counted.first - number.end <= 2 && setsApart.has(slot.name)
      ? countAdjective(speech, number.end, counted.first)
      : null;
  let circumstance = slot.circumstance ?? circumstanceOf(attribute, component, near) ?? adjective;
  // "… at 131,000 on the clock, call it 81 4": the same moment in other units.
  if (
    attribute === "mileage" &&
    circumstance === null &&
    last &&
    number.first - last.end <= 10 &&
    /\b(?:call it|so that's|that's|which is|or|in)(?: about)?$/.test(around.before)
  )
    circumstance = last.circumstance;
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
    // A pipe runs the length of the vehicle; where it is pointed at says nothing of another one.
    position:
      component === "exhaust" && part === "pipe"
        ? null
        : component === "brakes"
          ? discsBeforeDrums(part, position, phraseOf(speech.tokens, number.first - drumsWithinTokens, number.first))
          : position,
    attribute,
    value,
    unit,
    stance: stanceOf(speech, frame, number, context.numberBefore, context.numberAfter),
    // "One owner from new" counts the owners of today.
    time: part === "owner" ? "today" : frame.time,
    circumstance,
    zone: around.zone,
    rule: tokens.length > 0 ? slot.name : "",
    repairs: repair ? [repair.id] : [],
  };
}

/** "… a 235 75 15 on a seven": the wheel under the tire just read. */
const onTheWheel = /\b(?:on|by)(?: an?| the| # by)?$/;

function tireJustRead({ earlier, around }: BuildContext): PositionName | null {
  const before = earlier.at(-1);
  return before && around.number.first - before.end < 12 && (before.component === "tire" || before.component === "wheel")
    ? before.position
    : null;
}

/** "Inside dual, what's that say, 245 75 17. Six thirty seconds on it": of the tire whose size was read last, where that is another one. */
function dualJustRead({ earlier, around }: BuildContext, last: ReadMeasure | undefined): PositionName | null {
  const before = earlier.at(-1);
  if (last?.component !== "tire" || before?.component !== "tire" || before.candidate.slot.attribute !== "size") return null;
  const [was, is] = [last.position ?? "", before.position ?? ""];
  const otherEnd = (was.endsWith("front") && is.endsWith("rear")) || (was.endsWith("rear") && is.endsWith("front"));
  return otherEnd && around.number.first - before.end < 6 ? before.position : null;
}

/** The side of the vehicle the camera was at last, before a token. */
function sideLast({ zones, speech }: SpeechMap, token: number): "driver" | "passenger" | null {
  const zone = zones.findLast(({ zone: seen, start }) => start <= speech.tokens[token]!.at && seen.endsWith("-side"))?.zone;
  return zone === "driver-side" ? "driver" : zone === "passenger-side" ? "passenger" : null;
}

/** How far back drums may have been named for the other end. */
const drumsWithinTokens = 24;

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

export function repairOf(speech: Speech, number: SpokenNumber, candidate: Candidate, made: number): Repair {
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
