import type { Claim, SheetMeanings, StockSheetFields } from "../../../../shared-types/index.ts";
import type { ClaimNotes } from "../facets/claim-notes.ts";
import { facetsOf } from "../facets/facets-of.ts";
import { circumstanceOf } from "../slots/circumstances.ts";
import { type ClassedSlot, classedSlots, disputesIn } from "../slots/disputes.ts";
import type { Facet, Place } from "../slots/facet.ts";
import { slotPart } from "../slots/parts.ts";
import { positionsMeet } from "../slots/positions.ts";
import { sameBreathSeconds, sidesSaidApart } from "../slots/said-apart.ts";
import { columnsMeant, type StockSheetColumn } from "./columns.ts";
import { type ReadCell, readField } from "./read-field.ts";

const sheetClaimId = "stock-sheet";

/** One column of one field, with the claims that bear on it. */
export interface HeldColumn {
  readonly field: string;
  readonly sheetValue: string;
  readonly column: StockSheetColumn;
  /** The cell as it was read; null for a VIN, which is compared letter by letter. */
  readonly read: ReadCell | null;
  readonly denied: readonly Claim[];
  readonly supporting: readonly Claim[];
  /** False where no claim speaks of it at all, whatever it says. */
  readonly spokenOf: boolean;
}

/**
 * Holds every understood field of the dealer's own record against the claims, by the same units, rounding and spellings that claims are
 * compared by. A field whose name or text is not understood is left out, whatever was said.
 */
export function heldAgainstSheet(
  claims: readonly Claim[],
  sheet: StockSheetFields,
  meanings: SheetMeanings | null,
  notes: ClaimNotes,
): HeldColumn[] {
  return Object.entries(sheet)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .flatMap(([field, sheetValue]) =>
      sheetValue.trim() === ""
        ? []
        : columnsMeant(field, meanings).flatMap((column) => {
            const held = column.reading.as === "vin" ? vinAgainst(claims, sheetValue) : columnAgainst(claims, column, sheetValue, notes);
            return held ? [{ field, sheetValue, column, ...held }] : [];
          }),
    );
}

type Held = Pick<HeldColumn, "read" | "denied" | "supporting" | "spokenOf">;

/** The sheet's value as if it were one more claim, compared by the same slots as the spoken ones. Undefined where it is not understood. */
function columnAgainst(claims: readonly Claim[], column: StockSheetColumn, sheetValue: string, notes: ClaimNotes): Held | undefined {
  const read = readField(column, sheetValue);
  if (!read) return undefined;
  const asClaim = claimOfSheet(column, sheetValue, read, claims);
  const own = facetsOf(asClaim, notes);
  if (own.length === 0) return undefined;
  const spoken = claims.filter(
    (claim) => claim.attribute === column.attribute && (claim.component === column.component || column.reading.as === "type"),
  );
  const ofParts =
    column.attribute === "color" &&
    spoken.some((claim) => claim.component === "paint") &&
    !spoken.some((claim) => slotPart(claim) === null);
  if (ofParts) return { read, denied: [], supporting: [], spokenOf: false };
  const slots = classedSlots([...own, ...spoken.flatMap((claim) => facetsOf(claim, notes))]);
  const denied = deniedIn(slots);
  const supporting = supportingIn(slots, own);
  return {
    read,
    denied: spoken.filter((claim) => denied.has(claim.id)),
    supporting: spoken.filter((claim) => supporting.has(claim.id) && !denied.has(claim.id)),
    spokenOf: spoken.some((claim) => speaksOf(claim, column, own, notes)),
  };
}

function claimOfSheet(column: StockSheetColumn, sheetValue: string, read: ReadCell, claims: readonly Claim[]): Claim {
  return {
    id: sheetClaimId,
    captions: [0],
    start: 0,
    end: 0,
    // The column names the figure: a bare round one would pass for a sum or a year by the rules for speech.
    quote: column.reading.as === "figure" ? `${column.topic} ${sheetValue}` : sheetValue,
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
}

function deniedIn(slots: readonly ClassedSlot[]): ReadonlySet<string> {
  const denied = new Set<string>();
  for (const slot of slots) {
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
  return denied;
}

/** Claims of the sheet's own value, for its own place. */
function supportingIn(slots: readonly ClassedSlot[], own: readonly Facet[]): ReadonlySet<string> {
  const supporting = new Set<string>();
  for (const { facets, classes } of slots) {
    const at = facets.findIndex((facet) => facet.claim.id === sheetClaimId);
    if (at < 0) continue;
    facets.forEach((facet, position) => {
      const same = classes[position] === classes[at] && own.some(({ place }) => placesAlike(facet.place, place));
      if (same && facet.claim.id !== sheetClaimId && circumstanceOf(facet.claim) === null) supporting.add(facet.claim.id);
    });
  }
  return supporting;
}

const unplaced: ReadonlySet<Place> = new Set<Place>(["anywhere", "loosely", "in-view"]);

function placesAlike(first: Place, second: Place): boolean {
  if (unplaced.has(first) || unplaced.has(second)) return true;
  return positionsMeet(first as Exclude<Place, "anywhere" | "loosely" | "in-view">, second as never);
}

/**
 * Whether a claim speaks of what the column tells, in whatever words. In doubt it does: that nobody spoke of a fact is only said where
 * no claim comes near it.
 */
function speaksOf(claim: Claim, column: StockSheetColumn, own: readonly Facet[], notes: ClaimNotes): boolean {
  if (claim.time !== "today") return false;
  const facets = facetsOf(claim, notes);
  if (facets.some((facet) => own.some(({ slot, place }) => slot === facet.slot && placesAlike(facet.place, place)))) return true;
  if (claim.component !== column.component || circumstanceOf(claim) !== null) return false;
  // Of another kind altogether: "a V8" says nothing of the fuel.
  if (column.reading.as === "type") return facets.length === 0;
  if (slotPart(claim) !== column.part) return false;
  return claim.position === null || column.position === null || positionsMeet(claim.position, column.position);
}

/** Fewest letters and figures of a VIN on a sheet, and of one that is spoken: the last ones alone are often read out. Common practice. */
const shortestVin = { written: 5, spoken: 4 } as const;

function vinAgainst(claims: readonly Claim[], sheetValue: string): Held | undefined {
  const onSheet = plainVin(sheetValue);
  if (onSheet.length < shortestVin.written) return undefined;
  const ofVin = claims.filter((claim) => claim.component === "vin" && claim.time === "today" && claim.part === null);
  const spoken = ofVin.filter((claim) => {
    const said = typeof claim.value === "string" ? plainVin(claim.value) : "";
    return said.length >= shortestVin.spoken && /\d/.test(said);
  });
  const bornOut = (claim: Claim) => onSheet.endsWith(plainVin(String(claim.value)));
  return {
    read: null,
    denied: spoken.filter((claim) => !bornOut(claim)),
    supporting: spoken.filter(bornOut),
    spokenOf: ofVin.length > 0,
  };
}

function plainVin(text: string): string {
  return text.toUpperCase().replace(/[^A-Z0-9]/g, "");
}
