import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { agreementOf } from "./agreement.ts";
import { GoldCase, readCases } from "./read-cases.ts";

const folder = (name: string) => fileURLToPath(new URL(`../../fixtures/corpus/${name}`, import.meta.url));
const second = new Map(
  readdirSync(folder("second")).map((name) => {
    const gold = GoldCase.parse(JSON.parse(readFileSync(`${folder("second")}/${name}`, "utf8")));
    return [gold.id, gold] as const;
  }),
);
const agreements = readCases(folder("own")).flatMap((one) => (second.has(one.gold.id) ? [agreementOf(one, second.get(one.gold.id)!)] : []));

test("cases were annotated twice, and the annotators agree well enough for the floors to mean something", () => {
  expect(agreements.length).toBeGreaterThanOrEqual(6);
  // Kappa from 0.61 is called substantial, from 0.81 almost perfect (Landis and Koch, Biometrics 33, 1977; from memory).
  for (const { id, zones, claims, conflicts } of agreements) {
    expect.soft(zones, `${id} zones`).toBeGreaterThan(0.81);
    expect.soft(claims, `${id} claims`).toBeGreaterThan(0.61);
    expect.soft(conflicts, `${id} conflicts`).toBeGreaterThan(0.81);
  }
});
