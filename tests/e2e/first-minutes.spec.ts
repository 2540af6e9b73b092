import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "@playwright/test";
import Database from "better-sqlite3";
import { cautions, news } from "../../shared-types/index.ts";
import { expect, test } from "./support/host.ts";

const clips = fileURLToPath(new URL("../../fixtures/media", import.meta.url));
const firstMinutes = (page: Page) => page.getByRole("region", { name: "Your first minutes" });
const help = (page: Page) => page.getByRole("dialog", { name: "Help" });
const home = (page: Page) => page.getByRole("link", { name: "Library" }).click();

async function expectAccessible(page: Page, where: string): Promise<void> {
  for (const colorScheme of ["light", "dark"] as const) {
    await page.emulateMedia({ colorScheme });
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(
      violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 90)).join(" ")}`),
      `${where}, ${colorScheme}`,
    ).toEqual([]);
  }
}

/** Names of controls and headings that reach out of the window. */
const outside = (page: Page) =>
  page.evaluate(() =>
    [...document.querySelectorAll("button, a, input, h1, h2, h3, [role=tab]")]
      .filter((element) => !element.closest(".visually-hidden, .lap-drawing"))
      .map((element) => ({ name: element.textContent, box: element.getBoundingClientRect() }))
      .filter(({ box }) => box.width > 0 && (box.left < -1 || box.right > document.documentElement.clientWidth + 1))
      .map(({ name }) => name),
  );

test("the first start shows the three desks on the demo, takes initials, and imports the first pair", async ({ desk: page, host }) => {
  test.setTimeout(180_000);
  const folder = mkdtempSync(join(tmpdir(), "roundwalk-first-"));
  try {
    await expect(firstMinutes(page).getByRole("link", { name: "Open the demo at Mark" })).toBeVisible({ timeout: 60_000 });
    await expectAccessible(page, "first minutes");

    await test.step("each desk opens on the demo, and is remembered as seen", async () => {
      await firstMinutes(page).getByRole("link", { name: "Open the demo at Mark" }).click();
      await expect(page.getByRole("region", { name: "Captions" })).toBeVisible();
      await home(page);
      await firstMinutes(page).getByRole("link", { name: "Open the demo at Check" }).click();
      await expect(page.getByRole("list", { name: "Conflicts by weight" })).toContainText(/rear tire size/i);
      await home(page);
      await firstMinutes(page).getByRole("link", { name: "Open the demo at Call" }).click();
      await expect(page.getByRole("listbox", { name: "Moments" }).getByRole("option").first()).toContainText(/tire/i);
      await home(page);
      await expect(firstMinutes(page).getByText("seen", { exact: true })).toHaveCount(3);
    });

    await test.step("initials", async () => {
      await firstMinutes(page).getByRole("button", { name: "Sign with your initials…" }).click();
      await page.getByRole("textbox", { name: "Initials" }).fill("FM");
      await page.keyboard.press("Enter");
      await expect(firstMinutes(page).getByText("You sign as FM.")).toBeVisible();
    });

    await test.step("the first pair", async () => {
      const transcript = join(folder, "walk.vtt");
      writeFileSync(transcript, "WEBVTT\n\n00:00.000 --> 00:04.000\nGood morning, here is the 1988 Ossler Pathmark wagon.\n");
      await firstMinutes(page).getByRole("button", { name: "Choose your first pair…" }).click();
      const dialog = page.getByRole("dialog", { name: "Import a recording" });
      await dialog
        .getByRole("group", { name: /Transcript/ })
        .locator("input[type=file]")
        .setInputFiles(transcript);
      await dialog.getByRole("group", { name: /Video/ }).locator("input[type=file]").setInputFiles(join(clips, "clip.webm"));
      await dialog.getByLabel(/Title/).fill("First of my own");
      await dialog.getByRole("button", { name: "Import", exact: true }).click();
      await expect(page.getByRole("heading", { level: 1, name: "First of my own" })).toBeVisible();
    });

    await test.step("with that they are over, after a restart too", async () => {
      await home(page);
      await expect(page.getByRole("link", { name: "First of my own", exact: true })).toBeVisible();
      await expect(firstMinutes(page)).toHaveCount(0);
      const { address } = await host.restart();
      await page.goto(address);
      await expect(page.getByRole("link", { name: "First of my own", exact: true })).toBeVisible();
      await expect(firstMinutes(page)).toHaveCount(0);
      await expect(page.getByRole("region", { name: "What is new" })).toHaveCount(0);
    });
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});

test.describe("in an empty library", () => {
  test.use({ withDemo: false });
  test("the first minutes tell of the desks without a demo, and end for good when told to", async ({ desk: page, host }) => {
    await expect(firstMinutes(page).getByRole("heading", { name: "See the three desks" })).toBeVisible();
    await expect(firstMinutes(page).getByRole("link")).toHaveCount(0);
    await page.setViewportSize({ width: 550, height: 350 });
    expect(await outside(page)).toEqual([]);
    await firstMinutes(page).getByRole("button", { name: "End; do not show again" }).click();
    await expect(firstMinutes(page)).toHaveCount(0);
    const { address } = await host.restart();
    await page.goto(address);
    await expect(page.getByRole("heading", { name: "No recordings yet" })).toBeVisible();
    await expect(firstMinutes(page)).toHaveCount(0);
  });
});

test("after an update, what is new is told once", async ({ desk: page, host }) => {
  await firstMinutes(page).getByRole("link", { name: "Open the demo at Mark" }).waitFor({ timeout: 60_000 });
  const library = new Database(join(host.folder, "library.sqlite"));
  expect(library.prepare("UPDATE settings SET value = '0.0.9' WHERE name = 'toldVersion'").run().changes).toBe(1);
  library.close();
  await page.reload();
  const told = page.getByRole("region", { name: "What is new" });
  await expect(told).toContainText(`Version ${news[0]!.version}`);
  await expect(told).toContainText(news[0]!.points[0]!);
  await expectAccessible(page, "what is new");
  await told.getByRole("button", { name: "Read; do not show again" }).click();
  await expect(told).toHaveCount(0);
  const { address } = await host.restart();
  await page.goto(address);
  await page.getByRole("link", { name: /^Mark / }).waitFor();
  await expect(told).toHaveCount(0);
  await page.keyboard.press("F1");
  await page.getByRole("tab", { name: "What is new" }).click();
  await expect(help(page)).toContainText(news[0]!.points[0]!);
});

test.describe("the help", () => {
  test("opens by its key from every screen, from a field and over a window, and gives the focus back", async ({ desk: page }) => {
    test.setTimeout(120_000);
    await page.getByRole("link", { name: /^Mark / }).waitFor({ timeout: 60_000 });
    await page.keyboard.press("F1");
    await expect(help(page).getByRole("tab", { name: "The three desks" })).toBeFocused();
    await page.keyboard.press("Escape");
    await expect(help(page)).toHaveCount(0);

    await page.getByRole("button", { name: "Import a recording…" }).first().click();
    const title = page.getByRole("dialog", { name: "Import a recording" }).getByLabel(/Title/);
    await title.fill("Half a tit");
    await page.keyboard.press("F1");
    await expect(help(page)).toBeVisible();
    await page.keyboard.press("Escape");
    await expect(help(page)).toHaveCount(0);
    await expect(title).toHaveValue("Half a tit");
    await expect(title).toBeFocused();
    await page.keyboard.press("Escape");

    for (const desk of ["Mark", "Check"]) {
      await page.getByRole("link", { name: new RegExp(`^${desk} `) }).click();
      await expect(page.getByRole("heading", { level: 1, name: /Havelin Tarrow/ })).toBeVisible();
      await page.keyboard.press("F1");
      await expect(help(page).getByRole("tab", { name: "Keys and signs" })).toHaveAttribute("aria-selected", "true");
      await page.keyboard.press("Escape");
      await home(page);
    }

    await page.getByRole("link", { name: "Call", exact: true }).click();
    const field = page.getByRole("combobox", { name: "Ask the library" });
    await field.fill("rear ti");
    await page.keyboard.press("F1");
    await expect(help(page)).toBeVisible();
    await page.keyboard.press("Escape");
    await expect(field).toHaveValue("rear ti");
    await expect(field).toBeFocused();
  });

  test("works without any connection, by the arrows alone, with the screens' own keys and cautions", async ({ desk: page, context }) => {
    await page.getByRole("link", { name: /^Mark / }).waitFor({ timeout: 60_000 });
    await page.getByRole("button", { name: "Help", exact: true }).click();
    await expectAccessible(page, "help, desks");
    await page.keyboard.press("Escape");
    await page.evaluate(() => {
      // What the page then asks for fails; only the help is looked at.
      window.fetch = () => Promise.reject(new TypeError("no connection"));
    });
    await context.setOffline(true);
    await page.keyboard.press("F1");
    await page.keyboard.press("ArrowDown");
    await expect(help(page)).toContainText("run backwards; again for faster");
    await expect(help(page)).toContainText(/hear both\b.*, one after the other/);
    await expect(help(page)).toContainText("copy the answer");
    await expectAccessible(page, "help, keys");
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("ArrowDown");
    for (const caution of Object.values(cautions)) await expect(help(page)).toContainText(caution);
    for (const [width, height] of [
      [1100, 700],
      [550, 350],
    ] as const) {
      await page.setViewportSize({ width, height });
      expect(await outside(page), `${width} by ${height}`).toEqual([]);
    }
    await context.setOffline(false);
  });

  test("asks nobody for a newer version until an https address is given, and says so when it cannot be asked", async ({ desk: page }) => {
    await page.getByRole("link", { name: /^Mark / }).waitFor({ timeout: 60_000 });
    await page.keyboard.press("F1");
    await page.getByRole("tab", { name: "Newer versions" }).click();
    const address = help(page).getByLabel(/Address that tells of versions/);
    await expect(help(page).getByRole("status")).toHaveText("Off: nobody is asked.");
    await address.fill("http://updates.invalid/roundwalk.json");
    await page.keyboard.press("Enter");
    await expect(help(page).getByRole("alert")).toContainText("is no https address");
    await expect(help(page).getByRole("button", { name: "Ask now" })).toHaveCount(0);
    await address.fill("https://updates.invalid/roundwalk.json");
    await page.keyboard.press("Enter");
    await help(page).getByRole("button", { name: "Ask now" }).click();
    await expect(help(page).getByRole("alert")).toContainText("cannot be asked");
    await expectAccessible(page, "help, newer versions");
    await help(page).getByRole("button", { name: "Ask nobody" }).click();
    await expect(help(page).getByRole("button", { name: "Ask now" })).toHaveCount(0);
    await expect(address).toHaveValue("");
  });
});
