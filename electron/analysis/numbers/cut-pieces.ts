import type { Caption } from "../../../shared-types/index.ts";
import type { Token } from "../model.ts";
import { lookUp, onesWords, ordinalWords, teenWords, tensWords, zeroWords } from "../vocabulary/number-words.ts";
import { joinCutWords } from "./join-cut-words.ts";
import type { Piece } from "./pieces.ts";

/** A piece before tens and hundreds are put together. */
export interface RawPiece extends Piece {
  /** What the word is to the number grammar; undefined for anything else. */
  readonly role?: "ones" | "teen" | "tens" | "zero" | "hundred" | "thousand" | "million" | "digits" | "ordinal" | undefined;
  readonly value?: number | undefined;
  readonly plural?: boolean | undefined;
  /** True for the first piece of a caption that is not the first of the speech. */
  readonly opensCaption?: boolean | undefined;
  /** True for a number word put together from words a recogniser wrote for its parts ("for teen"). */
  readonly mended?: boolean | undefined;
}

/** Numbers, ordinals and plural digits as a recogniser writes them, letters, signs. One scan cuts a token into these. */
const scan = /'\d\d(?:s|'s)?(?![\d])|\d{1,3}(?:,\d{3})+(?:\.\d+)?|\d*\.\d+|\d+|[a-zµ·°]+(?:'[a-z]+)?|[$£€%/°"]|[-–x×+:]/gu;

/** The papers of a British vehicle. */
const paperNames: ReadonlySet<string> = new Set(["v5", "v5c", "v55", "v62"]);

/** Model names and the like: letters followed by digits that are no tire part. Their digits are no numbers. */
const nameWithDigits = /^(?!(?:r|zr|tr|hr|vr|sr|p|lt|t|st|v|[a-n]r?(?=\d\d(?:-\d\d)?$))\d)[a-z]+-?\d+[a-z-]*\d*$/;
const written = /^[$£€']?\d/;

const vinLike = /^(?=.*\d.*\d)(?=.*[a-z].*[a-z])[a-z0-9]{9,17}$/;

export function cutPieces(tokens: readonly Token[], captions: readonly Caption[]): RawPiece[] {
  const pieces: RawPiece[] = [];
  for (const token of tokens) {
    // "two thirty five, uh, sixty fifteen": a filler parts no number, and neither does the comma after it.
    if (fillers.has(token.word)) continue;
    const from = pieces.length;
    cutToken(token, captions, pieces);
    const first = pieces[from];
    if (first && token.index > 0 && tokens[token.index - 1]!.caption !== token.caption) pieces[from] = { ...first, opensCaption: true };
    const sign = signAfter(token.after);
    if (sign) pieces.push({ text: sign, first: token.index, end: token.index + 1, glued: true, written: "none" });
    const stop = stopAfter(token.after);
    if (stop) pieces.push({ text: stop, first: token.index + 1, end: token.index + 1, glued: true, written: "none" });
  }
  return joinCutWords(pieces);
}

const fillers: ReadonlySet<string> = new Set(["uh", "um", "uhm", "er", "erm", "ah", "hmm"]);

/** A full stop parts numbers for good; a comma or dash only where a rule does not expect one. Three dots are a pause. */
function stopAfter(after: string): "." | "," | "" {
  if (/^["'’”″)\]%°-]*$/.test(after)) return "";
  if (/[?!;]/.test(after) || (after.includes(".") && !after.includes("..") && !after.includes("…"))) return ".";
  return /[,:–—.…-]/.test(after) ? "," : "";
}

/** Signs that a tokenizer leaves behind a figure: percent, degrees, and the inch mark. */
function signAfter(after: string): "%" | "°" | "''" | "" {
  if (after.startsWith("%")) return "%";
  if (after.startsWith("°")) return "°";
  return /^(?:["″”]|'')/.test(after) ? "''" : "";
}

const vulgarFractions: Readonly<Record<string, string>> = {
  "½": "1/2",
  "¼": "1/4",
  "¾": "3/4",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
  "⅓": "1/3",
  "⅔": "2/3",
};

function cutToken(token: Token, captions: readonly Caption[], pieces: RawPiece[]): void {
  const { index } = token;
  const word = /[½¼¾⅛⅜⅝⅞⅓⅔]/.test(token.word)
    ? token.word.replace(/[½¼¾⅛⅜⅝⅞⅓⅔]/g, (sign) => ` ${lookUp(vulgarFractions, sign)!}`)
    : token.word;
  const whole = (text: string): RawPiece => ({ text, first: index, end: index + 1, glued: false, written: "none" });
  if (!/\d/.test(word)) {
    cutWords(word, index, pieces);
    return;
  }
  if (paperNames.has(word.replace(/'s$/, "")) || vinLike.test(word) || (nameWithDigits.test(word) && !written.test(word))) {
    pieces.push(whole(word.replace(/\s/g, "")));
    return;
  }
  let glued = false;
  // The tokenizer may leave a leading sign outside the token; it decides between money, a year and a count.
  const sign = captions[token.caption]?.text[token.start - 1];
  if (sign && "$£€".includes(sign) && !"$£€".includes(word[0] ?? "")) {
    pieces.push(whole(sign));
    glued = true;
  }
  const yearMark = sign === "'" || sign === "’";
  for (const [found] of word.matchAll(scan)) {
    const piece = pieceOf(yearMark && !glued && /^\d\ds?$/.test(found) ? `'${found}` : found, index, glued);
    const last = pieces.at(-1);
    if (/^'?s$/.test(found) && glued && last?.role === "digits") {
      pieces[pieces.length - 1] = { ...last, text: `${last.text}s`, plural: true };
    } else if (/^(?:st|nd|rd|th)s?$/.test(found) && glued && last?.role === "digits") {
      pieces[pieces.length - 1] = { ...last, text: `${last.text}th${found.endsWith("s") ? "s" : ""}`, role: "ordinal" };
    } else pieces.push(piece);
    glued = true;
  }
}

function pieceOf(found: string, index: number, glued: boolean): RawPiece {
  const base = { first: index, end: index + 1, glued };
  if (/^'\d\d/.test(found)) return { ...base, text: found.replace("'s", "s"), written: "digits", role: undefined };
  if (/\d/.test(found)) {
    const plain = found.replaceAll(",", "").replace(/^\./, "0.");
    return { ...base, text: plain, written: "digits", role: "digits", value: Number(plain) };
  }
  const text = found === "×" ? "x" : found === "–" ? "-" : found === '"' ? "''" : found;
  return { ...base, text, written: "none" };
}

/** "thirty-five", "two-door", "twenty-second": hyphens part number words; other words stay whole. */
function cutWords(word: string, index: number, pieces: RawPiece[]): void {
  const parts = word.includes("-") ? word.split("-").filter((part) => part !== "") : [word];
  if (
    parts.length === 1 ||
    !parts.some((part) => wordPiece(part, index, false).role !== undefined || part === "half" || part === "quarter")
  ) {
    pieces.push(
      parts.length === 1 ? wordPiece(word, index, false) : { text: word, first: index, end: index + 1, glued: false, written: "none" },
    );
    return;
  }
  for (const [position, part] of parts.entries()) pieces.push(wordPiece(part, index, position > 0));
}

function wordPiece(word: string, index: number, glued: boolean): RawPiece {
  const base = { first: index, end: index + 1, glued };
  const bare = word.replace(/'s$/, "s");
  const singular = bare.endsWith("ies") ? `${bare.slice(0, -3)}y` : bare === "sixes" ? "six" : bare.replace(/s$/, "");
  for (const [form, plural] of [
    [word, false],
    [singular, true],
  ] as const) {
    if (plural && form === word) break;
    const suffix = plural ? "s" : "";
    const ones = lookUp(onesWords, form);
    if (ones !== undefined) return { ...base, text: `${ones}${suffix}`, written: "words", role: "ones", value: ones, plural };
    const teen = lookUp(teenWords, form);
    if (teen !== undefined) return { ...base, text: `${teen}${suffix}`, written: "words", role: "teen", value: teen, plural };
    const tens = lookUp(tensWords, form);
    if (tens !== undefined) return { ...base, text: `${tens}${suffix}`, written: "words", role: "tens", value: tens, plural };
    const ordinal = lookUp(ordinalWords, form);
    // "fourteen, second's a touch stiff" is second gear and no fourteen seconds.
    if (ordinal !== undefined && plural && word.endsWith("'s"))
      return { ...base, text: `${ordinal}th`, written: "words", role: "ordinal", value: ordinal };
    if (ordinal !== undefined) return { ...base, text: `${ordinal}th${suffix}`, written: "words", role: "ordinal", value: ordinal, plural };
  }
  if (zeroWords.includes(word)) return { ...base, text: "0", written: "words", role: "zero", value: 0 };
  if (word === "hundred" || word === "hunnerd" || word === "hundert") return { ...base, text: "hundred", written: "none", role: "hundred" };
  if (word === "thousand") return { ...base, text: "thousand", written: "none", role: "thousand" };
  if (word === "million") return { ...base, text: "million", written: "none", role: "million" };
  return { ...base, text: word === "o" || word === "owe" ? "oh" : word, written: "none" };
}
