import { spawn } from "node:child_process";
import { join } from "node:path";

const desktopMain = join(import.meta.dirname, "..", "..", ".build", "desktop", "main.mjs");

export interface DesktopRun {
  /** Null for the user's own library. */
  readonly libraryFile: string | null;
  /** False leaves a new library empty. */
  readonly withDemo: boolean;
}

/**
 * Chromium's own last words where the system lets no program wall off its pages: on Linux without unprivileged user namespaces, as
 * Ubuntu is since 24.04, and without the helper that an installed package has.
 */
const noSandboxWords = /No usable sandbox|SUID sandbox helper binary was found, but is not configured correctly/;

/** Runs the desktop until it is closed. Resolves with its exit code, or with one sentence why it could not begin. */
export function runDesktop(
  binary: string,
  { libraryFile, withDemo }: DesktopRun,
  main = desktopMain,
): Promise<number | { readonly missing: string }> {
  return new Promise((resolve, reject) => {
    const options = [...(libraryFile === null ? [] : ["--library", libraryFile]), ...(withDemo ? [] : ["--no-demo"])];
    // Set in the terminals of programs that are built on Electron themselves, it would make a bare Node of ours.
    const env = { ...process.env, ELECTRON_RUN_AS_NODE: undefined };
    const desktop = spawn(binary, [main, ...options], { stdio: ["inherit", "inherit", "pipe"], env });
    let said = "";
    desktop.stderr.on("data", (chunk: Buffer) => {
      said = `${said}${chunk}`.slice(-4000);
      process.stderr.write(chunk);
    });
    const pass = (signal: NodeJS.Signals) => desktop.kill(signal);
    process.on("SIGINT", pass);
    process.on("SIGTERM", pass);
    desktop.on("error", reject);
    desktop.on("close", (code) => {
      process.off("SIGINT", pass);
      process.off("SIGTERM", pass);
      if (code !== 0 && noSandboxWords.test(said)) resolve({ missing: "this system lets Electron wall off no page (no usable sandbox)" });
      else resolve(code ?? 1);
    });
  });
}
