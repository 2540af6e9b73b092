import { mkdirSync, readdirSync, writeFileSync } from "node:fs";
import { createConnection } from "node:net";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { loopbackHost, rawRequest } from "../support/builders/loopback-host.ts";
import { temporaryFolder } from "../support/builders/temporary-folder.ts";

function builtPage(): string {
  const folder = temporaryFolder();
  const page = join(folder, "page");
  mkdirSync(join(page, "assets"), { recursive: true });
  writeFileSync(join(page, "index.html"), "<!doctype html><title>Roundwalk</title>");
  writeFileSync(join(page, "assets", "app-1a2b.js"), "export {};");
  writeFileSync(join(folder, "secret.txt"), "not for the page");
  return page;
}

/** A browser that came in through the address: its session cookie. */
async function enter(entryAddress: string): Promise<string> {
  const response = await fetch(entryAddress, { redirect: "manual" });
  return (response.headers.get("set-cookie") ?? "").split(";")[0] as string;
}

describe("who may talk to the loopback host", () => {
  test("a browser comes in through the printed address and no other, with a cookie that no script and no other site can use", async () => {
    const host = await loopbackHost({ pageFolder: builtPage() });
    const address = host.entryAddress();
    const first = await fetch(address, { redirect: "manual" });
    expect(first.status).toBe(303);
    expect(first.headers.get("location")).toBe("/");
    expect(first.headers.get("set-cookie")).toMatch(/^roundwalk-\d+=[\w-]{43}; Path=\/; HttpOnly; SameSite=Strict$/);
    // Whoever closed the window comes back by the same address.
    expect((await fetch(address, { redirect: "manual" })).status).toBe(303);
    const guessed = await fetch(`${address.split("=")[0]}=${"A".repeat(43)}`, { redirect: "manual" });
    expect(guessed.status).toBe(403);
    expect(guessed.headers.get("set-cookie")).toBeNull();
    expect(await guessed.text()).toMatch(/earlier start/);
  });

  test("the page, the calls, the events and the films all ask for the token", async () => {
    const { port } = await loopbackHost({ pageFolder: builtPage() });
    for (const path of ["/", "/assets/app-1a2b.js", "/events", "/media/00000000-0000-4000-8000-000000000000", "/exports/x/y", "/nothing"]) {
      expect((await rawRequest(port, { path })).status, path).toBe(401);
    }
    const call = await rawRequest(port, {
      method: "POST",
      path: "/rpc/recording.list",
      body: "{}",
      headers: { "content-type": "application/json" },
    });
    expect(call.status).toBe(401);
    expect(JSON.parse(call.text)).toMatchObject({ ok: false, problem: { code: "token-missing" } });
    expect((await rawRequest(port, { method: "POST", path: "/files?name=a", body: "x" })).status).toBe(401);
  });

  test.for([
    { why: "a name that was made to point here", headers: (port: number) => ({ host: `rebound.example:${port}` }), status: 421 },
    { why: "the same machine by another name", headers: (port: number) => ({ host: `localhost:${port}` }), status: 421 },
    { why: "another port", headers: () => ({ host: "127.0.0.1:1" }), status: 421 },
    { why: "another site's page", headers: () => ({ origin: "https://other.example" }), status: 403 },
    { why: "another program's page on this machine", headers: (port: number) => ({ origin: `http://127.0.0.1:${port + 1}` }), status: 403 },
    { why: "our own address by https", headers: (port: number) => ({ origin: `https://127.0.0.1:${port}` }), status: 403 },
    { why: "a page without an origin, such as a file or a sandboxed frame", headers: () => ({ origin: "null" }), status: 403 },
    { why: "a link on another site", headers: () => ({ "sec-fetch-site": "cross-site" }), status: 403 },
    { why: "a page on another port of this machine", headers: () => ({ "sec-fetch-site": "same-site" }), status: 403 },
  ])("$why is refused in spite of the right cookie and the right token", async ({ headers, status }) => {
    const host = await loopbackHost({ pageFolder: builtPage() });
    const cookie = await enter(host.entryAddress());
    const own: Record<string, string> = { cookie, authorization: `Bearer ${host.token}`, "content-type": "application/json" };
    const foreign = Object.fromEntries(
      Object.entries(headers(host.port)).filter((pair): pair is [string, string] => pair[1] !== undefined),
    );
    const call = { method: "POST", path: "/rpc/recording.list", body: "{}" };
    expect((await rawRequest(host.port, { ...call, headers: { ...own, ...foreign } })).status).toBe(status);
    expect((await rawRequest(host.port, { path: "/", headers: { ...own, ...foreign } })).status).toBe(status);
    // The same request from our own page passes.
    expect(
      (await rawRequest(host.port, { ...call, headers: { ...own, origin: host.origin, "sec-fetch-site": "same-origin" } })).status,
    ).toBe(200);
  });

  test("a cookie alone, without the origin that every browser sends with a POST, does not make a call", async () => {
    const host = await loopbackHost({ pageFolder: builtPage() });
    const cookie = await enter(host.entryAddress());
    const call = { method: "POST", path: "/rpc/recording.list", body: "{}" };
    expect((await rawRequest(host.port, { ...call, headers: { cookie, "content-type": "application/json" } })).status).toBe(403);
    expect((await rawRequest(host.port, { path: "/", headers: { cookie } })).status).toBe(200);
  });

  test.for(["", "wrong", "Bearer", "Bearer wrong"])("the token %j is refused", async (authorization) => {
    const host = await loopbackHost({ pageFolder: builtPage() });
    expect((await rawRequest(host.port, { path: "/", headers: { authorization } })).status).toBe(401);
    expect((await rawRequest(host.port, { path: "/", headers: { cookie: `roundwalk-${host.port}=${authorization}` } })).status).toBe(401);
  });

  test("it listens on this machine's own address alone", async () => {
    const { port } = await loopbackHost({ pageFolder: builtPage() });
    // The rest of 127.0.0.0/8 is this machine too, and must not answer.
    const reached = await new Promise<string>((resolve) => {
      const socket = createConnection({ host: "127.0.0.2", port });
      socket.on("connect", () => {
        socket.destroy();
        resolve("answered");
      });
      socket.on("error", (failure) => resolve((failure as NodeJS.ErrnoException).code ?? "failed"));
    });
    expect(reached).not.toBe("answered");
  });
});

describe("what the loopback host answers", () => {
  test("every answer carries the content security policy, and none lets another site read it", async () => {
    const host = await loopbackHost({ pageFolder: builtPage() });
    const headers = { authorization: `Bearer ${host.token}` };
    const requests = [
      { path: "/", headers },
      { path: "/assets/app-1a2b.js", headers },
      { path: "/nothing", headers },
      { path: "/" },
      { path: "/rpc/recording.list", method: "POST", body: "{}", headers: { ...headers, "content-type": "application/json" } },
      { path: "/rpc/recording.list", method: "OPTIONS", headers: { ...headers, origin: "https://other.example" } },
    ];
    for (const request of requests) {
      const answer = await rawRequest(host.port, request);
      expect(answer.headers["content-security-policy"], request.path).toMatch(/^default-src 'none'; script-src 'self';/);
      expect(answer.headers["x-content-type-options"]).toBe("nosniff");
      expect(Object.keys(answer.headers).filter((name) => name.startsWith("access-control-"))).toEqual([]);
    }
  });

  test.for([
    "/../secret.txt",
    "/assets/../../secret.txt",
    "/%2e%2e/secret.txt",
    "/..%2fsecret.txt",
    "/assets/..%5c..%5csecret.txt",
    "//secret.txt",
    "/media/../../secret.txt",
    "/exports/..%2f..%2fsecret.txt/index-json",
    "/assets/app-1a2b.js%00.txt",
  ])("no address leads out of the page's folder: %s", async (path) => {
    const host = await loopbackHost({ pageFolder: builtPage() });
    const answer = await rawRequest(host.port, { path, headers: { authorization: `Bearer ${host.token}` } });
    expect(answer.status).toBe(404);
    expect(answer.text).not.toContain("not for the page");
  });

  test("calls are JSON by POST, and no longer than a megabyte", async () => {
    const host = await loopbackHost({ pageFolder: builtPage() });
    const headers = { authorization: `Bearer ${host.token}`, "content-type": "application/json" };
    const path = "/rpc/recording.list";
    expect((await rawRequest(host.port, { path, headers })).status).toBe(405);
    expect(
      (await rawRequest(host.port, { path, method: "POST", body: "{}", headers: { ...headers, "content-type": "text/plain" } })).status,
    ).toBe(415);
    expect((await rawRequest(host.port, { path, method: "POST", body: "{", headers })).status).toBe(400);
    const long = await rawRequest(host.port, { path, method: "POST", body: JSON.stringify("x".repeat(2 ** 20)), headers });
    expect([long.status, JSON.parse(long.text).problem.code]).toEqual([413, "input-too-long"]);
    const chunked = await rawRequest(host.port, {
      path,
      method: "POST",
      body: JSON.stringify("x".repeat(2 ** 20)),
      headers: { ...headers, "transfer-encoding": "chunked" },
    });
    expect(chunked.status).toBe(413);
    expect((await rawRequest(host.port, { path, method: "POST", body: "{}", headers })).status).toBe(200);
  });

  test("a page that is not built yet says so", async () => {
    const host = await loopbackHost({ pageFolder: join(temporaryFolder(), "nothing") });
    const answer = await rawRequest(host.port, { path: "/", headers: { authorization: `Bearer ${host.token}` } });
    expect(answer.status).toBe(503);
    expect(answer.text).toContain("npm run build");
  });

  test("files arrive whole, under a plain name, and are gone when the host closes", async () => {
    const host = await loopbackHost({ pageFolder: builtPage() });
    const { parts } = host.application;
    const answer = await rawRequest(host.port, {
      path: `/files?name=${encodeURIComponent("..\\..\\walk 1.txt")}`,
      method: "POST",
      body: "[0:00] hello",
      headers: { authorization: `Bearer ${host.token}` },
    });
    const { value } = JSON.parse(answer.text);
    expect(value).toMatchObject({ name: "walk 1.txt", bytes: 12 });
    const place = parts.files.find(value.id).path;
    expect(place.startsWith(join(parts.library.folder, ".roundwalk-incoming"))).toBe(true);
    parts.files.close();
    expect(readdirSync(parts.library.folder)).not.toContain(".roundwalk-incoming");
  });
});
