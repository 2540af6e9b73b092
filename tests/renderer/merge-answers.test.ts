import { expect, test } from "vitest";
import { answerAll, clashWords, settledChoices, unanswered } from "../../renderer/lot/merge-answers.ts";

const look = {
  groups: [
    { group: "description", takesBoth: false, differences: [], clashes: ["Title"] },
    { group: "zones", takesBoth: true, differences: [], clashes: [] },
  ],
} as const;
const groups = { groups: look.groups.map((each) => ({ ...each, differences: [], clashes: [...each.clashes] })) };

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

test("where both cannot stand, it is said what stays", () => {
  const group = { group: "zones", takesBoth: true, differences: [], clashes: ["0:30 to 1:30"] } as const;
  const told = { ...group, differences: [], clashes: [...group.clashes] };
  expect(clashWords(told, true)).toMatch(/^Both cannot stand for 0:30 to 1:30: what is here stays/);
  expect(clashWords({ ...told, takesBoth: false }, false)).toMatch(/choose one side/);
  expect(clashWords({ ...told, clashes: [] }, true)).toBeNull();
});
