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
  /** Starts the program once more over the same user's folders; resolves with its exit code. */
  readonly startAgain: (args: readonly string[]) => Promise<number | null>;
}

/** Electron's program, or in one line why it is not here. */
export async function electronBinary(): Promise<{ readonly path: string } | { readonly missing: string }> {
  const binary = await findDesktopBinary(() => {});
  return "path" in binary ? { path: binary.path } : { missing: `The desktop window cannot be opened here: ${binary.missing}.` };
}

/** Opens the real window over folders of the test's own. */
export async function openElectronDesk(executablePath: string, home: string): Promise<ElectronDesk> {
  const args = [`--user-data-dir=${join(home, "user-data")}`, main, "--library", join(home, "library.sqlite")];
  const application = await _electron.launch({ executablePath, args, cwd: home });
  const page = await application.firstWindow();
  return {
    application,
    page,
    startAgain: (more) =>
      new Promise((resolve, reject) => {
        const second = spawn(executablePath, [...args, ...more], { cwd: home, stdio: "ignore" });
        second.on("error", reject);
        second.on("exit", resolve);
      }),
  };
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
