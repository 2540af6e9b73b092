import { execFile } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { promisify } from "node:util";
import { runInNewContext } from "node:vm";
import { beforeAll, describe, expect, test } from "vitest";
import { buildDesktop } from "../../electron/launch/build-parts.ts";
import { sampleTranscriptText } from "../support/builders/sample-analysis.ts";
import { temporaryFolder } from "../support/builders/temporary-folder.ts";

const root = join(import.meta.dirname, "..", "..");
const built = join(root, ".build", "desktop");

const ownVersion = JSON.parse(readFileSync(join(root, "package.json"), "utf8")).version as string;

/**
 * The built main process with a stand-in for Electron: that it finds its worker, its migrations and its page, and that the guards are set.
 * It is no proof of a window; that needs Electron's binary.
 */
describe("the desktop's built parts", () => {
  beforeAll(() => buildDesktop("error"), 60_000);

  test("start, answer their own page alone, import through the worker thread, and end with the last window", {
    timeout: 60_000,
  }, async () => {
    const folder = temporaryFolder();
    const transcript = join(folder, "walk.txt");
    writeFileSync(transcript, sampleTranscriptText);
    const { stdout } = await promisify(execFile)(
      process.execPath,
      [
        "--import",
        join(root, "tests", "support", "electron-stand-in", "register.mjs"),
        join(built, "main.mjs"),
        "--library",
        join(folder, "library.sqlite"),
      ],
      { env: { ...process.env, ROUNDWALK_STAND_IN_TRANSCRIPT: transcript }, timeout: 50_000 },
    );
    const [answers, end] = stdout
      .trim()
      .split("\n")
      .map((line) => JSON.parse(line));
    expect(answers).toMatchObject({
      schemes: [{ scheme: "app", privileges: { standard: true, secure: true, supportFetchAPI: true, stream: true } }],
      webPreferences: {
        contextIsolation: true,
        sandbox: true,
        nodeIntegration: false,
        webviewTag: false,
        preload: join(built, "preload.cjs"),
      },
      page: { policy: expect.stringMatching(/^default-src 'none'/) },
      otherHost: 404,
      abilities: {
        ok: true,
        value: { host: "desktop", version: ownVersion, revealFiles: true, libraryFile: join(folder, "library.sqlite") },
      },
      foreign: { ok: false, problem: { code: "sender-foreign" } },
      navigation: { own: "allowed", other: "stopped", file: "stopped" },
      popup: { action: "deny" },
      permissions: { camera: false, fullscreen: true },
      imported: { ok: true, value: { title: "Stand-in", counts: { captions: 7 } } },
      media: 404,
      events: expect.arrayContaining(["roundwalk:event analysis.progress", "roundwalk:event library.changed"]),
    });
    expect(answers.schemes[0].privileges.bypassCSP).toBeUndefined();
    // Two rear tire sizes are said in the sample: the worker's analysis ran, and found them.
    expect(answers.imported.value.counts.claims).toBeGreaterThan(0);
    expect(answers.imported.value.counts.conflicts).toBeGreaterThan(0);
    expect(end).toEqual({ ended: true });
  });

  test("the preload is one CommonJS file that needs Electron alone and gives the page functions, never ipcRenderer", () => {
    const source = readFileSync(join(built, "preload.cjs"), "utf8");
    const required: string[] = [];
    const exposed: Record<string, Record<string, unknown>> = {};
    const electron = {
      contextBridge: { exposeInMainWorld: (name: string, value: Record<string, unknown>) => Object.assign(exposed, { [name]: value }) },
      ipcRenderer: { invoke: async (...values: unknown[]) => values, on: () => {} },
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
  });
});
