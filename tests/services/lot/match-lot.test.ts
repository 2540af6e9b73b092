import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { lostFields } from "../../../shared-types/index.ts";
import { importSample, sampleApplication } from "../../support/builders/sample-application.ts";

type Machine = ReturnType<typeof sampleApplication>;

const lot = [
  "Stock #,Year,Odometer,Notes",
  "FK-1,1971,68000,runs",
  "fk 2,1975,not a number,",
  "FK3,1980,12000,",
  "FK-3,1980,12500,again",
  "FK-9,1990,1,no film",
  ",1991,2,no number",
].join("\n");

function offered(machine: Machine, text = lot, name = "lot.csv"): string {
  const path = join(machine.folder, name);
  writeFileSync(path, text);
  return machine.parts.files.offerPath(path).id;
}

async function walks(machine: Machine): Promise<Record<string, string>> {
  const ids: Record<string, string> = {};
  for (const stockNumber of ["FK-1", "FK-2", "FK-3", "FK-4", ""])
    ids[stockNumber] = (await importSample(machine, { folder: machine.folder, stockNumber, again: true })).id;
  return ids;
}

const match = (machine: Machine, stockSheet: string) => Promise.resolve(machine.handlers["lot.match"]({ stockSheet }));

test("every row and every recording is accounted for", async () => {
  const machine = sampleApplication();
  const ids = await walks(machine);
  const found = await match(machine, offered(machine));
  expect(found.rows).toBe(6);
  expect(found.matched).toEqual([
    { recordingId: ids["FK-1"], title: "Kestrel walk round", stockNumber: "FK-1", line: 2, standing: "first", changes: [] },
  ]);
  expect(found.unreadable).toEqual([
    {
      recordingId: ids["FK-2"],
      title: "Kestrel walk round",
      why: expect.stringMatching(/lot\.csv, line 3: column C “Odometer”: “not a number”/),
    },
  ]);
  expect(found.twice).toEqual([{ stockNumber: "FK3", lines: [4, 5] }]);
  expect(found.rowsLeft).toEqual([
    { line: 6, stockNumber: "FK-9", cells: "FK-9, 1990, 1, no film" },
    { line: 7, stockNumber: "", cells: "1991, 2, no number" },
  ]);
  expect(new Set(found.recordingsLeft.map(({ stockNumber, why }) => `${stockNumber}: ${why}`))).toEqual(
    new Set([
      "FK-3: Its number stands in more than one row.",
      "FK-4: No row has its number.",
      ": It has no stock number. Give it one under “Describe…”.",
    ]),
  );
});

test("a row is given to its recording, in the place of what was there, and claims are held against it anew", async () => {
  const machine = sampleApplication();
  const ids = await walks(machine);
  const id = ids["FK-1"] as string;
  const stockSheet = offered(machine);
  await match(machine, stockSheet);
  expect(await machine.handlers["lot.take"]({ stockSheet, recordingIds: [id] })).toEqual({ recordings: 1 });
  await machine.analyst.idle();
  const detail = await machine.handlers["recording.get"]({ id });
  expect(detail.stockSheet).toEqual({ "stock #": "FK-1", year: "1971", odometer: "68000", notes: "runs" });
  expect(detail.sheetMeanings).toEqual({ "stock #": "stock-number", year: "year", odometer: "mileage", notes: null });
  expect(machine.parts.library.proposals.outdated(7)).toEqual([]);
  // The same sheet again, and a newer one.
  expect((await match(machine, offered(machine))).matched).toMatchObject([{ standing: "same", changes: [] }]);
  expect(lostFields({ changes: [] })).toBe(0);
  const newer = await match(
    machine,
    offered(machine, lot.replace("68000,runs", "68100,").replace("Notes", "Keys").replace("68100,", "68100,2")),
  );
  expect(newer.matched).toMatchObject([
    {
      standing: "other",
      changes: [
        { field: "odometer", before: "68000", after: "68100" },
        { field: "notes", before: "runs", after: null },
        { field: "keys", before: null, after: "2" },
      ],
    },
  ]);
});

test("what a former sheet told and the new row does not is counted as lost", () => {
  const change = (before: string | null, after: string | null) => ({ field: "keys", before, after });
  expect(lostFields({ changes: [change("2", null), change(null, "2"), change("2", "3")] })).toBe(1);
});

test("what does not match is never taken, and then nothing is", async () => {
  const machine = sampleApplication();
  const ids = await walks(machine);
  const stockSheet = offered(machine);
  for (const number of ["FK-2", "FK-3", "FK-4"]) {
    const taking = async () => machine.handlers["lot.take"]({ stockSheet, recordingIds: [ids["FK-1"] as string, ids[number] as string] });
    await expect(taking()).rejects.toMatchObject({ problem: { code: "lot-unmatched" } });
  }
  expect((await machine.handlers["recording.get"]({ id: ids["FK-1"] as string })).stockSheet).toBeNull();
});

test("two recordings of one vehicle both get its row", async () => {
  const machine = sampleApplication();
  await importSample(machine, { folder: machine.folder, stockNumber: "FK-1" });
  await importSample(machine, { folder: machine.folder, stockNumber: "fk1", again: true });
  expect((await match(machine, offered(machine))).matched.map(({ line }) => line)).toEqual([2, 2]);
});

test("a sheet without stock numbers is refused with its file", async () => {
  const machine = sampleApplication();
  await expect(async () => match(machine, offered(machine, "Year,Odometer\n1971,1\n1972,2\n"))).rejects.toMatchObject({
    problem: { code: "stock-sheet-unreadable", message: expect.stringContaining("no column is known to hold stock numbers") },
  });
});

test("300 recordings against 1000 rows are matched in a moment", async () => {
  const machine = sampleApplication();
  const { library } = machine.parts;
  const { id } = await importSample(machine, { folder: machine.folder, stockNumber: "N-0" });
  const row = library.recordings.get(id)!;
  for (let number = 1; number < 300; number += 1)
    library.recordings.add(
      { ...row, id: `00000000-0000-4000-8000-${String(number).padStart(12, "0")}`, stockNumber: `N-${number}` },
      new Uint8Array(),
    );
  const rows = Array.from({ length: 1000 }, (_, number) => `N-${number},1971,${number}`);
  const found = await match(machine, offered(machine, ["Stock,Year,Odometer", ...rows].join("\n")));
  expect([found.matched.length, found.rowsLeft.length]).toEqual([300, 700]);
});
