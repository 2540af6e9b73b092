import { describe, expect, test } from "vitest";
import { formOf, judgeColumns, type KnownChoices, noChoices } from "../../electron/services/stock-sheet/judge-columns.ts";
import { readTable } from "../../electron/services/stock-sheet/read-table.ts";
import type { SheetField } from "../../shared-types/index.ts";

const judged = (text: string, choices: KnownChoices = noChoices) => judgeColumns(readTable(Buffer.from(text), "lot.csv"), choices);

interface Row {
  readonly why: string;
  readonly text: string;
  readonly columns: readonly (readonly [name: string, standing: string, field: SheetField | null, suggestion?: SheetField])[];
}

/** No question: the names say it, the cells bear them out, or no walk speaks of it. */
const quiet: readonly Row[] = [
  {
    why: "known names, however written",
    text: "Stock No.,ODOMETER (mi),Ext_Color\nA1,61240,blue\n",
    columns: [
      ["Stock No.", "known", "stock-number"],
      ["ODOMETER (mi)", "known", "mileage"],
      ["Ext_Color", "known", "paint-color"],
    ],
  },
  {
    why: "a unit in the name",
    text: "Odometer (km),Keys,Year\n98600,2,1971\n",
    columns: [
      ["Odometer (km)", "known", "kilometers"],
      ["Keys", "known", "keys"],
      ["Year", "known", "year"],
    ],
  },
  {
    why: "columns that no walk speaks of",
    text: "Stock,Notes,Days in Stock\nA1,see file,33\n",
    columns: [
      ["Stock", "known", "stock-number"],
      ["Notes", "known", null],
      ["Days in Stock", "known", null],
    ],
  },
  {
    why: "two names of one field that say the same",
    text: "Stock,Price,Asking Price\nA1,32900,32900\nA2,5000,5000\n",
    columns: [
      ["Stock", "known", "stock-number"],
      ["Price", "known", "price"],
      ["Asking Price", "known", null],
    ],
  },
  {
    why: "one bad cell among good ones is that row's trouble",
    text: "Stock,Mileage,Keys\nA1,61240,2\nA2,6l240,2\nA3,12000,1\n",
    columns: [
      ["Stock", "known", "stock-number"],
      ["Mileage", "known", "mileage"],
      ["Keys", "known", "keys"],
    ],
  },
  {
    why: "cells that say that nothing is known",
    text: "Stock,Mileage,Keys\nA1,TMU,n/a\n",
    columns: [
      ["Stock", "known", "stock-number"],
      ["Mileage", "known", "mileage"],
      ["Keys", "known", "keys"],
    ],
  },
];

const asked: readonly Row[] = [
  {
    why: "nobody knows the name",
    text: "Stock,Tacho,Herkunft\nA1,61240,Import\n",
    columns: [
      ["Stock", "known", "stock-number"],
      ["Tacho", "unknown", null],
      ["Herkunft", "unknown", null],
    ],
  },
  {
    why: "a name near a known one",
    text: "Stock,Purchase Price,Mileage at intake\nA1,20000,61240\n",
    columns: [
      ["Stock", "known", "stock-number"],
      ["Purchase Price", "doubtful", null, "price"],
      ["Mileage at intake", "doubtful", null, "mileage"],
    ],
  },
  {
    why: "a known name over cells of another kind",
    text: "Stock,Year,Mileage\nA1,blue,52k\nA2,red,61.240\n",
    columns: [
      ["Stock", "known", "stock-number"],
      ["Year", "doubtful", null, "year"],
      ["Mileage", "doubtful", null, "mileage"],
    ],
  },
  {
    why: "two names of one field that say different things",
    text: "Stock,Price,Internet Price\nA1,32900,31900\n",
    columns: [
      ["Stock", "known", "stock-number"],
      ["Price", "doubtful", null, "price"],
      ["Internet Price", "doubtful", null, "price"],
    ],
  },
];

describe("columns that need no question", () => {
  test.for(quiet)("$why", ({ text, columns }) => {
    expect(judged(text).columns.map(({ name, standing, field }) => [name, standing, field])).toEqual(columns);
  });
});

describe("columns that are asked about are left out until then", () => {
  test.for(asked)("$why", ({ text, columns }) => {
    const found = judged(text).columns;
    expect(found.map(({ name, standing, field }) => [name, standing, field])).toEqual(columns.map((row) => row.slice(0, 3)));
    expect(found.map(({ suggestion }) => suggestion)).toEqual(columns.map(([, , , suggestion]) => suggestion ?? null));
    for (const { standing, why } of found) expect(why !== "").toBe(standing === "doubtful");
  });
});

describe("what a person chose", () => {
  const chosen = (form: string, choices: Record<string, SheetField | null>): KnownChoices => ({
    of: (asked) => new Map(asked === form ? Object.entries(choices) : []),
    latest: (name) => choices[name],
  });
  test("counts for every sheet of the same form, in whatever order its columns stand", () => {
    const choices = chosen("stock|tacho|year", { tacho: "kilometers", year: null });
    const { columns } = judged("YEAR,Tacho,Stock\n1971,98600,A1\n", choices);
    expect(columns.map(({ field, standing }) => [field, standing])).toEqual([
      [null, "chosen"],
      ["kilometers", "chosen"],
      ["stock-number", "known"],
    ]);
  });
  test("is asked again where most cells are of another kind", () => {
    const { columns } = judged("Stock,Tacho\nA1,61240\nA2,99000\n", chosen("stock|tacho", { tacho: "year" }));
    expect(columns[1]).toMatchObject({
      field: null,
      suggestion: "year",
      standing: "doubtful",
      why: expect.stringContaining("“61240” is no year"),
    });
  });
  test("is only suggested for a sheet of another form, which may mean something else by it", () => {
    const choices = chosen("stock|tacho", { tacho: "kilometers" });
    expect(judged("Tacho,Stock,Keys\n98600,A1,2\n", choices).columns[0]).toMatchObject({ standing: "doubtful", suggestion: "kilometers" });
  });
  test("comes before a known name that means the same", () => {
    const choices = chosen("odo|stock|tacho", { tacho: "mileage" });
    const { columns } = judged("Odo,Tacho,Stock\n61240,99999,A1\n", choices);
    expect(columns.map(({ field, standing }) => [field, standing]).slice(0, 2)).toEqual([
      [null, "doubtful"],
      ["mileage", "chosen"],
    ]);
  });
});

test("sample cells are different ones from the top, three at most, and the empty ones are passed over", () => {
  const { columns } = judged("Stock,Tacho\nA1,1\nA2,\nA3,1\nA4,2\nA5,n/a\nA6,3\nA7,4\n");
  expect(columns[1]?.samples).toEqual(["1", "2", "3"]);
});

test("a form is the same for the same names, and another for another name", () => {
  expect(formOf(["Stock #", " ODOMETER_(mi)", "Farbe"])).toBe("farbe|odometer mi|stock");
  expect(formOf(["Farbe", "Stock", "odometer mi"])).toBe("farbe|odometer mi|stock");
  expect(formOf(["Farbe", "Stock", "odometer km"])).not.toBe("farbe|odometer mi|stock");
  expect(formOf(["走行距離", ""])).toBe("走行距離");
});
