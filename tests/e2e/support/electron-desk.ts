import { spawn } from "node:child_process";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { _electron, type ElectronApplication, type Page } from "@playwright/test";
import { findDesktopBinary } from "../../../electron/launch/desktop-binary.ts";

// Everything that touches Playwright's Electron, which it calls experimental, is in this file.

const main = fileURLToPath(new URL("../../../.build/desktop/main.mjs", import.meta.url));

export interface ElectronDesk {
  readonly application: ElectronApplication;
  readonly page: Page;
  /** What the page complained of. */
  readonly complaints: string[];
  /** Starts the program once more over the same user's folders; resolves with its exit code. */
  readonly startAgain: (more: readonly string[]) => Promise<number | null>;
}

type Binary = { readonly path: string } | { readonly missing: string };
let found: Promise<Binary> | undefined;

/** Electron's program, or in one line why it is not here. What the run's beginning has found out is not looked for again. */
export function electronBinary(): Promise<Binary> {
  const { ROUNDWALK_ELECTRON: path, ROUNDWALK_NO_ELECTRON: missing } = process.env;
  if (path) return Promise.resolve({ path });
  if (missing) return Promise.resolve({ missing });
  found ??= findDesktopBinary(() => {}).then((binary) =>
    "path" in binary ? binary : { missing: `The desktop window cannot be opened here: ${binary.missing}.` },
  );
  return found;
}

/**
 * Opens the real window over folders of the test's own.
 * @param args after the program's script; its own library among them.
 */
export async function openElectronDesk(home: string, args: readonly string[]): Promise<ElectronDesk> {
  const binary = await electronBinary();
  if ("missing" in binary) throw new Error(binary.missing);
  const { ELECTRON_RUN_AS_NODE: _, ...env } = process.env as Record<string, string>;
  // User data, and with it the lock of the one instance and all but macOS's logs.
  const given = [`--user-data-dir=${join(home, "user-data")}`, main, ...args];
  // As people start it: Playwright would else leave the pages' sandbox off on Linux.
  const application = await _electron.launch({ executablePath: binary.path, args: given, cwd: home, env, chromiumSandbox: true });
  const page = await application.firstWindow();
  const complaints: string[] = [];
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on("console", (message) => message.type() === "error" && complaints.push(message.text()));
  await page.waitForURL(({ href }) => href.startsWith("app://roundwalk/"));
  return {
    application,
    page,
    complaints,
    startAgain: (more) =>
      new Promise((resolve, reject) => {
        const second = spawn(binary.path, [...given, ...more], { cwd: home, env, stdio: "ignore" });
        second.on("error", reject);
        second.on("exit", resolve);
      }),
  };
}

/** Lets `navigator.clipboard.readText` in the page tell what is on the system's clipboard: the application itself never lets it read there. */
export async function letReadClipboard({ application, page }: ElectronDesk): Promise<void> {
  await page.exposeFunction("clipboardText", () => application.evaluate(({ clipboard }) => clipboard.readText()));
  await page.evaluate(() => {
    const { clipboardText } = window as unknown as { clipboardText: () => Promise<string> };
    Object.defineProperty(navigator.clipboard, "readText", { value: () => clipboardText() });
  });
}

/** Answers the system's own windows, which no test can reach, in their order. */
export async function answerDialogs({ application }: ElectronDesk, answers: readonly object[]): Promise<void> {
  await application.evaluate(({ dialog }, given) => {
    const waiting = [...given];
    const answer = async () => waiting.shift() ?? { canceled: true, filePaths: [], filePath: "", response: 0 };
    Object.assign(dialog, { showOpenDialog: answer, showSaveDialog: answer, showMessageBox: answer });
  }, answers);
}

/** Chooses "File > Import files…" and the like. */
export async function chooseFromMenu({ application }: ElectronDesk, path: readonly string[]): Promise<void> {
  await application.evaluate(({ Menu }, labels) => {
    let items = Menu.getApplicationMenu()?.items ?? [];
    for (const label of labels.slice(0, -1)) items = items.find((item) => item.label === label)?.submenu?.items ?? [];
    const found = items.find((item) => item.label === labels.at(-1));
    if (!found?.enabled) throw new Error(`The menu has no ${labels.join(" > ")} that can be chosen now`);
    found.click();
  }, path);
}
