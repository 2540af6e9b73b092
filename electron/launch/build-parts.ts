import { cpSync, existsSync, globSync, renameSync, rmSync, statSync } from "node:fs";
import { join } from "node:path";
import { build, type InlineConfig } from "vite";

const root = join(import.meta.dirname, "..", "..");
const pageFolder = join(root, ".build", "page");
const desktopFolder = join(root, ".build", "desktop");

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
  rmSync(desktopFolder, { recursive: true, force: true });
  renameSync(outDir, desktopFolder);
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
