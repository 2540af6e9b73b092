import { lookUp, singleDigitCounts } from "../vocabulary/number-words.ts";
import type { RawPiece } from "./cut-pieces.ts";
import type { Piece } from "./pieces.ts";

/**
 * Puts together what plain English grammar puts together: "thirty five" to 35, "two hundred and ten" to 210, "28 thousand 4 hundred" to 28400,
 * "twenty second" to 22th. Shorthand ("two thirty five", "fifty eight four") stays in its spoken parts for the rules to read.
 */
export function foldCardinals(raw: readonly RawPiece[]): Piece[] {
  const pieces: Piece[] = [];
  let at = 0;
  while (at < raw.length) {
    const repeated = repeatedDigit(raw, at);
    if (repeated) {
      pieces.push(...repeated);
      at += 2;
      continue;
    }
    const folded = foldOrdinal(raw, at) ?? foldScaled(raw, at) ?? foldTens(raw, at);
    if (folded) {
      pieces.push(folded.piece);
      at = folded.next;
    } else {
      const { text, first, end, glued, written } = raw[at]!;
      pieces.push({ text, first, end, glued, written });
      at += 1;
    }
  }
  return pieces;
}

/** "double oh three": the digit twice, where more digits stand beside it; "double glazing" and "a double" stay words. */
function repeatedDigit(raw: readonly RawPiece[], at: number): Piece[] | undefined {
  const times = raw[at]!.text === "double" ? 2 : raw[at]!.text === "triple" ? 3 : 0;
  const digit = raw[at + 1];
  if (times === 0 || !digit || !isDigit(digit) || !(isDigit(raw[at + 2]) || isDigit(raw[at - 1]))) return undefined;
  return Array.from({ length: times }, (_, copy) => ({
    text: digit.text,
    first: raw[at]!.first,
    end: digit.end,
    glued: copy > 0,
    written: "words" as const,
  }));
}

function isDigit(piece: RawPiece | undefined): boolean {
  return (
    piece !== undefined &&
    (piece.text === "oh" || piece.role === "zero" || piece.role === "ones" || (piece.role === "digits" && piece.text.length === 1))
  );
}

interface Folded {
  readonly piece: Piece;
  readonly next: number;
}

interface Part {
  readonly value: number;
  readonly next: number;
  readonly plural: boolean;
  /** True where a word was put together from halves, or a figure finished what a word began ("thirty 2"). */
  readonly mended?: boolean | undefined;
}

function pieceFrom(raw: readonly RawPiece[], from: number, next: number, text: string, written: Piece["written"]): Folded {
  const first = raw[from]!;
  return { piece: { text, first: first.first, end: raw[next - 1]!.end, glued: first.glued, written }, next };
}

/** 1 to 99 as words or digits. */
function smallCardinal(raw: readonly RawPiece[], at: number): Part | undefined {
  const piece = raw[at];
  if (!piece || piece.value === undefined) return undefined;
  const following = raw[at + 1];
  if (piece.role === "tens") {
    // "two ninety two V8": there the V opens the next thing.
    const counted = singleDigitCounts.includes(raw[at + 2]?.text ?? "") && !(raw[at + 2]?.text === "v" && raw[at + 3]?.value !== undefined);
    const takenByCount = counted && (isHundredsShorthand(raw[at - 1]) || countsOnlyFew(following, raw[at + 2]));
    // "five w thirty | six and a half liters": an oil grade is a whole number of tens.
    if (raw[at - 1]?.text === "w" && raw[at - 2]?.value !== undefined) return { value: piece.value, next: at + 1, plural: false };
    const finishes = following?.role === "ones" || isFigureAfterTens(following);
    if (finishes && !takenByCount && !piece.plural && !opensNextHundred(raw, at))
      return {
        value: piece.value + following!.value!,
        next: at + 2,
        plural: following!.plural === true,
        mended: piece.mended === true || following!.role === "digits",
      };
    return { value: piece.value, next: at + 1, plural: piece.plural === true, mended: piece.mended };
  }
  if (piece.role === "ones" || piece.role === "teen")
    return { value: piece.value, next: at + 1, plural: piece.plural === true, mended: piece.mended };
  if (piece.role === "digits" && Number.isInteger(piece.value) && piece.value < 1000 && !piece.text.startsWith("0"))
    return { value: piece.value, next: at + 1, plural: piece.plural === true };
  return undefined;
}

/** "thirty 2", "three seventy 3": the recogniser changed from words to figures within one number. */
function isFigureAfterTens(piece: RawPiece | undefined): boolean {
  return piece?.role === "digits" && /^[1-9]s?$/.test(piece.text) && !piece.glued;
}

/** The most of a thing that any vehicle has ("… six hundred and thirty | two keys"): "a seventy two door hardtop" is of 1970, and "seven fifty four barrel" has four. */
const mostOf: Readonly<Record<string, number>> = {
  door: 5,
  doors: 5,
  barrel: 4,
  barrels: 4,
  speed: 9,
  owner: 9,
  owners: 9,
  keeper: 9,
  keepers: 9,
  key: 6,
  keys: 6,
  fobs: 6,
  belts: 9,
  seats: 9,
  seater: 9,
};

function countsOnlyFew(count: RawPiece | undefined, thing: RawPiece | undefined): boolean {
  const most = lookUp(mostOf, thing?.text ?? "");
  return most !== undefined && count?.value !== undefined && count.value <= most;
}

/** "one sixty one fifty eight one sixty two": figures of the same hundred in a row; the ones opens the next figure. */
function opensNextHundred(raw: readonly RawPiece[], at: number): boolean {
  const [before, ones, after] = [raw[at - 1], raw[at + 1], raw[at + 2]];
  const further = raw[at - 2];
  // "two oh five fifty five sixteen" is a tire; a row of figures of one hundred and some goes on and on.
  const insideRow = before?.value === 1 && further?.role !== "tens" && further?.text !== "oh";
  if ((further?.role !== undefined || further?.text === "oh") && !insideRow) return false;
  return (
    before?.role === "ones" &&
    ones?.plural !== true &&
    before.value === ones?.value &&
    (after?.role === "tens" || after?.role === "teen") &&
    !after.plural
  );
}

function isHundredsShorthand(before: RawPiece | undefined): boolean {
  return before !== undefined && (before.role === "ones" || (before.role === "digits" && before.text.length === 1));
}

function foldTens(raw: readonly RawPiece[], at: number): Folded | undefined {
  if (raw[at]?.role !== "tens") return undefined;
  const part = smallCardinal(raw, at);
  if (!part || part.next === at + 1) return undefined;
  return pieceFrom(raw, at, part.next, `${part.value}${part.plural ? "s" : ""}`, part.mended ? "mixed" : "words");
}

function belowThousand(raw: readonly RawPiece[], at: number): (Part & { readonly scaled: boolean }) | undefined {
  let start = at;
  let head: Part | undefined;
  if (raw[at]?.role === "hundred") head = { value: 1, next: at, plural: false };
  else if ((raw[at]?.text === "a" || raw[at]?.text === "an") && raw[at + 1]?.role === "hundred") {
    start = at + 1;
    head = { value: 1, next: at + 1, plural: false };
  } else head = smallCardinal(raw, start);
  if (!head) return undefined;
  if (raw[head.next]?.role !== "hundred" || head.value >= 100) return { ...head, scaled: false };
  const hundreds = head.value * 100;
  const afterHundred = head.next + 1;
  const tailAt = raw[afterHundred]?.text === "and" ? afterHundred + 1 : afterHundred;
  const tail = smallCardinal(raw, tailAt);
  if (!tail || tail.value >= 100 || raw[tail.next]?.role === "hundred")
    return { value: hundreds, next: afterHundred, plural: false, scaled: true };
  // "six hundred sixteens" is a 6.00-16 tire: so many hundred of a plural are two things.
  if (tail.plural && tail.value >= 10 && tail.value < 20 && tailAt === afterHundred)
    return { value: hundreds, next: afterHundred, plural: false, scaled: true };
  // "Forty six hundred and four eighty on the foot pounds": a shorthand follows the "and", and no four of the hundreds.
  if (tailAt !== afterHundred && tail.value < 10 && tail.next === tailAt + 1 && raw[tail.next]?.role === "tens")
    return { value: hundreds, next: afterHundred, plural: false, scaled: true };
  // "a hundred and three quarter ton" would be rare; "two hundred and 5 owners" rarer. A fraction after "and" is left to its rule.
  if (tailAt !== afterHundred && raw[tail.next]?.role === "ordinal" && raw[tail.next]?.plural)
    return { value: hundreds, next: afterHundred, plural: false, scaled: true };
  return { value: hundreds + tail.value, next: tail.next, plural: tail.plural, scaled: true, mended: head.mended || tail.mended };
}

function foldScaled(raw: readonly RawPiece[], at: number): Folded | undefined {
  const articleThousand =
    (raw[at]?.text === "a" && raw[at + 1]?.role === "thousand") ||
    (raw[at]?.role === "thousand" && !partBeforeThousand.has(raw[at - 1]?.text ?? ""));
  const head: (Part & { readonly scaled: boolean }) | undefined = articleThousand
    ? { value: 1, next: raw[at]?.role === "thousand" ? at : at + 1, plural: false, scaled: false }
    : (decimalThousand(raw, at) ?? belowThousand(raw, at));
  if (!head) return undefined;
  if (raw[head.next]?.role === "thousand") {
    const thousands = Math.round(head.value * 1000);
    const afterThousand = head.next + 1;
    const tailAt = raw[afterThousand]?.text === "and" || commaBeforeHundreds(raw, afterThousand) ? afterThousand + 1 : afterThousand;
    const tail = remainder(raw, tailAt);
    if (!tail || tail.value >= 1000 || (tailAt !== afterThousand && !tail.closed) || beginsAnew(raw, tailAt, tail))
      return pieceFrom(raw, at, afterThousand, `${thousands}`, "scaled");
    const figures = raw.slice(at, tail.next).filter((piece) => piece.role === "digits").length;
    const words = raw.slice(at, tail.next).filter((piece) => piece.value !== undefined && piece.role !== "digits").length;
    const mended = raw.slice(at, tail.next).some((piece) => piece.mended);
    const written = mended || (figures > 0 && words > 0) || figures > 1 ? "mixed" : "scaled";
    return pieceFrom(raw, at, tail.next, `${thousands + tail.value}${tail.plural ? "s" : ""}`, written);
  }
  if (!head.scaled) return undefined;
  return pieceFrom(raw, at, head.next, `${head.value}${head.plural ? "s" : ""}`, head.mended ? "mixed" : "scaled");
}

/** Words after the rest of a mileage or a price that was cut in two by a caption's border. */
const restIsOver: ReadonlySet<string> = new Set(
  ", . miles mile on original actual kilometers kilometres dollars bucks pounds quid and so but it it's that's which".split(" "),
);

/** "… two hundred and forty thousand | four ten gears": a shorthand that opens a caption is a number of its own unless nothing else is made of it. */
function beginsAnew(raw: readonly RawPiece[], tailAt: number, tail: Part & { readonly scaled?: boolean }): boolean {
  const opener = raw[tailAt];
  if (!opener?.opensCaption || tail.scaled || (opener.role === "digits" && opener.text.length === 3)) return false;
  const after = raw[tail.next];
  return after !== undefined && !restIsOver.has(after.text);
}

/** "half a thousand", "a few thousand": the word alone is no 1000 there. */
const partBeforeThousand: ReadonlySet<string> = new Set(["half", "quarter", "quarters", "few", "several", "couple", "of", "many"]);

/** "twenty two thousand, four hundred": a recogniser's comma inside one number. */
function commaBeforeHundreds(raw: readonly RawPiece[], at: number): boolean {
  return raw[at]?.text === "," && belowThousand(raw, at + 1)?.scaled === true;
}

/** "1.5 thousand". */
function decimalThousand(raw: readonly RawPiece[], at: number): (Part & { readonly scaled: boolean }) | undefined {
  const piece = raw[at];
  if (piece?.role !== "digits" || raw[at + 1]?.role !== "thousand" || Number.isInteger(piece.value)) return undefined;
  return { value: piece.value!, next: at + 1, plural: false, scaled: false };
}

/** What may follow "thousand": 412, four hundred and twelve, one fifty seven, oh nine; `closed` where it cannot be a count of its own. */
function remainder(raw: readonly RawPiece[], at: number): (Part & { readonly closed: boolean }) | undefined {
  const first = raw[at];
  if (!first) return undefined;
  if (first.text === "oh" || first.role === "zero") {
    const ones = raw[at + 1];
    return ones?.role === "ones" ? { value: ones.value!, next: at + 2, plural: false, closed: true } : undefined;
  }
  const cardinal = belowThousand(raw, at);
  if (!cardinal || first.role === "hundred") return undefined;
  if (!cardinal.scaled && cardinal.value < 10 && cardinal.next === at + 1) {
    const shorthand = smallCardinal(raw, at + 1);
    if (shorthand && shorthand.value >= 10 && shorthand.value < 100)
      return { value: cardinal.value * 100 + shorthand.value, next: shorthand.next, plural: shorthand.plural, closed: true };
    const zero = raw[at + 1];
    const ones = raw[at + 2];
    if ((zero?.text === "oh" || zero?.role === "zero") && ones?.role === "ones")
      return { value: cardinal.value * 100 + ones.value!, next: at + 3, plural: false, closed: true };
  }
  if (raw[cardinal.next]?.role === "thousand") return undefined;
  return { ...cardinal, closed: cardinal.scaled || cardinal.value <= 99 };
}

/** "twenty second" is 22nd; "thirty seconds" is thirty-seconds (of an inch); "30 seconds" after a number likewise. Other "N seconds" are time. */
function foldOrdinal(raw: readonly RawPiece[], at: number): Folded | undefined {
  const tens = raw[at];
  const ordinal = raw[at + 1];
  if (ordinal?.role !== "ordinal" || ordinal.value === undefined || tens?.value === undefined) return undefined;
  if (tens.plural || (tens.role !== "tens" && !(tens.role === "digits" && ordinal.text.startsWith("2th") && tens.value === 30)))
    return undefined;
  if (ordinal.value > 9) return undefined;
  const value = tens.value + ordinal.value;
  if (ordinal.plural && value !== 32 && value !== 64) return undefined;
  return pieceFrom(raw, at, at + 2, `${value}th${ordinal.plural ? "s" : ""}`, "words");
}
