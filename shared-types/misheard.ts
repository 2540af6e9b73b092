import type { Conflict, StockSheetDenial } from "./analysis.ts";
import type { Ruling } from "./recording.ts";

/** A ruling as far as it says which claims no longer count. */
type Decided = Pick<Ruling, "decision" | "side">;

/**
 * Whether a standing ruling takes a side's claims out. Of a recognizer's error it is the side that was misheard; a ruling of a time when
 * no side was asked for puts the words of all sides in question.
 */
export function isOverruled({ decision, side }: Decided, ownSide: number): boolean {
  if (decision === "recogniser-error") return side === null || side === ownSide;
  return decision === "side-stands" && side !== ownSide;
}

/** Claims that standing rulings take out. */
export function overruledClaims(conflicts: readonly Pick<Conflict, "key" | "sides">[], rulings: readonly Ruling[]): Set<string> {
  return new Set(
    decided(conflicts, rulings).flatMap(({ conflict, ruling }) =>
      conflict.sides.filter((_, side) => isOverruled(ruling, side)).flatMap((side) => side.claims),
    ),
  );
}

/** For each claim that a standing ruling says was misheard, the words that were really said. */
export function misheardClaims(conflicts: readonly Pick<Conflict, "key" | "sides">[], rulings: readonly Ruling[]): Map<string, string> {
  return new Map(
    decided(conflicts, rulings).flatMap(({ conflict, ruling }) =>
      ruling.decision === "recogniser-error" && ruling.rightWords !== null
        ? conflict.sides
            .filter((_, side) => isOverruled(ruling, side))
            .flatMap((side) => side.claims.map((claim) => [claim, ruling.rightWords ?? ""] as const))
        : [],
    ),
  );
}

function decided(conflicts: readonly Pick<Conflict, "key" | "sides">[], rulings: readonly Ruling[]) {
  const standing = new Map(rulings.flatMap((ruling) => (ruling.supersededBy === null ? [[ruling.conflictKey, ruling] as const] : [])));
  return conflicts.flatMap((conflict) => {
    const ruling = standing.get(conflict.key);
    return ruling ? [{ conflict, ruling }] : [];
  });
}

/**
 * What the stock sheet denies and nobody has dealt with: a denial is dealt with once a ruling has taken every claim out that it denies.
 * Until then a person must read the vehicle, or the claim leaves the library unsupported.
 */
export function openDenials<Denial extends Pick<StockSheetDenial, "claims">>(
  denials: readonly Denial[],
  conflicts: readonly Pick<Conflict, "key" | "sides">[],
  rulings: readonly Ruling[],
): Denial[] {
  const out = overruledClaims(conflicts, rulings);
  return denials.filter(({ claims }) => claims.some((claim) => !out.has(claim)));
}
