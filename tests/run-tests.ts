// npm test: types, lint and layers, then the unit tests, then the journeys in a real browser. Every step runs even when one before it
// failed, so that one run shows all there is to mend.
import { spawnSync } from "node:child_process";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { findDesktopBinary } from "../electron/launch/desktop-binary.ts";
import { findOrGetBrowser } from "./support/runner/find-browser.ts";
import { findOrGetTools } from "./support/runner/find-tools.ts";

const root = join(dirname(fileURLToPath(import.meta.url)), "..");
process.chdir(root);

function run(step: string, file: string, args: string[], env: NodeJS.ProcessEnv = process.env): boolean {
  console.log(`\n== ${step}`);
  const { status } = spawnSync(process.execPath, [join(root, file), ...args], { stdio: "inherit", env, cwd: root });
  return status === 0;
}

const steps: Record<string, () => boolean | Promise<boolean>> = {
  check: () => run("Types, lint and format", "electron/run.mjs", ["check"]),
  unit: () => {
    console.log(`\n${findOrGetTools()}`);
    return run("Unit tests", "node_modules/vitest/vitest.mjs", ["run", "--config", "tests/vitest.config.ts"]);
  },
  e2e: async () => {
    const browser = findOrGetBrowser();
    console.log(`\n${browser.how}`);
    const desktop = await findDesktopBinary(console.log);
    const missing = "missing" in desktop ? `The desktop window cannot be opened here: ${desktop.missing}.` : undefined;
    console.log(missing ?? `Desktop window: ${"path" in desktop ? desktop.path : ""}.`);
    const env = {
      ...process.env,
      ROUNDWALK_BROWSER: browser.executablePath,
      ...("path" in desktop ? { ROUNDWALK_ELECTRON: desktop.path } : { ROUNDWALK_NO_ELECTRON: missing }),
    };
    return (
      run("Build the page and the desktop", "electron/run.mjs", ["build"], env) &&
      run("Journeys in the browser", "node_modules/@playwright/test/cli.js", ["test", "--config", "tests/e2e/playwright.config.ts"], env)
    );
  },
};

const { values } = parseArgs({ options: { only: { type: "string" } } });
if (values.only && !Object.hasOwn(steps, values.only)) {
  console.error(`--only takes one of: ${Object.keys(steps).join(", ")}.`);
  process.exit(2);
}
const failed: string[] = [];
for (const [name, step] of Object.entries(steps)) {
  if (values.only && values.only !== name) continue;
  let passed = false;
  try {
    passed = await step();
  } catch (failure) {
    console.error(failure instanceof Error ? failure.message : failure);
  }
  if (!passed) failed.push(name);
}
if (failed.length) {
  console.error(`\nNot passed: ${failed.join(", ")}.`);
  process.exitCode = 1;
}
