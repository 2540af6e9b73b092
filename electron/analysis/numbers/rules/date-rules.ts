import { monthWords } from "../../vocabulary/number-words.ts";
import { type Draft, digitsOf, type NumberRule, phraseRule } from "../rule.ts";
import { dateCodeDrafts, fullYear, yearPrepositions } from "./date-drafts.ts";

const months = Object.keys(monthWords).join("|");
const monthNumber: Readonly<Record<string, number>> = monthWords;
const monthNames = [
  "january",
  "february",
  "march",
  "april",
  "may",
  "june",
  "july",
  "august",
  "september",
  "october",
  "november",
  "december",
];
const monthLeads: ReadonlySet<string> = new Set("in last since was until till back from by this early late mid done every".split(" "));
/** A year as it is said after "of" or a month: 1969, 19 69, 69, '69, oh 5, 2000 and 9. */
const year = "(?:the (?:year )?)?(?<year>(?:19|20) (?:oh )?\\d{1,2}|(?:19|20)\\d\\d|'?\\d\\d|oh \\d)";
const twoDigits = (value: number) => String(value).padStart(2, "0");

/** Beside these March is a month, and nobody marches. */
const paperWords =
  /\b(?:mot|ticket|stamp|stamped|service|serviced|receipt|bill|invoice|paper|dated|one|bottom|top|last|sticker|tag) (?:\S+ ){0,3}$/;

function yearOf(said: string): number | undefined {
  const digits = digitsOf(said);
  if (digits.length === 4) {
    const value = Number(digits);
    return value >= 1900 && value <= 2039 ? value : undefined;
  }
  return digits.length === 2 ? fullYear(Number(digits)) : undefined;
}

function weekDraft(week: number, said: string, weight: number, repaired = false): Draft[] {
  const value = yearOf(said);
  return value === undefined || week < 1 || week > 99
    ? []
    : [{ kind: "date-code", value: `${value}-W${twoDigits(week)}`, weight, repaired, topic: "date-code" }];
}

/** Weeks, months and days. */
export const dateRules: readonly NumberRule[] = [
  phraseRule(
    {
      name: "ordinal-week-of-year",
      example: { heard: "twenty second week of 2019", meant: "2019-W22" },
      pattern: `(?<week>\\d{1,2})th week (?:(?:of|in|from|,) )?${year}`,
    },
    ({ week = "", year: said = "" }) => weekDraft(Number(week), said, 0.96),
  ),
  phraseRule(
    {
      name: "year-and-ordinal-week",
      example: { heard: "those tires are from twenty twenty the thirtieth week", meant: "2020-W30" },
      pattern: `${year} (?:, )?(?:the )?(?<week>\\d{1,2})th week(?! of)`,
    },
    ({ week = "", year: said = "" }) => (digitsOf(said).length === 4 ? weekDraft(Number(week), said, 0.96) : []),
  ),
  phraseRule(
    {
      name: "week-of-year",
      example: { heard: "week 14 of 2019", meant: "2019-W14" },
      pattern: `week (?:number )?(?<week>\\d{1,2}) (?:(?:of|in|,) )?${year}`,
    },
    ({ week = "", year: said = "" }) => weekDraft(Number(week), said, 0.96),
  ),
  phraseRule(
    {
      name: "date-code-with-leading-zero",
      example: { heard: "dot is oh three twenty", meant: "0320" },
      pattern: "(?:oh|0) (?<week>[1-9]) (?<year>[0-3]\\d|oh \\d)",
    },
    ({ week = "", year: said = "" }) => [
      { kind: "date-code", value: `0${week}${digitsOf(said)}`, weight: 0.5, repaired: true, topic: "date-code" },
    ],
  ),
  phraseRule(
    {
      name: "date-code-half-spelled",
      example: { heard: "the date on this one is three eight fifteen", meant: "3815" },
      pattern: "(?<digits>(?:\\d|oh) (?:\\d|oh) (?:[0-3]\\d|oh \\d)|[0-5]\\d (?:\\d|oh) (?:\\d|oh))",
    },
    ({ digits = "" }) => {
      const code = digitsOf(digits);
      return code.length === 4 ? dateCodeDrafts(code, true).map((draft) => ({ ...draft, needsTopic: true })) : [];
    },
  ),
  phraseRule(
    {
      name: "month-day-year",
      example: { heard: "the fourth of January 1965", meant: "1965-01-04" },
      pattern: `(?:(?<day>\\d{1,2})(?:th)? (?:of )?(?:the )?(?<month>${months})|(?<monthFirst>${months}) (?:the )?(?<dayAfter>\\d{1,2})th)(?: ,)?(?: of)? ${year}`,
    },
    ({ day = "", dayAfter = "", month = "", monthFirst = "", year: said = "" }) => {
      const value = yearOf(said);
      const number = Number(day || dayAfter);
      if (value === undefined || number < 1 || number > 31) return [];
      return [{ kind: "date", value: `${value}-${twoDigits(monthNumber[month || monthFirst]!)}-${twoDigits(number)}`, weight: 0.95 }];
    },
  ),
  phraseRule(
    {
      name: "month-of-year",
      example: { heard: "bought it new in April of 69", meant: "1969-04" },
      pattern: `(?<month>${months})(?: ,)?(?: (?:of|in))? ${year}`,
    },
    ({ month = "", year: said = "" }, line, first) => {
      const value = yearOf(said);
      // "may" and "march" are verbs too: a bare two-digit number after them is no year without "of".
      const linked = / (?:of|in) /.test(line.text.slice(line.starts[first], line.starts[first]! + month.length + 5));
      if (
        value === undefined ||
        ((month === "may" || month === "march") &&
          !linked &&
          digitsOf(said).length < 4 &&
          !yearPrepositions.has(line.pieces[first - 1]?.text ?? "") &&
          !(month === "march" && paperWords.test(line.text.slice(Math.max(0, line.starts[first]! - 50), line.starts[first]))))
      )
        return [];
      return [
        {
          kind: "date",
          value: `${value}-${twoDigits(monthNumber[month]!)}`,
          // "october 68" and "october '68" can be no day of the month.
          weight: digitsOf(said).length === 4 || linked ? 0.93 : said.startsWith("'") || Number(said) > 31 ? 0.95 : 0.6,
        },
      ];
    },
  ),
  phraseRule(
    {
      name: "written-day",
      example: { heard: "registered 28/03/2014", meant: "2014-03-28" },
      pattern: "(?<first>\\d{1,2}) (?<sign>[/-]) (?<second>\\d{1,2}) [/-] (?<year>(?:19|20)\\d\\d|\\d\\d)",
    },
    ({ first = "", second = "", sign, year: said = "" }, line) => {
      // 28/03 can be read one way only; otherwise British narrators put the day first, American ones the month.
      const [one, two] = [Number(first), Number(second)];
      const dayFirst = one > 12 || (two <= 12 && line.british);
      const [day, month] = dayFirst ? [one, two] : [two, one];
      const value = said.length === 4 ? Number(said) : fullYear(Number(said));
      if (month < 1 || month > 12 || day < 1 || day > 31 || (sign === "-" && said.length < 4)) return [];
      return [{ kind: "date", value: `${value}-${twoDigits(month)}-${twoDigits(day)}`, weight: said.length === 4 ? 0.95 : 0.6 }];
    },
  ),
  phraseRule(
    {
      name: "month-day-year-cast",
      example: { heard: "there's your casting date eleven five sixty nine", meant: "1969-11-05" },
      pattern: "(?<month>1[0-2]|[1-9]) (?<day>3[01]|[12]\\d|[1-9]) (?<year>[3-9]\\d)",
    },
    ({ month = "", day = "", year: said = "" }, line, first) =>
      // Foundries put the month first; only talk of a casting makes such figures a date.
      /\b(?:cast(?:ing)? (?:dates?|codes?)|poured|foundry)\b[^.]*$/.test(
        line.text.slice(Math.max(0, line.starts[first]! - 80), line.starts[first]),
      )
        ? [{ kind: "date", value: `19${said}-${twoDigits(Number(month))}-${twoDigits(Number(day))}`, weight: 0.8, repaired: true }]
        : [],
  ),
  phraseRule(
    {
      name: "month-slash-year",
      example: { heard: "door tag says 09/96", meant: "1996-09" },
      pattern: "(?<month>0[1-9]|1[0-2]|[1-9]) / (?<year>(?:19|20)?\\d\\d)",
    },
    ({ month = "", year: said = "" }, line, first) => {
      if (line.pieces[first - 1]?.text === "/") return [];
      const value = yearOf(said);
      // 9/16 is a fraction and 8/32 tread; a leading zero, a full year or an old one is a date.
      if (value === undefined || !(month.startsWith("0") || said.length === 4 || value < 2000)) return [];
      return Number(said) === 64 && !month.startsWith("0")
        ? []
        : [{ kind: "date", value: `${value}-${twoDigits(Number(month))}`, weight: 0.85 }];
    },
  ),
  phraseRule(
    {
      name: "month-and-year-of-build",
      example: { heard: "see where it says built ten fourteen", meant: "2014-10" },
      pattern: "(?<month>1[0-2]|0?[1-9]|oh [1-9]) (?<joint>(?:/|-|of) )?(?<year>\\d\\d|oh \\d)",
    },
    ({ month = "", year: said = "", joint }, line, first) => {
      // "built three fifty" is an engine: a single digit is a month only with its zero or a word between.
      const inFigures = line.pieces[first]!.written === "digits" && line.pieces[first + 1]?.written === "digits";
      const afterSays = /\bsays (?:it was )?built $/.test(line.text.slice(Math.max(0, line.starts[first]! - 20), line.starts[first]));
      if (/^[1-9]$/.test(month) && !joint && !inFigures && !(afterSays && Number(digitsOf(said)) <= 35)) return [];
      if (
        !/(?:built|manufactured|build date|date of manufacture|dated|date is|date's|date code is|(?:tag|sticker|label|plate|jamb)(?: \S+){0,4}? says)(?: (?:in|on|is|says|of))? $/.test(
          line.text.slice(Math.max(0, line.starts[first]! - 40), line.starts[first]),
        )
      )
        return [];
      return [
        { kind: "date", value: `${fullYear(Number(digitsOf(said)))}-${twoDigits(Number(digitsOf(month)))}`, weight: 0.75, topic: "year" },
      ];
    },
  ),
  phraseRule(
    {
      name: "month-alone",
      example: { heard: "last oil change was March", meant: "march" },
      pattern: `(?:the )?(?<month>${months})(?<told> of (?:this|last) year)?(?! (?:(?:of|in) )?(?:the )?'?\\d)`,
    },
    ({ month = "", told }, line, first) => {
      // Three months are words or names as well: only a word that asks for a date makes them one.
      const before = line.pieces[first - 1]?.text ?? "";
      if (!told && !monthLeads.has(before)) return [];
      const number = monthNumber[month]!;
      return [{ kind: "date", value: monthNames[number - 1]!, parts: [number], weight: 0.4 }];
    },
  ),
  phraseRule(
    {
      name: "month-and-day",
      example: { heard: "MOT runs to the 14th of March", meant: "--03-14" },
      pattern: `(?:the )?(?<day>\\d{1,2})th of (?<month>${months})`,
    },
    ({ day = "", month = "" }) =>
      Number(day) >= 1 && Number(day) <= 31
        ? [{ kind: "date", value: `--${twoDigits(monthNumber[month]!)}-${twoDigits(Number(day))}`, weight: 0.7 }]
        : [],
  ),
];
