import type { Claim, ClaimValue, StockSheetDenial, StockSheetFields, UnitName } from "../../../../shared-types/index.ts";
import { slug } from "../conflict-of.ts";
import type { ClaimNotes } from "../facets/claim-notes.ts";
import { facetsOf } from "../facets/facets-of.ts";
import { circumstanceOf } from "../slots/circumstances.ts";
import { classedSlots, disputesIn } from "../slots/disputes.ts";
import { slotPart } from "../slots/parts.ts";
import { sameBreathSeconds, sidesSaidApart } from "../slots/said-apart.ts";
import { capitalised, claimWords, moment } from "../wording.ts";
import { columnsNamed, type StockSheetColumn } from "./columns.ts";

type DenialDraft = Omit<StockSheetDenial, "id">;

const sheetClaimId = "stock-sheet";

/**
 * Claims that the dealer's own record does not bear out. A field whose name or text is not understood denies nothing; a field that agrees,
 * by the same units, rounding and spellings that claims are compared by, is not mentioned.
 */
export function deniedBySheet(claims: readonly Claim[], sheet: StockSheetFields, notes: ClaimNotes): DenialDraft[] {
  const denials: DenialDraft[] = [];
  for (const [field, sheetValue] of Object.entries(sheet).sort(([a], [b]) => (a < b ? -1 : 1))) {
    if (sheetValue.trim() === "") continue;
    for (const column of columnsNamed(field)) {
      const denied = column.reading.as === "vin" ? vinsUnlike(claims, sheetValue) : claimsUnlike(claims, column, sheetValue, notes);
      const first = denied[0];
      if (!first) continue;
      denials.push({
        key: `${slug(field)}:${slug(column.topic)}:${slug(sheetValue)}:${[...new Set(denied.map((claim) => slug(claimWords(claim))))].sort().join("|")}`,
        field,
        sheetValue,
        claims: denied.map((claim) => claim.id),
        why: capitalised(
          `the ${column.topic} is spoken as ${claimWords(first)} at ${moment(first.start)}, and the stock sheet says ${sheetValue}.`,
        ),
      });
    }
  }
  return denials;
}

/** The sheet's value as if it were one more claim, compared by the same slots as the spoken ones. */
function claimsUnlike(claims: readonly Claim[], column: StockSheetColumn, sheetValue: string, notes: ClaimNotes): Claim[] {
  const read = readField(column, sheetValue);
  if (!read) return [];
  const asClaim: Claim = {
    id: sheetClaimId,
    captions: [0],
    start: 0,
    end: 0,
    quote: sheetValue,
    spans: [{ caption: 0, start: 0, end: 0 }],
    component: column.component,
    part: column.part,
    position: column.position,
    attribute: column.attribute,
    value: read.value,
    // A bare price is in the currency that was spoken.
    unit: read.unit ?? (column.attribute === "price" ? (claims.find((claim) => claim.component === "price")?.unit ?? null) : null),
    stance: "stated",
    time: "today",
    circumstance: null,
    // A record speaks of the vehicle, not of a wheel in view.
    zone: "opening",
    rule: "stock-sheet",
    repairs: [],
  };
  const spoken = claims.filter(
    (claim) => claim.attribute === column.attribute && (claim.component === column.component || column.reading.as === "type"),
  );
  if (
    column.attribute === "color" &&
    spoken.some((claim) => claim.component === "paint") &&
    !spoken.some((claim) => slotPart(claim) === null)
  )
    return [];
  const facets = [asClaim, ...spoken].flatMap((claim) => facetsOf(claim, notes));
  const denied = new Set<string>();
  for (const slot of classedSlots(facets)) {
    for (const { sides } of disputesIn(slot)) {
      const own = sides.find((side) => side.some((facet) => facet.claim.id === sheetClaimId));
      if (!own) continue;
      const agreeing = own.filter((facet) => facet.claim.id !== sheetClaimId).map((facet) => facet.claim);
      for (const side of sides) {
        if (side === own) continue;
        const unlike = side.map((facet) => facet.claim).filter((claim) => circumstanceOf(claim) === null);
        // A value spoken only beside the sheet's own was set against it, or misheard from it.
        const stands = agreeing.length === 0 || sidesSaidApart([unlike, agreeing], sameBreathSeconds.measure).includes(0);
        if (stands) for (const claim of unlike) denied.add(claim.id);
      }
    }
  }
  return spoken.filter((claim) => denied.has(claim.id));
}

function vinsUnlike(claims: readonly Claim[], sheetValue: string): Claim[] {
  const onSheet = sheetValue.toUpperCase().replace(/[^A-Z0-9]/g, "");
  if (onSheet.length < 5) return [];
  return claims.filter((claim) => {
    if (claim.component !== "vin" || claim.time !== "today" || claim.part !== null || typeof claim.value !== "string") return false;
    const said = claim.value.toUpperCase().replace(/[^A-Z0-9]/g, "");
    // The last digits alone are often read out.
    return said.length >= 4 && /\d/.test(said) && said !== onSheet && !onSheet.endsWith(said);
  });
}

const spokenUnits: readonly (readonly [RegExp, UnitName])[] = [
  [/\b(cu\.? ?in\.?|cubic inch(es)?|cid|ci)\b/i, "cu in"],
  [/\bcc\b/i, "cc"],
  [/\d ?l\b|\blit(er|re)s?\b/i, "L"],
  [/\b(km|kms|kilomet(er|re)s?)\b/i, "km"],
  [/\b(mi|miles?)\b/i, "mi"],
  [/\bkw\b/i, "kW"],
  [/\bps\b/i, "PS"],
  [/\b(hp|bhp)\b/i, "hp"],
  [/\b(nm|n·m)\b/i, "N·m"],
  [/\bmm\b/i, "mm"],
  [/\$|\busd\b/i, "USD"],
  [/£|\bgbp\b/i, "GBP"],
  [/€|\beur\b/i, "EUR"],
  [/\bgal(lons?)?\b/i, "gal"],
];

function readField(column: StockSheetColumn, text: string): { readonly value: ClaimValue; readonly unit: UnitName | null } | undefined {
  switch (column.reading.as) {
    case "figure": {
      const figure = figureIn(text, column);
      if (figure === undefined) return undefined;
      return { value: figure, unit: spokenUnits.find(([words]) => words.test(text))?.[1] ?? column.reading.unit };
    }
    case "count": {
      const count = /\b(\d{1,2})[ -]?(?:speed|cyl|door|owner|key)|^\s*(\d{1,2})\s*$/i.exec(text);
      return count ? { value: Number(count[1] ?? count[2]), unit: null } : undefined;
    }
    case "tire-size":
      // Two sizes in one field are a front and a rear; which is which, the field does not say.
      return (text.match(/\d{3}\/\d{2}|\d{2}x\d/gi)?.length ?? 0) > 1 ? undefined : { value: text.trim(), unit: null };
    default:
      return { value: text.trim(), unit: null };
  }
}

/** The figure in a field: the first that can be one for the attribute ("5.7L V8" is 5.7, "V8 350ci" is 350, "3.73:1" is 3.73). */
function figureIn(text: string, column: StockSheetColumn): number | undefined {
  const numbers = [...text.replace(/(\d),(?=\d{3}\b)/g, "$1").matchAll(/(?<![a-z\d])\d+(?:\.\d+)?(?!\d)/gi)].map((match) =>
    Number(match[0]),
  );
  const likely = numbers.find((number) => {
    switch (column.attribute) {
      case "displacement":
        return (number >= 0.6 && number < 10 && !Number.isInteger(number)) || number >= 60;
      case "ratio":
        return number >= 2 && number < 8;
      case "year":
        return number >= 1885 && number < 2100;
      case "diameter":
        return number >= 10 && number <= 30;
      default:
        return true;
    }
  });
  return likely;
}
