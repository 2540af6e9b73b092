import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { z } from "zod";
import type { SpokenNumber } from "../../../electron/analysis/model.ts";
import { readNumbers } from "../../../electron/analysis/numbers/read-numbers.ts";
import { speechOf } from "../../support/speech-of.ts";

const SpecTable = z.strictObject({
  about: z.string(),
  rows: z.array(
    z.strictObject({
      heard: z.union([z.string(), z.array(z.string())]),
      /** Likeliest reading of every number, in order: kind, value, unit, and * where it needed repair. */
      first: z.array(z.string()),
      why: z.string(),
      source: z.string().optional(),
      knownGap: z.string().optional(),
    }),
  ),
});

const folder = new URL("../../../fixtures/tables/", import.meta.url);
const tables = ["tire-sizes", "axle-ratios", "measures", "mileage-and-money", "dates", "cut-words"];

function inShort(number: SpokenNumber): string {
  const { kind, value, unit } = number.readings[0]!;
  return `${kind} ${value}${unit ? ` ${unit}` : ""}${number.broken ? " *" : ""}`;
}

test("every table of spoken numbers is there", () => {
  expect(readdirSync(folder)).toEqual(expect.arrayContaining(tables.map((name) => `${name}.json`)));
});

for (const name of tables) {
  const { rows } = SpecTable.parse(JSON.parse(readFileSync(new URL(`${name}.json`, folder), "utf8")));
  describe(name, () => {
    for (const { heard, first, why, knownGap } of rows) {
      const run = knownGap === undefined ? test : test.fails;
      run(`${[heard].flat().join(" | ")}: ${why}`, () => {
        expect(readNumbers(speechOf(heard)).map(inShort)).toEqual(first);
      });
    }
  });
}
