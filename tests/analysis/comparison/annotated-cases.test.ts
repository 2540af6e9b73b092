import { describe, expect, test } from "vitest";
import type { Claim, Conflict } from "../../../shared-types/index.ts";
import { type GoldCase, readCases } from "../../corpus/read-cases.ts";
import { annotatedClaims } from "./support/annotated-claims.ts";
import { compared } from "./support/claims.ts";

/**
 * The claims that a careful person annotated, compared by the rules: every annotated conflict is found and nothing else is shown.
 * Found means that two sides of both share a moment, as the corpus's scorer counts it.
 */
const cases = readCases(new URL("../../../fixtures/corpus/dev", import.meta.url).pathname);

function matches(found: Conflict, annotated: GoldCase["conflicts"][number], captionsOf: (id: string) => readonly number[]): boolean {
  const touches = (side: Conflict["sides"][number], captions: readonly number[]): boolean =>
    side.claims.some((id) => captionsOf(id).some((caption) => captions.includes(caption)));
  return annotated.sides.some((first, a) =>
    annotated.sides.some(
      (second, b) =>
        a < b &&
        found.sides.some((one, x) => found.sides.some((other, y) => x !== y && touches(one, first.at) && touches(other, second.at))),
    ),
  );
}

describe.for(cases.map((one) => ({ id: one.gold.id, one })))("$id", ({ one }) => {
  const claims: Claim[] = annotatedClaims(one);
  const captionsOf = (id: string): readonly number[] => claims.find((claim) => claim.id === id)!.captions;
  const { conflicts } = compared(claims);

  test("finds every annotated conflict", () => {
    const missed = one.gold.conflicts.filter((gold) => !conflicts.some((found) => matches(found, gold, captionsOf)));
    expect(missed.map((gold) => `${gold.kind} ${gold.topic}`)).toEqual([]);
  });

  test("gives each the kind it was annotated with", () => {
    const kinds = one.gold.conflicts.map((gold) => `${gold.topic}: ${conflicts.find((found) => matches(found, gold, captionsOf))?.kind}`);
    expect(kinds).toEqual(one.gold.conflicts.map((gold) => `${gold.topic}: ${gold.kind}`));
  });

  test("shows nothing else", () => {
    const wrong = conflicts.filter((found) => !one.gold.conflicts.some((gold) => matches(found, gold, captionsOf)));
    expect(wrong.map((conflict) => `${conflict.kind} ${conflict.topic}: ${conflict.why}`)).toEqual([]);
  });
});
