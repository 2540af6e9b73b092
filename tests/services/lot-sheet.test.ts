import { describe, expect, test } from "vitest";
import { readSheetRow, readStockSheet } from "../../electron/services/read-stock-sheet.ts";
import { noChoices } from "../../electron/services/stock-sheet/judge-columns.ts";

const lot = [
  "Stock Number,Year,Mileage,Keys,Color",
  "FK-1971,1971,68000,2,red",
  "FK-1972,1972,71308,1,blue",
  "fk 2000,1988,6l240,2,green",
  "0042,1990,12000,2,white",
  "TWICE,1991,1000,2,white",
  "twice,1992,2000,2,black",
  "LONG-1,1993,3000,2,one,two",
].join("\n");

function problemOf(text: string, stockNumber: string): { code: string; line: number; message: string } {
  try {
    readStockSheet(Buffer.from(text), "lot.csv", stockNumber);
  } catch (failure) {
    return (failure as { problem: { code: string; line: number; message: string } }).problem;
  }
  throw new Error("The sheet was taken.");
}

describe("a sheet of many vehicles gives the row with the stock number", () => {
  test.for([
    { stockNumber: "FK-1972", mileage: "71308" },
    { stockNumber: " fk1972 ", mileage: "71308" },
    { stockNumber: "0042", mileage: "12000" },
    // The very number comes before one that is only written likewise.
    { stockNumber: "TWICE", mileage: "1000" },
    { stockNumber: "twice", mileage: "2000" },
  ])("$stockNumber", ({ stockNumber, mileage }) => {
    expect(readStockSheet(Buffer.from(lot), "lot.csv", stockNumber)).toMatchObject({ mileage });
  });
});

describe("and says what is wrong, where, and what to do", () => {
  test.for([
    {
      why: "no number given",
      stockNumber: "",
      code: "stock-sheet-unreadable",
      line: 3,
      says: [/7 rows were found/, /Give its stock number/],
    },
    {
      why: "none has it",
      stockNumber: "XX-9",
      code: "stock-sheet-row",
      line: 1,
      says: [/none of the 7 rows/, /“XX-9” under “Stock Number”/, /“FK-1971”/, /Correct the number/, /Line 8 has more values/],
    },
    { why: "a leading zero is part of it", stockNumber: "42", code: "stock-sheet-row", line: 1, says: [/none of the 7 rows/] },
    {
      why: "two have it",
      stockNumber: "Twice",
      code: "stock-sheet-row",
      line: 7,
      says: [/2 rows have/, /lines 6, 7/, /Keep the right one/],
    },
    {
      why: "its cell cannot be read",
      stockNumber: "FK2000",
      code: "stock-sheet-unreadable",
      line: 4,
      says: [/column C “Mileage”: “6l240” is no distance/, /Write it as 61240/],
    },
    {
      why: "its row has too many values",
      stockNumber: "LONG-1",
      code: "stock-sheet-unreadable",
      line: 8,
      says: [/6 values stand under 5/, /“two” in column F/],
    },
  ])("$why", ({ stockNumber, code, line, says }) => {
    const problem = problemOf(lot, stockNumber);
    expect(problem).toMatchObject({ code, line, file: "lot.csv" });
    expect(problem.message.startsWith(`lot.csv, line ${line}: `)).toBe(true);
    for (const words of says) expect(problem.message).toMatch(words);
  });
  test("where no column holds stock numbers", () => {
    expect(problemOf("Ref,Mileage,Keys\nA,1000,2\nB,2000,2\n", "A")).toMatchObject({
      code: "stock-sheet-unreadable",
      message: expect.stringMatching(/no column is known to hold stock numbers.*Name it “Stock Number”, or choose it/),
    });
  });
  test("a bad cell in another vehicle's row keeps nobody from this one", () => {
    expect(readStockSheet(Buffer.from(lot), "lot.csv", "FK-1971")).toMatchObject({ mileage: "68000", color: "red" });
  });
  test("in a sheet of one vehicle a known name over a cell of another kind is left out, and kept as it came", () => {
    const { fields, meanings } = readSheetRow(Buffer.from("Field,Value\nStock Number,A\nYear,'71\n"), "s.csv", "", noChoices);
    expect([fields.year, meanings.year]).toEqual(["'71", null]);
  });
});
