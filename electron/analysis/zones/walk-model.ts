import type { ZoneName } from "../../../shared-types/index.ts";

/**
 * How walks go, as costs. A walk is a path through the zones; the cheapest path that fits the words is taken. Figures were set by hand so
 * that a lone mention never moves the camera, two sentences of one zone's parts do, and a spoken move does at once.
 */
export const walkCosts = {
  /** Beginning elsewhere than with a greeting. */
  startsElsewhere: 9,
  /** Changing zone with nothing said about a move, by what stands before the clause. */
  change: { start: 0, paragraph: 3.2, sentence: 4, "lead-in": 3.5, comma: 6.5, move: 3, "run-on": 4 },
  /** What remains of that cost where words move the camera away without a place. */
  changeAfterComeAlong: 3,
  changeAtNamedMove: 2.2,
  /** What remains of a move's strength for a walk that is there already: less than for one that comes with it, so that borders keep to moves. */
  movedAgainShare: 0.5,
  /** More for zones that nobody reaches unsaid: a hood must be opened, a vehicle lifted, an engine started. */
  unsaidEntry: { underside: 4.5, "engine-bay": 1, drive: 1.5, documents: 1, cabin: 0.5, roof: 2.2, cargo: 0.5 } as Partial<
    Record<ZoneName, number>
  >,
  /**
   * More for leaving, without a word on where to, a zone in which parts are named that are not in view: the greeting tells what the vehicle
   * has, the papers what was done to it, the driver what he hears.
   */
  unsaidLeave: { opening: 1.5, documents: 2.5, drive: 1 } as Partial<Record<ZoneName, number>>,
  /** What each clause of the first tenth says for the greeting by itself, so that a hint does not end it early. */
  openingEachClause: 0.25,
  openingShare: 0.1,
  /** Going back to a zone already seen. */
  revisit: { opening: 30, closing: 6, documents: 2.5, cabin: 3, drive: 3, other: 3.5 },
  /** Leaving the sign-off again. */
  afterClosing: 9,
  /** A sign-off this far into the recording is free; each tenth earlier costs. */
  closingFrom: 0.86,
  closingPerTenthEarlier: 5,
  /** What a walk gains by ending in the sign-off, as nearly all do: less than entering it costs, so that some word must speak for it. */
  endsInClosing: 2,
  /** Staying where the words have just left, for each clause until the next move. */
  stayedAfterLeaving: 0.7,
  stayedAfterLeavingClauses: 4,
  /** The most that one clause's parts may say for a zone. */
  clauseEvidenceCap: 3.6,
  /** Weights of parts are written so that 1 is plain evidence; in the walk's sums each counts this much. */
  evidenceScale: 2.2,
  /** What remains of evidence in a clause about another time or place. */
  remoteShare: 0.2,
  /** What remains of evidence in a clause that reads from a paper. */
  readFromPaperShare: 0.5,
} as const;

/** Zones a walk usually reaches from another: neighbours along the vehicle. Bonus for the change; below zero where hardly anyone goes. */
export const usualNext: Partial<Record<ZoneName, Partial<Record<ZoneName, number>>>> = {
  opening: { front: 1.2, "driver-side": 0.6, "passenger-side": 0.4, rear: 0.2, documents: 0.2, drive: -5, closing: -5 },
  front: { "driver-side": 0.8, "passenger-side": 0.6, "engine-bay": 0.6 },
  "driver-side": { rear: 0.6, cabin: 0.5, front: 0.3, roof: 0.1 },
  "passenger-side": { rear: 0.6, cabin: 0.4, front: 0.3, roof: 0.1 },
  rear: { cargo: 0.8, "driver-side": 0.5, "passenger-side": 0.5 },
  cargo: { "driver-side": 0.4, "passenger-side": 0.4, rear: 0.2, cabin: 0.2 },
  cabin: { "engine-bay": 0.5, underside: 0.4, drive: 0.4, roof: 0.2, cargo: 0.2, documents: 0.2 },
  "engine-bay": { underside: 0.6, cabin: 0.4, drive: 0.4, "driver-side": 0.1, "passenger-side": 0.1 },
  drive: { closing: 0.8, underside: 0.3, documents: 0.2 },
  underside: { documents: 0.8, closing: 0.5, drive: 0.4 },
  documents: { drive: 0.8, closing: 0.5, "engine-bay": 0.1 },
};
