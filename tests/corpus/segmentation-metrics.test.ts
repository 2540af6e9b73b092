import { describe, expect, test } from "vitest";
import { cohenKappa } from "./kappa.ts";
import { pk, windowDiff } from "./zone-score.ts";

/** [4, 4, 4] as labels a a a a b b b b c c c c, with a fresh label for each segment. */
function labels(lengths: readonly number[]): string[] {
  return lengths.flatMap((length, segment) => Array<string>(length).fill(`segment ${segment}`));
}

describe("segmentation metrics against worked examples", () => {
  // Worked by hand from the definitions in Beeferman, Berger, Lafferty (Machine Learning 34, 1999; two-probe form) and
  // Pevzner, Hearst (Computational Linguistics 28(1), 2002); windows are the pairs (i, i + k).
  test.for([
    { real: [4, 4, 4], found: [4, 4, 4], k: 2, pkShare: 0, windowDiffShare: 0, why: "the same" },
    { real: [4, 4, 4], found: [5, 3, 4], k: 2, pkShare: 0.2, windowDiffShare: 0.2, why: "one border late by one" },
    { real: [4, 4, 4], found: [3, 1, 4, 4], k: 2, pkShare: 0.1, windowDiffShare: 0.2, why: "a border too many beside a true one" },
    { real: [4, 4, 4], found: [12], k: 2, pkShare: 0.4, windowDiffShare: 0.4, why: "no border at all" },
    { real: [4, 4, 4], found: [4, 2, 2, 4], k: 2, pkShare: 0.2, windowDiffShare: 0.2, why: "a border too many" },
    { real: [4, 4, 4], found: Array<number>(12).fill(1), k: 2, pkShare: 0.6, windowDiffShare: 1, why: "a border everywhere" },
    { real: [6, 6], found: [5, 1, 6], k: 3, pkShare: 1 / 9, windowDiffShare: 3 / 9, why: "a near miss kept beside the hit" },
  ])("$why", ({ real, found, k, pkShare, windowDiffShare }) => {
    expect(pk(labels(real), labels(found), k)).toBeCloseTo(pkShare, 10);
    expect(windowDiff(labels(real), labels(found), k)).toBeCloseTo(windowDiffShare, 10);
  });
});

describe("segmentation metrics against NLTK's own doctest values", () => {
  // https://www.nltk.org/api/nltk.metrics.segmentation.html writes a row of borders, one character for each gap between two units; its
  // windows of k gaps are our pairs (i, i + k) over one unit more than there are gaps.
  const unitsOf = (borders: string): number[] => {
    let segment = 0;
    return [0, ...[...borders].map((gap) => (segment += Number(gap)))];
  };

  test.for([
    { real: "000100000010", found: "000010000100", k: 3, share: 3 / 10 },
    { real: "000010000100", found: "100000010000", k: 3, share: 8 / 10 },
  ])("windowdiff of $real and $found", ({ real, found, k, share }) => {
    expect(windowDiff(unitsOf(real), unitsOf(found), k)).toBeCloseTo(share, 10);
  });

  test.for([
    { found: "1", share: 199 / 399, why: "a border everywhere" },
    { found: "0", share: 200 / 399, why: "no border at all" },
  ])("pk of a border in four gaps against $why", ({ found, share }) => {
    expect(pk(unitsOf("0100".repeat(100)), unitsOf(found.repeat(400)), 2)).toBeCloseTo(share, 10);
  });

  test("WindowDiff is never below Pk", () => {
    const rows = ["000100000010", "000010000100", "100000010000", "111111111111", "000000000000", "010101010101"].map(unitsOf);
    for (const real of rows)
      for (const found of rows) for (const k of [1, 2, 3, 5]) expect(windowDiff(real, found, k)).toBeGreaterThanOrEqual(pk(real, found, k));
  });
});

describe("Cohen's kappa against textbook tables", () => {
  // The usual textbook 2x2 tables, recomputed from the formula (tables from memory).
  test.for([
    { table: [20, 5, 10, 15] as const, kappa: 0.4 },
    { table: [45, 15, 25, 15] as const, kappa: 0.1304 },
    { table: [25, 35, 5, 35] as const, kappa: 0.2593 },
  ])("kappa $kappa", ({ table: [yesYes, yesNo, noYes, noNo], kappa }) => {
    const rows = [...pairs("y", "y", yesYes), ...pairs("y", "n", yesNo), ...pairs("n", "y", noYes), ...pairs("n", "n", noNo)];
    expect(
      cohenKappa(
        rows.map(([a]) => a),
        rows.map(([, b]) => b),
      ),
    ).toBeCloseTo(kappa, 4);
  });

  test("has no value where chance alone agrees completely", () => expect(cohenKappa(["y", "y"], ["y", "y"])).toBeNull());
});

function pairs(first: string, second: string, count: number): [string, string][] {
  return Array.from({ length: count }, () => [first, second]);
}
