import type { ZoneName, ZoneProposal } from "../../../shared-types/index.ts";
import { type Speech, spansOfTokens } from "../model.ts";
import type { Move } from "./find-moves.ts";
import type { WeighedClause } from "./weigh-clauses.ts";
import { zoneIndex, zoneNames } from "./zone-order.ts";

type Evidence = ZoneProposal["evidence"][number];

/** Parts named as evidence beside the move, and the least weight worth naming. */
const partsNamed = 4;
const leastWeightNamed = 0.5;

interface Stretch {
  readonly zone: ZoneName;
  readonly clauses: readonly WeighedClause[];
  readonly start: number;
}

/** Clauses with their zones as spans with times, confidence and the words that decided. */
export function zoneSpans(speech: Speech, clauses: readonly WeighedClause[], zones: readonly ZoneName[]): ZoneProposal[] {
  const stretches = stretchesOf(speech, clauses, zones);
  if (stretches.length === 0)
    return speech.duration > 0 ? [{ zone: "opening", start: 0, end: speech.duration, confidence: 0, evidence: [] }] : [];
  return stretches.map((stretch, position) => ({
    zone: stretch.zone,
    start: stretch.start,
    end: stretches[position + 1]?.start ?? speech.duration,
    confidence: confidenceOf(stretch),
    evidence: evidenceOf(speech, stretch),
  }));
}

/** Times never run back, even where captions overlap, and no stretch is empty. */
function stretchesOf(speech: Speech, clauses: readonly WeighedClause[], zones: readonly ZoneName[]): Stretch[] {
  const stretches: Stretch[] = [];
  for (const [position, clause] of clauses.entries()) {
    const zone = zones[position] ?? "opening";
    const last = stretches.at(-1);
    if (last?.zone === zone) {
      stretches[stretches.length - 1] = { ...last, clauses: [...last.clauses, clause] };
      continue;
    }
    const start = last ? Math.min(speech.duration, speech.tokens[clause.first]?.at ?? 0) : 0;
    if (last && start <= last.start) {
      // The earlier stretch has no time of its own: its place is taken.
      stretches.pop();
      const before = stretches.at(-1);
      if (before?.zone === zone) stretches[stretches.length - 1] = { ...before, clauses: [...before.clauses, clause] };
      else stretches.push({ zone, clauses: [clause], start: last.start });
    } else if (start < speech.duration || !last) stretches.push({ zone, clauses: [clause], start });
  }
  return stretches;
}

const movesInto = (stretch: Stretch): Move[] =>
  stretch.clauses.flatMap((clause) => clause.moves.filter((move) => move.zone === stretch.zone && !move.announces));

/** How far the words for this zone outweigh those for the next likeliest, between 0 and 1. */
function confidenceOf(stretch: Stretch): number {
  const sums = zoneNames.map((_, zone) => stretch.clauses.reduce((sum, clause) => sum + (clause.evidence[zone] ?? 0), 0));
  const own = (sums[zoneIndex[stretch.zone]] ?? 0) + Math.max(0, ...movesInto(stretch).map((move) => move.strength));
  const rival = Math.max(0, ...sums.filter((_, zone) => zoneNames[zone] !== stretch.zone));
  const confidence = 1 / (1 + Math.exp(-(own - rival) / 3));
  return Math.round(Math.min(0.99, Math.max(0.05, confidence)) * 100) / 100;
}

function evidenceOf(speech: Speech, stretch: Stretch): Evidence[] {
  const [move] = movesInto(stretch).toSorted((a, b) => b.strength - a.strength || a.first - b.first);
  const evidence: Evidence[] = move ? [quoteOf(speech, move.first, move.end, `move: ${move.rule}`)] : [];
  const parts = stretch.clauses
    .flatMap((clause) => clause.parts)
    .map((part) => ({ part, weight: part.zones[stretch.zone] ?? 0 }))
    .filter(({ weight }) => weight >= leastWeightNamed)
    .toSorted((a, b) => b.weight - a.weight || a.part.first - b.part.first);
  const named = new Set<string>();
  for (const { part } of parts) {
    const quote = quoteOf(speech, part.first, part.end, part.reason ?? "part named");
    if (named.size >= partsNamed) break;
    if (named.has(quote.quote.toLowerCase())) continue;
    named.add(quote.quote.toLowerCase());
    evidence.push(quote);
  }
  return evidence;
}

/** The words as the caption has them; of words over two captions, those in the first. */
function quoteOf(speech: Speech, first: number, end: number, reason: string): Evidence {
  const [span] = spansOfTokens(speech.tokens, first, Math.max(end, first + 1));
  if (!span) return { caption: 0, quote: "", reason };
  return { caption: span.caption, quote: (speech.captions[span.caption]?.text ?? "").slice(span.start, span.end), reason };
}
