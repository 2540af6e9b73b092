import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { fingerprintOf, hashedEndBytes } from "../../../electron/services/videos/fingerprint.ts";
import { keepFingerprints } from "../../../electron/services/videos/keep-fingerprints.ts";
import { sampleTranscriptText } from "../../support/builders/sample-analysis.ts";
import { importSample, sampleApplication, sampleVehicle } from "../../support/builders/sample-application.ts";
import { temporaryFolder } from "../../support/builders/temporary-folder.ts";

const mebibyte = 2 ** 20;

/** An MP4's first box (ISO/IEC 14496-12), then bytes that differ by `seed`. */
function film(bytes: number, seed = 1): Buffer {
  const content = Buffer.alloc(bytes, seed);
  Buffer.from([0, 0, 0, 24]).copy(content);
  content.write("ftypisom", 4, "latin1");
  return content;
}

const sha256 = (...parts: Uint8Array[]) => createHash("sha256").update(Buffer.concat(parts)).digest("hex");

describe("what a video is known by", () => {
  test.for([
    { name: "empty", content: Buffer.alloc(0) },
    { name: "short", content: film(40) },
    { name: "exactly a mebibyte", content: film(mebibyte) },
    { name: "its two ends overlap", content: Buffer.concat([film(mebibyte), Buffer.alloc(100, 9)]) },
    { name: "long", content: Buffer.concat([film(2 * mebibyte), Buffer.alloc(mebibyte, 7)]) },
  ])("$name: its length, and its first and last mebibyte", async ({ content }) => {
    const path = join(temporaryFolder(), "walk.mp4");
    writeFileSync(path, content);
    expect(hashedEndBytes).toBe(mebibyte);
    expect(await fingerprintOf(path)).toEqual({
      bytes: content.length,
      fingerprint: sha256(content.subarray(0, mebibyte), content.subarray(Math.max(0, content.length - mebibyte))),
    });
  });
});

/** A recording with its video in a folder of the person's own. */
async function withVideo(content = film(5000)) {
  const application = sampleApplication();
  const { folder, handlers, parts } = application;
  const video = join(folder, "walk.mp4");
  writeFileSync(video, content);
  writeFileSync(join(folder, "walk.txt"), sampleTranscriptText);
  const { id } = await handlers["recording.import"]({
    transcript: parts.files.offerPath(join(folder, "walk.txt")).id,
    video: parts.files.offerPath(video).id,
    stockSheet: null,
    title: "Kestrel",
    stockNumber: "FK-1971",
    vehicle: sampleVehicle,
  });
  const offered = (name: string, bytes: Buffer) => {
    writeFileSync(join(folder, name), bytes);
    return parts.files.offerPath(join(folder, name)).id;
  };
  const take = (name: string, bytes: Buffer, replace = false) =>
    handlers["video.take"]({ recordingId: id, video: offered(name, bytes), replace });
  return { ...application, id, video, take };
}

describe("a video that is gone from where it was", () => {
  test("is wanted, with what it is known by, and taken wherever it lies and whatever it is called", async () => {
    const { id, folder, video, handlers, parts, mediaFile } = await withVideo();
    expect(await handlers["video.wanted"]({})).toEqual([]);
    mkdirSync(join(folder, "moved"));
    const moved = join(folder, "moved", "IMG 0042.mp4");
    renameSync(video, moved);
    const known = await fingerprintOf(moved);
    expect(await handlers["video.wanted"]({})).toEqual([
      { recordingId: id, title: "Kestrel", stockNumber: "FK-1971", videoName: "walk.mp4", known },
    ]);
    const summary = await handlers["video.take"]({ recordingId: id, video: parts.files.offerPath(moved).id, replace: false });
    expect(summary).toMatchObject({ hasVideo: true, videoFound: true });
    expect(mediaFile(id)?.path).toBe(moved);
    expect((await handlers["recording.get"]({ id })).videoFile).toBe("IMG 0042.mp4");
    expect(await handlers["video.wanted"]({})).toEqual([]);
  });

  test.for([
    ["another length", film(5001), /is not the video of this recording: it has 5,001 bytes, and walk\.mp4 had 5,000 bytes/],
    ["other content of the same length", film(5000, 2), /it is as long \(5,000 bytes\), but begins or ends with other content/],
  ] as const)("a file of the same name with %s is refused, and nothing changes", async ([, content, message]) => {
    const { id, video, take, handlers, mediaFile } = await withVideo();
    rmSync(video);
    await expect(take("walk.mp4", content)).rejects.toMatchObject({
      problem: { code: "video-differs", message: expect.stringMatching(message) },
    });
    rmSync(video);
    expect(mediaFile(id)?.path).toBe(video);
    expect(await handlers["video.wanted"]({})).toHaveLength(1);
  });

  test("another may take its place where that is meant, and is then what is known", async () => {
    const { id, video, take, parts, mediaFile, folder } = await withVideo();
    rmSync(video);
    await take("new cut.mp4", film(6000, 3), true);
    expect(mediaFile(id)?.path).toBe(join(folder, "new cut.mp4"));
    expect(parts.library.videoFingerprints.get(id)).toEqual(await fingerprintOf(join(folder, "new cut.mp4")));
    await expect(take("walk.mp4", film(5000))).rejects.toMatchObject({ problem: { code: "video-differs" } });
  });

  test("a file that is no video is refused whatever is meant", async () => {
    const { take } = await withVideo();
    await expect(take("walk.mp4", Buffer.from("words, not pictures"), true)).rejects.toMatchObject({ problem: { code: "video-broken" } });
    await expect(take("walk.avi", film(50), true)).rejects.toMatchObject({ problem: { code: "video-kind" } });
  });

  test("the library's own copy gives way to the one that is found", async () => {
    const { handlers, parts, folder } = sampleApplication();
    const received = (name: string, bytes: Buffer) =>
      parts.files.receive(name, new Blob([Uint8Array.from(bytes)]).stream() as ReadableStream<Uint8Array>, bytes.length);
    const transcript = await parts.files.receive("walk.txt", new Blob([sampleTranscriptText]).stream() as ReadableStream<Uint8Array>, null);
    const { id } = await handlers["recording.import"]({
      transcript: transcript.id,
      video: (await received("walk.mp4", film(700))).id,
      stockSheet: null,
      title: "Kestrel",
      stockNumber: "",
      vehicle: sampleVehicle,
    });
    await handlers["video.take"]({ recordingId: id, video: (await received("other.mp4", film(800))).id, replace: true });
    const kept = readdirSync(join(folder, "media"));
    expect(kept).toHaveLength(1);
    expect((await fingerprintOf(join(folder, "media", kept[0] ?? ""))).bytes).toBe(800);
    await handlers["recording.remove"]({ id });
    expect(readdirSync(join(folder, "media"))).toEqual([]);
  });

  test("a recording that came without one takes any", async () => {
    const application = sampleApplication();
    const { id } = await importSample(application, application);
    const path = join(application.folder, "late.mp4");
    writeFileSync(path, film(90));
    const input = { recordingId: id, video: application.parts.files.offerPath(path).id, replace: false };
    expect(await application.handlers["video.take"](input)).toMatchObject({ hasVideo: true, videoFound: true });
  });
});

describe("a recording from before contents were remembered", () => {
  /** The fingerprint goes, as if it had never been kept. */
  async function older() {
    const made = await withVideo();
    const { video: row } = made.parts.library.recordings.get(made.id) ?? {};
    if (!row) throw new Error("The recording has no video.");
    const { default: Database } = await import("better-sqlite3");
    const database = new Database(made.parts.library.file);
    database.exec("DELETE FROM video_fingerprints");
    database.close();
    return made;
  }

  test("is given what its video is known by as long as the file is there", async () => {
    const { id, video, parts } = await older();
    await keepFingerprints(parts, () => false);
    expect(parts.library.videoFingerprints.get(id)).toEqual(await fingerprintOf(video));
  });

  test("also when somebody plays it", async () => {
    const { id, video, parts, mediaFile } = await older();
    mediaFile(id);
    await expect.poll(() => parts.library.videoFingerprints.get(id)).toEqual(await fingerprintOf(video));
  });

  test("whose video has gone says that nothing tells, and takes one that a person knows", async () => {
    const { id, video, parts, take, handlers } = await older();
    rmSync(video);
    await keepFingerprints(parts, () => false);
    expect(await handlers["video.wanted"]({})).toMatchObject([{ recordingId: id, known: null }]);
    await expect(take("found.mp4", film(5000))).rejects.toMatchObject({ problem: { code: "video-unknown" } });
    expect(await take("found.mp4", film(5000), true)).toMatchObject({ videoFound: true });
    expect(existsSync(video)).toBe(false);
  });
});
