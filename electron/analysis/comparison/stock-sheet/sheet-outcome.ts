import type {
  Claim,
  SheetMeanings,
  StockSheetDenial,
  StockSheetFields,
  StockSheetSilence,
  StockSheetSupport,
} from "../../../../shared-types/index.ts";
import { convert } from "../../vocabulary/units.ts";
import { slug } from "../conflict-of.ts";
import type { ClaimNotes } from "../facets/claim-notes.ts";
import { capitalised, claimWords, listed, moment, valueWords } from "../wording.ts";
import { type HeldColumn, heldAgainstSheet } from "./hold-against-sheet.ts";

/** What the dealer's own record says of the claims, and what it says that no claim does. Before ids. */
export interface SheetOutcome {
  readonly denials: readonly Omit<StockSheetDenial, "id">[];
  readonly supports: readonly Omit<StockSheetSupport, "id">[];
  readonly silences: readonly Omit<StockSheetSilence, "id">[];
}

/** Holds the dealer's record against the claims: what it denies, what it supports, and what it tells that nobody spoke. */
export function outcomeOfSheet(
  claims: readonly Claim[],
  sheet: StockSheetFields,
  meanings: SheetMeanings | null,
  notes: ClaimNotes,
): SheetOutcome {
  const held = heldAgainstSheet(claims, sheet, meanings, notes);
  return {
    denials: held.flatMap((column) => (column.denied[0] ? [denial(column, column.denied[0])] : [])),
    supports: held.flatMap((column) => (column.supporting[0] ? [support(column, column.supporting[0])] : [])),
    silences: silences(held),
  };
}

function keyOf({ field, column, sheetValue }: HeldColumn, claims: readonly Claim[]): string {
  const said = [...new Set(claims.map((claim) => slug(claimWords(claim))))].sort().join("|");
  return `${slug(field)}:${slug(column.topic)}:${slug(sheetValue)}:${said}`;
}

/**
 * The cell as it is written; a bare figure is written as spoken ones are, with the unit that its column gives it. A bare price is in the
 * currency that was spoken.
 */
function sheetWords({ sheetValue, read, column }: HeldColumn, spoken?: Claim): string {
  if (typeof read?.value !== "number" || column.reading.as !== "figure" || !/^[\d.,]+$/.test(sheetValue)) return sheetValue;
  const currency = column.attribute === "price" ? (spoken?.unit ?? null) : null;
  return valueWords(read.value, read.unit ?? currency, column.attribute);
}

function denial(held: HeldColumn, first: Claim): Omit<StockSheetDenial, "id"> {
  const { field, sheetValue, denied } = held;
  return {
    key: keyOf(held, denied),
    field,
    sheetValue,
    claims: denied.map((claim) => claim.id),
    why: capitalised(
      `the ${held.column.topic} is spoken as ${claimWords(first)} at ${moment(first.start)}, and the stock sheet says ${sheetWords(held, first)}.`,
    ),
  };
}

function support(held: HeldColumn, first: Claim): Omit<StockSheetSupport, "id"> {
  const { field, sheetValue, column, supporting } = held;
  const more = supporting.length > 1 ? ` It is said ${supporting.length} times.` : "";
  return {
    key: keyOf(held, supporting),
    field,
    topic: column.topic,
    sheetValue,
    claims: supporting.map((claim) => claim.id),
    why: capitalised(
      `the ${column.topic} is spoken as ${claimWords(first)} at ${moment(first.start)}, and the stock sheet says ${sheetWords(held, first)}${alike(held, first)}.${more}${withDoubt(supporting)}`,
    ),
  };
}

/** In what way two values are the same that are not written the same; empty where they are. */
function alike({ read, sheetValue, column }: HeldColumn, claim: Claim): string {
  if (column.reading.as === "vin") {
    return claimWords(claim).length < sheetValue.length ? ", which ends so" : "";
  }
  if (read && typeof read.value === "number" && typeof claim.value === "number") {
    const otherUnit = read.unit !== null && claim.unit !== null && read.unit !== claim.unit;
    const amount = otherUnit ? convert(read.value, read.unit!, claim.unit!) : read.value;
    if (amount === undefined) return "";
    // A whole number was spoken, so its whole number is the nearest that can be set beside it; else as many decimals as were spoken.
    const decimals = String(claim.value).split(".")[1]?.length ?? 0;
    const rounded = Number(amount.toFixed(decimals));
    const inOtherUnit = otherUnit ? `, which is about ${valueWords(rounded, claim.unit, claim.attribute)}` : "";
    return rounded === claim.value ? inOtherUnit : `${inOtherUnit}: the same as far as the spoken figure goes`;
  }
  const written = slug(String(read?.value ?? sheetValue));
  return written === slug(String(claim.value)) || written.split("-").includes(slug(String(claim.value)))
    ? ""
    : ", which is taken for the same";
}

/** A record bears out what was said, and the speaker's own doubt stays beside it. */
function withDoubt(claims: readonly Claim[]): string {
  if (claims.every((claim) => claim.stance === "hedged")) return " It is said with a doubt.";
  if (claims.every((claim) => claim.stance === "reported")) return " It is told as others said it.";
  return "";
}

/** One for each field that tells something no claim speaks of. */
function silences(held: readonly HeldColumn[]): Omit<StockSheetSilence, "id">[] {
  const byField = new Map<string, HeldColumn[]>();
  for (const column of held) byField.set(column.field, [...(byField.get(column.field) ?? []), column]);
  return [...byField.values()].flatMap((columns) => {
    const silent = columns.filter((column) => !column.spokenOf);
    const [first] = silent;
    if (!first) return [];
    const topics = silent.map(({ column }) => column.topic);
    const counted = topics.length === 1 && first.column.reading.as === "count";
    return [
      {
        key: `${slug(first.field)}:${topics.map(slug).join("|")}:${slug(first.sheetValue)}`,
        field: first.field,
        topic: listed(topics),
        sheetValue: first.sheetValue,
        why: `The stock sheet says ${sheetWords(first)} for the ${listed(topics)}; ${counted ? "no claim says how many" : "no claim speaks of it"}.`,
      },
    ];
  });
}
