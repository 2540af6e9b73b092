import { isPlausibleRatio } from "../../vocabulary/axle-ratios.ts";
import { singleDigitCounts } from "../../vocabulary/number-words.ts";
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
      const drafts: Draft[] = [{ kind: "integer", value: Number(digits), weight: asDigits ? 0.25 : 0.5, repaired: asDigits }];
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
      name: "thousands-shorthand",
      example: { heard: "odometer says fifty eight four", meant: 58400 },
      pattern: `(?<lead>(?:1 )?${two}|1 oh ${one}|1\\d\\d) (?<tail>${one})`,
      takesUnit: true,
    },
    ({ lead = "", tail = "" }, line, first) => {
      // "one sixty, one fifty eight": the last digit opens the next figure.
      const after = line.pieces[first + lead.split(" ").length + 1];
      if (after && /^[1-9]\d$/.test(after.text) && after.written === "words") return [];
      // "one thirty nine, nine nine": two digits after one another are a figure of their own.
      const further = line.pieces[first + lead.split(" ").length + 2]?.text ?? "";
      if (after && /^[1-9]$/.test(after.text) && !/^(?:\d|oh)/.test(further) && !singleDigitCounts.includes(further)) return [];
      const thousands = Number(digitsOf(lead));
      return [
        { kind: "integer", value: thousands * 1000 + Number(tail) * 100, weight: 0.46, repaired: true, topic: "mileage" },
        { kind: "integer", value: thousands * 1000 + Number(tail) * 100, weight: 0.46, repaired: true, topic: "price" },
        { kind: "integer", value: thousands * 1000 + Number(tail) * 100, weight: 0.4, repaired: true, topic: "weight", needsTopic: true },
        { kind: "decimal", value: Number(`${thousands}.${tail}`), weight: 0.4, repaired: true, topic: "voltage" },
      ];
    },
  ),
  phraseRule(
    {
      name: "thousands-and-hundreds-shorthand",
      example: { heard: "asking eighteen nine fifty", meant: 18950 },
      pattern: `(?<lead>(?:1 )?${two}|1 oh ${one}|${one}|1\\d\\d) (?<tail>(?:${one}|oh|0) (?:${two}|(?:\\d|oh) (?:\\d|oh))|\\d{3}|oh ${one})`,
      takesUnit: true,
    },
    ({ lead = "", tail = "" }, line, first) => {
      const thousands = Number(digitsOf(lead));
      const rest = digitsOf(tail).padStart(3, "0");
      const splitDigits = /^\d{3}$/.test(tail) && line.pieces[first]!.written === "digits";
      // "one forty two nine hundred": the hundreds were said as such.
      const spoken =
        tail.includes(" ") ||
        (line.pieces[first + lead.split(" ").length]!.written === "scaled" && line.pieces[first]!.written !== "scaled");
      if (lead.length === 1 && (!spoken || tail.startsWith("oh"))) return [];
      const sameHundred = lead.startsWith("1 ") && tail.startsWith("1 ");
      // "forty seven two hundred" can be nothing else; "one twenty one four hundred" hardly.
      const hundredsSaid = /^\d00$/.test(tail) && line.pieces[first + lead.split(" ").length]!.written !== "digits";
      const weight =
        hundredsSaid && lead.length > 1
          ? 0.68
          : lead.length === 1 || sameHundred
            ? 0.2
            : spoken
              ? 0.5
              : splitDigits && thousands < 100
                ? 0.22
                : 0.35;
      // "one sixty two, one sixty" is two figures of one hundred and some unless miles or money are spoken of.
      const needsTopic = weight < 0.5 || (lead.length > 2 && !hundredsSaid);
      const value = thousands * 1000 + Number(rest);
      return [
        { kind: "integer", value, weight, repaired: true, topic: "mileage", needsTopic },
        { kind: "integer", value, weight, repaired: true, topic: "price", needsTopic },
      ];
    },
  ),
  phraseRule(
    {
      name: "hundred-thousands-shorthand",
      example: { heard: "the mileage is two eleven four hundred", meant: 211400 },
      pattern: `(?<lead>[2-9] (?:${two}|oh ${one}|(?:\\d|oh) (?:\\d|oh))|1 (?:\\d|oh) (?:\\d|oh)|[2-9]\\d\\d) (?<tail>\\d{3}|(?:${one}|oh) (?:${two}|(?:\\d|oh) (?:\\d|oh))|oh ${one}|${one})`,
      takesUnit: true,
    },
    ({ lead = "", tail = "" }, line, first) => {
      const hundreds = tail.length === 1 ? Number(tail) * 100 : Number(digitsOf(tail));
      // "four hundred and three" said in full after so many thousand leaves little doubt; a lone digit much.
      const inFull = line.pieces[first + lead.split(" ").length]!.written === "scaled";
      if (/^[2-9]\d\d$/.test(lead) && !inFull && line.pieces[first]!.written !== "digits") return [];
      const value = Number(digitsOf(lead)) * 1000 + hundreds;
      return [{ kind: "integer", value, weight: inFull ? 0.5 : 0.3, repaired: true, topic: "mileage", needsTopic: true }];
    },
  ),
  phraseRule(
    {
      name: "thousands-with-hundreds-heard-as-words",
      example: { heard: "61 to 40 and those are the actual miles", meant: 61240 },
      pattern: `(?<lead>[1-9] ${two}|1 oh ${one}|${two}|1\\d\\d) (?<hundreds>too?|fore?) (?<tail>${two}|oh ${one})`,
      takesUnit: true,
    },
    ({ lead = "", hundreds = "", tail = "" }, line, first) => {
      const [thousands, rest] = [Number(digitsOf(lead)), Number(digitsOf(tail))];
      // "61 to 80" may be a range; "61 to 40" and "58 for 12" can be none.
      const range = hundreds.startsWith("to") && rest > thousands;
      const range100 = /\b(?:from|between|anywhere)$/.test(line.pieces[first - 1]?.text ?? "");
      if (range100) return [];
      return [
        {
          kind: "integer",
          value: thousands * 1000 + (hundreds.startsWith("to") ? 200 : 400) + rest,
          weight: range ? 0.14 : 0.46,
          repaired: true,
          topic: "mileage",
          needsTopic: true,
        },
      ];
    },
  ),
  phraseRule(
    {
      name: "thousands-parted-at-the-comma",
      example: { heard: "it's 3 996 cubic centimeters", meant: 3996 },
      pattern: "(?<lead>[1-9]) (?<rest>\\d{3})",
      takesUnit: true,
    },
    ({ lead = "", rest = "" }, line, first) => {
      const [from, to] = [line.pieces[first]!, line.pieces[first + 1]!];
      if (from.written !== "digits" || to.written !== "digits" || to.glued) return [];
      const value = Number(lead) * 1000 + Number(rest);
      return [
        { kind: "integer", value, weight: 0.38, repaired: true },
        { kind: "integer", value, weight: 0.4, repaired: true, topic: "price" },
        { kind: "integer", value, weight: 0.4, repaired: true, topic: "mileage" },
      ];
    },
  ),
  phraseRule(
    {
      name: "thousands-with-a-spaced-comma",
      example: { heard: "the odometer reads 41, 206 miles", meant: 41206 },
      pattern: "(?<lead>[1-9]\\d{0,2}) , (?<rest>\\d{3})",
      takesUnit: true,
    },
    ({ lead = "", rest = "" }, line, first) => {
      const [from, to] = [line.pieces[first]!, line.pieces[first + 2]!];
      if (from.written !== "digits" || to.written !== "digits") return [];
      const value = Number(lead) * 1000 + Number(rest);
      // Said twice, it is one figure whatever stands around it.
      const words = line.text.slice(line.starts[first], line.starts[first + 3]! - 1);
      const again = line.text.indexOf(words) !== line.text.lastIndexOf(words);
      return (["price", "mileage"] as const).map((topic) => ({
        kind: "integer",
        value,
        weight: again ? 0.66 : 0.4,
        repaired: true,
        topic,
        needsTopic: !again,
      }));
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
