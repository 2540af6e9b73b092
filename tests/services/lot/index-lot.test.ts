import { randomUUID } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { basename, join } from "node:path";
import { expect, test } from "vitest";
import type { Input } from "../../../shared-types/index.ts";
import { importSample, sampleApplication } from "../../support/builders/sample-application.ts";
import { temporaryFolder } from "../../support/builders/temporary-folder.ts";
import { workedRecording } from "../bundles/bundle-ground.ts";

type Machine = ReturnType<typeof sampleApplication>;

const index = (machine: Machine, input: Partial<Input<"lot.index">> = {}) =>
  Promise.resolve(
    machine.handlers["lot.index"]({
      ticket: randomUUID(),
      recordingIds: null,
      formats: ["index-json", "chapters-list"],
      granularity: "zones",
      template: "Listing text",
      folder: null,
      overwrite: false,
      ...input,
    }),
  );

async function lot() {
  const machine = sampleApplication();
  const { summary } = await workedRecording(machine);
  const open = await importSample(machine, {
    folder: machine.folder,
    text: "[0:00] A second walk.\n[0:30] Around the rear.\n",
    stockNumber: "FK-2",
  });
  return { machine, ready: summary.id, open: open.id };
}

test("ready is what was analysed and has nothing open, and the others say why not", async () => {
  const { machine, ready, open } = await lot();
  const row = machine.parts.library.recordings.get(open)!;
  machine.parts.library.recordings.add({ ...row, id: "00000000-0000-4000-8000-000000000001", title: "Never analyzed" }, new Uint8Array());
  const list = await machine.handlers["lot.ready"]({});
  expect(Object.fromEntries(list.map((each) => [each.recordingId, each.why]))).toEqual({
    [ready]: "",
    [open]: "1 conflict is open",
    "00000000-0000-4000-8000-000000000001": "it is not analyzed yet",
  });
  // What else nobody has dealt with holds nothing up, and is counted.
  expect(Object.fromEntries(list.map((each) => [each.recordingId, each.openMatters]))).toMatchObject({ [ready]: 0, [open]: 1 });
});

test("every ready recording is written, the others are named, and a second time nothing is written over unasked", async () => {
  const { machine, ready, open } = await lot();
  const folder = temporaryFolder();
  const told: string[] = [];
  machine.parts.events.subscribe(({ name, payload }) => (name === "work.progress" ? told.push(JSON.stringify(payload)) : undefined));
  const done = await index(machine, { folder });
  expect(done).toMatchObject({ failed: [], cancelled: false, left: [{ recordingId: open, why: "1 conflict is open" }] });
  expect(done.written).toMatchObject([{ recordingId: ready, folder: join(folder, `fk-1971-kestrel-walk-round-${ready.slice(0, 8)}`) }]);
  expect(done.written[0]?.files.map((path) => basename(path)).toSorted()).toEqual([
    "fk-1971-kestrel-walk-round.chapters.txt",
    "fk-1971-kestrel-walk-round.condition-index.json",
    "fk-1971-kestrel-walk-round.listing-text.text.txt",
  ]);
  expect(readFileSync(done.written[0]?.files.find((path) => path.endsWith("listing-text.text.txt")) ?? "", "utf8")).toContain(
    "1971 Fallow Kestrel, stock FK-1971",
  );
  expect(told.length).toBeGreaterThan(0);
  expect(await index(machine, { folder })).toMatchObject({
    written: [],
    failed: [{ recordingId: ready, why: expect.stringMatching(/^Already in [\s\S]*listing-text\.text\.txt\nNothing was written/) }],
  });
  expect(await index(machine, { folder, overwrite: true })).toMatchObject({ written: [{ recordingId: ready }] });
});

test("PDFs are printed for each on the paper that was asked for, and a machine that cannot print says so of each", async () => {
  const papers: string[] = [];
  const machine = sampleApplication({
    pdf: {
      whyNot: () => null,
      print: async (page, paper) => {
        papers.push(`${paper} ${/<title>([^<]*)/.exec(page)?.[1]}`);
        return Buffer.from("%PDF-1.7\n");
      },
    },
  });
  const { summary } = await workedRecording(machine);
  const folder = temporaryFolder();
  const done = await index(machine, { folder, formats: ["index-pdf", "record-pdf", "chapters-list"], paper: "a4" });
  expect(done.failed).toEqual([]);
  expect(done.written[0]?.files.map((path) => basename(path).replace(/^[^.]*\./, ""))).toEqual([
    "condition-index.pdf",
    "review-record.pdf",
    "chapters.txt",
    "listing-text.text.txt",
  ]);
  expect(papers).toEqual([expect.stringMatching(/^a4 .*Kestrel walk round/), expect.stringMatching(/^a4 .*Kestrel walk round/)]);
  // What a reader of the files should know comes with them: the film is no film, so that its pictures are missing.
  expect(done.written[0]?.warnings.join(" ")).toMatch(/picture/);
  const without = await lot();
  const refused = await index(without.machine, { folder: temporaryFolder(), formats: ["index-pdf"] });
  expect(refused).toMatchObject({
    written: [],
    failed: [{ recordingId: without.ready, why: expect.stringContaining("cannot make PDFs") }],
  });
  expect(summary.id).not.toBe(without.ready);
});

test("one that is asked for goes out with its open conflicts told", async () => {
  const { machine, open } = await lot();
  const done = await index(machine, { recordingIds: [open], formats: [] });
  const [path] = done.written[0]?.files ?? [];
  expect(path).toContain(join(machine.folder, "exports"));
  expect(readFileSync(path ?? "", "utf8")).toContain("Rear tire size (0:30, 0:52)");
});

test("one that cannot be written is told with its reason, whole or not at all, and the rest goes on", async () => {
  const { machine, ready, open } = await lot();
  const folder = temporaryFolder();
  const blocked = join(folder, `fk-2-kestrel-walk-round-${open.slice(0, 8)}`);
  writeFileSync(blocked, "a file where the folder should be");
  const done = await index(machine, { folder, recordingIds: [ready, open] });
  expect(done.written.map(({ recordingId }) => recordingId)).toEqual([ready]);
  expect(done.failed).toMatchObject([{ recordingId: open, why: expect.stringContaining("could not be written") }]);
  expect(readFileSync(blocked, "utf8")).toBe("a file where the folder should be");
  // A file in the way keeps all of that recording's files out, the text too.
  const other = temporaryFolder();
  mkdirSync(join(other, basename(blocked)));
  writeFileSync(join(other, basename(blocked), "fk-2-kestrel-walk-round.chapters.txt"), "mine");
  expect(await index(machine, { folder: other, recordingIds: [open] })).toMatchObject({ failed: [{ recordingId: open }] });
  expect(readdirSync(join(other, basename(blocked)))).toEqual(["fk-2-kestrel-walk-round.chapters.txt"]);
});

test("cancelled, what is written stays whole and the rest is not begun", async () => {
  const { machine, ready, open } = await lot();
  const folder = temporaryFolder();
  const ticket = randomUUID();
  machine.parts.events.subscribe(({ name, payload }) => {
    if (name === "work.progress" && (payload as { done: number }).done === 1) void machine.handlers["work.cancel"]({ ticket });
  });
  const done = await index(machine, { ticket, folder, recordingIds: [ready, open] });
  expect(done.cancelled).toBe(true);
  expect(done.written).toHaveLength(1);
  expect(readdirSync(folder)).toHaveLength(1);
  // Cancelled before it came.
  const early = randomUUID();
  await machine.handlers["work.cancel"]({ ticket: early });
  const none = temporaryFolder();
  expect(await index(machine, { ticket: early, folder: none })).toMatchObject({ written: [], cancelled: true });
  expect(readdirSync(none)).toEqual([]);
});

test("templates are kept in the library, under their names, and none with a fault", async () => {
  const { machine, ready } = await lot();
  const { handlers } = machine;
  expect((await handlers["template.list"]({})).map(({ name }) => name)).toEqual(["Listing text"]);
  await handlers["template.keep"]({ template: { name: "Short", text: "{vehicle}: {counts}" } });
  await handlers["template.keep"]({ template: { name: "Short", text: "{vehicle}; {counts}" } });
  expect(await handlers["template.list"]({})).toMatchObject([{ name: "Listing text" }, { name: "Short", text: "{vehicle}; {counts}" }]);
  expect((await handlers["template.preview"]({ recordingId: ready, text: "{vehicle}; {counts}" })).text).toMatch(
    /^1971 Fallow Kestrel; \d+ chapters, \d findings/,
  );
  expect(await handlers["template.preview"]({ recordingId: ready, text: "x\n{nothing}" })).toMatchObject({
    text: null,
    faults: [{ line: 2, column: 1 }],
  });
  await expect(async () => handlers["template.keep"]({ template: { name: "Bad", text: "{nothing}" } })).rejects.toMatchObject({
    problem: { code: "template-fault", line: 1 },
  });
  const done = await index(machine, { template: "Short", formats: [] });
  expect(readFileSync(done.written[0]?.files[0] ?? "", "utf8")).toMatch(/^1971 Fallow Kestrel; /);
  await expect(async () => index(machine, { template: "Gone" })).rejects.toMatchObject({ problem: { code: "template-unknown" } });
  expect(existsSync(join(machine.folder, "exports", "gone"))).toBe(false);
  expect(await handlers["template.remove"]({ name: "Listing text" })).toMatchObject([{ name: "Short" }]);
});
