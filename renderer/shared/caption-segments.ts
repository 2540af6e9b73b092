import { type Analysis, type Claim, type Conflict, misheardClaims, type Repair, type Ruling } from "../../shared-types/index.ts";

/** What the analysis knows about one caption's words. */
export interface CaptionNotes {
  readonly claims: readonly Claim[];
  readonly repairs: readonly Repair[];
  /** Why the words may not be speech about this vehicle; null where they are. */
  readonly doubtful: string | null;
  /** What was really said, where a ruling says that words of this caption were misheard. */
  readonly rightWords: readonly string[];
}

const noNotes: CaptionNotes = { claims: [], repairs: [], doubtful: null, rightWords: [] };

/** Notes by caption index, made once for a recording. */
export function captionNotes(
  analysis: Pick<Analysis, "claims" | "repairs" | "doubtful" | "conflicts">,
  rulings: readonly Ruling[],
): (caption: number) => CaptionNotes {
  const notes = new Map<number, { claims: Claim[]; repairs: Repair[]; doubtful: string | null; rightWords: string[] }>();
  const of = (caption: number) => {
    const found = notes.get(caption) ?? { claims: [], repairs: [], doubtful: null, rightWords: [] };
    notes.set(caption, found);
    return found;
  };
  for (const claim of analysis.claims)
    for (const caption of new Set(claim.spans.map((span) => span.caption))) of(caption).claims.push(claim);
  for (const repair of analysis.repairs)
    for (const caption of new Set(repair.spans.map((span) => span.caption))) of(caption).repairs.push(repair);
  for (const doubtful of analysis.doubtful) of(doubtful.caption).doubtful = doubtful.why;
  const misheard = misheardClaims(analysis.conflicts, rulings);
  for (const claim of analysis.claims) {
    const words = misheard.get(claim.id);
    const last = claim.spans.at(-1);
    if (words === undefined || !last) continue;
    const { rightWords } = of(last.caption);
    if (!rightWords.includes(words)) rightWords.push(words);
  }
  return (caption) => notes.get(caption) ?? noNotes;
}

/** A run of a caption's text whose every character carries the same marks. */
export interface CaptionSegment {
  /** UTF-16 offset in the caption's text. */
  readonly start: number;
  readonly text: string;
  readonly claims: readonly Claim[];
  /** The repair these words are part of. */
  readonly repair: Repair | null;
  /** True where the repair's words end here: its reading is shown after this run. */
  readonly repairEnds: boolean;
}

/** The caption's text cut where marks begin and end. Put together, the runs are the text as it came. */
export function captionSegments(caption: number, text: string, notes: CaptionNotes): CaptionSegment[] {
  const within = (offset: number) => Math.min(text.length, Math.max(0, offset));
  const stretches = (spans: readonly { caption: number; start: number; end: number }[]) =>
    spans
      .filter((span) => span.caption === caption && span.end > span.start)
      .map((span) => ({ start: within(span.start), end: within(span.end) }));
  const claims = notes.claims.map((claim) => ({ claim, stretches: stretches(claim.spans) }));
  const repairs = notes.repairs.map((repair) => {
    const last = repair.spans.at(-1);
    return { repair, stretches: stretches(repair.spans), endsHere: last?.caption === caption ? within(last.end) : -1 };
  });
  const cuts = new Set([0, text.length]);
  for (const { stretches: parts } of [...claims, ...repairs]) for (const part of parts) cuts.add(part.start).add(part.end);
  const ordered = [...cuts].sort((a, b) => a - b);
  return ordered.slice(0, -1).map((start, index) => {
    const end = ordered[index + 1] ?? text.length;
    const covers = (part: { start: number; end: number }) => part.start <= start && part.end >= end;
    const mended = repairs.find((one) => one.stretches.some(covers));
    return {
      start,
      text: text.slice(start, end),
      claims: claims.filter((one) => one.stretches.some(covers)).map((one) => one.claim),
      repair: mended?.repair ?? null,
      repairEnds: mended !== undefined && mended.endsHere === end,
    };
  });
}

/** The key of the gravest open conflict that a claim takes part in; null where it takes part in none. */
export function openConflictOf(claim: string, conflicts: readonly Conflict[], openKeys: readonly string[]): string | null {
  const open = conflicts.filter(({ key, sides }) => openKeys.includes(key) && sides.some(({ claims }) => claims.includes(claim)));
  return open.toSorted((a, b) => b.weight - a.weight)[0]?.key ?? null;
}

/** Ids of claims that take part in an open conflict. */
export function disputedClaims(conflicts: readonly Conflict[], openKeys: readonly string[]): Set<string> {
  const open = new Set(openKeys);
  return new Set(
    conflicts.filter((conflict) => open.has(conflict.key)).flatMap((conflict) => conflict.sides.flatMap((side) => side.claims)),
  );
}
