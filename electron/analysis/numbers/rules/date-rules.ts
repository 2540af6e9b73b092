import { monthWords } from "../../vocabulary/number-words.ts";
import { type Draft, digitsOf, type NumberRule, phraseRule } from "../rule.ts";
import { fullYear } from "./date-drafts.ts";

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

const articles: ReadonlySet<string> = new Set("a an his her their another original the".split(" "));
const yearPrepositions: ReadonlySet<string> = new Set("in since from until till before after of back".split(" "));
/** Words that make two digits before them a measure or a count. */
const notAfterYear =
  /^(?:\d.*|inch(?:es)?|miles?|pounds?|percent|%|degrees?|gallons?|volts?|amps?|series|profile|minutes?|seconds?|hours?|days?|years?|thousand|grand|k|mm|over|x|on|gauge|spline|tooth|feet|foot|horse|point|r|or|to|quid|bucks|dollars?|psi|bar|lit(?:er|re)s?|cc|mph|kilo\w*|pieces?|of|off|gallon|amp|plus|something|point|wide|page|millimet\w+)$/;

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
          !yearPrepositions.has(line.pieces[first - 1]?.text ?? ""))
      )
        return [];
      return [
        { kind: "date", value: `${value}-${twoDigits(monthNumber[month]!)}`, weight: digitsOf(said).length === 4 || linked ? 0.93 : 0.6 },
      ];
    },
  ),
  phraseRule(
    {
      name: "month-slash-year",
      example: { heard: "door tag says 09/96", meant: "1996-09" },
      pattern: "(?<month>0[1-9]|1[0-2]|[1-9]) / (?<year>(?:19|20)?\\d\\d)",
    },
    ({ month = "", year: said = "" }) => {
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
      if (/^[1-9]$/.test(month) && !joint) return [];
      if (
        !/(?:built|manufactured|build date|date of manufacture|tag says|sticker says|label says|plate says)(?: (?:in|on|is|says|of))? $/.test(
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
  phraseRule(
    { name: "year-with-mark", example: { heard: "it's a '69", meant: 1969 }, pattern: "'(?<digits>\\d\\d)" },
    ({ digits = "" }) => [
      { kind: "year", value: Number(digits) >= 27 ? 1900 + Number(digits) : 2000 + Number(digits), weight: 0.93, topic: "year" },
    ],
  ),
  phraseRule(
    { name: "year-oh", example: { heard: "he bought it in oh five", meant: 2005 }, pattern: "oh (?<digit>[1-9])" },
    ({ digit = "" }, line, first) => {
      const before = line.pieces[first - 1]?.text ?? "";
      return [
        {
          kind: "year",
          value: 2000 + Number(digit),
          weight: articles.has(before) || yearPrepositions.has(before) || before === "of" ? 0.8 : 0.35,
          topic: "year",
        },
      ];
    },
  ),
  phraseRule(
    {
      name: "year-nineteen-oh",
      example: { heard: "nineteen oh eight", meant: 1908 },
      pattern: "(?<century>19|20) (?:oh|0|ought|aught) (?<digit>\\d)",
    },
    ({ century = "", digit = "" }) => [{ kind: "year", value: Number(`${century}0${digit}`), weight: 0.8, topic: "year" }],
  ),
  phraseRule(
    {
      name: "decade",
      example: { heard: "some kid in the sixties", meant: "1960s" },
      pattern: "(?:the|an?) (?:(?:early|late|mid) )?(?:19)?'?(?<decade>[2-9]0)s",
    },
    ({ decade = "" }) => [
      { kind: "range", value: `19${decade}s`, parts: [1900 + Number(decade), 1909 + Number(decade)], weight: 0.55, topic: "year" },
    ],
  ),
  phraseRule(
    {
      name: "model-year-before-engine",
      example: { heard: "it's got a 69 350 in it", meant: 1969 },
      pattern: "'?(?<digits>[2-9]\\d)(?= (?:\\d{3}|[2-5] \\d\\d) (?!0))",
    },
    ({ digits = "" }, line, first) => {
      const before = line.pieces[first - 1]?.text ?? "";
      return /^(?:a|an|the|his|her|their|of)$/.test(before)
        ? [{ kind: "year", value: 1900 + Number(digits), weight: 0.75, topic: "year" }]
        : [];
    },
  ),
  phraseRule(
    {
      name: "short-year-after-article",
      example: { heard: "off a 78 tolland", meant: 1978 },
      pattern: "(?<digits>[2-9]\\d)(?= (?<next>\\S+)|$)",
    },
    ({ digits = "", next = "" }, line, first) => {
      const before = line.pieces[first - 1]?.text ?? "";
      if (!articles.has(before) || notAfterYear.test(next)) return [];
      const value = Number(digits);
      const weight = before === "the" ? 0.5 : 0.68;
      if (value >= 46) return [{ kind: "year", value: 1900 + value, weight, topic: "year" }];
      // A pre-war car or part; the same digits of this century come second.
      return [
        { kind: "year", value: 1900 + value, weight: line.prewar ? weight - 0.04 : weight - 0.18, topic: "year" },
        ...(value <= 35 ? [{ kind: "year" as const, value: 2000 + value, weight: weight - 0.22, topic: "year" as const }] : []),
      ];
    },
  ),
  phraseRule(
    {
      name: "short-year-after-preposition",
      example: { heard: "let the fella next door have it in 77", meant: 1977 },
      pattern: "(?<digits>[4-9]\\d)(?= (?<next>\\S+)|$)",
    },
    ({ digits = "", next = "" }, line, first) => {
      const before = line.pieces[first - 1]?.text ?? "";
      const hedged = /\b(?:in|since|back in|from) (?:\S+ ){0,3}(?:say|think|about|around|like|maybe|was|oh) $/.test(
        line.text.slice(Math.max(0, line.starts[first]! - 48), line.starts[first]),
      );
      return Number(digits) >= 46 && (yearPrepositions.has(before) || hedged) && !notAfterYear.test(next)
        ? [{ kind: "year", value: 1900 + Number(digits), weight: 0.66, topic: "year" }]
        : [];
    },
  ),
  phraseRule(
    {
      name: "registration-plate-year",
      example: { heard: "it's on a 12 plate", meant: 2012 },
      pattern: "(?<digits>[0-7]\\d|oh [1-9])(?= (?:plate|reg|registered|registration))",
    },
    ({ digits = "" }, line) => {
      const number = Number(digitsOf(digits));
      // British plates since September 2001: 02 to 49 for spring, the year plus 50 for autumn. Older cars are called by their year.
      const modern = number >= 51 ? 2000 + number - 50 : number >= 1 ? 2000 + number : undefined;
      const drafts: Draft[] = [];
      if (modern !== undefined) drafts.push({ kind: "year", value: modern, weight: line.classic ? 0.4 : 0.75, topic: "year" });
      if (number >= 46) drafts.push({ kind: "year", value: 1900 + number, weight: line.classic ? 0.75 : 0.4, topic: "year" });
      return drafts;
    },
  ),
  phraseRule(
    {
      name: "clock-time-written",
      example: { heard: "we open at 9:30", meant: "9:30" },
      pattern: "(?<hour>1?\\d|2[0-3]) : (?<minute>[0-5]\\d)",
    },
    ({ hour = "", minute = "" }) => [{ kind: "clock-time", value: `${Number(hour)}:${minute}`, weight: 0.55, topic: "time" }],
  ),
  phraseRule(
    {
      name: "clock-time",
      example: { heard: "stop by at five thirty pm", meant: "5:30" },
      pattern: "(?<hour>1[0-2]|[1-9])(?: (?<minute>[0-5]\\d|oh \\d))? (?:o'clock|a m|p m|am|pm|in the morning|in the afternoon|at night)",
    },
    ({ hour = "", minute = "" }) => [
      { kind: "clock-time", value: `${hour}:${minute ? digitsOf(minute).padStart(2, "0") : "00"}`, weight: 0.9, topic: "time" },
    ],
  ),
  phraseRule(
    {
      name: "clock-time-until",
      example: { heard: "open till five thirty", meant: "5:30" },
      pattern: "(?<hour>1[0-2]|[1-9])(?: (?<minute>00|15|30|45))?",
    },
    ({ hour = "", minute = "" }, line, first) =>
      /^(?:till|til|until)$/.test(line.pieces[first - 1]?.text ?? "")
        ? [{ kind: "clock-time", value: `${hour}:${minute || "00"}`, weight: 0.8, topic: "time" }]
        : [],
  ),
];
