import { chmodSync, existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test, vi } from "vitest";
import { showPage } from "../../electron/launch/browser-window.ts";
import { temporaryFolder } from "../support/builders/temporary-folder.ts";

/** A program in the browser's place, which notes with what it was called and stays until it is ended. */
function standInBrowser(then: string) {
  const folder = temporaryFolder();
  const notes = join(folder, "arguments.txt");
  const path = join(folder, "chromium");
  writeFileSync(path, `#!/bin/sh\nprintf '%s\\n' "$@" > ${notes}.part && mv ${notes}.part ${notes}\n${then}\n`);
  chmodSync(path, 0o755);
  // Where chrome-launcher looks first (its README, "CHROME_PATH").
  vi.stubEnv("CHROME_PATH", path);
  vi.stubEnv("DISPLAY", ":99");
  const calledWith = async () => {
    await expect.poll(() => existsSync(notes), { timeout: 5000 }).toBe(true);
    return readFileSync(notes, "utf8").trim().split("\n");
  };
  return { path, calledWith };
}

describe.skipIf(process.platform === "win32")(
  "showing the page (the stand-in browser is a shell script, which Windows does not run)",
  () => {
    const address = "http://127.0.0.1:5/enter?token=x";

    test("as a window of its own, in a profile that goes with it", async () => {
      const browser = standInBrowser("exec sleep 60");
      const page = await showPage(address, () => {});
      expect(page.how).toContain(browser.path);
      const called = await browser.calledWith();
      expect(called[0]).toBe(`--app=${address}`);
      const profile = called.find((each) => each.startsWith("--user-data-dir="))?.split("=")[1] as string;
      expect(existsSync(profile)).toBe(true);
      expect(called.includes("--no-sandbox")).toBe(process.platform === "linux" && process.getuid?.() === 0);
      await page.close();
      expect(existsSync(profile)).toBe(false);
      vi.unstubAllEnvs();
    });

    test("a window that is closed is noticed", async () => {
      standInBrowser("exit 0");
      const page = await showPage(address, () => {});
      await expect(page.closed).resolves.toBeUndefined();
      vi.unstubAllEnvs();
    });

    test.skipIf(process.platform !== "linux")(
      "without a display nothing is opened, and it says so (only Linux runs without one)",
      async () => {
        vi.stubEnv("DISPLAY", "");
        vi.stubEnv("WAYLAND_DISPLAY", "");
        expect((await showPage(address, () => {})).how).toContain("no display");
        vi.unstubAllEnvs();
      },
    );
  },
);
