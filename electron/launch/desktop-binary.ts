import { spawn } from "node:child_process";
import { lookup } from "node:dns/promises";
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";

const installedPackage = join(import.meta.dirname, "..", "..", "node_modules", "electron");

/** How long to wait for the name of the place that has Electron's binary, and for the binary (some 100 MB). */
const lookupMilliseconds = 4_000;
const fetchMilliseconds = 240_000;

export type DesktopBinary = { readonly path: string } | { readonly missing: string };

/**
 * Electron's binary: the one that is there, else fetched with the package's own installer, else one sentence why not.
 * The npm package itself brings no binary.
 * @param electronFolder the installed package.
 */
export async function findDesktopBinary(tell: (line: string) => void, electronFolder = installedPackage): Promise<DesktopBinary> {
  if (process.platform === "linux" && !process.env.DISPLAY && !process.env.WAYLAND_DISPLAY)
    return { missing: "this machine has no display" };
  if (process.platform === "linux" && process.getuid?.() === 0) return { missing: "Electron does not run as root with its sandbox on" };
  if (!existsSync(electronFolder)) return { missing: "Electron is not installed here" };
  const present = presentBinary(electronFolder);
  if (present) return { path: present };
  const place = new URL(process.env.ELECTRON_MIRROR ?? process.env.npm_config_electron_mirror ?? "https://github.com");
  if (!(await isKnown(place.hostname)))
    return { missing: `Electron's binary is not here, and ${place.hostname}, which has it, cannot be reached` };
  tell("Fetching Electron's binary (once, about 100 MB) …");
  const failure = await runInstaller(electronFolder);
  const fetched = presentBinary(electronFolder);
  return fetched ? { path: fetched } : { missing: `Electron's binary could not be fetched (${failure ?? "nothing came"})` };
}

/** As Electron's own index.js finds it: a program that somebody built themselves needs no note of the installer's. */
function presentBinary(electronFolder: string): string | undefined {
  const pathFile = join(electronFolder, "path.txt");
  const noted = existsSync(pathFile) ? readFileSync(pathFile, "utf8").trim() : undefined;
  const own = process.env.ELECTRON_OVERRIDE_DIST_PATH;
  if (own === undefined && noted === undefined) return undefined;
  const path = own === undefined ? join(electronFolder, "dist", noted ?? "") : join(own, noted ?? "electron");
  return existsSync(path) ? path : undefined;
}

async function isKnown(hostname: string): Promise<boolean> {
  // Behind a proxy the name need not be known here; the installer must try.
  if (process.env.HTTPS_PROXY ?? process.env.https_proxy ?? process.env.ELECTRON_GET_USE_PROXY) return true;
  const late = new Promise<false>((resolve) => setTimeout(resolve, lookupMilliseconds, false).unref());
  return Promise.race([
    lookup(hostname).then(
      () => true,
      () => false,
    ),
    late,
  ]);
}

/** Undefined when it went well; else the last line of what the installer said. */
function runInstaller(electronFolder: string): Promise<string | undefined> {
  return new Promise((resolve) => {
    const installer = spawn(process.execPath, [join(electronFolder, "install.js")], {
      stdio: ["ignore", "ignore", "pipe"],
      timeout: fetchMilliseconds,
    });
    let said = "";
    installer.stderr.on("data", (chunk) => {
      said = `${said}${chunk}`.slice(-4000);
    });
    installer.on("error", (failure) => resolve(failure.message));
    installer.on("close", (code) => resolve(code === 0 ? undefined : (firstReason(said) ?? "no answer in time")));
  });
}

/** What says most about why: the network's own code, else the first line that speaks of an error. */
const reasonPatterns = [/E(?:CONN\w+|NOTFOUND|AI_AGAIN|TIMEDOUT|HOSTUNREACH|NOSPC|ACCES)|HTTPError|status code/, /error/i];

function firstReason(said: string): string | undefined {
  const lines = said.split("\n").map((line) => line.trim());
  const line = reasonPatterns.map((pattern) => lines.find((each) => pattern.test(each))).find((each) => each !== undefined);
  return line
    ?.replace(/^\[cause\]: /, "")
    .replace(/[.{ ]+$/, "")
    .slice(0, 160);
}
