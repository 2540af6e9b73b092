import type { ConflictKind } from "../../../shared-types/index.ts";
import { deniedIn, type Planting, quietWalk, saidAgainIn } from "./plant.ts";
import { compactSedan } from "./walks/compact-sedan.ts";
import { electricHatchback } from "./walks/electric-hatchback.ts";
import { importedSaloon } from "./walks/imported-saloon.ts";

/** Annotated walks with no conflict, or one that no row touches. */
export const quietWalks = [compactSedan, importedSaloon, electricHatchback] as const;

export interface KindShare {
  readonly kind: ConflictKind;
  readonly slots: number;
  readonly denials: readonly Planting[];
  readonly equals: readonly Planting[];
  readonly missed: readonly Planting[];
  readonly falselyRaised: readonly Planting[];
  /** Share of the planted contradictions that are shown, 0 to 1. */
  readonly found: number;
}

/**
 * Every row of every walk, with at most `each` denials of a row, and as many equal sentences of every `equalsEvery`th row; one whole analysis
 * for each sentence.
 */
export function plantedShares(each: number, equalsEvery = 1): KindShare[] {
  const denials: Planting[] = [];
  const equals: Planting[] = [];
  for (const walk of quietWalks) {
    const quiet = quietWalk(walk);
    for (const [position, row] of walk.rows.entries()) {
      denials.push(...deniedIn(quiet, row, each));
      if (position % equalsEvery === 0) equals.push(...saidAgainIn(quiet, row, each));
    }
  }
  const kinds = [...new Set(denials.map(({ row }) => row.kinds[0]))];
  return kinds.map((kind) => {
    const ofKind = denials.filter(({ row }) => row.kinds[0] === kind);
    const equalOfKind = equals.filter(({ row }) => row.kinds[0] === kind);
    const missed = ofKind.filter(({ found }) => !found);
    return {
      kind,
      slots: new Set(ofKind.map(({ walk, row }) => `${walk} ${row.slot}`)).size,
      denials: ofKind,
      equals: equalOfKind,
      missed,
      falselyRaised: equalOfKind.filter(({ found }) => found),
      found: 1 - missed.length / ofKind.length,
    };
  });
}

const inWords = ({ walk, row, sentence, shown }: Planting): string =>
  `${walk} ${row.slot}: "${sentence}"${shown.length > 0 ? ` (shown: ${shown.join("; ")})` : ""}`;

/** A line for each kind, and with `named` each planting that went wrong. */
export function shareTable(shares: readonly KindShare[], named: boolean): string[] {
  return shares.flatMap(({ kind, slots, denials, equals, missed, falselyRaised, found }) => [
    `${kind.padEnd(12)} ${String(slots).padStart(3)} slots  ${denials.length - missed.length}/${denials.length} found (${(found * 100).toFixed(1)} %)  ` +
      `${falselyRaised.length}/${equals.length} equal sentences flagged`,
    ...(named ? missed.map((one) => `   missed ${inWords(one)}`) : []),
    ...(named ? falselyRaised.map((one) => `   flagged ${inWords(one)}`) : []),
  ]);
}
