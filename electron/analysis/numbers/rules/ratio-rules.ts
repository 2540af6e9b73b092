import { ratioOfTeeth } from "../../vocabulary/axle-ratios.ts";
import { digitsOf, type NumberRule, phraseRule } from "../rule.ts";

const two = "[1-9]\\d";

/** Ratios that say what they are: teeth over teeth, so many to one. Ratios without their point are read among the shorthand. */
export const ratioRules: readonly NumberRule[] = [
  phraseRule(
    {
      name: "teeth-over-teeth",
      example: { heard: "the axle is 37 over ten", meant: 3.7 },
      pattern: `(?<ring>${two}) (?<over>(?:over|to|by|and|slash|/) )?(?:an? )?(?<pinion>\\d\\d?)`,
    },
    ({ ring = "", pinion = "", over }) => {
      const ratio = ratioOfTeeth(Number(ring), Number(pinion));
      if (ratio === undefined) return [];
      return [
        {
          kind: "ratio",
          value: ratio,
          parts: [Number(ring), Number(pinion)],
          weight: over ? 0.45 : 0.25,
          repaired: over === "",
          topic: "ratio",
          needsTopic: true,
        },
      ];
    },
  ),
  phraseRule(
    {
      name: "teeth-named",
      example: { heard: "ring thirty nine teeth, pinion thirteen", meant: 3 },
      pattern: `(?<ring>${two}) (?:tooth|teeth)(?: ,)?(?: (?:ring|crown wheel|on the ring|on the crown wheel))?(?: (?:and|over|to|on|by|with|pinion|the|a|an)){0,4} (?<pinion>\\d\\d?)(?: (?:tooth|teeth))?`,
    },
    ({ ring = "", pinion = "" }) => {
      const ratio = ratioOfTeeth(Number(ring), Number(pinion));
      return ratio === undefined
        ? []
        : [{ kind: "ratio", value: ratio, parts: [Number(ring), Number(pinion)], weight: 0.85, repaired: true, topic: "ratio" }];
    },
  ),
  phraseRule(
    {
      name: "ratio-to-one",
      example: { heard: "three point nine to one", meant: 3.9 },
      pattern:
        "(?<whole>\\d+)(?: (?:(?<and>and (?:a |an )?(?<part>half|quarter|3 quarters))|point (?<places>\\d+(?: \\d){0,4})|(?<shorthand>\\d\\d)))? (?:to|:) 1(?! (?:\\d|oh))",
    },
    ({ whole = "", and, part = "", places = "", shorthand = "" }) => {
      const fraction = part.startsWith("3") ? 0.75 : part === "half" ? 0.5 : part === "quarter" ? 0.25 : 0;
      const value = places
        ? Number(`${whole}.${digitsOf(places)}`)
        : shorthand
          ? Number(`${whole}.${shorthand}`)
          : Number(whole) / (whole.length === 3 ? 100 : 1) + (and ? fraction : 0);
      return value >= 1 && value <= 30 ? [{ kind: "ratio", value, weight: 0.85, repaired: shorthand !== "" || whole.length === 3 }] : [];
    },
  ),
  phraseRule(
    {
      name: "decimal-ratio-to-one",
      example: { heard: "a 3.9 to 1 axle", meant: 3.9 },
      pattern: "(?<ratio>\\d+\\.\\d+) (?:to|:) 1(?! (?:\\d|oh))",
    },
    ({ ratio = "" }) => [{ kind: "ratio", value: Number(ratio), weight: 0.9 }],
  ),
];
