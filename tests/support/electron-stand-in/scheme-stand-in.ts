import { createServer, type IncomingMessage, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { Readable } from "node:stream";
import type { ReadableStream as NodeReadableStream } from "node:stream/web";
import type Electron from "electron";
import { answer, tell } from "./controller.ts";
import { needsReady, needsUnready } from "./strictness.ts";

/**
 * The custom scheme. Chromium itself knows none that it was not built with, so that the page is served over HTTP at a host of the same
 * name, and everything that the application sees says app://. A request's and a reply's bytes are passed on as they are.
 */
let declared: readonly Electron.CustomScheme[] | null = null;
const handlers = new Map<string, (request: Request) => Response | Promise<Response>>();

export const protocolStandIn = {
  registerSchemesAsPrivileged(schemes: Electron.CustomScheme[]) {
    needsUnready("protocol.registerSchemesAsPrivileged");
    if (declared) throw new Error("protocol.registerSchemesAsPrivileged can be used only once");
    for (const { privileges } of schemes) {
      if (privileges?.bypassCSP) throw new Error("A scheme that bypasses the content security policy is refused here");
      if (privileges?.allowServiceWorkers || privileges?.codeCache || privileges?.allowExtensions || privileges?.corsEnabled)
        throw new Error("A privilege that nothing needs is refused here");
    }
    declared = structuredClone(schemes);
  },
  handle(scheme: string, handler: (request: Request) => Response | Promise<Response>) {
    needsReady("protocol.handle");
    if (handlers.has(scheme)) throw new Error(`Failed to register protocol: ${scheme}`);
    // Electron would go on, and the page would have no origin, no secure context, no fetch or no seekable video.
    needsPrivileges(scheme);
    handlers.set(scheme, handler);
  },
} satisfies Pick<Electron.Protocol, "registerSchemesAsPrivileged" | "handle">;

/** @throws where a page on this scheme would have no origin, no secure context, no fetch or no seekable video. */
export function needsPrivileges(scheme: string): void {
  const privileges = declared?.find((each) => each.scheme === scheme)?.privileges;
  for (const name of ["standard", "secure", "supportFetchAPI", "stream"] as const) {
    if (!privileges?.[name]) throw new Error(`The scheme ${scheme} lacks the privilege ${name}`);
  }
}

export async function schemeReply(request: Request): Promise<Response> {
  const scheme = new URL(request.url).protocol.slice(0, -1);
  const handler = handlers.get(scheme);
  if (!handler) throw new Error(`ERR_UNKNOWN_URL_SCHEME ${request.url}`);
  needsPrivileges(scheme);
  const reply = await handler(request);
  if (!(reply instanceof Response)) throw new Error("ERR_UNEXPECTED: a scheme's handler must answer a Response");
  const range = request.headers.get("range");
  const fault = faultOf(reply, range);
  if (fault) tell("fault", `${request.method} ${request.url}, range ${range ?? "none"}: ${fault}`);
  return reply;
}

/** What is wrong with a reply to a request for a part (RFC 9110, 14 and 15.3.7). */
function faultOf(reply: Response, range: string | null): string | null {
  const [from, to, size] =
    /^bytes (\d+)-(\d+)\/(\d+)$/
      .exec(reply.headers.get("content-range") ?? "")
      ?.slice(1)
      .map(Number) ?? [];
  if (reply.status === 206) {
    if (range === null) return "206 without a range that was asked for";
    if (from === undefined || to === undefined || size === undefined || from > to || to >= size) return "206 without a right Content-Range";
    if (Number(reply.headers.get("content-length")) !== to - from + 1) return "206 with another Content-Length than its range";
  }
  if (reply.status === 416 && !/^bytes \*\/\d+$/.test(reply.headers.get("content-range") ?? "")) return "416 without the size";
  if (range !== null && reply.status === 200 && reply.headers.has("accept-ranges")) return "200 to a range, where a seek would begin anew";
  return null;
}

/** Serves the scheme to a browser. Resolves with the origin that stands for app://HOST. */
export async function serveToBrowser(scheme: string, host: string): Promise<string> {
  const server = createServer((incoming, outgoing) => {
    void pass(incoming, outgoing, `${scheme}://${host}`).catch((failure) => {
      tell("fault", `${incoming.url}: ${String(failure)}`);
      outgoing.destroy();
    });
  });
  await new Promise<void>((listening) => server.listen({ host: "127.0.0.1", port: 0 }, listening));
  server.unref();
  return `http://${host}.localhost:${(server.address() as AddressInfo).port}`;
}

/**
 * As Electron passes a request on: the handler is given one that nothing ever aborts, its reply's body becomes a stream of Node's, and
 * that is destroyed when the page no longer wants it. Whoever waits for the request's signal waits for ever.
 */
async function pass(incoming: IncomingMessage, outgoing: ServerResponse, origin: string): Promise<void> {
  const method = incoming.method ?? "GET";
  const headers = new Headers();
  for (const [name, value] of Object.entries(incoming.headers)) {
    if (name !== "host" && name !== "connection" && typeof value === "string") headers.set(name, value);
  }
  if (headers.get("origin") === "null") headers.delete("origin");
  const body = method === "GET" || method === "HEAD" ? undefined : (Readable.toWeb(incoming) as ReadableStream);
  const init = { method, headers, ...(body ? { body, duplex: "half" } : {}) };
  const reply = await schemeReply(new Request(`${origin}${incoming.url ?? "/"}`, init as RequestInit));
  outgoing.writeHead(reply.status, Object.fromEntries(reply.headers));
  if (!reply.body) {
    outgoing.end();
    return;
  }
  const stream = Readable.fromWeb(reply.body as NodeReadableStream);
  outgoing.once("close", () => stream.destroy());
  let bytes = 0;
  stream.on("data", (chunk: Uint8Array) => {
    bytes += chunk.length;
  });
  stream.on("end", () => {
    const announced = reply.headers.get("content-length");
    if (!outgoing.destroyed && announced !== null && method !== "HEAD" && Number(announced) !== bytes) {
      tell("fault", `${incoming.url}: ${bytes} bytes, and ${announced} were announced`);
    }
  });
  stream.on("error", (failure) => {
    // The player stops listening whenever it seeks.
    if (!outgoing.destroyed) tell("fault", `${incoming.url}: ${String(failure)}`);
    outgoing.destroy();
  });
  stream.pipe(outgoing);
}

answer("fetch", async ({ url, method, headers }: { url: string; method?: string; headers?: Record<string, string> }) => {
  const reply = await schemeReply(new Request(url, { method: method ?? "GET", headers: headers ?? {} }));
  const content = Buffer.from(await reply.arrayBuffer());
  return {
    status: reply.status,
    headers: Object.fromEntries(reply.headers),
    bytes: content.length,
    text: content.subarray(0, 2000).toString("utf8"),
  };
});
answer("schemes", () => declared);
