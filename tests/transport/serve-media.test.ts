import { readdirSync, readlinkSync, writeFileSync } from "node:fs";
import { request } from "node:http";
import { join } from "node:path";
import { Readable } from "node:stream";
import type { ReadableStream as NodeReadableStream } from "node:stream/web";
import fastCheck from "fast-check";
import parseRange from "range-parser";
import { describe, expect, test } from "vitest";
import { byteRange } from "../../electron/transport/byte-range.ts";
import { serveMedia } from "../../electron/transport/serve-media.ts";
import { loopbackHost, rawRequest } from "../support/builders/loopback-host.ts";
import { temporaryFolder } from "../support/builders/temporary-folder.ts";

const id = "5d2f7c1e-8f57-4a55-9d2c-2f6f0f9c3e01";
/** 10,000 bytes, as in the examples of RFC 9110, section 14.1.2; each byte tells its place. */
const size = 10_000;
const content = Buffer.from(Array.from({ length: size }, (_, place) => place % 251));

function clip(bytes: Uint8Array = content): { path: string; mediaType: string } {
  const path = join(temporaryFolder(), "walk.webm");
  writeFileSync(path, bytes);
  return { path, mediaType: "video/webm" };
}

function ask(file: ReturnType<typeof clip> | undefined, headers: Record<string, string> = {}, method = "GET"): Promise<Response> {
  return serveMedia(new Request(`http://127.0.0.1/media/${id}`, { method, headers }), file);
}

describe("ranges, as RFC 9110 section 14 has them", () => {
  test.for([
    { range: "bytes=0-499", start: 0, end: 499, why: "the first 500 bytes (RFC 9110, 14.1.2)" },
    { range: "bytes=500-999", start: 500, end: 999, why: "the second 500 bytes (RFC 9110, 14.1.2)" },
    { range: "bytes=-500", start: 9500, end: 9999, why: "the final 500 bytes (RFC 9110, 14.1.2)" },
    { range: "bytes=9500-", start: 9500, end: 9999, why: "the final 500 bytes by their start (RFC 9110, 14.1.2)" },
    { range: "bytes=0-0", start: 0, end: 0, why: "the first byte only" },
    { range: "bytes=-1", start: 9999, end: 9999, why: "the last byte only" },
    { range: "bytes=0-", start: 0, end: 9999, why: "everything, as players first ask" },
    { range: "bytes=9999-20000", start: 9999, end: 9999, why: "an end past the file's is taken back to it" },
    { range: "bytes=-20000", start: 0, end: 9999, why: "a suffix longer than the file is all of it" },
    { range: "BYTES=1-2", start: 1, end: 2, why: "range units are case-insensitive (RFC 9110, 14.1)" },
  ])("$range: $why", async ({ range, start, end }) => {
    const response = await ask(clip(), { range });
    expect(response.status).toBe(206);
    expect(response.headers.get("content-range")).toBe(`bytes ${start}-${end}/${size}`);
    expect(response.headers.get("content-length")).toBe(String(end - start + 1));
    expect(Buffer.from(await response.arrayBuffer()).equals(content.subarray(start, end + 1))).toBe(true);
  });

  test.for(["bytes=10000-", "bytes=20000-30000", "bytes=-0"])("%s cannot be satisfied", async (range) => {
    const response = await ask(clip(), { range });
    expect(response.status).toBe(416);
    expect(response.headers.get("content-range")).toBe(`bytes */${size}`);
    expect(await response.text()).toBe("");
  });

  test.for([
    { range: "bytes=5-2", why: "an end before the start is invalid and ignored" },
    { range: "bytes=a-b", why: "no numbers" },
    { range: "seconds=0-5", why: "another unit" },
    { range: "bytes=0-1,5-6", why: "several ranges, which a server may answer with all" },
    { range: "bytes", why: "no ranges at all" },
  ])("$range gives the whole file: $why", async ({ range }) => {
    const response = await ask(clip(), { range });
    expect([response.status, response.headers.get("content-range")]).toEqual([200, null]);
    expect((await response.arrayBuffer()).byteLength).toBe(size);
  });

  test("HEAD tells the same without the bytes", async () => {
    for (const headers of [{}, { range: "bytes=0-499" }] as Record<string, string>[]) {
      const [head, get] = [await ask(clip(), headers, "HEAD"), await ask(clip(), headers)];
      expect([head.status, head.headers.get("content-length"), head.headers.get("content-range")]).toEqual([
        get.status,
        get.headers.get("content-length"),
        get.headers.get("content-range"),
      ]);
      expect((await head.arrayBuffer()).byteLength).toBe(0);
      await get.body?.cancel();
    }
  });

  test("an empty file is served, and no range of it exists", async () => {
    const whole = await ask(clip(Buffer.alloc(0)));
    expect([whole.status, whole.headers.get("content-length")]).toEqual([200, "0"]);
    const part = await ask(clip(Buffer.alloc(0)), { range: "bytes=0-" });
    expect([part.status, part.headers.get("content-range")]).toEqual([416, "bytes */0"]);
  });

  test("If-Range: the part while the file is the same, else all of it", async () => {
    const file = clip();
    const etag = (await ask(file, {}, "HEAD")).headers.get("etag") as string;
    expect((await ask(file, { range: "bytes=0-1", "if-range": etag }, "HEAD")).status).toBe(206);
    writeFileSync(file.path, content.subarray(0, 5000));
    expect((await ask(file, { range: "bytes=0-1", "if-range": etag }, "HEAD")).status).toBe(200);
  });

  test("a film that is gone, unknown or a folder is not found; other methods are not allowed", async () => {
    expect((await ask(undefined)).status).toBe(404);
    expect((await ask({ path: join(temporaryFolder(), "gone.webm"), mediaType: "video/webm" })).status).toBe(404);
    expect((await ask({ path: temporaryFolder(), mediaType: "video/webm" })).status).toBe(404);
    expect((await ask(clip(), {}, "POST")).status).toBe(405);
  });
});

/** How often this process has the file open; counted where the system lists it. */
const openCount = (path: string) =>
  readdirSync("/proc/self/fd").filter((descriptor) => {
    try {
      return readlinkSync(`/proc/self/fd/${descriptor}`) === path;
    } catch {
      return false;
    }
  }).length;

describe.skipIf(process.platform !== "linux")("a film whose player goes away (open files can be counted on Linux)", () => {
  // Electron turns a reply's body into a stream of Node's, and destroys that when the page no longer wants it.
  test.for([
    { after: 0, why: "before it has read anything" },
    { after: 1, why: "after the first bytes" },
    { after: 3_000_000, why: "half way" },
  ])("is freed $why, and nothing fails unheard", async ({ after }) => {
    const failures: unknown[] = [];
    const hear = (failure: unknown) => failures.push(failure);
    process.on("uncaughtExceptionMonitor", hear);
    const file = clip(Buffer.alloc(8 * 2 ** 20));
    for (let round = 0; round < 10; round += 1) {
      const response = await ask(file, { range: `bytes=${round}-` });
      expect(openCount(file.path)).toBe(1);
      const body = Readable.fromWeb(response.body as NodeReadableStream);
      const gone = new Promise((resolve) => body.once("close", resolve));
      let bytes = 0;
      if (after === 0) body.destroy();
      else
        body.on("data", (chunk: Uint8Array) => {
          bytes += chunk.length;
          if (bytes >= after) body.destroy();
        });
      await gone;
      await expect.poll(() => openCount(file.path)).toBe(0);
    }
    process.off("uncaughtExceptionMonitor", hear);
    expect(failures).toEqual([]);
  });

  test("is freed by the request's own end, and by a file that becomes shorter", async () => {
    const file = clip(Buffer.alloc(2 ** 20));
    const control = new AbortController();
    const response = await serveMedia(new Request(`http://127.0.0.1/media/${id}`, { signal: control.signal }), file);
    control.abort();
    await expect.poll(() => openCount(file.path)).toBe(0);
    await expect(response.arrayBuffer()).rejects.toThrow();
    const cut = await ask(file);
    writeFileSync(file.path, Buffer.alloc(300_000));
    await expect(cut.arrayBuffer()).rejects.toThrow(/shorter/);
    await expect.poll(() => openCount(file.path)).toBe(0);
  });
});

describe("ranges against npm's range-parser 1.3.0", () => {
  test("are the same for every single range, save the two cases in which it departs from RFC 9110", () => {
    const position = fastCheck.option(fastCheck.nat(300), { nil: "" as const });
    fastCheck.assert(
      fastCheck.property(position, position, fastCheck.integer({ min: 1, max: 200 }), (first, last, bytes) => {
        fastCheck.pre(first !== "" || last !== "");
        const reversed = first !== "" && last !== "" && last < first;
        const longSuffix = first === "" && last !== "" && last > bytes;
        fastCheck.pre(!reversed && !longSuffix);
        const reference = parseRange(bytes, `bytes=${first}-${last}`);
        const expected = Array.isArray(reference) ? { ...reference[0] } : "unsatisfiable";
        expect(byteRange(`bytes=${first}-${last}`, bytes)).toEqual(expected);
      }),
      { numRuns: 500 },
    );
  });
});

describe("ranges through the loopback host", () => {
  test("are the same over the wire", async () => {
    const file = clip();
    const host = await loopbackHost({ pageFolder: temporaryFolder(), mediaFile: (asked) => (asked === id ? file : undefined) });
    const headers = { authorization: `Bearer ${host.token}` };
    const part = await rawRequest(host.port, { path: `/media/${id}`, headers: { ...headers, range: "bytes=-5" } });
    expect(part).toMatchObject({ status: 206, headers: { "content-range": "bytes 9995-9999/10000", "content-length": "5" } });
    const head = await rawRequest(host.port, { path: `/media/${id}`, method: "HEAD", headers });
    expect(head).toMatchObject({ status: 200, text: "", headers: { "content-length": "10000", "accept-ranges": "bytes" } });
    const none = await rawRequest(host.port, { path: `/media/${id}`, headers: { ...headers, range: "bytes=10000-" } });
    expect(none).toMatchObject({ status: 416, headers: { "content-range": "bytes */10000" } });
    for (const path of ["/media/", "/media/x", `/media/${id}/more`, `/media/${file.path}`]) {
      expect((await rawRequest(host.port, { path, headers })).status, path).toBe(404);
    }
  });

  test.skipIf(process.platform !== "linux")("a player that goes away frees the file (open files can be counted on Linux)", async () => {
    const file = clip(Buffer.alloc(64 * 2 ** 20));
    const host = await loopbackHost({ pageFolder: temporaryFolder(), mediaFile: () => file });
    for (let round = 0; round < 5; round += 1) {
      await new Promise<void>((resolve, reject) => {
        const player = request(
          { host: "127.0.0.1", port: host.port, path: `/media/${id}`, headers: { authorization: `Bearer ${host.token}` } },
          (response) => {
            response.once("data", () => {
              expect(openCount(file.path)).toBeGreaterThan(0);
              player.destroy();
              resolve();
            });
            response.on("error", () => {});
          },
        );
        player.on("error", reject);
        player.end();
      });
    }
    await expect.poll(() => openCount(file.path)).toBe(0);
  });
});
