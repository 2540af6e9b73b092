import { describe, expect, test } from "vitest";
import { findingGradeWords, gradeOf, proposeFindings } from "../../electron/services/propose-findings.ts";
import { sampleClaim } from "../support/builders/sample-analysis.ts";

const condition = { component: "body", position: "driver", attribute: "condition", value: "good" } as const;
const none: ReadonlySet<string> = new Set();

describe("findings that the claims suggest", () => {
  test.for([
    { why: "a condition today", rest: condition, proposed: 1 },
    { why: "a condition of former times", rest: { ...condition, time: "former" } as const, proposed: 0 },
    { why: "a measure", rest: {}, proposed: 0 },
  ])("$why: $proposed", ({ rest, proposed }) => {
    expect(proposeFindings([sampleClaim("c1", 0, 1, "the door is good", rest)], none)).toHaveLength(proposed);
  });

  test("the same said twice in one breath is one, by the longer words", () => {
    const claims = [
      sampleClaim("c1", 0, 1, "fender is straight", condition),
      sampleClaim("c2", 0, 1, "fender is straight as a string", condition),
      sampleClaim("c10", 0, 1, "fender is straight as a string", condition),
    ];
    expect(proposeFindings(claims, none).map(({ claim, seen }) => [claim, seen])).toEqual([["c2", "fender is straight as a string"]]);
  });

  test.for([
    { why: "another part", rest: { ...condition, component: "glass" } as const },
    { why: "another side", rest: { ...condition, position: "passenger" } as const },
    { why: "another judgement", rest: { ...condition, value: "flawed" } as const },
    { why: "another time", rest: { ...condition, captions: [7] } },
  ])("$why in the same words stands by itself", ({ rest }) => {
    const claims = [sampleClaim("c1", 0, 1, "it is straight", condition), sampleClaim("c2", 0, 1, "it is straight as a string", rest)];
    expect(proposeFindings(claims, none)).toHaveLength(2);
  });

  test("no two proposals share a key, for accepting goes by it", () => {
    const claims = [
      sampleClaim("c1", 0, 1, "clean but for a chip", condition),
      sampleClaim("c2", 0, 1, "clean but for a chip", { ...condition, value: "flawed" }),
      sampleClaim("c3", 0, 2, "clean but for a chip", { ...condition, zone: "front" }),
    ];
    const keys = proposeFindings(claims, none).map(({ key }) => key);
    expect(keys.length).toBeGreaterThan(1);
    expect(new Set(keys).size).toBe(keys.length);
  });

  test("an accepted one is not proposed again, also after the claims have other ids", () => {
    const [proposal] = proposeFindings([sampleClaim("c1", 3, 40, "door is good", condition)], none);
    const accepted = new Set([proposal?.key as string]);
    expect(proposeFindings([sampleClaim("c77", 3, 40, "door is good", condition)], accepted)).toEqual([]);
  });

  test("what is seen is never longer than a finding takes", () => {
    const [proposal] = proposeFindings([sampleClaim("c1", 3, 40, "word ".repeat(100).trim(), condition)], none);
    expect(proposal?.seen).toHaveLength(300);
  });
});

describe("grades", () => {
  test.for(findingGradeWords.map(({ grade, example }) => ({ grade, example })))("$example: $grade", ({ grade, example }) => {
    expect(gradeOf({ quote: example, value: grade === "as-new" ? "good" : "flawed" })).toBe(grade);
  });

  test.for([
    { quote: "the paint is good", value: "good", grade: "good" },
    { quote: "no cracks and no tears", value: "good", grade: "good" },
    { quote: "a little wear on the bolster", value: "flawed", grade: "worn" },
    { quote: "it was perfect once and is rusted now", value: "flawed", grade: "worn" },
    { quote: "a hole in the floor", value: "flawed", grade: "damaged" },
  ] as const)("“$quote”, a $value condition: $grade", ({ quote, value, grade }) => {
    expect(gradeOf({ quote, value })).toBe(grade);
  });
});
