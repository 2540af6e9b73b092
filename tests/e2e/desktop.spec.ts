import { copyFileSync, existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { test as base, expect } from "@playwright/test";
import { shellTexts } from "../../electron/window/shell-texts.ts";
import { leastSize } from "../../electron/window/window-place.ts";
import { answerDialogs, chooseFromMenu, type ElectronDesk, electronBinary, openElectronDesk } from "./support/electron-desk.ts";
import { doMainJob } from "./support/main-job.ts";
import { beginImport, callFromPage, expectNoPowers } from "./support/page-powers.ts";
import { demoFolder } from "./support/stand-in-desk.ts";
import { film, openDemo } from "./support/steps.ts";

// The journeys of desktop-stand-in.spec.ts in the real window. They run where Electron's program is, and else say in one line why not.

const binary = await electronBinary();

/** What the page's policy says when a test tries what it forbids. */
const refusals = /Content Security Policy|Refused to/;

const test = base.extend<{ home: string; desk: ElectronDesk }>({
  // biome-ignore lint/correctness/noEmptyPattern: Playwright reads a fixture's needs from this pattern.
  home: async ({}, use) => {
    const home = mkdtempSync(join(tmpdir(), "roundwalk-desktop-"));
    await use(home);
    rmSync(home, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
  },
  desk: async ({ home }, use) => {
    const desk = await openElectronDesk(home, ["--library", join(home, "library.sqlite")]);
    await use(desk);
    await desk.application.close();
    expect(desk.complaints.filter((text) => !refusals.test(text))).toEqual([]);
  },
});

test.skip("missing" in binary, "missing" in binary ? binary.missing : "");

test("the main job in the desktop window", async ({ desk, home }) => {
  test.setTimeout(180_000);
  await doMainJob(desk.page, home);
});

test("the window's options are as asked, and its page has no Node and no way around its policy", async ({
  desk: { application, page },
}) => {
  const asked = await application.evaluate(({ BrowserWindow }) => {
    const contents = BrowserWindow.getAllWindows()[0]?.webContents as unknown as { getLastWebPreferences: () => Record<string, unknown> };
    const preferences = contents.getLastWebPreferences();
    return ["sandbox", "contextIsolation", "nodeIntegration", "webviewTag", "webSecurity"].map((name) => [name, preferences[name]]);
  });
  expect(Object.fromEntries(asked)).toEqual({
    sandbox: true,
    contextIsolation: true,
    nodeIntegration: false,
    webviewTag: false,
    webSecurity: true,
  });
  const shown = await application.evaluate(({ BrowserWindow }) => {
    const [window] = BrowserWindow.getAllWindows();
    return window && { least: window.getMinimumSize(), title: window.getTitle(), page: window.webContents.getOSProcessId() };
  });
  expect(shown).toMatchObject({ least: [leastSize.width, leastSize.height], title: expect.stringContaining("Roundwalk") });
  // Mode 2 is a filter of system calls (proc(5)): the page's process really is walled off.
  if (process.platform === "linux") expect(readFileSync(`/proc/${shown?.page}/status`, "utf8")).toMatch(/^Seccomp:\s+2$/m);
  await expectNoPowers(page);
  // What the page bends in its own world does not reach the preload, which asks on as before.
  await page.evaluate(() => {
    JSON.stringify = () => '"bent"';
    Array.prototype.push = () => 0;
  });
  // Asked past Playwright's own scripts, which are bent with the page's.
  const host = await application.evaluate(({ BrowserWindow }) => {
    const ask = 'window.roundwalk.call("host.abilities", {}).then(({ value }) => value.host)';
    return BrowserWindow.getAllWindows()[0]?.webContents.executeJavaScript(ask);
  });
  expect(host).toBe("desktop");
});

test("the video seeks by range through the application's own scheme", async ({ desk: { page } }) => {
  await openDemo(page, "Mark");
  await expect.poll(async () => (await film(page)).width).toBeGreaterThan(0);
  const before = await film(page);
  await page.getByRole("button", { name: /^Underside / }).click();
  await expect.poll(async () => (await film(page)).time).toBeGreaterThan(before.time + 60);
  await expect.poll(async () => (await film(page)).picture).not.toBe(before.picture);
  const part = await page.evaluate(async () => {
    const source = document.querySelector("video")?.currentSrc ?? "";
    const reply = await fetch(source, { headers: { range: "bytes=10-19" } });
    return { status: reply.status, range: reply.headers.get("content-range"), bytes: (await reply.arrayBuffer()).byteLength };
  });
  expect(part).toMatchObject({ status: 206, range: expect.stringMatching(/^bytes 10-19\/\d+$/), bytes: 10 });
});

test("the window opens where it was left", async ({ home }) => {
  const args = ["--library", join(home, "library.sqlite")];
  const sizeOf = ({ application }: ElectronDesk) =>
    application.evaluate(({ BrowserWindow }) => {
      const { width = 0, height = 0 } = BrowserWindow.getAllWindows()[0]?.getNormalBounds() ?? {};
      return { width, height };
    });
  const first = await openElectronDesk(home, args);
  await expect(first.page.getByRole("heading", { level: 1 })).toBeVisible();
  await first.application.evaluate(({ BrowserWindow }) =>
    BrowserWindow.getAllWindows()[0]?.setBounds({ x: 20, y: 40, width: 1010, height: 680 }),
  );
  await expect.poll(() => sizeOf(first)).toEqual({ width: 1010, height: 680 });
  await first.application.close();
  const again = await openElectronDesk(home, args);
  expect(await sizeOf(again)).toEqual({ width: 1010, height: 680 });
  await again.application.close();
});

test("the condition index is saved as a PDF where the person says", async ({ desk, home }) => {
  await openDemo(desk.page, "Check");
  const place = join(home, "index.pdf");
  await answerDialogs(desk, [{ canceled: false, filePath: place }]);
  await chooseFromMenu(desk, [shellTexts.menu.file, shellTexts.menu.savePdf]);
  await expect.poll(() => existsSync(place) && readFileSync(place).subarray(0, 5).toString(), { timeout: 60_000 }).toBe("%PDF-");
});

test("a page that crashes is opened again where it was, with all edits there", async ({ home }) => {
  const desk = await openElectronDesk(home, ["--library", join(home, "library.sqlite")]);
  const { application, page } = desk;
  await openDemo(page, "Check");
  await callFromPage(page, "settings.set", { initials: "QX" });
  const place = page.url();
  await answerDialogs(desk, [{ response: 0, checkboxChecked: false }]);
  await application.evaluate(({ BrowserWindow }) => BrowserWindow.getAllWindows()[0]?.webContents.forcefullyCrashRenderer());
  // Playwright's own page has gone with its process; the main process tells of the new one.
  const state = () =>
    application.evaluate(async ({ BrowserWindow }) => {
      const contents = BrowserWindow.getAllWindows()[0]?.webContents;
      if (!contents || contents.isCrashed() || contents.isLoading()) return null;
      const ask = 'window.roundwalk.call("settings.get", {}).then(({ value }) => value.initials)';
      return { url: contents.getURL(), initials: await contents.executeJavaScript(ask) };
    });
  await expect.poll(state, { timeout: 30_000 }).toEqual({ url: place, initials: "QX" });
  await application.close();
});

test("files from the system's own window arrive in the page", async ({ desk, home }) => {
  const transcript = join(home, "fallow-kestrel.vtt");
  copyFileSync(join(demoFolder, "demo.vtt"), transcript);
  await expect(desk.page.getByRole("heading", { level: 1 })).toBeVisible();
  await answerDialogs(desk, [{ canceled: false, filePaths: [transcript] }]);
  await chooseFromMenu(desk, [shellTexts.menu.file, shellTexts.menu.importFiles]);
  await expect(desk.page.getByRole("dialog")).toContainText("fallow-kestrel");
});

test("the help of the window's menu is the page's own", async ({ desk }) => {
  await expect(desk.page.getByRole("heading", { level: 1 })).toBeVisible();
  await desk.application.evaluate(({ BrowserWindow }) => BrowserWindow.getAllWindows()[0]?.focus());
  await chooseFromMenu(desk, [shellTexts.menu.help, shellTexts.menu.openHelp]);
  await expect(desk.page.getByRole("dialog", { name: "Help" })).toBeVisible();
});

test("a second start hands its link over, ends, and changes nothing", async ({ desk }) => {
  const { page } = desk;
  await openDemo(page, "Mark");
  const id = /recording\/([0-9a-f-]{36})/.exec(page.url())![1];
  const detail = () => callFromPage<{ summary: { counts: { conflicts: number } } }>(page, "recording.get", { id });
  await expect.poll(async () => (await detail()).summary.counts.conflicts, { timeout: 60_000 }).toBeGreaterThan(0);
  await expect.poll(async () => (await film(page)).width).toBeGreaterThan(0);
  const before = await detail();
  await page.getByRole("link", { name: "Library" }).click();
  expect(await desk.startAgain([`roundwalk://recording/${id}?t=75`])).toBe(0);
  await expect.poll(async () => Math.round((await film(page)).time)).toBe(75);
  expect(await detail()).toEqual(before);
});

test("a quit during an import loses nothing", async ({ home }) => {
  test.setTimeout(120_000);
  const transcript = join(home, "second.vtt");
  copyFileSync(join(demoFolder, "demo.vtt"), transcript);
  const args = ["--library", join(home, "library.sqlite")];
  const first = await openElectronDesk(home, args);
  await openDemo(first.page, "Mark");
  await callFromPage(first.page, "settings.set", { initials: "QX" });
  await beginImport(first.page, transcript);
  await first.application.close();

  const again = await openElectronDesk(home, args);
  try {
    await expect(again.page.getByRole("heading", { level: 1 })).toBeVisible();
    expect(await callFromPage(again.page, "settings.get", {})).toEqual({ initials: "QX" });
    const list = await callFromPage<{ counts: { captions: number } }[]>(again.page, "recording.list", {});
    expect(list.length).toBeGreaterThanOrEqual(1);
    expect(new Set(list.map(({ counts }) => counts.captions))).toEqual(new Set([77]));
  } finally {
    await again.application.close();
  }
});
