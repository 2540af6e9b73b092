import { type Draft, digitsOf, type NumberRule, phraseRule } from "../rule.ts";

/** Figures that name one feature of a part: the width or aspect of a tire alone, its load index, an overbore. */
export const partRules: readonly NumberRule[] = [
  phraseRule(
    {
      name: "inches-misheard-as-a-little-word",
      example: { heard: "it's the for inch kit", meant: 4 },
      // "For" and "too" before "inch" and something that is measured so; "to inch forward" is a verb.
      pattern:
        "(?<digit>for|fore|to|too) inch(?= (?:kit|lift|drop|dropped|block|blocks|spacer|spacers|exhaust|pipe|pipes|tips?|tailpipe|rotors?|discs?|drums?|body lift|suspension|lowering|leveling))",
    },
    ({ digit = "" }) => [{ kind: "measure", value: Number(digitsOf(digit)), unit: "in", weight: 0.8, repaired: true, unitSaid: true }],
  ),
  phraseRule(
    {
      name: "over-bore",
      example: { heard: "it's a 350 thirty over", meant: 0.03 },
      pattern:
        "(?:0\\.0|oh |point oh )?(?:(?<thou>[1-9]\\d|1[02]\\d)(?: thousandths| thou)?|(?<tens>[1-9]) oh) (?:over|oversized?)(?! (?:the|an?|my|your|his|that|\\d))",
    },
    ({ thou = "", tens = "" }): Draft[] =>
      [20, 30, 40, 45, 50, 60, 80, 90, 10, 15, 100, 125].includes(Number(thou || `${tens}0`))
        ? [{ kind: "measure", value: Number(thou || `${tens}0`) / 1000, unit: "in", weight: 0.72, topic: "bore" }]
        : [],
  ),
  phraseRule(
    { name: "bored-by", example: { heard: "it's a 327 bored thirty", meant: 0.03 }, pattern: "(?<thou>[2-6]0|45)(?! over)" },
    ({ thou = "" }, line, first) => {
      const before = [line.pieces[first - 2]?.text, line.pieces[first - 1]?.text];
      const bored = /^(?:bored|overbored|punched)$/;
      return bored.test(before[1] ?? "") || (bored.test(before[0] ?? "") && /^(?:out|to)$/.test(before[1] ?? ""))
        ? [{ kind: "measure", value: Number(thou) / 1000, unit: "in", weight: 0.75, repaired: false, topic: "bore" }]
        : [];
    },
  ),
  phraseRule(
    {
      name: "load-index-and-speed-symbol",
      example: { heard: "205/55R16 91V", meant: "91V" },
      pattern: "(?<index>[6-9]\\d|1[0-3]\\d|1 [0-3]\\d)(?: / (?<dual>\\d{2,3}))? (?<symbol>[lmnpqrstuhvwy])",
    },
    ({ index = "", symbol = "" }, line, first) => {
      const before = line.pieces[first - 1];
      const glued = line.pieces[first + index.split(" ").length]?.glued === true;
      // Only right after the number of a rim is it one; elsewhere a letter after a number is anything.
      return before && before.written !== "none" && /^\d\ds?$/.test(before.text)
        ? [{ kind: "service-description", value: `${digitsOf(index)}${symbol.toUpperCase()}`, weight: glued ? 0.8 : 0.7, topic: "tire" }]
        : [];
    },
  ),
  phraseRule(
    {
      name: "aspect-series",
      example: { heard: "it has the sixty series tires", meant: "/60" },
      pattern: "(?<aspect>[2-9][05]) (?:series|profile)",
    },
    ({ aspect = "" }) => [{ kind: "tire-partial", value: `/${aspect}`, parts: [Number(aspect)], weight: 0.7, topic: "tire" }],
  ),
  phraseRule(
    {
      name: "tire-width-alone",
      example: { heard: "two thirty fives up front", meant: "235" },
      pattern: "(?<width>(?:[1-3]|to|too) (?:oh )?\\d{1,2}|[1-3]\\d\\d)(?<plural>s?)",
    },
    ({ width = "", plural }) => {
      const digits = digitsOf(width);
      const value = Number(digits);
      if (digits.length !== 3 || value % 10 !== 5 || value < 125 || value > 395) return [];
      const homophone = /^t/.test(width);
      return [
        {
          kind: "tire-partial",
          value: digits,
          parts: [value],
          weight: plural ? 0.68 : 0.3,
          repaired: homophone || / /.test(width),
          topic: "tire",
          needsTopic: homophone || !plural,
        },
      ];
    },
  ),
];
