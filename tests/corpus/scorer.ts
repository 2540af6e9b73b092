import { analyse } from "../../electron/analysis/analyse.ts";
import type { Analysis, Claim, Conflict } from "../../shared-types/index.ts";
import type { AnnotatedCase, GoldCase } from "./read-cases.ts";
import { asNumber, bareMeaning, canonicalValue, sameValue } from "./same-value.ts";
import { zoneScore } from "./zone-score.ts";

export interface ScoredCase extends AnnotatedCase {
  readonly output: Analysis;
}

export function analyseCase({ transcript, gold }: AnnotatedCase): Analysis {
  return analyse({ ...transcript, duration: gold.duration }, { stockSheet: null, recordedOn: null });
}

type GoldClaim = GoldCase["claims"][number];
type GoldConflict = GoldCase["conflicts"][number];

/** Figures of one case; lists name what went wrong so that a person can look it up. */
export interface CaseScore {
  readonly id: string;
  readonly style: string;
  readonly seconds: number;
  readonly zoneSecondsRight: number;
  readonly windowDiff: number;
  readonly measures: number;
  readonly missedMeasures: string[];
  readonly measuresInFull: number;
  readonly predictedMeasures: number;
  readonly predictedMeasuresRight: number;
  readonly conflicts: number;
  readonly conflictsFound: number;
  readonly missedConflicts: string[];
  readonly shownConflicts: number;
  readonly falseConflicts: string[];
  readonly lookAlikes: number;
  readonly lookAlikesFlagged: string[];
  readonly repairs: number;
  readonly missedRepairs: string[];
  readonly unreliable: number;
  readonly unreliableFound: number;
  readonly unreliableShown: number;
  readonly byKind: Record<string, { found: number; of: number }>;
}

const isMeasure = (claim: { value: number | string; attribute: string }) =>
  !Number.isNaN(asNumber(claim.value)) || claim.attribute === "size" || claim.attribute === "date";

export function scoreCase({ gold, transcript, output }: ScoredCase): CaseScore {
  const { captions } = transcript;
  const byId = new Map(output.claims.map((claim) => [claim.id, claim]));
  // A claim split over two captions may be anchored at either; short captions split many.
  const near = (claim: Claim, caption: number) =>
    claim.captions.includes(caption) ||
    (claim.captions.length === 1 && captions.length > 90 && Math.abs(claim.captions[0]! - caption) === 1);
  const goldMeasures = gold.claims.filter(isMeasure);
  const hitsOf = (claim: GoldClaim) => output.claims.filter((p) => near(p, claim.i) && sameValue(p.value, p.unit, claim.value, claim.unit));
  const missed = goldMeasures.filter((claim) => hitsOf(claim).length === 0);
  const inFull = goldMeasures.filter((claim) => hitsOf(claim).some((p) => sameSlot(p, claim)));
  const predicted = output.claims.filter(isMeasure);
  const predictedRight = predicted.filter((p) =>
    gold.claims.some((claim) => p.captions.some((i) => Math.abs(i - claim.i) <= 1) && sameValue(p.value, p.unit, claim.value, claim.unit)),
  );

  const touches = (claimIds: readonly string[], at: readonly number[]) =>
    claimIds.some((id) => byId.get(id)?.captions.some((i) => at.includes(i)));
  const matches = (shown: Conflict, real: GoldConflict) =>
    pairsOf(real.sides).some(([a, b]) =>
      shown.sides.some((x, i) => touches(x.claims, a.at) && shown.sides.some((y, j) => i !== j && touches(y.claims, b.at))),
    );
  const found = gold.conflicts.filter((real) => output.conflicts.some((shown) => matches(shown, real)));
  const truly = output.conflicts.filter((shown) => gold.conflicts.some((real) => matches(shown, real)));
  const wrongly = output.conflicts.filter((shown) => !truly.includes(shown));
  const flagged = gold.look_alikes.filter(
    (look) =>
      look.at.length > 1 &&
      wrongly.some((shown) => look.at.filter((i) => shown.sides.some((side) => touches(side.claims, [i]))).length > 1),
  );
  const missedRepairs = gold.repairs.filter((repair) => !repairFound(repair, output, near));
  const byKind: CaseScore["byKind"] = {};
  for (const real of gold.conflicts) {
    byKind[real.kind] ??= { found: 0, of: 0 };
    byKind[real.kind]!.of += 1;
    if (found.includes(real)) byKind[real.kind]!.found += 1;
  }
  return {
    id: gold.id,
    style: gold.style ?? "unnamed",
    ...zoneScore(gold, captions, output.zones),
    measures: goldMeasures.length,
    missedMeasures: missed.map((claim) => `@${claim.i} ${claim.component} ${claim.attribute} ${claim.value} "${claim.quote}"`),
    measuresInFull: inFull.length,
    predictedMeasures: predicted.length,
    predictedMeasuresRight: predictedRight.length,
    conflicts: gold.conflicts.length,
    conflictsFound: found.length,
    missedConflicts: gold.conflicts.filter((real) => !found.includes(real)).map((real) => `${real.kind}: ${real.topic}`),
    shownConflicts: output.conflicts.length,
    falseConflicts: wrongly.map((shown) => `${shown.kind}: ${shown.topic} (${shown.why})`),
    lookAlikes: gold.look_alikes.length,
    lookAlikesFlagged: flagged.map((look) => look.topic),
    repairs: gold.repairs.length,
    missedRepairs: missedRepairs.map((repair) => `@${repair.i} "${repair.heard}" = ${repair.meant}`),
    unreliable: gold.unreliable.length,
    unreliableFound: gold.unreliable.filter(({ i }) => output.doubtful.some((doubtful) => doubtful.caption === i)).length,
    unreliableShown: output.doubtful.length,
    byKind,
  };
}

function sameSlot(claim: Claim, gold: GoldClaim): boolean {
  const positionFits =
    claim.position === null ||
    gold.position === null ||
    claim.position === gold.position ||
    claim.position === "all" ||
    gold.position === "all";
  return claim.component === gold.component && claim.attribute === gold.attribute && positionFits;
}

function pairsOf<Item>(items: readonly Item[]): [Item, Item][] {
  return items.flatMap((a, i) => items.flatMap((b, j) => (i < j ? [[a, b] as [Item, Item]] : [])));
}

function repairFound(repair: GoldCase["repairs"][number], output: Analysis, near: (claim: Claim, caption: number) => boolean): boolean {
  const meant = bareMeaning(repair.meant);
  return (
    output.repairs.some((shown) => shown.caption === repair.i && canonicalValue(bareMeaning(shown.meant)) === canonicalValue(meant)) ||
    output.claims.some((claim) => near(claim, repair.i) && sameValue(claim.value, claim.unit, meant, claim.unit))
  );
}

export interface TotalScore {
  readonly cases: number;
  readonly zone_seconds_right: number;
  readonly window_diff: number;
  readonly measures_recall: number;
  readonly measures_in_full: number;
  readonly measures_precision: number;
  readonly conflict_precision: number;
  readonly conflict_recall: number;
  readonly conflict_f1: number;
  readonly false_conflicts_per_case: number;
  readonly look_alikes_flagged: number;
  readonly look_alikes: number;
  readonly repairs_recall: number;
  readonly unreliable_recall: number;
  readonly unreliable_precision: number;
  readonly recall_by_kind: Record<string, string>;
}

/** Scores each case, and all of them together: shares of sums over the cases, not means of the cases' shares. */
export function scoreCases(cases: readonly ScoredCase[]): { perCase: CaseScore[]; total: TotalScore } {
  const perCase = cases.map(scoreCase);
  return { perCase, total: totalOf(perCase) };
}

export function totalOf(perCase: readonly CaseScore[]): TotalScore {
  const sum = (figure: (one: CaseScore) => number) => perCase.reduce((all, one) => all + figure(one), 0);
  const share = (part: number, whole: number) => (whole ? Math.round((part / whole) * 1000) / 1000 : 1);
  const shown = sum((one) => one.shownConflicts);
  const wrong = sum((one) => one.falseConflicts.length);
  const precision = share(shown - wrong, shown);
  const recall = share(
    sum((one) => one.conflictsFound),
    sum((one) => one.conflicts),
  );
  const measures = sum((one) => one.measures);
  const kinds: Record<string, { found: number; of: number }> = {};
  for (const one of perCase)
    for (const [kind, { found, of }] of Object.entries(one.byKind)) {
      kinds[kind] ??= { found: 0, of: 0 };
      kinds[kind]!.found += found;
      kinds[kind]!.of += of;
    }
  return {
    cases: perCase.length,
    zone_seconds_right: share(
      sum((one) => one.zoneSecondsRight * one.seconds),
      sum((one) => one.seconds),
    ),
    window_diff: share(
      sum((one) => one.windowDiff * one.seconds),
      sum((one) => one.seconds),
    ),
    measures_recall: share(measures - sum((one) => one.missedMeasures.length), measures),
    measures_in_full: share(
      sum((one) => one.measuresInFull),
      measures,
    ),
    measures_precision: share(
      sum((one) => one.predictedMeasuresRight),
      sum((one) => one.predictedMeasures),
    ),
    conflict_precision: precision,
    conflict_recall: recall,
    conflict_f1: precision + recall ? Math.round(((2 * precision * recall) / (precision + recall)) * 1000) / 1000 : 0,
    false_conflicts_per_case: share(wrong, perCase.length),
    look_alikes_flagged: sum((one) => one.lookAlikesFlagged.length),
    look_alikes: sum((one) => one.lookAlikes),
    repairs_recall: share(
      sum((one) => one.repairs - one.missedRepairs.length),
      sum((one) => one.repairs),
    ),
    unreliable_recall: share(
      sum((one) => one.unreliableFound),
      sum((one) => one.unreliable),
    ),
    unreliable_precision: share(
      sum((one) => one.unreliableFound),
      sum((one) => one.unreliableShown),
    ),
    recall_by_kind: Object.fromEntries(Object.entries(kinds).map(([kind, { found, of }]) => [kind, `${found}/${of}`])),
  };
}
