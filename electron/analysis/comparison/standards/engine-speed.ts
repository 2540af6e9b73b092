import type { Claim } from "../../../../shared-types/index.ts";
import { overallDiameter, parseTireSize } from "../../vocabulary/tire-geometry.ts";
import { remarkOf } from "../conflict-of.ts";
import { moment } from "../wording.ts";
import { type ClaimIndex, nothingFound, type StandardRule } from "./rule.ts";

/** rpm = mph × 336.1352 × axle ratio × gear ÷ tire diameter in inches (https://axletally-v2.pages.dev/gear-ratio-calculator/; 63360 ÷ (60 × π)). */
const rpmConstant = 63360 / (60 * Math.PI);

/**
 * Top gears of road vehicles, common practice: from 0.6 (a long overdrive) to 1 (direct). A converter slips a little, spoken figures are
 * round and instruments read high, so a tenth either way is left alone.
 */
const longestGear = 0.6;
const directGear = 1;
const allowance = 0.1;

/** The one value of all of them; undefined where they differ, which is a conflict of its own. */
function only(claims: readonly Claim[]): Claim | undefined {
  const [first] = claims;
  return first && claims.every((claim) => claim.value === first.value) ? first : undefined;
}

function drivenTire(claims: ClaimIndex): Claim | undefined {
  const sizes = claims.of("tire", "size").filter((claim) => typeof claim.value === "string");
  return only(sizes.filter((claim) => claim.position !== "front"));
}

export const engineSpeedAgainstGearing: StandardRule = {
  name: "engine-speed-against-gearing",
  source: "rpm = mph × 336 × axle ratio × gear ÷ tire diameter (arithmetic)",
  find: (claims) => {
    const ratio = only(claims.of("final-drive", "ratio"));
    const tire = drivenTire(claims);
    const size = tire && parseTireSize(String(tire.value));
    const diameter = size && overallDiameter(size);
    if (!ratio || typeof ratio.value !== "number" || !tire || !diameter) return nothingFound;
    const remarks = claims.of("engine", "type").flatMap((claim) => {
      const found = claim.part === "engine speed" ? /^(\d+) rpm at (\d+) mph$/.exec(String(claim.value)) : null;
      if (!found) return [];
      const [rpm, mph] = [Number(found[1]), Number(found[2])];
      const direct = (mph * rpmConstant * Number(ratio.value)) / diameter.inches;
      const gear = rpm / direct;
      if (gear >= longestGear * (1 - allowance) && gear <= directGear * (1 + allowance)) return [];
      return [
        remarkOf({
          topic: "engine speed against gearing",
          why:
            `${claim.value} is told at ${moment(claim.start)}; ${mph} × 336 × ${ratio.value.toString()} ÷ ${diameter.inches.toFixed(1)} in make ` +
            `${Math.round(direct)} rpm in direct gear, and a top gear of ${gear.toFixed(2)} is unusual.`,
          rule: "engine-speed-against-gearing",
          claims: [claim, ratio, tire],
        }),
      ];
    });
    return { conflicts: [], remarks: remarks.slice(0, 1) };
  },
  example: {
    finds: "remark",
    claims: [
      { component: "final-drive", attribute: "ratio", value: 4.11 },
      { component: "tire", attribute: "size", position: "rear", value: "235/60R15" },
      { component: "engine", attribute: "type", part: "engine speed", value: "1500 rpm at 70 mph" },
    ],
    quiet: [
      // 70 mph, 3.55, 26.1 in: 3200 rpm in direct gear.
      [
        { component: "final-drive", attribute: "ratio", value: 3.55 },
        { component: "tire", attribute: "size", position: "rear", value: "235/60R15" },
        { component: "engine", attribute: "type", part: "engine speed", value: "3200 rpm at 70 mph" },
      ],
      // A long overdrive: 0.7.
      [
        { component: "final-drive", attribute: "ratio", value: 3.42 },
        { component: "tire", attribute: "size", value: "235/75R15" },
        { component: "engine", attribute: "type", part: "engine speed", value: "2000 rpm at 70 mph" },
      ],
    ],
  },
};
