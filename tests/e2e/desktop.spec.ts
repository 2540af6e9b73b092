import { copyFileSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { test as base, expect } from "@playwright/test";
import { shellTexts } from "../../electron/window/shell-texts.ts";
import { answerDialogs, chooseFromMenu, type ElectronDesk, electronBinary, openElectronDesk } from "./support/electron-desk.ts";
import { doMainJob } from "./support/main-job.ts";
import { callFromPage, expectNoPowers, type PageBridge } from "./support/page-powers.ts";
import { demoFolder } from "./support/stand-in-desk.ts";
import { film, openDemo } from "./support/steps.ts";

// The journeys of desktop-stand-in.spec.ts in the real window. They run where Electron's program is, and else say in one line why not.

const binary = await electronBinary();
const executablePath = "path" in binary ? binary.path : "";

const test = base.extend<{ home: string; desk: ElectronDesk }>({
  // biome-ignore lint/correctness/noEmptyPattern: Playwright reads a fixture's needs from this pattern.
  home: async ({}, use) => {
    const home = mkdtempSync(join(tmpdir(), "roundwalk-desktop-"));
    await use(home);
    rmSync(home, { recursive: true, force: true });
  },
  desk: async ({ home }, use) => {
    const desk = await openElectronDesk(executablePath, home);
    await use(desk);
    await desk.application.close().catch(() => {});
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
  await expectNoPowers(page);
  // What the page bends in its own world does not reach the preload, which asks on as before.
  await page.evaluate(() => {
    JSON.stringify = () => '"bent"';
    Array.prototype.push = () => 0;
  });
  expect(await callFromPage(page, "host.abilities", {})).toMatchObject({ host: "desktop" });
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

test("files from the system's own window arrive in the page", async ({ desk, home }) => {
  const transcript = join(home, "fallow-kestrel.vtt");
  copyFileSync(join(demoFolder, "demo.vtt"), transcript);
  await expect(desk.page.getByRole("heading", { level: 1 })).toBeVisible();
  await answerDialogs(desk, [{ canceled: false, filePaths: [transcript] }]);
  await chooseFromMenu(desk, [shellTexts.menu.file, shellTexts.menu.importFiles]);
  await expect(desk.page.getByRole("dialog")).toContainText("fallow-kestrel");
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
  const first = await openElectronDesk(executablePath, home);
  await openDemo(first.page, "Mark");
  await callFromPage(first.page, "settings.set", { initials: "QX" });
  await first.page.evaluate(() => {
    const field = document.createElement("input");
    field.type = "file";
    field.id = "test-file";
    document.body.append(field);
  });
  await first.page.locator("#test-file").setInputFiles(transcript);
  await first.page.evaluate(async () => {
    const { roundwalk } = window as unknown as { roundwalk: PageBridge };
    const { value } = await roundwalk.offerFile((document.getElementById("test-file") as HTMLInputElement).files![0]!);
    const vehicle = { name: "Fallow Kestrel", year: 1971, bodyStyle: "coupe", drive: "left-hand" };
    const files = { transcript: value.id, video: null, stockSheet: null };
    void roundwalk.call("recording.import", { ...files, title: "Half way", stockNumber: "", vehicle, again: true });
  });
  await first.application.close();

  const again = await openElectronDesk(executablePath, home);
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
