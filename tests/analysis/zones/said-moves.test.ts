import { describe, expect, test } from "vitest";
import { isRemark, type SaidMove, saidMoves, shareRight, understood } from "./said-moves.ts";

/** Rows that no rule reads yet, by how the recogniser writes: they may shrink and never grow. */
const unread = { "three-seconds": { moves: 8, remarks: 7 }, "three-seconds-unpunctuated": { moves: 32, remarks: 9 } } as const;

const missed = (rows: readonly SaidMove[], style: keyof typeof unread) => rows.filter((said) => shareRight(said, style) < understood);

describe("sentences in a walk of three places", () => {
  const moves = saidMoves.filter((said) => !isRemark(said));
  const remarks = saidMoves.filter(isRemark);
  test("the table holds enough of both", () => {
    expect(moves.length).toBeGreaterThanOrEqual(120);
    expect(remarks.length).toBeGreaterThanOrEqual(60);
  });
  test.for(["three-seconds", "three-seconds-unpunctuated"] as const)("moves take the camera there, remarks leave it: %s", (style) => {
    expect(missed(moves, style).length, "moves not followed").toBeLessThanOrEqual(unread[style].moves);
    expect(missed(remarks, style).length, "remarks taken for moves").toBeLessThanOrEqual(unread[style].remarks);
  });
});
