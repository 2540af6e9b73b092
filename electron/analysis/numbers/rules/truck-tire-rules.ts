import { isTruckInchTire, isTruckNumericTire } from "../../vocabulary/tire-sizes.ts";
import { type Draft, type Groups, type NumberRule, phraseRule, type RuleExample } from "../rule.ts";

/**
 * Sizes of commercial trucks and trailers that no passenger tire has: the section in inches on a half-inch rim (11R22.5), and the older
 * section in hundredths of an inch on a whole one (10.00-20, 10.00R20). Common practice of the trade.
 */

/** The R as recognisers write it. */
const radial = "(?<radial>r|are|ar|our|radial|radials)";
const bias = "(?<bias>-|dash|by|x)";
/** "22.5", "22 5s", "22 point five", "22 and a half": the half must be said. */
const halfInchRim = "(?<rim>17|19|22|24)(?:\\.5s?|(?: point)? 5s?| and (?:a |1 )?half)";

interface TruckForm {
  readonly name: string;
  readonly example: RuleExample;
  readonly pattern: string;
  /** `scaled`: said as hundreds and the rest. */
  readonly read: (groups: Groups, scaled: boolean) => Draft | undefined;
}

function truckSize(value: string, parts: readonly number[], told: boolean): Draft {
  return { kind: "tire-size", value, parts, weight: told ? 0.95 : 0.8, repaired: !told, topic: "tire", needsTopic: !told };
}

const forms: readonly TruckForm[] = [
  {
    name: "tire-truck-inch-section",
    example: { heard: "steers are eleven R twenty two point five", meant: "11R22.5" },
    pattern: `(?<width>8|9|1[0-3])(?: (?:${radial}|${bias}))? ${halfInchRim}`,
    read: ({ width = "", rim = "", radial = "", bias = "" }) => {
      const inches = Number(width);
      if (!isTruckInchTire(inches, Number(rim) + 0.5)) return undefined;
      const told = /^(?:r|radials?)$/.test(radial) || bias === "-";
      return truckSize(`${inches}${bias === "" ? "R" : "-"}${rim}.5`, [inches, Number(rim) + 0.5], told);
    },
  },
  {
    name: "tire-truck-hundreds-run-together",
    example: { heard: "the tires are ten hundred twenty", meant: "10.00-20" },
    // The width in even inches and the rim, which grammar makes one number of, as with six hundred sixteen.
    pattern: "(?<width>1[0-4])(?<rim>20|22|24)s?",
    read: ({ width = "", rim = "" }, scaled) =>
      scaled && isTruckNumericTire(Number(width) * 100, Number(rim))
        ? truckSize(`${width}.00-${rim}`, [Number(width), Number(rim)], false)
        : undefined,
  },
  {
    name: "tire-truck-hundredths",
    example: { heard: "the drives are ten hundred by twenty", meant: "10.00-20" },
    // A written "10.00" keeps its point; said, it is a number of hundreds ("ten hundred", "eleven hundred").
    pattern: `(?<width>(?:7\\.50|8\\.25|9\\.00|1[0-4]\\.00)|(?:750|825|900|1[0-4]00))(?: (?:${radial}|${bias}))? (?<rim>16|20|22|24)s?`,
    read: ({ width = "", rim = "", radial = "", bias = "" }) => {
      const hundredths = Math.round(Number(width) * (width.includes(".") ? 100 : 1));
      if (!isTruckNumericTire(hundredths, Number(rim))) return undefined;
      const told = width.includes(".") || /^(?:r|radials?)$/.test(radial) || ["by", "x", "dash"].includes(bias);
      return truckSize(`${(hundredths / 100).toFixed(2)}${radial === "" ? "-" : "R"}${rim}`, [hundredths / 100, Number(rim)], told);
    },
  },
];

export const truckTireRules: readonly NumberRule[] = forms.map(({ name, example, pattern, read }) =>
  phraseRule({ name, example, pattern }, (groups, line, first) => {
    const draft = read(groups, line.pieces[first]?.written === "scaled");
    return draft ? [draft] : [];
  }),
);
