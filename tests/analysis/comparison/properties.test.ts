import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { ClaimSketch } from "../../../electron/analysis/comparison/standards/rule.ts";
import { convert, unitTable } from "../../../electron/analysis/vocabulary/units.ts";
import {
  attributeNames,
  type Claim,
  Claim as ClaimSchema,
  Conflict as ConflictSchema,
  componentNames,
  positionNames,
  Remark as RemarkSchema,
  StockSheetDenial,
  StockSheetSilence,
  StockSheetSupport,
  stances,
  type UnitName,
  unitNames,
  zoneNames,
} from "../../../shared-types/index.ts";
import { claimsFrom, compared } from "./support/claims.ts";
import { everyMutation } from "./support/mutations.ts";

const seed = { seed: 20261125, numRuns: 150 };
const mutations = everyMutation();

/** Sketches that mean something, drawn from the planted ones, at any time. */
const meaningfulSketch: fc.Arbitrary<ClaimSketch> = fc
  .record({
    mutation: fc.constantFrom(...mutations),
    side: fc.constantFrom("original", "contradiction", "equal"),
    start: fc.integer({ min: 0, max: 3000 }),
    stance: fc.constantFrom(...stances),
    time: fc.constantFrom("today", "today", "today", "former"),
  })
  .map(({ mutation, side, start, stance, time }) => ({
    ...(side === "original"
      ? mutation.original
      : side === "contradiction"
        ? mutation.contradiction
        : (mutation.equals[0] ?? mutation.original)),
    start,
    stance,
    time: time as Claim["time"],
  }));

/** Any claim the type allows, sense or not. */
const anySketch: fc.Arbitrary<ClaimSketch> = fc.record({
  component: fc.constantFrom(...componentNames),
  attribute: fc.constantFrom(...attributeNames),
  part: fc.option(fc.oneof(fc.string(), fc.constantFrom("owner", "carburetor", "spare", "ring gear teeth"))),
  position: fc.option(fc.constantFrom(...positionNames)),
  value: fc.oneof(
    fc.double(),
    fc.integer(),
    fc.string(),
    fc.constantFrom("235/60R15", "good", "flawed", "original", "absent", "1M8GDM9AXKP042788", "2219", "red"),
  ),
  unit: fc.option(fc.constantFrom(...unitNames)),
  stance: fc.constantFrom(...stances),
  circumstance: fc.option(fc.string()),
  zone: fc.constantFrom(...zoneNames),
  start: fc.double({ min: 0, max: 1e6, noNaN: true }),
  quote: fc.string(),
});

describe("properties", () => {
  test("the outcome does not depend on the order of the claims", () => {
    fc.assert(
      fc.property(fc.array(meaningfulSketch, { maxLength: 60 }), fc.infiniteStream(fc.nat()), (sketches, numbers) => {
        const claims = claimsFrom(sketches);
        const shuffled = claims.map((claim) => ({ claim, at: numbers.next().value as number })).sort((a, b) => a.at - b.at);
        expect(compared(shuffled.map(({ claim }) => claim))).toEqual(compared(claims));
      }),
      seed,
    );
  });

  test("any claims give a valid outcome that names only claims given, and survives JSON", () => {
    fc.assert(
      fc.property(fc.array(anySketch, { maxLength: 40 }), fc.option(fc.constant("2026-03-01")), (sketches, recordedOn) => {
        const claims = claimsFrom(sketches);
        const outcome = compared(claims, {
          recordedOn: recordedOn ?? null,
          stockSheet: { mileage: "84,000", engine: "5.7L V8", tires: "235/60R15", color: "red", weird: "" },
        });
        const known = new Set(claims.map((claim) => claim.id));
        for (const conflict of outcome.conflicts) {
          expect(ConflictSchema.safeParse(conflict).error).toBeUndefined();
          for (const side of conflict.sides) for (const id of side.claims) expect(known.has(id)).toBe(true);
        }
        for (const remark of outcome.remarks) {
          expect(RemarkSchema.safeParse(remark).error).toBeUndefined();
          for (const id of remark.claims) expect(known.has(id)).toBe(true);
        }
        for (const denial of outcome.denials) {
          expect(StockSheetDenial.safeParse(denial).error).toBeUndefined();
          for (const id of denial.claims) expect(known.has(id)).toBe(true);
        }
        for (const support of outcome.supports) {
          expect(StockSheetSupport.safeParse(support).error).toBeUndefined();
          for (const id of support.claims) expect(known.has(id)).toBe(true);
        }
        for (const silence of outcome.silences) {
          expect(StockSheetSilence.safeParse(silence).error).toBeUndefined();
          // What is not spoken of is neither denied nor borne out.
          const spoken = [...outcome.denials, ...outcome.supports].filter(({ field }) => field === silence.field);
          expect(spoken.some(({ why }) => why.toLowerCase().includes(`the ${silence.topic} is`))).toBe(false);
        }
        expect(new Set(outcome.conflicts.map((conflict) => conflict.id)).size).toBe(outcome.conflicts.length);
      }),
      seed,
    );
  });

  test("sketched claims are claims", () => {
    for (const claim of claimsFrom(mutations.map((mutation) => mutation.original)))
      expect(ClaimSchema.safeParse(claim).error).toBeUndefined();
  });

  test("an unrelated claim changes no conflict's key", () => {
    fc.assert(
      fc.property(fc.array(meaningfulSketch, { minLength: 2, maxLength: 30 }), (sketches) => {
        const unrelated: ClaimSketch = {
          component: "ignition",
          attribute: "diameter",
          part: "plug wire",
          value: 8,
          unit: "mm",
          start: 1500,
        };
        const before = compared(claimsFrom(sketches)).conflicts.map((conflict) => conflict.key);
        const after = compared(claimsFrom([...sketches, unrelated])).conflicts.map((conflict) => conflict.key);
        expect(after).toEqual(before);
      }),
      seed,
    );
  });

  test("a further mention in rounder words keeps the key", () => {
    const mileage = (value: number, start: number): ClaimSketch => ({
      component: "odometer",
      attribute: "mileage",
      value,
      unit: "mi",
      start,
    });
    const keys = (...sketches: ClaimSketch[]): string[] => compared(claimsFrom(sketches)).conflicts.map((conflict) => conflict.key);
    const plain = keys(mileage(58_412, 100), mileage(71_308, 400));
    expect(plain).toHaveLength(1);
    expect(keys(mileage(58_400, 20), mileage(58_412, 100), mileage(71_308, 400), mileage(71_000, 700))).toEqual(plain);
  });

  test("the same words at later times keep every key: rulings hang on them", () => {
    fc.assert(
      fc.property(fc.array(meaningfulSketch, { minLength: 2, maxLength: 30 }), fc.integer({ min: 1, max: 500 }), (sketches, later) => {
        const moved = sketches.map((sketch) => ({ ...sketch, start: sketch.start! + later }));
        const keys = (all: readonly ClaimSketch[]): string[] => compared(claimsFrom(all)).conflicts.map((conflict) => conflict.key);
        expect(keys(moved)).toEqual(keys(sketches));
      }),
      seed,
    );
  });
});

/** Units that the trade gives a figure in, by its dimension; thirty-seconds and gauges are counted, not converted to. */
const otherUnits: Partial<Record<UnitName, UnitName>> = {
  mi: "km",
  km: "mi",
  in: "mm",
  mm: "in",
  hp: "kW",
  PS: "kW",
  kW: "hp",
  "lb-ft": "N·m",
  N·m: "lb-ft",
  psi: "bar",
  gal: "L",
  L: "gal",
  "cu in": "cc",
};

describe("swapping units changes no verdict", () => {
  const measured = mutations.filter(
    ({ kind, original }) => kind === "measure" && typeof original.value === "number" && original.unit && otherUnits[original.unit],
  );

  test.for(measured.map((mutation) => ({ slot: mutation.slot, mutation })))("$slot", ({ mutation }) => {
    const { original, contradiction, equals } = mutation;
    const swapped = (sketch: ClaimSketch): ClaimSketch => {
      // Litres of an engine are not spoken in gallons.
      const unit = sketch.attribute === "displacement" ? (sketch.unit === "cu in" ? "cc" : "cu in") : otherUnits[sketch.unit!];
      if (!unit) return sketch;
      const value = convert(Number(sketch.value), sketch.unit!, unit)!;
      const digits = unitTable[unit].dimension === "length" && unit === "km" ? 0 : 2;
      return { ...sketch, unit, value: Number(value.toFixed(digits)) };
    };
    const conflicts = (...sketches: ClaimSketch[]): number => compared(claimsFrom(sketches)).conflicts.length;
    expect(conflicts(original, swapped(original))).toBe(0);
    expect(conflicts(swapped(original), swapped(contradiction))).toBe(1);
    expect(conflicts(original, swapped(contradiction))).toBe(1);
    for (const equal of equals) expect(conflicts(swapped(original), equal)).toBe(0);
  });
});

describe("growth", () => {
  /** Counts how often a claim's properties are read: the work done, whatever the machine. */
  function readsFor(sketches: readonly ClaimSketch[]): number {
    let reads = 0;
    const claims = claimsFrom(sketches).map(
      (claim) =>
        new Proxy(claim, {
          get(target, property, receiver) {
            reads++;
            return Reflect.get(target, property, receiver);
          },
        }),
    );
    compared(claims, { recordedOn: "2026-03-01", stockSheet: { mileage: "84,000", tires: "235/60R15", color: "red", price: "$20,000" } });
    return reads;
  }

  const many = (count: number): ClaimSketch[] =>
    Array.from({ length: count }, (_, position) => {
      const mutation = mutations[position % mutations.length]!;
      return { ...(position % 3 === 0 ? mutation.contradiction : mutation.original), start: position * 7 };
    });

  /** All in one slot, no two alike: the case in which comparing by pairs would show. */
  const allUnlike = (count: number): ClaimSketch[] =>
    Array.from({ length: count }, (_, position) => ({
      component: "odometer",
      attribute: "mileage",
      value: 10_001 + position * 1313,
      unit: "mi",
      start: position * 7,
    }));

  test.for([
    { why: "ordinary talk", sketches: many },
    { why: "one slot with a new value each time", sketches: allUnlike },
  ])("$why: ten times the claims cost no more than n log n", ({ sketches }) => {
    const small = readsFor(sketches(600));
    const large = readsFor(sketches(6000));
    const allowed = (10 * Math.log(6000)) / Math.log(600);
    expect(large / small).toBeLessThan(allowed * 1.1);
  });
});
