import { execFileSync } from "node:child_process";
import { readdirSync, readFileSync, rmSync } from "node:fs";
import { basename, join } from "node:path";
import { describe, expect, test } from "vitest";
import { missingTools } from "../../support/runner/find-tools.ts";
import {
  bundleOf,
  importSample,
  lookAt,
  sampleApplication,
  sampleVideo,
  takeBundle,
  temporaryFolder,
  workedRecording,
} from "./bundle-ground.ts";

describe("a recording that moves to another machine", () => {
  test("brings all of it along, and gives the same bytes there", async () => {
    const old = sampleApplication();
    const there = await workedRecording(old);
    const { id } = there.summary;
    const path = await bundleOf(old, id);

    const fresh = sampleApplication();
    expect(await lookAt(fresh, path)).toMatchObject({ state: "new", title: "Kestrel walk round", hasVideo: true, groups: [], adds: [] });
    expect(await takeBundle(fresh, path)).toEqual({ recordingId: id, title: "Kestrel walk round", outcome: "imported" });

    const here = await fresh.handlers["recording.get"]({ id });
    // There the video was a person's own file; here the library keeps the copy that came along.
    expect([there.summary.videoKept, here.summary.videoKept]).toEqual([false, true]);
    expect(here).toEqual({ ...there, summary: { ...there.summary, videoKept: true } });
    // What no screen shows, too: the words as they came, and the whole history, undone and dropped edits included.
    expect(fresh.parts.library.recordings.transcriptBytes(id)).toEqual(old.parts.library.recordings.transcriptBytes(id));
    expect(fresh.parts.library.captions.of(id)).toEqual(old.parts.library.captions.of(id));
    const history = fresh.parts.library.edits.history(id);
    expect(history).toEqual(old.parts.library.edits.history(id));
    expect(new Set(history.map(({ state }) => state))).toEqual(new Set(["done", "undone", "dropped"]));
    expect(here.rulings.filter(({ supersededBy }) => supersededBy !== null)).toHaveLength(1);
    expect(fresh.parts.library.stills.of(id)).toEqual(old.parts.library.stills.of(id));
    expect(fresh.parts.library.videoFingerprints.get(id)).toEqual(old.parts.library.videoFingerprints.get(id));
    const { video } = fresh.parts.library.recordings.get(id) ?? {};
    expect(readFileSync(join(fresh.folder, video?.path ?? ""))).toEqual(sampleVideo());

    const again = await bundleOf(fresh, id);
    expect(basename(again)).toBe(basename(path));
    expect(readFileSync(again).equals(readFileSync(path))).toBe(true);
  });

  test("undo goes on where it was left", async () => {
    const old = sampleApplication();
    const { summary } = await workedRecording(old);
    const path = await bundleOf(old, summary.id);
    const fresh = sampleApplication();
    await takeBundle(fresh, path);
    const recordingId = summary.id;
    const undone = (machine: typeof old) => machine.handlers["edit.undo"]({ recordingId, initials: "AB" });
    for (let step = 0; step < 20; step += 1) {
      const [here, there] = [await undone(fresh), await undone(old)];
      expect({ ...here, summary: null }).toEqual({ ...there, summary: null });
      if (here.undoLabel === null) return;
    }
    expect.unreachable("the history has an end");
  });

  test("leaves the video behind where that is asked, knows it by its content, and gives the same bytes again", async () => {
    const old = sampleApplication();
    const { summary } = await workedRecording(old);
    const path = await bundleOf(old, summary.id, { withVideo: false });
    const fresh = sampleApplication();
    await takeBundle(fresh, path);
    const { summary: here, videoFile } = await fresh.handlers["recording.get"]({ id: summary.id });
    expect([here.hasVideo, here.videoFound, videoFile]).toEqual([true, false, "Kestrel walk.MP4"]);
    expect(readFileSync(await bundleOf(fresh, summary.id, { withVideo: false })).equals(readFileSync(path))).toBe(true);
    // With its video the bundle fills in what is lacking, and nothing else.
    const whole = await bundleOf(old, summary.id);
    expect(await lookAt(fresh, whole)).toMatchObject({ state: "differs", groups: [], adds: ["its video, which is not here"] });
    expect(await takeBundle(fresh, whole)).toMatchObject({ outcome: "merged" });
    expect(readFileSync(await bundleOf(fresh, summary.id)).equals(readFileSync(whole))).toBe(true);
  });

  test("a recording without work, video or sheet moves as well", async () => {
    const old = sampleApplication();
    const { id } = await importSample(old, { folder: old.folder });
    const path = await bundleOf(old, id);
    const fresh = sampleApplication();
    await takeBundle(fresh, path);
    expect(await fresh.handlers["recording.get"]({ id })).toEqual(await old.handlers["recording.get"]({ id }));
    expect(readFileSync(await bundleOf(fresh, id)).equals(readFileSync(path))).toBe(true);
  });

  test("the same bundle twice is not two recordings", async () => {
    const old = sampleApplication();
    const { summary } = await workedRecording(old);
    const path = await bundleOf(old, summary.id);
    const fresh = sampleApplication();
    await takeBundle(fresh, path);
    expect(await lookAt(fresh, path)).toMatchObject({ state: "same", seen: true });
    expect(await takeBundle(fresh, path)).toMatchObject({ outcome: "unchanged" });
    expect(await fresh.handlers["recording.list"]({})).toHaveLength(1);
    expect(readdirSync(join(fresh.folder, "media"))).toHaveLength(1);
  });

  test("the same transcript from an import of its own is asked about", async () => {
    const old = sampleApplication();
    const { summary } = await workedRecording(old);
    const path = await bundleOf(old, summary.id);
    const other = sampleApplication();
    await importSample(other, { folder: other.folder });
    expect((await lookAt(other, path)).sameWords).toContain("as “Kestrel walk round” (stock FK-1971");
    await expect(takeBundle(other, path)).rejects.toMatchObject({ problem: { code: "transcript-known" } });
    expect(await takeBundle(other, path, { again: true })).toMatchObject({ outcome: "imported" });
    expect(await other.handlers["recording.list"]({})).toHaveLength(2);
  });

  test("a video that is gone is told, and nothing is written", async () => {
    const old = sampleApplication();
    const { summary } = await workedRecording(old);
    rmSync(join(old.folder, "Kestrel walk.MP4"));
    const folder = temporaryFolder();
    const kept = await old.handlers["bundle.keep"]({
      ticket: "00000000-0000-4000-8000-000000000001",
      recordingIds: [summary.id],
      withVideo: true,
      folder,
      overwrite: false,
    });
    expect(kept.failed).toMatchObject([{ code: "video-gone", why: expect.stringContaining("write the bundle without its video") }]);
    expect(readdirSync(folder)).toEqual([]);
  });

  const missing = missingTools("unzip");
  test.skipIf(missing !== null)("another program unpacks it and finds every entry whole", async () => {
    const old = sampleApplication();
    const { summary } = await workedRecording(old);
    const path = await bundleOf(old, summary.id);
    const folder = temporaryFolder();
    expect(execFileSync("unzip", ["-t", path], { encoding: "utf8" })).toContain("No errors detected");
    execFileSync("unzip", ["-q", path, "-d", folder]);
    expect(readFileSync(join(folder, "video.mp4"))).toEqual(sampleVideo());
    expect(readFileSync(join(folder, "transcript.bin"))).toEqual(readFileSync(join(old.folder, "kestrel.txt")));
    expect(JSON.parse(readFileSync(join(folder, "manifest.json"), "utf8"))).toMatchObject({ kind: "roundwalk-bundle", version: 2 });
  });
});
