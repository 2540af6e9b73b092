import type { Page } from "@playwright/test";
import { expect, test } from "./support/host.ts";
import { importSecondVehicle } from "./support/second-vehicle.ts";
import { film } from "./support/steps.ts";

test.use({ permissions: ["clipboard-read", "clipboard-write"] });

/** The Call desk with the demo in the library, reached by keys alone. */
async function atCallDesk(page: Page): Promise<void> {
  await page.getByRole("link", { name: /^Check / }).waitFor({ timeout: 60_000 });
  const link = page.getByRole("link", { name: "Call", exact: true });
  for (let tabs = 0; tabs < 10 && !(await link.evaluate((element) => element === document.activeElement)); tabs++)
    await page.keyboard.press("Tab");
  await page.keyboard.press("Enter");
  await expect(page.getByRole("combobox", { name: "Ask the library" })).toBeFocused();
}

async function ask(page: Page, words: string): Promise<void> {
  await page.keyboard.press("Control+a");
  await page.keyboard.type(words);
}

const copied = (page: Page) => page.evaluate(() => navigator.clipboard.readText());

test("the salesperson's whole job on the demo, without the mouse", async ({ desk: page }) => {
  test.setTimeout(180_000);
  await atCallDesk(page);
  const moments = page.getByRole("listbox", { name: "Moments" }).getByRole("option");
  const answer = page.getByRole("region", { name: "Answer" });
  const chosen = page.getByRole("option", { selected: true });

  await test.step("at the underside within five seconds of the word", async () => {
    const heard = Date.now();
    await ask(page, "chassis");
    await expect(moments.first()).toContainText("Underside");
    await page.keyboard.press("Enter");
    const stamp = /(\d+):(\d\d)/.exec((await moments.first().textContent()) ?? "")!;
    const start = Number(stamp[1]) * 60 + Number(stamp[2]);
    await expect.poll(async () => (await film(page)).time).toBeGreaterThan(start);
    expect(Date.now() - heard).toBeLessThan(5000);
    await page.keyboard.press("Shift+Enter");
    await expect.poll(() => page.locator("video").evaluate((element) => (element as HTMLVideoElement).paused)).toBe(true);
  });

  await test.step("the answer is one sentence with stock number and time, copied by a key", async () => {
    await page.keyboard.press("Control+Enter");
    await expect(answer.getByRole("status")).toHaveText("copied");
    expect(await copied(page)).toMatch(/^Stock CK-2107: underside from \d+:\d\d to \d+:\d\d\.$/);
  });

  await test.step("the arrow keys go through the moments", async () => {
    const first = await chosen.textContent();
    await page.keyboard.press("ArrowDown");
    await expect(chosen).not.toHaveText(first ?? "");
    await page.keyboard.press("ArrowUp");
    await expect(chosen).toHaveText(first ?? "");
  });

  await test.step("spelling is forgiven, and how the word was read is said", async () => {
    await ask(page, "undersied");
    await expect(moments.first()).toContainText("Underside");
    await expect(page.getByText("Nothing is called “undersied”.")).toBeVisible();
    await ask(page, "gaerbox");
    await expect(moments.first()).toContainText(/transmission|speed/i);
  });

  await test.step("what is in dispute has no sentence, and a key opens that very conflict", async () => {
    await ask(page, "axle ratio");
    await expect(chosen).toContainText("in dispute");
    await expect(answer).toContainText("Do not state it");
    await page.evaluate(() => navigator.clipboard.writeText("before"));
    await page.keyboard.press("Control+Enter");
    expect(await copied(page)).toBe("before");
    await expect(answer.getByRole("status")).toContainText(/^Nothing was copied: it stands as in dispute \(.*ratio, stock CK-2107\)/);
    await page.keyboard.press("Alt+Enter");
    await expect(page.getByRole("heading", { name: "Axle ratio" })).toBeVisible();
    await page.keyboard.press("2");
    await page.keyboard.type("Read on the tag.");
    await page.keyboard.press("Control+Enter");
    await page.getByRole("textbox", { name: "Initials" }).waitFor();
    await page.keyboard.type("RT");
    await page.keyboard.press("Enter");
    await expect(page.getByText("settled", { exact: true }).first()).toBeVisible();
    await page.goBack();
    await expect(page.getByRole("combobox", { name: "Ask the library" })).toHaveValue("axle ratio");
    await expect(moments.filter({ hasText: "4.11:1" }).first()).not.toContainText("in dispute");
    await expect(moments.filter({ hasText: "3.73:1" }).first()).toContainText("overruled");
  });
});

test("two vehicles by a claim, without the mouse", async ({ desk: page }) => {
  await atCallDesk(page);
  await importSecondVehicle(page);
  await ask(page, "axle ratio");
  await expect(page.getByRole("option", { name: /3\.55:1/ })).toBeVisible();
  await page.keyboard.press("Control+k");
  const table = page.getByRole("table");
  await expect(table.getByRole("columnheader")).toHaveCount(3);
  await expect(page.getByRole("searchbox", { name: "Which claim" })).toBeFocused();
  const row = table.getByRole("row", { name: /^Final drive ratio/ });
  await expect(row).toContainText("3.55:1");
  await expect(row).toContainText("in dispute");

  await test.step("the arrow keys reach each moment, Enter plays it, and its sentence is copied", async () => {
    await page.keyboard.press("ArrowDown");
    const own = row.getByRole("button", { name: /3\.55:1/ });
    for (let steps = 0; steps < 4 && !(await own.evaluate((element) => element === document.activeElement)); steps++)
      await page.keyboard.press("ArrowRight");
    await expect(own).toBeFocused();
    await page.keyboard.press("Enter");
    await expect(page.getByRole("region", { name: /^Player, 1988 Ossler Pathmark/ })).toBeVisible();
    await expect(page.getByRole("note").filter({ hasText: "another vehicle" })).toHaveCount(0);
    await page.keyboard.press("Control+Enter");
    await expect(page.getByRole("region", { name: "Answer" }).getByRole("status")).toHaveText("copied");
    expect(await copied(page)).toMatch(/^Stock OP-1988: final drive ratio 3\.55:1, said at 0:(?:1[4-9]|2[0-4])\.$/);
  });

  await test.step("a moment of the other vehicle, beside the first one's player, is told apart", async () => {
    await row.locator('.compare-moment:not(:has-text("3.55:1"))').first().focus();
    await expect(page.getByRole("note").filter({ hasText: "another vehicle" })).toContainText(
      /plays stock OP-1988.*another vehicle: CK-2107/,
    );
  });

  await test.step("where nobody said, it says so", async () => {
    await page.keyboard.press("/");
    await ask(page, "number of owners");
    await expect(table.getByRole("cell", { name: "nobody said" }).first()).toBeVisible();
    await ask(page, "headliner voltage");
    await expect(page.getByText("No claim about “headliner voltage” was heard of any of these vehicles.")).toBeVisible();
  });

  await test.step("a vehicle is taken away and put back by its stock number", async () => {
    const away = page.getByRole("button", { name: /^Take away/ });
    await page.keyboard.press("Tab");
    await expect(away.first()).toBeFocused();
    const gone = (await away.first().getAttribute("aria-label"))?.includes("OP-1988") ? "OP-1988" : "CK-2107";
    await page.keyboard.press("Enter");
    await expect(away).toHaveCount(1);
    const add = page.getByRole("combobox", { name: "Add a vehicle" });
    await page.keyboard.press("/");
    for (let tabs = 0; tabs < 4 && !(await add.evaluate((element) => element === document.activeElement)); tabs++)
      await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    await expect(page.getByRole("combobox", { name: "Stock number or name" })).toBeFocused();
    await page.keyboard.type(gone.toLowerCase());
    await expect(page.getByRole("option")).toHaveCount(1);
    await page.keyboard.press("Enter");
    await expect(page.getByRole("button", { name: /^Take away/ })).toHaveCount(2);
  });
});

test("one vehicle is asked of from its row, and Escape asks them all again", async ({ desk: page }) => {
  const row = page.getByRole("link", { name: /^Call .*Havelin Tarrow/ });
  await row.waitFor({ timeout: 60_000 });
  for (let tabs = 0; tabs < 30 && !(await row.evaluate((element) => element === document.activeElement)); tabs++)
    await page.keyboard.press("Tab");
  await page.keyboard.press("Enter");
  await expect(page.getByRole("combobox", { name: "Ask of this vehicle" })).toBeFocused();
  await ask(page, "underside");
  await expect(page.getByRole("option", { selected: true })).toContainText("Underside");
  await expect(page).toHaveURL(/ask=underside/);
  await expect(page).toHaveURL(/of=[0-9a-f-]{36}/);
  // The first clears the question, as everywhere; the second leaves the vehicle.
  await page.keyboard.press("Escape");
  await expect(page.getByRole("heading", { level: 1, name: /^Only 1971 Havelin Tarrow/ })).toBeVisible();
  await page.keyboard.press("Escape");
  await expect(page.getByRole("heading", { level: 1, name: "The whole library" })).toBeVisible();
  await expect(page.getByRole("combobox", { name: "Ask the library" })).toBeFocused();
  await page.goBack();
  await expect(page.getByRole("heading", { level: 1, name: /^Only 1971 Havelin Tarrow/ })).toBeVisible();
});

test("the desk's keys also act from the answer's own buttons", async ({ desk: page }) => {
  await atCallDesk(page);
  await ask(page, "underside");
  const copy = page.getByRole("button", { name: "Copy the answer" });
  await copy.focus();
  await page.keyboard.press("Control+Enter");
  await expect(page.getByRole("region", { name: "Answer" }).getByRole("status")).toHaveText("copied");
  await page.keyboard.press("Control+k");
  await expect(page.getByRole("searchbox", { name: "Which claim" })).toBeFocused();
  await page.getByRole("combobox", { name: "Add a vehicle" }).focus();
  await page.keyboard.press("Control+k");
  await expect(page.getByRole("combobox", { name: "Ask the library" })).toHaveValue("underside");
});
