import type { Claim } from "../../../../shared-types/index.ts";
import { type ConflictDraft, conflictOf } from "../conflict-of.ts";
import { slotPart } from "../slots/parts.ts";
import { positionsMeet } from "../slots/positions.ts";
import { rimNamedIn } from "../values/tire-sizes.ts";
import { listed, moment } from "../wording.ts";
import type { ClaimIndex, StandardRule } from "./rule.ts";

/** Rims nearer together than this are the same one in other words: 390 mm and 15.35 in. A 15-inch rim is 0.35 in from it, and another rim. */
const sameRimInches = 0.2;

interface Measured {
  readonly claim: Claim;
  readonly inches: number;
  /** As named: "15 in", "390 mm". */
  readonly words: string;
}

function wheelDiameters(claims: ClaimIndex): Measured[] {
  return [...claims.of("wheel", "diameter"), ...claims.of("wheel", "size")].flatMap((claim) => {
    // What it was first supplied with says nothing of what is on it now.
    if (slotPart(claim) !== null || claim.circumstance !== null) return [];
    // One wheel in the cabin is the steering wheel.
    if ((claim.zone === "cabin" || claim.zone === "drive") && !/\b(wheels|rims|alloys)\b/i.test(claim.quote)) return [];
    const spoken =
      typeof claim.value === "number" ? claim.value : Number(/(?:TR|x)?\s*(\d{2,3}(?:\.\d+)?)$/i.exec(claim.value)?.[1] ?? Number.NaN);
    const first = typeof claim.value === "string" && /^(\d{2}(?:\.5)?)\s*(?:x|by)\s*\d/i.exec(claim.value);
    const named = first ? Number(first[1]) : spoken;
    if (!Number.isFinite(named)) return [];
    const metric = claim.unit === "mm" || (claim.unit !== "in" && named > 100);
    const inches = metric ? named / 25.4 : named;
    if (inches < 8 || inches > 30) return [];
    return [{ claim, inches, words: metric ? `${named} mm (${inches.toFixed(2)} in)` : `${named} in` }];
  });
}

function tireRims(claims: readonly Claim[]): Measured[] {
  return claims.flatMap((claim) => {
    const rim = typeof claim.value === "string" ? rimNamedIn(claim.value) : undefined;
    if (!rim) return [];
    return [{ claim, inches: rim.inches, words: rim.metric ? `${rim.named} mm (${rim.inches.toFixed(2)} in)` : `${rim.named} in` }];
  });
}

function meet(tire: Claim, wheel: Claim): boolean {
  return tire.position === null || wheel.position === null || positionsMeet(tire.position, wheel.position);
}

function sameRim(first: Measured, second: Measured): boolean {
  return Math.abs(first.inches - second.inches) < sameRimInches;
}

/**
 * Tires whose rim no wheel named for their place has. Where wheels or tires are given in several sizes and one of them fits, the quarrel is
 * between those sizes and is reported as such; here only what nothing explains.
 */
function mismatch(tires: readonly Measured[], wheels: readonly Measured[], topic: string, weight: number): ConflictDraft[] {
  const wheelDistinct = distinct(wheels);
  const tireDistinct = distinct(tires);
  const clashes = (tire: Measured, wheel: Measured): boolean => meet(tire.claim, wheel.claim) && !sameRim(tire, wheel);
  const lonelyTires = tireDistinct.filter((tire) => {
    const near = wheelDistinct.filter((wheel) => meet(tire.claim, wheel.claim));
    return near.length > 0 && !near.some((wheel) => sameRim(tire, wheel));
  });
  // Where another tire named for the same place fits, the quarrel is between the two tire sizes.
  const alone = lonelyTires.filter(
    (tire) => !tireDistinct.some((other) => other !== tire && meet(other.claim, tire.claim) && fitsSome(other, wheelDistinct)),
  );
  const tire = alone.find((candidate) => wheelDistinct.some((wheel) => clashes(candidate, wheel)));
  const wheel = tire && wheelDistinct.find((candidate) => clashes(tire, candidate));
  if (!tire || !wheel) return [];
  const tireClaims = tires.filter((one) => sameRim(one, tire) && clashes(one, wheel));
  const wheelClaims = wheels.filter((one) => sameRim(one, wheel));
  // Each size is said at its own moment, not all at the first one's.
  const said = [...Map.groupBy(tireClaims, ({ claim }) => String(claim.value))].map(
    ([size, of]) => `${size} at ${moment(of[0]!.claim.start)}`,
  );
  const sizes = [...new Set(tireClaims.map(({ claim }) => String(claim.value)))];
  return [
    conflictOf({
      kind: "standard",
      topic,
      why: `A ${wheel.words} wheel is named at ${moment(wheel.claim.start)}, and ${listed(said)} ${said.length === 1 ? "needs" : "need"} a ${tire.words} rim.`,
      rule: "tire-rim-against-wheel",
      standard: {
        name: "The rim in a tire size is the wheel's diameter",
        source: ruleSource,
        working: `${listed(sizes)}: rim ${tire.words}; wheel ${wheel.words}; difference ${Math.abs(tire.inches - wheel.inches).toFixed(2)} in.`,
      },
      weight,
      sides: [
        { value: wheel.claim.value, unit: wheel.claim.unit ?? "in", claims: wheelClaims.map(({ claim }) => claim) },
        {
          value: sizes.length === 1 ? sizes[0]! : Math.round(tire.inches * 100) / 100,
          unit: sizes.length === 1 ? null : "in",
          claims: tireClaims.map(({ claim }) => claim),
        },
      ],
    }),
  ];
}

function fitsSome(tire: Measured, wheels: readonly Measured[]): boolean {
  return wheels.some((wheel) => meet(tire.claim, wheel.claim) && sameRim(tire, wheel));
}

/** One of each rim and place: enough to compare, however often it was said. */
function distinct(measured: readonly Measured[]): Measured[] {
  const seen = new Map<string, Measured>();
  for (const one of measured) {
    const key = `${one.inches.toFixed(1)} ${one.claim.position}`;
    if (!seen.has(key)) seen.set(key, one);
  }
  return [...seen.values()];
}

const ruleSource =
  "Tire size designations, 49 CFR 571.139 and the tire standards' yearbooks: the last number of a size is the rim diameter";

export const rimAgainstWheel: StandardRule = {
  name: "tire-rim-against-wheel",
  source: ruleSource,
  find: (claims) => {
    const tires = claims.of("tire", "size").filter((claim) => slotPart(claim) !== "spare");
    const spares = [...claims.of("spare", "size"), ...claims.of("tire", "size").filter((claim) => slotPart(claim) === "spare")];
    const spareWheels = claims.of("spare", "diameter").flatMap((claim) => {
      if (typeof claim.value !== "number") return [];
      const inches = claim.unit === "mm" ? claim.value / 25.4 : claim.value;
      return [{ claim, inches, words: `${claim.value} ${claim.unit ?? "in"}` }];
    });
    return {
      conflicts: [
        ...mismatch(tireRims(tires), wheelDiameters(claims), "wheel diameter against tire rim size", 90),
        ...mismatch(tireRims(spares), spareWheels, "spare wheel diameter against its tire", 45),
      ],
      remarks: [],
    };
  },
  example: {
    finds: "conflict",
    claims: [
      { component: "wheel", attribute: "diameter", value: 20, unit: "in", position: "all" },
      { component: "tire", attribute: "size", value: "275/60R18", position: "rear" },
    ],
    quiet: [
      [
        { component: "wheel", attribute: "diameter", value: 390, unit: "mm", position: "all" },
        { component: "wheel", attribute: "diameter", value: 15.35, unit: "in", position: "all" },
        { component: "tire", attribute: "size", value: "220/55R390", position: "rear" },
      ],
      [
        { component: "wheel", attribute: "diameter", value: 17, unit: "in", position: "all" },
        { component: "spare", attribute: "size", value: "T135/80D16" },
      ],
      [
        { component: "wheel", attribute: "diameter", value: 18, unit: "in", position: "front" },
        { component: "tire", attribute: "size", value: "295/35R19", position: "rear" },
      ],
    ],
  },
};
