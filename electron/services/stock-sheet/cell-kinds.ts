import type { CellKind } from "../../../shared-types/index.ts";

interface KindRow {
  /** What the cell must be; undefined where anything goes. */
  readonly fits: RegExp;
  /** "is no …" */
  readonly noun: string;
  /** How to write it. */
  readonly example: string;
}

/** A whole number with or without commas by thousands. A point before three figures is left out: it may be either. */
const whole = String.raw`(?:\d{1,3}(?:,\d{3})+|\d+)`;

/** How a cell must look to be read without a guess. "52k" and "61.240" look like figures and would be read as 52 and 61. */
const kinds: Partial<Record<CellKind, KindRow>> = {
  words: { fits: /\p{L}/u, noun: "word", example: "“blue”" },
  year: { fits: /^(?:18[89]\d|19\d\d|20\d\d)$/, noun: "year of four figures", example: "1971" },
  distance: {
    fits: new RegExp(String.raw`^${whole}(?:\.\d{1,2})?\s*(?:mi\.?|miles?|km|kms|kilomet(?:er|re)s?)?\s*(?:\(.*\))?$`, "i"),
    noun: "distance that can be read without a guess",
    example: "61240, 61,240 or 61,240 km",
  },
  money: {
    fits: new RegExp(String.raw`^(?:[$£€]|usd|gbp|eur)?\s*${whole}(?:\.\d{1,2})?\s*(?:[$£€]|usd|gbp|eur)?$`, "i"),
    noun: "sum that can be read without a guess",
    example: "32900 or $32,900",
  },
  count: { fits: /^\d{1,2}(?:[ -]?(?:speed|cyl|door|owner|key)\w*)?$/i, noun: "whole number", example: "2" },
  figure: { fits: /\d/, noun: "figure", example: "3.73" },
  vin: { fits: /^(?=.*\d)[a-z0-9 -]{5,24}$/i, noun: "VIN", example: "its 17 letters and figures" },
};

/** What dealers write where they have nothing to write; common practice. */
const blank = /^(?:[-–—?.]+|n\/?a|none|null|unknown|unk|tbd|tba|tmu|exempt|see notes|not known|not actual)$/i;

/** Whether a cell tells nothing. */
export function isBlank(cell: string): boolean {
  return cell === "" || blank.test(cell);
}

export function fitsKind(kind: CellKind, cell: string): boolean {
  return isBlank(cell) || (kinds[kind]?.fits.test(cell) ?? true);
}

/** What is wrong with a cell, and how to write it: "is no whole number; write it as 2". */
export function misfitOf(kind: CellKind): string {
  const row = kinds[kind];
  return row ? `is no ${row.noun}. Write it as ${row.example}` : "cannot be read";
}

/** "word", "year of four figures". */
export function nounOf(kind: CellKind): string {
  return kinds[kind]?.noun ?? "text";
}
