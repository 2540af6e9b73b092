import { execFileSync } from "node:child_process";
import { copyFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { stillMoments, takeStills, wantedStills } from "../../electron/services/stills/take-stills.ts";
import { sampleTranscriptText } from "../support/builders/sample-analysis.ts";
import { sampleApplication, sampleVehicle } from "../support/builders/sample-application.ts";
import { temporaryFolder } from "../support/builders/temporary-folder.ts";
import { missingTools } from "../support/runner/find-tools.ts";

const minute = fileURLToPath(new URL("../../fixtures/media/minute.mp4", import.meta.url));
const missing = missingTools("ffmpeg", "ffprobe");
/** A PNG of one point (RFC 2083). */
const onePoint = "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==";

async function recording() {
  const folder = temporaryFolder();
  const application = sampleApplication({ folder });
  const { handlers, parts } = application;
  copyFileSync(minute, join(folder, "walk.mp4"));
  writeFileSync(join(folder, "walk.txt"), sampleTranscriptText);
  const { id: recordingId } = await handlers["recording.import"]({
    transcript: parts.files.offerPath(join(folder, "walk.txt")).id,
    video: parts.files.offerPath(join(folder, "walk.mp4")).id,
    stockSheet: null,
    title: "Kestrel",
    stockNumber: "FK-1971",
    vehicle: sampleVehicle,
  });
  return { ...application, recordingId };
}

describe.skipIf(missing)(`stills by FFmpeg${missing ? ` (skipped: ${missing})` : ""}`, () => {
  test("one is taken in each chapter that the video reaches, none twice, and ffprobe reads it", async () => {
    const { parts, handlers, recordingId, folder } = await recording();
    const { signal } = new AbortController();
    const told: number[] = [];
    const why = await takeStills(parts, recordingId, { signal, tell: (_what, done) => told.push(done) });
    const wanted = stillMoments(await handlers["recording.get"]({ id: recordingId }));
    const times = parts.library.stills.times(recordingId);
    // The sample's transcript runs on after the clip's minute.
    expect(times).toEqual(wanted.map((seconds) => Math.round(seconds * 1000)).filter((at) => at < 60_000));
    expect(why === null).toBe(times.length === wanted.length);
    expect(told.length).toBe(wanted.length);
    const [still] = parts.library.stills.of(recordingId);
    const file = join(folder, "still.jpg");
    writeFileSync(file, still!.bytes);
    const probed = execFileSync("ffprobe", ["-v", "error", "-show_entries", "stream=codec_name,width,height", "-of", "csv=p=0", file], {
      encoding: "utf8",
    });
    expect(probed.trim()).toBe(`mjpeg,${still!.width},${still!.height}`);
    expect(still!.width).toBeLessThanOrEqual(640);
    await takeStills(parts, recordingId, { signal });
    expect(parts.library.stills.times(recordingId)).toEqual(times);
  });

  test("a page that is asked for without having been written before has its pictures too", async () => {
    const { parts, download, recordingId } = await recording();
    expect(parts.library.stills.times(recordingId)).toEqual([]);
    const page = await download(recordingId, "index-html", "zones", "letter");
    const pictures = String(page?.content).match(/<img src="data:image\/jpeg;base64,/g)?.length ?? 0;
    expect(pictures).toBeGreaterThan(0);
    expect(pictures).toBe(parts.library.stills.times(recordingId).length);
  });

  test("cancelled, it ends with what the signal says and keeps what was taken", async () => {
    const { parts, recordingId } = await recording();
    const abort = new AbortController();
    const taking = takeStills(parts, recordingId, {
      signal: abort.signal,
      tell: (_what, done) => done === 1 && abort.abort(new Error("enough")),
    });
    await expect(taking).rejects.toThrow("enough");
    expect(parts.library.stills.times(recordingId).length).toBe(1);
  });
});

test("what is wanted is what an index lacks a picture of, nothing without a video, and says who takes it", async () => {
  const { parts, handlers, recordingId } = await recording();
  const detail = await handlers["recording.get"]({ id: recordingId });
  const all = stillMoments(detail).map((seconds) => Math.round(seconds * 1000));
  expect(wantedStills(parts, { recordingId }, null)).toEqual({ moments: all, hostTakes: false });
  expect(wantedStills(parts, { recordingId }, "/usr/bin/ffmpeg")).toEqual({ moments: all, hostTakes: true });
  // A picture that somebody kept near a moment serves for it.
  const [first = 0] = all;
  await handlers["still.keep"]({ recordingId, atMilliseconds: first + 400, image: onePoint });
  expect(wantedStills(parts, { recordingId }, null).moments).toEqual(all.slice(1));
  const row = parts.library.recordings.get(recordingId);
  rmSync(row?.video?.path ?? "");
  expect(wantedStills(parts, { recordingId }, null).moments).toEqual([]);
});

test("without FFmpeg it says why pictures are missing, and nothing fails", async () => {
  const { parts, recordingId } = await recording();
  const { signal } = new AbortController();
  expect(await takeStills(parts, recordingId, { signal, program: null })).toMatch(
    /^\d+ pictures are missing: FFmpeg, which takes them from the video, was not found/,
  );
});
