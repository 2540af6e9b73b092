import { type ConditionIndex, claimSubject } from "../../../shared-types/index.ts";

type IndexClaim = ConditionIndex["claims"][number];

/** From the most careful on: of two rows that become one, the more careful word stands. */
const mostCareful = ["disputed", "overruled", "denied", "upheld", "undisputed"] as const satisfies readonly IndexClaim["status"][];
const sameBreathSeconds = 0.5;

/**
 * Claims of one value at one moment as one row, with the longer quote; a general and a closer reading of the same words are one thing to
 * whoever reads them. Whatever is in dispute or ruled out about either is said of the one.
 */
export function claimsOnce(claims: readonly IndexClaim[]): IndexClaim[] {
  const rows: IndexClaim[] = [];
  for (const claim of claims) {
    const at = rows.findIndex((row) => saysTheSame(row, claim));
    if (at < 0) rows.push(claim);
    else rows[at] = joined(rows[at]!, claim);
  }
  return rows;
}

function saysTheSame(a: IndexClaim, b: IndexClaim): boolean {
  return (
    Math.abs(a.start - b.start) < sameBreathSeconds &&
    a.zone === b.zone &&
    a.attribute === b.attribute &&
    a.value === b.value &&
    a.unit === b.unit &&
    a.stance === b.stance &&
    a.position === b.position &&
    claimSubject(a) === claimSubject(b) &&
    (a.quote.includes(b.quote) || b.quote.includes(a.quote))
  );
}

function joined(a: IndexClaim, b: IndexClaim): IndexClaim {
  const status = mostCareful.find((one) => one === a.status || one === b.status)!;
  return {
    ...(b.quote.length > a.quote.length ? b : a),
    start: Math.min(a.start, b.start),
    status,
    ruledOut: [a.ruledOut, b.ruledOut].find((out) => out === "overruled") ?? a.ruledOut ?? b.ruledOut,
    conflictTopics: [...new Set([...a.conflictTopics, ...b.conflictTopics])],
    openConflicts: [...new Set([...a.openConflicts, ...b.openConflicts])],
  };
}
