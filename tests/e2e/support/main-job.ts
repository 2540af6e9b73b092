import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, type Page, test } from "@playwright/test";
import { exportFormats } from "../../../shared-types/index.ts";
import { film, openDemo } from "./steps.ts";

/**
 * What the application is for, from the first look at the demo to the files that leave; the same on every host.
 * @param folderOfLibrary where the host keeps the library, with exports/ inside.
 */
export async function doMainJob(page: Page, folderOfLibrary: string): Promise<void> {
  await test.step("the library is not empty, and the demo plays", async () => {
    await openDemo(page, "Mark");
    await expect.poll(async () => (await film(page)).width).toBeGreaterThan(0);
    const before = await film(page);
    await page.getByRole("button", { name: /^Play/ }).click();
    await expect.poll(async () => (await film(page)).time).toBeGreaterThan(before.time + 1.5);
    await page.getByRole("button", { name: /^Pause/ }).click();
    const after = await film(page);
    expect(after.picture).not.toBe(before.picture);
  });

  await test.step("zones, claims and repairs are shown", async () => {
    await expect(page.getByRole("button", { name: /^Underside / })).toBeVisible();
    await expect(page.getByRole("region", { name: "Captions" })).toContainText("gears");
  });

  await test.step("“underside” jumps there", async () => {
    await page.getByRole("link", { name: "Call", exact: true }).click();
    await page.getByRole("combobox", { name: "Ask the library" }).fill("underside");
    const first = page.getByRole("listbox", { name: "Moments" }).getByRole("option").first();
    await expect(first).toContainText("Underside");
    await page.keyboard.press("Enter");
    const stamp = /(\d+):(\d\d)/.exec((await first.textContent()) ?? "")!;
    const start = Number(stamp[1]) * 60 + Number(stamp[2]);
    expect(start).toBeGreaterThan(60);
    await expect.poll(async () => (await film(page)).time, { message: "the video is at the moment and runs" }).toBeGreaterThan(start + 0.5);
    expect((await film(page)).time).toBeLessThan(start + 30);
  });

  await test.step("a disputed claim is never offered as fact", async () => {
    await page.getByRole("combobox", { name: "Ask the library" }).fill("4.11");
    const disputed = page
      .getByRole("listbox", { name: "Moments" })
      .getByRole("option", { name: /in dispute/ })
      .first();
    await disputed.click();
    await expect(page.getByRole("region", { name: "Answer" })).toContainText(/dispute/i);
    await expect(page.getByRole("button", { name: "Copy the answer" })).toHaveCount(0);
  });

  const topic = await test.step("a ruling on a conflict is asked for initials and is on disk", async () => {
    await page.getByRole("link", { name: "Library" }).click();
    await openDemo(page, "Check");
    const queue = page.getByRole("list", { name: "Conflicts by weight" });
    const open = await queue.getByRole("listitem").count();
    expect(open).toBeGreaterThanOrEqual(6);
    await queue.getByRole("button", { name: /axle ratio/i }).click();
    await page.getByRole("radio", { name: /B stands/ }).check({ force: true });
    await page.getByLabel("Reason").fill("The tag on the cover was read on the lift.");
    await page.getByRole("button", { name: "Decide", exact: true }).click();
    await page.getByRole("textbox", { name: "Initials" }).fill("RT");
    await page.getByRole("button", { name: "Use these initials" }).click();
    await expect(page.getByText(`${open - 1} left of ${open}`)).toBeVisible();
    return "axle ratio";
  });

  await test.step("exports are written, offered for download, and mark what is open", async () => {
    await page.getByRole("button", { name: "Export…" }).click();
    await page.getByRole("button", { name: /^Write \d+ files?$/ }).click();
    const files = page.getByRole("list", { name: "Written files" }).getByRole("link", { name: /^Download / });
    // Two of them are printed by a browser, which takes its time on a busy machine.
    await expect(files).toHaveCount(exportFormats.length, { timeout: 60_000 });
    const exportsFolder = join(folderOfLibrary, "exports");
    const [recording] = readdirSync(exportsFolder);
    const folder = join(exportsFolder, recording!);
    const names = readdirSync(folder);
    expect(names).toHaveLength(exportFormats.length);
    const index = JSON.parse(readFileSync(join(folder, names.find((name) => name.endsWith("index.json"))!), "utf8"));
    const ruled = index.conflicts.find((conflict: { topic: string }) => conflict.topic.toLowerCase().includes(topic));
    expect(ruled.state).toBe("settled");
    expect(ruled.ruling).toMatchObject({ decision: "side-stands", side: 1, initials: "RT" });
    expect(index.conflicts.some((conflict: { state: string }) => conflict.state === "open")).toBe(true);
    const list = readFileSync(join(folder, names.find((name) => name.endsWith("chapters.txt"))!), "utf8");
    expect(list).toMatch(/^0:00 /);
    expect(list).toContain("[open conflict");
  });
}
