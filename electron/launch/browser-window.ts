import { type ChildProcess, spawn } from "node:child_process";
import { mkdirSync, realpathSync } from "node:fs";
import { join } from "node:path";
import { Launcher } from "chrome-launcher";
import envPaths from "env-paths";
import open from "open";

export interface ShownPage {
  /** One sentence for the terminal. */
  readonly how: string;
  /** Resolves when the window was closed; never where that cannot be known. */
  readonly closed: Promise<void>;
  readonly close: () => void;
}

export function hasDisplay(): boolean {
  return process.platform !== "linux" || Boolean(process.env.DISPLAY ?? process.env.WAYLAND_DISPLAY);
}

/** Shows an address: as a window of its own in an installed Chromium or Chrome, else in the system's browser, else not at all. */
export async function showPage(address: string): Promise<ShownPage> {
  const notShown = { closed: new Promise<void>(() => {}), close: () => {} };
  if (!hasDisplay()) return { how: "This machine has no display: open the address in a browser on it.", ...notShown };
  const browser = installedBrowser();
  if (browser) return showAsWindow(browser, address);
  try {
    await open(address);
    return { how: "Opened in the system's browser.", ...notShown };
  } catch (failure) {
    return {
      how: `No browser could be started (${failure instanceof Error ? failure.message : String(failure)}): open the address yourself.`,
      ...notShown,
    };
  }
}

function installedBrowser(): string | undefined {
  try {
    return Launcher.getInstallations()[0];
  } catch {
    // The finder throws where there is none.
    return undefined;
  }
}

function showAsWindow(browser: string, address: string): ShownPage {
  const arguments_ = [`--app=${address}`, "--no-first-run", "--no-default-browser-check", "--window-size=1440,900"];
  // A profile of its own makes the browser's end the window's end. A snap may not write to hidden folders, so it keeps the user's.
  const isSnap = realpathSync(browser).includes("/snap");
  if (!isSnap) {
    const profile = join(envPaths("roundwalk", { suffix: "" }).cache, "browser");
    mkdirSync(profile, { recursive: true });
    arguments_.push(`--user-data-dir=${profile}`);
  }
  // The browser refuses to run as root otherwise; a container is the usual place where that happens.
  if (process.platform === "linux" && process.getuid?.() === 0) arguments_.push("--no-sandbox");
  const window: ChildProcess = spawn(browser, arguments_, { stdio: "ignore" });
  const closed = new Promise<void>((resolve) => {
    if (!isSnap) window.on("exit", () => resolve());
    window.on("error", () => {});
  });
  return { how: `Opened as a window of ${browser}.`, closed, close: () => window.kill() };
}
