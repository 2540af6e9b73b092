import { existsSync, mkdtempSync, readdirSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import { writeBundle } from "../../../electron/services/bundles/write-bundle.ts";
import { openApplication } from "../../../electron/services/open-application.ts";
import { sampleAnalysisRunner } from "../../support/builders/sample-analysis.ts";
import {
  bundleOf,
  importSample,
  initials,
  lookAt,
  type Machine,
  sampleApplication,
  takeBundle,
  temporaryFolder,
  workedRecording,
} from "./bundle-ground.ts";
import { entriesOf, type ForgedEntry, forged, renamedEverywhere, resealed, withSeals, zipped } from "./forge.ts";

let whole: Buffer;
let entries: ForgedEntry[];
let recordingId: string;

beforeAll(async () => {
  const folder = mkdtempSync(join(tmpdir(), "roundwalk-test-"));
  const application = openApplication({
    host: { name: "browser", version: "0.0.0", reveal: null },
    libraryFile: join(folder, "library.sqlite"),
    log: () => {},
    analysis: sampleAnalysisRunner(),
  });
  const { summary } = await workedRecording({ ...application, folder, logged: [] });
  recordingId = summary.id;
  const path = await bundleOf({ ...application, folder, logged: [] }, recordingId, { folder: join(folder, "out") });
  whole = readFileSync(path);
  entries = await entriesOf(path);
  await application.close();
});

const text = (name: string): string => entries.find((entry) => entry.name === name)?.content.toString("utf8") ?? "";
const json = (name: string, change: (value: never) => unknown) => async () =>
  zipped(resealed(entries, name, (content) => JSON.stringify(change(JSON.parse(content) as never))));
const without = (name: string) => entries.filter((entry) => entry.name !== name);

interface Work {
  zoneSpans: { id: string; start: number; end: number }[];
  findings: { id: string; start: number; end: number }[];
  rulings: { supersededBy: string | null }[];
  captionCorrections: { caption: number }[];
  edits: { changes: { table: string; id: string }[] }[];
}

/** What is done to a good bundle, and the words by which it is refused. */
const tampered: readonly [what: string, make: () => Promise<Buffer>, says: RegExp][] = [
  ["an empty file", async () => Buffer.alloc(0), /cut short or no bundle/],
  ["a text", async () => Buffer.from("Stock Number,Mileage\n1,2\n"), /cut short or no bundle/],
  ["a file cut in the middle", async () => whole.subarray(0, whole.length / 2), /cut short or no bundle/],
  ["a file cut by its last bytes", async () => whole.subarray(0, whole.length - 7), /cut short or no bundle/],
  ["a path upwards", async () => renamedEverywhere(whole, "stills.json", "../../x.jsn"), /cannot be brought in: .*(relative|\.\.)/],
  ["a path from the root", async () => renamedEverywhere(whole, "stills.json", "/etc/x.json"), /cannot be brought in: .*absolute/],
  ["a path with backslashes", async () => renamedEverywhere(whole, "stills.json", "..\\x\\a.json"), /cannot be brought in/],
  [
    "a file that no bundle has",
    async () => zipped(withSeals([...entries, { name: "run.sh", content: Buffer.from("rm") }])),
    /“run.sh”, which no bundle has/,
  ],
  ["a second video", async () => zipped(withSeals([...entries, { name: "video.mkv", content: Buffer.from("x") }])), /more than one video/],
  ["an entry twice", async () => zipped([...entries, { name: "work.json", content: Buffer.from("{}") }]), /work\.json stands in it twice/],
  ["an entry that is missing", async () => zipped(without("captions.json")), /captions\.json is missing/],
  ["an entry that its manifest leaves out too", async () => zipped(withSeals(without("captions.json"))), /captions\.json is missing/],
  ["no manifest", async () => zipped(without("manifest.json")), /begins with recording\.json instead of manifest\.json/],
  [
    "an entry too many",
    async () => zipped([...entries, { name: "stills/0000000001.png", content: Buffer.from("x") }]),
    /its manifest does not name/,
  ],
  ["a manifest that is no JSON", async () => zipped(resealed(entries, "manifest.json", () => "{")), /manifest is no JSON/],
  ["another program's manifest", async () => zipped(resealed(entries, "manifest.json", () => `{"kind":"other"}`)), /no bundle's/],
  [
    "a manifest with a hash of nothing",
    async () => zipped(resealed(entries, "manifest.json", (m) => m.replace(/"sha256": "[0-9a-f]{64}"/, '"sha256": ""'))),
    /manifest is not as it should be/,
  ],
  [
    "a caption changed by one letter",
    async () =>
      zipped(
        entries.map((entry) =>
          entry.name === "captions.json" ? { ...entry, content: Buffer.from(text("captions.json").replace("Morning", "Mornimg")) } : entry,
        ),
      ),
    /captions\.json is not what was written \(its SHA-256 differs\)/,
  ],
  ["work that is no JSON", async () => zipped(resealed(entries, "work.json", () => "{]")), /work\.json is no JSON/],
  ["a field that nobody knows", json("recording.json", (r: object) => ({ ...r, extra: 1 })), /recording\.json is not as it should be/],
  [
    "a zone that nobody knows",
    json("work.json", (w: Work) => ({ ...w, zoneSpans: w.zoneSpans.map((s) => ({ ...s, zone: "moon" })) })),
    /zoneSpans\.0\.zone/,
  ],
  [
    "a length that is no number",
    async () => zipped(resealed(entries, "recording.json", (r) => r.replace(/"duration": [\d.]+/, '"duration": 1e999'))),
    /duration/,
  ],
  [
    "another recording's manifest",
    async () =>
      zipped(
        resealed(entries, "manifest.json", (m) =>
          m.replace(/"recordingId": "[^"]+"/, '"recordingId": "00000000-0000-4000-8000-000000000009"'),
        ),
      ),
    /names another recording/,
  ],
  ["captions out of order", json("captions.json", (c: unknown[]) => c.toReversed()), /not counted from first to last/],
  [
    "zone spans over each other",
    json("work.json", (w: Work) => ({
      ...w,
      zoneSpans: [...w.zoneSpans, ...w.zoneSpans.map((s) => ({ ...s, id: "00000000-0000-4000-8000-000000000001" }))],
    })),
    /run over each other/,
  ],
  ["a finding twice", json("work.json", (w: Work) => ({ ...w, findings: [...w.findings, ...w.findings] })), /findings stands in it twice/],
  [
    "a finding that ends before it starts",
    json("work.json", (w: Work) => ({ ...w, findings: w.findings.map((f) => ({ ...f, start: 9, end: 3 })) })),
    /ends before it starts/,
  ],
  [
    "two standing rulings on one conflict",
    json("work.json", (w: Work) => ({ ...w, rulings: w.rulings.map((r) => ({ ...r, supersededBy: null })) })),
    /standing rulings stands in it twice/,
  ],
  [
    "a correction of a caption that is not there",
    json("work.json", (w: Work) => ({ ...w, captionCorrections: w.captionCorrections.map((c) => ({ ...c, caption: 999 })) })),
    /a caption that it does not have/,
  ],
  [
    "an edit of a table that is no one's work",
    json("work.json", (w: Work) => ({
      ...w,
      edits: w.edits.map((e) => ({ ...e, changes: [{ table: "settings", id: "x", before: null, after: null }] })),
    })),
    /work\.json is not as it should be/,
  ],
  [
    "an edit of another recording",
    json("work.json", (w: Work) => ({
      ...w,
      edits: [{ ...w.edits[0], changes: [{ table: "recordings", id: "x", before: null, after: null }] }],
    })),
    /edits is of another recording/,
  ],
  ["stills that the list does not name", json("stills.json", () => []), /stills and their list do not match/],
  [
    "a script as the video",
    async () =>
      zipped(
        withSeals(entries.map((entry) => (entry.name === "video.mp4" ? { ...entry, content: Buffer.from("#!/bin/sh\necho\n") } : entry))),
      ),
    /does not begin as/,
  ],
  [
    "a video that was changed on the way",
    async () => {
      const at = whole.indexOf("ftypisom") + 1000;
      const changed = Buffer.from(whole);
      changed[at] = (changed[at] ?? 0) ^ 1;
      return changed;
    },
    /video\.mp4 is not what was written/,
  ],
  [
    "a video of another kind than the recording says",
    json("recording.json", (r: { video: object }) => ({ ...r, video: { ...r.video, mediaType: "video/webm" } })),
    /of another kind/,
  ],
  [
    "a great nothing, packed small",
    async () =>
      zipped(
        withSeals([
          ...without("transcript.bin").slice(0, 2),
          { name: "transcript.bin", content: Buffer.alloc(100 * 2 ** 20), compress: true },
          ...without("transcript.bin")
            .slice(2)
            .filter(({ name }) => name !== "video.mp4"),
        ]),
      ),
    /would unpack to \d+ bytes, \d+ times its own size/,
  ],
];

/** Nothing of a refused bundle may stay: no row, no file, no setting. */
async function expectUntouched(machine: Machine, before: readonly unknown[]): Promise<void> {
  expect(await machine.handlers["recording.list"]({})).toEqual(before);
  const media = join(machine.folder, "media");
  expect(existsSync(media) ? readdirSync(media) : []).toEqual([]);
  expect(machine.parts.library.settings.get("bundlesSeen")).toBeUndefined();
  expect(machine.parts.library.integrity()).toBe("ok");
}

describe("a bundle that is not as it was written is refused whole", () => {
  test.for(tampered)("%s", async ([, make, says]) => {
    const machine = sampleApplication();
    await importSample(machine, { folder: machine.folder, text: "[0:00] Another walk.\n" });
    const before = await machine.handlers["recording.list"]({});
    const path = forged(await make());
    await expect(takeBundle(machine, path)).rejects.toMatchObject({
      problem: { code: expect.stringMatching(/^bundle-broken$|^video-/), message: expect.stringMatching(says) },
    });
    await expectUntouched(machine, before);
  });

  test("the untampered one is taken, so that it was the tampering", async () => {
    const machine = sampleApplication();
    expect(await takeBundle(machine, forged(await zipped(withSeals(entries))))).toMatchObject({ outcome: "imported" });
    // And one that another program packed anew.
    const other = sampleApplication();
    expect(await takeBundle(other, forged(await zipped(entries.map((entry) => ({ ...entry, compress: true })))))).toMatchObject({
      outcome: "imported",
    });
  });

  test("a newer program's is refused with what to do", async () => {
    const machine = sampleApplication();
    const path = forged(
      await zipped(
        resealed(entries, "manifest.json", (m) => m.replace('"version": 2', '"version": 3').replace('"entries"', '"later": 1, "entries"')),
      ),
    );
    await expect(takeBundle(machine, path)).rejects.toMatchObject({
      problem: { code: "bundle-newer", message: expect.stringContaining("Update the program") },
    });
    await expectUntouched(machine, []);
  });

  test("ids of another recording's work do not reach into it", async () => {
    const machine = sampleApplication();
    const { id } = await importSample(machine, { folder: machine.folder, text: "[0:00] Another walk.\n[0:20] Here at the rear.\n" });
    const detail = await machine.handlers["zone.paint"]({ recordingId: id, start: 2, end: 12, zone: "rear", title: null, initials });
    const [span] = machine.parts.library.zoneSpans.of(id);
    const steal = json("work.json", (w: Work) => ({ ...w, zoneSpans: [{ ...w.zoneSpans[0], id: span?.id }] }));
    await expect(takeBundle(machine, forged(await steal()))).rejects.toMatchObject({
      problem: { message: expect.stringContaining("belongs to another recording") },
    });
    const stealLater = json("work.json", (w: Work) => ({
      ...w,
      edits: [{ ...w.edits[0], changes: [{ table: "zone_spans", id: span?.id, before: null, after: null }] }],
    }));
    await expect(takeBundle(machine, forged(await stealLater()))).rejects.toMatchObject({
      problem: { message: expect.stringContaining("reaches into another recording") },
    });
    expect(await machine.handlers["recording.get"]({ id })).toEqual(detail);
  });

  test("the id of a recording with another transcript is not merged into it", async () => {
    const machine = sampleApplication();
    await takeBundle(machine, forged(whole));
    const before = await machine.handlers["recording.get"]({ id: recordingId });
    const path = forged(await zipped(resealed(entries, "transcript.bin", (words) => words.replace("perfect", "cracked"))));
    await expect(lookAt(machine, path)).rejects.toMatchObject({
      problem: { message: expect.stringContaining("whose transcript is another one") },
    });
    expect(await machine.handlers["recording.get"]({ id: recordingId })).toEqual(before);
  });

  test("cancelled while the video is unpacked, nothing stays", async () => {
    const machine = sampleApplication();
    const ticket = "00000000-0000-4000-8000-00000000000c";
    const { id } = machine.parts.files.offerPath(forged(whole));
    machine.parts.events.subscribe(({ name }) => {
      if (name === "work.progress") void machine.handlers["work.cancel"]({ ticket });
    });
    await expect(machine.handlers["bundle.take"]({ ticket, file: id, choices: null, again: false, initials })).rejects.toMatchObject({
      problem: { code: "cancelled" },
    });
    await expectUntouched(machine, []);
  });

  test("cancelled while it is written, no part of a file stays", async () => {
    const machine = sampleApplication();
    await takeBundle(machine, forged(whole));
    const folder = temporaryFolder();
    for (const share of [0.1, 0.9]) {
      const abort = new AbortController();
      const writing = writeBundle(machine.parts.library, recordingId, join(folder, "walk.roundwalk.zip"), true, {
        signal: abort.signal,
        onBytes: (done, of) => (done > share * of ? abort.abort() : undefined),
      });
      await expect(writing).rejects.toMatchObject({ problem: { code: "cancelled" } });
      expect(readdirSync(folder)).toEqual([]);
    }
  });
});
