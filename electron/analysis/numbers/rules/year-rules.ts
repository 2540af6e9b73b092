import { singleDigitCounts } from "../../vocabulary/number-words.ts";
import { type Draft, digitsOf, type NumberRule, phraseRule } from "../rule.ts";
import { yearPrepositions } from "./date-drafts.ts";

const articles: ReadonlySet<string> = new Set("a an his her their another original the".split(" "));
/** Words that make two digits before them a measure or a count. */
const notAfterYear =
  /^(?:\d.*|inch(?:es)?|miles?|pounds?|percent|%|degrees?|gallons?|volts?|amps?|series|profile|minutes?|seconds?|hours?|days?|years?|thousand|grand|k|mm|over|x|on|gauge|spline|tooth|feet|foot|horse|point|r|or|to|quid|bucks|dollars?|psi|bar|lit(?:er|re)s?|cc|mph|kilo\w*|pieces?|of|off|gallon|amp|plus|something|point|wide|page|millimet\w+)$/;

/** Years by their two digits, decades, plates; and times of day, which look like them. */
export const yearRules: readonly NumberRule[] = [
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
      const countsDoors = /^[2-5]$/.test(next) && singleDigitCounts.includes(line.pieces[first + 2]?.text ?? "");
      if (!articles.has(before) || (notAfterYear.test(next) && !countsDoors)) return [];
      const value = Number(digits);
      const weight = before === "the" ? 0.5 : 0.68;
      if (value >= 46) return [{ kind: "year", value: 1900 + value, weight, topic: "year" }];
      // A pre-war car or part; the same digits of this century come second, and first where the talk is of this century.
      const modern: Draft[] =
        value <= 35 ? [{ kind: "year", value: 2000 + value, weight: line.modern ? weight - 0.04 : weight - 0.22, topic: "year" }] : [];
      const lessPrewar = line.prewar ? 0.04 : line.modern ? 0.4 : 0.18;
      return [{ kind: "year", value: 1900 + value, weight: weight - lessPrewar, topic: "year" }, ...modern];
    },
  ),
  phraseRule(
    {
      name: "year-said-again-by-its-digits",
      example: { heard: "it's a 1965 and you want the six five", meant: 1965 },
      pattern: "(?<decade>[4-9]) (?<year>\\d)(?= (?<next>\\S+)|$)",
    },
    ({ decade = "", year = "", next = "" }, line, first) => {
      // "the five three" is an engine: only a year that is said in full is meant.
      const value = 1900 + Number(`${decade}${year}`);
      if (!line.years.has(value) || !articles.has(line.pieces[first - 1]?.text ?? "") || notAfterYear.test(next)) return [];
      return [{ kind: "year", value, weight: 0.62, repaired: true, topic: "year" }];
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
      pattern:
        "(?<hour>1[0-2]|[1-9])(?: (?<minute>[0-5]\\d|oh \\d))? (?:o'clock|(?:a m|am)(?! (?:f m|fm|radio|slash|/|and fm))|p m|pm|in the morning|in the afternoon|at night)",
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
