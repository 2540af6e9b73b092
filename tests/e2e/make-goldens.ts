// node tests/e2e/make-goldens.ts [WORDS]: makes those pictures in goldens/ anew that have changed, two desks at a time; with words, only the tests whose names hold them. Look at each.
import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { findOrGetBrowser } from "../support/runner/find-browser.ts";

const root = join(import.meta.dirname, "..", "..");
const env = { ...process.env, ROUNDWALK_BROWSER: findOrGetBrowser().executablePath, ROUNDWALK_MAKES_GOLDENS: "yes" };
const run = (file: string, ...args: string[]) =>
  spawnSync(process.execPath, [join(root, file), ...args], { cwd: root, stdio: "inherit", env }).status ?? 1;

const [words] = process.argv.slice(2);
process.exitCode =
  run("electron/run.mjs", "build", "--page") ||
  run(
    "node_modules/@playwright/test/cli.js",
    ...["test", "--config", "tests/e2e/playwright.config.ts", "goldens.spec.ts", "--update-snapshots=changed", "--workers=2"],
    ...(words ? ["-g", words] : []),
  );
