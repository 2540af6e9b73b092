import {
  type Claim,
  type Input,
  type LapSpan,
  type Output,
  type Ruling,
  type SearchHit,
  timeLabel,
  zoneLabels,
} from "../../shared-types/index.ts";
import type { FoundEntry } from "../library/search-entries.ts";
import { zoneAt } from "./effective-lap.ts";
import { claimFact } from "./index-for-search.ts";
import type { Parts } from "./parts.ts";
import { findRecording, recordingLap, storedAnalysis } from "./recording-detail.ts";
import { matchesFor } from "./search-query.ts";

/** What a hit's recording says about it beyond the index: read once for each recording that is among the hits. */
interface Background {
  readonly lap: readonly LapSpan[];
  readonly claims: ReadonlyMap<string, Claim>;
  /** Claims that no caller may be told: ruled out, denied by the stock sheet, or resting on an unsure repair. */
  readonly doubtful: ReadonlySet<string>;
}

/** Places for a caller's question, the zone first, then claims and findings, then captions. */
export function searchLibrary(parts: Parts, { query, limit }: Input<"search.find">): Output<"search.find"> {
  const backgrounds = new Map<string, Background>();
  const backgroundOf = (recordingId: string): Background => {
    const known = backgrounds.get(recordingId) ?? background(parts, recordingId);
    backgrounds.set(recordingId, known);
    return known;
  };
  for (const match of matchesFor(query)) {
    // Captions that only repeat a claim are left out below, so a few more are asked for.
    const found = withoutRepeats(parts.library.search.find(match, limit * 3), backgroundOf).slice(0, limit);
    if (found.length > 0) return found.map((entry) => hit(entry, backgroundOf(entry.recordingId)));
  }
  return [];
}

function background({ library }: Parts, recordingId: string): Background {
  const row = findRecording({ library }, recordingId);
  const { claims, conflicts, repairs, denials } = storedAnalysis(library, recordingId);
  const unsure = new Set(repairs.filter(({ sure }) => !sure).map(({ id }) => id));
  const standing = new Map(
    library.rulings.of(recordingId).flatMap((ruling) => (ruling.supersededBy === null ? [[ruling.conflictKey, ruling]] : [])),
  );
  const ruledOut = conflicts.flatMap(({ key, sides }) => {
    const ruling = standing.get(key);
    return ruling ? sides.filter((_, side) => isRuledOut(ruling, side)).flatMap((side) => side.claims) : [];
  });
  return {
    lap: recordingLap(library, row),
    claims: new Map(claims.map((claim) => [claim.id, claim])),
    doubtful: new Set([
      ...ruledOut,
      ...denials.flatMap((denial) => denial.claims),
      ...claims.filter((claim) => claim.repairs.some((id) => unsure.has(id))).map(({ id }) => id),
    ]),
  };
}

/** After a recogniser's error the words of all sides are in question: the right ones are in the ruling, not in a claim. */
function isRuledOut({ decision, side }: Ruling, ownSide: number): boolean {
  return decision === "recogniser-error" || (decision === "side-stands" && side !== ownSide);
}

function withoutRepeats(found: readonly FoundEntry[], backgroundOf: (recordingId: string) => Background): FoundEntry[] {
  const claimed = new Set(
    found.flatMap(({ kind, recordingId, reference }) =>
      kind === "claim"
        ? (backgroundOf(recordingId).claims.get(reference)?.captions ?? []).map((caption) => `${recordingId} ${caption}`)
        : [],
    ),
  );
  const shown = new Set<string>();
  return found.filter(({ kind, recordingId, reference, start, said }) => {
    // Two rules may read the same words alike; a caller needs the place once.
    const place = `${recordingId} ${kind} ${start} ${said}`;
    if (shown.has(place) || (kind === "caption" && claimed.has(`${recordingId} ${reference}`))) return false;
    shown.add(place);
    return true;
  });
}

function hit(entry: FoundEntry, { lap, claims, doubtful }: Background): SearchHit {
  const { recordingId, recordingTitle, stockNumber, kind, start, end, said, disputed } = entry;
  const claim = kind === "claim" ? claims.get(entry.reference) : undefined;
  return {
    recordingId,
    recordingTitle,
    stockNumber,
    kind,
    start,
    end,
    zone: kind === "claim" || kind === "caption" ? zoneAt(lap, start) : entry.zone,
    text: said,
    disputed,
    hedged: claim?.stance === "hedged",
    answer: answer(entry, claim, doubtful),
  };
}

/** Null wherever a caller could be told something that does not hold: a claim is a warranty once it is repeated. */
function answer(entry: FoundEntry, claim: Claim | undefined, doubtful: ReadonlySet<string>): string | null {
  const stock = entry.stockNumber ? `Stock ${entry.stockNumber}` : entry.recordingTitle;
  const time = timeLabel(entry.start);
  if (entry.kind === "zone") return `${stock}: ${zoneLabels[entry.zone].toLowerCase()} from ${time} to ${timeLabel(entry.end)}.`;
  if (entry.kind === "finding") return `${stock}: ${lowerFirst(entry.said)}, seen at ${time}.`;
  if (!claim || entry.disputed || claim.stance !== "stated" || claim.time !== "today" || doubtful.has(claim.id)) return null;
  // A condition is told in the speaker's own words: "good" alone would promise more.
  const words = claim.attribute === "condition" ? `: “${claim.quote}”` : "";
  return `${stock}: ${lowerFirst(claimFact(claim))}${words}, said at ${time}.`;
}

/** "Rear tire" becomes "rear tire", "VIN" stays. */
function lowerFirst(text: string): string {
  return /^\p{Lu}\p{Lu}/u.test(text) ? text : text.charAt(0).toLowerCase() + text.slice(1);
}
