import {
  type Claim,
  type Conflict,
  type Finding,
  isOverruled,
  proposalKey,
  type RecordingDetail,
  type Ruling,
  type ToldMoment,
} from "../../shared-types/index.ts";

/** Asks of a recording what every export must say beside a claim. */
export interface ClaimStanding {
  readonly claimOf: (id: string) => Claim | undefined;
  readonly conflictsOf: (claimId: string) => readonly Conflict[];
  /** Topics of the open conflicts that a claim is in, or that another figure for the very same thing is in. */
  readonly openTopics: (claimId: string) => string[];
  /** Moments of claims with their doubt and their open conflicts; ids that no claim has are left out. */
  readonly momentsOf: (claimIds: readonly string[]) => ToldMoment[];
  /** The claim that a finding was accepted from, where it is still found. */
  readonly claimBehind: (finding: Pick<Finding, "proposalKey">) => Claim | undefined;
}

export function claimStanding({ analysis, openConflictKeys }: Pick<RecordingDetail, "analysis" | "openConflictKeys">): ClaimStanding {
  const open = new Set(openConflictKeys);
  const claims = new Map(analysis.claims.map((claim) => [claim.id, claim]));
  const byKey = new Map(analysis.claims.map((claim) => [proposalKey(claim), claim]));
  const conflicts = new Map<string, Conflict[]>();
  for (const conflict of analysis.conflicts)
    for (const id of new Set(conflict.sides.flatMap((side) => side.claims))) conflicts.set(id, [...(conflicts.get(id) ?? []), conflict]);
  const conflictsOf = (claimId: string) => conflicts.get(claimId) ?? [];
  const openOn = (claimId: string) => conflictsOf(claimId).flatMap(({ key, topic }) => (open.has(key) ? [topic] : []));
  const openFigures = new Map<string, string[]>();
  for (const claim of analysis.claims) {
    const topics = openOn(claim.id);
    const figure = figureOf(claim);
    if (topics.length > 0 && figure !== null) openFigures.set(figure, [...(openFigures.get(figure) ?? []), ...topics]);
  }
  const openTopics = (claimId: string) => {
    const claim = claims.get(claimId);
    const figure = claim ? figureOf(claim) : null;
    return [...new Set([...openOn(claimId), ...(figure === null ? [] : (openFigures.get(figure) ?? []))])];
  };
  return {
    claimOf: (id) => claims.get(id),
    conflictsOf,
    openTopics,
    momentsOf: (ids) =>
      toldOnce(
        ids.flatMap((id) => {
          const claim = claims.get(id);
          return claim ? [{ start: claim.start, quote: claim.quote, stance: claim.stance, openConflicts: openTopics(id) }] : [];
        }),
      ),
    claimBehind: (finding) => (finding.proposalKey === null ? undefined : byKey.get(finding.proposalKey)),
  };
}

/**
 * Whether a standing ruling takes out what a side says. Of a figure said flatly and with a doubt, the ruling is on the doubt: the figure
 * itself stands either way.
 */
export function isValueOverruled({ sides }: Conflict, ruling: Ruling, position: number): boolean {
  const own = sides[position];
  const standing = ruling.decision === "side-stands" && ruling.side !== null ? sides[ruling.side] : undefined;
  const alike = standing !== undefined && own !== undefined && standing.value === own.value && standing.unit === own.unit;
  return isOverruled(ruling, position) && !alike;
}

/** Two claims of the same words at the same moment are one to whoever reads them; of a longer and a shorter quote the longer one tells both. */
function toldOnce(moments: readonly ToldMoment[]): ToldMoment[] {
  const samePlace = (a: ToldMoment, b: ToldMoment) =>
    Math.abs(a.start - b.start) < 0.5 &&
    a.stance === b.stance &&
    a.openConflicts.length === b.openConflicts.length &&
    a.openConflicts.every((topic) => b.openConflicts.includes(topic));
  return moments.filter(
    (moment, position) =>
      !moments.some(
        (other, at) =>
          at !== position &&
          samePlace(moment, other) &&
          other.quote.includes(moment.quote) &&
          (other.quote.length > moment.quote.length || at < position),
      ),
  );
}

/** Names the very thing that a figure is told of; null for what is no figure, since of a condition several may hold at once. */
function figureOf({ component, part, position, attribute, unit, circumstance, time, value }: Claim): string | null {
  if (attribute === "condition" || !/\d/.test(String(value))) return null;
  return JSON.stringify([component, part, position, attribute, unit, circumstance, time]);
}

/** "[open conflict: rear tire size]"; nothing where none is open. */
export function openMark(topics: readonly string[]): string {
  if (topics.length === 0) return "";
  return `[${topics.length === 1 ? "open conflict" : "open conflicts"}: ${topics.join(", ")}]`;
}

/** A claim's hedge in words; nothing for what was stated. */
export function stanceWords(stance: Claim["stance"] | null): string {
  if (stance === "hedged") return "said with doubt";
  return stance === "reported" ? "reported, not seen" : "";
}
