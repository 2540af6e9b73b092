import { singleDigitCounts } from "../../vocabulary/number-words.ts";
import { type Draft, type NumberRule, phraseRule, roundTo } from "../rule.ts";

/** Denominators as pieces: "16ths", "8th", "quarter". Thirty-seconds are tread, and a unit of their own. */
const denominators = "(?:halves|half|quarters?|4ths?|8ths?|16ths?|64ths?|3ths?|10ths?|5ths?)";
const fraction = `(?:(?<numerator>\\d{1,2}|a|an) )?(?<denominator>${denominators})`;

function denominatorOf(text: string): number {
  if (text.startsWith("hal")) return 2;
  if (text.startsWith("quarter")) return 4;
  return Number.parseInt(text, 10);
}

function fractionOf(numerator: string, denominator: string): number {
  return (/^\d/.test(numerator) ? Number(numerator) : 1) / denominatorOf(denominator);
}

function plain(value: number, weight = 0.8): Draft[] {
  return Number.isFinite(value) ? [{ kind: "fraction", value: roundTo(value, 6), weight }] : [];
}

/** "it was fourteen and a half at easter": thousands left out, where money or miles are spoken of. */
function thousands(value: number): Draft[] {
  return (["price", "mileage"] as const).map((topic) => ({
    kind: "integer",
    value: value * 1000,
    weight: 0.14,
    repaired: true,
    topic,
    needsTopic: true,
  }));
}

/** Single ordinals are fractions only where a unit or "of a" follows: "the third owner" and "a fifth gear" are none. */
const unitAhead =
  "(?= (?:of (?:an? )?)?(?:an? )?(?:-? ?)(?:inch|inches|inchers?|mile|miles|gallon|gallons|turn|liter|litre|pint|quart|tank|mil|mils|millimet(?:er|re)|foot|volt|of an inch|over|plate|thick|plus))";

export const fractionRules: readonly NumberRule[] = [
  phraseRule(
    {
      name: "feet-and-inches",
      example: { heard: "deck is nine foot four", meant: 9.333333 },
      pattern: `(?<feet>\\d{1,2}) (?:foot|feet|ft) (?:and )?(?<inches>\\d{1,2}(?: and a half)?)(?: inch(?:es)?)?(?! (?:${singleDigitCounts.join("|")}|by|x|point|inch|foot|feet|\\d|and a|thousand|hundred)(?: |$))`,
    },
    ({ feet = "", inches = "" }, line, first) => {
      const within = Number.parseFloat(inches) + (inches.endsWith("half") ? 0.5 : 0);
      // "an eight foot one": the bed, and not eight feet one inch.
      if (within >= 12 || within === 0 || /^an?$/.test(line.pieces[first - 1]?.text ?? "")) return [];
      return [{ kind: "measure", value: roundTo(Number(feet) + within / 12, 6), unit: "ft", weight: 0.72 }];
    },
  ),
  phraseRule(
    {
      name: "feet-and-inches-of-a-deck",
      example: { heard: "a nine foot six steel deck", meant: 9.5 },
      pattern:
        "(?<feet>\\d{1,2}) (?:foot|feet) (?<inches>[1-9]|1[01])(?= (?:(?:steel|aluminum|aluminium|wood|wooden|oak|flat|dump|stake|service|utility) )?(?:deck|bed|flatbed|box|body|tray|trailer)(?: |$))",
    },
    ({ feet = "", inches = "" }) => [
      { kind: "measure", value: roundTo(Number(feet) + Number(inches) / 12, 6), unit: "ft", weight: 0.86, unitSaid: true },
    ],
  ),
  phraseRule(
    {
      name: "feet-and-an-inch",
      example: { heard: "so that's four foot and an inch", meant: 4.083333 },
      pattern: "(?<feet>\\d{1,2}) (?:foot|feet) (?:and )?(?:an|a|1) inch(?! and)",
    },
    ({ feet = "" }) => [{ kind: "measure", value: roundTo(Number(feet) + 1 / 12, 6), unit: "ft", weight: 0.86, unitSaid: true }],
  ),
  phraseRule(
    {
      name: "metres-and-more",
      example: { heard: "there is a metre seven to the front seats", meant: 1700 },
      pattern:
        "(?<metres>[1-9]|a) met(?:er|re)s? (?:and )?(?<more>[1-9]\\d?)(?! (?:inch|foot|feet|cent\\S+|mm|mil\\S*|\\d|by|thousand|hundred|door|point)(?: |$))",
    },
    ({ metres = "", more = "" }) => {
      // "a metre seven" is 1.7 and "a metre ten" 1.10.
      const millimetres = (metres === "a" ? 1 : Number(metres)) * 1000 + Number(more) * (more.length === 1 ? 100 : 10);
      return [{ kind: "measure", value: millimetres, unit: "mm", weight: 0.7 }];
    },
  ),
  phraseRule(
    {
      name: "an-inch",
      example: { heard: "maybe an inch at the wheel", meant: 1 },
      pattern: "(?<!\\b(?:foot|feet) (?:and )?)(?:an?|a single) inch(?! and)",
    },
    () => [{ kind: "measure", value: 1, unit: "in", weight: 0.6 }],
  ),
  phraseRule(
    {
      name: "a-foot",
      example: { heard: "rusty for about a foot", meant: 1 },
      pattern:
        "(?:a|1) foot(?= (?:of it|long|across|wide|or so|down|back from|up from|from the|in from|along)(?: |$))|(?<=\\babout )a foot",
    },
    () => [{ kind: "measure", value: 1, unit: "ft", weight: 0.6 }],
  ),
  phraseRule(
    {
      name: "so-many-footer",
      example: { heard: "it's the long one the eight footer", meant: 8 },
      pattern: "(?<feet>[5-9]|\\d\\.5) footer",
    },
    ({ feet = "" }) => [{ kind: "measure", value: Number(feet), unit: "ft", weight: 0.6 }],
  ),
  phraseRule(
    {
      name: "thirty-seconds",
      example: { heard: "eight thirty seconds on the fronts", meant: 8 },
      pattern: "(?<numerator>\\d{1,2}(?:\\.\\d)?)(?: (?:and )?(?:a )?(?<half>half))? (?:/ )?(?:32ths?|32(?= ))(?: of an inch)?",
    },
    ({ numerator = "", half }, line, first) => {
      const value = Number(numerator) + (half ? 0.5 : 0);
      // "8/32" needs its stroke when 32 is no ordinal, or "8 32" would be read.
      const words = line.text.slice(line.starts[first], line.starts[first]! + 24);
      if (/^\S+ 32(?: |$)/.test(words)) return [];
      if (value > 32) return [];
      return [
        { kind: "measure", value, unit: "32nds", weight: 0.92, topic: "depth" },
        { kind: "duration", value: 30, weight: 0.05 },
      ];
    },
  ),
  phraseRule(
    {
      name: "thirty-seconds-written",
      example: { heard: "tread is at 8/32", meant: 8 },
      pattern: "(?<numerator>\\d{1,2}) / 32(?:th|ths|nds?)?",
    },
    ({ numerator = "" }) => [{ kind: "measure", value: Number(numerator), unit: "32nds", weight: 0.95, topic: "depth" }],
  ),
  phraseRule({ name: "thirty-seconds-of-time", example: { heard: "give it thirty seconds", meant: 30 }, pattern: "32ths" }, () => [
    { kind: "duration", value: 30, weight: 0.4 },
  ]),
  phraseRule(
    {
      name: "mixed-number",
      example: { heard: "4 and a half J's", meant: 4.5 },
      pattern: `(?<whole>\\d+(?:\\.\\d+)?|for) (?:and )?${fraction}`,
      takesUnit: true,
    },
    ({ whole = "", numerator = "", denominator = "" }, line, first) => {
      const value = Number(whole) + fractionOf(numerator, denominator);
      // "two quarters", "three eighths" are plain fractions; without "and" only "two half" and written "2 1/2" are mixed.
      const joined = / and /.test(line.text.slice(line.starts[first]! + whole.length, line.starts[first]! + whole.length + 5));
      if (!joined || (numerator === "" && !/^(?:half|quarter)/.test(denominator))) return [];
      if (fractionOf(numerator, denominator) >= 1) return [];
      if (whole === "for") return [];
      const fractions = plain(value, 0.88).map((draft) => ({ ...draft, repaired: line.pieces[first]!.written === "digits" }));
      return [...fractions, ...(denominator === "half" && value >= 3 && value < 400 ? thousands(value) : [])];
    },
  ),
  phraseRule(
    {
      name: "inch-and-fraction",
      example: { heard: "headers on it are inch and five eighths", meant: 1.625 },
      pattern: `(?:(?<whole>\\d+|an?) )?inch(?:es)? and ${fraction}(?: inch(?:es)?)?`,
    },
    ({ whole = "", numerator = "", denominator = "" }) => {
      const part = fractionOf(numerator, denominator);
      if (part >= 1 || (numerator === "" && !/^(?:half|quarter)/.test(denominator))) return [];
      return [{ kind: "measure", value: roundTo((/\d/.test(whole) ? Number(whole) : 1) + part, 6), unit: "in", weight: 0.92 }];
    },
  ),
  phraseRule(
    {
      name: "written-mixed",
      example: { heard: "2 1/2 inch pipe", meant: 2.5 },
      pattern: "(?<whole>\\d{1,3}) (?<top>\\d{1,2}) / (?<bottom>2|4|8|16|32|64)",
      takesUnit: true,
    },
    ({ whole = "", top = "", bottom = "" }) =>
      Number(top) < Number(bottom) ? plain(Number(whole) + Number(top) / Number(bottom), 0.9) : [],
  ),
  phraseRule(
    {
      name: "written-fraction",
      example: { heard: "about 3/16 inch", meant: 0.1875 },
      pattern: "(?<top>\\d{1,2}) / (?<bottom>2|4|8|16|64)",
      takesUnit: true,
    },
    ({ top = "", bottom = "" }) => (Number(top) < Number(bottom) ? plain(Number(top) / Number(bottom), 0.85) : []),
  ),
  phraseRule(
    {
      name: "plain-fraction",
      example: { heard: "i got three sixteenths here", meant: 0.1875 },
      pattern: `(?<numerator>\\d{1,2}) (?<denominator>${denominators})(?: of an?(?= inch))?`,
      takesUnit: true,
    },
    ({ numerator = "", denominator = "" }, line, first) => {
      const top = Number(numerator);
      const bottom = denominatorOf(denominator);
      const inches =
        bottom >= 8 && bottom !== 10
          ? [{ kind: "measure" as const, value: roundTo(top / bottom, 6), unit: "in" as const, weight: 0.83 }]
          : [];
      const plural = denominator.endsWith("s");
      // "two quarters" are body panels, "one third" a share; "three quarter" needs what it measures.
      if (!plural && bottom !== 4) return top === 1 ? [...inches, ...plain(1 / bottom, 0.6)] : [];
      if (bottom === 4 && (top !== 3 || line.pieces[first]!.text !== "3")) return [];
      if (top >= bottom || bottom === 2) return [];
      return [...inches, ...plain(top / bottom, 0.75)];
    },
  ),
  phraseRule(
    {
      name: "one-part",
      example: { heard: "about an eighth of an inch", meant: 0.125 },
      pattern: `(?:an? )?(?<denominator>${denominators})(?: of an?(?= inch))?(?: an?(?= (?:inch|millimet|mil |mile|gallon|lit(?:er|re)|pint|quart|foot|volt)))?${unitAhead}`,
      takesUnit: true,
    },
    ({ denominator = "" }) => plain(1 / denominatorOf(denominator), 0.8),
  ),
  phraseRule(
    { name: "one-part-bare", example: { heard: "gap is an eighth", meant: 0.125 }, pattern: "(?:an? )(?<denominator>8th|16th)" },
    ({ denominator = "" }) => [{ kind: "measure", value: 1 / Number.parseInt(denominator, 10), unit: "in", weight: 0.5 }],
  ),
];
