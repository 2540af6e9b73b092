import { describe, expect, test } from "vitest";
import { faultOfAnswers, firstAnswers, isAsked, settledColumns } from "../../renderer/sheet/sheet-answers.ts";
import type { SheetColumn } from "../../shared-types/index.ts";

const column = (name: string, rest: Partial<SheetColumn>): SheetColumn => ({
  name,
  samples: ["1"],
  field: null,
  suggestion: null,
  standing: "known",
  why: "",
  ...rest,
});
const columns = [
  column("Stock", { field: "stock-number" }),
  column("Tacho", { standing: "unknown" }),
  column("Intake price", { standing: "doubtful", suggestion: "price" }),
  column("Keys", { field: "keys", standing: "chosen" }),
  column("Zone", { standing: "unknown", samples: [] }),
];

describe("what a person is asked about a sheet's columns", () => {
  test("is what nobody knows and what is in doubt, save empty columns", () => {
    expect(columns.filter(isAsked).map(({ name }) => name)).toEqual(["Tacho", "Intake price"]);
  });
  test("a doubt needs an answer; what nobody knows is left out; a suggestion is never taken unseen", () => {
    expect(firstAnswers(columns)).toEqual({
      Stock: "stock-number",
      Tacho: "leave-out",
      "Intake price": "open",
      Keys: "keys",
      Zone: "leave-out",
    });
    expect(faultOfAnswers(columns, firstAnswers(columns))).toBe("Choose what “Intake price” means, or leave it out.");
  });
  test("one field twice is a fault, leaving out twice is none", () => {
    const answers = { ...firstAnswers(columns), "Intake price": "leave-out" } as const;
    expect(faultOfAnswers(columns, answers)).toBeNull();
    expect(faultOfAnswers(columns, { ...answers, Tacho: "keys" })).toBe(
      "“Tacho” and “Keys” are both “Number of keys”. Leave one of them out.",
    );
  });
  test("what was asked and what was changed is remembered, and no more", () => {
    const answers = { ...firstAnswers(columns), "Intake price": "leave-out", Tacho: "kilometers", Keys: "leave-out" } as const;
    expect(settledColumns(columns, answers)).toEqual([
      { name: "Tacho", field: "kilometers" },
      { name: "Intake price", field: null },
      { name: "Keys", field: null },
    ]);
    expect(settledColumns([columns[0]!], firstAnswers(columns))).toEqual([]);
  });
});
