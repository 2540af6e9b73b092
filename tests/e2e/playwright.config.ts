import { defineConfig } from "@playwright/test";
import type { HostOptions } from "./support/host.ts";

const executablePath = process.env.ROUNDWALK_BROWSER;

/**
 * Journeys that need nothing but the page and the library's folder, and so go through in every window. Left out of their specs is what
 * starts the host again, makes files in the page, which are on no disk, or downloads, which the desktop saves by a window of the system's.
 */
const everywhere = {
  testMatch: /(?:(?:mark|check|call)-by-(?:keyboard|pointer)|coming-back|keys-and-notices|own-recording|stock-sheet)\.spec/,
  grepInvert: /columns are chosen once by keyboard|while the host is away|every change over a restart|downloaded as it was written/,
};

/** Beside the browser: Electron's own window where its program is; the built desktop over its stand-in where that is asked for. */
const otherWindows = [
  ...(process.env.ROUNDWALK_ELECTRON ? [{ name: "window", use: { shownBy: "window" as const }, ...everywhere }] : []),
  ...(process.env.ROUNDWALK_STAND_IN ? [{ name: "stand-in", use: { shownBy: "stand-in" as const }, ...everywhere }] : []),
];

export default defineConfig<HostOptions>({
  testDir: ".",
  projects: [{ name: "browser" }, ...otherWindows],
  outputDir: "../../test-results",
  // One name on every machine: goldens.spec.ts itself says where a picture of another browser is no measure.
  snapshotPathTemplate: "{testDir}/goldens/{arg}{ext}",
  // Each test starts a host and a browser of its own; more than one at a time starves the video on two cores.
  workers: 1,
  timeout: 90_000,
  expect: { timeout: 15_000 },
  forbidOnly: Boolean(process.env.CI),
  reporter: [["list"], ["../support/runner/playwright-closing-line.ts"]],
  use: {
    browserName: "chromium",
    viewport: { width: 1440, height: 900 },
    launchOptions: {
      ...(executablePath ? { executablePath } : {}),
      // Root may not use the browser's sandbox; playing sound needs no click in a test.
      args: ["--autoplay-policy=no-user-gesture-required", ...(process.getuid?.() === 0 ? ["--no-sandbox"] : [])],
    },
    trace: "retain-on-failure",
  },
});
