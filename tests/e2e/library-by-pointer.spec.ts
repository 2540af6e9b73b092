import { readdirSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import { basename, join } from "node:path";
import type { Page } from "@playwright/test";
import { expect, test } from "./support/host.ts";
import { film } from "./support/steps.ts";
import {
  folderOfThree,
  holdBack,
  lineOf,
  recordingRows,
  removeFolders,
  temporaryFolder,
  walkOf,
  writeFilm,
} from "./support/walk-folders.ts";

/** The library's whole job with a pointer. */

test.use({ withDemo: false });
test.afterEach(removeFolders);

/** Lets files fall on the library, as from a window of the system. */
async function drop(page: Page, paths: readonly string[]): Promise<void> {
  const files = paths.map((path) => ({ name: basename(path), content: readFileSync(path).toString("base64") }));
  const transfer = await page.evaluateHandle((given) => {
    const data = new DataTransfer();
    for (const { name, content } of given) {
      data.items.add(new File([Uint8Array.from(atob(content), (letter) => letter.charCodeAt(0))], name));
    }
    return data;
  }, files);
  await page.locator("main").dispatchEvent("dragover", { dataTransfer: transfer });
  await page.locator("main").dispatchEvent("drop", { dataTransfer: transfer });
}

async function chooseFolder(page: Page, button: string, folder: string): Promise<void> {
  const [chooser] = await Promise.all([page.waitForEvent("filechooser"), page.getByRole("button", { name: button }).click()]);
  await chooser.setFiles(folder);
}

test("files that are dropped are paired, changed by hand, and cancelled all at once", async ({ desk: page, host }) => {
  test.setTimeout(120_000);
  const folder = folderOfThree();
  await drop(
    page,
    readdirSync(folder).map((name) => join(folder, name)),
  );
  const plan = page.getByRole("dialog", { name: "Import several recordings" });
  await expect(plan).toContainText("3 recordings from 8 files");

  // The film of another recording is taken from it, and one recording is left out.
  await plan
    .getByRole("group", { name: "van" })
    .getByRole("combobox", { name: /^Video/ })
    .click();
  await page.getByRole("option", { name: "OS-101 wagon.mp4" }).click();
  await expect(plan.getByRole("group", { name: "van" }).getByRole("combobox", { name: "Video, by you" })).toBeVisible();
  await expect(plan.getByRole("group", { name: "wagon" }).getByRole("combobox", { name: /^Video/ })).toContainText("none: transcript only");
  await expect(plan.getByRole("list", { name: "Files left over" })).toContainText("OS-103 van.mp4: no transcript goes with it");
  await plan.getByRole("checkbox", { name: "Import coupe" }).uncheck();
  await expect(plan.getByRole("list", { name: "Files left over" })).toContainText("OS-102 coupe.vtt: you left its recording out");

  const letThrough = await holdBack(page, /vtt$/);
  await plan.getByRole("button", { name: "Import 2 recordings" }).click();
  await expect(lineOf(page, "van")).toContainText("handing over the transcript");
  await page.getByRole("button", { name: "Cancel all" }).click();
  await expect(lineOf(page, "van")).toContainText("cancelled");
  await expect(lineOf(page, "wagon")).toContainText("cancelled");
  await letThrough();
  await expect(page.getByRole("list", { name: "Recordings", exact: true })).toHaveCount(0);
  expect(readdirSync(host.folder)).not.toContain("media");

  await page.getByRole("button", { name: "Try again: van" }).click();
  await expect(lineOf(page, "van")).toContainText("in the library");
  await expect(recordingRows(page)).toHaveCount(1);
  await lineOf(page, "van").getByRole("link", { name: "van" }).click();
  await expect.poll(async () => (await film(page)).width).toBe(320);
});

test("a whole folder falls on the library as the system's own window drops it", async ({ desk: page }) => {
  const folder = folderOfThree();
  await expect(page.getByText("No recordings yet")).toBeVisible();
  const session = await page.context().newCDPSession(page);
  const data = { items: [], files: [folder], dragOperationsMask: 1 };
  for (const type of ["dragEnter", "dragOver", "drop"] as const)
    await session.send("Input.dispatchDragEvent", { type, x: 600, y: 400, data });
  const plan = page.getByRole("dialog", { name: "Import from “forecourt”" });
  await expect(plan).toContainText("3 recordings from 8 files");
  await plan.getByRole("button", { name: "Import 3 recordings" }).click();
  await expect(recordingRows(page)).toHaveCount(2);
});

test("a folder: the broken transcript is exchanged for a mended one, the known one is asked about", async ({ desk: page }) => {
  test.setTimeout(120_000);
  const folder = folderOfThree();
  await chooseFolder(page, "Import a folder of recordings…", folder);
  await page.getByRole("button", { name: "Import 3 recordings" }).click();
  await expect(recordingRows(page)).toHaveCount(2);
  await lineOf(page, "coupe").getByRole("button", { name: "Other files… for coupe" }).click();
  const dialog = page.getByRole("dialog", { name: "Import a recording" });
  await expect(dialog.getByLabel("Stock number")).toHaveValue("OS-102");
  const mended = join(temporaryFolder("mended"), "coupe.vtt");
  writeFileSync(mended, walkOf("1986 Ossler Pathmark coupe"));
  await dialog
    .getByRole("group", { name: /Transcript/ })
    .locator("input[type=file]")
    .setInputFiles(mended);
  await dialog.getByRole("button", { name: "Import", exact: true }).click();
  await expect(page.getByRole("heading", { level: 1, name: "coupe" })).toBeVisible();
  await page.getByRole("link", { name: "Library" }).click();
  await expect(recordingRows(page)).toHaveCount(3);
  // What was mended counts among what came in.
  await expect(lineOf(page, "coupe")).toContainText("in the library");

  await page.getByRole("button", { name: "Clear this list" }).click();
  await chooseFolder(page, "Import a folder…", folder);
  await page.getByRole("button", { name: "Import 3 recordings" }).click();
  // All that would stand there twice is asked about in one window, and nothing is ticked.
  const known = page.getByRole("dialog", { name: "3 stock numbers are taken already" });
  await expect(known.getByRole("checkbox", { checked: false })).toHaveCount(3);
  await known.getByText("is in the library as “van”").click();
  await expect(known.getByRole("status")).toHaveText("1 beside what is there, 2 left out");
  await known.getByRole("button", { name: "Go on" }).click();
  // The very same words are another question than another walk of the same vehicle.
  await expect(page.getByRole("list", { name: "Imports" }).getByRole("listitem")).toHaveCount(1);
  await expect(lineOf(page, "van").getByRole("alert")).toContainText("already in the library as “van”");
  await page.getByRole("button", { name: "Import it again: van" }).click();
  await expect(lineOf(page, "van")).toContainText("in the library");
  await expect(recordingRows(page)).toHaveCount(4);
});

test("another film in a lost one's place is refused with what differs, and taken where it is meant", async ({ desk: page, host }) => {
  test.setTimeout(120_000);
  await chooseFolder(page, "Import a folder…", folderOfThree());
  await page.getByRole("button", { name: "Import 3 recordings" }).click();
  await expect(recordingRows(page)).toHaveCount(2);
  await expect(page.getByRole("button", { name: "Clear this list" })).toBeVisible();
  const media = join(host.folder, "media");
  const archive = temporaryFolder("archive");
  for (const [index, name] of readdirSync(media).entries()) renameSync(join(media, name), join(archive, `IMG ${index}.mp4`));
  const other = join(temporaryFolder("other"), "OS-101 wagon.mp4");
  writeFilm(other, "not the first");
  await page.reload();

  const wagon = recordingRows(page).filter({ hasText: "wagon" });
  await wagon.getByRole("button", { name: "Find the video… of wagon" }).click();
  const dialog = page.getByRole("dialog", { name: "Find the video of “wagon”" });
  const [chooser] = await Promise.all([page.waitForEvent("filechooser"), dialog.getByRole("button", { name: "Choose a file…" }).click()]);
  await chooser.setFiles(other);
  await expect(dialog.getByRole("alert")).toContainText(
    /OS-101 wagon\.mp4 is not the video of this recording: it is as long \([\d,]+ bytes\)/,
  );
  await expect(page.getByText("its video is gone from where it was")).toHaveCount(2);
  await dialog.getByRole("button", { name: "Take OS-101 wagon.mp4 all the same…" }).click();
  await page.getByRole("alertdialog").getByRole("button", { name: "Keep it as it is" }).click();
  await dialog.getByRole("button", { name: "Take OS-101 wagon.mp4 all the same…" }).click();
  await page.getByRole("alertdialog").getByRole("button", { name: "Replace the video" }).click();
  await expect(wagon).toContainText("with video");

  // The other one is found in a folder, whatever it is called there.
  await page.getByRole("button", { name: "Find the video… of van" }).click();
  const [folderChooser] = await Promise.all([
    page.waitForEvent("filechooser"),
    page.getByRole("button", { name: "Look in a folder…" }).click(),
  ]);
  await folderChooser.setFiles(archive);
  await expect(recordingRows(page).filter({ hasText: "van" })).toContainText("with video");
});

test("many recordings are searched and put in order", async ({ desk: page }) => {
  test.setTimeout(180_000);
  const folder = temporaryFolder("lot");
  for (let number = 1; number <= 9; number++) {
    const kind = number % 2 === 0 ? "coupe" : "wagon";
    writeFileSync(join(folder, `OS-20${number} ${kind}.vtt`), walkOf(`198${number} Ossler ${kind}`));
  }
  await chooseFolder(page, "Import a folder…", folder);
  await page.getByRole("button", { name: "Import 9 recordings" }).click();
  await expect(recordingRows(page)).toHaveCount(9, { timeout: 60_000 });
  const field = page.getByRole("searchbox", { name: "Find a recording" });
  await field.fill("coupe os-204");
  await expect(recordingRows(page)).toHaveCount(1);
  await expect(page.getByText("1 of 9 recordings")).toBeVisible();
  await field.fill("lorry");
  await expect(page.getByText("No recording has all of “lorry”")).toBeVisible();
  await page.getByRole("button", { name: "Show all recordings" }).click();
  await page.getByRole("combobox", { name: "Order" }).click();
  await page.getByRole("option", { name: "by stock number" }).click();
  await expect(recordingRows(page).first()).toContainText("Stock OS-201");
  await expect(recordingRows(page).last()).toContainText("Stock OS-209");
});
