import { execFileSync } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";

const root = join(import.meta.dirname, "..", "..");

/** What stands at the top; all else belongs into one of its folders. */
const parts = ["README.md", "DEVELOPERS.md", "package.json", "tsconfig.json", "electron", "renderer", "shared-types", "tests", "fixtures"];
const besides = ["package-lock.json", ".ci"];

test("the top level holds the project's parts, the lock file, .ci and dotfiles, nothing else", () => {
  const tracked = execFileSync("git", ["ls-files", "-z"], { cwd: root, encoding: "utf8" });
  const names = new Set(
    tracked
      .split("\0")
      .filter(Boolean)
      .map((path) => path.split("/")[0] as string),
  );
  const stray = [...names].filter((name) => !parts.includes(name) && !besides.includes(name) && !name.startsWith("."));
  expect(stray).toEqual([]);
  expect(parts.filter((name) => !names.has(name))).toEqual([]);
});

test("fixtures hold no code", () => {
  const files = readdirSync(join(root, "fixtures"), { recursive: true, encoding: "utf8" });
  expect(files.filter((file) => /\.(?:[cm]?[jt]sx?|sh|py)$/.test(file))).toEqual([]);
});

test("no package has an install script, save Node itself, which places its own binary", () => {
  const lock = JSON.parse(readFileSync(join(root, "package-lock.json"), "utf8")) as {
    packages: Record<string, { hasInstallScript?: boolean }>;
  };
  const scripted = Object.entries(lock.packages).flatMap(([path, { hasInstallScript }]) => (hasInstallScript ? [path] : []));
  expect(scripted.filter((path) => path !== "node_modules/node")).toEqual([]);
});

test("every dependency is pinned to one version", () => {
  const { dependencies, devDependencies } = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
  const loose = Object.entries<string>({ ...dependencies, ...devDependencies }).filter(
    ([, version]) => !/^\d+\.\d+\.\d+(?:-[\w.]+)?$/.test(version),
  );
  expect(loose).toEqual([]);
});

test("the analysis' project knows neither Node nor the browser", () => {
  const { compilerOptions } = JSON.parse(readFileSync(join(root, "electron", "analysis", "tsconfig.json"), "utf8"));
  const base = JSON.parse(readFileSync(join(root, "shared-types", "tsconfig.base.json"), "utf8")).compilerOptions;
  expect({ types: compilerOptions.types ?? base.types, lib: compilerOptions.lib ?? base.lib }).toEqual({ types: [], lib: ["es2024"] });
});
