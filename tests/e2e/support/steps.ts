import type { Page } from "@playwright/test";
import { expect } from "./host.ts";

/** What people do on every desk, said once. */

export async function openDemo(page: Page, desk: "Mark" | "Check"): Promise<void> {
  // The demo is imported and analysed while the page already stands.
  await page.getByRole("link", { name: new RegExp(`^${desk} `) }).click({ timeout: 60_000 });
  await expect(page.getByRole("heading", { level: 1, name: /Havelin Tarrow/ })).toBeVisible();
}

export async function giveInitials(page: Page, initials: string): Promise<void> {
  await page.getByRole("button", { name: /initials not given/ }).click();
  await page.getByRole("menuitem", { name: /initials/i }).click();
  await page.getByRole("textbox", { name: "Initials" }).fill(initials);
  await page.getByRole("button", { name: "Use these initials" }).click();
}

export interface Film {
  readonly time: number;
  readonly width: number;
  /** A fingerprint of the picture shown: the sum of its pixels in 64 fields. */
  readonly picture: string;
}

/** The video as the page shows it now. */
export function film(page: Page, selector = "video"): Promise<Film> {
  return page
    .locator(selector)
    .first()
    .evaluate((element) => {
      const video = element as HTMLVideoElement;
      const canvas = document.createElement("canvas");
      canvas.width = 8;
      canvas.height = 8;
      const pen = canvas.getContext("2d")!;
      pen.drawImage(video, 0, 0, 8, 8);
      return { time: video.currentTime, width: video.videoWidth, picture: Array.from(pen.getImageData(0, 0, 8, 8).data).join(",") };
    });
}
