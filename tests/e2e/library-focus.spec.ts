import { readdirSync, renameSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "@playwright/test";
import { expect, test } from "./support/host.ts";
import {
  folderOfThree,
  importLines,
  lineOf,
  recordingRows,
  removeFolders,
  tabTo,
  temporaryFolder,
  writeFilm,
} from "./support/walk-folders.ts";

/** Acts that take their own button away leave the focus near, never on the page as a whole. */

test.use({ withDemo: false });
test.afterEach(removeFolders);

/** Where the focus is, once what was asked for has come to its end. */
const focusOf = (page: Page) =>
  page.evaluate(() => {
    const { activeElement: at } = document;
    if (at === null || at === document.body) return "the page";
    return at.closest("[role=dialog]")
      ? "the dialog"
      : at.closest("#imports")
        ? "the imports"
        : at.closest("main")
          ? "the library"
          : at.tagName;
  });

test("after Try again, Off the list, Remove and a wrong video", async ({ desk: page, host }) => {
  test.setTimeout(120_000);
  const [folder] = await Promise.all([page.waitForEvent("filechooser"), page.keyboard.press("f")]);
  await folder.setFiles(folderOfThree());
  await tabTo(page, page.getByRole("button", { name: "Import 3 recordings" }));
  await page.keyboard.press("Enter");
  await expect(recordingRows(page)).toHaveCount(2);
  await expect(lineOf(page, "van")).toContainText("in the library");
  await expect(lineOf(page, "wagon")).toContainText("in the library");

  await tabTo(page, page.getByRole("button", { name: "Try again: coupe" }));
  await page.keyboard.press("Enter");
  await expect.poll(() => focusOf(page)).toBe("the imports");
  await expect(lineOf(page, "coupe").getByRole("alert")).toBeVisible();
  await expect.poll(() => focusOf(page)).toBe("the imports");
  await tabTo(page, page.getByRole("button", { name: "Off the list: coupe" }));
  await page.keyboard.press("Enter");
  await expect(lineOf(page, "coupe")).toHaveCount(0);
  await expect.poll(() => focusOf(page)).toMatch(/^the (?:imports|library)$/);

  await tabTo(page, page.getByRole("button", { name: "More for van" }));
  await page.keyboard.press("Enter");
  await page.getByRole("menuitem", { name: "Remove…" }).press("Enter");
  await expect(page.getByRole("alertdialog").or(page.getByRole("dialog"))).toContainText("own copies of the video and the transcript");
  await tabTo(page, page.getByRole("button", { name: "Remove the recording" }));
  await page.keyboard.press("Enter");
  await expect(recordingRows(page)).toHaveCount(1);
  await expect.poll(() => focusOf(page)).toBe("the library");

  const media = join(host.folder, "media");
  for (const name of readdirSync(media)) renameSync(join(media, name), join(temporaryFolder("gone"), name));
  const other = join(temporaryFolder("other"), "other.mp4");
  writeFilm(other, "another film");
  await page.reload();
  await expect(importLines(page)).toHaveCount(0);
  await tabTo(page, page.getByRole("button", { name: "Find the video… of wagon" }));
  await page.keyboard.press("Enter");
  const dialog = page.getByRole("dialog", { name: "Find the video of “wagon”" });
  const choose = dialog.getByRole("button", { name: "Choose a file…" });
  await tabTo(page, choose);
  const [chooser] = await Promise.all([page.waitForEvent("filechooser"), page.keyboard.press("Enter")]);
  await chooser.setFiles(other);
  await expect(dialog.getByRole("alert")).toBeVisible();
  await expect.poll(() => focusOf(page)).toBe("the dialog");
  await expect(choose).toBeFocused();
});
