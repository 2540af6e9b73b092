import { isPlausibleRatio } from "../../vocabulary/axle-ratios.ts";
import type { Line } from "../pieces.ts";
import { type Draft, digitsOf, type NumberRule, phraseRule } from "../rule.ts";
import { dateCodeDrafts, monthOfYearDrafts, yearDrafts } from "./date-drafts.ts";
import { threeDigitDrafts } from "./quantity-drafts.ts";

/** Sources of the patterns below: a digit piece, two digits, a zero as it is said. */
const one = "[1-9]";
const two = "[1-9]\\d";
const zero = "(?:0|oh)";

/** Numbers said in parts, their hundreds, thousands and points left out: "three fifty", "fifty eight four", "twelve four ninety five". */
export const shorthandRules: readonly NumberRule[] = [
  phraseRule(
    {
      name: "hundreds-shorthand",
      example: { heard: "three fifty", meant: 350 },
      pattern: `(?<lead>${one}|for|won) (?:[:-] )?(?<tail>${two})(?<plural>s?)`,
      takesUnit: true,
    },
    ({ lead = "", tail = "", plural }, line, first) => {
      const homophone = !/\d/.test(lead);
      const drafts = threeDigitDrafts(digitsOf(`${lead} ${tail}`), {
        plural: plural !== "",
        spelled: /\d\d/.test(tail) && line.pieces[first]!.written === "digits",
        whole: homophone ? 0.15 : 0.6,
      });
      if (engineLayouts.has(line.pieces[first - 1]?.text ?? "")) return [];
      // "for eleven" is a ratio or an hour's worth of anything: only a word about gears makes it a number.
      if (homophone) return drafts.filter((draft) => draft.kind === "ratio").map((draft) => ({ ...draft, needsTopic: true }));
      if (line.pieces[first]!.written === "digits" && line.pieces[first + 1]!.written !== "words")
        return drafts.map((draft) => (draft.kind === "integer" ? { ...draft, weight: 0.45, repaired: true } : draft));
      return [...drafts, ...thousandsWithPlaces(lead, tail)];
    },
  ),
  phraseRule(
    {
      name: "hundreds-with-zero",
      example: { heard: "three oh oh", meant: 300 },
      pattern: `(?<lead>${one}|for) ${zero} (?<last>\\d|oh)(?<plural>s?)`,
      takesUnit: true,
    },
    ({ lead = "", last = "", plural }) => {
      const digits = digitsOf(`${lead} oh ${last}`);
      const drafts = threeDigitDrafts(digits, { plural: plural !== "", spelled: true, whole: 0.5 }).map((draft) =>
        draft.kind === "ratio" ? { ...draft, weight: draft.weight + (last === "oh" ? 0.2 : 0.05) } : draft,
      );
      return /\d/.test(lead) ? drafts : drafts.filter((draft) => draft.kind === "ratio").map((draft) => ({ ...draft, needsTopic: true }));
    },
  ),
  phraseRule(
    {
      name: "three-single-digits",
      example: { heard: "4 5 4", meant: "454" },
      pattern: `(?<digits>${one} (?:\\d|oh) \\d)(?<plural>s?)`,
      takesUnit: true,
    },
    ({ digits = "", plural }) =>
      countedAloud(digits) ??
      threeDigitDrafts(digitsOf(digits), { plural: plural !== "", spelled: true, whole: 0.5 }).map((draft) =>
        draft.kind === "integer" || draft.kind === "measure" ? { ...draft, repaired: true } : draft,
      ),
  ),
  phraseRule(
    {
      name: "two-single-digits",
      example: { heard: "five seven liter", meant: 5.7 },
      pattern: `(?<lead>${one}) (?<last>${one})`,
      takesUnit: true,
    },
    ({ lead = "", last = "" }, line, first) => [
      ...["displacement", "thickness"].map((topic) => ({
        kind: "decimal" as const,
        value: Number(`${lead}.${last}`),
        // "five 1": one number begun in words and finished in a figure.
        weight: changesToFigure(line, first) ? 0.42 : 0.3,
        repaired: true,
        topic: topic as "displacement" | "thickness",
      })),
      ...(changesToFigure(line, first)
        ? [{ kind: "decimal" as const, value: Number(`${lead}.${last}`), weight: 0.38, repaired: true }]
        : []),
      ...(isPlausibleRatio(Number(`${lead}.${last}`))
        ? [
            {
              kind: "ratio" as const,
              value: Number(`${lead}.${last}`),
              weight: 0.26,
              repaired: true,
              topic: "ratio" as const,
              needsTopic: true,
            },
          ]
        : []),
      ...(asksForCode(line, first)
        ? [{ kind: "integer" as const, value: Number(lead) * 10 + Number(last), weight: 0.6, repaired: true }]
        : []),
      { kind: "integer", value: Number(lead) * 1000 + Number(last) * 100, weight: 0.16, repaired: true, topic: "price", needsTopic: true },
      {
        kind: "integer",
        value: Number(lead) * 1000 + Number(last) * 100,
        weight: 0.16,
        repaired: true,
        topic: "mileage",
        needsTopic: true,
      },
    ],
  ),
  phraseRule(
    { name: "litres-oh", example: { heard: "the engine is a five oh", meant: 5 }, pattern: "(?<litres>[1-8]) oh(?! (?:\\d|oh))" },
    // "there's two, oh, and look": only a word about engines makes it five point oh.
    ({ litres = "" }) => [
      { kind: "measure", value: Number(litres), unit: "L", weight: 0.5, repaired: true, topic: "displacement", needsTopic: true },
    ],
  ),
  phraseRule(
    {
      name: "two-pairs",
      example: { heard: "twenty two nineteen", meant: "2219" },
      pattern: `(?<lead>${two}) (?:, )?(?<tail>${two}|${zero} \\d)`,
      takesUnit: true,
    },
    ({ lead = "", tail = "" }, line, first) => {
      const digits = digitsOf(`${lead} ${tail}`);
      // "a group 26, twelve volt": the size of a battery's case ends there.
      if (line.pieces[first - 1]?.text === "group") return [];
      const comma = line.pieces[first + 1]!.text === ",";
      const asDigits = line.pieces[first]!.written === "digits";
      // "twenty six, twenty seven": about so much. "twenty twenty one" is a year.
      const neighbours: Draft[] =
        Number(digitsOf(tail)) === Number(lead) + 1 && !asYearPair(digits)
          ? [{ kind: "range", value: `${lead}-${digitsOf(tail)}`, parts: [Number(lead), Number(lead) + 1], weight: 0.6 }]
          : [];
      if (comma)
        return [
          ...neighbours,
          ...dateCodeDrafts(digits, true).map((draft) => ({ ...draft, weight: draft.weight * 0.6, needsTopic: true })),
        ];
      const drafts: Draft[] = [
        {
          kind: "integer",
          value: Number(digits),
          weight: asDigits ? (line.pieces[first + 1]!.written === "words" ? 0.46 : 0.25) : 0.5,
          repaired: asDigits,
        },
      ];
      drafts.push(...neighbours);
      drafts.push(
        ...yearDrafts(digits, { decade: false, written: "words" }),
        ...dateCodeDrafts(digits, true),
        ...monthOfYearDrafts(digits),
      );
      if (!tail.includes("oh") && tail !== "")
        drafts.push({ kind: "decimal", value: Number(`${lead}.${digitsOf(tail)}`), weight: 0.12, repaired: true });
      return drafts;
    },
  ),
  phraseRule(
    {
      name: "four-single-digits",
      example: { heard: "date code is oh six one nine", meant: "0619" },
      pattern: `(?<digits>(?:\\d|oh)(?: (?:\\d|oh)){3})`,
      takesUnit: true,
    },
    ({ digits = "" }, line, first) => {
      if (continuesDigits(line, first)) return [];
      const spelled = digitsOf(digits);
      return (
        countedAloud(digits) ?? [
          { kind: "integer", value: Number(spelled), weight: 0.5, repaired: true, topic: "mileage" },
          { kind: "integer", value: Number(spelled), weight: 0.45, repaired: true, topic: "price" },
          ...dateCodeDrafts(spelled, true),
          ...yearDrafts(spelled, { decade: false, written: "words" }),
        ]
      );
    },
  ),
  phraseRule(
    {
      name: "digit-by-digit",
      example: { heard: "the odometer reads 1 4 8 3 1 2", meant: 148312 },
      pattern: `(?<digits>(?:\\d|oh)(?: (?:\\d|oh)){4,6})(?<more>(?: (?:\\d|oh)){0,12})`,
    },
    ({ digits = "", more }, line, first) => {
      if (continuesDigits(line, first)) return [];
      const spelled = digitsOf(digits);
      const aloud = countedAloud(`${digits}${more}`);
      if (aloud)
        return [...aloud, { kind: "integer", value: Number(spelled), weight: 0.3, repaired: true, topic: "mileage", needsTopic: true }];
      if (more) return [{ kind: "telephone", value: `${spelled}${digitsOf(more)}`, weight: 0.7 }];
      const drafts: Draft[] = [
        { kind: "integer", value: Number(spelled), weight: 0.5, repaired: true, topic: "mileage" },
        ...(spelled.length === 5
          ? [{ kind: "integer" as const, value: Number(spelled), weight: 0.5, repaired: true, topic: "price" as const }]
          : []),
      ];
      if (spelled.length === 7) drafts.push({ kind: "telephone", value: spelled, weight: 0.6 });
      return drafts;
    },
  ),
];

/** True for "five 1": the first digit as a word, the second as a figure. */
function changesToFigure(line: Line, first: number): boolean {
  return line.pieces[first]!.written === "words" && line.pieces[first + 1]!.written === "digits";
}

/** "paint code six nine", "the code on the lid says six nine": digits of a code, one by one. */
function asksForCode(line: Line, first: number): boolean {
  return /\b(?:(?:paint|colou?r|trim|interior|body) code|code)(?: \S+){0,5} $/.test(
    line.text.slice(Math.max(0, line.starts[first]! - 44), line.starts[first]),
  );
}

/** A run of digits is read from its start, or "1 1 9 9 5" would end in a year. */
function continuesDigits(line: Line, first: number): boolean {
  return /^(?:\d|oh)$/.test(line.pieces[first - 1]?.text ?? "");
}

/** "flathead six eighty five horse": the six counts cylinders. */
const engineLayouts: ReadonlySet<string> = new Set("straight inline flathead slant flat v vee boxer rotary big pushrod".split(" "));

function asYearPair(digits: string): boolean {
  return Number(digits) >= 1900 && Number(digits) <= 2039;
}

/** "one two three four": a step of one from number to number is someone counting. */
function countedAloud(text: string): Draft[] | undefined {
  const parts = text.trim().split(" ").map(Number);
  const step = parts[1]! - parts[0]!;
  if (parts.length < 3 || Math.abs(step) !== 1 || parts.some((part, at) => at > 0 && part - parts[at - 1]! !== step)) return undefined;
  return [{ kind: "counting", value: parts.join(" "), parts, weight: 0.7 }];
}

/** "one twenty" as 1.20 and the like are not said; "seven twenty five" may be 7.25 inches. */
function thousandsWithPlaces(lead: string, tail: string): Draft[] {
  if (!["25", "50", "75"].includes(tail)) return [];
  return [{ kind: "decimal", value: Number(`${lead}.${tail}`), weight: 0.12, repaired: true }];
}
