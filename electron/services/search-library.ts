import {
  type Claim,
  type Input,
  inMarkedZones,
  type LapSpan,
  misheardClaims,
  type Output,
  overruledClaims,
  type SearchHit,
  timeLabel,
  type Withholding,
  zoneAt,
  zoneLabels,
} from "../../shared-types/index.ts";
import type { FoundEntry } from "../library/search-entries.ts";
import { claimFact } from "./index-for-search.ts";
import type { Parts } from "./parts.ts";
import { findRecording, recordingLap, storedAnalysis } from "./recording-detail.ts";
import { matchesFor } from "./search-query.ts";

/** What a hit's recording says about it beyond the index: read once for each recording that is among the hits. */
interface Background {
  readonly lap: readonly LapSpan[];
  readonly claims: ReadonlyMap<string, Claim>;
  readonly overruled: ReadonlySet<string>;
  /** The words that were really said, by claim. */
  readonly rightWords: ReadonlyMap<string, string>;
  /** What the stock sheet says instead, by claim. */
  readonly denied: ReadonlyMap<string, string>;
  /** Claims that rest on an unsure repair. */
  readonly unsure: ReadonlySet<string>;
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
  const rulings = library.rulings.of(recordingId);
  return {
    lap: recordingLap(library, row),
    claims: new Map(inMarkedZones(claims, library.zoneSpans.of(recordingId)).map((claim) => [claim.id, claim])),
    overruled: overruledClaims(conflicts, rulings),
    rightWords: misheardClaims(conflicts, rulings),
    denied: new Map(denials.flatMap((denial) => denial.claims.map((claim) => [claim, denial.sheetValue] as const))),
    unsure: new Set(claims.filter((claim) => claim.repairs.some((id) => unsure.has(id))).map(({ id }) => id)),
  };
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

function hit(entry: FoundEntry, known: Background): SearchHit {
  const { recordingId, recordingTitle, stockNumber, kind, start, end, said, disputed } = entry;
  const claim = kind === "claim" ? known.claims.get(entry.reference) : undefined;
  const withheld = claim ? withholding(claim, disputed, known) : null;
  return {
    recordingId,
    recordingTitle,
    stockNumber,
    kind,
    start,
    end,
    zone: claim?.zone ?? (kind === "caption" ? zoneAt(known.lap, start) : entry.zone),
    text: said,
    disputed,
    hedged: claim?.stance === "hedged",
    overruled: claim !== undefined && known.overruled.has(claim.id),
    withheld,
    rightWords: rightWordsAt(entry, claim, known),
    answer: withheld ? null : answer(entry, claim),
  };
}

/** A claim is a warranty once it is repeated, so it is withheld wherever a caller could be told something that does not hold. */
function withholding(claim: Claim, disputed: boolean, { overruled, denied, unsure }: Background): SearchHit["withheld"] {
  const why = (reason: Withholding, detail: string | null = null) => ({ reason, detail });
  const sheetValue = denied.get(claim.id);
  if (disputed) return why("disputed");
  if (overruled.has(claim.id)) return why("overruled");
  if (sheetValue !== undefined) return why("sheet-denies", sheetValue);
  if (unsure.has(claim.id)) return why("unsure-repair");
  if (claim.time === "former") return why("former");
  return claim.stance === "stated" ? null : why(claim.stance);
}

/** A caption that is shown in the place of its claims carries what was really said there too. */
function rightWordsAt({ kind, reference }: FoundEntry, claim: Claim | undefined, { claims, rightWords }: Background): string | null {
  if (claim) return rightWords.get(claim.id) ?? null;
  if (kind !== "caption") return null;
  const misheard = [...rightWords.keys()].find((id) => claims.get(id)?.captions.includes(Number(reference)));
  return misheard === undefined ? null : (rightWords.get(misheard) ?? null);
}

function answer(entry: FoundEntry, claim: Claim | undefined): string | null {
  const stock = entry.stockNumber ? `Stock ${entry.stockNumber}` : entry.recordingTitle;
  const time = timeLabel(entry.start);
  if (entry.kind === "zone") return `${stock}: ${zoneLabels[entry.zone].toLowerCase()} from ${time} to ${timeLabel(entry.end)}.`;
  if (entry.kind === "finding") return `${stock}: ${lowerFirst(entry.said)}, seen at ${time}.`;
  if (!claim) return null;
  // A condition is told in the speaker's own words: "good" alone would promise more.
  const words = claim.attribute === "condition" ? `: “${claim.quote}”` : "";
  return `${stock}: ${lowerFirst(claimFact(claim))}${words}, said at ${time}.`;
}

/** "Rear tire" becomes "rear tire", "VIN" stays. */
function lowerFirst(text: string): string {
  return /^\p{Lu}\p{Lu}/u.test(text) ? text : text.charAt(0).toLowerCase() + text.slice(1);
}
