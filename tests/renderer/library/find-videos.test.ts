import { createHash } from "node:crypto";
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { fingerprintOf } from "../../../electron/services/videos/fingerprint.ts";
import { type Client, ProblemError } from "../../../renderer/client/client.ts";
import type { FoundFile } from "../../../renderer/library/files/found-file.ts";
import { arrangeRecordings } from "../../../renderer/library/list/arrange-recordings.ts";
import { contentOfFile, findVideos } from "../../../renderer/library/videos/match-videos.ts";
import type { RecordingSummary, WantedVideo } from "../../../shared-types/index.ts";
import { sampleDetail } from "../../exports/sample-detail.ts";
import { temporaryFolder } from "../../support/builders/temporary-folder.ts";

const mebibyte = 2 ** 20;

test.for([0, 10, mebibyte, mebibyte + 7, 3 * mebibyte])("page and host know a film of %i bytes by the same", async (bytes) => {
  const content = Buffer.from(Array.from({ length: bytes }, (_, index) => (index * 7 + (index >> 12)) & 255));
  const path = join(temporaryFolder(), "walk.mp4");
  writeFileSync(path, content);
  expect(await contentOfFile(new File([Uint8Array.from(content)], "walk.mp4"))).toEqual(await fingerprintOf(path));
});

const watch = () => ({ signal: new AbortController().signal, onSent: () => {}, onFile: () => {} });
const file = (name: string, text: string): FoundFile => ({
  key: name,
  name,
  folder: "",
  bytes: text.length,
  source: new File([text], name),
});
const offered = (name: string, bytes: number): FoundFile => ({ key: name, name, folder: "", bytes, source: `id of ${name}` });
const sha = (text: string) => createHash("sha256").update(text).update(text).digest("hex");
const wanted = (recordingId: string, text: string | null): WantedVideo => ({
  recordingId,
  title: recordingId,
  stockNumber: "",
  videoName: "walk.mp4",
  known: text === null ? null : { bytes: text.length, fingerprint: sha(text) },
});

/** A host that takes what `same` says. */
function host(same: (input: { recordingId: string; video: string }) => boolean = () => true) {
  const sent: string[] = [];
  const taken: [string, string][] = [];
  const client = {
    offerFile: async ({ name }: File) => {
      sent.push(name);
      return { id: `received ${name}` };
    },
    call: async (name: string, input: { recordingId: string; video: string }) => {
      if (name !== "video.take") return {};
      if (!same(input)) throw new ProblemError({ code: "video-differs", message: "It is another." });
      taken.push([input.recordingId, input.video]);
      return {};
    },
  } as unknown as Client;
  return { client, sent, taken };
}

test("each recording gets its own film by content; only that one travels", async () => {
  const { client, sent, taken } = host();
  const files = [file("IMG 1.mp4", "second film"), file("walk.mp4", "other film!"), file("IMG 3.mp4", "first film"), file("x.mp4", "no")];
  const search = await findVideos(
    client,
    [wanted("one", "first film"), wanted("two", "second film"), wanted("three", "lost")],
    files,
    watch(),
  );
  expect(search.found.map(({ recordingId }) => recordingId)).toEqual(["one", "two"]);
  expect(taken).toEqual([
    ["one", "received IMG 3.mp4"],
    ["two", "received IMG 1.mp4"],
  ]);
  expect(sent).toEqual(["IMG 3.mp4", "IMG 1.mp4"]);
});

test("a single file is told what differs, and never travels", async () => {
  const { client, sent } = host();
  const longer = await findVideos(client, [wanted("one", "first film")], [file("new.mp4", "a longer film")], watch());
  expect(longer.refused[0]?.message).toBe("new.mp4 is not the video of this recording: it has 13 bytes, and walk.mp4 had 10 bytes.");
  const other = await findVideos(client, [wanted("one", "first film")], [file("new.mp4", "other film")], watch());
  expect(other.refused[0]?.message).toMatch(/it is as long \(10 bytes\), but begins or ends with other content/);
  const unknown = await findVideos(client, [wanted("one", null)], [file("new.mp4", "other film")], watch());
  expect(unknown.refused[0]?.message).toMatch(/nothing tells whether new\.mp4 is its video/);
  expect(sent).toEqual([]);
});

test("of files that the host offered, those of the right length are asked about until one is it", async () => {
  const { client, taken } = host(({ video }) => video === "id of c.mp4");
  const files = [offered("a.mp4", 10), offered("b.mp4", 11), offered("c.mp4", 10)];
  const search = await findVideos(client, [wanted("one", "first film")], files, watch());
  expect(search.found).toHaveLength(1);
  expect(search.refused.map((refused) => refused.file.name)).toEqual(["a.mp4"]);
  expect(taken).toEqual([["one", "id of c.mp4"]]);
});

function recording(title: string, stockNumber: string, counts: Partial<RecordingSummary["counts"]> = {}): RecordingSummary {
  const { summary } = sampleDetail();
  return { ...summary, title, stockNumber, counts: { ...summary.counts, openConflicts: 0, proposals: 0, proposedZones: 0, ...counts } };
}

test("recordings are found by every word, in any order of the list", () => {
  const all = [
    recording("Tarrow walk", "FK-10", { openConflicts: 1 }),
    recording("Kestrel walk", "FK-9", { proposals: 30 }),
    recording("Café racer", ""),
  ];
  const titles = (words: string, order: Parameters<typeof arrangeRecordings>[2]) =>
    arrangeRecordings(all, words, order).map(({ title }) => title);
  expect(titles("", "newest")).toEqual(["Tarrow walk", "Kestrel walk", "Café racer"]);
  expect(titles("", "stock-number")).toEqual(["Kestrel walk", "Tarrow walk", "Café racer"]);
  expect(titles("", "title")).toEqual(["Café racer", "Kestrel walk", "Tarrow walk"]);
  expect(titles("", "waiting")).toEqual(["Tarrow walk", "Kestrel walk", "Café racer"]);
  expect(titles("WALK fk9", "newest")).toEqual(["Kestrel walk"]);
  expect(titles("cafe", "newest")).toEqual(["Café racer"]);
  expect(titles("nothing", "newest")).toEqual([]);
});
