import { type Draft, digitsOf, type NumberRule, phraseRule, roundTo } from "../rule.ts";

/** A short number as one side of a pair or range: 14, 7.5, 3 50, 1 and a half. */
const side = "(?:\\d+(?:\\.\\d+)?(?: point \\d)?(?: and (?:a |an )?(?:half|quarter|3 quarters))?)";

/** In a range the hundreds may be left out: "one fifty to one fifty five". */
const rangeSide = `(?:[1-9] (?:[1-9]\\d|oh \\d)|${side})`;

function sideValue(text: string): number {
  if (/^[1-9] (?:\d\d|oh \d)$/.test(text)) return Number(digitsOf(text));
  const whole = Number.parseFloat(text.replace(/ point (\d)/, ".$1"));
  return whole + (/3 quarters/.test(text) ? 0.75 : /half/.test(text) ? 0.5 : /quarter/.test(text) ? 0.25 : 0);
}

const currencies = { $: "USD", "£": "GBP", "€": "EUR" } as const;

export const amountRules: readonly NumberRule[] = [
  phraseRule(
    {
      name: "currency-sign",
      example: { heard: "asking £18,950 for it", meant: 18950 },
      pattern: "(?<sign>[$£€]) (?<amount>\\d+(?:\\.\\d+)?)(?: (?<scale>k|grand|thousand|million))?",
    },
    ({ sign = "$", amount = "", scale = "" }) => {
      const factor = scale === "" ? 1 : scale === "million" ? 1e6 : 1000;
      return [
        { kind: "money", value: roundTo(Number(amount) * factor, 2), unit: currencies[sign as keyof typeof currencies], weight: 0.97 },
      ];
    },
  ),
  phraseRule(
    {
      name: "dimensions",
      example: { heard: "they're fourteen by six", meant: "14x6" },
      pattern: `(?<first>${side}) (?:(?:inch(?:es)?|j) )?(?:by|x) (?:an? )?(?<second>${side})(?:s|j)?(?: (?:by|x) (?<third>${side})s?)?`,
    },
    ({ first = "", second = "", third = "" }) => {
      const parts = [first, second, third].filter((part) => part !== "").map(sideValue);
      return [
        { kind: "dimensions", value: parts.join("x"), parts, weight: parts[0]! >= 100 && parts[1]! < 100 ? 0.5 : 0.85, topic: "wheel" },
      ];
    },
  ),
  phraseRule(
    {
      name: "wheel-dimensions-by-digits",
      example: { heard: "the wheel is stamped sixteen five by six seventy five", meant: "16.5x6.75" },
      pattern: "(?<rim>1[4-9])(?: (?:point )?(?<half>5))? (?:by|x) (?<width>[4-9]|1[0-2]) (?:point )?(?<part>25|50|5|75)",
    },
    ({ rim = "", half = "", width = "", part = "" }) => {
      const parts = [Number(rim) + (half ? 0.5 : 0), Number(`${width}.${part}`)];
      return [{ kind: "dimensions", value: parts.join("x"), parts, weight: 0.9, topic: "wheel" }];
    },
  ),
  phraseRule(
    {
      name: "range-between",
      example: { heard: "between 30 and 40 pounds", meant: "30-40" },
      pattern: `(?:between|from|anywhere from) (?<low>${rangeSide}) (?:and|to) (?<high>${rangeSide})`,
      takesUnit: true,
    },
    ({ low = "", high = "" }) => (sideValue(high) > sideValue(low) ? rangeDrafts(sideValue(low), sideValue(high), 0.8) : []),
  ),
  phraseRule(
    {
      name: "zero-to-speed",
      example: { heard: "zero to sixty in nine seconds", meant: 60 },
      pattern: "(?:0|oh) (?:to|-) (?<speed>30|50|60|62|100)",
    },
    ({ speed = "" }) => [{ kind: "road-speed", value: Number(speed), weight: 0.9 }],
  ),
  phraseRule(
    {
      name: "range-or",
      example: { heard: "seven or eight of them", meant: "7-8" },
      pattern: `(?<low>${rangeSide}) or (?<high>${rangeSide})`,
      takesUnit: true,
    },
    ({ low = "", high = "" }) =>
      sideValue(high) > sideValue(low) && sideValue(high) <= sideValue(low) * 2 ? rangeDrafts(sideValue(low), sideValue(high), 0.7) : [],
  ),
  phraseRule(
    {
      name: "range-to",
      example: { heard: "twenty to thirty", meant: "20-30" },
      pattern: `(?<low>${rangeSide}) (?:to|-) (?<high>${rangeSide})`,
      takesUnit: true,
    },
    ({ low = "", high = "" }) => {
      const [from, to] = [sideValue(low), sideValue(high)];
      return to > from && to <= from * 4 ? rangeDrafts(from, to, 0.6) : [];
    },
  ),
  phraseRule(
    {
      name: "range-thousands",
      example: { heard: "twenty two, twenty five thousand", meant: "22000-25000" },
      pattern: "(?<low>\\d{1,3})(?: ,)?(?: (?:to|or))? (?<high>\\d{1,3}000)",
      takesUnit: true,
    },
    ({ low = "", high = "" }) => {
      const [from, to] = [Number(low) * 1000, Number(high)];
      return from < to && to <= from * 2 ? rangeDrafts(from, to, 0.7) : [];
    },
  ),
  phraseRule(
    {
      name: "couple",
      example: { heard: "a couple of scratches", meant: 2 },
      pattern: "(?:a |(?<=(?:^|[.,] )))couple(?: of)?",
      takesUnit: true,
    },
    () => [{ kind: "integer", value: 2, weight: 0.4 }],
  ),
  phraseRule(
    {
      name: "pair",
      example: { heard: "a pair of carburettors", meant: 2 },
      pattern: "(?:(?:a|1|another) (?:matched )?pair|(?<=(?:^|[.,] ))(?:matched )?pair(?= of)|(?<pairs>[2-6]) pairs?)(?: of)?",
    },
    ({ pairs }) => [{ kind: "integer", value: 2 * Number(pairs || 1), weight: 0.6 }],
  ),
  phraseRule(
    {
      name: "twin",
      example: { heard: "twin tips out of one muffler", meant: 2 },
      pattern:
        "twin(?= (?:\\S+ )?(?:tips?|pipes|tailpipes|exhausts?|carbs?|carburet\\S+|turbos|overriders|spots|spotlights|tanks|batteries|fans|speakers|aerials|mirrors|stacks|outlets)(?: |$))",
    },
    () => [{ kind: "integer", value: 2, weight: 0.5 }],
  ),
  phraseRule({ name: "dual-zone", example: { heard: "it's got dual zone climate", meant: 2 }, pattern: "dual(?= zone(?: |$))" }, () => [
    { kind: "integer", value: 2, weight: 0.5 },
  ]),
  phraseRule(
    {
      name: "single",
      example: { heard: "single exhaust out the passenger side", meant: 1 },
      pattern:
        "single(?= (?:exhaust|tailpipe|pipe|motor|battery|tip|muffler|outlet|tank|carb|carburet\\S+|mirror|airbag|(?:4|2|1) barrel|blade|revers\\S+ (?:lamp|light)|fog (?:lamp|light)|reverse (?:lamp|light)|wiper|speaker|key)(?: |$))",
    },
    () => [{ kind: "integer", value: 1, weight: 0.5 }],
  ),
  phraseRule(
    {
      name: "dozen",
      example: { heard: "half a dozen keys", meant: 6 },
      pattern: "(?:(?<half>half )(?:a )?|(?:a|1) |(?<count>[2-9]|1\\d) )dozen",
    },
    ({ half, count }) => [{ kind: "integer", value: half ? 6 : 12 * Number(count || 1), weight: half || count ? 0.8 : 0.6 }],
  ),
  phraseRule(
    {
      name: "group-size",
      example: { heard: "the group 24 case", meant: "group 24" },
      pattern: "group (?<group>\\d\\d)(?: (?<letter>[a-z]))?(?= |$)",
    },
    ({ group = "", letter = "" }) => [
      { kind: "integer", value: `group ${group}${letter === "a" ? "" : letter.toUpperCase()}`, parts: [Number(group)], weight: 0.8 },
    ],
  ),
  phraseRule(
    {
      name: "telephone-written",
      example: { heard: "call us at 555-014-2377", meant: "5550142377" },
      pattern: "(?:\\d{3} (?:- )?)?\\d{3} (?:- )?\\d{4}(?= |$)",
    },
    (_groups, line, first) => {
      const words = /^(?:\d{3} (?:- )?)?\d{3} (?:- )?\d{4}/.exec(line.text.slice(line.starts[first]))![0];
      const digits = digitsOf(words);
      return digits.length === 10 || words.includes("-") ? [{ kind: "telephone", value: digits, weight: 0.85 }] : [];
    },
  ),
  phraseRule({ name: "ordinal", example: { heard: "the third owner", meant: 3 }, pattern: "(?<digits>\\d+)th" }, ({ digits = "" }) => [
    { kind: "ordinal", value: Number(digits), weight: 0.5 },
  ]),
];

function rangeDrafts(low: number, high: number, weight: number): Draft[] {
  return [{ kind: "range", value: `${low}-${high}`, parts: [low, high], weight }];
}
