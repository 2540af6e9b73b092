import { globSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { builtinModules } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { FuseState, FuseV1Options } from "@electron/fuses";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type PackedApplication, packDry } from "../../electron/packaging/dry-run.ts";
import { preparePackage } from "../../electron/packaging/prepare-package.ts";

const root = join(import.meta.dirname, "..", "..");

/** Each system, and each kind of processor at least twice. */
const rows = [
  { platform: "linux", architecture: "x64" },
  { platform: "linux", architecture: "arm64" },
  { platform: "darwin", architecture: "arm64" },
  { platform: "win32", architecture: "x64" },
] as const;

interface Manifest {
  readonly dependencies?: Record<string, string>;
}
const manifest = (name: string) => JSON.parse(readFileSync(join(root, "node_modules", name, "package.json"), "utf8")) as Manifest;

/** Needed to compile better-sqlite3, and never loaded. */
const headersOnly = new Set(["node-addon-api"]);

/** Packages that the built desktop loads, with all that those load. */
function loadedPackages(): string[] {
  const built = globSync(".build/desktop/*.{mjs,cjs}", { cwd: root }).map((file) => readFileSync(join(root, file), "utf8"));
  const named = built.flatMap((text) =>
    [...text.matchAll(/(?:\bfrom\s*|\bimport\s*\(?\s*|\brequire\(\s*)"([^".][^"\n]*)"/g)].map(([, name = ""]) => name),
  );
  const needed = new Set<string>();
  const waiting = named.map((name) => (name.startsWith("@") ? name.split("/").slice(0, 2).join("/") : name.split("/")[0]!));
  for (let name = waiting.pop(); name !== undefined; name = waiting.pop()) {
    if (name === "electron" || name.startsWith("node:") || builtinModules.includes(name)) continue;
    if (headersOnly.has(name) || needed.has(name)) continue;
    needed.add(name);
    waiting.push(...Object.keys(manifest(name).dependencies ?? {}));
  }
  return [...needed].sort();
}

const packageOf = (path: string) => /^node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(path)?.[1];

describe.each(rows)("the package for $platform $architecture", { timeout: 240_000 }, ({ platform, architecture }) => {
  const place = mkdtempSync(join(tmpdir(), "roundwalk-packed-"));
  let packed: PackedApplication;
  let paths: string[];
  beforeAll(async () => {
    await preparePackage();
    packed = await packDry(platform, architecture, place);
    paths = packed.files.map(({ path }) => path);
  }, 240_000);
  afterAll(() => rmSync(place, { recursive: true, force: true }));

  test("holds of the project: the built page and desktop, the demo and what names the application", () => {
    const built = globSync(".build/{page,desktop}/**/*.*", { cwd: root }).map((path) => path.replaceAll("\\", "/"));
    expect(paths.filter((path) => !path.startsWith("node_modules/")).sort()).toEqual(
      [
        ...built.filter((path) => !path.endsWith(".map")),
        "fixtures/demo/demo.json",
        "fixtures/demo/demo.vtt",
        "fixtures/demo/demo.webm",
        "fixtures/demo/stock-sheet.csv",
        "package.json",
      ].sort(),
    );
  });

  test("holds of the packages exactly those that the built desktop loads", () => {
    expect([...new Set(paths.flatMap((path) => packageOf(path) ?? []))].sort()).toEqual(loadedPackages());
  });

  test("holds no test, no source that is compiled, no map", () => {
    expect(
      paths.filter((path) => /(?:^|\/)(?:tests?|__tests__)(?:\/|\.[cm]?js$)|\.[cm]?tsx?$|\.map$|\.(?:c|cc|cpp|h|hpp|gyp)$/.test(path)),
    ).toEqual([]);
  });

  test("holds a licence of every package", () => {
    const licensed = new Set(paths.filter((path) => /\/licen[cs]e(?:\.\w+)?$/i.test(path)).map(packageOf));
    expect(loadedPackages().filter((name) => !licensed.has(name))).toEqual([]);
  });

  test("holds its own SQLite and none of another machine, outside the archive", () => {
    expect(packed.files.filter(({ path }) => path.endsWith(".node")).map(({ path, outside }) => ({ path, outside }))).toEqual([
      { path: `node_modules/better-sqlite3/prebuilds/${platform}-${architecture}.node`, outside: true },
    ]);
  });

  test("keeps the demo's media outside the archive, and all code inside it", () => {
    const outside = packed.files.filter((file) => file.outside).map(({ path }) => path);
    expect(outside).toContain("fixtures/demo/demo.webm");
    expect(outside.filter((path) => !path.startsWith("fixtures/demo/") && !path.endsWith(".node"))).toEqual([]);
    for (const path of outside) {
      const bytes = readFileSync(join(packed.resources, "app.asar.unpacked", path));
      expect(bytes.equals(readFileSync(join(root, path))), path).toBe(true);
    }
  });

  test("carries its bill of materials", () => {
    expect(packed.beside).toContain("bill-of-materials.cdx.json");
  });

  test("has its fuses as a release needs them", () => {
    const state = (fuse: FuseV1Options) => packed.fuses[fuse];
    expect({
      runAsNode: state(FuseV1Options.RunAsNode),
      cookieEncryption: state(FuseV1Options.EnableCookieEncryption),
      nodeOptions: state(FuseV1Options.EnableNodeOptionsEnvironmentVariable),
      inspect: state(FuseV1Options.EnableNodeCliInspectArguments),
      asarIntegrity: state(FuseV1Options.EnableEmbeddedAsarIntegrityValidation),
      onlyFromAsar: state(FuseV1Options.OnlyLoadAppFromAsar),
      fileExtraRights: state(FuseV1Options.GrantFileProtocolExtraPrivileges),
    }).toEqual({
      runAsNode: FuseState.DISABLE,
      cookieEncryption: FuseState.ENABLE,
      nodeOptions: FuseState.DISABLE,
      inspect: FuseState.DISABLE,
      asarIntegrity: FuseState.ENABLE,
      onlyFromAsar: FuseState.ENABLE,
      fileExtraRights: FuseState.DISABLE,
    });
  });

  test.runIf(platform === "darwin")("tells macOS of the link, of the transcripts and of the archive's seal", () => {
    expect(packed.propertyList).toMatch(/CFBundleURLSchemes<\/key>\s*<array>\s*<string>roundwalk</);
    expect(packed.propertyList).toMatch(/CFBundleTypeExtensions<\/key>\s*<array>\s*<string>vtt</);
    expect(packed.propertyList).toContain("ElectronAsarIntegrity");
  });
});

test("no package asks for a start without the pages' sandbox, as the packager's older AppImages do by themselves", () => {
  const { build } = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
  expect(build.appImage.executableArgs).toEqual([]);
  expect(build.toolsets.appimage).not.toBe("0.0.0");
  expect(JSON.stringify(build)).not.toContain("no-sandbox");
});
