import { readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { parseArgs } from "node:util";
import open from "open";
import { hasDisplay, showPage } from "./launch/browser-window.ts";
import { freshDesktop, freshPage, pageIsOld } from "./launch/build-parts.ts";
import { findDesktopBinary } from "./launch/desktop-binary.ts";
import { createBrowserPrinter } from "./launch/print-pdf.ts";
import { runDesktop } from "./launch/run-desktop.ts";
import { openLoopback } from "./loopback.ts";

const usage = `npm start [-- OPTIONS]
  --library FILE           another library than the user's own
  --host desktop|browser   this host; without it the desktop where Electron's binary can be had, else the browser
  --no-open                print the address and open nothing (browser host)
  --port NUMBER            this port instead of any free one (browser host)
  --no-demo                leave a new library empty`;

const root = join(import.meta.dirname, "..");

interface Wish {
  readonly host: "desktop" | "browser" | undefined;
  readonly libraryFile: string | null;
  readonly opens: boolean;
  readonly port: number;
  readonly demo: boolean;
}

function wishOf(args: string[]): Wish | undefined {
  const { values } = parseArgs({
    args,
    options: {
      host: { type: "string" },
      library: { type: "string" },
      "no-open": { type: "boolean" },
      "no-demo": { type: "boolean" },
      port: { type: "string" },
      help: { type: "boolean", short: "h" },
    },
  });
  if (values.help) return undefined;
  const { host } = values;
  if (host !== undefined && host !== "desktop" && host !== "browser") throw new Error(`--host takes desktop or browser, not "${host}".`);
  const port = Number(values.port ?? 0);
  if (!Number.isInteger(port) || port < 0 || port > 65_535) throw new Error(`--port takes a number from 0 to 65535, not "${values.port}".`);
  const libraryFile = values.library === undefined ? null : resolve(values.library);
  return { host, libraryFile, opens: !values["no-open"], port, demo: !values["no-demo"] };
}

async function start(wish: Wish): Promise<number> {
  if (pageIsOld()) {
    console.log("Building the page …");
    await freshPage("warn");
  }
  if (wish.host !== "browser") {
    const binary = await findDesktopBinary(console.log);
    let missing: string;
    if ("path" in binary) {
      await freshDesktop("warn");
      const ended = await runDesktop(binary.path, { libraryFile: wish.libraryFile, withDemo: wish.demo });
      if (typeof ended === "number") return ended;
      missing = ended.missing;
    } else missing = binary.missing;
    if (wish.host === "desktop") {
      console.error(`The desktop cannot start: ${missing}.`);
      return 1;
    }
    console.log(`The desktop cannot start, since ${missing}; the same application runs in a browser instead.`);
  }
  return runInBrowser(wish);
}

async function runInBrowser({ libraryFile, port, opens, demo }: Wish): Promise<number> {
  const { version } = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as { version: string };
  const reveal = hasDisplay() ? async (folder: string) => void (await open(folder)) : null;
  const loopback = await openLoopback({
    libraryFile,
    port,
    version,
    reveal,
    pdf: createBrowserPrinter(),
    ...(demo ? {} : { demoFolder: null }),
  });
  await loopback.demo;
  console.log(`Library: ${loopback.libraryFile}`);
  console.log(`Roundwalk is at ${loopback.entryAddress()}`);
  console.log("Open it in a browser on this machine. Ctrl-C ends Roundwalk.");
  const page = opens ? await showPage(loopback.entryAddress(), console.log) : undefined;
  if (page) console.log(page.how);
  await Promise.race([interrupted(), parentGone(), page?.closed ?? new Promise<never>(() => {})]);
  await page?.close();
  await loopback.close();
  return 0;
}

function interrupted(): Promise<void> {
  return new Promise((resolve) => {
    for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"] as const) process.once(signal, () => resolve());
  });
}

/**
 * npm passes a signal on to the script between it and this process, which may end without passing it further.
 * Without npm nobody stands between, and a host that was put into the background stays.
 */
function parentGone(): Promise<void> {
  if (process.env.npm_lifecycle_event === undefined) return new Promise(() => {});
  const parent = process.ppid;
  return new Promise((resolve) => {
    const looking = setInterval(() => {
      if (process.ppid === parent) return;
      clearInterval(looking);
      resolve();
    }, 500);
    looking.unref();
  });
}

/** What the person can mend in one sentence; everything else with its particulars. */
function explained(failure: unknown): unknown {
  if (!(failure instanceof Error)) return failure;
  const { code } = failure as NodeJS.ErrnoException;
  if (code === "EADDRINUSE" || code === "EACCES")
    return `The port cannot be used (${failure.message}). Name another with --port, or leave it out.`;
  return "problem" in failure ? failure.message : failure;
}

async function main(args: string[]): Promise<number> {
  let wish: Wish | undefined;
  try {
    wish = wishOf(args);
  } catch (failure) {
    console.error(`${failure instanceof Error ? failure.message : String(failure)}\n\n${usage}`);
    return 1;
  }
  if (!wish) {
    console.log(usage);
    return 0;
  }
  try {
    return await start(wish);
  } catch (failure) {
    console.error(explained(failure));
    return 1;
  }
}

process.exitCode = await main(process.argv.slice(2));
