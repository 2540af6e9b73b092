import type { Claim } from "../../../../shared-types/index.ts";
import { conflictOf, remarkOf } from "../conflict-of.ts";
import { slotPart } from "../slots/parts.ts";
import { claimWords, moment } from "../wording.ts";
import { type ClaimIndex, modelYear, type StandardRule } from "./rule.ts";

const ratioSource = "Axle ratio = ring gear teeth ÷ pinion teeth, quoted to two decimals (arithmetic)";

function teeth(claims: ClaimIndex, which: RegExp): Claim | undefined {
  return claims.of("final-drive", "count").find((claim) => typeof claim.value === "number" && which.test(claim.part ?? claim.quote));
}

export const ratioAgainstTeeth: StandardRule = {
  name: "axle-ratio-against-teeth",
  source: ratioSource,
  find: (claims) => {
    const ring = teeth(claims, /\bring|\bcrown/i);
    const pinion = teeth(claims, /\bpinion/i);
    if (!ring || !pinion || typeof ring.value !== "number" || typeof pinion.value !== "number" || pinion.value === 0)
      return { conflicts: [], remarks: [] };
    const exact = ring.value / pinion.value;
    const wrong = claims
      .of("final-drive", "ratio")
      // Quoted to two decimals, cut or rounded.
      .filter((claim) => typeof claim.value === "number" && Math.abs(claim.value - exact) > 0.011);
    const first = wrong[0];
    if (!first) return { conflicts: [], remarks: [] };
    return {
      conflicts: [
        conflictOf({
          kind: "standard",
          topic: "axle ratio against tooth counts",
          why: `The axle ratio is given as ${claimWords(first)} at ${moment(first.start)}, and ${ring.value} over ${pinion.value} teeth at ${moment(ring.start)} make ${exact.toFixed(2)}.`,
          rule: "axle-ratio-against-teeth",
          standard: {
            name: "Axle ratio",
            source: ratioSource,
            working: `${ring.value} ÷ ${pinion.value} = ${exact.toFixed(4)}; spoken ${claimWords(first)}.`,
          },
          weight: 70,
          sides: [
            { value: first.value, unit: null, claims: wrong.filter((claim) => claim.value === first.value) },
            { value: Math.round(exact * 100) / 100, unit: null, claims: [ring, pinion] },
          ],
        }),
      ],
      remarks: [],
    };
  },
  example: {
    finds: "conflict",
    claims: [
      { component: "final-drive", attribute: "count", part: "ring gear teeth", value: 37 },
      { component: "final-drive", attribute: "count", part: "pinion teeth", value: 10 },
      { component: "final-drive", attribute: "ratio", value: 4.11 },
    ],
    quiet: [
      [
        { component: "final-drive", attribute: "count", part: "ring gear teeth", value: 41 },
        { component: "final-drive", attribute: "count", part: "pinion teeth", value: 11 },
        { component: "final-drive", attribute: "ratio", value: 3.73 },
      ],
    ],
  },
};

export const engineYearAgainstOriginal: StandardRule = {
  name: "engine-year-against-original",
  source: "An engine made after the vehicle's model year is a replaced one (common practice)",
  find: (claims) => {
    const model = modelYear(claims);
    if (!model) return { conflicts: [], remarks: [] };
    const original = claims.of("engine", "originality").filter((claim) => claim.value === "original" && slotPart(claim) === null);
    const later = claims
      .of("engine", "year")
      .filter(
        (claim) => typeof claim.value === "number" && slotPart(claim) === null && claim.value > model.year && claim.circumstance === null,
      );
    const firstOriginal = original[0];
    const firstLater = later[0];
    if (!firstLater) return { conflicts: [], remarks: [] };
    if (!firstOriginal) {
      const remark = remarkOf({
        topic: "engine year",
        why: `The engine is given as a ${firstLater.value} at ${moment(firstLater.start)} in a ${model.year} vehicle; it is not the one it was built with.`,
        rule: "engine-year-against-original",
        claims: [firstLater, ...model.claims],
      });
      return { conflicts: [], remarks: [remark] };
    }
    return {
      conflicts: [
        conflictOf({
          kind: "originality",
          topic: "engine year against its being original",
          why: `The engine is called original at ${moment(firstOriginal.start)} and a ${firstLater.value} at ${moment(firstLater.start)}, in a ${model.year} vehicle.`,
          rule: "engine-year-against-original",
          standard: {
            name: "Engine year and model year",
            source: "Common practice: a model year runs into the calendar year before it, never past it",
            working: `Engine ${firstLater.value} − model year ${model.year} = ${Number(firstLater.value) - model.year} years later.`,
          },
          weight: 90,
          sides: [
            { value: "original", unit: null, claims: original },
            { value: firstLater.value, unit: null, claims: later },
          ],
        }),
      ],
      remarks: [],
    };
  },
  example: {
    finds: "conflict",
    claims: [
      { component: "vehicle", attribute: "year", value: 1967 },
      { component: "engine", attribute: "originality", value: "original" },
      { component: "engine", attribute: "year", value: 1971 },
    ],
    quiet: [
      [
        { component: "vehicle", attribute: "year", value: 1967 },
        { component: "engine", attribute: "originality", value: "original" },
        { component: "engine", attribute: "year", value: 1966 },
      ],
      [
        { component: "vehicle", attribute: "year", value: 1967 },
        { component: "engine", attribute: "originality", value: "replaced" },
        { component: "engine", attribute: "year", value: 1971 },
      ],
    ],
  },
};
