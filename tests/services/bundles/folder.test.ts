import { randomUUID } from "node:crypto";
import { readdirSync, statSync, truncateSync, utimesSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import {
  dent,
  importSample,
  initials,
  type Machine,
  sampleApplication,
  takeBundle,
  temporaryFolder,
  workedRecording,
} from "./bundle-ground.ts";

const keep = (machine: Machine, folder: string | null, recordingIds: string[] | null = null, overwrite = false) =>
  Promise.resolve(machine.handlers["bundle.keep"]({ ticket: randomUUID(), recordingIds, withVideo: true, folder, overwrite }));
const lookAt = (machine: Machine, folder: string | null) =>
  Promise.resolve(machine.handlers["bundle.lookAtFolder"]({ ticket: randomUUID(), folder }));

/** One that is settled, and one with an open conflict. */
async function twoRecordings(machine: Machine) {
  const { summary } = await workedRecording(machine);
  const open = await importSample(machine, {
    folder: machine.folder,
    text: "[0:00] A second walk.\n[0:30] Around the rear.\n",
    stockNumber: "FK-2",
  });
  return { settled: summary.id, open: open.id };
}

test("all that is ready goes into the folder, and next time only what has changed", async () => {
  const machine = sampleApplication();
  const { settled, open } = await twoRecordings(machine);
  const folder = join(temporaryFolder(), "kept");
  const first = await keep(machine, folder);
  expect(first).toMatchObject({ folder, written: [{ recordingId: settled }], unchanged: [], failed: [], cancelled: false });
  expect(readdirSync(folder)).toEqual([first.written[0]?.fileName]);
  // The folder is remembered.
  expect(await machine.handlers["bundle.place"]({})).toEqual({ folder });
  const path = join(folder, first.written[0]?.fileName ?? "");
  utimesSync(path, new Date(2020, 1, 1), new Date(2020, 1, 1));
  expect(await keep(machine, null)).toMatchObject({ written: [], unchanged: [{ recordingId: settled }] });
  expect(statSync(path).mtime).toEqual(new Date(2020, 1, 1));
  await machine.handlers["finding.add"]({ recordingId: settled, ...dent, seen: "new since", initials });
  expect(await keep(machine, null)).toMatchObject({ written: [{ recordingId: settled }], unchanged: [] });
  expect(await keep(machine, null, [settled, open])).toMatchObject({
    written: [{ recordingId: open }],
    unchanged: [{ recordingId: settled }],
  });
});

test("two machines keep one folder: work of the other is brought in before it is written over", async () => {
  const [mine, theirs] = [sampleApplication(), sampleApplication()];
  const { settled: id } = await twoRecordings(theirs);
  const folder = temporaryFolder();
  await keep(theirs, folder);
  const [{ look } = { look: null }] = (await lookAt(mine, folder)).bundles;
  await mine.handlers["bundle.take"]({ ticket: randomUUID(), file: look?.file ?? "", choices: null, again: false, initials });
  await theirs.handlers["finding.add"]({ recordingId: id, ...dent, seen: "theirs since", initials: "TH" });
  await keep(theirs, folder);
  await mine.handlers["finding.add"]({ recordingId: id, ...dent, seen: "mine since", initials: "ME" });
  const refused = await keep(mine, folder, [id]);
  expect(refused).toMatchObject({ written: [], failed: [{ code: "bundle-unseen", why: expect.stringContaining("Bring it in first") }] });
  const [found] = (await lookAt(mine, folder)).bundles;
  expect(found?.look).toMatchObject({ state: "differs", seen: false });
  await mine.handlers["bundle.take"]({
    ticket: randomUUID(),
    file: found?.look?.file ?? "",
    choices: { findings: "both" },
    again: false,
    initials,
  });
  expect(await keep(mine, folder, [id])).toMatchObject({ written: [{ recordingId: id }], failed: [] });
  const [back] = (await lookAt(theirs, folder)).bundles;
  expect(back?.look?.groups.map(({ group, differences }) => [group, differences.map(({ theirs: words }) => words?.slice(0, 10))])).toEqual([
    ["findings", ["mine since"]],
  ]);
});

test("a bundle that nobody here has seen is written over only when that is asked", async () => {
  const machine = sampleApplication();
  const { settled } = await twoRecordings(machine);
  const folder = temporaryFolder();
  const { written } = await keep(machine, folder);
  const path = join(folder, written[0]?.fileName ?? "");
  truncateSync(path, 5000);
  expect(await keep(machine, folder)).toMatchObject({ failed: [{ code: "bundle-unseen" }] });
  expect(statSync(path).size).toBe(5000);
  expect(await keep(machine, folder, null, true)).toMatchObject({ written: [{ recordingId: settled }] });
});

test("a folder is looked at whole: what is broken is listed with its reason, other files are passed over", async () => {
  const machine = sampleApplication();
  await twoRecordings(machine);
  const folder = temporaryFolder();
  await keep(machine, folder);
  writeFileSync(join(folder, "half.roundwalk.zip"), "PK");
  writeFileSync(join(folder, "notes.txt"), "not a bundle");
  const fresh = sampleApplication();
  const { bundles } = await lookAt(fresh, folder);
  expect(bundles).toMatchObject([
    { look: { state: "new", title: "Kestrel walk round" }, problem: null },
    { fileName: "half.roundwalk.zip", look: null, problem: expect.stringContaining("cut short or no bundle") },
  ]);
});

test.each([
  ["a folder that is not there", join("/", "no", "such", "folder"), "folder-unusable", "there is no such folder"],
  ["a folder without its root", "bundles", "folder-relative", "no full path"],
])("%s is told", async (_, folder, code, says) => {
  const machine = sampleApplication();
  await expect(lookAt(machine, folder)).rejects.toMatchObject({ problem: { code, message: expect.stringContaining(says) } });
});

test("a bundle outside the folder is taken as well, and its title says what it is", async () => {
  const machine = sampleApplication();
  const { settled } = await twoRecordings(machine);
  const kept = await keep(machine, temporaryFolder(), [settled]);
  expect(kept.written[0]?.fileName).toMatch(/^fk-1971-kestrel-walk-round-[0-9a-f]{8}\.roundwalk\.zip$/);
  const fresh = sampleApplication();
  expect(await takeBundle(fresh, join(kept.folder, kept.written[0]?.fileName ?? ""))).toMatchObject({ title: "Kestrel walk round" });
});
