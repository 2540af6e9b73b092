import { afterEach, expect, test, vi } from "vitest";
import { bridgeClient } from "../../renderer/client/bridge-client.ts";
import { type Client, ProblemError, problemOf } from "../../renderer/client/client.ts";
import { httpClient } from "../../renderer/client/http-client.ts";
import type { HostBridge, Reply } from "../../shared-types/index.ts";

afterEach(() => vi.unstubAllGlobals());

const offered = { id: "0b6a5c1e-8f57-4a55-9d2c-2f6f0f9c3e01", name: "walk.srt", bytes: 12 };

/** The client over each way, with a host that gives one answer to everything. */
const ways: { way: string; over: (reply: unknown) => Client }[] = [
  {
    way: "HTTP",
    over: (reply) => {
      vi.stubGlobal("fetch", async () => Response.json(reply));
      return httpClient();
    },
  },
  {
    way: "the bridge",
    over: (reply) => {
      const bridge: HostBridge<File> = {
        call: async () => reply as Reply,
        on: () => () => {},
        offerFile: async () => reply as Reply<typeof offered>,
        mediaUrl: (id) => `/media/${id}`,
      };
      return bridgeClient(bridge);
    },
  },
];

test.for(ways)("over $way a value comes through", async ({ over }) => {
  expect(await over({ ok: true, value: { initials: "MB" } }).call("settings.get", {})).toEqual({ initials: "MB" });
});

test.for(ways)("over $way a problem is thrown with file and line", async ({ over }) => {
  const problem = { code: "transcript-invalid", message: "walk.srt, line 2: …", file: "walk.srt", line: 2 };
  const call = over({ ok: false, problem }).call("settings.get", {});
  await expect(call).rejects.toBeInstanceOf(ProblemError);
  expect(problemOf(await call.catch((thrown: unknown) => thrown))).toEqual(problem);
});

test.for(ways)("over $way an answer in no known form is a problem, not a crash", async ({ over }) => {
  await expect(over({ value: 1 }).call("settings.get", {})).rejects.toMatchObject({ problem: { code: "reply-unreadable" } });
});

test.for(ways)("over $way a file is offered", async ({ over }) => {
  expect(await over({ ok: true, value: offered }).offerFile(new File(["1"], "walk.srt"))).toEqual(offered);
});

test("a host that is gone says what to do", async () => {
  vi.stubGlobal("fetch", async () => {
    throw new TypeError("Failed to fetch");
  });
  await expect(httpClient().call("settings.get", {})).rejects.toMatchObject({ problem: { code: "host-unreachable" } });
});

test("an answer that is no JSON names its status", async () => {
  vi.stubGlobal("fetch", async () => new Response("Forbidden", { status: 403 }));
  await expect(httpClient().call("settings.get", {})).rejects.toMatchObject({ problem: { message: expect.stringContaining("403") } });
});

test("the name of an offered file survives its address", async () => {
  const asked: string[] = [];
  vi.stubGlobal("fetch", async (url: string) => {
    asked.push(url);
    return Response.json({ ok: true, value: offered });
  });
  await httpClient().offerFile(new File(["1"], "walk & talk #2.srt"));
  expect(new URL(asked[0] ?? "", "http://127.0.0.1").searchParams.get("name")).toBe("walk & talk #2.srt");
});

test("events that the contract does not know are not passed on", () => {
  let tell: (payload: unknown) => void = () => {};
  const bridge: HostBridge<File> = {
    call: async () => ({ ok: true, value: null }),
    on: (_, listener) => {
      tell = listener;
      return () => {};
    },
    offerFile: async () => ({ ok: true, value: offered }),
    mediaUrl: (id) => id,
  };
  const heard: unknown[] = [];
  bridgeClient(bridge).on("library.changed", (payload) => heard.push(payload));
  tell({ recordingId: 7 });
  tell({ recordingId: null });
  expect(heard).toEqual([{ recordingId: null }]);
});
