import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { chromium } from "@playwright/test";
import { Launcher } from "chrome-launcher";

export interface FoundBrowser {
  readonly executablePath: string;
  /** One sentence for the person: which browser, and how it came. */
  readonly how: string;
}

const names = ["chromium", "chromium-browser", "google-chrome-stable", "google-chrome", "chrome"];

/**
 * A Chromium to test with: an installed one, else Debian's by apt where this is root's machine, else Playwright's own download.
 * `ROUNDWALK_BROWSER` names one and wins.
 * @throws Error that says what was tried, when none can be had.
 */
export function findOrGetBrowser(): FoundBrowser {
  const tried: string[] = [];
  const named = process.env.ROUNDWALK_BROWSER;
  if (named) {
    if (existsSync(named)) return { executablePath: named, how: `Browser: ${named}, named by ROUNDWALK_BROWSER.` };
    tried.push(`ROUNDWALK_BROWSER names ${named}, which is not there`);
  }
  const installed = findInstalled();
  if (installed) return { executablePath: installed, how: `Browser: ${installed}, found installed.` };
  tried.push("no installed Chromium or Chrome was found");

  if (process.platform === "linux" && process.getuid?.() === 0 && onPath("apt-get")) {
    console.log("No browser is installed; getting Debian's Chromium with apt-get.");
    const quiet = {
      stdio: ["ignore", "ignore", "inherit"] as ["ignore", "ignore", "inherit"],
      env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" },
    };
    spawnSync("apt-get", ["update", "-qq"], quiet);
    spawnSync("apt-get", ["install", "-y", "-qq", "--no-install-recommends", "chromium"], quiet);
    const got = findInstalled();
    if (got) return { executablePath: got, how: `Browser: ${got}, installed with apt-get.` };
    tried.push("apt-get could not install the package chromium");
  }

  console.log("Asking Playwright to download its Chromium.");
  const download = spawnSync(process.execPath, ["node_modules/@playwright/test/cli.js", "install", "chromium"], { stdio: "inherit" });
  if (download.status === 0 && existsSync(chromium.executablePath())) {
    return { executablePath: chromium.executablePath(), how: `Browser: ${chromium.executablePath()}, downloaded by Playwright.` };
  }
  tried.push("Playwright's own download failed");
  throw new Error(`The tests need Chromium or Chrome: ${tried.join("; ")}. Install one, or set ROUNDWALK_BROWSER to its path.`);
}

function findInstalled(): string | undefined {
  if (process.platform === "linux") {
    for (const name of names) {
      const path = onPath(name);
      if (path) return path;
    }
  }
  try {
    return Launcher.getInstallations().find((path) => existsSync(path));
  } catch {
    // The finder throws where there is nothing to find.
    return undefined;
  }
}

function onPath(name: string): string | undefined {
  return (process.env.PATH ?? "")
    .split(":")
    .filter((folder) => folder)
    .map((folder) => `${folder}/${name}`)
    .find((path) => existsSync(path));
}
