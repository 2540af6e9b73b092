import { execFile } from "node:child_process";
import { join } from "node:path";
import { promisify } from "node:util";
import { describe, expect, test } from "vitest";
import { temporaryFolder } from "../support/builders/temporary-folder.ts";

/** Runs lines under the stand-in, in a process of their own, and gives what they print. */
async function under(lines: string): Promise<string> {
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
      env: { ...process.env, ROUNDWALK_STAND_IN_HOME: temporaryFolder() },
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
    { work: "app.setBadgeCount(1)", says: /not in the stand-in/, why: "what it does not have" },
    { work: 'shell.openExternal("file:///etc/passwd")', says: /Only https/, why: "anything but https to be opened" },
    { work: 'ipcMain.handle("a", () => {}); ipcMain.handle("a", () => {})', says: /second handler/, why: "two handlers of one name" },
    {
      work: 'dialog.showMessageBox({ message: "x", buttons: ["y"], cancelId: 3 })',
      says: /no button 3/,
      why: "a button that is not there",
    },
    { work: 'dialog.showOpenDialog({ filters: [{ name: "x", extensions: [".vtt"] }] })', says: /filter/, why: "an ending with its dot" },
    { work: 'Menu.buildFromTemplate([{ label: "x", role: "format" }])', says: /no menu role/, why: "a role that is none" },
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

  test.for(["standard", "secure", "supportFetchAPI", "stream"])("shows no page on a scheme that is not %s", async (missing) => {
    const said = await under(`guarded();
      const privileges = { standard: true, secure: true, supportFetchAPI: true, stream: true };
      delete privileges.${missing};
      protocol.registerSchemesAsPrivileged([{ scheme: "app", privileges }]);
      await app.whenReady();
      protocol.handle("app", () => new Response("x"));
      console.log(await tried(() => new BrowserWindow({ webPreferences: safe }).loadURL("app://x/")));`);
    expect(said).toBe(`The scheme app lacks the privilege ${missing}`);
  });

  test("refuses a scheme that bypasses the policy, and one declared twice", async () => {
    const said =
      await under(`const declare = (privileges) => tried(() => protocol.registerSchemesAsPrivileged([{ scheme: "app", privileges }]));
      console.log(await declare({ bypassCSP: true })); console.log(await declare({})); console.log(await declare({}));`);
    expect(said).toMatch(/bypasses.*\nallowed\n.*only once$/);
  });
});
