import type { ClaimValue } from "../../../../shared-types/index.ts";

/** One reading of a tire's date: a week of a year, a year alone, or a week of a year known only by its last digit (before 2000). */
export interface TireDate {
  /** Null where only the last digit is known. */
  readonly year: number | null;
  readonly yearDigit: number;
  /** 1 to 53 where it is right; kept as found, so that a rule can refuse it. Null where only the year was said. */
  readonly week: number | null;
  /** 1 to 12 where the month was said in place of a week; else null. */
  readonly month: number | null;
}

/**
 * The readings of a date code or a spelled-out week. Four digits are week and year (WWYY), three digits week and the year's last digit
 * (before 2000; 49 CFR 574.5). Four digits that are also a year of this century ("2023") may be either.
 */
export function tireDatesOf(value: ClaimValue): readonly TireDate[] {
  const text = String(value).trim();
  const spelled = /^(\d{4})-W(\d{1,2})$/i.exec(text);
  if (spelled) return [weekOf(Number(spelled[1]), Number(spelled[2]))];
  const month = /^(\d{4})-(\d{2})$/.exec(text);
  if (month) return [{ year: Number(month[1]), yearDigit: Number(month[1]) % 10, week: null, month: Number(month[2]) }];
  const code = /^(\d{1,2})(\d{2})$/.exec(text);
  // A numeric code has lost its leading nought: 0419 comes as 419, and so does the three-digit code 419.
  if (/^\d{3}$/.test(text)) {
    const readings: TireDate[] = [{ year: null, yearDigit: Number(text[2]), week: Number(text.slice(0, 2)), month: null }];
    if (typeof value === "number") readings.push(weekOf(2000 + Number(text.slice(1)), Number(text[0])));
    return readings;
  }
  if (!code || text.length !== 4) return [];
  const readings = [weekOf(2000 + Number(code[2]), Number(code[1]))];
  const year = Number(text);
  if (year >= 1900 && year <= 2060) readings.push({ year, yearDigit: year % 10, week: null, month: null });
  return readings;
}

function weekOf(year: number, week: number): TireDate {
  return { year, yearDigit: year % 10, week, month: null };
}

const averageMonthDays = 365.25 / 12;

/** The month, 1 to 12, in which a week of the year has its middle day. Weeks outside the year give months outside it. */
export function monthOfWeek(week: number): number {
  return Math.floor(((week - 1) * 7 + 3.5) / averageMonthDays) + 1;
}

/** Whether week and month may be one date: speakers reckon four weeks to the month, so a month either way is no contradiction. */
function weekIsIn(week: number, month: number): boolean {
  return Math.abs(monthOfWeek(week) - month) <= 1;
}

export function tireDatesAgree(first: readonly TireDate[], second: readonly TireDate[]): boolean {
  return first.some((a) =>
    second.some(
      (b) =>
        (a.week === null || b.week === null || a.week === b.week) &&
        (a.month === null || b.month === null || a.month === b.month) &&
        (a.month === null || b.week === null || weekIsIn(b.week, a.month)) &&
        (b.month === null || a.week === null || weekIsIn(a.week, b.month)) &&
        (a.year === null || b.year === null
          ? a.yearDigit === b.yearDigit && (a.year ?? 1999) < 2000 && (b.year ?? 1999) < 2000
          : a.year === b.year),
    ),
  );
}
