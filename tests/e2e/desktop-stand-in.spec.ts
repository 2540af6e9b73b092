import { copyFileSync, existsSync, mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { test as base, expect } from "@playwright/test";
import { shellTexts } from "../../electron/window/shell-texts.ts";
import { startStandIn } from "../support/electron-stand-in/start-stand-in.ts";
import { doMainJob } from "./support/main-job.ts";
import { beginImport, callFromPage, expectNoPowers, offerFromPage, type PageBridge } from "./support/page-powers.ts";
import { demoFolder, openStandInDesk, type StandInDesk } from "./support/stand-in-desk.ts";
import { film, openDemo } from "./support/steps.ts";

// The built main process and preload of the desktop, with a stand-in where Electron would be: no window of Electron's is opened here.

const test = base.extend<{ home: string; desk: StandInDesk }>({
  // biome-ignore lint/correctness/noEmptyPattern: Playwright reads a fixture's needs from this pattern.
  home: async ({}, use) => {
    const home = mkdtempSync(join(tmpdir(), "roundwalk-stand-in-"));
    await use(home);
    rmSync(home, { recursive: true, force: true });
  },
  desk: async ({ page, home }, use, testInfo) => {
    const desk = await openStandInDesk(page, { home, args: ["--library", join(home, "library.sqlite")] });
    await use(desk);
    const code = await desk.quit();
    await testInfo.attach("desktop.log", { body: desk.standIn.output(), contentType: "text/plain" });
    expect({ code, faults: desk.standIn.of("fault"), errors: desk.standIn.of("error-box") }).toEqual({ code: 0, faults: [], errors: [] });
  },
});

test("the main job in the built desktop, over the stand-in", async ({ desk, home }) => {
  test.setTimeout(180_000);
  await doMainJob(desk.page, home);
  expect(desk.complaints).toEqual([]);
  expect(desk.outside).toEqual([]);
});

test("the video seeks by range through the application's own scheme", async ({ desk: { page } }) => {
  const parts: { status: number; range: string | undefined }[] = [];
  page.on("response", (response) => {
    if (response.url().includes("/media/")) parts.push({ status: response.status(), range: response.headers()["content-range"] });
  });
  await openDemo(page, "Mark");
  await expect.poll(async () => (await film(page)).width).toBeGreaterThan(0);
  const before = await film(page);
  await page.getByRole("button", { name: /^Underside / }).click();
  await expect.poll(async () => (await film(page)).time).toBeGreaterThan(before.time + 60);
  await expect.poll(async () => (await film(page)).picture).not.toBe(before.picture);
  expect(parts.length).toBeGreaterThan(0);
  expect(parts.filter(({ status, range }) => status !== 206 || range === undefined)).toEqual([]);
});

test("the page has no Node and no way around its policy, and the preload is out of its reach", async ({ desk }) => {
  const { page } = desk;
  await expectNoPowers(page);
  const sent = await page.evaluate(async () => {
    const { roundwalk } = window as unknown as { roundwalk: PageBridge };
    try {
      await roundwalk.call("settings.set", { initials: () => "x" });
      return [Object.isFrozen(roundwalk), "sent"];
    } catch (failure) {
      return [Object.isFrozen(roundwalk), (failure as Error).name];
    }
  });
  expect(sent).toEqual([true, "DataCloneError"]);

  // What a hostile script would bend in its own world stays straight in the preload's.
  await page.evaluate(() => {
    Array.prototype.push = () => 0;
    JSON.parse = () => ({ bent: true });
  });
  expect(await desk.inPreload("[[].push(1), JSON.parse('7'), typeof window.inlineRan, typeof require, typeof window.roundwalk]")).toEqual([
    1,
    7,
    "undefined",
    "undefined",
    "undefined",
  ]);
});

test("nothing but the application is ever shown or asked for", async ({ desk }) => {
  const { page, standIn } = desk;
  await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
  const address = page.url();
  await page.evaluate(() => {
    window.open("https://other.example/window");
    const frame = document.createElement("iframe");
    frame.src = "https://other.example/frame";
    document.body.append(frame);
    const picture = document.createElement("img");
    picture.src = "https://other.example/picture.png";
    document.body.append(picture);
  });
  await page.evaluate(() => {
    window.location.href = "https://other.example/page";
  });
  await expect
    .poll(() => desk.outside.map(({ url, verdict }) => `${url} ${verdict}`))
    .toContain("https://other.example/page navigate stopped");
  // The page's policy keeps the frame and the picture from being asked for at all.
  expect(desk.outside.filter(({ url }) => /frame|picture/.test(url))).toEqual([]);
  expect(page.url()).toBe(address);
  expect(await standIn.ask("open-window", { url: "https://other.example/window" })).toEqual({ action: "deny" });
  for (const url of [
    "https://other.example/",
    "http://127.0.0.1:1/",
    "file:///etc/passwd",
    "ws://other.example/",
    "app://roundwalk.other/",
  ]) {
    expect([url, await standIn.ask("request", { url })]).toEqual([url, "cancelled"]);
  }
  for (const permission of ["media", "geolocation", "notifications", "midi", "usb", "clipboard-read", "openExternal", "fileSystem"]) {
    expect([permission, await standIn.ask("permission", { permission, url: "app://roundwalk/" })]).toEqual([
      permission,
      { granted: false, checked: false, withoutContents: false },
    ]);
  }
});

test("files that are chosen in the page stay where they are, and the page never learns their place", async ({ desk, home }) => {
  const { page } = desk;
  const transcript = join(home, "kestrel-walk.vtt");
  copyFileSync(join(demoFolder, "demo.vtt"), transcript);
  await expect(page.getByRole("button", { name: /^Import a recording/ })).toBeVisible();
  const made = await page.evaluate(() =>
    (window as unknown as { roundwalk: PageBridge }).roundwalk.offerFile(new File(["x"], "made-by-the-page.vtt")),
  );
  const offered = [await offerFromPage(page, transcript), made];
  expect(offered).toMatchObject([
    { ok: true, value: { name: "kestrel-walk.vtt" } },
    { ok: false, problem: { code: "file-without-path" } },
  ]);
  expect(JSON.stringify(offered)).not.toContain(home);
});

test("the help of the window's menu is the page's own, wherever the person is", async ({ desk: { page, standIn } }) => {
  await openDemo(page, "Check");
  await standIn.ask("choose", `${shellTexts.menu.help} > ${shellTexts.menu.openHelp}`);
  await expect(page.getByRole("dialog", { name: "Help" })).toBeVisible();
});

test("files that the system's own window drops on the page are offered for import", async ({ desk: { page }, home }) => {
  const transcript = join(home, "kestrel-walk.vtt");
  copyFileSync(join(demoFolder, "demo.vtt"), transcript);
  await expect(page.getByRole("button", { name: /^Import a recording/ })).toBeVisible();
  const session = await page.context().newCDPSession(page);
  const data = { items: [], files: [transcript], dragOperationsMask: 1 };
  // The page may still be laying itself out when the first file falls: a person would drop it again.
  await expect(async () => {
    for (const type of ["dragEnter", "dragOver", "drop"] as const)
      await session.send("Input.dispatchDragEvent", { type, x: 600, y: 400, data });
    await expect(page.getByRole("dialog")).toContainText("kestrel-walk", { timeout: 3000 });
  }).toPass({ timeout: 30_000 });
  // Dropped, a file is never opened in the page's stead.
  expect(new URL(page.url()).pathname).toBe("/");
});

test("files and a link of a second start arrive in the first one's window", async ({ desk, home }) => {
  const { page, standIn } = desk;
  await openDemo(page, "Mark");
  // The page tells the host how long the film is, once.
  await expect.poll(async () => (await film(page)).width).toBeGreaterThan(0);
  const id = /recording\/([0-9a-f-]{36})/.exec(page.url())![1];
  const detail = () => callFromPage<{ summary: { counts: { conflicts: number } } }>(page, "recording.get", { id });
  await expect.poll(async () => (await detail()).summary.counts.conflicts, { timeout: 60_000 }).toBeGreaterThan(0);
  const before = await detail();
  await page.getByRole("link", { name: "Library" }).click();

  const second = startStandIn({ home, args: ["--library", join(home, "library.sqlite"), `roundwalk://recording/${id}?t=75`] });
  expect(await second.ended).toBe(0);
  expect(second.of("window")).toEqual([]);
  await expect(page.getByRole("heading", { level: 1, name: /Havelin Tarrow/ })).toBeVisible();
  await expect.poll(async () => Math.round((await film(page)).time)).toBe(75);
  const after = await detail();
  // A link looks; it changes nothing.
  expect(after).toEqual(before);

  mkdirSync(join(home, "walks"));
  const transcript = join(home, "walks", "fallow-kestrel.vtt");
  copyFileSync(join(demoFolder, "demo.vtt"), transcript);
  await startStandIn({ home, args: ["--library", join(home, "library.sqlite"), transcript] }).ended;
  await expect(page.getByRole("dialog")).toContainText("fallow-kestrel");
  expect(existsSync(transcript)).toBe(true);
  expect(standIn.of("focus").length).toBe(2);
});

test("a quit during an import loses nothing", async ({ page, home }) => {
  test.setTimeout(120_000);
  const args = ["--library", join(home, "library.sqlite")];
  const desk = await openStandInDesk(page, { home, args });
  await openDemo(page, "Mark");
  const transcript = join(home, "second.vtt");
  copyFileSync(join(demoFolder, "demo.vtt"), transcript);
  await callFromPage(page, "settings.set", { initials: "QX" });
  await beginImport(page, transcript);
  // Twice, as an impatient hand does.
  void desk.standIn.ask("quit");
  void desk.standIn.ask("quit");
  expect(await desk.standIn.ended).toBe(0);

  const again = await openStandInDesk(await page.context().newPage(), { home, args });
  expect(await callFromPage(again.page, "settings.get", {})).toEqual({ initials: "QX" });
  const list = await callFromPage<{ counts: { captions: number } }[]>(again.page, "recording.list", {});
  const captions = list.map(({ counts }) => counts.captions);
  // The import that was under way is there whole, or not at all.
  expect(captions.length).toBeGreaterThanOrEqual(1);
  expect(captions.length).toBeLessThanOrEqual(2);
  expect(new Set(captions)).toEqual(new Set([77]));
  expect(await again.quit()).toBe(0);
});
