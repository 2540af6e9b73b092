import type { Line } from "../pieces.ts";
import { digitsOf, type NumberRule, phraseRule } from "../rule.ts";

/** Words about air conditioning: beside them "one thirty four a" is a refrigerant. */
const airWords =
  /\b(?:air|ac|a c|aircon|cold|freon|refrigerant|charged?|recharged?|gas|gassed|regas(?:sed)?|converted|compressor|system)\b/;

function wordsAround(line: Line, first: number): string {
  return line.text.slice(Math.max(0, line.starts[first]! - 60), line.starts[first]! + 36);
}

/** Names that are made of figures: oil grades and refrigerants. Their figures are no measures of anything. */
export const designationRules: readonly NumberRule[] = [
  // SAE J300 and J306 grades: a winter grade, W, and a grade at 100 °C.
  phraseRule(
    {
      name: "oil-grade",
      example: { heard: "the oil is zero w 40", meant: "0W-40" },
      pattern:
        "(?<winter>0|oh|5|10|15|20|25|70|75|80|85) (?:w|double u|double you|weight) (?:[-,] )?(?<grade>8|12|16|20|30|40|50|60|80|90|110|140)",
    },
    ({ winter = "", grade = "" }, line, first) => {
      const [from, to] = [line.pieces[first]!, line.pieces[first + 1]!];
      return [
        {
          kind: "designation",
          value: `${winter === "oh" ? "0" : winter}W-${grade}`,
          weight: 0.93,
          repaired: from.written !== "digits" || from.end !== to.end,
        },
      ];
    },
  ),
  // ASHRAE 34 designations of refrigerants used in vehicles.
  phraseRule(
    {
      name: "refrigerant",
      example: { heard: "air blows cold on the R one thirty four a", meant: "R-134a" },
      pattern: "(?:(?<letter>r|are|our|ar) (?:- )?)?(?<digits>134|1 34|1 3 4|1234|12 34|1 2 3 4|12)(?<suffix> a| y f| yf)?(?= |$)",
    },
    ({ letter = "", digits = "", suffix = "" }, line, first) => {
      const number = digitsOf(digits);
      const nearAir = airWords.test(wordsAround(line, first));
      if (letter === "" ? number === "12" || suffix === "" || !nearAir : letter !== "r" && !nearAir) return [];
      if (number === "12" && (suffix !== "" || !(nearAir || line.pieces[first + 1]?.glued))) return [];
      if (number === "1234" && !/y/.test(suffix)) return [];
      const value = `R-${number}${number === "134" ? "a" : number === "1234" ? "yf" : ""}`;
      const written = letter === "r" && line.pieces[first + 1]?.glued === true && line.pieces[first + 1]!.text === number;
      return [{ kind: "designation", value, weight: 0.9, repaired: !written }];
    },
  ),
];
