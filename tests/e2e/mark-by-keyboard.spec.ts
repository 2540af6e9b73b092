import type { Page } from "@playwright/test";
import { expect, test } from "./support/host.ts";
import { film, giveInitials, openDemo } from "./support/steps.ts";

/** Name of what has the keyboard. */
const focused = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const { activeElement } = document;
    return activeElement?.getAttribute("aria-label") ?? (activeElement?.tagName === "BUTTON" ? (activeElement.textContent ?? "") : "");
  });
const press = async (page: Page, ...keys: string[]): Promise<void> => {
  for (const key of keys) await page.keyboard.press(key);
};
const time = async (page: Page): Promise<number> => (await film(page)).time;
const onDisk = (page: Page, words: string | RegExp) => expect(page.getByRole("status").filter({ hasText: words })).toBeAttached();

test("the whole Mark job on the demo without the mouse", async ({ desk: page }) => {
  test.setTimeout(240_000);
  await openDemo(page, "Mark");
  await giveInitials(page, "MK");
  await expect.poll(async () => (await film(page)).width).toBeGreaterThan(0);
  await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
  const captions = page.getByRole("region", { name: "Captions" });
  /** Where the finding was made, seconds. */
  let foundAt = 0;

  await test.step("the shuttle, frames, rates and volume", async () => {
    await press(page, "l");
    await expect.poll(() => time(page)).toBeGreaterThan(1);
    await press(page, "l", "l");
    await expect(page.getByRole("combobox", { name: "Rate" })).toHaveText(/1.5×/);
    await expect.poll(() => time(page)).toBeGreaterThan(3);
    await press(page, "k");
    const stood = await time(page);
    await expect(page.getByRole("combobox", { name: "Rate" })).toHaveText(/1×/);
    await press(page, "j", "j");
    await expect(page.getByLabel("Shuttle")).toHaveText(/back 2×/);
    await expect.poll(() => time(page)).toBeLessThan(stood - 1);
    await press(page, "k");
    const still = await time(page);
    await press(page, ".");
    await expect.poll(() => time(page)).toBeGreaterThan(still);
    expect((await time(page)) - still).toBeLessThan(0.11);
    await press(page, "Shift+ArrowDown", "Shift+ArrowDown", "m");
    const volume = page.getByRole("slider", { name: "Volume" });
    await expect(volume).toHaveAttribute("aria-valuetext", "muted");
    await press(page, "m");
    await expect(volume).toHaveAttribute("aria-valuetext", "80 percent");
    expect(await page.locator("video").evaluate((video: HTMLVideoElement) => video.volume)).toBeCloseTo(0.8);
  });

  await test.step("the film large and small again, and to the captions", async () => {
    await press(page, "v");
    await expect(page.getByRole("button", { name: "Large" })).toHaveAttribute("aria-pressed", "true");
    await expect(page.getByRole("slider", { name: "Playhead" })).toBeHidden();
    // A list asked for by its key brings its page back.
    await press(page, "2");
    await expect(page.getByRole("list", { name: "Findings" })).toBeVisible();
    await expect(page.getByRole("slider", { name: "Playhead" })).toBeVisible();
    await press(page, "3", "1");
    await expect(captions).toBeFocused();
    await page.evaluate(() => (document.activeElement as HTMLElement).blur());
  });

  await test.step("the sheet tells every key", async () => {
    await press(page, "?");
    const sheet = page.getByRole("dialog", { name: "Keys and signs" });
    for (const words of ["run backwards", "louder", "to the next conflict", "correct the words", "search the captions"])
      await expect(sheet).toContainText(words);
    await press(page, "Escape");
    await expect(sheet).toBeHidden();
  });

  await test.step("search the captions, from hit to hit", async () => {
    await press(page, "/");
    await page.keyboard.type("trunk");
    await expect(captions.page().getByText(/^\d+ hits?$/)).toBeVisible();
    await press(page, "Enter");
    const first = await time(page);
    await press(page, "Enter");
    await expect(page.getByText(/^2 of \d+$/)).toBeVisible();
    await expect.poll(() => time(page)).toBeGreaterThan(first);
    await press(page, "Shift+Enter");
    await expect.poll(() => time(page)).toBeCloseTo(first, 1);
    await press(page, "Escape", "Escape");
  });

  await test.step("correct a caption's words: drop, keep, look at the original, undo and redo", async () => {
    await press(page, "e");
    await expect.poll(() => focused(page)).toMatch(/^Words of the caption at /);
    const name = await focused(page);
    const original = await page.getByRole("textbox", { name }).inputValue();
    await page.keyboard.type(" nonsense");
    await press(page, "Escape");
    await expect(captions.getByText("nonsense")).toHaveCount(0);
    await press(page, "e", "Control+a");
    await page.keyboard.type("the trunk lid is speckled and the rear tires are two twenty five seventy fifteens");
    await press(page, "Enter");
    await expect(captions.getByText("speckled")).toBeVisible({ timeout: 30_000 });
    await expect(page.getByRole("textbox", { name })).toHaveCount(0);
    await expect(captions.getByText("corrected, MK")).toBeVisible();
    await press(page, "w");
    await expect(captions.getByText(`came as “${original}”`)).toBeVisible();
    await press(page, "w");
    await expect(captions.getByText("came as")).toHaveCount(0);
    await press(page, "Control+z");
    await expect(captions.getByText("speckled")).toHaveCount(0, { timeout: 30_000 });
    await press(page, "Control+Shift+z");
    await expect(captions.getByText("speckled")).toBeVisible({ timeout: 30_000 });
  });

  await test.step("zones: accept one, split, join, retitle, move a border, mark a stretch, accept it, accept all", async () => {
    await press(page, "3", "a");
    await onDisk(page, "Zone span accepted");
    const zones = page.getByRole("list", { name: "Zone spans" });
    const count = () => zones.getByRole("listitem").first().getAttribute("aria-setsize").then(Number);
    const before = await count();
    await press(page, "s");
    await expect.poll(count).toBe(before + 1);
    await press(page, "Shift+S");
    await expect.poll(count).toBe(before);
    await press(page, "t");
    await page.getByRole("textbox", { name: "Title" }).fill("Trunk, opened");
    await press(page, "Enter");
    await expect(zones.getByText("Trunk, opened")).toBeVisible();
    await press(page, "b");
    await expect.poll(() => focused(page)).toMatch(/^Border, /);
    const moment = await page.evaluate(() => document.activeElement?.getAttribute("aria-valuetext"));
    await press(page, "Shift+ArrowRight");
    await onDisk(page, /Border moved/);
    await press(page, "Control+z");
    await onDisk(page, /^Undone: .*border/i);
    await press(page, "b");
    await expect.poll(() => page.evaluate(() => document.activeElement?.getAttribute("aria-valuetext"))).toBe(moment);
    await page.evaluate(() => (document.activeElement as HTMLElement).blur());
    await press(page, "ArrowDown", "i", "ArrowDown", "ArrowDown", "o", "Shift+A");
    // From border to border: two spans and no sliver of the third.
    await onDisk(page, "2 zone spans accepted");
    await press(page, "Shift+Y");
    await expect(zones.getByText("proposed")).toHaveCount(0);
    await press(page, "x");
  });

  await test.step("proposed findings: one after another, those of a stretch, and all", async () => {
    await press(page, "n");
    await expect.poll(() => focused(page)).toMatch(/^Accept “/);
    const first = await focused(page);
    await press(page, "Enter");
    await expect.poll(() => focused(page)).not.toBe(first);
    await expect.poll(() => focused(page)).toMatch(/^Accept “/);
    const second = await focused(page);
    await press(page, "Enter");
    await expect.poll(() => focused(page)).not.toBe(second);
    await expect.poll(() => focused(page)).toMatch(/^Accept “/);
    await page.evaluate(() => (document.activeElement as HTMLElement).blur());
    await press(page, "i");
    for (let step = 0; step < 20; step++) await press(page, "Shift+ArrowRight");
    await press(page, "o");
    const marked = page.getByRole("button", { name: /^Accept marked/ });
    await expect(marked).toHaveText(/\([1-9]/);
    await press(page, "Shift+A");
    await expect(marked).toHaveText(/\(0\)/);
    await press(page, "x");
    await page.evaluate(() => (document.activeElement as HTMLElement).blur());
    await press(page, "Shift+Y");
    await expect(page.getByRole("button", { name: /^Accept all \(0\)/ })).toBeVisible();
  });

  await test.step("a finding with its part found by typing, a grade and a still", async () => {
    await page.evaluate(() => (document.activeElement as HTMLElement).blur());
    foundAt = await time(page);
    await press(page, "f");
    await expect(page.getByRole("textbox", { name: "What is seen" })).toBeFocused();
    await page.keyboard.type("stone chips along the edge");
    await press(page, "Tab");
    await page.keyboard.type("trunk l");
    await expect(page.getByRole("option", { name: /^trunk lid/ })).toBeVisible();
    await press(page, "ArrowDown", "Enter");
    await expect(page.getByRole("combobox", { name: "Part" })).toHaveValue("trunk lid");
    await expect(page.getByRole("combobox", { name: "Belongs to" })).toHaveText(/body/);
    await expect(page.getByRole("combobox", { name: "Position" })).toHaveText(/rear/);
    await press(page, "Alt+s");
    await expect(page.getByRole("img", { name: /^The video at / })).toBeVisible({ timeout: 30_000 });
    await press(page, "Tab", "Tab", "Tab", "Space", "ArrowRight", "ArrowRight");
    await expect(page.getByRole("radio", { name: "Worn" })).toBeChecked();
    await press(page, "Enter");
    const row = page.getByRole("list", { name: "Findings" }).getByRole("listitem").filter({ hasText: "stone chips" });
    await expect(row).toContainText(/trunk lid \(body\), worn/);
    await expect(row.getByRole("button", { name: /^Show the still/ }).locator("img")).toBeVisible();
    await expect.poll(() => focused(page)).toBe("Change “stone chips along the edge”");
    await press(page, "Tab", "Tab", "Enter");
    const still = page.getByRole("dialog", { name: "stone chips along the edge" }).getByRole("img");
    await expect(still).toBeVisible();
    expect(await still.evaluate((image: HTMLImageElement) => image.naturalWidth)).toBeGreaterThan(300);
    await press(page, "Escape");
  });

  await test.step("undo and redo the finding; it is still there after the page is loaded again, with its still", async () => {
    const row = page.getByRole("list", { name: "Findings" }).getByRole("listitem").filter({ hasText: "stone chips" });
    await press(page, "Control+z");
    await expect(row).toHaveCount(0);
    await press(page, "Control+Shift+z");
    await expect(row).toHaveCount(1);
    await page.reload();
    await expect(captions).toBeVisible();
    for (let seconds = 0; seconds < foundAt - 2; seconds += 5) await press(page, "Shift+ArrowRight");
    await press(page, "2");
    await expect(row.getByRole("button", { name: /^Show the still/ }).locator("img")).toBeVisible();
  });

  await test.step("from the strip to a conflict, and on to Check at that very one", async () => {
    await page.getByRole("slider", { name: "Playhead" }).focus();
    await press(page, "c");
    await expect.poll(() => focused(page)).toMatch(/, open conflict, at \d+:\d\d and \d+:\d\d/);
    const first = await focused(page);
    await press(page, "ArrowRight");
    const second = await focused(page);
    expect(second).not.toBe(first);
    await press(page, "Shift+C");
    expect(await focused(page)).toBe(first);
    await press(page, "=", "=", "=", "c");
    expect(await focused(page)).toBe(second);
    await press(page, "Enter");
    const topic = second.split(",")[0] ?? "";
    await expect(page.getByRole("heading", { name: topic }).first()).toBeVisible();
    expect(page.url()).toContain("/check?conflict=");
  });
});
