import { singleDigitCounts } from "../../vocabulary/number-words.ts";
import type { Line, Piece } from "../pieces.ts";
import { type Draft, digitsOf, type NumberRule, phraseRule, roundTo } from "../rule.ts";
import { dateCodeDrafts, monthOfYearDrafts, yearDrafts } from "./date-drafts.ts";
import { decimalDrafts, mishearing, pluralDrafts, threeDigitDrafts } from "./quantity-drafts.ts";

/** "Two thousand nine" is a year; from here on a lone digit after "thousand" may be of hundreds. */
const latestSpokenYear = 2050;

/** "sixty eight thousand and four" is 68,004; without its "and" the four is rather of hundreds. */
function saysAnd(line: Line, piece: Piece): boolean {
  return line.tokens.slice(piece.first, piece.end).some(({ word }) => word === "and");
}

/** Numbers as plain grammar says them: integers, decimals, thousands by letter. */
export const quantityRules: readonly NumberRule[] = [
  phraseRule(
    {
      name: "plain-integer",
      example: { heard: "about 300 of them", meant: 300 },
      pattern: "(?<minus>minus )?(?<digits>\\d+)(?<plural>s?)",
      takesUnit: true,
    },
    ({ digits = "", minus, plural }, line, first) => {
      const value = Number(digits) * (minus ? -1 : 1);
      const piece = line.pieces[first]!;
      const { written } = piece;
      const scaled = written === "scaled" || written === "mixed";
      // "two thousand and four" is a year far oftener than a count here.
      const weight = scaled ? (value > 2000 && value < 2040 ? 0.78 : 0.85) : 0.6;
      const drafts: Draft[] = [];
      if (digits.length === 3 && !digits.startsWith("0") && !scaled)
        drafts.push(...threeDigitDrafts(digits, { plural: plural !== "", spelled: false, whole: weight }));
      else if (digits.length <= 7) drafts.push({ kind: "integer", value, weight, repaired: written === "mixed" });
      else return [];
      // "eleven thousand two" may be short for eleven thousand two hundred.
      if (scaled && value > latestSpokenYear && value % 1000 > 0 && value % 1000 < 10)
        drafts.push({ kind: "integer", value: value + (value % 1000) * 99, weight: saysAnd(line, piece) ? 0.1 : 0.88, repaired: true });
      if (plural) drafts.push(...pluralDrafts(value));
      drafts.push(...yearDrafts(digits, { decade: plural !== "", written }));
      if (digits.length === 4 && written === "digits") drafts.push(...dateCodeDrafts(digits, false), ...monthOfYearDrafts(digits));
      if (digits.length === 3 && digits.startsWith("0")) drafts.push(...dateCodeDrafts(digits, false));
      if (!plural && value >= 10 && value < 200 && digits.length <= 3)
        drafts.push({ kind: "integer", value: value * 1000, weight: 0.12, repaired: true, topic: "price", needsTopic: true });
      if (!plural && value >= 10 && value < 400 && digits.length <= 3)
        drafts.push({ kind: "integer", value: value * 1000, weight: 0.1, repaired: true, topic: "mileage", needsTopic: true });
      // Tire, oil and compression figures are often given bare: "they're at thirty five".
      if (value >= 20 && value < 100 && !plural)
        drafts.push({ kind: "measure", value, unit: "psi", weight: 0.25, topic: "pressure", needsTopic: true });
      drafts.push(...mishearing(value, written));
      return drafts;
    },
  ),
  phraseRule(
    {
      name: "plain-decimal",
      example: { heard: "it has a 4.11", meant: 4.11 },
      pattern: "(?<minus>minus )?(?<digits>\\d+\\.\\d+)s?",
      takesUnit: true,
    },
    ({ digits = "", minus }) => decimalDrafts(Number(digits) * (minus ? -1 : 1), digits, false),
  ),
  phraseRule(
    {
      name: "spoken-point",
      example: { heard: "eight hundred eighteen point three o three", meant: 818.303 },
      pattern: `(?<whole>(?:(?:\\d+|oh|for|to|too) )?)(?:point|comma|dot) (?<places>(?:\\d{1,3}|oh)(?: (?:\\d{1,2}|oh)(?! (?:${singleDigitCounts.join("|")})(?: |$))){0,6})(?:s(?= |$))?`,
      takesUnit: true,
    },
    ({ whole = "", places = "" }, line, first) => {
      const digits = `${digitsOf(whole.trim()) || "0"}.${digitsOf(places)}`;
      const comma = / comma /.test(line.text.slice(line.starts[first], line.starts[first]! + whole.length + 7));
      return decimalDrafts(Number(digits), digits, comma || /^(?:for|too?) /.test(whole));
    },
  ),
  phraseRule(
    {
      name: "european-comma",
      example: { heard: "3 comma 4 5", meant: 3.45 },
      pattern: `(?<whole>\\d{1,3}) comma (?<places>\\d(?: \\d){0,6})`,
      takesUnit: true,
    },
    ({ whole = "", places = "" }) => decimalDrafts(Number(`${whole}.${digitsOf(places)}`), `${whole}.${digitsOf(places)}`, true),
  ),
  phraseRule(
    {
      name: "thousands-letter",
      example: { heard: "it has 61k on it", meant: 61000 },
      pattern: "(?<digits>\\d+(?:\\.\\d+)?) (?:k|grand)",
      takesUnit: true,
    },
    ({ digits = "" }, line, first) => {
      const grand = line.pieces[first + 1]!.text === "grand";
      const value = roundTo(Number(digits) * 1000, 0);
      const drafts: Draft[] = [{ kind: "integer", value, weight: 0.8, topic: grand ? "price" : "mileage" }];
      if (grand) drafts.unshift({ kind: "money", value, unit: line.british ? "GBP" : "USD", weight: 0.85, topic: "price" });
      return drafts;
    },
  ),
  phraseRule(
    {
      name: "thousands-and-a-half",
      example: { heard: "about twelve and a half grand", meant: 12500 },
      pattern: "(?<digits>\\d+) and (?:a |an )?(?<part>half|quarter|3 quarters?) (?:of a )?(?<scale>k|grand|thousand)",
      takesUnit: true,
    },
    ({ digits = "", part, scale }, line) => {
      const value = (Number(digits) + (part === "half" ? 0.5 : part === "quarter" ? 0.25 : 0.75)) * 1000;
      const plain: Draft = { kind: "integer", value, weight: 0.92 };
      return scale === "grand"
        ? [{ kind: "money", value, unit: line.british ? "GBP" : "USD", weight: 0.93, topic: "price" }, plain]
        : [plain];
    },
  ),
  phraseRule(
    {
      name: "so-many-odd-thousand",
      example: { heard: "it's done ninety odd thousand", meant: 90000 },
      pattern: "(?<digits>[1-9]\\d{0,2}) odd (?<scale>thousand|grand|1000|k)",
      takesUnit: true,
    },
    ({ digits = "" }) => [{ kind: "integer", value: Number(digits) * 1000, weight: 0.85 }],
  ),
  phraseRule(
    {
      name: "million",
      example: { heard: "two million dollars", meant: 2_000_000 },
      pattern: "(?<digits>\\d+(?:\\.\\d+)?) million",
      takesUnit: true,
    },
    ({ digits = "" }) => [{ kind: "integer", value: roundTo(Number(digits) * 1e6, 0), weight: 0.85 }],
  ),
];
