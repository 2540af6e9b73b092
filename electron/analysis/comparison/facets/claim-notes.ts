import type { Claim } from "../../../../shared-types/index.ts";

/** What the claims say together that bears on how one of them is to be read. */
export interface ClaimNotes {
  /** The engine is bored out ("thirty over"): its displacement is spoken both as built and as bored. */
  readonly boredOver: boolean;
  /** Figures that were spoken as money; one of them without the word "miles" is no mileage. */
  readonly sumsOfMoney: ReadonlySet<number>;
}

export const noNotes: ClaimNotes = { boredOver: false, sumsOfMoney: new Set() };

/** Words that make a bare figure a sum of money, whatever it was taken for. */
const moneyWords = /\b(wants?|wanted|asking|priced?|dollars|bucks|grand|pounds|quid|firm|offer|website|obo)\b/i;

const mileageWords = /\b(miles?|mileage|odometer|clock|km|kilomet(er|re)s?|showing)\b/i;

/** More than this over the standard bore is another engine. Inches. */
const mostOverboreInches = 0.2;

export function notesOn(claims: readonly Claim[]): ClaimNotes {
  return {
    boredOver: claims.some(isOverbore),
    sumsOfMoney: new Set(claims.flatMap((claim) => (isMoney(claim) ? [Number(claim.value)] : []))),
  };
}

function isOverbore({ component, part, attribute, value, unit }: Claim): boolean {
  if (component !== "engine") return false;
  return (
    part === "overbore" || (attribute === "size" && unit === "in" && typeof value === "number" && value > 0 && value < mostOverboreInches)
  );
}

function isMoney({ attribute, value, quote }: Claim): boolean {
  return (
    typeof value === "number" && (attribute === "price" || (attribute === "mileage" && moneyWords.test(quote) && !mileageWords.test(quote)))
  );
}

/** Whether a figure taken for a mileage is surely one, and not the price said once more. */
export function isSurelyMileage(claim: Claim, notes: ClaimNotes): boolean {
  if (mileageWords.test(claim.quote)) return true;
  return !moneyWords.test(claim.quote) && !notes.sumsOfMoney.has(Number(claim.value));
}
