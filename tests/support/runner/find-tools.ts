import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { delimiter, join } from "node:path";

/** Programs that read the standards we write, each with Debian's package. None of them is part of the product. */
const packages = {
  ffmpeg: "ffmpeg",
  ffprobe: "ffmpeg",
  mkvmerge: "mkvtoolnix",
  mkvinfo: "mkvtoolnix",
  pdftotext: "poppler-utils",
  pdftoppm: "poppler-utils",
  unzip: "unzip",
} as const;

export type Tool = keyof typeof packages;
const tools = Object.keys(packages) as Tool[];

/** Where a program stands on the PATH; undefined where it does not. */
export function toolPath(tool: Tool): string | undefined {
  const endings = process.platform === "win32" ? [".exe", ".cmd"] : [""];
  return (process.env.PATH ?? "")
    .split(delimiter)
    .filter((folder) => folder)
    .flatMap((folder) => endings.map((ending) => join(folder, `${tool}${ending}`)))
    .find((path) => existsSync(path));
}

/**
 * Gets the missing programs with apt-get where this is root's Debian.
 * @returns One sentence for the person: what is there, what came, and what the tests will have to leave out.
 */
export function findOrGetTools(): string {
  const missing = tools.filter((tool) => !toolPath(tool));
  if (missing.length === 0) return `Programs that read what is exported: ${tools.join(", ")}, found installed.`;
  const wanted = [...new Set(missing.map((tool) => packages[tool]))];
  if (process.platform === "linux" && process.getuid?.() === 0 && existsSync("/usr/bin/apt-get")) {
    console.log(`Getting ${wanted.join(", ")} with apt-get, to read what is exported.`);
    const quiet = {
      stdio: ["ignore", "ignore", "inherit"] as ["ignore", "ignore", "inherit"],
      env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" },
    };
    spawnSync("apt-get", ["update", "-qq"], quiet);
    spawnSync("apt-get", ["install", "-y", "-qq", "--no-install-recommends", ...wanted], quiet);
  }
  const still = tools.filter((tool) => !toolPath(tool));
  return still.length === 0
    ? `Programs that read what is exported: ${wanted.join(", ")} installed with apt-get.`
    : `Not installed, so that tests that read exports with them are skipped: ${still.join(", ")}. Install ${[...new Set(still.map((tool) => packages[tool]))].join(", ")} to run them.`;
}

/** The reason to skip a test that needs these programs; null where they are all there. */
export function missingTools(...needed: Tool[]): string | null {
  const missing = needed.filter((tool) => !toolPath(tool));
  return missing.length === 0
    ? null
    : `${missing.join(" and ")} not installed here (${[...new Set(missing.map((tool) => packages[tool]))].join(", ")})`;
}
