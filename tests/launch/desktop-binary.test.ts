import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeEach, describe, expect, test, vi } from "vitest";
import { findDesktopBinary } from "../../electron/launch/desktop-binary.ts";
import { temporaryFolder } from "../support/builders/temporary-folder.ts";

/** A package as Electron's is: `path.txt` names the binary within `dist`, and `install.js` fetches it. */
function electronPackage({ present = false, installer = "process.exit(0);" } = {}): string {
  const folder = temporaryFolder();
  if (present) {
    mkdirSync(join(folder, "dist"));
    writeFileSync(join(folder, "path.txt"), "electron");
    writeFileSync(join(folder, "dist", "electron"), "");
  }
  writeFileSync(join(folder, "install.js"), installer);
  return folder;
}

const fetches = `
const { mkdirSync, writeFileSync } = require("node:fs");
const { join } = require("node:path");
mkdirSync(join(__dirname, "dist"));
writeFileSync(join(__dirname, "path.txt"), "electron");
writeFileSync(join(__dirname, "dist", "electron"), "");
`;

describe("Electron's binary", () => {
  beforeEach(() => {
    vi.stubEnv("DISPLAY", ":99");
    vi.stubEnv("ELECTRON_OVERRIDE_DIST_PATH", undefined);
    // A name that every machine knows, so that the test asks no other host.
    vi.stubEnv("ELECTRON_MIRROR", "http://localhost/");
    for (const name of ["HTTPS_PROXY", "https_proxy", "ELECTRON_GET_USE_PROXY"]) vi.stubEnv(name, undefined);
    const getuid = process.getuid && vi.spyOn(process, "getuid").mockReturnValue(1000);
    return () => {
      getuid?.mockRestore();
      vi.unstubAllEnvs();
    };
  });

  test("is taken where it is", async () => {
    const folder = electronPackage({ present: true });
    expect(await findDesktopBinary(() => {}, folder)).toEqual({ path: join(folder, "dist", "electron") });
  });

  test("is taken from where somebody has put their own, with or without the installer's note", async () => {
    const own = temporaryFolder();
    writeFileSync(join(own, "electron"), "");
    vi.stubEnv("ELECTRON_OVERRIDE_DIST_PATH", own);
    for (const folder of [electronPackage(), electronPackage({ present: true })])
      expect(await findDesktopBinary(() => {}, folder)).toEqual({ path: join(own, "electron") });
  });

  test("is fetched with the package's own installer where it is not, and the person is told", async () => {
    const folder = electronPackage({ installer: fetches });
    const told: string[] = [];
    expect(await findDesktopBinary((line) => told.push(line), folder)).toEqual({ path: join(folder, "dist", "electron") });
    expect(told).toEqual([expect.stringContaining("Fetching Electron's binary")]);
  });

  test.for([
    {
      why: "the installer fails",
      folder: () =>
        electronPackage({
          installer: 'console.error("TypeError: fetch failed\\n  [cause]: Error: connect ECONNREFUSED 127.0.0.1:9 {"); process.exit(1);',
        }),
      says: "could not be fetched (Error: connect ECONNREFUSED 127.0.0.1:9)",
    },
    { why: "the installer brings nothing", folder: () => electronPackage(), says: "could not be fetched (nothing came)" },
    { why: "the package is not installed", folder: () => join(temporaryFolder(), "electron"), says: "Electron is not installed here" },
  ])("one sentence why not: $why", async ({ folder, says }) => {
    expect(await findDesktopBinary(() => {}, folder())).toEqual({ missing: expect.stringContaining(says) });
  });

  test("one sentence why not: the host that has it is not known", async () => {
    // RFC 6761: no name ends with .invalid.
    vi.stubEnv("ELECTRON_MIRROR", "https://electron.invalid/");
    expect(await findDesktopBinary(() => {}, electronPackage())).toEqual({
      missing: expect.stringContaining("electron.invalid, which has it, cannot be reached"),
    });
  });

  test.skipIf(process.platform !== "linux")("is not looked for without a display, or as root (only Linux is run so)", async () => {
    const folder = electronPackage({ present: true });
    vi.spyOn(process, "getuid").mockReturnValue(0);
    expect(await findDesktopBinary(() => {}, folder)).toEqual({ missing: expect.stringContaining("as root") });
    vi.stubEnv("DISPLAY", "");
    vi.stubEnv("WAYLAND_DISPLAY", "");
    expect(await findDesktopBinary(() => {}, folder)).toEqual({ missing: "this machine has no display" });
  });
});
