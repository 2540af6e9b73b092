import type { Page } from "@playwright/test";
import { expect, test } from "./support/host.ts";
import { film, giveInitials, openDemo } from "./support/steps.ts";

const blur = (page: Page) => page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
const keysDialog = (page: Page) => page.getByRole("dialog", { name: "Help" });

test("the question mark shows the keys where no field types it", async ({ desk: page }) => {
  await expect(page.getByRole("link", { name: /^Mark / })).toBeVisible({ timeout: 60_000 });
  await blur(page);
  await page.keyboard.press("?");
  await expect(keysDialog(page)).toContainText("import a recording");
  await page.keyboard.press("Escape");
  await page.getByRole("link", { name: "Call", exact: true }).click();
  const field = page.getByRole("combobox").or(page.getByRole("searchbox")).first();
  // A question has its mark; in an empty field nobody has asked one yet.
  await field.fill("does it have a spare");
  await page.keyboard.type("?");
  await expect(field).toHaveValue("does it have a spare?");
  await expect(keysDialog(page)).toBeHidden();
  await field.fill("");
  await page.keyboard.type("?");
  await expect(keysDialog(page)).toContainText("copy the answer");
  await page.keyboard.press("Escape");
  await expect(field).toHaveValue("");
  await blur(page);
  await page.keyboard.press("?");
  await expect(keysDialog(page)).toContainText("copy the answer");
});

test("the finding form keeps its letters and its words, and is saved from any field", async ({ desk: page }) => {
  await openDemo(page, "Mark");
  await giveInitials(page, "MK");
  await expect.poll(async () => (await film(page)).width).toBeGreaterThan(0);
  await blur(page);
  await page.keyboard.press("f");
  const form = page.getByRole("form", { name: "New finding" });
  await expect(form).toBeVisible();
  await page.keyboard.type("scuffed corner");
  await test.step("letters on a choice are its own", async () => {
    const belongsTo = form.getByRole("combobox", { name: "Belongs to" });
    await belongsTo.focus();
    await page.keyboard.press("i");
    await page.keyboard.press("s");
    await expect(page.getByRole("status").filter({ hasText: /Split/ })).toHaveCount(0);
    await expect(page.getByRole("form", { name: "New finding" })).toBeVisible();
  });
  await test.step("F comes back to the open form with what was typed", async () => {
    await blur(page);
    await page.keyboard.press("3");
    await expect(form).toBeHidden();
    await blur(page);
    await page.keyboard.press("f");
    await expect(form.getByRole("textbox", { name: "What is seen" })).toBeFocused();
    await expect(form.getByRole("textbox", { name: "What is seen" })).toHaveValue("scuffed corner");
  });
  await test.step("Alt S takes its still from outside", async () => {
    await blur(page);
    await page.keyboard.press("Alt+s");
    await expect(form.getByRole("button", { name: "Take again" })).toBeVisible({ timeout: 30_000 });
  });
  await test.step("no button lies on a field, and Ctrl Enter saves from the note", async () => {
    await page.setViewportSize({ width: 1100, height: 700 });
    for (const name of ["From", "To", "Note"]) {
      const box = form.getByRole("textbox", { name, exact: true });
      await box.scrollIntoViewIfNeeded();
      const covered = await box.evaluate((element) => {
        const { left, top, width, height } = element.getBoundingClientRect();
        return document.elementFromPoint(left + width / 2, top + height / 2) !== element;
      });
      expect(covered, name).toBe(false);
    }
    await form.getByText("Worn", { exact: true }).click();
    await form.getByRole("textbox", { name: "Note" }).press("Control+Enter");
    await expect(form).toBeHidden();
    await expect(page.getByRole("status").filter({ hasText: "Finding added" })).toBeAttached();
  });
});

test("Escape leaves the captions' search with its words, so that G goes on", async ({ desk: page }) => {
  await openDemo(page, "Mark");
  await expect.poll(async () => (await film(page)).width).toBeGreaterThan(0);
  await blur(page);
  await page.keyboard.press("/");
  await page.keyboard.type("trunk");
  await page.keyboard.press("Enter");
  const first = (await film(page)).time;
  await page.keyboard.press("Escape");
  await page.keyboard.press("g");
  await expect.poll(async () => (await film(page)).time).toBeGreaterThan(first);
  const field = page.getByRole("searchbox", { name: "Search the captions" });
  await expect(field).toHaveValue("trunk");
  await page.keyboard.press("Escape");
  await expect(field).toHaveValue("");
});

test("a refusal lies over the desk, and goes with Escape; what was saved is told whole, for a while", async ({ desk: page }) => {
  await openDemo(page, "Mark");
  await giveInitials(page, "MK");
  await expect.poll(async () => (await film(page)).width).toBeGreaterThan(0);
  await blur(page);
  const video = page.locator("video").first();
  const before = await video.boundingBox();
  await page.keyboard.press("Home");
  await page.keyboard.press("s");
  const refused = page.getByRole("alert").filter({ hasText: /split/ });
  await expect(refused).toBeVisible();
  expect(await video.boundingBox()).toEqual(before);
  await page.keyboard.press("Escape");
  await expect(refused).toBeHidden();
  await page.keyboard.press("ArrowDown");
  await page.keyboard.press("a");
  const told = page.locator(".head-saved");
  await expect(told).toContainText("Zone span accepted");
  expect(await told.evaluate((element) => element.scrollWidth <= (element.parentElement?.clientWidth ?? 0) + 1)).toBe(true);
  await page.keyboard.press("a");
  await expect(page.getByText("Accepted already: there is nothing to accept here.")).toBeVisible();
  await expect(told).toBeHidden({ timeout: 20_000 });
});

test("the side of a conflict that is heard says so", async ({ desk: page }) => {
  await openDemo(page, "Check");
  const side = (letter: string) => page.getByRole("region", { name: new RegExp(`^Side ${letter}: `) });
  await expect(side("A")).toBeVisible();
  await blur(page);
  await page.keyboard.press("b");
  await expect(side("B")).toContainText("playing side B");
  await expect(side("A")).not.toContainText("playing");
  await page.keyboard.press("s");
  await expect(side("B")).not.toContainText("playing");
});
