import { expect, test } from "vitest";
import { plainConflict, plainTopic } from "../../shared-types/index.ts";

test.for([
  ["mileage being actual", "actual mileage"],
  ["engine being the original one", "original engine"],
  ["front seats being original", "original front seats"],
  ["engine year against its being original", "engine year against its originality"],
  ["rear tire size", "rear tire size"],
  ["human being", "human being"],
] as const)("“%s” is shown as “%s”", ([topic, words]) => {
  expect(plainTopic(topic)).toBe(words);
});

test("a conflict's sentence says its topic in the same words, and its key stays", () => {
  const conflict = {
    key: "hedge:mileage-being-actual:1",
    topic: "mileage being actual",
    why: "Mileage being actual: 1 mi is stated flatly.",
  };
  expect(plainConflict(conflict)).toEqual({ ...conflict, topic: "actual mileage", why: "Actual mileage: 1 mi is stated flatly." });
});
