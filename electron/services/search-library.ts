import {
  type AttributeName,
  type Claim,
  claimSubject,
  type Input,
  type Output,
  type SearchHit,
  timeLabel,
  zoneAt,
  zoneLabels,
} from "../../shared-types/index.ts";
import type { FoundEntry } from "../library/search-entries.ts";
import type { Parts } from "./parts.ts";
import { type Broadness, matchFor, narrowedMatches } from "./search-query.ts";
import { keptSpelling } from "./search-spelling.ts";
import { type Background, claimAnswer, findingWithholding, keptBackgrounds, lowerFirst, withholding } from "./search-standing.ts";
import { asksWhetherItWorks } from "./search-words.ts";

interface Found {
  readonly entry: FoundEntry;
  readonly readAs: string | null;
}

/** Answers a caller's questions; what it reads for one it keeps for the next, until the library is written to. */
export function librarySearch() {
  const backgroundsOf = keptBackgrounds();
  const spellingOf = keptSpelling();

  /** Places for a caller's question, the zone first, then claims and findings, then captions. */
  return (parts: Parts, { query, limit, recordingId }: Input<"search.find">): Output<"search.find"> => {
    const backgroundOf = backgroundsOf(parts);
    const { search } = parts.library;
    const namesVehicle = search.findsAny;
    const findMatch = (match: string | null, readAs: string | null): Found[] => {
      // Captions that only repeat a claim are left out below, so a few more are asked for.
      const entries = match === null ? [] : search.find(match, limit * 3, recordingId ?? null);
      return withoutRepeats(entries, backgroundOf).map((entry) => ({ entry, readAs }));
    };
    const find = (words: string, broadness: Broadness, readAs: string | null) => findMatch(matchFor(words, broadness), readAs);
    const narrowed = narrowedMatches(query, namesVehicle);
    const ofVehicle = (broadness: Broadness) => findMatch(narrowed?.[broadness] ?? null, null);
    const readings = spellingOf(search).readings(query);
    const forgiven = (broadness: Broadness): Found[] => firstOf(readings, (reading) => find(reading, broadness, reading));
    const forgivenOfVehicle = (): Found[] =>
      firstOf(readings, (reading) => findMatch(narrowedMatches(reading, namesVehicle)?.something ?? null, reading));
    // What was found as typed comes first; a near word stands behind it, never in its place.
    const whole = distinct([...ofVehicle("everything"), ...find(query, "everything", null), ...forgiven("everything")]);
    // A vehicle that was named is not answered for by another, nor by its own opening: that nothing was said of it is an answer too.
    const broader = narrowed
      ? [() => ofVehicle("something"), () => forgivenOfVehicle()]
      : [() => find(query, "something", null), () => forgiven("something")];
    const found = whole.length > 0 ? whole : firstOf(broader, (look) => look());
    const attributeOf = ({ entry: { kind, recordingId, reference } }: Found): AttributeName | undefined =>
      kind === "claim" ? backgroundOf(recordingId).claims.get(reference)?.attribute : undefined;
    const ordered = asksWhetherItWorks(query) ? workingFirst(found, attributeOf) : found;
    return ordered.slice(0, limit).map(({ entry, readAs }) => hit(entry, readAs, backgroundOf));
  };
}

/** How a thing was found to be answers whether it works; that it is there does not. All else keeps its order. */
function workingFirst(found: readonly Found[], attributeOf: (one: Found) => AttributeName | undefined): Found[] {
  const rank = (one: Found) => {
    const attribute = attributeOf(one);
    return attribute === "condition" ? 0 : attribute === "presence" ? 2 : 1;
  };
  return found.toSorted((a, b) => rank(a) - rank(b));
}

/** The first that gives anything. */
function firstOf<Way>(ways: readonly Way[], look: (way: Way) => Found[]): Found[] {
  for (const way of ways) {
    const found = look(way);
    if (found.length > 0) return found;
  }
  return [];
}

function distinct(found: readonly Found[]): Found[] {
  const shown = new Set<string>();
  return found.filter(({ entry: { recordingId, kind, reference, start } }) => {
    const place = `${recordingId} ${kind} ${reference} ${start}`;
    if (shown.has(place)) return false;
    shown.add(place);
    return true;
  });
}

function withoutRepeats(found: readonly FoundEntry[], backgroundOf: (recordingId: string) => Background): FoundEntry[] {
  // Only where both are among what was found does a caption repeat a claim.
  const quoting = new Set(found.flatMap(({ kind, recordingId }) => (kind === "caption" ? [recordingId] : [])));
  const claimed = new Set(
    found.flatMap(({ kind, recordingId, reference }) =>
      kind === "claim" && quoting.has(recordingId)
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

function hit(entry: FoundEntry, readAs: string | null, backgroundOf: (recordingId: string) => Background): SearchHit {
  const { recordingId, recordingTitle, stockNumber, kind, start, end, said, disputed } = entry;
  // A zone is told by the index alone.
  const known = kind === "zone" ? null : backgroundOf(recordingId);
  const claim = kind === "claim" ? known?.claims.get(entry.reference) : undefined;
  const basis = claim ?? (kind === "finding" ? known?.findingClaims.get(entry.reference) : undefined);
  const withheld = known ? (claim ? withholding(claim, known) : findingWithholding(entry.reference, known)) : null;
  return {
    recordingId,
    recordingTitle,
    stockNumber,
    kind,
    start,
    end,
    zone: claim?.zone ?? (kind === "caption" && known ? zoneAt(known.lap, start) : entry.zone),
    text: said,
    subject: basis ? claimSubject(basis) : null,
    disputed: disputed || withheld?.reason === "disputed",
    conflictKey: (basis && known?.conflictKeys.get(basis.id)) ?? null,
    hedged: claim?.stance === "hedged",
    overruled: basis !== undefined && known?.overruled.has(basis.id) === true,
    withheld,
    rightWords: known ? rightWordsAt(entry, claim, known) : null,
    answer: withheld ? null : claim && known ? claimAnswer(claim, known) : placeAnswer(entry),
    readAs,
  };
}

/** A caption that is shown in the place of its claims carries what was really said there too. */
function rightWordsAt({ kind, reference }: FoundEntry, claim: Claim | undefined, { claims, rightWords }: Background): string | null {
  if (claim) return rightWords.get(claim.id) ?? null;
  if (kind !== "caption") return null;
  const misheard = [...rightWords.keys()].find((id) => claims.get(id)?.captions.includes(Number(reference)));
  return misheard === undefined ? null : (rightWords.get(misheard) ?? null);
}

/** What a zone or a finding is told as; a caption alone is never told, it is played. */
function placeAnswer({ kind, zone, start, end, said, stockNumber, recordingTitle }: FoundEntry): string | null {
  const named = stockNumber ? `Stock ${stockNumber}` : recordingTitle;
  if (kind === "zone") return `${named}: ${zoneLabels[zone].toLowerCase()} from ${timeLabel(start)} to ${timeLabel(end)}.`;
  return kind === "finding" ? `${named}: ${lowerFirst(said)}, seen at ${timeLabel(start)}.` : null;
}
