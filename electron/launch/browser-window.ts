import { type ChildProcess, spawn } from "node:child_process";
import { mkdtempSync, realpathSync, rmSync } from "node:fs";
import { homedir, tmpdir } from "node:os";
import { join } from "node:path";
import { Launcher } from "chrome-launcher";
import open from "open";

export interface ShownPage {
  /** One sentence for the terminal. */
  readonly how: string;
  /** Resolves when the window was closed; never where that cannot be known. */
  readonly closed: Promise<void>;
  /** Resolves when the window is gone. */
  readonly close: () => Promise<void>;
}

/** A browser that ends this soon, and with a complaint, never had a window. */
const failingMilliseconds = 5_000;

export function hasDisplay(): boolean {
  return process.platform !== "linux" || Boolean(process.env.DISPLAY || process.env.WAYLAND_DISPLAY);
}

/** Shows an address: as a window of its own in an installed Chromium or Chrome, else in the system's browser, else not at all. */
export async function showPage(address: string, tell: (line: string) => void): Promise<ShownPage> {
  const notShown = { closed: new Promise<void>(() => {}), close: async () => {} };
  if (!hasDisplay()) return { how: "This machine has no display: open the address in a browser on it.", ...notShown };
  const browser = installedBrowser();
  if (browser) return showAsWindow(browser, address, tell);
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

export function installedBrowser(): string | undefined {
  try {
    return Launcher.getInstallations()[0];
  } catch {
    // The finder throws where there is none.
    return undefined;
  }
}

function showAsWindow(browser: string, address: string, tell: (line: string) => void): ShownPage {
  // A profile of its own makes the browser's end the window's end, and leaves no trace of the session; a second start gets another.
  // A snap sees neither /tmp nor hidden folders, so there the profile is a plain folder of the home.
  const profile = mkdtempSync(join(realpathSync(browser).includes("/snap") ? homedir() : tmpdir(), "roundwalk-window-"));
  const window: ChildProcess = spawn(
    browser,
    [
      `--app=${address}`,
      `--user-data-dir=${profile}`,
      "--no-first-run",
      "--no-default-browser-check",
      "--disable-sync",
      "--window-size=1440,900",
      // The browser refuses to run as root otherwise; a container is the usual place where that happens.
      ...(process.platform === "linux" && process.getuid?.() === 0 ? ["--no-sandbox"] : []),
    ],
    { stdio: "ignore" },
  );
  const openedAt = Date.now();
  let closing = false;
  const gone = new Promise<{ readonly failed: boolean }>((resolve) => {
    const end = (failed: boolean) => {
      rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
      resolve({ failed });
    };
    window.on("exit", (code) => end(code !== 0 && !closing && Date.now() - openedAt < failingMilliseconds));
    window.on("error", () => end(true));
  });
  const closed = new Promise<void>((resolve) => {
    gone.then(({ failed }) => {
      if (failed) tell(`${browser} could not open a window: open the printed address in a browser yourself.`);
      else resolve();
    });
  });
  return {
    how: `Opened as a window of ${browser}; closing it ends Roundwalk.`,
    closed,
    close: async () => {
      closing = true;
      window.kill();
      await gone;
    },
  };
}
