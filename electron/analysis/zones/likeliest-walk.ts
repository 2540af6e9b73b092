import type { ZoneName } from "../../../shared-types/index.ts";
import type { Speech } from "../model.ts";
import type { Move } from "./find-moves.ts";
import { usualNext, walkCosts } from "./walk-model.ts";
import type { WeighedClause } from "./weigh-clauses.ts";
import { zoneCount, zoneIndex, zoneNames } from "./zone-order.ts";

/**
 * A walk so far. What a further step costs depends on where it has been, so the state is the zone and the set of zones seen; of each state
 * only the best walk is kept, and of all states the best few.
 */
interface Walk {
  readonly score: number;
  readonly zone: number;
  /** Bit per zone seen. */
  readonly seen: number;
  /** The exterior side seen last, by zone index, or -1. */
  readonly lastSide: number;
  readonly before: Walk | null;
}

/** Walks kept after each clause. Far more than a real recording needs: ties are rare beyond ten. */
const keptWalks = 32;
/** Score behind the leading walk at which a walk is given up: more than a zone's whole evidence in a minute of talk. */
const hopelessBehind = 18;

const driver = zoneIndex["driver-side"];
const passenger = zoneIndex["passenger-side"];
const opening = zoneIndex.opening;
const closing = zoneIndex.closing;

// The model's tables by zone index: the loop below asks for them millions of times in a long recording.
const unsaidLeave = zoneNames.map((zone) => walkCosts.unsaidLeave[zone] ?? 0);
const unsaidEntry = zoneNames.map((zone) => walkCosts.unsaidEntry[zone] ?? 0);
const revisitCosts: Readonly<Partial<Record<ZoneName | "other", number>>> = walkCosts.revisit;
const revisit = zoneNames.map((zone) => revisitCosts[zone] ?? walkCosts.revisit.other);
const usual = zoneNames.flatMap((from) => zoneNames.map((to) => usualNext[from]?.[to] ?? 0));
const mostUsual = Math.max(0, ...usual);

/** The zone of each clause along the likeliest walk (Viterbi over zone and zones seen). */
export function likeliestWalk(speech: Speech, clauses: readonly WeighedClause[]): ZoneName[] {
  let walks: Walk[] = [];
  let leaving: { zone: number; clauses: number } | null = null;
  for (const [position, clause] of clauses.entries()) {
    const left = clause.moves.find((move) => move.leaves !== null)?.leaves;
    if (left) leaving = { zone: zoneIndex[left], clauses: walkCosts.stayedAfterLeavingClauses };
    else if (clause.moves.some((move) => move.zone !== null && zoneIndexOf(move) === leaving?.zone)) leaving = null;
    else if (leaving) leaving = leaving.clauses > 1 ? { zone: leaving.zone, clauses: leaving.clauses - 1 } : null;
    const share = shareOfRecording(speech, clause);
    const greeting = share < walkCosts.openingShare ? walkCosts.openingEachClause : 0;
    const staying = zoneNames.map(
      (_, zone) =>
        (zone === opening ? greeting : 0) + (clause.evidence[zone] ?? 0) - (leaving?.zone === zone ? walkCosts.stayedAfterLeaving : 0),
    );
    walks = position === 0 ? firstWalks(clause, staying) : nextWalks(walks, clause, staying, share);
  }
  const [best] = walks
    .map((walk) => ({ ...walk, score: walk.score + (walk.zone === closing ? walkCosts.endsInClosing : 0) }))
    .toSorted(byScore);
  const zones: ZoneName[] = [];
  for (let walk: Walk | null = best ?? null; walk; walk = walk.before) zones.push(zoneNames[walk.zone] ?? "opening");
  return zones.reverse();
}

const zoneIndexOf = (move: Move) => (move.zone === null || move.zone === "other-side" ? -1 : zoneIndex[move.zone]);

function shareOfRecording(speech: Speech, clause: WeighedClause): number {
  return speech.duration > 0 ? (speech.tokens[clause.first]?.at ?? 0) / speech.duration : 0;
}

/** A recording may start anywhere; without a word on where, it starts with the opening. */
function firstWalks(clause: WeighedClause, staying: readonly number[]): Walk[] {
  return zoneNames
    .map((_, zone): Walk => {
      const moved = entryStrength(clause.moves, zone, null, -1);
      const score = (staying[zone] ?? 0) + moved - (zone === opening ? 0 : walkCosts.startsElsewhere) - (zone === closing ? 30 : 0);
      return { score, zone, seen: 1 << zone, lastSide: isSide(zone) ? zone : -1, before: null };
    })
    .toSorted((a, b) => b.score - a.score);
}

function nextWalks(walks: readonly Walk[], clause: WeighedClause, staying: readonly number[], share: number): Walk[] {
  const leader = walks.reduce((best, walk) => Math.max(best, walk.score + (staying[walk.zone] ?? 0)), Number.NEGATIVE_INFINITY);
  const hopeless = leader - hopelessBehind;
  const best = new Map<number, Walk>();
  const away = clause.moves.some((move) => move.zone === null);
  const moving = clause.moves.length > 0;
  // Without words that move the camera, a step gains at most a usual one's bonus less this: most are hopeless before they are weighed.
  const leastCost = away ? Math.min(walkCosts.change[clause.break], walkCosts.changeAfterComeAlong) : walkCosts.change[clause.break];
  for (const walk of walks) {
    for (let zone = 0; zone < zoneCount; zone += 1) {
      const stay = staying[zone] ?? 0;
      if (!moving && walk.score + stay + (zone === walk.zone ? 0 : mostUsual - leastCost) < hopeless) continue;
      // Words that move the camera into a zone speak for it also when it is there already: what was announced is now done.
      const strength = moving ? entryStrength(clause.moves, zone, walk.zone, walk.lastSide) : 0;
      const moved = zone === walk.zone ? strength * walkCosts.movedAgainShare : strength;
      const gain = zone === walk.zone ? 0 : changeGain(walk, zone, clause, moved > 0, away, share);
      const score = walk.score + gain + moved + stay;
      // A walk this far behind never catches up, for one clause cannot say so much.
      if (score < hopeless) continue;
      const seen = walk.seen | (1 << zone);
      const lastSide = isSide(zone) ? zone : walk.lastSide;
      const key = (seen * 16 + zone) * 4 + (lastSide < 0 ? 0 : lastSide === driver ? 1 : 2);
      const other = best.get(key);
      if (!other || score > other.score) best.set(key, { score, zone, seen, lastSide, before: walk });
    }
  }
  return [...best.values()].sort(byScore).slice(0, keptWalks);
}

const byScore = (a: Walk, b: Walk) => b.score - a.score || a.zone - b.zone || a.seen - b.seen;

const isSide = (zone: number) => zone === driver || zone === passenger;

/** What going from a walk's zone to another is worth before this clause's words: a usual step's bonus less the costs. */
function changeGain(walk: Walk, zone: number, clause: WeighedClause, named: boolean, away: boolean, share: number): number {
  let cost: number = walkCosts.change[clause.break];
  if (away) cost = Math.min(cost, walkCosts.changeAfterComeAlong);
  if (named) cost = Math.min(cost, walkCosts.changeAtNamedMove);
  else cost += (unsaidEntry[zone] ?? 0) + (zone === closing ? 0 : (unsaidLeave[walk.zone] ?? 0));
  if (walk.seen & (1 << zone)) cost += revisit[zone] ?? 0;
  if (walk.zone === closing) cost += walkCosts.afterClosing;
  if (zone === closing && share < walkCosts.closingFrom) cost += (walkCosts.closingFrom - share) * 10 * walkCosts.closingPerTenthEarlier;
  return (usual[walk.zone * zoneCount + zone] ?? 0) - cost;
}

/** The strongest move of the clause into this zone; what is only announced moves nothing yet. The other side is the one the walk did not see last. */
function entryStrength(moves: readonly Move[], zone: number, from: number | null, lastSide: number): number {
  let strength = 0;
  for (const move of moves) {
    if (move.announces || !meansItFrom(move, from)) continue;
    const goesHere =
      move.zone === "other-side"
        ? isSide(zone) && (lastSide < 0 || zone !== lastSide)
        : move.zone !== null && zoneIndex[move.zone] === zone;
    if (goesHere) strength = Math.max(strength, move.strength);
  }
  return strength;
}

/** Whether the words mean their place when said in this zone ("and back", said on the road, is no rear). */
function meansItFrom(move: Move, from: number | null): boolean {
  const zone = from === null ? null : zoneNames[from];
  if (!zone) return move.onlyFrom === null;
  return (move.onlyFrom === null || move.onlyFrom.includes(zone)) && !move.neverFrom.includes(zone);
}
