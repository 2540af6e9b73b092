import type { Page } from "@playwright/test";
import { expect, test } from "./support/host.ts";
import { openDemo } from "./support/steps.ts";

const heard = (page: Page) =>
  page.locator("video").evaluate((video: HTMLVideoElement) => ({ volume: video.volume, muted: video.muted, rate: video.playbackRate }));

test("volume, mute and rate are as they were left after Roundwalk was ended and started again", async ({ desk: page, host }) => {
  test.setTimeout(120_000);
  await openDemo(page, "Mark");
  await expect.poll(() => page.locator("video").evaluate((video: HTMLVideoElement) => video.readyState)).toBeGreaterThan(0);
  for (const key of ["Shift+ArrowDown", "Shift+ArrowDown", "Shift+ArrowDown", "]", "m"]) await page.keyboard.press(key);
  await expect.poll(() => heard(page)).toEqual({ volume: expect.closeTo(0.7), muted: true, rate: 1.25 });
  // As it rests for a moment, it is kept.
  await page.waitForResponse(/\/rpc\/playing\.set$/);

  // At another address, where a page's own memory is empty.
  const again = await host.restart();
  expect(new URL(again.address).origin).not.toBe(new URL(host.address).origin);
  await page.goto(again.address);
  await openDemo(page, "Mark");
  await expect.poll(() => heard(page)).toEqual({ volume: expect.closeTo(0.7), muted: true, rate: 1.25 });
  await expect(page.getByRole("slider", { name: "Volume" })).toHaveAttribute("aria-valuetext", "muted");
  await expect(page.getByRole("combobox", { name: "Rate" })).toHaveText(/1.25×/);
});
