import { spawn } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { homedir, tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { installedBrowser } from "./browser-window.ts";

/** An engine that hangs is ended; a long index prints in seconds (measured: 4 s for 300 claims on two cores). */
const longestMilliseconds = 120_000;

const notFound =
  "A PDF is made with the Chromium or Chrome of this machine, and none was found. Install one, or open the exported page in a browser and print it to a PDF there.";

/** Prints pages with the Chromium or Chrome that is installed, without a window and without a network. */
export function createBrowserPrinter(find: () => string | undefined = installedBrowser) {
  // Looked for once: the search asks the system for every known name.
  let browser: string | null | undefined;
  const found = (): string | null => {
    browser ??= find() ?? null;
    return browser;
  };
  return {
    whyNot: () => (found() === null ? notFound : null),
    print: (page: string, paper: "letter" | "a4", signal: AbortSignal) => {
      const path = found();
      return path === null ? Promise.reject(new Error(notFound)) : printWith(path, page, paper, signal);
    },
  };
}

/**
 * The command line takes no size of paper; a style sheet does (CSS Paged Media 3, `size`). The page allows no style but its own by hash,
 * so that this one's hash is let in beside it.
 */
export function onPaper(page: string, paper: "letter" | "a4"): string {
  const style = `@page{size:${paper} portrait}`;
  const hash = `&#39;sha256-${createHash("sha256").update(style).digest("base64")}&#39;`;
  return page.replace("style-src ", () => `style-src ${hash} `).replace("</head>", () => `<style>${style}</style></head>`);
}

async function printWith(browser: string, page: string, paper: "letter" | "a4", signal: AbortSignal): Promise<Uint8Array> {
  signal.throwIfAborted();
  // A snap sees neither /tmp nor hidden folders.
  const folder = mkdtempSync(join(realpathSync(browser).includes("/snap") ? homedir() : tmpdir(), "roundwalk-print-"));
  try {
    const source = join(folder, "page.html");
    const target = join(folder, "page.pdf");
    writeFileSync(source, onPaper(page, paper));
    const said = await run(
      browser,
      [
        "--headless",
        `--print-to-pdf=${target}`,
        "--no-pdf-header-footer",
        "--generate-pdf-document-outline",
        `--user-data-dir=${join(folder, "profile")}`,
        "--disable-gpu",
        "--disable-extensions",
        "--disable-background-networking",
        "--no-first-run",
        "--no-default-browser-check",
        "--host-resolver-rules=MAP * ~NOTFOUND",
        // The browser refuses to run as root otherwise; a container is the usual place where that happens.
        ...(process.platform === "linux" && process.getuid?.() === 0 ? ["--no-sandbox"] : []),
        pathToFileURL(source).href,
      ],
      signal,
    );
    if (!existsSync(target)) throw new Error(`${browser} wrote no PDF${said ? `: ${said}` : ""}`);
    return await readFile(target);
  } finally {
    rmSync(folder, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
  }
}

/** Resolves with the last line of what the browser complained of when it ended. */
function run(file: string, args: readonly string[], signal: AbortSignal): Promise<string> {
  return new Promise((resolve, reject) => {
    const own = process.platform !== "win32";
    // A group of its own, so that the engine's helpers end with it.
    const child = spawn(file, args, { stdio: ["ignore", "ignore", "pipe"], detached: own });
    let said = "";
    child.stderr.on("data", (chunk: Buffer) => {
      said = (said + chunk.toString()).slice(-2000);
    });
    const end = () => {
      if (child.pid === undefined || child.exitCode !== null) return;
      if (!own) child.kill();
      else
        try {
          process.kill(-child.pid, "SIGKILL");
        } catch {
          // It had just ended.
        }
    };
    const late = setTimeout(() => {
      end();
      reject(new Error(`${file} did not end within ${longestMilliseconds / 1000} seconds`));
    }, longestMilliseconds);
    signal.addEventListener("abort", end, { once: true });
    // A group of its own would outlive us.
    process.once("exit", end);
    child.on("error", reject);
    child.on("close", () => {
      clearTimeout(late);
      signal.removeEventListener("abort", end);
      process.off("exit", end);
      if (signal.aborted) reject(signal.reason);
      else resolve(said.trim().split("\n").at(-1) ?? "");
    });
  });
}
