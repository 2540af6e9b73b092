import {
  type Claim,
  type ConditionIndex,
  type Conflict,
  cautions,
  conditionIndexVersion,
  type RecordingDetail,
  type Ruling,
} from "../../shared-types/index.ts";
import { chapterMarks } from "./chapters/chapter-marks.ts";
import { claimStanding, isValueOverruled } from "./claim-standing.ts";
import { lastPublication } from "./publication-words.ts";

/**
 * The condition index of a recording as it stands.
 * @param writtenAt ISO 8601 UTC, from outside, so that the same library and moment give the same bytes.
 */
export function conditionIndex(detail: RecordingDetail, writtenAt: string): ConditionIndex {
  const { summary, analysis } = detail;
  const open = new Set(detail.openConflictKeys);
  const rulingOf = new Map(detail.rulings.filter((ruling) => ruling.supersededBy === null).map((ruling) => [ruling.conflictKey, ruling]));
  const { claimOf, conflictsOf, momentsOf, openTopics, claimBehind } = claimStanding(detail);
  const denied = new Set(analysis.denials.flatMap((denial) => denial.claims));
  return {
    version: conditionIndexVersion,
    recording: {
      title: summary.title,
      stockNumber: summary.stockNumber,
      vehicle: summary.vehicle,
      duration: summary.duration,
      videoFile: detail.videoFile,
      transcriptFile: detail.transcriptFile,
    },
    writtenAt,
    analysisVersion: analysis.analysisVersion,
    published: lastPublication(detail),
    chapters: chapterMarks(detail).map((chapter) => ({ ...chapter, openConflicts: chapter.openConflicts.length })),
    findings: detail.findings
      .toSorted((a, b) => a.start - b.start)
      .map((finding) => {
        const { start, end, zone, component, part, position, seen, grade, note, initials } = finding;
        const claim = claimBehind(finding);
        const openConflicts = claim ? openTopics(claim.id) : [];
        return { start, end, zone, component, part, position, seen, grade, note, initials, openConflicts, stance: claim?.stance ?? null };
      }),
    formerClaims: analysis.claims.filter((claim) => claim.time !== "today").length,
    claims: analysis.claims
      .filter((claim) => claim.time === "today")
      .map((claim) => {
        const conflicts = conflictsOf(claim.id);
        return {
          start: claim.start,
          zone: claim.zone,
          component: claim.component,
          part: claim.part,
          position: claim.position,
          attribute: claim.attribute,
          value: claim.value,
          unit: claim.unit,
          stance: claim.stance,
          quote: claim.quote,
          status: claimStatus(claim, {
            conflicts,
            disputed: openTopics(claim.id).length > 0,
            ruled: ruledOut(claim, conflicts, rulingOf),
            denied,
          }),
          ruledOut: ruledOut(claim, conflicts, rulingOf),
          conflictTopics: conflicts.map((conflict) => conflict.topic),
          openConflicts: openTopics(claim.id),
        };
      }),
    conflicts: analysis.conflicts.map((conflict) => {
      const ruling = rulingOf.get(conflict.key);
      return {
        topic: conflict.topic,
        kind: conflict.kind,
        why: conflict.why,
        state: open.has(conflict.key) ? ("open" as const) : ("settled" as const),
        sides: conflict.sides.map((side) => ({
          value: side.value,
          unit: side.unit,
          attribute: claimOf(side.claims[0] ?? "")?.attribute ?? null,
          moments: momentsOf(side.claims),
        })),
        standard: conflict.standard,
        ruling: ruling
          ? {
              decision: ruling.decision,
              side: ruling.side,
              reason: ruling.reason,
              rightWords: ruling.rightWords,
              initials: ruling.initials,
              at: ruling.at,
            }
          : null,
      };
    }),
    denials: analysis.denials.map(({ field, sheetValue, why, claims }) => ({ field, sheetValue, why, moments: momentsOf(claims) })),
    supports: analysis.supports.map(({ field, topic, sheetValue, why, claims }) => ({
      field,
      topic,
      sheetValue,
      why,
      moments: momentsOf(claims),
    })),
    unspoken: analysis.silences.map(({ field, topic, sheetValue, why }) => ({ field, topic, sheetValue, why })),
    cautions: Object.values(cautions),
  };
}

type IndexClaim = ConditionIndex["claims"][number];

/** What standing rulings take out a claim for; another side that stands weighs more than words that were misheard. */
function ruledOut(claim: Claim, conflicts: readonly Conflict[], rulingOf: ReadonlyMap<string, Ruling>): IndexClaim["ruledOut"] {
  const decisions = conflicts.flatMap((conflict) => {
    const ruling = rulingOf.get(conflict.key);
    if (!ruling) return [];
    const out = conflict.sides.some((side, position) => side.claims.includes(claim.id) && isValueOverruled(conflict, ruling, position));
    return out ? [ruling.decision] : [];
  });
  if (decisions.includes("side-stands")) return "overruled";
  return decisions.length > 0 ? "misheard" : null;
}

interface Standing {
  readonly conflicts: readonly Conflict[];
  readonly disputed: boolean;
  readonly ruled: IndexClaim["ruledOut"];
  readonly denied: ReadonlySet<string>;
}

/** A claim in any open conflict is disputed, whatever its other rulings say: nothing disputed may leave as fact. */
function claimStatus(claim: Claim, { conflicts, disputed, ruled, denied }: Standing): IndexClaim["status"] {
  if (disputed) return "disputed";
  if (ruled !== null) return "overruled";
  if (denied.has(claim.id)) return "denied";
  return conflicts.length > 0 ? "upheld" : "undisputed";
}
