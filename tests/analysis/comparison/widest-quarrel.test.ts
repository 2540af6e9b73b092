import { describe, expect, test } from "vitest";
import { compareClaims } from "../../../electron/analysis/comparison/compare-claims.ts";
import type { Claim } from "../../../shared-types/index.ts";
import { sampleClaim } from "../../support/builders/sample-analysis.ts";

type Said = readonly [value: number, start: number];

function conflictValues(about: Partial<Claim>, said: readonly Said[]): (string | number)[][] {
  const claims = said.map(([value, start], i) =>
    sampleClaim(`c${i}`, i, start, `it is ${value}`, { position: null, ...about, value, zone: "opening" }),
  );
  const { conflicts } = compareClaims({ claims, zones: [], duration: 900, stockSheet: null, recordedOn: null });
  return conflicts.map(({ sides }) => sides.map(({ value }) => value));
}

const year = { component: "vehicle", attribute: "year", quote: "this is the car" } as const;
const price = { component: "price", attribute: "price", unit: "USD" } as const;
const ratio = { component: "final-drive", attribute: "ratio" } as const;

describe("figures that lie too far apart are about two things (common practice)", () => {
  test.for([
    {
      why: "an asking price against what the paint cost",
      about: price,
      said: [
        [24500, 5],
        [2400, 500],
      ] as Said[],
      sides: [],
    },
    {
      why: "an axle ratio against a first gear",
      about: ratio,
      said: [
        [3.7, 5],
        [6.4, 500],
      ] as Said[],
      sides: [],
    },
  ])("$why is no conflict", ({ about, said, sides }) => expect(conflictValues(about, said)).toEqual(sides));

  test.for([
    {
      why: "two asking prices",
      about: price,
      said: [
        [24500, 5],
        [26500, 500],
      ] as Said[],
      sides: [[24500, 26500]],
    },
    {
      why: "two axle ratios",
      about: ratio,
      said: [
        [3.23, 5],
        [2.76, 500],
      ] as Said[],
      sides: [[3.23, 2.76]],
    },
    {
      why: "two asking prices beside a third sum",
      about: price,
      said: [
        [2400, 5],
        [24500, 300],
        [26500, 600],
      ] as Said[],
      sides: [[24500, 26500]],
    },
  ])("$why are one", ({ about, said, sides }) => expect(conflictValues(about, said)).toEqual(sides));

  test("a model year is not quarrelled with by a year of long before", () => {
    expect(
      conflictValues({ ...year, unit: null }, [
        [2020, 5],
        [1946, 500],
      ]),
    ).toEqual([]);
  });
});
