import { parse } from "csv-parse/sync";
import { expect, test } from "vitest";
import { buildExport } from "../../../electron/exports/build-export.ts";
import { hostileDetail, hostileTexts } from "../hostile-detail.ts";

const { text } = buildExport("index-csv", { detail: hostileDetail(), writtenAt: "2026-01-07T12:00:00.000Z" });
const rows: Record<string, string>[] = parse(text, { columns: true, bom: true });
const findings = rows.filter(({ kind }) => kind === "finding");

/** What a spreadsheet runs when a cell begins with it (OWASP, "CSV Injection": = + - @, tab, carriage return; full-width forms too). */
const runs = /^[=+\-@\t\r＝＋－＠]/;

test.for(hostileTexts.map((words, position) => ({ words, position })))(
  "the cell $words comes back as it was, and runs nowhere",
  ({ words, position }) => {
    const row = findings[position];
    // A cell that would run is defused by an apostrophe in front, which a spreadsheet does not show.
    expect(row?.text).toBe(runs.test(words) ? `'${words}` : words);
  },
);

test("every row has every column, and no cell runs", () => {
  expect(findings).toHaveLength(hostileTexts.length);
  const columns = Object.keys(rows[0]!);
  for (const row of rows) expect(Object.keys(row)).toEqual(columns);
  expect(rows.flatMap((row) => Object.values(row)).filter((cell) => runs.test(cell))).toEqual([]);
});

test("lines end as RFC 4180 says, and the file begins with the mark that spreadsheets look for", () => {
  expect(text.startsWith("\ufeffkind,")).toBe(true);
  expect(text.endsWith("\r\n")).toBe(true);
});
