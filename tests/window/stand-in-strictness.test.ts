import { execFile } from "node:child_process";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { promisify } from "node:util";
import { describe, expect, test } from "vitest";
import { temporaryFolder } from "../support/builders/temporary-folder.ts";

const schemeStandIn = pathToFileURL(join(import.meta.dirname, "..", "support", "electron-stand-in", "scheme-stand-in.ts")).href;

/** Runs lines under the stand-in, in a process of their own, and gives what they print. */
async function under(lines: string, env: Record<string, string> = {}): Promise<string> {
  const register = join(import.meta.dirname, "..", "support", "electron-stand-in", "register.mjs");
  const head = `import * as electron from "electron";
    const { app, BrowserWindow, protocol, session, screen, dialog, Menu, clipboard, ipcMain, shell } = electron;
    const tried = async (work) => { try { await work(); return "allowed"; } catch (failure) { return failure.message; } };
    const safe = { sandbox: true, contextIsolation: true };
    const guarded = () => app.on("web-contents-created", (_, contents) => contents.setWindowOpenHandler(() => ({ action: "deny" })));`;
  const { stdout } = await promisify(execFile)(
    process.execPath,
    ["--import", register, "--input-type=module", "-e", `${head}\n${lines}\nprocess.exit(0);`],
    {
      env: { ...process.env, ROUNDWALK_STAND_IN_HOME: temporaryFolder(), ...env },
    },
  );
  return stdout.trim();
}

describe("the stand-in for Electron", () => {
  test.for([
    { work: "new BrowserWindow({ webPreferences: safe })", why: "a window" },
    { work: 'protocol.handle("app", () => new Response())', why: "a scheme's handler" },
    { work: "session.defaultSession", why: "the session" },
    { work: 'session.fromPartition("x")', why: "a session of its own" },
    { work: "screen.getAllDisplays()", why: "the screens" },
    { work: 'dialog.showMessageBox({ message: "x", buttons: ["y"] })', why: "a dialog" },
    { work: "Menu.setApplicationMenu(Menu.buildFromTemplate([]))", why: "the menu" },
    { work: 'clipboard.writeText("x")', why: "the clipboard" },
  ])("gives no $why before it is ready", async ({ work }) => {
    expect(await under(`console.log(await tried(() => ${work}));`)).toMatch(/only be used after the app is ready/);
  });

  test.for([
    { work: "protocol.registerSchemesAsPrivileged([])", says: /before app is ready/, why: "a scheme declared late" },
    {
      work: "new BrowserWindow({ webPreferences: { ...safe, sandbox: false } })",
      says: /sandbox must be on/,
      why: "a window without its sandbox",
    },
    {
      work: "new BrowserWindow({ webPreferences: { ...safe, nodeIntegration: true } })",
      says: /nodeIntegration must be off/,
      why: "Node in the page",
    },
    {
      work: "new BrowserWindow({ webPreferences: { ...safe, enableBlinkFeatures: 'X' } })",
      says: /enableBlinkFeatures/,
      why: "an option that nobody knows",
    },
    {
      work: "new BrowserWindow({ webPreferences: { ...safe, preload: '/nowhere.cjs' } })",
      says: /no preload/,
      why: "a preload that is not there",
    },
    { work: "new BrowserWindow({ webPreferences: safe })", says: /may open others/, why: "a window that may open windows" },
    { work: "new BrowserWindow({ x: 0.5, webPreferences: safe })", says: /whole numbers/, why: "half a point" },
    {
      work: "new BrowserWindow({ frame: false, webPreferences: safe })",
      says: /no option frame/,
      why: "a window's option that nobody knows",
    },
    { work: "app.requestSingleInstanceLock()", says: /too late/, why: "a lock that is asked for when it is ready" },
    { work: 'app.setAsDefaultProtocolClient("roundwalk")', says: /installed/, why: "a scheme of a program that is not installed" },
    { work: "app.setBadgeCount(1)", says: /not in the stand-in/, why: "what it does not have" },
    { work: 'shell.openExternal("file:///etc/passwd")', says: /Only https/, why: "anything but https to be opened" },
    { work: 'ipcMain.handle("a", () => {}); ipcMain.handle("a", () => {})', says: /second handler/, why: "two handlers of one name" },
    {
      work: 'dialog.showMessageBox({ message: "x", buttons: ["y"], cancelId: 3 })',
      says: /no button 3/,
      why: "a button that is not there",
    },
    {
      work: 'dialog.showOpenDialog({ properties: ["openFile", "openDirectory"] })',
      says: /files or folders, never both/,
      why: "a dialog for files and folders at once",
    },
    { work: 'dialog.showOpenDialog({ filters: [{ name: "x", extensions: [".vtt"] }] })', says: /filter/, why: "an ending with its dot" },
    { work: 'Menu.buildFromTemplate([{ label: "x", role: "format" }])', says: /no menu role/, why: "a role that is none" },
    { work: 'Menu.buildFromTemplate([{ role: "appMenu" }])', says: /macOS's alone/, why: "a role of another system" },
    { work: 'Menu.buildFromTemplate([{ role: "copy", click() {} }])', says: /never called/, why: "a role with a click of its own" },
    { work: 'Menu.buildFromTemplate([{ label: "" }])', says: /label or a role/, why: "an entry without a name" },
    {
      work: 'Menu.buildFromTemplate([{ label: "x", accelerator: "Strg+X", click() {} }])',
      says: /no accelerator/,
      why: "keys that are none",
    },
  ])("refuses $why", async ({ work, says }) => {
    expect(
      await under(`await app.whenReady(); console.log(await tried(() => { ${work.includes(";") ? work : `return ${work}`} }));`),
    ).toMatch(says);
  });

  test("keeps what a window's page is sent to what can be cloned, and a window that is gone is gone", async () => {
    const said = await under(`guarded(); await app.whenReady();
      const window = new BrowserWindow({ webPreferences: safe });
      console.log(await tried(() => window.webContents.send("x", () => {})));
      window.destroy();
      console.log(await tried(() => window.webContents.send("x", 1)));
      console.log(await tried(() => window.show()));`);
    expect(said).toMatch(/could not be cloned\.\nObject has been destroyed\nObject has been destroyed$/);
  });

  test.for(["standard", "secure", "supportFetchAPI", "stream"])("handles no scheme that is not %s", async (missing) => {
    const said = await under(`guarded();
      const privileges = { standard: true, secure: true, supportFetchAPI: true, stream: true };
      delete privileges.${missing};
      protocol.registerSchemesAsPrivileged([{ scheme: "app", privileges }]);
      await app.whenReady();
      console.log(await tried(() => protocol.handle("app", () => new Response("x"))));`);
    expect(said).toBe(`The scheme app lacks the privilege ${missing}`);
  });

  test("brings files and links before it is ready, and tells when nobody takes them", async () => {
    const early = JSON.stringify([{ event: "open-file", value: "/walk.vtt" }]);
    const said = (take: string) =>
      under(
        `app.on("open-file", (event, path) => { console.log(app.isReady(), path); ${take} }); await app.whenReady(); console.log(app.isReady());`,
        { ROUNDWALK_STAND_IN_EARLY: early },
      );
    expect(await said("event.preventDefault();")).toBe("false /walk.vtt\ntrue");
  });

  test("gives a scheme's handler a request that nothing aborts, and destroys the reply's stream as the page goes", async () => {
    const said = await under(`guarded();
      protocol.registerSchemesAsPrivileged([{ scheme: "app", privileges: { standard: true, secure: true, supportFetchAPI: true, stream: true } }]);
      await app.whenReady();
      const seen = [];
      protocol.handle("app", (request) => {
        request.signal.addEventListener("abort", () => seen.push("aborted"));
        return new Response(new ReadableStream({ pull: (to) => to.enqueue(new Uint8Array(100000)), cancel: () => void seen.push("cancelled") }));
      });
      const { serveToBrowser } = await import(${JSON.stringify(schemeStandIn)});
      const origin = await serveToBrowser("app", "x");
      const port = new URL(origin).port;
      const { get } = await import("node:http");
      await new Promise((gone) => get({ host: "127.0.0.1", port, path: "/" }, (reply) => reply.once("data", () => { reply.destroy(); gone(); })));
      for (let round = 0; round < 100 && seen.length === 0; round++) await new Promise((next) => setTimeout(next, 20));
      console.log(seen.join());`);
    expect(said).toBe("cancelled");
  });

  test("ends with the last window, also one that was never shown", async () => {
    const said = await under(`guarded(); app.on("window-all-closed", () => console.log("all closed")); await app.whenReady();
      const [first, hidden] = [true, false].map((show) => new BrowserWindow({ show, webPreferences: safe }));
      first.close(); console.log("one left"); hidden.destroy();`);
    expect(said).toBe("one left\nall closed");
  });

  test("refuses a scheme that bypasses the policy, and one declared twice", async () => {
    const said =
      await under(`const declare = (privileges) => tried(() => protocol.registerSchemesAsPrivileged([{ scheme: "app", privileges }]));
      console.log(await declare({ bypassCSP: true })); console.log(await declare({})); console.log(await declare({}));`);
    expect(said).toMatch(/bypasses.*\nallowed\n.*only once$/);
  });
});
