import { singleDigitCounts } from "../../vocabulary/number-words.ts";
import { digitsOf, type NumberRule, phraseRule } from "../rule.ts";

/** Sources of the patterns below: a digit piece, two digits. */
const one = "[1-9]";
const two = "[1-9]\\d";

/** Miles, money and weights in thousands, said in parts or cut apart. */
export const thousandsRules: readonly NumberRule[] = [
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
      name: "thousands-spelled-out-on-both-sides-of-a-comma",
      example: { heard: "mileage says six one, three eight four", meant: 61384 },
      pattern: `(?<lead>1 (?:\\d|oh) (?:\\d|oh)|1\\d\\d|${one} (?:\\d|oh)|${two}) , (?<rest>(?:\\d|oh) (?:\\d|oh) (?:\\d|oh)|${one} ${two})(?! (?:\\d|oh))`,
      takesUnit: true,
    },
    ({ lead = "", rest = "" }, line, first) =>
      // A run of digits is read from its start.
      /^(?:\d+|oh|,)$/.test(line.pieces[first - 1]?.text ?? "") || digitsOf(rest).length !== 3
        ? []
        : [
            {
              kind: "integer",
              value: Number(digitsOf(lead)) * 1000 + Number(digitsOf(rest)),
              weight: 0.55,
              repaired: true,
              topic: "mileage",
              needsTopic: true,
            },
          ],
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
];
