import { flotationDiameterInches } from "../../vocabulary/tire-sizes.ts";
import { type NumberRule, phraseRule } from "../rule.ts";

/** Figures said twice in one breath, priced to the last five, or with a half in the middle. */
export const runTogetherRules: readonly NumberRule[] = [
  phraseRule(
    {
      name: "price-to-the-last-five",
      example: { heard: "we're at nine nine ninety five", meant: 9995 },
      pattern: "(?<thousands>[1-9]) (?<hundreds>[49]) (?<rest>95|99)",
    },
    ({ thousands = "", hundreds = "", rest = "" }, line, first) =>
      // "V six, four ninety five" and a run of digits are no prices.
      /^(?:v|vee|straight|inline|flat|slant|\d+|oh)$/.test(line.pieces[first - 1]?.text ?? "") || line.pieces[first]!.written === "digits"
        ? []
        : [{ kind: "integer", value: Number(thousands + hundreds + rest), weight: 0.66, repaired: true, topic: "price" }],
  ),
  phraseRule(
    {
      name: "hundreds-said-twice",
      example: { heard: "the carb's a seven fifty seven hundred fifty", meant: 750 },
      pattern: "(?<hundreds>[1-9]) (?<both>[1-9]\\d[1-9]0)",
      takesUnit: true,
    },
    ({ hundreds = "", both = "" }, line, first) => {
      // "Seven fifty, seven hundred fifty" without its pause is heard as seven and five thousand seven hundred and fifty.
      const [tens = "", again = "", rest = ""] = both;
      if (again !== hundreds || rest !== tens || line.pieces[first + 1]!.written !== "scaled") return [];
      return [{ kind: "integer", value: Number(`${hundreds}${tens}0`), weight: 0.7, repaired: true }];
    },
  ),
  phraseRule(
    {
      name: "tire-flotation-and-a-half",
      example: { heard: "the tires are thirty one ten and a half fifteens", meant: "31x10.50R15" },
      pattern: "(?<diameter>[2-4]\\d) (?:(?:x|by) )?(?<width>[7-9]|1[0-6]) and (?:a |1 )?half (?:(?:x|by|r|on) )?(?<rim>1[3-9]|2[0-4])s?",
    },
    ({ diameter = "", width = "", rim = "" }) =>
      Number(diameter) < flotationDiameterInches.least ||
      Number(diameter) > flotationDiameterInches.most ||
      Number(rim) >= Number(diameter) - 5
        ? []
        : [
            {
              kind: "tire-size",
              parts: [Number(diameter), Number(width) + 0.5, Number(rim)],
              value: `${diameter}x${width}.50R${rim}`,
              weight: 0.93,
              repaired: true,
              topic: "tire",
            },
          ],
  ),
];
