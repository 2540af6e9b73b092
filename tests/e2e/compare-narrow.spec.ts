import { expect, test } from "./support/host.ts";
import { importSecondVehicle } from "./support/second-vehicle.ts";

test("four vehicles side by side in a small window: whole words, scrolled sideways", async ({ desk: page }) => {
  await page.setViewportSize({ width: 1100, height: 700 });
  await page.getByRole("link", { name: /^Check / }).waitFor({ timeout: 60_000 });
  const ids: string[] = [];
  for (const stockNumber of ["OP-1988", "OP-1989", "OP-1990", "OP-1991"]) ids.push((await importSecondVehicle(page, stockNumber)).id);
  await page.getByRole("link", { name: "Call", exact: true }).click();
  await page.getByRole("combobox", { name: "Ask the library" }).fill("OP-1988 OP-1989 OP-1990 OP-1991 axle ratio");
  await page.getByRole("button", { name: "Compare vehicles" }).click();
  await expect(page.getByRole("searchbox", { name: "Which claim" })).toHaveValue("axle ratio");
  await expect(page.getByRole("button", { name: /^Take away/ })).toHaveCount(4);
  const table = page.getByRole("table");
  await expect(table.getByRole("columnheader")).toHaveCount(5);

  const broken = await table.evaluate((element) => {
    const torn: string[] = [];
    const walker = document.createTreeWalker(element, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      for (const word of (node.textContent ?? "").matchAll(/[\p{L}\p{N}]+/gu)) {
        const range = document.createRange();
        range.setStart(node, word.index);
        range.setEnd(node, word.index + word[0].length);
        if (new Set([...range.getClientRects()].map(({ top }) => Math.round(top))).size > 1) torn.push(word[0]);
      }
    }
    return torn;
  });
  expect(broken).toEqual([]);
  const widths = await table
    .getByRole("columnheader")
    .evaluateAll((heads) => heads.slice(1).map((head) => head.getBoundingClientRect().width));
  expect(Math.min(...widths)).toBeGreaterThanOrEqual(150);

  const hold = page.locator(".compare-hold");
  expect(await hold.evaluate((element) => element.scrollWidth > element.clientWidth)).toBe(true);
  expect(await page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth)).toBe(true);
  await page.keyboard.press("ArrowDown");
  for (let steps = 0; steps < 3; steps++) await page.keyboard.press("ArrowRight");
  const last = table
    .getByRole("row", { name: /^Final drive ratio/ })
    .locator(".compare-moment")
    .last();
  await expect(last).toBeFocused();
  await expect(last).toBeInViewport({ ratio: 0.9 });
  await expect(table.getByRole("rowheader", { name: "Final drive ratio" })).toBeInViewport({ ratio: 0.9 });
});
