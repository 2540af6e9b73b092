import { mkdirSync, readdirSync, renameSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import AxeBuilder from "@axe-core/playwright";
import type { Page } from "@playwright/test";
import { expect, test } from "./support/host.ts";
import { film } from "./support/steps.ts";
import {
  folderOfThree,
  holdBack,
  importLines,
  lineOf,
  recordingRows,
  removeFolders,
  tabTo,
  temporaryFolder,
  walkOf,
  writeFilm,
} from "./support/walk-folders.ts";

/** The library's whole job without a pointer. */

test.use({ withDemo: false });
test.afterEach(removeFolders);

async function chooseFolderByKey(page: Page, folder: string): Promise<void> {
  const [chooser] = await Promise.all([page.waitForEvent("filechooser"), page.keyboard.press("f")]);
  await chooser.setFiles(folder);
}

const faults = async (page: Page) => (await new AxeBuilder({ page }).analyze()).violations.map(({ id, nodes }) => [id, nodes[0]?.html]);

test("a folder of three: one broken, one cancelled, one in the library; nothing half-imported", async ({ desk: page, host }) => {
  test.setTimeout(120_000);
  await expect(page.getByText("No recordings yet")).toBeVisible();
  await chooseFolderByKey(page, folderOfThree());

  // What was paired and what is left over, before anything is imported.
  const plan = page.getByRole("dialog", { name: "Import from “forecourt”" });
  await expect(plan).toContainText("3 recordings from 8 files. Nothing is imported yet");
  await expect(plan.getByRole("list", { name: "Files left over" })).toHaveText(/cover\.jpg: it is no video, transcript or stock sheet/);
  const van = plan.getByRole("group", { name: "van" });
  await expect(van.getByRole("combobox", { name: "Video, by its name" })).toContainText("OS-103 van.mp4");
  await expect(van.getByRole("combobox", { name: "Stock sheet" })).toContainText("the one for all");
  expect(await faults(page)).toEqual([]);
  const title = plan.getByRole("group", { name: "wagon" }).getByRole("textbox", { name: "Title" });
  await tabTo(page, title);
  await page.keyboard.press("Control+a");
  await page.keyboard.type("Ossler wagon on the forecourt");
  const letThrough = await holdBack(page, /van\.mp4/);
  await tabTo(page, plan.getByRole("button", { name: "Import 3 recordings" }));
  await page.keyboard.press("Enter");

  // A line for each; the rest goes on past the broken one, whose reason stands with it.
  await expect(page.locator("#imports")).toBeFocused();
  await expect(lineOf(page, "coupe").getByRole("alert")).toContainText("OS-102 coupe.vtt, line 6: the caption ends at 0:04");
  await expect(lineOf(page, "wagon")).toContainText("in the library");
  await expect(lineOf(page, "van")).toContainText("handing over the video");
  expect(await faults(page)).toEqual([]);
  await tabTo(page, page.getByRole("button", { name: "Cancel the import of van" }));
  await page.keyboard.press("Enter");
  await expect(lineOf(page, "van")).toContainText("cancelled; nothing of it is in the library");
  await expect(page.getByRole("status").filter({ hasText: "1 of 3 recordings imported, 1 failed, 1 cancelled" })).toBeVisible();
  await expect(recordingRows(page)).toHaveCount(1);
  await expect(recordingRows(page)).toContainText("1985, Ossler Pathmark");
  expect(readdirSync(join(host.folder, "media"))).toHaveLength(1);
  await expect
    .poll(() => readdirSync(join(host.folder, ".roundwalk-incoming"), { recursive: true }).filter((name) => /-/.test(String(name))))
    .toEqual([]);

  // The cancelled one is wanted after all.
  await letThrough();
  await tabTo(page, page.getByRole("button", { name: "Try again: van" }));
  await page.keyboard.press("Enter");
  await expect(lineOf(page, "van")).toContainText("in the library");
  await expect(recordingRows(page)).toHaveCount(2);
  await tabTo(page, page.getByRole("button", { name: "Clear this list" }));
  await page.keyboard.press("Enter");
  await expect(importLines(page)).toHaveCount(0);

  // Each desk's state leads to the desk.
  await tabTo(page, page.getByRole("link", { name: /^Mark .*Ossler wagon/ }));
  await page.keyboard.press("Enter");
  await expect(page.getByRole("heading", { level: 1, name: "Ossler wagon on the forecourt" })).toBeVisible();
});

test("a video that was moved and renamed is found by its content, past another of its name", async ({ desk: page, host }) => {
  test.setTimeout(120_000);
  await chooseFolderByKey(page, folderOfThree());
  await tabTo(page, page.getByRole("button", { name: "Import 3 recordings" }));
  await page.keyboard.press("Enter");
  await expect(recordingRows(page)).toHaveCount(2);
  await expect(lineOf(page, "wagon")).toContainText("in the library");

  // Both videos leave the library's folder; one goes on under another name, beside a film that took its old one.
  const archive = temporaryFolder("archive");
  mkdirSync(join(archive, "2026"));
  const media = join(host.folder, "media");
  for (const [index, name] of readdirSync(media).entries()) renameSync(join(media, name), join(archive, "2026", `IMG ${index}.mp4`));
  writeFilm(join(archive, "OS-101 wagon.mp4"), "another film");
  await page.reload();
  await expect(page.getByText("2 videos are gone from where they were")).toBeVisible();
  await tabTo(page, page.getByRole("button", { name: "Find the video… of wagon" }));
  await page.keyboard.press("Enter");
  const dialog = page.getByRole("dialog", { name: "Find the video of “wagon”" });
  await expect(dialog).toContainText("OS-101 wagon.mp4 is no longer where it was");
  await expect(dialog.getByRole("button", { name: "Look in a folder…" })).toBeFocused();
  expect(await faults(page)).toEqual([]);
  const [chooser] = await Promise.all([page.waitForEvent("filechooser"), page.keyboard.press("Enter")]);
  await chooser.setFiles(archive);
  await expect(page.getByText("The video of “wagon” is found.")).toBeVisible();
  await expect(recordingRows(page).filter({ hasText: "wagon" })).toContainText("with video");
  await expect(recordingRows(page).filter({ hasText: "van" })).toContainText("its video is gone from where it was");

  await tabTo(page, page.getByRole("link", { name: "wagon", exact: true }));
  await page.keyboard.press("Enter");
  await expect.poll(async () => (await film(page)).width, { message: "the browser reads the video" }).toBe(320);
});

test("stock numbers that are taken are asked about in one window, and the body style is the sheet's or the row's", async ({
  desk: page,
}) => {
  test.setTimeout(120_000);
  await expect(page.getByText("No recordings yet")).toBeVisible();
  const folder = temporaryFolder("evenings");
  for (const name of ["FK-71 first", "FK-71 second", "FK-71 third", "OS-90 walk"]) writeFileSync(join(folder, `${name}.vtt`), walkOf(name));
  writeFileSync(
    join(folder, "lot.csv"),
    "Stock Number,Make,Model,Year,Body\nFK-71,Fallow,Kestrel,1971,2-Door Coupe\nOS-90,Osprey,Ninety,1990,SUV\n",
  );
  await chooseFolderByKey(page, folder);
  const plan = page.getByRole("dialog", { name: "Import from “evenings”" });
  await expect(plan.getByRole("combobox", { name: "Body style of all" })).toContainText("as the stock sheet says, else sedan");
  // What the sheet calls by no name that is drawn is chosen here.
  await tabTo(page, plan.getByRole("group", { name: "walk" }).getByRole("combobox", { name: "Body style" }));
  await page.keyboard.press("Enter");
  await page.keyboard.type("stat");
  await page.keyboard.press("Enter");
  await expect(plan.getByRole("group", { name: "walk" }).getByRole("combobox", { name: "Body style" })).toContainText("station wagon");
  await tabTo(page, plan.getByRole("button", { name: "Import 4 recordings" }));
  await page.keyboard.press("Enter");

  const known = page.getByRole("dialog", { name: "2 stock numbers are taken already" });
  await expect(known.getByRole("button", { name: "Tick all" })).toBeFocused();
  expect(await faults(page)).toEqual([]);
  await tabTo(page, known.getByRole("checkbox", { name: /^third/ }));
  await page.keyboard.press("Space");
  await expect(known.getByRole("status")).toHaveText("1 beside what is there, 1 left out");
  await tabTo(page, known.getByRole("button", { name: "Go on" }));
  await page.keyboard.press("Enter");
  await expect(importLines(page).getByRole("listitem")).toHaveCount(3);
  await expect(recordingRows(page)).toHaveCount(3);
  await expect(recordingRows(page).filter({ hasText: "FK-71" })).toHaveCount(2);
  await expect(recordingRows(page).filter({ hasText: "FK-71" }).first()).toContainText("1971, Fallow Kestrel, coupe");
  await expect(recordingRows(page).filter({ hasText: "OS-90" })).toContainText("1990, Osprey Ninety, station wagon");
});
