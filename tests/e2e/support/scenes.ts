import { writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "@playwright/test";
import { expect } from "./host.ts";
import { importSecondVehicle } from "./second-vehicle.ts";
import { folderOfThree, temporaryFolder, walkOf } from "./walk-folders.ts";

/** Every screen, dialog and menu of the page, and how it is come to; for whoever looks at all of them. */

export interface Stage {
  readonly page: Page;
  readonly origin: string;
  /** The demo's id; empty where the library is. */
  readonly demo: string;
}

export interface Scene {
  readonly name: string;
  readonly reach: (stage: Stage) => Promise<void>;
}

/** Opens an address afresh, so that nothing of the scene before is left. */
async function open({ page, origin }: Stage, hash: string): Promise<void> {
  await page.goto("about:blank");
  await page.goto(`${origin}/${hash}`);
  await page.evaluate(() => document.fonts.ready);
}

const library = async (stage: Stage) => {
  await open(stage, "#/");
  await expect(stage.page.getByRole("list", { name: "Recordings", exact: true })).toBeVisible();
};
const mark = async (stage: Stage) => {
  await open(stage, `#/recording/${stage.demo}/mark?at=20`);
  await expect(stage.page.getByRole("region", { name: "Captions" })).toContainText("gears");
  await expect.poll(() => stage.page.locator("video").evaluate((video: HTMLVideoElement) => video.readyState)).toBeGreaterThan(1);
};
const check = async (stage: Stage) => {
  await open(stage, `#/recording/${stage.demo}/check`);
  await expect(stage.page.locator("#conflict-topic")).toBeVisible();
};
const call = async (stage: Stage, asked: string) => {
  await open(stage, asked === "" ? "#/call" : `#/call?ask=${encodeURIComponent(asked)}`);
  await expect(stage.page.getByRole("combobox", { name: "Ask the library" })).toBeFocused();
};

/** A scene that is come to from a screen by keys. */
const byKeys =
  (screen: (stage: Stage) => Promise<void>, keys: readonly string[], shown: (page: Page) => Promise<void>) =>
  async (stage: Stage): Promise<void> => {
    await screen(stage);
    for (const key of keys) await stage.page.keyboard.press(key);
    await shown(stage.page);
  };
const dialog = (name: string | RegExp) => (page: Page) => expect(page.getByRole("dialog", { name })).toBeVisible();

/** An entry of a menu of the library, by the menu's button. */
const fromMenu = (button: string | RegExp, entry: string | null, shown: (page: Page) => Promise<void>) => async (stage: Stage) => {
  await library(stage);
  // The notes of the first start push the row, and with it its menu, out of a low window.
  const notes = stage.page.getByRole("button", { name: "End; do not show again" });
  if (await notes.isVisible()) await notes.click();
  await stage.page.getByRole("button", { name: button }).first().click();
  await expect(stage.page.getByRole("menu")).toBeVisible();
  if (entry !== null) await stage.page.getByRole("menuitem", { name: entry }).click();
  await shown(stage.page);
};
const menu = (page: Page) => expect(page.getByRole("menu")).toBeVisible();

export const emptyScenes: readonly Scene[] = [
  {
    name: "library-empty",
    reach: async (stage) => {
      await open(stage, "#/");
      await expect(stage.page.getByRole("heading", { name: "No recordings yet" })).toBeVisible();
    },
  },
  {
    name: "call-empty-library",
    reach: (stage) => call(stage, ""),
  },
];

/** A part of the help, opened over the library. */
const help = (part: string): Scene => ({
  name: `help-${part.toLowerCase().replaceAll(" ", "-")}`,
  reach: async (stage: Stage) => {
    await library(stage);
    await stage.page.keyboard.press("F1");
    await dialog("Help")(stage.page);
    await stage.page.getByRole("tab", { name: part }).click();
    await expect(stage.page.getByRole("dialog").getByRole("heading", { name: part })).toBeVisible();
  },
});

export const libraryScenes: readonly Scene[] = [
  {
    // Before anything ends them for good.
    name: "first-minutes",
    reach: async (stage) => {
      await library(stage);
      await expect(stage.page.getByRole("region", { name: "Your first minutes" })).toBeVisible();
    },
  },
  help("The three desks"),
  help("Keys and signs"),
  help("Your files"),
  help("Cautions"),
  help("What is new"),
  help("Newer versions"),
  { name: "library", reach: library },
  { name: "library-more", reach: fromMenu(/^More for/, null, menu) },
  { name: "library-whole-lot", reach: fromMenu("Whole lot", null, menu) },
  { name: "library-you", reach: fromMenu(/^You and this window/, null, menu) },
  { name: "import", reach: byKeys(library, ["i"], dialog("Import a recording")) },
  {
    name: "import-folder",
    reach: async (stage) => {
      await library(stage);
      const [chooser] = await Promise.all([stage.page.waitForEvent("filechooser"), stage.page.keyboard.press("f")]);
      await chooser.setFiles(folderOfThree());
      await dialog(/^Import from/)(stage.page);
      await expect(stage.page.getByRole("group", { name: "van" })).toBeVisible();
    },
  },
  {
    name: "import-known",
    reach: async (stage) => {
      await library(stage);
      const folder = temporaryFolder("two evenings");
      for (const evening of ["first", "second"])
        writeFileSync(join(folder, `CK-2107 ${evening}.vtt`), walkOf(`Havelin, ${evening} evening`));
      const [chooser] = await Promise.all([stage.page.waitForEvent("filechooser"), stage.page.keyboard.press("f")]);
      await chooser.setFiles(folder);
      await stage.page.getByRole("button", { name: "Import 2 recordings" }).click();
      await dialog("2 stock numbers are taken already")(stage.page);
    },
  },
  { name: "describe", reach: fromMenu(/^More for/, "Describe…", dialog("Describe the recording")) },
  { name: "replace-video", reach: fromMenu(/^More for/, "Replace the video…", dialog(/video/)) },
  { name: "bundle", reach: fromMenu(/^More for/, "Bundle for another machine…", dialog(/^Bundle/)) },
  {
    name: "remove",
    reach: fromMenu(/^More for/, "Remove…", (page) => expect(page.getByRole("alertdialog", { name: /^Remove/ })).toBeVisible()),
  },
  { name: "bring-bundles", reach: byKeys(library, ["b"], dialog("Bring in bundles")) },
  { name: "keep-bundles", reach: fromMenu("Whole lot", "Keep bundles in a folder…", dialog("Keep bundles in a folder")) },
  { name: "lot-sheet", reach: fromMenu("Whole lot", "Match a sheet of the whole lot…", dialog("Match a sheet of the whole lot")) },
  { name: "index-lot", reach: fromMenu("Whole lot", "Index all that is ready…", dialog("Index all that is ready")) },
  { name: "templates", reach: fromMenu("Whole lot", "Index text templates…", dialog("Index text templates")) },
  { name: "initials", reach: fromMenu(/^You and this window/, "Give initials…", dialog("Who is working here?")) },
];

const findings = byKeys(mark, ["2"], (page) => expect(page.getByRole("list", { name: "Findings" })).toBeVisible());

export const markScenes: readonly Scene[] = [
  { name: "mark", reach: mark },
  { name: "mark-findings", reach: findings },
  { name: "mark-zones", reach: byKeys(mark, ["3"], (page) => expect(page.getByRole("list", { name: "Zone spans" })).toBeVisible()) },
  {
    name: "mark-finding-form",
    reach: byKeys(findings, ["f"], (page) => expect(page.getByRole("textbox", { name: "What is seen" })).toBeFocused()),
  },
  {
    name: "mark-parts",
    reach: async (stage) => {
      await findings(stage);
      await stage.page.keyboard.press("f");
      await stage.page.getByRole("combobox", { name: "Part" }).fill("trunk l");
      await expect(stage.page.getByRole("option", { name: /^trunk lid/ })).toBeVisible();
    },
  },
  {
    name: "mark-search",
    reach: async (stage) => {
      await mark(stage);
      await stage.page.keyboard.press("/");
      await stage.page.keyboard.type("trunk");
      await expect(stage.page.getByText(/^\d+ hits?$/)).toBeVisible();
    },
  },
  {
    name: "mark-caption-words",
    reach: byKeys(mark, ["e"], (page) => expect(page.getByRole("textbox", { name: /^Words of the caption at/ })).toBeFocused()),
  },
  { name: "mark-zone", reach: byKeys(mark, ["z"], dialog(/ shows$/)) },
  {
    name: "mark-zone-choice",
    reach: async (stage) => {
      await byKeys(mark, ["z"], dialog(/ shows$/))(stage);
      await stage.page.getByRole("dialog").getByRole("combobox", { name: "Zone" }).click();
      await expect(stage.page.getByRole("option", { name: "Underside" })).toBeVisible();
    },
  },
  { name: "mark-title", reach: byKeys(mark, ["t"], dialog("Chapter title")) },
  { name: "mark-keys", reach: byKeys(mark, ["?"], dialog("Keys and signs")) },
  {
    name: "mark-strip-closer",
    reach: byKeys(mark, ["=", "=", "="], (page) => expect(page.getByRole("slider", { name: "Playhead" })).toBeVisible()),
  },
];

const publish = byKeys(check, ["p"], (page) => expect(page.getByRole("heading", { name: "Not ready to publish" })).toBeVisible());
const exportPanel = async (stage: Stage) => {
  await check(stage);
  await stage.page.getByRole("button", { name: "Export…" }).click();
  await dialog("Export")(stage.page);
};
const queued = (part: string) => async (stage: Stage) => {
  await check(stage);
  await stage.page.getByRole("region", { name: part }).locator("button").first().click();
  await expect(stage.page.locator("#conflict-topic")).toHaveCount(0);
};

export const checkScenes: readonly Scene[] = [
  { name: "check", reach: check },
  {
    name: "check-tires",
    reach: async (stage) => {
      await check(stage);
      await stage.page
        .getByRole("list", { name: "Conflicts by weight" })
        .getByRole("button", { name: /rear tire size/i })
        .click();
      await expect(stage.page.locator("#conflict-topic")).toHaveText(/rear tire size/i);
    },
  },
  {
    name: "check-ruling",
    reach: byKeys(check, ["1"], (page) => expect(page.getByLabel("Reason")).toBeFocused()),
  },
  {
    name: "check-filter",
    reach: async (stage) => {
      await check(stage);
      await stage.page.getByRole("combobox", { name: "Kind of conflict" }).click();
      await expect(stage.page.getByRole("listbox")).toBeVisible();
    },
  },
  { name: "check-promise", reach: queued("Promises") },
  { name: "check-question", reach: queued("Questions") },
  {
    name: "check-note",
    reach: async (stage) => {
      await check(stage);
      await stage.page.getByRole("button", { name: /^Title status/ }).click();
      await expect(stage.page.getByRole("heading", { name: "Title status" })).toBeVisible();
      await stage.page.keyboard.press("1");
      await expect(stage.page.getByRole("textbox", { name: "Reason" })).toBeFocused();
    },
  },
  { name: "check-doubtful", reach: queued("Doubtful captions") },
  { name: "check-publish", reach: publish },
  {
    name: "check-publish-asked",
    reach: byKeys(publish, ["Shift+P"], (page) => expect(page.getByRole("alertdialog", { name: /^Publish with/ })).toBeVisible()),
  },
  { name: "check-keys", reach: byKeys(check, ["?"], dialog("Keys and signs")) },
  { name: "export", reach: exportPanel },
  {
    name: "export-files",
    reach: async (stage) => {
      await exportPanel(stage);
      await stage.page.getByRole("button", { name: /^Show \d files of Chapters/ }).click();
      await stage.page.getByRole("checkbox", { name: "Chapters, list" }).click();
    },
  },
  {
    name: "export-preview",
    reach: async (stage) => {
      await exportPanel(stage);
      await stage.page.getByRole("button", { name: /^Show \d files of Chapters/ }).click();
      await stage.page.getByRole("button", { name: "Look at Chapters, list" }).click();
      await expect(stage.page.getByRole("button", { name: "Close the preview" })).toBeVisible();
    },
  },
  {
    name: "no-such-recording",
    reach: async (stage) => {
      await open(stage, "#/recording/nothing/mark");
      await expect(stage.page.getByRole("link", { name: "Back to the library" })).toBeVisible();
    },
  },
];

export const callScenes: readonly Scene[] = [
  { name: "call", reach: (stage) => call(stage, "") },
  {
    name: "call-hits",
    reach: async (stage) => {
      await call(stage, "underside");
      await expect(stage.page.getByRole("region", { name: "Answer" })).toBeVisible();
    },
  },
  {
    name: "call-one-vehicle",
    reach: async (stage) => {
      await open(stage, `#/call?of=${stage.demo}&ask=underside`);
      await expect(stage.page.getByRole("combobox", { name: "Ask of this vehicle" })).toBeFocused();
      await expect(stage.page.getByRole("region", { name: "Answer" })).toBeVisible();
    },
  },
  {
    name: "call-disputed",
    reach: async (stage) => {
      await call(stage, "axle ratio");
      await expect(stage.page.getByRole("region", { name: "Answer" })).toContainText("Do not state it");
    },
  },
  {
    name: "call-nothing",
    reach: async (stage) => {
      await call(stage, "headliner voltage");
      await expect(stage.page.getByText("Nothing for “headliner voltage”.")).toBeVisible();
    },
  },
  {
    name: "call-compare",
    reach: async (stage) => {
      await library(stage);
      // Once; a second import of the same words would be a second vehicle.
      if ((await stage.page.getByRole("link", { name: /^Mark .*Pathmark/ }).count()) === 0) await importSecondVehicle(stage.page);
      await call(stage, "axle ratio");
      await expect(stage.page.getByRole("option", { name: /3\.55:1/ })).toBeVisible();
      await stage.page.keyboard.press("Control+k");
      await expect(stage.page.getByRole("table").getByRole("columnheader")).toHaveCount(3);
    },
  },
  {
    name: "call-compare-vehicles",
    reach: async (stage) => {
      await callScenes.find(({ name }) => name === "call-compare")?.reach(stage);
      await stage.page.getByRole("combobox", { name: "Add a vehicle" }).click();
      await expect(stage.page.getByRole("combobox", { name: "Stock number or name" })).toBeVisible();
    },
  },
];

/** Opens a library and waits until the demo in it has been analysed. */
export async function stageOf(page: Page, address: string): Promise<Stage> {
  const { origin } = new URL(address);
  const link = page.getByRole("link", { name: /^Check / });
  await link.waitFor({ timeout: 60_000 });
  await expect(link).toContainText("open conflict", { timeout: 60_000 });
  const demo = /recording\/([^/]+)\//.exec((await link.getAttribute("href")) ?? "")?.[1] ?? "";
  return { page, origin, demo };
}
