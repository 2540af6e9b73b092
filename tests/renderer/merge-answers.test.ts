import { expect, test } from "vitest";
import { answerAll, settledChoices, unanswered } from "../../renderer/lot/merge-answers.ts";

const look = {
  groups: [
    { group: "description", takesBoth: false, differences: [] },
    { group: "zones", takesBoth: true, differences: [] },
  ],
} as const;
const groups = { groups: look.groups.map((each) => ({ ...each, differences: [] })) };

test("nothing is chosen before a person has", () => {
  expect(unanswered(groups, {})).toEqual(["description", "zones"]);
  expect(settledChoices(groups, {})).toEqual({});
});

test("one answer for all asks on where both cannot stand", () => {
  expect(unanswered(groups, answerAll(groups, "both"))).toEqual(["description"]);
  expect(unanswered(groups, answerAll(groups, "theirs"))).toEqual([]);
  expect(settledChoices(groups, answerAll(groups, "theirs"))).toEqual({ description: "theirs", zones: "theirs" });
});

test("an answer for a group that is alike is not sent", () => {
  expect(settledChoices(groups, { zones: "mine", rulings: "theirs" })).toEqual({ zones: "mine" });
});
