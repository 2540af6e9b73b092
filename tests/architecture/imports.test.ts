import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { type Layer, layers, withoutElectron } from "./layers.ts";
import { type ImportOfFile, importsOf, readProjectImports } from "./read-imports.ts";

const root = join(import.meta.dirname, "..", "..");

function isWithin(path: string, place: string): boolean {
  return path === place || path.startsWith(`${place}/`);
}

function layerOf(file: string): Layer | undefined {
  return layers.filter(({ from }) => isWithin(file, from)).sort((a, b) => b.from.length - a.from.length)[0];
}

function packageOf(specifier: string): string {
  return specifier
    .split("/")
    .slice(0, specifier.startsWith("@") ? 2 : 1)
    .join("/");
}

/** What is wrong with an import, naming file, import and what is allowed; undefined when nothing is. */
function complaint(found: ImportOfFile): string | undefined {
  const layer = layerOf(found.file);
  if (!layer) return `${found.file} is in no layer; give its folder a row in tests/architecture/layers.ts`;
  const { from, own, packages } = layer;
  const allowed = found.target
    ? [from, ...own].some((place) => isWithin(found.target as string, place))
    : packages.some((name) =>
        name === "node:" ? found.specifier.startsWith("node:") : name === found.specifier || name === packageOf(found.specifier),
      );
  if (allowed) return undefined;
  return `${found.file} imports ${found.target ?? found.specifier}; ${from} may import: ${[...own, from, ...packages].join(", ")}`;
}

const imports = readProjectImports(root);

describe("the layers", () => {
  test("are kept by every import", () => {
    expect(imports.length).toBeGreaterThan(200);
    expect(imports.flatMap((found) => complaint(found) ?? [])).toEqual([]);
  });

  test("every import of the project names a file that is there", async () => {
    const { existsSync } = await import("node:fs");
    expect(imports.filter(({ target }) => target !== null && !existsSync(join(root, target)))).toEqual([]);
  });

  test("no way leads to Electron from what runs without it", () => {
    const byFile = Map.groupBy(imports, ({ file }) => file);
    const wayToElectron = (file: string, way: readonly string[]): readonly string[] | undefined => {
      for (const { specifier, target, typeOnly } of byFile.get(file) ?? []) {
        if (typeOnly) continue;
        if (specifier === "electron") return [...way, file, "electron"];
        if (target && !way.includes(target)) {
          const further = wayToElectron(target, [...way, file]);
          if (further) return further;
        }
      }
      return undefined;
    };
    const starts = [...byFile.keys()].filter((file) => withoutElectron.some((place) => isWithin(file, place)));
    expect(starts.length).toBeGreaterThan(20);
    expect(starts.flatMap((file) => wayToElectron(file, [])?.join(" -> ") ?? [])).toEqual([]);
  });

  test.for([
    {
      file: "electron/analysis/zones/segment.ts",
      source: 'import { readFileSync } from "node:fs";',
      why: "the analysis does no input or output",
    },
    { file: "electron/analysis/analyse.ts", source: 'import { z } from "zod";', why: "the analysis needs no schemas" },
    { file: "electron/library/edits.ts", source: 'export * from "../services/record-edit.ts";', why: "the library knows no service" },
    { file: "electron/services/a.ts", source: 'const electron = await import("electron");', why: "services run without Electron" },
    { file: "electron/transport/a.ts", source: 'import { openLibrary } from "../library/open-library.ts";', why: "handlers are handed in" },
    { file: "renderer/app.tsx", source: 'import "../electron/start.ts";', why: "the page knows the contract alone" },
    { file: "electron/jobs/a.ts", source: 'import {\n  join,\n} from "node:path";', why: "an import over several lines" },
  ])("would be broken by $file: $why", ({ file, source }) => {
    const found = importsOf(file, source);
    expect(found).toHaveLength(1);
    expect(complaint(found[0] as ImportOfFile)).toContain(`${file} imports `);
  });

  test.for([
    { source: '// import { a } from "electron";', why: "a comment" },
    { source: '/* export * from "electron"; */', why: "a long comment" },
    { source: 'export const name = "electron";', why: "a constant" },
    { source: 'const address = "http://127.0.0.1"; // from "electron"', why: "a comment after an address" },
  ])("take $why for no import", ({ source }) => {
    expect(importsOf("electron/analysis/a.ts", source)).toEqual([]);
  });

  test("the message names file, import and what is allowed", () => {
    const [found] = importsOf("electron/analysis/zones/segment.ts", 'import { readFileSync } from "node:fs";');
    expect(complaint(found as ImportOfFile)).toBe(
      "electron/analysis/zones/segment.ts imports node:fs; electron/analysis may import: shared-types, electron/analysis",
    );
  });
});
