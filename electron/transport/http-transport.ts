import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { getRequestListener } from "@hono/node-server";
import { addresses, type OfferedFile, Problem, type Reply } from "../../shared-types/index.ts";
import type { Dispatch } from "./dispatch.ts";
import { type Subscribe, serveEvents } from "./event-stream.ts";
import { createLoopbackGuard, type LoopbackGuard } from "./loopback-guard.ts";
import { secured, securityHeaders } from "./security-headers.ts";
import { boundPauses, SlowSender } from "./slow-bodies.ts";

export interface LoopbackParts {
  readonly dispatch: Dispatch;
  readonly subscribe: Subscribe;
  /** Page, media and exports; see serve-addresses.ts. */
  readonly serve: (request: Request) => Promise<Response>;
  readonly receive: (name: string, content: ReadableStream<Uint8Array>, bytes: number | null) => Promise<OfferedFile>;
  readonly log: (line: string) => void;
  /** How long a sender may take; left out, the usual times. */
  readonly patience?: Patience;
}

/** In milliseconds. */
interface Patience {
  /** For the whole of a method's input. */
  readonly call: number;
  /** Between two pieces of a file, which as a whole may take as long as it does. */
  readonly pause: number;
}
const usualPatience: Patience = { call: 15_000, pause: 60_000 };

/** A page needs half a dozen; a program that opens more and more of them must not use up what the system has. */
const mostConnections = 100;

export interface Loopback {
  /** "http://127.0.0.1:PORT". */
  readonly origin: string;
  /** For `Authorization: Bearer`: programs and tests that are no browser. */
  readonly token: string;
  /** An address that lets a browser in for as long as this process runs. */
  readonly entryAddress: () => string;
  /** Ends running streams and requests too. */
  readonly close: () => Promise<void>;
}

/** Most bytes of a method's input: the longest texts that the contract takes, many times over. */
const longestInput = 2 ** 20;

/** Serves the application on this machine alone. @param port 0 takes any that is free. */
export async function serveLoopback(parts: LoopbackParts, port = 0): Promise<Loopback> {
  let guard: LoopbackGuard | undefined;
  const listener = getRequestListener(
    async (request) => {
      if (!guard) return new Response("Not ready.", { status: 503 });
      return secured(await answer(request, parts, guard));
    },
    {
      overrideGlobalObjects: false,
      errorHandler: (failure) => {
        parts.log(`A request failed: ${failure instanceof Error ? (failure.stack ?? failure.message) : String(failure)}`);
        return new Response("The request failed; the log has the details.", { status: 500, headers: securityHeaders });
      },
    },
  );
  // A file of gigabytes takes as long as it takes; what is slow within it is bound where it is received.
  const server = createServer({ requestTimeout: 0, headersTimeout: 10_000, connectionsCheckingInterval: 2_000 }, listener);
  server.maxConnections = mostConnections;
  const { port: takenPort } = await listen(server, port);
  const authority = `127.0.0.1:${takenPort}`;
  const opened = createLoopbackGuard(authority);
  guard = opened;
  const origin = `http://${authority}`;
  return {
    origin,
    token: opened.token,
    entryAddress: () => `${origin}${opened.entryPath()}`,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

async function answer(request: Request, parts: LoopbackParts, guard: LoopbackGuard): Promise<Response> {
  const { pathname, searchParams } = new URL(request.url);
  if (pathname === "/enter" && request.method === "GET") return guard.enter(request);
  const refusal = guard.refusal(request);
  const isCall = pathname.startsWith(addresses.rpc) || pathname === addresses.files;
  if (refusal) return isCall ? reply(refused(refusal.code, refusal.message), refusal.status) : plain(refusal.message, refusal.status);
  if (pathname.startsWith(addresses.rpc)) return answerCall(request, pathname.slice(addresses.rpc.length), parts);
  if (pathname === addresses.events) return request.method === "GET" ? serveEvents(request, parts.subscribe) : notAllowed("GET");
  if (pathname === addresses.files) return receiveFile(request, searchParams.get("name") ?? "", parts);
  return parts.serve(request);
}

async function answerCall(request: Request, name: string, { dispatch, patience = usualPatience }: LoopbackParts): Promise<Response> {
  if (request.method !== "POST") return notAllowed("POST");
  // The one type that a foreign page's form cannot send.
  if (!/^application\/json\b/i.test(request.headers.get("content-type") ?? "")) {
    return reply(refused("type-unknown", "A call's input is JSON (content-type: application/json)."), 415);
  }
  const text = await textUpTo(request, longestInput, patience.call).catch((failure: unknown) => {
    if (failure instanceof SlowSender) return null;
    throw failure;
  });
  if (text === null) return lateReply("A call's input did not arrive in time.");
  if (text === undefined) return reply(refused("input-too-long", `A call's input may have ${longestInput} bytes.`), 413);
  let input: unknown;
  try {
    input = JSON.parse(text);
  } catch {
    return reply(refused("input-invalid", "The call's input is no JSON."), 400);
  }
  return reply(await dispatch(name, input));
}

async function receiveFile(request: Request, name: string, parts: LoopbackParts): Promise<Response> {
  const { receive, log, patience = usualPatience } = parts;
  if (request.method !== "POST") return notAllowed("POST");
  if (name.trim() === "") return reply(refused("name-missing", "The file's name is missing: POST /files?name=NAME."), 400);
  const announced = Number(request.headers.get("content-length") ?? Number.NaN);
  try {
    const content = boundPauses(request.body ?? new Blob([]).stream(), patience.pause);
    return reply({ ok: true, value: await receive(name, content, Number.isSafeInteger(announced) ? announced : null) });
  } catch (failure) {
    const foreseen = Problem.safeParse((failure as { problem?: unknown } | null)?.problem);
    if (foreseen.success) return reply({ ok: false, problem: foreseen.data });
    if (failure instanceof SlowSender) return lateReply("The file stopped half way. Choose it again.");
    log(`${name} was not received: ${failure instanceof Error ? (failure.stack ?? failure.message) : String(failure)}`);
    return reply(refused("receive-failed", `${name} was not received whole. Choose it again.`));
  }
}

/** Undefined where there is more of it. @throws SlowSender when it takes longer than `milliseconds`, in however small pieces. */
async function textUpTo(request: Request, bytes: number, milliseconds: number): Promise<string | undefined> {
  if (Number(request.headers.get("content-length") ?? 0) > bytes) return undefined;
  const chunks: Uint8Array[] = [];
  let length = 0;
  const end = performance.now() + milliseconds;
  for await (const chunk of request.body ? boundPauses(request.body, milliseconds) : []) {
    if (performance.now() > end) throw new SlowSender(milliseconds);
    length += chunk.length;
    if (length > bytes) return undefined;
    chunks.push(chunk);
  }
  return Buffer.concat(chunks).toString("utf8");
}

function reply(value: Reply, status = 200): Response {
  return Response.json(value, { status, headers: { "cache-control": "no-store" } });
}

/** The rest of what was to come is not waited for. */
function lateReply(message: string): Response {
  const late = reply(refused("too-slow", message), 408);
  late.headers.set("connection", "close");
  return late;
}

function refused(code: string, message: string): Reply {
  return { ok: false, problem: { code, message } };
}

function plain(message: string, status: number): Response {
  return new Response(message, { status, headers: { "content-type": "text/plain; charset=utf-8", "cache-control": "no-store" } });
}

function notAllowed(allow: string): Response {
  return new Response(`Only ${allow}.`, { status: 405, headers: { allow } });
}

function listen(server: Server, port: number): Promise<AddressInfo> {
  return new Promise((resolve, reject) => {
    server.once("error", reject);
    server.listen({ host: "127.0.0.1", port }, () => {
      server.off("error", reject);
      resolve(server.address() as AddressInfo);
    });
  });
}
