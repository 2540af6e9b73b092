import { type ChildProcess, spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { test as base, type Page } from "@playwright/test";
import { letReadClipboard, openElectronDesk } from "./electron-desk.ts";
import { demoAnalysed } from "./page-powers.ts";
import { openStandInDesk } from "./stand-in-desk.ts";

const root = fileURLToPath(new URL("../../..", import.meta.url));

export interface RunningHost {
  /** Opens the page; the address lets the browser in. */
  readonly address: string;
  /** The folder of its library, with media/ and exports/ inside. */
  readonly folder: string;
  /** Ends it and starts it again over the same library. */
  readonly restart: () => Promise<RunningHost>;
}

/** The host prints PDFs with the browser that the journeys run in, wherever that came from. */
const printing = process.env.ROUNDWALK_BROWSER ? { CHROME_PATH: process.env.ROUNDWALK_BROWSER } : {};

interface StartedHost {
  readonly process: ChildProcess;
  readonly address: string;
  /** All it has printed so far. */
  readonly said: () => string;
}

async function startHost(folder: string, args: readonly string[]): Promise<StartedHost> {
  const child = spawn(
    process.execPath,
    [join(root, "electron/run.mjs"), "start", "--host", "browser", "--no-open", "--library", join(folder, "library.sqlite"), ...args],
    // A group of its own: the guard starts the host as a child, and both must end with the test.
    { stdio: ["ignore", "pipe", "pipe"], detached: true, env: { ...process.env, ...printing, INIT_CWD: folder } },
  );
  let said = "";
  const address = await new Promise<string>((found, failed) => {
    const listen = (chunk: Buffer) => {
      said += chunk.toString();
      const [url] = said.match(/http:\/\/127\.0\.0\.1:\d+\/\S*/) ?? [];
      if (url) found(url);
    };
    child.stdout.on("data", listen);
    child.stderr.on("data", listen);
    child.on("exit", (code) => failed(new Error(`The host ended with ${code} before it printed its address:\n${said}`)));
  });
  return { process: child, address, said: () => said };
}

async function endHost(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null) return;
  const gone = new Promise((done) => child.once("exit", done));
  process.kill(-child.pid!, "SIGTERM");
  await gone;
}

export interface HostOptions {
  /** False leaves the new library empty. */
  withDemo: boolean;
  /**
   * What shows the page: a browser, over the loopback host; the built desktop over the stand-in for Electron; or Electron's own window.
   * The last two are for journeys that need nothing but `desk` and the library's folder.
   */
  shownBy: "browser" | "stand-in" | "window";
}

/** A host of its own for each test, over a library of its own, and a page that has been let in. */
export const test = base.extend<HostOptions & { host: RunningHost; desk: Page }>({
  withDemo: [true, { option: true }],
  shownBy: ["browser", { option: true }],
  host: async ({ withDemo, shownBy }, use, testInfo) => {
    const folder = mkdtempSync(join(tmpdir(), "roundwalk-e2e-"));
    if (shownBy !== "browser") {
      const restart = () => Promise.reject(new Error("Only the loopback host is started again by a journey"));
      await use({ address: "app://roundwalk/", folder, restart });
      rmSync(folder, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
      return;
    }
    const args = withDemo ? [] : ["--no-demo"];
    let running = await startHost(folder, args);
    const state = (): RunningHost => ({
      address: running.address,
      folder,
      restart: async () => {
        await endHost(running.process);
        running = await startHost(folder, args);
        return state();
      },
    });
    await use(state());
    await endHost(running.process);
    await testInfo.attach("host.log", { body: running.said(), contentType: "text/plain" });
    rmSync(folder, { recursive: true, force: true });
  },
  desk: async ({ host, page, withDemo, shownBy }, use, testInfo) => {
    const args = ["--library", join(host.folder, "library.sqlite"), ...(withDemo ? [] : ["--no-demo"])];
    if (shownBy === "stand-in") {
      const { standIn, complaints, quit } = await openStandInDesk(page, { home: host.folder, args });
      if (withDemo) await demoAnalysed(page);
      await use(page);
      // What the page says of a host that has gone before it is no fault of its own: Electron's page goes with it.
      const said = [...complaints];
      const code = await quit();
      await testInfo.attach("desktop.log", { body: standIn.output(), contentType: "text/plain" });
      const faults = [...standIn.of("fault"), ...standIn.of("error-box")];
      base.expect({ code, faults, complaints: said }).toEqual({ code: 0, faults: [], complaints: [] });
      return;
    }
    if (shownBy === "window") {
      const opened = await openElectronDesk(host.folder, args);
      const { application, page: window, complaints } = opened;
      await letReadClipboard(opened);
      await window.setViewportSize({ width: 1440, height: 900 });
      if (withDemo) await demoAnalysed(window);
      await use(window);
      await application.close();
      base.expect(complaints).toEqual([]);
      return;
    }
    const complaints: string[] = [];
    page.on("pageerror", (error) => complaints.push(error.message));
    page.on("console", (message) => {
      // A host that a test ends and starts again is away for a moment; that is no fault of the page.
      const hostAway = /net::ERR_(?:CONNECTION_REFUSED|CONNECTION_RESET|INCOMPLETE_CHUNKED_ENCODING|EMPTY_RESPONSE)/.test(message.text());
      if (message.type() === "error" && !hostAway) complaints.push(message.text());
    });
    await page.goto(host.address);
    await use(page);
    // An error nobody sees in the page (a refused style, a failed script) is still an error.
    base.expect(complaints).toEqual([]);
  },
});

export { expect } from "@playwright/test";
