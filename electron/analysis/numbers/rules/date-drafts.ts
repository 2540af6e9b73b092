import type { Piece } from "../pieces.ts";
import type { Draft } from "../rule.ts";

/** Vehicles and their papers: 1900 up to the years a stored recording can reach. */
const earliestYear = 1900;
const latestYear = 2039;

/** "69" is 1969 and "14" 2014: two digits up to this are of this century. Vehicles older than 1940 are rarely called by two digits. */
const lastShortYearOfThisCentury = 35;

export function fullYear(twoDigits: number): number {
  return twoDigits <= lastShortYearOfThisCentury ? 2000 + twoDigits : 1900 + twoDigits;
}

/** Years that plain digits may be: four digits as they stand, two digits by the usual century. Decades ("the sixties") are no years. */
export function yearDrafts(digits: string, how: { decade: boolean; written: Piece["written"] }): Draft[] {
  const value = Number(digits);
  if (how.decade) return [];
  if (digits.length === 4 && value >= earliestYear && value <= latestYear) {
    const round = value % 100 === 0 || (value >= 2010 && value % 10 === 0 && how.written === "scaled");
    return [
      {
        kind: "year",
        value,
        weight: round ? 0.5 : how.written === "scaled" && value > 2000 ? 0.84 : how.written === "scaled" ? 0.72 : 0.75,
        topic: "year",
      },
    ];
  }
  if (digits.length === 2 && value >= 0) {
    const full = fullYear(value);
    const drafts: Draft[] = [{ kind: "year", value: full, weight: value >= 46 ? 0.3 : 0.12, topic: "year", needsTopic: value < 46 }];
    // A pre-war car may be called by its two digits too ("the original 35 rails").
    if (value >= 20 && value <= lastShortYearOfThisCentury)
      drafts.push({ kind: "year", value: 1900 + value, weight: 0.1, topic: "year", needsTopic: true });
    return drafts;
  }
  return [];
}

/**
 * Week and year of a tire's identification number: WWYY since 2000, WWY before (49 CFR 574.5; weeks 01 to 53). A week past 53 is kept with
 * little weight where it was said as a code, because a reviewer must see it.
 */
export function dateCodeDrafts(digits: string, spokenApart: boolean): Draft[] {
  const week = Number(digits.slice(0, 2));
  if (digits.length === 4) {
    const year = 2000 + Number(digits.slice(2));
    const plausible = week >= 1 && week <= 53 && year <= latestYear;
    const asYear = Number(digits) >= earliestYear && Number(digits) <= latestYear;
    if (!plausible)
      return year <= latestYear
        ? [
            {
              kind: "date-code",
              value: digits,
              weight: spokenApart && week <= 99 ? 0.22 : 0.1,
              repaired: spokenApart,
              topic: "date-code",
              needsTopic: true,
            },
          ]
        : [];
    return [
      { kind: "date-code", value: digits, weight: asYear ? 0.3 : spokenApart ? 0.52 : 0.35, repaired: spokenApart, topic: "date-code" },
    ];
  }
  if (digits.length === 3) {
    const plausible = week >= 1 && week <= 53;
    return [
      {
        kind: "date-code",
        value: digits,
        weight: plausible ? (spokenApart ? 0.35 : 0.15) : 0.05,
        repaired: spokenApart,
        topic: "date-code",
        needsTopic: !spokenApart || !plausible,
      },
    ];
  }
  return [];
}

/** "ten fourteen" on a door sticker: October 2014. */
export function monthOfYearDrafts(digits: string): Draft[] {
  const month = Number(digits.slice(0, 2));
  const year = 2000 + Number(digits.slice(2));
  if (month < 1 || month > 12 || year > latestYear) return [];
  return [{ kind: "date", value: `${year}-${String(month).padStart(2, "0")}`, weight: 0.2, topic: "year", needsTopic: true }];
}

/** Words after which two digits are rather a year. */
export const yearPrepositions: ReadonlySet<string> = new Set("in since from until till before after of back".split(" "));
