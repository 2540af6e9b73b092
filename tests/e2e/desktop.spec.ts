import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { _electron, expect, test } from "@playwright/test";
import { findDesktopBinary } from "../../electron/launch/desktop-binary.ts";
import { film, openDemo } from "./support/steps.ts";

const main = fileURLToPath(new URL("../../.build/desktop/main.mjs", import.meta.url));

test("the desktop window opens the demo, plays it, and seeks by range", async () => {
  const binary = await findDesktopBinary(() => {});
  test.skip(!("path" in binary), "missing" in binary ? `The desktop window cannot be opened here: ${binary.missing}.` : "");
  if (!("path" in binary)) return;
  const folder = mkdtempSync(join(tmpdir(), "roundwalk-desktop-"));
  const application = await _electron.launch({ executablePath: binary.path, args: [main, "--library", join(folder, "library.sqlite")] });
  try {
    const page = await application.firstWindow();
    await openDemo(page, "Mark");
    await expect.poll(async () => (await film(page)).width).toBeGreaterThan(0);
    const before = await film(page);
    await page.getByRole("button", { name: /^Underside / }).click();
    await expect.poll(async () => (await film(page)).time).toBeGreaterThan(before.time + 60);
    await expect.poll(async () => (await film(page)).picture).not.toBe(before.picture);
    expect(await page.evaluate(() => typeof (globalThis as { require?: unknown }).require)).toBe("undefined");
  } finally {
    await application.close();
    rmSync(folder, { recursive: true, force: true });
  }
});
