import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { copyFileSync, existsSync, mkdirSync, readdirSync, readFileSync, rmSync, utimesSync, writeFileSync } from "node:fs";
import { dirname, extname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { exportFolderOf } from "../../electron/services/export-recording.ts";
import { copyAbility, copyWithChapters } from "../../electron/services/video-copies/copy-with-chapters.ts";
import { findFfmpeg } from "../../electron/services/video-copies/ffmpeg.ts";
import { createAddressServer } from "../../electron/transport/serve-addresses.ts";
import { sampleTranscriptText } from "../support/builders/sample-analysis.ts";
import { sampleApplication, sampleVehicle } from "../support/builders/sample-application.ts";
import { temporaryFolder } from "../support/builders/temporary-folder.ts";
import { missingTools } from "../support/runner/find-tools.ts";

const media = fileURLToPath(new URL("../../fixtures/media/", import.meta.url));
const missing = missingTools("ffmpeg", "ffprobe");
const plenty = async () => 1e12;
const quiet = () => {};

async function recordingOf(video: string) {
  const folder = temporaryFolder();
  const application = sampleApplication({ folder });
  const { handlers, parts } = application;
  const source = join(folder, `walk${extname(video)}`);
  copyFileSync(join(media, video), source);
  writeFileSync(join(folder, "walk.txt"), sampleTranscriptText);
  const { id: recordingId } = await handlers["recording.import"]({
    transcript: parts.files.offerPath(join(folder, "walk.txt")).id,
    video: parts.files.offerPath(source).id,
    stockSheet: null,
    title: "Kestrel",
    stockNumber: "FK-1971",
    vehicle: sampleVehicle,
  });
  return { ...application, recordingId, source };
}

function probe(file: string) {
  const text = execFileSync("ffprobe", ["-v", "error", "-show_chapters", "-show_streams", "-of", "json", file], { encoding: "utf8" });
  return JSON.parse(text) as {
    chapters: { start_time: string; tags?: { title?: string } }[];
    streams: { codec_type: string; codec_name: string }[];
  };
}

/** FFmpeg's own hash of a stream's packets, untouched by the container around them. */
function packetHash(file: string, stream: "v" | "a"): string {
  return execFileSync("ffmpeg", ["-v", "error", "-i", file, "-map", `0:${stream}:0`, "-c", "copy", "-f", "md5", "-"], { encoding: "utf8" });
}

const fileHash = (file: string) => createHash("sha256").update(readFileSync(file)).digest("hex");

describe.skipIf(missing)(`copies with chapters${missing ? ` (skipped: ${missing})` : ""}`, () => {
  test.for(["clip.mp4", "clip.mkv", "clip.webm", "clip.mov"])(
    "%s: ffprobe reads the chapters, and the streams are the original's",
    async (video) => {
      const { parts, recordingId, source } = await recordingOf(video);
      const before = fileHash(source);
      const { path, bytes, downloadUrl } = await copyWithChapters(
        parts,
        { recordingId, granularity: "zones", captions: false, overwrite: false },
        { signal: new AbortController().signal, tell: quiet },
      );
      expect(bytes).toBeGreaterThan(0);
      expect(downloadUrl).toBe(`/exports/${recordingId}/video-copy`);
      const { chapters } = probe(path);
      expect(chapters.length).toBeGreaterThanOrEqual(3);
      expect(Number(chapters[0]?.start_time)).toBe(0);
      expect(chapters.some(({ tags }) => tags?.title?.includes("open conflict"))).toBe(true);
      expect(packetHash(path, "v")).toBe(packetHash(source, "v"));
      expect(packetHash(path, "a")).toBe(packetHash(source, "a"));
      expect(fileHash(source)).toBe(before);
      expect(readdirSync(exportFolderOf(parts, recordingId)).filter((name) => name.endsWith(".part"))).toEqual([]);
    },
  );

  test.for(["clip.mp4", "clip.mkv", "clip.webm"])("%s: the corrected captions go in as a track", async (video) => {
    const { parts, recordingId } = await recordingOf(video);
    const { path } = await copyWithChapters(
      parts,
      { recordingId, granularity: "everything", captions: true, overwrite: false },
      { signal: new AbortController().signal, tell: quiet },
    );
    const { streams, chapters } = probe(path);
    expect(streams.filter(({ codec_type }) => codec_type === "subtitle")).toHaveLength(1);
    expect(chapters.length).toBeGreaterThan(3);
    const text = execFileSync("ffmpeg", ["-v", "error", "-i", path, "-map", "0:s:0", "-f", "webvtt", "-"], { encoding: "utf8" });
    expect(text).toMatch(/^WEBVTT/);
    expect(text.toLowerCase()).toContain("235/60r15");
  });

  test("a copy that is there is kept unless overwriting was asked for", async () => {
    const { parts, recordingId } = await recordingOf("clip.mp4");
    const asked = { recordingId, granularity: "zones", captions: false } as const;
    const options = { signal: new AbortController().signal, tell: quiet };
    await copyWithChapters(parts, { ...asked, overwrite: false }, options);
    await expect(copyWithChapters(parts, { ...asked, overwrite: false }, options)).rejects.toMatchObject({
      problem: { code: "file-exists" },
    });
    expect((await copyWithChapters(parts, { ...asked, overwrite: true }, options)).bytes).toBeGreaterThan(0);
  });

  test("a cancelled copy leaves nothing behind", async () => {
    const { parts, recordingId } = await recordingOf("minute.mp4");
    const abort = new AbortController();
    const copying = copyWithChapters(
      parts,
      { recordingId, granularity: "zones", captions: false, overwrite: false },
      { signal: abort.signal, tell: quiet },
    );
    abort.abort();
    await expect(copying).rejects.toMatchObject({ problem: { code: "copy-cancelled" } });
    const folder = exportFolderOf(parts, recordingId);
    expect(existsSync(folder) ? readdirSync(folder) : []).toEqual([]);
  });

  test("a video that is cut off in its middle is told with FFmpeg's own words, and nothing is left", async () => {
    const { parts, recordingId, source } = await recordingOf("clip.mp4");
    writeFileSync(source, readFileSync(source).subarray(0, 300));
    await expect(
      copyWithChapters(
        parts,
        { recordingId, granularity: "zones", captions: false, overwrite: false },
        { signal: new AbortController().signal, tell: quiet },
      ),
    ).rejects.toMatchObject({ problem: { code: "copy-failed", message: expect.stringContaining("The original is as it was") } });
    expect(readdirSync(exportFolderOf(parts, recordingId))).toEqual([]);
  });
});

test("a full disk is told before anything is written", async () => {
  const { parts, recordingId } = await recordingOf("clip.mp4");
  await expect(
    copyWithChapters(
      parts,
      { recordingId, granularity: "zones", captions: false, overwrite: false },
      { signal: new AbortController().signal, tell: quiet, program: "ffmpeg", freeBytes: async () => 1_000_000 },
    ),
  ).rejects.toMatchObject({ problem: { code: "disk-full", message: expect.stringContaining("1 MB free") } });
  expect(readdirSync(exportFolderOf(parts, recordingId))).toEqual([]);
});

test("without FFmpeg it says what to install", async () => {
  const { parts, recordingId } = await recordingOf("clip.mp4");
  await expect(
    copyWithChapters(
      parts,
      { recordingId, granularity: "zones", captions: false, overwrite: false },
      { signal: new AbortController().signal, tell: quiet, program: null, freeBytes: plenty },
    ),
  ).rejects.toMatchObject({ problem: { code: "ffmpeg-missing", message: expect.stringContaining("Install it") } });
  expect(findFfmpeg({ PATH: "/nowhere" })).toBeNull();
  expect(findFfmpeg({ PATH: "/nowhere", ROUNDWALK_FFMPEG: "/not/there" })).toBeNull();
  expect(findFfmpeg({ PATH: "/nowhere", ROUNDWALK_FFMPEG: process.execPath })).toBe(process.execPath);
});

test("a recording without its video cannot be copied, and says what to do", async () => {
  const { parts, recordingId, source } = await recordingOf("clip.mp4");
  expect(copyAbility(parts, { recordingId }).whyNot ?? "").not.toContain("is not where it was");

  rmSync(source);
  expect(copyAbility(parts, { recordingId }).whyNot).toContain("is not where it was. Find the video again");
});

describe("a copy that lies beside the index", () => {
  const write = async (made: Awaited<ReturnType<typeof recordingOf>>) => {
    const { handlers, recordingId } = made;
    const { files } = await handlers["export.write"]({ recordingId, formats: ["index-html"], granularity: "zones", overwrite: true });
    return /<video [^>]*src="([^"]*)"/.exec(readFileSync(files[0]!.path, "utf8"))?.[1];
  };

  test("is what its page plays, unless the video is newer; without one the page plays the original", async () => {
    const made = await recordingOf("clip.mp4");
    expect(await write(made)).toMatch(/^\.\..*walk\.mp4$/);
    const copy = made.copyFile(made.recordingId)!;
    copyFileSync(made.source, copy.path);
    expect(await write(made)).toBe("fk-1971-kestrel.with-chapters.mp4");
    const later = new Date(Date.now() + 60_000);
    utimesSync(made.source, later, later);
    expect(await write(made)).toMatch(/walk\.mp4$/);
  });

  test("is downloaded under its own name, and is not there before it was made", async () => {
    const { recordingId, source, copyFile, mediaFile, download } = await recordingOf("clip.mp4");
    const serve = createAddressServer({ page: async () => new Response("page"), mediaFile, copyFile, download });
    const ask = (id: string) => serve(new Request(`http://localhost/exports/${id}/video-copy`));
    expect((await ask(recordingId)).status).toBe(404);
    const { path } = copyFile(recordingId)!;
    mkdirSync(dirname(path), { recursive: true });
    copyFileSync(source, path);
    const response = await ask(recordingId);
    expect(response.headers.get("content-disposition")).toBe('attachment; filename="fk-1971-kestrel.with-chapters.mp4"');
    expect(Buffer.from(await response.arrayBuffer()).equals(readFileSync(source))).toBe(true);
    expect((await ask("..%2f..%2fsecret")).status).toBe(404);
  });
});
