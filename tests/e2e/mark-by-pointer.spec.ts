import type { Locator, Page } from "@playwright/test";
import { expect, test } from "./support/host.ts";
import { lapOf } from "./support/lap.ts";
import { film, giveInitials, openDemo } from "./support/steps.ts";

const time = async (page: Page): Promise<number> => (await film(page)).time;
async function centre(of: Locator): Promise<{ x: number; y: number }> {
  const box = (await of.boundingBox())!;
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}
const onDisk = (page: Page, words: string | RegExp) => expect(page.getByRole("status").filter({ hasText: words })).toBeAttached();

test("the whole Mark job on the demo by pointer alone, but for the words that are typed", async ({ desk: page }) => {
  test.setTimeout(240_000);
  await openDemo(page, "Mark");
  await giveInitials(page, "MP");
  await expect.poll(async () => (await film(page)).width).toBeGreaterThan(0);
  const captions = page.getByRole("region", { name: "Captions" });

  await test.step("play, pause, frames, rate and volume", async () => {
    await page.getByRole("button", { name: /^Play/ }).click();
    await expect.poll(() => time(page)).toBeGreaterThan(0.5);
    await page.getByRole("button", { name: /^Pause/ }).click();
    const stood = await time(page);
    await page.getByRole("button", { name: "One frame on" }).click();
    await expect.poll(() => time(page)).toBeGreaterThan(stood);
    await page.getByRole("combobox", { name: "Rate" }).click();
    await page.getByRole("option", { name: "2×" }).click();
    expect(await page.locator("video").evaluate((video: HTMLVideoElement) => video.playbackRate)).toBe(2);
    const volume = (await page.getByRole("slider", { name: "Volume" }).boundingBox())!;
    await page.mouse.click(volume.x + volume.width * 0.3, volume.y + volume.height / 2);
    expect(await page.locator("video").evaluate((video: HTMLVideoElement) => video.volume)).toBeLessThan(0.5);
    await page.getByRole("button", { name: "Mute" }).click();
    expect(await page.locator("video").evaluate((video: HTMLVideoElement) => video.muted)).toBe(true);
  });

  await test.step("the strip and the plan view go to a moment", async () => {
    const middle = (await lapOf(page))(0.5);
    await page.mouse.click(middle.x, middle.y);
    const duration = await page.locator("video").evaluate((video: HTMLVideoElement) => video.duration);
    await expect.poll(() => time(page)).toBeCloseTo(duration / 2, -1);
    await page.getByRole("button", { name: /^Underside / }).click();
    await expect(page.getByRole("region", { name: "Span at the playhead" })).toContainText("Underside");
  });

  await test.step("search the captions and correct one by a double click, and put it back", async () => {
    await page.getByRole("searchbox", { name: "Search the captions" }).fill("trunk");
    await page.getByRole("button", { name: "Next hit" }).click();
    await expect(page.getByText(/^\d+ of \d+$/)).toBeVisible();
    const row = captions.locator("[data-current]");
    const original = (await row.locator(".marked").textContent())!;
    await row.locator(".marked").dblclick();
    await captions.getByRole("textbox").fill("the trunk is speckled");
    await captions.getByRole("button", { name: /^Keep/ }).click();
    await expect(captions.getByText("speckled")).toBeVisible({ timeout: 30_000 });
    await captions.getByRole("button", { name: /^corrected, MP/ }).click();
    await expect(captions.locator(".corrected-original")).toContainText(original.slice(0, 12));
    await row.hover();
    await row.getByRole("button", { name: /^Correct the words/ }).click();
    await captions.getByRole("button", { name: "Put back" }).click();
    await expect(captions.getByText("speckled")).toHaveCount(0, { timeout: 30_000 });
    await page.getByRole("searchbox", { name: "Search the captions" }).fill("");
  });

  await test.step("zones: accept one in the bar, one in the list, drag a border, mark a stretch and set its zone", async () => {
    await page
      .getByRole("region", { name: "Span at the playhead" })
      .getByRole("button", { name: /^Accept/ })
      .click();
    await onDisk(page, "Zone span accepted");
    await page.getByRole("tab", { name: /^Zones/ }).click();
    const zones = page.getByRole("list", { name: "Zone spans" });
    await zones
      .getByRole("button", { name: /^Accept / })
      .first()
      .click();
    // Twelve were proposed, and two are accepted now.
    await expect(page.getByRole("button", { name: /^Accept all/ })).toHaveText(/\(10\)/);
    const border = page.getByRole("slider", { name: /^Border, / }).nth(1);
    const from = await centre(border);
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(from.x + 12, from.y, { steps: 4 });
    await page.mouse.up();
    await onDisk(page, /Border moved/);
    for (const [share, name] of [
      [0.3, /^In/],
      [0.36, /^Out/],
    ] as const) {
      const place = (await lapOf(page))(share);
      await page.mouse.click(place.x, place.y);
      await page.getByRole("group", { name: "Marking" }).getByRole("button", { name }).click();
    }
    await page.getByRole("group", { name: "Marking" }).getByRole("button", { name: /^Zone/ }).click();
    await page.getByRole("dialog").getByRole("combobox", { name: "Zone" }).click();
    await page.getByRole("option", { name: "Roof" }).click();
    await page.getByRole("button", { name: "Set the zone" }).click();
    await expect(zones.getByText("Roof")).toBeVisible();
    await page.getByRole("button", { name: /^Accept all/ }).click();
    await expect(zones.getByText("proposed")).toHaveCount(0);
  });

  await test.step("a finding with part, grade and still; proposals one by one and all", async () => {
    await page.getByRole("tab", { name: /^Findings/ }).click();
    const list = page.getByRole("list", { name: "Findings" });
    await list
      .getByRole("button", { name: /^Accept “/ })
      .first()
      .click();
    await onDisk(page, "1 finding accepted");
    await page.getByRole("button", { name: /^New finding/ }).click();
    await page.getByRole("textbox", { name: "What is seen" }).fill("a deep scratch");
    await page.getByRole("combobox", { name: "Part" }).click();
    await page.getByRole("combobox", { name: "Part" }).fill("corner");
    await page.getByRole("option", { name: /^driver rear corner/ }).click();
    await page.getByRole("radio", { name: "Damaged" }).check({ force: true });
    await page.getByRole("button", { name: /^Take a still/ }).click();
    await expect(page.getByRole("img", { name: /^The video at / })).toBeVisible({ timeout: 30_000 });
    await page.getByRole("button", { name: "Save the finding" }).click();
    const row = list.getByRole("listitem").filter({ hasText: "a deep scratch" });
    await expect(row).toContainText(/driver rear corner \(body\), damaged/);
    await row.getByRole("button", { name: /^Show the still/ }).click();
    await expect(page.getByRole("dialog").getByRole("img")).toBeVisible();
    await page.getByRole("dialog").getByRole("button", { name: "Close" }).click();
    await row.getByRole("button", { name: /^Change/ }).click();
    await page.getByRole("combobox", { name: "Part" }).fill("badge on the tail");
    await page.getByRole("button", { name: "No still" }).click();
    await page.getByRole("button", { name: "Save the finding" }).click();
    await expect(row).toContainText("badge on the tail");
    await expect(row.getByRole("button", { name: /^Show the still/ })).toHaveCount(0);
    await page.getByRole("button", { name: "Undo" }).click();
    await expect(row.getByRole("button", { name: /^Show the still/ })).toBeVisible();
    await page.getByRole("button", { name: "Redo" }).click();
    await expect(row).toContainText("badge on the tail");
    await page.getByRole("button", { name: /^Accept all/ }).click();
    await expect(page.getByRole("button", { name: /^Accept all \(0\)/ })).toBeVisible();
  });

  await test.step("the film is made large over the lap and the page, and small again", async () => {
    const large = page.getByRole("button", { name: "Large" });
    const before = (await page.locator("video").boundingBox())!.width;
    await large.click();
    expect((await page.locator("video").boundingBox())!.width).toBeGreaterThan(before * 1.4);
    await expect(page.getByRole("slider", { name: "Playhead" })).toBeHidden();
    await expect(page.getByRole("group", { name: "Marking" })).toBeVisible();
    await large.click();
    await expect(page.getByRole("slider", { name: "Playhead" })).toBeVisible();
  });

  await test.step("the end of a conflict's line names it under the pointer, and a click opens it at Check", async () => {
    // Its place on the drawing is that of the keyboard's stop.
    const stop = page
      .getByRole("group", { name: "Conflicts" })
      .getByRole("button", { name: /open conflict/ })
      .first();
    await stop.focus();
    const place = await centre(stop);
    await stop.blur();
    await expect(page.locator(".lap-note")).toHaveCount(0);
    await page.mouse.move(place.x, place.y);
    const topic = (await page.locator(".lap-note").textContent())!;
    await page.mouse.click(place.x, place.y);
    await expect(page).toHaveURL(/\/check\?conflict=/);
    await expect(page.getByRole("heading", { name: topic }).first()).toBeVisible();
  });
});
