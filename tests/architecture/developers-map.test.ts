import { existsSync, globSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";

const root = join(import.meta.dirname, "..", "..");

/** Paths of the project that a page names in code marks, without what stands for any name (…, NAME, *). */
function namedPaths(page: string): string[] {
  const text = readFileSync(join(root, page), "utf8");
  const marked = [...text.matchAll(/`([^`\n]+)`/g)].map(([, inside]) => inside as string);
  return [...new Set(marked.filter((path) => /^(?:electron|renderer|shared-types|tests|fixtures|\.ci)\/[\w./*{},-]*$/.test(path)))];
}

describe.each(["README.md", "DEVELOPERS.md"])("%s", (page) => {
  test("names no path that is not there", () => {
    const missing = namedPaths(page).filter((path) =>
      path.includes("*") || path.includes("{") ? globSync(path, { cwd: root }).length === 0 : !existsSync(join(root, path)),
    );
    expect(missing).toEqual([]);
  });

  test("names no command that package.json has not", () => {
    const { scripts } = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as { scripts: Record<string, string> };
    const text = readFileSync(join(root, page), "utf8");
    const named = [...text.matchAll(/npm run (?:--\w+ )*([\w:-]+)/g)].map(([, name]) => name as string);
    expect([...new Set(named)].filter((name) => !Object.hasOwn(scripts, name))).toEqual([]);
  });
});

test("DEVELOPERS.md names many places, so that the check above is one", () => {
  expect(namedPaths("DEVELOPERS.md").length).toBeGreaterThan(15);
});

test("every task of electron/run.mjs has its file", () => {
  const guard = readFileSync(join(root, "electron", "run.mjs"), "utf8");
  const files = [...guard.matchAll(/\["node", "([\w./-]+)"/g)].map(([, file]) => file as string);
  expect(files.length).toBeGreaterThan(5);
  expect(files.filter((file) => !existsSync(join(root, file)))).toEqual([]);
});
