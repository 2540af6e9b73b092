import { spawn } from "node:child_process";
import { join } from "node:path";

const desktopMain = join(import.meta.dirname, "..", "..", ".build", "desktop", "main.mjs");

/** Runs the desktop until it is closed. Resolves with its exit code. */
export function runDesktop(binary: string, libraryFile: string | null): Promise<number> {
  return new Promise((resolve, reject) => {
    const options = libraryFile === null ? [] : ["--library", libraryFile];
    const desktop = spawn(binary, [desktopMain, ...options], { stdio: "inherit" });
    const pass = (signal: NodeJS.Signals) => desktop.kill(signal);
    process.on("SIGINT", pass);
    process.on("SIGTERM", pass);
    desktop.on("error", reject);
    desktop.on("close", (code) => {
      process.off("SIGINT", pass);
      process.off("SIGTERM", pass);
      resolve(code ?? 1);
    });
  });
}
