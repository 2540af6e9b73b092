import { type ZoneName, zoneNames } from "../../../shared-types/vocabulary.ts";
import type { Speech } from "../model.ts";
import type { Move } from "./find-moves.ts";
import { usualNext, walkCosts, zoneCount, zoneIndex } from "./walk-model.ts";
import type { WeighedClause } from "./weigh-clauses.ts";

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
const keptWalks = 120;

const driver = zoneIndex["driver-side"];
const passenger = zoneIndex["passenger-side"];
const opening = zoneIndex.opening;
const closing = zoneIndex.closing;

/** The zone of each clause along the likeliest walk (Viterbi over zone and zones seen). */
export function likeliestWalk(speech: Speech, clauses: readonly WeighedClause[]): ZoneName[] {
  let walks: Walk[] = [];
  let leaving: { zone: number; clauses: number } | null = null;
  for (const [position, clause] of clauses.entries()) {
    const left = clause.moves.find((move) => move.leaves !== null)?.leaves;
    if (left) leaving = { zone: zoneIndex[left], clauses: walkCosts.stayedAfterLeavingClauses };
    else if (clause.moves.some((move) => move.zone !== null && zoneIndexOf(move) === leaving?.zone)) leaving = null;
    else if (leaving) leaving = leaving.clauses > 1 ? { zone: leaving.zone, clauses: leaving.clauses - 1 } : null;
    const staying = zoneNames.map((_, zone) => (clause.evidence[zone] ?? 0) - (leaving?.zone === zone ? walkCosts.stayedAfterLeaving : 0));
    walks = position === 0 ? firstWalks(clause, staying) : nextWalks(walks, clause, staying, shareOfRecording(speech, clause));
  }
  const best = walks[0];
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
      const moved = entryStrength(clause.moves, zone, -1);
      const score = (staying[zone] ?? 0) + moved - (zone === opening ? 0 : 6) - (zone === closing ? 30 : 0);
      return { score, zone, seen: 1 << zone, lastSide: isSide(zone) ? zone : -1, before: null };
    })
    .toSorted((a, b) => b.score - a.score);
}

function nextWalks(walks: readonly Walk[], clause: WeighedClause, staying: readonly number[], share: number): Walk[] {
  const best = new Map<number, Walk>();
  const keep = (walk: Walk) => {
    const key = ((walk.seen * 16 + walk.zone) * 4 + (walk.lastSide < 0 ? 0 : walk.lastSide === driver ? 1 : 2)) | 0;
    const other = best.get(key);
    if (!other || walk.score > other.score) best.set(key, walk);
  };
  for (const walk of walks) {
    for (let zone = 0; zone < zoneCount; zone += 1) {
      const gain = zone === walk.zone ? 0 : changeGain(walk, zone, clause, share);
      const score = walk.score + gain + (staying[zone] ?? 0);
      keep({ score, zone, seen: walk.seen | (1 << zone), lastSide: isSide(zone) ? zone : walk.lastSide, before: walk });
    }
  }
  return [...best.values()].toSorted((a, b) => b.score - a.score || a.zone - b.zone || a.seen - b.seen).slice(0, keptWalks);
}

const isSide = (zone: number) => zone === driver || zone === passenger;

/** What going from a walk's zone to another is worth before this clause's words: bonus of a move less the costs. */
function changeGain(walk: Walk, zone: number, clause: WeighedClause, share: number): number {
  const strength = entryStrength(clause.moves, zone, walk.lastSide);
  const away = clause.moves.some((move) => move.zone === null);
  let cost: number = walkCosts.change[clause.break];
  if (away) cost = Math.min(cost, walkCosts.changeAfterComeAlong);
  if (strength > 0) cost = Math.min(cost, walkCosts.changeAtNamedMove);
  if (strength === 0) cost += walkCosts.unsaidEntry[zoneNames[zone] ?? "opening"] ?? 0;
  if (walk.seen & (1 << zone)) cost += revisitCost(zone);
  if (walk.zone === closing) cost += walkCosts.afterClosing;
  if (zone === closing && share < walkCosts.closingFrom) cost += (walkCosts.closingFrom - share) * 10 * walkCosts.closingPerTenthEarlier;
  const from = zoneNames[walk.zone];
  const to = zoneNames[zone];
  const usual = from && to ? (usualNext[from]?.[to] ?? 0) : 0;
  return strength + usual - cost;
}

function revisitCost(zone: number): number {
  const name = zoneNames[zone];
  const costs: Readonly<Record<string, number>> = walkCosts.revisit;
  return costs[name ?? "other"] ?? walkCosts.revisit.other;
}

/** The strongest move of the clause into this zone. The other side is the one the walk did not see last. */
function entryStrength(moves: readonly Move[], zone: number, lastSide: number): number {
  let strength = 0;
  for (const move of moves) {
    const goesHere =
      move.zone === "other-side"
        ? isSide(zone) && (lastSide < 0 || zone !== lastSide)
        : move.zone !== null && zoneIndex[move.zone] === zone;
    if (goesHere) strength = Math.max(strength, move.strength);
  }
  return strength;
}
