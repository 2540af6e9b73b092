import type { Claim, ClaimValue, Repair } from "../../../../shared-types/index.ts";
import type { Speech, SpokenNumber } from "../../model.ts";
import { type Frames, stretchAround } from "../framing/index.ts";
import { wheelSideOf } from "../positions/wheel-side.ts";
import { type BuildContext, buildClaims, type ReadMeasure, repairOf } from "./build-claim.ts";
import { type Candidate, leastScore } from "./candidate.ts";
import { candidateIn, continued, explained, repeated } from "./carry-over.ts";
import { likeliestCandidate } from "./choose-slot.ts";
import { partsOfCount } from "./count-parts.ts";
import { placedInTurn } from "./ends-in-turn.ts";
import { loneRepairs } from "./lone-repairs.ts";
import { keyOf, measuredBefore } from "./measured-before.ts";
import { claimsNothing, isAside, takenBack } from "./passed-over.ts";
import { isThirtySeconds } from "./spoken-form.ts";
import { type LeftTopic, type NumberSurroundings, phraseOf, type SpeechMap, surroundingsOf } from "./surroundings.ts";
import { addedUp, roundedTo, tapedAgain } from "./told-over.ts";

export interface Measures {
  readonly claims: readonly Claim[];
  readonly repairs: readonly Repair[];
  /** Indexes of the numbers that became claims. */
  readonly used: ReadonlySet<number>;
}

/** Reads every number that says something checkable about this vehicle. Works through the speech once, in order. */
export function findMeasures(map: SpeechMap, numbers: readonly SpokenNumber[], frames: Frames): Measures {
  const { speech } = map;
  const wheel = wheelSideOf(speech);
  const claims: Claim[] = [];
  const repairs: Repair[] = [];
  const used = new Set<number>();
  const repairedNumbers = new Set<number>();
  const slips = takenBack(speech, numbers);
  const corrections = new Map<number, Candidate>();
  const parts = new Map<number, Candidate>();
  const isSlip = (number: SpokenNumber): boolean => slips.has(number.index) || frames.at(number.first).corrected;
  const earlier: ReadMeasure[] = [];
  let firstTread: ReadMeasure | null = null;
  const byValue = new Map<ClaimValue, ReadMeasure[]>();
  const latest = new Map<string, ReadMeasure>();
  const roadRims = new Set<string>();

  numbers.forEach((number, order) => {
    if (number.readings.length === 0) return;
    if (isAside(number, phraseOf(speech.tokens, number.first - 8, number.end + 3))) return;
    const frame = frames.at(number.first);
    const recent = earlier.slice(-recentMeasures);
    const around = surroundingsOf(map, number, recent.map(leftBy), stretchAround(frames, number));
    const chosen =
      putRight(corrections.get(number.index), around) ??
      bestCandidate(speech, around, recent, (value) => byValue.get(value) ?? [], latest) ??
      parts.get(number.index) ??
      null;
    if (claimsNothing(number, around)) return;
    if (chosen && slips.has(number.index)) corrections.set(slips.get(number.index)!, chosen);
    const best = withRim(chosen, earlier.slice(-rimWithinMeasures), roadRims);
    if (!best || best.score < leastScore) return;
    const repair =
      best.reading.repaired || isThirtySeconds(best.reading, around.said) ? repairOf(speech, number, best, repairs.length) : null;
    // A broken number about another vehicle is still read for whoever follows the words.
    if (repair) {
      repairs.push(repair);
      repairedNumbers.add(number.index);
    }
    if (frame.subject !== "this-vehicle" || isSlip(number)) return;
    const context: BuildContext = {
      map,
      around,
      frame,
      wheel,
      repair,
      earlier: recent,
      firstTread,
      numberBefore: numbers[order - 1],
      numberAfter: numbers[order + 1],
      notBefore: endOfMeasureBefore(map, numbers, order, (earlierNumber) => used.has(earlierNumber.index), isSlip),
      notAfter: numbers[order + 1]?.first ?? speech.tokens.length,
    };
    for (const built of buildClaims(context, best, claims.length)) {
      const turns = placedInTurn(speech, around, earlier.at(-1), claims.at(-1), built);
      if (turns) claims[claims.length - 1] = turns[0];
      const claim = turns ? turns[1] : built;
      explainBefore(claims, claim);
      claims.push(claim);
      const rim = roadRimOf(claim);
      if (rim !== undefined) roadRims.add(rim);
    }
    used.add(number.index);
    for (const [index, part] of partsOfCount(speech, numbers, order, best)) parts.set(index, part);
    const made = claims.at(-1)!;
    const read: ReadMeasure = {
      candidate: best,
      first: number.first,
      end: number.end,
      value: made.value,
      unit: made.unit,
      position: made.position,
      component: made.component,
      part: made.part,
      circumstance: made.circumstance,
      zone: around.zone,
    };
    earlier.push(read);
    if (firstTread === null && read.candidate.slot.attribute === "depth" && read.component === "tire") firstTread = read;
    latest.set(keyOf(read), read);
    byValue.set(read.value, [...(byValue.get(read.value) ?? []).slice(-repeatsKept), read]);
  });
  const repaired = new Set(numbers.filter((number) => repairedNumbers.has(number.index)).map(({ first }) => first));
  repairs.push(...loneRepairs(speech, numbers, repaired, repairs.length));
  return { claims, repairs, used };
}

/** Seconds within which a count said again with an adjective explains the one before it. */
const explainsWithinSeconds = 6;

/** "It says two owner, that's two American owners": the first of the two counts the same owners. */
function explainBefore(claims: Claim[], claim: Claim): void {
  const before = claims.at(-1);
  if (!before || claim.circumstance === null || before.circumstance !== null || claim.attribute !== "count") return;
  if (before.rule !== claim.rule || before.value !== claim.value || before.part !== claim.part) return;
  if (claim.start - before.end > explainsWithinSeconds) return;
  claims[claims.length - 1] = { ...before, circumstance: claim.circumstance };
}

/** Measures and tokens back to a rim that completes a tire's width and aspect ("on eighteens with 275 35s"). */
const rimWithinTokens = 60;
const rimWithinMeasures = 8;

/**
 * A width and aspect whose rim was said just before is a whole size; long after ("so, that's her: two nine five sixties on the back") its rim
 * is the one that every road tire of the walk has.
 */
function withRim(candidate: Candidate | null, earlier: readonly ReadMeasure[], roadRims: ReadonlySet<string>): Candidate | null {
  const [width, aspect] = candidate?.reading.kind === "tire-partial" ? (candidate.reading.parts ?? []) : [];
  if (!candidate || width === undefined || aspect === undefined) return candidate;
  const rim = earlier.findLast(
    (measure) => measure.component === "wheel" && measure.candidate.slot.attribute === "diameter" && measure.unit === "in",
  );
  if (rim && candidate.topic !== null && candidate.topic.mention.first - rim.end <= rimWithinTokens)
    return { ...candidate, value: `${width}/${aspect}R${rim.value}` };
  const [only] = roadRims;
  return only !== undefined && roadRims.size === 1 ? { ...candidate, value: `${width}/${aspect}R${only}` } : null;
}

/** The rim in a road tire's size, or undefined. */
function roadRimOf({ component, attribute, value }: Claim): string | undefined {
  return component === "tire" && attribute === "size" ? /\d[RDB](\d\d(?:\.5)?)/.exec(String(value))?.[1] : undefined;
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
  recent: readonly ReadMeasure[],
  saidBefore: (value: ClaimValue) => readonly ReadMeasure[],
  latest: ReadonlyMap<string, ReadMeasure>,
): Candidate | null {
  let best = likeliestCandidate(speech, around);
  for (const measure of recent.toReversed()) {
    const carried = continued(measure, around);
    if (carried && (!best || carried.score > best.score)) best = carried;
  }
  const meant = explained(recent.at(-1), around);
  if (meant && (!best || meant.score > best.score)) best = meant;
  const told = measuredBefore(latest, around, (first, end) => phraseOf(speech.tokens, first, end));
  if (told && (!best || told.score > best.score)) best = told;
  for (const over of [addedUp(recent, around), tapedAgain(recent, around), roundedTo(recent, around)])
    if (over && (!best || over.score > best.score)) best = over;
  const again = repeated(saidBefore, around);
  return again && (!best || again.score > best.score) ? again : best;
}

/** What the talk was about when an earlier measure was read, standing where its number stood. */
function leftBy({ component, part, position, first, end }: ReadMeasure): LeftTopic {
  return { mention: { first, end, component, part, position } };
}
