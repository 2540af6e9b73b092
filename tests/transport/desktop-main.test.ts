import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { runInNewContext } from "node:vm";
import { beforeAll, describe, expect, test } from "vitest";
import { freshDesktop, freshPage } from "../../electron/launch/build-parts.ts";
import { sampleTranscriptText } from "../support/builders/sample-analysis.ts";
import { temporaryFolder } from "../support/builders/temporary-folder.ts";
import { startStandIn } from "../support/electron-stand-in/start-stand-in.ts";

const root = join(import.meta.dirname, "..", "..");
const built = join(root, ".build", "desktop");

const ownVersion = JSON.parse(readFileSync(join(root, "package.json"), "utf8")).version as string;

/**
 * The built main process with a stand-in for Electron: that it finds its worker, its migrations and its page, and that the guards are set.
 * It is no proof of a window; that needs Electron's binary.
 */
describe("the desktop's built parts", () => {
  beforeAll(async () => {
    // The window shows the built page: without one the program says so and ends.
    await freshPage("error");
    await freshDesktop("error");
  }, 120_000);

  test("start, answer their own page alone, import through the worker thread, and end with the last window", {
    timeout: 60_000,
  }, async () => {
    const home = temporaryFolder();
    const libraryFile = join(home, "library.sqlite");
    const transcript = join(home, "walk.txt");
    writeFileSync(transcript, sampleTranscriptText);
    const heard = new Set<string>();
    const standIn = startStandIn({
      home,
      args: ["--library", libraryFile],
      hear: ({ channel, values }) => void heard.add(`${channel} ${values[0]}`),
    });
    await expect.poll(() => standIn.of("shown").length + Number(standIn.child.exitCode ?? 0), { timeout: 20_000 }).toBe(1);
    const { ask } = standIn;
    const own = { origin: "app://roundwalk", top: true };
    const call = (name: string, input: unknown, frame: unknown = own) =>
      ask("invoke", { channel: "roundwalk:call", values: [name, input], frame });

    expect(await ask("schemes")).toEqual([
      { scheme: "app", privileges: { standard: true, secure: true, supportFetchAPI: true, stream: true } },
    ]);
    expect(standIn.of<{ options: { webPreferences: object } }>("window")[0]?.options.webPreferences).toMatchObject({
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      webSecurity: true,
      allowRunningInsecureContent: false,
      experimentalFeatures: false,
      webviewTag: false,
      preload: join(built, "preload.cjs"),
    });
    expect((await ask("fetch", { url: "app://roundwalk/" })).headers["content-security-policy"]).toMatch(/^default-src 'none'/);
    expect((await ask("fetch", { url: "app://other/" })).status).toBe(404);
    expect((await ask("fetch", { url: "app://roundwalk/..%2f..%2fpackage.json" })).status).toBe(404);
    expect(await call("host.abilities", {})).toMatchObject({
      ok: true,
      value: { host: "desktop", version: ownVersion, revealFiles: true, libraryFile },
    });
    for (const frame of [null, { origin: "https://other.example", top: true }, { origin: "app://roundwalk", top: false }]) {
      for (const channel of await ask("handled")) {
        expect(await ask("invoke", { channel, values: ["host.abilities", {}], frame })).toMatchObject({
          problem: { code: "sender-foreign" },
        });
      }
    }
    const offered = await ask("invoke", { channel: "roundwalk:offer-file", values: [transcript], frame: own });
    const vehicle = { name: "Fallow Kestrel", year: 1971, bodyStyle: "coupe", drive: "left-hand" };
    const files = { transcript: offered.value.id, video: null, stockSheet: null };
    const imported = await call("recording.import", { ...files, title: "Stand-in", stockNumber: "S-1", vehicle });
    expect(imported).toMatchObject({ ok: true, value: { title: "Stand-in", counts: { captions: 7 } } });
    // Two rear tire sizes are said in the sample: the worker's analysis ran, and found them.
    expect(imported.value.counts.claims).toBeGreaterThan(0);
    expect(imported.value.counts.conflicts).toBeGreaterThan(0);
    expect((await ask("fetch", { url: `app://roundwalk/media/${imported.value.id}` })).status).toBe(404);
    expect([...heard]).toEqual(expect.arrayContaining(["roundwalk:event analysis.progress", "roundwalk:event library.changed"]));
    await ask("close-window");
    expect(await standIn.ended).toBe(0);
    expect(standIn.of("fault")).toEqual([]);
  });

  test("the preload is one CommonJS file that needs Electron alone and gives the page functions, never ipcRenderer", () => {
    const source = readFileSync(join(built, "preload.cjs"), "utf8");
    const required: string[] = [];
    const exposed: Record<string, Record<string, unknown>> = {};
    let send: (...values: unknown[]) => void = () => {};
    const electron = {
      contextBridge: { exposeInMainWorld: (name: string, value: Record<string, unknown>) => Object.assign(exposed, { [name]: value }) },
      ipcRenderer: {
        invoke: async (...values: unknown[]) => values,
        on: (_channel: string, listener: (...values: unknown[]) => void) => {
          send = listener;
        },
      },
      webUtils: { getPathForFile: () => "/walk.txt" },
    };
    const require = (name: string) => {
      required.push(name);
      return electron;
    };
    runInNewContext(source, { require, module: { exports: {} }, exports: {} });
    expect(required).toEqual(["electron"]);
    expect(Object.keys(exposed)).toEqual(["roundwalk"]);
    expect(Object.entries(exposed.roundwalk ?? {}).map(([name, value]) => [name, typeof value])).toEqual([
      ["call", "function"],
      ["on", "function"],
      ["offerFile", "function"],
      ["mediaUrl", "function"],
    ]);
    // Electron's event leads back to ipcRenderer by its sender: the page's listeners are given the payload alone.
    const heard: unknown[][] = [];
    const on = exposed.roundwalk?.on as (name: string, listener: (...values: unknown[]) => void) => unknown;
    on("library.changed", (...values) => heard.push(values));
    send({ sender: electron.ipcRenderer }, "library.changed", { reason: "import" });
    send({ sender: electron.ipcRenderer }, "another", {});
    expect(heard).toEqual([[{ reason: "import" }]]);
  });
});
