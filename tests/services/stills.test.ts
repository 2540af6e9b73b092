import { execFileSync } from "node:child_process";
import { describe, expect, test } from "vitest";
import { longestStillEdge } from "../../electron/services/stills/keep-still.ts";
import { pictureFacts } from "../../electron/services/stills/picture-size.ts";
import { stillBytesAllowed } from "../../shared-types/index.ts";
import { importSample, sampleApplication } from "../support/builders/sample-application.ts";
import { temporaryFolder } from "../support/builders/temporary-folder.ts";

/** A picture by ffmpeg, whose encoders are the reference: nothing of ours wrote these bytes. Null where ffmpeg cannot be had. */
function picture(width: number, height: number, ...coding: string[]): Buffer | null {
  try {
    const source = ["-v", "error", "-f", "lavfi", "-i", `testsrc=size=${width}x${height}:rate=1`, "-frames:v", "1"];
    return execFileSync("ffmpeg", [...source, ...coding, "pipe:1"], { maxBuffer: 2 ** 24 });
  } catch {
    return null;
  }
}

const codings = [
  { mediaType: "image/png", coding: ["-c:v", "png", "-f", "image2pipe"] },
  { mediaType: "image/jpeg", coding: ["-c:v", "mjpeg", "-f", "image2pipe"] },
  { mediaType: "image/webp", coding: ["-c:v", "libwebp", "-f", "webp"] },
  { mediaType: "image/webp", coding: ["-c:v", "libwebp", "-lossless", "1", "-f", "webp"] },
] as const;

describe("kind and size of a picture by its bytes", () => {
  test.for(codings)("$mediaType $coding", ({ mediaType, coding }, { skip }) => {
    const bytes = picture(322, 182, ...coding);
    if (!bytes) return skip("ffmpeg with this encoder is not installed");
    expect(pictureFacts(bytes)).toEqual({ mediaType, width: 322, height: 182 });
    for (const length of [0, 1, 8, 12, 20]) expect(pictureFacts(bytes.subarray(0, length))).toBeUndefined();
  });
  test.for([
    ["a drawing with script in it", Buffer.from(`<svg xmlns="http://www.w3.org/2000/svg" onload="alert(1)"/>`.padEnd(60))],
    ["another kind of picture", Buffer.from(`GIF89a${"\0".repeat(60)}`, "latin1")],
    ["a page", Buffer.from("<!doctype html><title>x</title>".padEnd(60))],
    ["a jpeg without a frame", Buffer.from(`ffd8ffd9${"00".repeat(60)}`, "hex")],
    ["a jpeg whose segment has no length", Buffer.from(`ffd8ffe00000${"00".repeat(60)}`, "hex")],
  ] as const)("%s is none", ([, bytes]) => expect(pictureFacts(bytes)).toBeUndefined());
});

describe("keeping a still", () => {
  const keep = async (bytes: Buffer, atMilliseconds = 33_000) => {
    const folder = temporaryFolder();
    const application = sampleApplication({ folder });
    const { id: recordingId } = await importSample(application, { folder });
    const answer = application.handlers["still.keep"];
    const still = async () => answer({ recordingId, atMilliseconds, image: bytes.toString("base64") });
    return { recordingId, still, application };
  };
  test("a later one for the same moment takes its place", async ({ skip }) => {
    const first = picture(32, 18, ...codings[1].coding);
    const second = picture(64, 36, ...codings[1].coding);
    if (!first || !second) return skip("ffmpeg is not installed");
    const { application, recordingId, still } = await keep(first);
    await still();
    application.handlers["still.keep"]({ recordingId, atMilliseconds: 33_000, image: second.toString("base64") });
    const kept = await application.handlers["still.get"]({ recordingId, atMilliseconds: 33_000 });
    expect(kept).toMatchObject({ width: 64, height: 36, image: second.toString("base64") });
    expect(application.parts.library.stills.times(recordingId)).toEqual([33_000]);
  });
  test("one that is too large, or lies outside the recording, is refused", async ({ skip }) => {
    const wide = picture(longestStillEdge + 2, 4, ...codings[1].coding);
    const fine = picture(32, 18, ...codings[1].coding);
    if (!wide || !fine) return skip("ffmpeg is not installed");
    const refusal = async (bytes: Buffer, at?: number) => (await keep(bytes, at)).still();
    await expect(refusal(wide)).rejects.toThrow(/pixels/);
    await expect(refusal(Buffer.concat([fine, Buffer.alloc(stillBytesAllowed)]))).rejects.toThrow(/bytes are allowed/);
    await expect(refusal(fine, 9_000_000)).rejects.toThrow(/ends at/);
  });
});
