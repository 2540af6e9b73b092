import { stringify } from "csv-stringify/sync";
import fastCheck from "fast-check";
import { describe, expect, test } from "vitest";
import { readStockSheet, recordedOn } from "../../electron/services/read-stock-sheet.ts";

const read = (text: string) => readStockSheet(Buffer.from(text), "sheet.csv");

describe("a dealer's record", () => {
  test.for([
    { why: "a row of names over a row of values", text: "Stock Number,Mileage\nFK-1971,68000\n" },
    { why: "a row for each field", text: "Stock Number,FK-1971\nMileage,68000\nColour,\n" },
    { why: "a row for each field under a head", text: "Field,Value\nStock Number,FK-1971\nMileage,68000\n" },
    { why: "a head over one field alone would else be a row of names", text: "field,value\nstock number,FK-1971\nMILEAGE,68000\n" },
    { why: "semicolons, as spreadsheets in some countries write", text: "Stock Number;Mileage\nFK-1971;68000\n" },
    { why: "tabs", text: "Stock Number\tMileage\nFK-1971\t68000\n" },
    { why: "carriage returns, a byte order mark and quotes (RFC 4180)", text: '\ufeff"Stock Number","Mileage"\r\n"FK-1971","68000"\r\n' },
    { why: "underscores and stray spaces in names", text: " Stock_Number , Mileage \n FK-1971 , 68000 \n" },
    { why: "empty lines around", text: "\n\nStock Number,Mileage\n\nFK-1971,68000\n\n" },
  ])("$why", ({ text }) => {
    expect(read(text)).toEqual({ "stock number": "FK-1971", mileage: "68000" });
  });

  test("quoted separators, quotes and line ends stay in the value (RFC 4180)", () => {
    expect(read('notes,price\n"one, ""two""\nthree",100\n')).toEqual({ notes: 'one, "two"\nthree', price: "100" });
  });

  test("UTF-16 and Windows-1252, as spreadsheets still write", () => {
    expect(readStockSheet(Buffer.from("\ufeffcolour,price\nbrûlée,£5\n", "utf16le"), "s.csv")).toEqual({ colour: "brûlée", price: "£5" });
    expect(readStockSheet(Buffer.from("colour,price\nbrûlée,£5\n", "latin1"), "s.csv")).toEqual({ colour: "brûlée", price: "£5" });
  });

  test("whatever csv-stringify writes is read", () => {
    const name = fastCheck.stringMatching(/^[a-z][a-z ]{0,10}[a-z]$/).map((word) => word.replaceAll(/ +/g, " "));
    const value = fastCheck
      .string({ minLength: 1, maxLength: 20 })
      .map((text) => text.trim())
      .filter((text) => text !== "" && !text.includes("\0"));
    fastCheck.assert(
      fastCheck.property(fastCheck.dictionary(name, value, { minKeys: 3, maxKeys: 6, noNullPrototype: true }), (fields) => {
        const text = stringify([Object.keys(fields), Object.values(fields)], { quoted: true });
        expect(read(text)).toEqual(fields);
      }),
    );
  });

  test.for([
    { why: "empty", text: "", line: 1, says: "no field with a value" },
    { why: "names alone", text: "stock number,mileage,colour\n", line: 1, says: "only one row" },
    { why: "two vehicles", text: "stock number,mileage,colour\na,1,red\nb,2,blue\n", line: 3, says: "one vehicle" },
    { why: "more values than names", text: "stock number,mileage,colour\na,1,red,5\n", line: 2, says: "4 values stand under 3" },
    { why: "a field that says two things", text: "mileage,68000\ncolour,red\nmileage,86000\n", line: 3, says: "stands twice" },
    { why: "an open quote", text: 'stock number,mileage,colour\n"a,1,red\n', line: 3, says: "cannot be read" },
    { why: "no text", text: "PK\u0003\u0004\0\0", line: 1, says: "no text" },
  ])("$why is refused with file and line", ({ text, line, says }) => {
    let problem: unknown;
    try {
      read(text);
    } catch (failure) {
      problem = (failure as { problem?: unknown }).problem;
    }
    expect(problem).toMatchObject({
      code: "stock-sheet-unreadable",
      file: "sheet.csv",
      line: expect.any(Number),
      message: expect.stringContaining(says),
    });
    expect((problem as { line: number }).line).toBeLessThanOrEqual(line);
    expect((problem as { message: string }).message).toMatch(/^sheet\.csv, line \d+: /);
  });
});

test.for([
  [{ "recorded on": "2026-01-05" }, "2026-01-05"],
  [{ filmed: "2026-02-30" }, null],
  [{ "recorded on": "05/01/2026" }, null],
  [{ mileage: "2026-01-05" }, null],
  [null, null],
] as const)("the date of the recording in %j is %j", ([fields, date]) => {
  expect(recordedOn(fields)).toBe(date);
});
