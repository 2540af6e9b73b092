import { describe, expect, test } from "vitest";
import { corpusFloors } from "./floors.ts";
import { readCases } from "./read-cases.ts";
import { analyseCase, scoreCases } from "./scorer.ts";

/** Each folder of annotated walkarounds as a whole, against the floors that the analysis has reached before. */
describe.for(corpusFloors.map((floors) => ({ called: floors.only?.called ?? floors.folder, ...floors })))("$called", (floors) => {
  const { folder, only, atLeast, atMost, kinds } = floors;
  const all = readCases(new URL(`../../fixtures/corpus/${folder}`, import.meta.url).pathname);
  const cases = only ? all.filter(({ gold }) => only.ids.includes(gold.id)) : all;
  const { total } = scoreCases(cases.map((one) => ({ ...one, output: analyseCase(one) })));

  test.for(Object.entries(atLeast))("%s is at least %d", ([figure, floor]) => {
    expect(total[figure as keyof typeof atLeast]).toBeGreaterThanOrEqual(floor);
  });

  test.for(Object.entries(atMost))("%s is at most %d", ([figure, ceiling]) => {
    expect(total[figure as keyof typeof atMost]).toBeLessThanOrEqual(ceiling);
  });

  test.for(Object.entries(kinds))("conflicts of kind %s are found in a share of at least %d", ([kind, floor]) => {
    const [found = 0, of = 0] = (total.recall_by_kind[kind] ?? "0/0").split("/").map(Number);
    expect(of, `no case of ${folder} has a conflict of kind ${kind}`).toBeGreaterThan(0);
    expect(found / of).toBeGreaterThanOrEqual(floor);
  });
});
