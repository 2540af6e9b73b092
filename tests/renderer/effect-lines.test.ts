import { describe, expect, test } from "vitest";
import { effectLines } from "../../renderer/check/effect-lines.ts";
import type { Conflict, RecordingDetail, Ruling } from "../../shared-types/index.ts";
import { sampleDetail } from "../exports/sample-detail.ts";

const detail = sampleDetail();
const tires = detail.analysis.conflicts.find(({ topic }) => topic === "rear tire size") as Conflict;
const [sample] = detail.rulings as [Ruling];

/** The rear tires' conflict, ruled on; "open" leaves it open. */
function told(change: Partial<Ruling> | "open", more: Partial<RecordingDetail> = {}) {
  const ruled = change === "open" ? [] : [{ ...sample, conflictKey: tires.key, ...change }];
  const ground = { ...detail, rulings: ruled, openConflictKeys: change === "open" ? [tires.key] : [], ...more };
  return effectLines(tires, ground).map(({ letter, index, call }) => [letter, index, call]);
}

describe("what is told of each side", () => {
  test("while it is open, neither", () => {
    expect(told("open")).toEqual([
      ["A", "marked as in dispute", "no sentence: it is being checked"],
      ["B", "marked as in dispute", "no sentence: it is being checked"],
    ]);
  });
  test("where one side stands, that one; the other as overruled", () => {
    expect(told({ decision: "side-stands", side: 1 })).toEqual([
      ["A", "marked as not so: overruled", "no sentence: it was overruled"],
      ["B", "told, as standing after review", "told as a fact"],
    ]);
  });
  test("what was misheard, by its right words", () => {
    expect(told({ decision: "recogniser-error", side: 0, rightWords: "255 60 15s" })[0]).toEqual([
      "A",
      "marked as misheard; the captions say “255 60 15s”",
      "no sentence: it was misheard",
    ]);
  });
  test("both, where both hold", () => {
    expect(told({ decision: "both-hold", side: null }).map(([, index, call]) => [index, call])).toEqual([
      ["told, with your reason", "told as a fact"],
      ["told, with your reason", "told as a fact"],
    ]);
  });
  test("not while another conflict of the same claims is open, and not against the sheet", () => {
    const other = { ...tires, key: "other", topic: "rim size" };
    const both = { ...detail.analysis, conflicts: [...detail.analysis.conflicts, other] };
    expect(told({ decision: "side-stands", side: 1 }, { analysis: both, openConflictKeys: ["other"] })[1]).toEqual([
      "B",
      "marked as in dispute: rim size",
      "no sentence while “rim size” is open",
    ]);
    const denial = { ...detail.analysis.denials[0]!, sheetValue: "205/70R14", claims: [...(tires.sides[1]?.claims ?? [])] };
    const denied = { ...detail.analysis, denials: [denial] };
    expect(told({ decision: "side-stands", side: 1 }, { analysis: denied })[1]?.[2]).toBe("no sentence: the sheet says 205/70R14");
  });
  test("and what was only believed keeps its doubt", () => {
    const claims = detail.analysis.claims.map((claim) => ({ ...claim, stance: "hedged" as const }));
    expect(told({ decision: "side-stands", side: 1 }, { analysis: { ...detail.analysis, claims } })[1]).toEqual([
      "B",
      "told, as standing after review, and with its doubt",
      "no sentence: it was not said flat out",
    ]);
  });
});
