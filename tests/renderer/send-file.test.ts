import { afterEach, expect, test, vi } from "vitest";
import { sendFile } from "../../renderer/client/send-file.ts";

/** A request that fails on its way, as it does for a file that is gone and for a host that is. */
class FailingRequest {
  upload = {};
  onerror = () => {};
  onloadend = () => {};
  open = () => {};
  setRequestHeader = () => {};
  abort = () => {};
  send() {
    this.onerror();
    this.onloadend();
  }
}

afterEach(() => vi.unstubAllGlobals());

const watch = () => ({ signal: new AbortController().signal, onSent: () => {} });

test("a file that the browser can no longer read is told apart from a host that is away", async () => {
  vi.stubGlobal("XMLHttpRequest", FailingRequest);
  const file = new File(["WEBVTT"], "walk.vtt");
  await expect(sendFile(file, watch())).rejects.toMatchObject({ problem: { code: "file-not-sent", file: "walk.vtt" } });
  const gone = new File(["WEBVTT"], "walk.vtt");
  gone.slice = () => ({ arrayBuffer: () => Promise.reject(new DOMException("gone", "NotReadableError")) }) as unknown as Blob;
  await expect(sendFile(gone, watch())).rejects.toMatchObject({
    problem: { code: "file-unreadable", message: expect.stringMatching(/no longer read it.*“Other files…”/) },
  });
});
