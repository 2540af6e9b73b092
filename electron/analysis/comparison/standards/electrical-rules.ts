import { conflictOf } from "../conflict-of.ts";
import { moment } from "../wording.ts";
import type { StandardRule } from "./rule.ts";

const cellSource = "A lead-acid cell has a nominal voltage of 2 V (IEC 60095-1): three cells make 6 V, six make 12 V";
const voltsPerCell = 2;

/** Batteries of 6, 12 and 24 V; a pack that drives the vehicle has dozens of cells of another kind. */
const leadAcidCells: ReadonlySet<number> = new Set([3, 6, 12]);

/** Caps and cells that are counted on a battery. */
const cellWords = /\b(cells?|caps?)\b/i;

export const cellsAgainstVoltage: StandardRule = {
  name: "cells-against-voltage",
  source: cellSource,
  find: (claims) => {
    const counted = claims
      .of("electrical", "count")
      .filter(
        (claim) =>
          typeof claim.value === "number" && leadAcidCells.has(claim.value) && cellWords.test(`${claim.part ?? ""} ${claim.quote}`),
      );
    const cells = counted[0];
    if (!cells) return { conflicts: [], remarks: [] };
    const volts = Number(cells.value) * voltsPerCell;
    const nominal = claims
      .of("electrical", "voltage")
      .filter((claim) => claim.circumstance === null && (claim.value === 6 || claim.value === 12 || claim.value === 24));
    const other = nominal.filter((claim) => claim.value !== volts);
    const first = other[0];
    if (!first || other.length < nominal.length) return { conflicts: [], remarks: [] };
    return {
      conflicts: [
        conflictOf({
          kind: "standard",
          topic: "system voltage against the battery's cells",
          why: `The system is given as ${first.value} V at ${moment(first.start)}, and the ${cells.value} cells of the battery counted at ${moment(cells.start)} make ${volts} V.`,
          rule: "cells-against-voltage",
          standard: {
            name: "Cells and volts",
            source: cellSource,
            working: `${cells.value} cells × ${voltsPerCell} V = ${volts} V; spoken ${first.value} V.`,
          },
          weight: 55,
          sides: [
            { value: first.value, unit: "V", claims: other },
            { value: volts, unit: "V", claims: counted.filter((claim) => claim.value === cells.value) },
          ],
        }),
      ],
      remarks: [],
    };
  },
  example: {
    finds: "conflict",
    claims: [
      { component: "electrical", attribute: "voltage", value: 6, unit: "V" },
      { component: "electrical", attribute: "count", part: "battery cap", value: 6 },
    ],
    quiet: [
      [
        { component: "electrical", attribute: "voltage", value: 12, unit: "V" },
        { component: "electrical", attribute: "count", part: "battery cap", value: 6 },
      ],
      [
        { component: "electrical", attribute: "voltage", value: 12, unit: "V" },
        { component: "electrical", attribute: "count", part: "battery cell", value: 96 },
      ],
      [
        { component: "electrical", attribute: "voltage", value: 12, unit: "V" },
        { component: "electrical", attribute: "count", part: "battery", value: 2 },
      ],
    ],
  },
};
