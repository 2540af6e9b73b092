import { existsSync, globSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";

const root = join(import.meta.dirname, "..", "..");

/** Points of the checklist on the page "Security" of Electron's documentation. */
const checklistPoints = 20;

const page = readFileSync(join(root, "DEVELOPERS.md"), "utf8");
const section = page.slice(page.indexOf("### Security, point by point"), page.indexOf("## Not yet"));
const rowPattern = /^\| (?<point>.+?) \| `(?<file>[\w./-]+)`: `(?<line>.+?)` \| `(?<testFile>[\w./-]+)`: “(?<title>.+?)” \|$/;
const rows = section.split("\n").flatMap((text) => {
  const groups = rowPattern.exec(text)?.groups as Record<"point" | "file" | "line" | "testFile" | "title", string> | undefined;
  return groups ? [{ ...groups, line: groups.line.replaceAll("\\|", "|") }] : [];
});

/** Words of Electron's that open what its checklist wants closed, or that would begin a remote page. */
const opening =
  /enableBlinkFeatures|disableBlinkFeatures|allowpopups|appendSwitch|appendArgument|bypassCSP|allowServiceWorkers|registerFileProtocol|setWebRequestBlocker|executeJavaScript|insertCSS|loadURL\(\s*["'`]https?:|<webview/;

describe("the table of security in DEVELOPERS.md", () => {
  test("no source opens what the checklist wants closed", () => {
    const sources = globSync("{electron,renderer,shared-types}/**/*.{ts,tsx,mjs,html}", { cwd: root });
    expect(sources.length).toBeGreaterThan(100);
    expect(sources.filter((file) => opening.test(readFileSync(join(root, file), "utf8")))).toEqual([]);
    expect(opening.test("webPreferences: { enableBlinkFeatures: 'X' }")).toBe(true);
  });

  test("has a row for every point of Electron's checklist, in order, and none that cannot be read", () => {
    const numbered = rows.map(({ point }) => Number.parseInt(point, 10)).filter(Number.isInteger);
    expect(numbered).toEqual(Array.from({ length: checklistPoints }, (_, index) => index + 1));
    const written = section.split("\n").filter((text) => text.startsWith("| ") && !text.startsWith("| point") && !text.startsWith("| ---"));
    expect(rows).toHaveLength(written.length);
    expect(rows.length).toBeGreaterThan(checklistPoints);
  });

  test.for(rows)("$point: the line is there, and so is its test", ({ file, line, testFile, title }) => {
    expect(existsSync(join(root, file)), file).toBe(true);
    expect(readFileSync(join(root, file), "utf8")).toContain(line);
    expect(readFileSync(join(root, testFile), "utf8")).toContain(title);
  });
});
