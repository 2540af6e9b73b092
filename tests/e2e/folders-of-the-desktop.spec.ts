import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { test as base, expect } from "@playwright/test";
import { openStandInDesk, type StandInDesk } from "./support/stand-in-desk.ts";
import { openDemo } from "./support/steps.ts";

// The built main process and preload of the desktop, with a stand-in where Electron would be; the test plays the person at the system's
// own window for folders.

const test = base.extend<{ home: string; desk: StandInDesk }>({
  // biome-ignore lint/correctness/noEmptyPattern: Playwright reads a fixture's needs from this pattern.
  home: async ({}, use) => {
    const home = mkdtempSync(join(tmpdir(), "roundwalk-folders-"));
    await use(home);
    rmSync(home, { recursive: true, force: true });
  },
  desk: async ({ page, home }, use) => {
    const desk = await openStandInDesk(page, { home, args: ["--library", join(home, "library.sqlite")] });
    await use(desk);
    const code = await desk.quit();
    expect({ code, faults: desk.standIn.of("fault"), complaints: desk.complaints }).toEqual({ code: 0, faults: [], complaints: [] });
  },
});

test("bundles and the lot's indexes go into a folder that the system's window names, and come back from it", async ({ desk, home }) => {
  test.setTimeout(150_000);
  const { page, standIn } = desk;
  const place = join(home, "a place of 50% #1");
  mkdirSync(place);
  await page.getByRole("link", { name: /^Mark / }).waitFor({ timeout: 60_000 });
  const openLot = async (item: RegExp) => {
    await page.getByRole("button", { name: "Whole lot" }).click();
    await page.getByRole("menuitem", { name: item }).click();
  };

  await openLot(/Keep bundles/);
  const keep = page.getByRole("dialog", { name: "Keep bundles in a folder" });
  const field = keep.getByRole("textbox", { name: "Folder" });
  await expect(field).toHaveValue(/bundles$/);
  const usual = await field.inputValue();
  // Left by Escape, the field stays as it was.
  standIn.answers.push({ canceled: true, filePaths: [] });
  await keep.getByRole("button", { name: "Choose the folder…" }).press("Enter");
  await expect(keep.getByRole("button", { name: "Choose the folder…" })).toBeEnabled();
  await expect(field).toHaveValue(usual);
  standIn.answers.push({ canceled: false, filePaths: [place] });
  await keep.getByRole("button", { name: "Choose the folder…" }).press("Enter");
  await expect(field).toHaveValue(place);
  await keep.getByRole("combobox", { name: "Which recordings" }).click();
  await page.getByRole("option", { name: /^all/ }).click();
  await keep.getByRole("checkbox", { name: /With their videos/ }).click();
  await keep.getByRole("button", { name: "Write what has changed" }).click();
  await expect(keep.getByRole("status")).toContainText("1 bundle written");
  expect(readdirSync(place)).toEqual([expect.stringMatching(/\.roundwalk\.zip$/)]);
  await keep.getByRole("button", { name: "Close" }).click();

  await openLot(/Bring in bundles/);
  const bring = page.getByRole("dialog", { name: "Bring in bundles" });
  standIn.answers.push({ canceled: false, filePaths: [place] });
  await bring.getByRole("button", { name: "Choose the folder…" }).click();
  await expect(bring.getByRole("textbox", { name: /folder on this machine/ })).toHaveValue(place);
  await bring.getByRole("button", { name: "Look in the folder" }).click();
  await expect(bring.getByRole("list", { name: "Bundles" })).toContainText("already here, and nothing in it is otherwise");
  await bring.getByRole("button", { name: "Close" }).click();

  await openLot(/Index all/);
  const index = page.getByRole("dialog", { name: "Index all that is ready" });
  await index.getByText(/^Not ready/).click();
  await index.getByRole("list", { name: "Not ready" }).getByRole("checkbox").click();
  await index.getByRole("button", { name: "Choose none" }).click();
  await index.getByRole("checkbox", { name: "Chapters", exact: true }).click();
  const out = join(place, "out");
  mkdirSync(out);
  standIn.answers.push({ canceled: false, filePaths: [out] });
  await index.getByRole("button", { name: "Choose the folder…" }).click();
  await expect(index.getByRole("textbox", { name: "Folder" })).toHaveValue(out);
  await index.getByRole("button", { name: "Index 1 recording" }).click();
  await expect(index.getByRole("list", { name: "Written" })).toContainText("6 files in");
  const [of = ""] = readdirSync(out);
  expect(existsSync(join(out, of)) && readdirSync(join(out, of))).toHaveLength(6);
  // Each window asked for a folder, and nothing else.
  const asked = standIn.dialogs.map(({ options }) => (options as { properties?: string[] }).properties);
  expect(asked).toEqual(Array(4).fill(["openDirectory", "createDirectory"]));
});

base("without FFmpeg the desktop's page takes the index' pictures from its own player too", async ({ page }) => {
  base.setTimeout(120_000);
  const home = mkdtempSync(join(tmpdir(), "roundwalk-pictures-"));
  const desk = await openStandInDesk(page, {
    home,
    args: ["--library", join(home, "library.sqlite")],
    env: { ROUNDWALK_FFMPEG: join(home, "there-is-no-ffmpeg-here") },
  });
  try {
    await openDemo(page, "Check");
    await expect(page.getByText(/[1-9]\d* left of/).first()).toBeVisible({ timeout: 30_000 });
    await page.getByRole("button", { name: "Export…" }).click();
    const dialog = page.getByRole("dialog", { name: "Export" });
    await dialog.getByRole("button", { name: "Choose none" }).click();
    await dialog.getByRole("button", { name: /^Show \d files of Condition index$/ }).click();
    await dialog.getByRole("checkbox", { name: "Condition index, page" }).click();
    await dialog.getByRole("button", { name: "Write 1 file" }).click();
    await expect(dialog.getByRole("status").last()).toHaveText("1 file written.", { timeout: 60_000 });
    const exportsFolder = join(home, "exports");
    const [name = ""] = readdirSync(exportsFolder, { recursive: true, encoding: "utf8" }).filter((file) => file.endsWith(".html"));
    expect(readFileSync(join(exportsFolder, name), "utf8").match(/<img src="data:image\/jpeg/g)?.length ?? 0).toBeGreaterThan(8);
    expect(desk.complaints).toEqual([]);
  } finally {
    await desk.quit();
    rmSync(home, { recursive: true, force: true });
  }
});
