import type {
  Claim,
  Conflict,
  Remark,
  SheetMeanings,
  StockSheetDenial,
  StockSheetFields,
  StockSheetSilence,
  StockSheetSupport,
  ZoneProposal,
} from "../../../shared-types/index.ts";
import type { ConflictDraft, RemarkDraft } from "./conflict-of.ts";
import { disagreementsIn } from "./disagreements.ts";
import { notesOn } from "./facets/claim-notes.ts";
import { facetsOf } from "./facets/facets-of.ts";
import { faultsAgainstPraise } from "./faults.ts";
import { hedgesIn } from "./hedges.ts";
import { hedgesAcross, settledByTitle } from "./hedges-across.ts";
import { impliedPresence } from "./implied-presence.ts";
import { coveringFacets } from "./slots/covering.ts";
import { classedSlots } from "./slots/disputes.ts";
import { standardRules } from "./standards/index.ts";
import { claimIndex } from "./standards/rule.ts";
import { outcomeOfSheet, type SheetOutcome } from "./stock-sheet/sheet-outcome.ts";

export interface ComparisonInput {
  readonly claims: readonly Claim[];
  readonly zones: readonly ZoneProposal[];
  /** Seconds. */
  readonly duration: number;
  /** The dealer's own record, if there is one. */
  readonly stockSheet: StockSheetFields | null;
  /** What its columns mean, where that was settled; else their names tell. */
  readonly sheetMeanings?: SheetMeanings | null;
  /** ISO 8601 date of the recording, where it is known. */
  readonly recordedOn: string | null;
}

export interface Comparison {
  /** Gravest first. */
  readonly conflicts: Conflict[];
  readonly remarks: Remark[];
  readonly denials: StockSheetDenial[];
  /** Claims that the record bears out. */
  readonly supports: StockSheetSupport[];
  /** What the record tells and no claim speaks of. */
  readonly silences: StockSheetSilence[];
}

/**
 * Finds the claims that cannot all hold. Claims are gathered by slot and sorted into classes of equal value, so cost grows with their
 * number and not with their pairs. The outcome does not depend on the order in which claims are given, only on what they say and when.
 */
export function compareClaims(input: ComparisonInput): Comparison {
  const claims = [...input.claims].sort((a, b) => a.start - b.start || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));
  const notes = notesOn(claims);
  const spoken = claims.flatMap((claim) => facetsOf(claim, notes));
  const slots = classedSlots([...spoken, ...coveringFacets(spoken), ...impliedPresence(claims)]);
  const faults = faultsAgainstPraise(claims);
  const index = claimIndex(claims, input.recordedOn);
  const standards = standardRules.map((rule) => rule.find(index));

  const conflicts = withoutRepeats([
    ...slots.flatMap((slot) => {
      const disagreements = disagreementsIn(slot);
      return disagreements.length > 0 ? disagreements : hedgesIn(slot).filter((draft) => !settledByTitle(draft, claims));
    }),
    ...hedgesAcross(claims),
    ...faults.conflicts,
    ...standards.flatMap((found) => found.conflicts),
  ]);
  const remarks: RemarkDraft[] = [...faults.remarks, ...standards.flatMap((found) => found.remarks)];
  const sheet: SheetOutcome = input.stockSheet
    ? outcomeOfSheet(claims, input.stockSheet, input.sheetMeanings ?? null, notes)
    : { denials: [], supports: [], silences: [] };
  return {
    conflicts: conflicts.map((conflict, position) => ({ id: `k${position + 1}`, ...conflict })),
    remarks: keyed(remarks).map((remark, position) => ({ id: `m${position + 1}`, ...remark })),
    denials: keyed(sheet.denials).map((denial, position) => ({ id: `d${position + 1}`, ...denial })),
    supports: keyed(sheet.supports).map((support, position) => ({ id: `s${position + 1}`, ...support })),
    silences: keyed(sheet.silences).map((silence, position) => ({ id: `u${position + 1}`, ...silence })),
  };
}

/**
 * One conflict for each topic, gravest first. Where two of one kind share a topic (two front seats), the one with more moments stays
 * and takes the other's weight if that is greater.
 */
function withoutRepeats(drafts: readonly ConflictDraft[]): ConflictDraft[] {
  const byTopic = new Map<string, ConflictDraft>();
  for (const draft of drafts) {
    const key = `${draft.kind} ${draft.topic}`;
    const known = byTopic.get(key);
    if (!known || moments(draft) > moments(known))
      byTopic.set(key, known ? { ...draft, weight: Math.max(draft.weight, known.weight) } : draft);
  }
  const kept = withoutShadows([...byTopic.values()]);
  return kept.sort((a, b) => b.weight - a.weight || (a.key < b.key ? -1 : 1));
}

/**
 * Leaves out a conflict whose sides are each part of a side of a graver one: "a V8" against "a straight six" is one quarrel, about the
 * layout, and not a second one about the number of cylinders.
 */
function withoutShadows(drafts: readonly ConflictDraft[]): ConflictDraft[] {
  const byClaim = new Map<string, ConflictDraft[]>();
  for (const draft of drafts) {
    for (const id of new Set(draft.sides.flatMap((side) => side.claims))) {
      const here = byClaim.get(id);
      if (here) here.push(draft);
      else byClaim.set(id, [draft]);
    }
  }
  const within = (small: readonly string[], large: readonly string[]): boolean => {
    const known = new Set(large);
    return small.every((id) => known.has(id));
  };
  return drafts.filter((draft) => {
    const rivals = byClaim.get(draft.sides[0]!.claims[0]!)!;
    return !rivals.some(
      (rival) =>
        rival !== draft &&
        rival.kind !== "hedge" &&
        draft.kind !== "hedge" &&
        rival.kind !== "standard" &&
        (rival.weight > draft.weight || (rival.weight === draft.weight && rival.key < draft.key)) &&
        draft.sides.every((side) => rival.sides.some((other) => within(side.claims, other.claims))),
    );
  });
}

function moments(draft: ConflictDraft): number {
  return draft.sides.reduce((sum, side) => sum + side.claims.length, 0);
}

/** One of each key, in the order of keys. */
function keyed<Draft extends { readonly key: string }>(drafts: readonly Draft[]): Draft[] {
  return [...new Map(drafts.map((draft) => [draft.key, draft])).values()].sort((a, b) => (a.key < b.key ? -1 : 1));
}
