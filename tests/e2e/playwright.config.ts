import { defineConfig } from "@playwright/test";

const executablePath = process.env.ROUNDWALK_BROWSER;

export default defineConfig({
  testDir: ".",
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
