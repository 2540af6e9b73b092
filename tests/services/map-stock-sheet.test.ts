import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import type { Analysis, SheetMeanings } from "../../shared-types/index.ts";
import { sampleAnalysis, sampleTranscriptText } from "../support/builders/sample-analysis.ts";
import { sampleApplication, sampleVehicle } from "../support/builders/sample-application.ts";

const lot = "Ref,Tacho,Keys\nFK-1,68000,2\nFK-2,71000,1\n";
const form = "keys|ref|tacho";

function ground(options: Parameters<typeof sampleApplication>[0] = {}) {
  const application = sampleApplication(options);
  const { folder, handlers, parts } = application;
  const offer = (name: string, text: string) => {
    writeFileSync(join(folder, name), text);
    return parts.files.offerPath(join(folder, name)).id;
  };
  const importWith = (sheet: string, stockNumber: string) =>
    handlers["recording.import"]({
      transcript: offer("walk.txt", sampleTranscriptText),
      video: null,
      stockSheet: offer("lot.csv", sheet),
      title: `Walk of ${stockNumber}`,
      stockNumber,
      vehicle: sampleVehicle,
      again: true,
    });
  const chooseRef = () => handlers["stockSheet.map"]({ form, columns: [{ name: "Ref", field: "stock-number" }] });
  return { ...application, offer, importWith, chooseRef };
}

describe("what a sheet's columns mean", () => {
  test("is asked once for each form, and remembered when the library is opened again", async () => {
    const first = ground();
    const look = () => first.handlers["stockSheet.look"]({ stockSheet: first.offer("look.csv", lot) });
    expect((await look()).columns.map(({ standing }) => standing)).toEqual(["unknown", "unknown", "known"]);
    expect(
      await first.handlers["stockSheet.map"]({
        form,
        columns: [
          { name: "Ref", field: "stock-number" },
          { name: "Tacho", field: "kilometers" },
        ],
      }),
    ).toEqual({ recordings: 0 });
    await first.close();
    const second = ground({ folder: first.folder });
    const seen = await second.handlers["stockSheet.look"]({ stockSheet: second.offer("turned.csv", "Keys,TACHO,ref\n2,68000,FK-1\n") });
    expect(seen.columns.map(({ name, standing, field }) => [name, standing, field])).toEqual([
      ["Keys", "known", "keys"],
      ["TACHO", "chosen", "kilometers"],
      ["ref", "chosen", "stock-number"],
    ]);
  });

  test("reaches the analysis with the row of the stock number, and the sheet stays as it came", async () => {
    const { handlers, importWith, chooseRef, parts } = ground();
    await chooseRef();
    const { id } = await importWith(lot, "fk2");
    expect(parts.library.recordings.get(id)).toMatchObject({
      stockSheet: { ref: "FK-2", tacho: "71000", keys: "1" },
      sheetForm: form,
      sheetMeanings: { ref: "stock-number", tacho: null, keys: "keys" },
    });
    expect((await handlers["recording.get"]({ id })).stockSheet).toEqual({ ref: "FK-2", tacho: "71000", keys: "1" });
  });

  test("chosen otherwise has every recording of that form read anew, and no other", async () => {
    const { handlers, importWith, chooseRef, parts, analyst } = ground();
    await chooseRef();
    const one = await importWith(lot, "FK-1");
    const other = await importWith("Stock,Tacho\nFK-2,71000\n", "FK-2");
    expect(await handlers["stockSheet.map"]({ form, columns: [{ name: "Tacho", field: "mileage" }] })).toEqual({ recordings: 1 });
    // Kept for reading until it is made anew, and made anew at the next start where this one ends first.
    expect(parts.library.proposals.outdated(7)).toEqual([one.id]);
    await analyst.idle();
    expect(parts.library.proposals.outdated(7)).toEqual([]);
    expect(parts.library.recordings.get(one.id)?.sheetMeanings).toEqual({ ref: "stock-number", tacho: "mileage", keys: "keys" });
    expect(parts.library.recordings.get(other.id)?.sheetMeanings).toEqual({ stock: "stock-number", tacho: null });
    // The same answer again changes nothing.
    expect(await handlers["stockSheet.map"]({ form, columns: [{ name: "Tacho", field: "mileage" }] })).toEqual({ recordings: 0 });
  });

  test("that changes while an analysis runs is not lost to it", async () => {
    let release = () => {};
    const waiting = new Promise<void>((done) => {
      release = done;
    });
    const { handlers, importWith, chooseRef, parts, analyst } = ground();
    await chooseRef();
    const { id } = await importWith(lot, "FK-1");
    const run = parts.analysis.run;
    const seen: (SheetMeanings | null | undefined)[] = [];
    Object.assign(parts.analysis, {
      run: async (work: Parameters<typeof run>[0]): Promise<Analysis> => {
        seen.push(work.sheetMeanings);
        if (seen.length === 1) await waiting;
        return sampleAnalysis();
      },
    });
    const old = handlers["recording.analyse"]({ id });
    await handlers["stockSheet.map"]({ form, columns: [{ name: "Tacho", field: "mileage" }] });
    release();
    await old;
    await analyst.idle();
    expect(seen.map((meanings) => meanings?.tacho)).toEqual([null, "mileage"]);
    expect(parts.library.proposals.outdated(7)).toEqual([]);
  });

  test.for([
    {
      why: "one field twice",
      columns: [
        { name: "Tacho", field: "mileage" },
        { name: "Keys", field: "mileage" },
      ],
      code: "sheet-field-twice",
    },
    { why: "a column that the sheet has not", columns: [{ name: "Nothing", field: "mileage" }], code: "sheet-column-unknown" },
  ] as const)("$why is refused, and nothing of it is remembered", async ({ columns, code }) => {
    const { handlers, parts } = ground();
    expect(() => handlers["stockSheet.map"]({ form, columns: [...columns] })).toThrow(
      expect.objectContaining({ problem: expect.objectContaining({ code }) }),
    );
    expect(parts.library.sheetChoices.of(form).size).toBe(0);
  });
});

describe("an import that the sheet keeps from going on writes nothing", () => {
  test.for([
    {
      why: "a cell that cannot be read",
      sheet: "Stock,Mileage,Keys\nFK-1,1,2\nFK-2,6l240,2\nFK-3,3,2\n",
      says: /lot\.csv, line 3: column B “Mileage”: “6l240”/,
    },
    { why: "no row", sheet: "Stock,Mileage\nFK-7,1\nFK-8,2\n", says: /none of the 2 rows has the stock number “FK-2”/ },
    { why: "two rows", sheet: "Stock,Mileage\nFK-2,1\nFK-2,2\n", says: /2 rows have the stock number “FK-2”/ },
  ])("$why", async ({ sheet, says }) => {
    const { handlers, importWith, parts } = ground();
    await expect(importWith(sheet, "FK-2")).rejects.toMatchObject({ problem: { file: "lot.csv", message: expect.stringMatching(says) } });
    expect(await handlers["recording.list"]({})).toEqual([]);
    expect(parts.library.sheetChoices.of("mileage|stock").size).toBe(0);
  });
});

test("a sheet that came in before forms were kept is read by its names until a person chooses", async () => {
  const { handlers, importWith, parts, analyst } = ground();
  const { id } = await importWith("Stock,Mileage,Tacho\nFK-1,68000,9\n", "FK-1");
  const row = parts.library.recordings.get(id)!;
  parts.library.recordings.remove(id);
  parts.library.recordings.add({ ...row, sheetForm: null, sheetMeanings: null }, Buffer.from(sampleTranscriptText));
  expect(parts.library.recordings.get(id)?.sheetMeanings).toBeNull();
  const columns = await handlers["stockSheet.columns"]({ id });
  expect(columns.columns.map(({ name, field }) => [name, field])).toEqual([
    ["stock", "stock-number"],
    ["mileage", "mileage"],
    ["tacho", null],
  ]);
  expect(await handlers["stockSheet.map"]({ form: columns.form, columns: [{ name: "tacho", field: "keys" }] })).toEqual({ recordings: 1 });
  await analyst.idle();
  expect(parts.library.recordings.get(id)?.sheetMeanings).toEqual({ stock: "stock-number", mileage: "mileage", tacho: "keys" });
});
