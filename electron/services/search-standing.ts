import {
  type Claim,
  inMarkedZones,
  type LapSpan,
  misheardClaims,
  overruledClaims,
  proposalKey,
  timeLabel,
  type Withheld,
  type Withholding,
} from "../../shared-types/index.ts";
import { claimFact } from "./index-for-search.ts";
import type { Parts } from "./parts.ts";
import { isConditionToday } from "./propose-findings.ts";
import { findRecording, recordingLap, storedAnalysis } from "./recording-detail.ts";

/** What a recording says about its claims beyond the index: read once for each recording that a question comes to. */
export interface Background {
  /** The recording as it is named to a caller: "Stock FK-1971", or its title where it has no stock number. */
  readonly named: string;
  readonly lap: readonly LapSpan[];
  readonly claims: ReadonlyMap<string, Claim>;
  readonly overruled: ReadonlySet<string>;
  /** The words that were really said, by claim. */
  readonly rightWords: ReadonlyMap<string, string>;
  /** What the stock sheet says instead, by claim. */
  readonly denied: ReadonlyMap<string, string>;
  /** Claims that rest on an unsure repair. */
  readonly unsure: ReadonlySet<string>;
  /** The conflict to look at, by claim: an open one before a settled one, the gravest first. */
  readonly conflictKeys: ReadonlyMap<string, string>;
  /** The claim that a finding was accepted from, by finding. */
  readonly findingClaims: ReadonlyMap<string, Claim>;
  /** Claims that take part in an open conflict. */
  readonly disputed: ReadonlySet<string>;
}

export function background({ library }: Pick<Parts, "library">, recordingId: string): Background {
  const row = findRecording({ library }, recordingId);
  const { claims, conflicts, repairs, denials } = storedAnalysis(library, recordingId);
  const doubted = new Set(repairs.filter(({ sure }) => !sure).map(({ id }) => id));
  const rulings = library.rulings.of(recordingId);
  const open = new Set(library.rulings.openConflictKeys(recordingId));
  const conflictKeys = new Map<string, string>();
  const byUrgency = conflicts.toSorted((a, b) => Number(open.has(b.key)) - Number(open.has(a.key)) || b.weight - a.weight);
  for (const { key, sides } of byUrgency) {
    for (const claim of sides.flatMap((side) => side.claims)) if (!conflictKeys.has(claim)) conflictKeys.set(claim, key);
  }
  return {
    named: row.stockNumber ? `Stock ${row.stockNumber}` : row.title,
    lap: recordingLap(library, row),
    claims: new Map(inMarkedZones(claims, library.zoneSpans.of(recordingId)).map((claim) => [claim.id, claim])),
    overruled: overruledClaims(conflicts, rulings),
    rightWords: misheardClaims(conflicts, rulings),
    denied: new Map(denials.flatMap((denial) => denial.claims.map((claim) => [claim, denial.sheetValue] as const))),
    unsure: new Set(claims.filter((claim) => claim.repairs.some((id) => doubted.has(id))).map(({ id }) => id)),
    conflictKeys,
    findingClaims: new Map(
      library.findings.of(recordingId).flatMap(({ id, proposalKey: key }) => {
        const claim = key === null ? undefined : claims.find((one) => isConditionToday(one) && proposalKey(one) === key);
        return claim ? [[id, claim] as const] : [];
      }),
    ),
    disputed: new Set([...conflictKeys].filter(([, key]) => open.has(key)).map(([claim]) => claim)),
  };
}

/** Backgrounds of one library, kept until it is written to; the recordings asked for last stay. */
export function keptBackgrounds(): (parts: Pick<Parts, "library">) => (recordingId: string) => Background {
  let stamp = "";
  const kept = new Map<string, Background>();
  return (parts) => {
    const now = parts.library.search.vocabulary.stamp();
    if (now !== stamp) kept.clear();
    stamp = now;
    return (recordingId) => {
      const known = kept.get(recordingId) ?? background(parts, recordingId);
      // Put last again; the first one in a map is the one not asked for the longest.
      kept.delete(recordingId);
      kept.set(recordingId, known);
      const [oldest] = kept.keys();
      if (kept.size > mostKept && oldest !== undefined) kept.delete(oldest);
      return known;
    };
  };
}

/** One background of a quarter of an hour takes about a fifth of a megabyte. */
const mostKept = 150;

/** A claim is a warranty once it is repeated, so it is withheld wherever a caller could be told something that does not hold. */
export function withholding(claim: Claim, { disputed, overruled, denied, unsure }: Background): Withheld | null {
  const why = (reason: Withholding, detail: string | null = null) => ({ reason, detail });
  const sheetValue = denied.get(claim.id);
  if (disputed.has(claim.id)) return why("disputed");
  if (overruled.has(claim.id)) return why("overruled");
  if (sheetValue !== undefined) return why("sheet-denies", sheetValue);
  if (unsure.has(claim.id)) return why("unsure-repair");
  if (claim.time === "former") return why("former");
  return claim.stance === "stated" ? null : why(claim.stance);
}

/** A finding is a person's own; yet one that was accepted from a claim does not outlive what is said against that claim. */
export function findingWithholding(findingId: string, known: Background): Withheld | null {
  const claim = known.findingClaims.get(findingId);
  const withheld = claim ? withholding(claim, known) : null;
  return withheld && ["disputed", "overruled", "sheet-denies"].includes(withheld.reason) ? withheld : null;
}

/** One plain sentence for a caller; null where the claim may not be stated as fact. */
export function claimAnswer(claim: Claim, known: Background): string | null {
  if (withholding(claim, known)) return null;
  // A condition is told in the speaker's own words: "good" alone would promise more.
  const words = claim.attribute === "condition" ? `: “${claim.quote}”` : "";
  return `${known.named}: ${lowerFirst(claimFact(claim))}${words}, said at ${timeLabel(claim.start)}.`;
}

/** "Rear tire" becomes "rear tire", "VIN" stays. */
export function lowerFirst(text: string): string {
  return /^\p{Lu}\p{Lu}/u.test(text) ? text : text.charAt(0).toLowerCase() + text.slice(1);
}
