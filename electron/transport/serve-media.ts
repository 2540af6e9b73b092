import { type FileHandle, open } from "node:fs/promises";
import { byteRange } from "./byte-range.ts";

export interface MediaFile {
  readonly path: string;
  readonly mediaType: string;
}

/**
 * A file as HTTP serves it (RFC 9110): 206 for one satisfiable range, 416 for none that is, 200 for everything else, also where several
 * ranges or another unit are asked for, which a server may ignore. A seek in a player is such a range.
 */
export async function serveMedia(request: Request, file: MediaFile | undefined): Promise<Response> {
  if (request.method !== "GET" && request.method !== "HEAD") {
    return new Response("Only GET and HEAD.", { status: 405, headers: { allow: "GET, HEAD" } });
  }
  const handle = file && (await openIfThere(file.path));
  if (!file || !handle) return new Response("There is no video at this address, or its file has gone.", { status: 404 });
  try {
    const { size, mtimeMs } = await handle.stat();
    const etag = `"${size.toString(16)}-${Math.floor(mtimeMs).toString(16)}"`;
    const headers = new Headers({
      "accept-ranges": "bytes",
      "content-type": file.mediaType,
      etag,
      "last-modified": new Date(mtimeMs).toUTCString(),
      "cache-control": "private, no-cache",
    });
    const range = askedRange(request, size, etag);
    if (range === "unsatisfiable") {
      await handle.close();
      headers.set("content-range", `bytes */${size}`);
      headers.delete("content-type");
      return new Response(null, { status: 416, headers });
    }
    const { start, end } = range ?? { start: 0, end: size - 1 };
    const length = Math.max(0, end - start + 1);
    headers.set("content-length", String(length));
    if (range) headers.set("content-range", `bytes ${start}-${end}/${size}`);
    const status = range ? 206 : 200;
    if (request.method === "HEAD" || length === 0) {
      await handle.close();
      return new Response(null, { status, headers });
    }
    return new Response(streamOf(handle, start, end, request.signal), { status, headers });
  } catch (failure) {
    await handle.close();
    throw failure;
  }
}

function askedRange(request: Request, size: number, etag: string) {
  const asked = request.headers.get("range");
  // A part is only of use to who has the rest of the same file.
  const condition = request.headers.get("if-range");
  return asked === null || (condition !== null && condition !== etag) ? undefined : byteRange(asked, size);
}

const chunkBytes = 256 * 1024;

/**
 * The file's bytes, read when they are asked for; who stops listening frees the file, by cancelling the stream or by the request's signal.
 * Not `Readable.toWeb`: with some of Node's versions it closes a cancelled stream once more and throws where nobody can catch it, which
 * would end the desktop at a seek (“Invalid state: Controller is already closed”, as Electron's users have met it).
 */
function streamOf(handle: FileHandle, start: number, end: number, signal: AbortSignal): ReadableStream<Uint8Array> {
  let at = start;
  let closing: Promise<void> | undefined;
  const close = () => {
    signal.removeEventListener("abort", stop);
    closing ??= handle.close();
    return closing;
  };
  const stop = () => void close().catch(() => {});
  signal.addEventListener("abort", stop, { once: true });
  if (signal.aborted) stop();
  return new ReadableStream<Uint8Array>(
    {
      async pull(controller) {
        try {
          const bytes = new Uint8Array(Math.min(chunkBytes, end + 1 - at));
          const { bytesRead } = await handle.read(bytes, 0, bytes.length, at);
          if (bytesRead === 0) throw new Error("The file became shorter while it was read");
          at += bytesRead;
          controller.enqueue(bytes.subarray(0, bytesRead));
          if (at <= end) return;
          await close();
          controller.close();
        } catch (failure) {
          stop();
          throw failure;
        }
      },
      cancel: close,
    },
    { highWaterMark: 0 },
  );
}

async function openIfThere(path: string): Promise<FileHandle | undefined> {
  try {
    const handle = await open(path, "r");
    if ((await handle.stat()).isFile()) return handle;
    await handle.close();
  } catch {
    // Gone, moved or not ours to read: to the player it is all the same.
  }
  return undefined;
}
