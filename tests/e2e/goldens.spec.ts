import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "@playwright/test";
import { expect, test } from "./support/host.ts";
import { callScenes, checkScenes, emptyScenes, libraryScenes, markScenes, type Scene, type Stage, stageOf } from "./support/scenes.ts";
import { removeFolders } from "./support/walk-folders.ts";

/**
 * The screens as they were looked at and kept in goldens/, in both grounds and two sizes. `node tests/e2e/make-goldens.ts` makes them anew;
 * look at each before it is committed.
 */

const folder = join(import.meta.dirname, "goldens");
const madeWithFile = join(folder, "made-with.json");
const making = process.env.ROUNDWALK_MAKES_GOLDENS === "yes";

/** What a picture hangs on besides the page: another browser or system draws letters and edges a little differently. */
const madeOn = (version: string) => ({ browser: `Chromium ${version.split(".")[0]}`, system: process.platform });

// Style sheets that hold the picture still are put into the page, which its own policy forbids.
// A trace takes pictures of its own at every step, which costs more than the pictures asked for.
test.use({ trace: "off", bypassCSP: true, timezoneId: "UTC", locale: "en-US", deviceScaleFactor: 1 });
test.describe.configure({ mode: "parallel" });
test.afterEach(removeFolders);
test.beforeEach(({ browser }) => {
  test.skip(
    !making && process.env.ROUNDWALK_GOLDENS !== "yes",
    "Pictures are compared where ROUNDWALK_GOLDENS=yes: those kept are older than the last changes of the desks, and are to be made anew first.",
  );
  const here = madeOn(browser.version());
  if (making) writeFileSync(madeWithFile, `${JSON.stringify(here, null, 2)}\n`);
  const kept = existsSync(madeWithFile) ? JSON.parse(readFileSync(madeWithFile, "utf8")) : null;
  test.skip(
    kept?.browser !== here.browser || kept?.system !== here.system,
    `The pictures were made with ${kept?.browser} on ${kept?.system}; this is ${here.browser} on ${here.system}.`,
  );
});

/** Times and places that are others at each run, in what the host answers: every moment becomes one moment, the library's folder one folder. */
async function holdStill(page: Page, libraryFolder: string): Promise<void> {
  await page.route(/\/rpc\//, async (route) => {
    const response = await route.fetch();
    const text = (await response.text())
      .replaceAll(/\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(?:\.\d+)?Z/g, "2026-01-07T12:00:00.000Z")
      .replaceAll(libraryFolder, "/home/lot/roundwalk");
    await route.fulfill({ response, body: text });
  });
}

const sizes = [
  { name: "1440x900", width: 1440, height: 900 },
  { name: "1100x700", width: 1100, height: 700 },
] as const;

/**
 * Two runs with one browser draw the same pixels. A thousandth of them may differ: an arrow or a tick that the page's own letters lack comes
 * from the machine. A line of words that came, went or moved is more than that.
 */
const tolerance = { maxDiffPixelRatio: 0.001, threshold: 0.25 } as const;

async function compare(stage: Stage, { name, reach }: Scene): Promise<void> {
  const { page } = stage;
  await page.setViewportSize(sizes[0]);
  await reach(stage);
  await page.evaluate(() => document.fonts.ready);
  expect(await page.evaluate(() => document.fonts.check('16px "Atkinson Hyperlegible Next Variable"')), "the page's own letters").toBe(
    true,
  );
  // The film's place stays, its picture goes: decoders differ. Where the pointer was left, nothing lights up.
  await page.addStyleTag({ content: "video { visibility: hidden !important }" });
  await page.mouse.move(0, 0);
  for (const colorScheme of ["light", "dark"] as const) {
    await page.emulateMedia({ colorScheme, reducedMotion: "reduce" });
    for (const { name: size, ...viewport } of sizes) {
      await page.setViewportSize(viewport);
      await expect.soft(page).toHaveScreenshot(`${name}-${colorScheme}-${size}.png`, tolerance);
    }
  }
}

const kept = new Set([
  ...["library-empty", "library", "library-more", "import", "import-folder", "import-known", "describe", "remove", "templates", "initials"],
  ...["mark", "mark-finding-form", "mark-zones", "mark-zone", "mark-keys"],
  ...["check-tires", "check-ruling", "check-promise", "check-note", "check-publish", "check-publish-asked", "export"],
  ...["call", "call-hits", "call-one-vehicle", "call-disputed", "call-compare"],
]);
const groups = { library: libraryScenes, Mark: markScenes, Check: checkScenes, Call: callScenes };

test.describe("an empty library", () => {
  test.use({ withDemo: false });
  test("looks as it was kept", async ({ page, host }) => {
    test.setTimeout(240_000);
    await holdStill(page, host.folder);
    await page.goto(host.address);
    const stage = { page, origin: new URL(host.address).origin, demo: "" };
    for (const scene of emptyScenes.filter(({ name }) => kept.has(name))) await test.step(scene.name, () => compare(stage, scene));
  });
});

for (const [desk, scenes] of Object.entries(groups)) {
  test(`${desk} looks as it was kept`, async ({ page, host }) => {
    test.setTimeout(600_000);
    await holdStill(page, host.folder);
    await page.goto(host.address);
    const stage = await stageOf(page, host.address);
    for (const scene of scenes.filter(({ name }) => kept.has(name))) await test.step(scene.name, () => compare(stage, scene));
  });
}
