import { readdirSync } from "node:fs";
import { tmpdir } from "node:os";
import { beforeEach, expect, test, vi } from "vitest";
import { shellTexts } from "../../electron/window/shell-texts.ts";

/** What the stand-in for Electron was asked for; the real window is opened where Electron's program can be had. */
const seen = vi.hoisted(() => ({
  windows: [] as { options: Record<string, unknown>; destroyed: boolean; printed: Record<string, unknown>[]; page: string }[],
  cancelled: [] as [string, boolean][],
  partitions: [] as string[],
  judge: (_details: { url: string }, _answer: (verdict: { cancel: boolean }) => void): void => {},
  /** Tells the window that its page has ended. */
  gone: (_details: { reason: string }): void => {},
}));

vi.mock("electron", async () => {
  const { readFileSync } = await import("node:fs");
  const { join } = await import("node:path");
  const { pathToFileURL } = await import("node:url");
  return {
    session: {
      fromPartition: (name: string) => {
        seen.partitions.push(name);
        return {
          setPermissionRequestHandler: () => {},
          webRequest: {
            onBeforeRequest: (listener: typeof seen.judge) => {
              seen.judge = listener;
            },
          },
        };
      },
    },
    BrowserWindow: class {
      readonly record;
      readonly webContents;
      constructor(options: Record<string, unknown>) {
        this.record = { options, destroyed: false, printed: [] as Record<string, unknown>[], page: "" };
        const { record } = this;
        seen.windows.push(record);
        this.webContents = {
          once: (_name: string, listener: (event: object, details: { reason: string }) => void) => {
            seen.gone = (details) => listener({}, details);
          },
          printToPDF: async (wanted: Record<string, unknown>) => {
            record.printed.push(wanted);
            await new Promise((done) => setTimeout(done, 30));
            // Nobody answers for a window that has gone.
            if (record.destroyed) await new Promise(() => {});
            return Buffer.from("%PDF-1.4");
          },
        };
      }
      async loadFile(file: string) {
        this.record.page = readFileSync(file, "utf8");
        const beside = pathToFileURL(join(file, "..", "other.html")).href;
        for (const url of [
          pathToFileURL(file).href,
          "data:image/png;base64,AA==",
          beside,
          "file:///etc/passwd",
          "https://example.invalid/x",
          "http://127.0.0.1:1/",
        ])
          seen.judge({ url }, ({ cancel }) => seen.cancelled.push([url, cancel]));
      }
      isDestroyed() {
        return this.record.destroyed;
      }
      destroy() {
        this.record.destroyed = true;
      }
    },
  };
});

const { createWindowPrinter } = await import("../../electron/window/print-window.ts");
const left = () => readdirSync(tmpdir()).filter((name) => name.startsWith("roundwalk-print-")).length;

beforeEach(() => {
  seen.windows.length = 0;
  seen.cancelled.length = 0;
});

test("a page is printed in a hidden window that runs nothing and reaches nothing, on the paper that was asked for", async () => {
  const before = left();
  const pdf = await createWindowPrinter(shellTexts.print).print("<p>page</p>", "a4", new AbortController().signal);
  expect(Buffer.from(pdf).toString()).toBe("%PDF-1.4");
  const [window] = seen.windows;
  expect(window).toMatchObject({
    page: "<p>page</p>",
    destroyed: true,
    options: { show: false, webPreferences: { sandbox: true, contextIsolation: true, nodeIntegration: false, javascript: false } },
    printed: [{ pageSize: "A4", printBackground: true, generateTaggedPDF: true }],
  });
  expect(seen.cancelled.map(([, cancel]) => cancel)).toEqual([false, false, true, true, true, true]);
  // Without "persist:" a session is kept in memory alone.
  expect(seen.partitions.every((name) => !name.startsWith("persist:"))).toBe(true);
  expect(left()).toBe(before);
});

test("ended half way, the window is gone and so is the page it printed from", async () => {
  const before = left();
  const control = new AbortController();
  const printing = createWindowPrinter(shellTexts.print).print("<p>page</p>", "letter", control.signal);
  setTimeout(() => control.abort(), 10);
  await expect(printing).rejects.toThrow();
  expect(seen.windows[0]).toMatchObject({ destroyed: true });
  expect(left()).toBe(before);
});

test("a page that crashes while it is printed is told, and its window goes", async () => {
  const before = left();
  const printing = createWindowPrinter(shellTexts.print).print("<p>page</p>", "letter", new AbortController().signal);
  setTimeout(() => seen.gone({ reason: "crashed" }), 10);
  await expect(printing).rejects.toThrow(/stopped \(crashed\)/);
  expect(seen.windows[0]).toMatchObject({ destroyed: true });
  expect(left()).toBe(before);
});

test("ended before it began, no window is opened", async () => {
  await expect(createWindowPrinter(shellTexts.print).print("<p>page</p>", "letter", AbortSignal.abort())).rejects.toThrow();
  expect(seen.windows).toHaveLength(0);
});
