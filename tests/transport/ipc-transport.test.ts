import { describe, expect, test, vi } from "vitest";
import { ipcChannels } from "../../electron/transport/ipc-channels.ts";
import { serveIpc } from "../../electron/transport/ipc-transport.ts";
import { createBridge } from "../../electron/transport/preload-bridge.ts";
import type { HostEvent } from "../../shared-types/index.ts";
import { pairedIpc } from "./paired-ipc.ts";

const own = "app://roundwalk";
const file = { id: "5d2f7c1e-8f57-4a55-9d2c-2f6f0f9c3e01", name: "walk.txt", bytes: 3 };

function ground() {
  const ends = pairedIpc(own);
  const dispatch = vi.fn(async (_: unknown, input: unknown) => ({ ok: true as const, value: input }));
  let tell: (event: HostEvent) => void = () => {};
  const offerPath = vi.fn(() => file);
  const stop = serveIpc({
    ipc: ends.main,
    origin: own,
    dispatch,
    subscribe: (listener) => {
      tell = listener;
      return () => {
        tell = () => {};
      };
    },
    offerPath,
    pages: () => [ends.webContents],
    log: () => {},
  });
  const bridge = createBridge<{ path: string }>(ends.page, ({ path }) => path);
  return { ...ends, dispatch, offerPath, stop, bridge, tell: (event: HostEvent) => tell(event) };
}

describe("who may talk to the desktop's main process", () => {
  test.for([
    { why: "a frame that has navigated or gone", senderFrame: null },
    { why: "another origin", senderFrame: { origin: "https://other.example", parent: null } },
    { why: "a file", senderFrame: { origin: "file://", parent: null } },
    { why: "a name that only begins like ours", senderFrame: { origin: "app://roundwalk.example", parent: null } },
    { why: "a frame within our page", senderFrame: { origin: own, parent: {} } },
  ])("$why is refused, with an answer and not with silence", async ({ senderFrame }) => {
    const { bridge, sender, dispatch, offerPath } = ground();
    sender.event = { senderFrame };
    expect(await bridge.call("recording.list", {})).toMatchObject({ ok: false, problem: { code: "sender-foreign" } });
    expect(await bridge.offerFile({ path: "/etc/passwd" })).toMatchObject({ ok: false, problem: { code: "sender-foreign" } });
    expect(dispatch).not.toHaveBeenCalled();
    expect(offerPath).not.toHaveBeenCalled();
  });

  test("our own page's top frame is answered", async () => {
    const { bridge } = ground();
    expect(await bridge.call("recording.list", {})).toEqual({ ok: true, value: {} });
    expect(await bridge.offerFile({ path: "/walk.txt" })).toEqual({ ok: true, value: file });
  });

  test("values arrive as HTTP would bring them: what is no JSON does not come through", async () => {
    const { bridge } = ground();
    expect(await bridge.call("x", { at: new Date(0), none: undefined, some: new Map([[1, 2]]), no: Number.NaN })).toEqual({
      ok: true,
      value: { at: "1970-01-01T00:00:00.000Z", some: {}, no: null },
    });
  });

  test("a file without a path is refused with what to do", async () => {
    const { bridge } = ground();
    expect(await bridge.offerFile({ path: "" })).toMatchObject({
      ok: false,
      problem: { code: "file-without-path", message: expect.stringContaining("Save it") },
    });
  });

  test("events reach every listener until it stops, and no page that has gone", () => {
    const { bridge, tell, sender } = ground();
    const heard: unknown[] = [];
    const stop = bridge.on("library.changed", (payload) => heard.push(payload));
    bridge.on("analysis.progress", (payload) => heard.push(payload));
    tell({ name: "library.changed", payload: { recordingId: null } });
    stop();
    tell({ name: "library.changed", payload: { recordingId: null } });
    expect(heard).toEqual([{ recordingId: null }]);
    sender.destroyed = true;
    expect(() => tell({ name: "library.changed", payload: { recordingId: null } })).not.toThrow();
  });

  test("once stopped, nothing is answered, and it can be served again", async () => {
    const { bridge, stop, main } = ground();
    stop();
    await expect(bridge.call("recording.list", {})).rejects.toThrow("No handler registered");
    expect(() => main.handle(ipcChannels.call, () => null)).not.toThrow();
  });
});
