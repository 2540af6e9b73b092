import { cpSync, existsSync, globSync, mkdirSync, renameSync, rmSync, statSync } from "node:fs";
import { dirname, join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { build, type InlineConfig } from "vite";

const root = join(import.meta.dirname, "..", "..");
const pageFolder = join(root, ".build", "page");
const desktopFolder = join(root, ".build", "desktop");

/** A build takes seconds; one that has not ended after this was broken off. */
const longestBuildMilliseconds = 120_000;

/** One build of a part at a time, also over several processes: who comes second waits, and finds it done. */
async function alone(folder: string, work: () => Promise<void>): Promise<void> {
  const lock = `${folder}.lock`;
  mkdirSync(dirname(lock), { recursive: true });
  for (;;) {
    try {
      mkdirSync(lock);
      break;
    } catch (failure) {
      if ((failure as NodeJS.ErrnoException).code !== "EEXIST") throw failure;
      const since = statSync(lock, { throwIfNoEntry: false })?.mtimeMs ?? Date.now();
      if (Date.now() - since > longestBuildMilliseconds) rmSync(lock, { recursive: true, force: true });
      else await pause(100);
    }
  }
  try {
    await work();
  } finally {
    rmSync(lock, { recursive: true, force: true });
  }
}

/** Builds the page where a source is newer than what was built, or nothing was. */
export function freshPage(logLevel?: InlineConfig["logLevel"]): Promise<void> {
  return alone(pageFolder, async () => {
    if (pageIsOld()) await buildPage(logLevel);
  });
}

/** Builds the desktop's parts where a source is newer than what was built, or nothing was. */
export function freshDesktop(logLevel?: InlineConfig["logLevel"]): Promise<void> {
  return alone(desktopFolder, async () => {
    if (desktopIsOld()) await buildDesktop(logLevel);
  });
}

/** Builds the page into `.build/page`. */
export async function buildPage(logLevel: InlineConfig["logLevel"] = "info"): Promise<void> {
  await build({ configFile: join(root, "renderer", "vite.config.ts"), logLevel });
}

/** Builds main process, worker and preload into `.build/desktop`; dependencies stay in node_modules. */
export async function buildDesktop(logLevel: InlineConfig["logLevel"] = "info"): Promise<void> {
  // Beside its place, and there at once: whoever reads it meanwhile finds the old or the new, never half of it.
  const outDir = `${desktopFolder}-${process.pid}`;
  rmSync(outDir, { recursive: true, force: true });
  const shared = { configFile: false, root, logLevel, publicDir: false } as const;
  await build({
    ...shared,
    build: {
      ssr: true,
      target: "node22",
      outDir,
      emptyOutDir: false,
      rolldownOptions: {
        input: { main: join(root, "electron", "main.ts"), "analysis-worker": join(root, "electron", "jobs", "analysis-worker.ts") },
        external: ["electron"],
        // All in one folder: the migrations and the worker are found beside the file that asks for them.
        output: { format: "es", entryFileNames: "[name].mjs", chunkFileNames: "[name]-[hash].mjs" },
      },
    },
  });
  await build({
    ...shared,
    build: {
      target: "node22",
      outDir,
      emptyOutDir: false,
      lib: { entry: join(root, "electron", "preload.ts"), formats: ["cjs"], fileName: () => "preload.cjs" },
      rolldownOptions: { external: ["electron"] },
    },
  });
  cpSync(join(root, "electron", "library", "migrations"), join(outDir, "migrations"), { recursive: true });
  const old = `${outDir}-old`;
  if (existsSync(desktopFolder)) renameSync(desktopFolder, old);
  renameSync(outDir, desktopFolder);
  rmSync(old, { recursive: true, force: true });
}

/** True when a source is newer than what was built from it, or nothing was built. */
export function pageIsOld(): boolean {
  return isOlder(join(pageFolder, "index.html"), ["renderer/**/*", "shared-types/**/*", "package-lock.json"]);
}

export function desktopIsOld(): boolean {
  return isOlder(join(desktopFolder, "preload.cjs"), ["electron/**/*", "shared-types/**/*", "package-lock.json"]);
}

function isOlder(builtFile: string, sources: readonly string[]): boolean {
  if (!existsSync(builtFile)) return true;
  const builtAt = statSync(builtFile).mtimeMs;
  return globSync([...sources], { cwd: root }).some((file) => statSync(join(root, file)).mtimeMs > builtAt);
}
