import { connect } from "node:net";
import { expect, onTestFinished, test } from "vitest";
import { createOfferedFiles } from "../../electron/services/offered-files.ts";
import { serveLoopback } from "../../electron/transport/http-transport.ts";
import { temporaryFolder } from "../support/builders/temporary-folder.ts";

const patience = { call: 400, pause: 400 };

async function host() {
  const files = createOfferedFiles(temporaryFolder());
  const logged: string[] = [];
  const loopback = await serveLoopback({
    dispatch: async () => ({ ok: true, value: {} }),
    subscribe: () => () => {},
    serve: async () => new Response("page"),
    receive: files.receive,
    log: (line) => logged.push(line),
    patience,
  });
  onTestFinished(async () => {
    files.close();
    await loopback.close();
  });
  return { ...loopback, logged };
}

/** Sends a head, then pieces of a body with pauses between them; all that comes back until the line is closed. */
function drip(origin: string, head: string[], pieces: string[], pauseMilliseconds: number): Promise<string> {
  const { hostname, port, host: authority } = new URL(origin);
  return new Promise((resolve, reject) => {
    const socket = connect(Number(port), hostname);
    let said = "";
    socket.on("data", (chunk) => {
      said += String(chunk);
    });
    // The host may close the line while a piece is still on its way.
    socket.on("error", (failure: NodeJS.ErrnoException) =>
      ["EPIPE", "ECONNRESET"].includes(failure.code ?? "") ? undefined : reject(failure),
    );
    socket.on("close", () => {
      clearInterval(sending);
      resolve(said);
    });
    socket.write(`${[...head, `host: ${authority}`].join("\r\n")}\r\n\r\n`);
    const waiting = [...pieces];
    const sending = setInterval(() => {
      const piece = waiting.shift();
      if (piece !== undefined && socket.writable) socket.write(piece);
    }, pauseMilliseconds);
    onTestFinished(() => {
      clearInterval(sending);
      socket.destroy();
    });
  });
}

const call = (token: string, length: number) => [
  "POST /rpc/recording.list HTTP/1.1",
  "content-type: application/json",
  `authorization: Bearer ${token}`,
  `content-length: ${length}`,
];

test("a call whose input stops half way is ended, and the line with it", async () => {
  const { origin, token, logged } = await host();
  const said = await drip(origin, call(token, 1000), ['{"a":'], 10);
  expect(said).toMatch(/^HTTP\/1\.1 408 /);
  expect(said).toContain("too-slow");
  expect(logged).toEqual([]);
});

test("a call whose input drips for ever, never pausing long, is ended too", async () => {
  const { origin, token } = await host();
  const started = performance.now();
  const said = await drip(
    origin,
    call(token, 1000),
    Array.from({ length: 900 }, () => " "),
    20,
  );
  expect(said).toMatch(/^HTTP\/1\.1 408 /);
  expect(performance.now() - started).toBeLessThan(15_000);
});

test("a file that stops half way is ended and leaves nothing; one that is only slow arrives", async () => {
  const { origin, token, logged } = await host();
  const head = (length: number) => [
    "POST /files?name=walk.vtt HTTP/1.1",
    `authorization: Bearer ${token}`,
    `content-length: ${length}`,
    "connection: close",
  ];
  expect(await drip(origin, head(1000), ["WEBVTT"], 10)).toMatch(/^HTTP\/1\.1 408 /);
  const slow = await drip(
    origin,
    head(12),
    Array.from({ length: 12 }, () => "x"),
    100,
  );
  expect(slow).toMatch(/^HTTP\/1\.1 200 /);
  expect(slow).toContain('"bytes":12');
  expect(logged).toEqual([]);
});

test("a head of more than Node's bound is refused before anything is done with it", async () => {
  const { origin, token } = await host();
  const said = await drip(origin, [...call(token, 2), `x-long: ${"x".repeat(40_000)}`], [], 10);
  expect(said).toMatch(/^HTTP\/1\.1 431 /);
});
