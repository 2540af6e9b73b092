import { globSync, readFileSync, rmSync, statSync } from "node:fs";
import { join, relative, sep } from "node:path";
import { listPackage, statFile } from "@electron/asar";
import { getCurrentFuseWire } from "@electron/fuses";
import { Arch, Platform as BuilderPlatform, build } from "electron-builder";
import { type Architecture, makeStandInDistribution, type Platform } from "./stand-in-distribution.ts";

const root = join(import.meta.dirname, "..", "..");

const targets = { linux: BuilderPlatform.LINUX, darwin: BuilderPlatform.MAC, win32: BuilderPlatform.WINDOWS };

/** Where the packager lays the application, and where Electron's program with the fuses is in it. */
const places = {
  linux: { resources: "resources", fuses: "roundwalk" },
  win32: { resources: "resources", fuses: "Roundwalk.exe" },
  darwin: {
    resources: "Roundwalk.app/Contents/Resources",
    fuses: "Roundwalk.app/Contents/Frameworks/Electron Framework.framework/Electron Framework",
  },
} as const satisfies Record<Platform, { resources: string; fuses: string }>;

export interface PackedFile {
  /** From the application's root, with "/". */
  readonly path: string;
  readonly bytes: number;
  /** Whether it lies beside the archive as a file of its own. */
  readonly outside: boolean;
}

export interface PackedApplication {
  readonly folder: string;
  /** Folder of the archive. */
  readonly resources: string;
  readonly files: readonly PackedFile[];
  /** Files beside the archive that are not the application's: from the resources' folder. */
  readonly beside: readonly string[];
  /** State of each fuse by its number, as `@electron/fuses` reads it from the packed program. */
  readonly fuses: Awaited<ReturnType<typeof getCurrentFuseWire>>;
  /** The Info.plist on macOS, "" elsewhere. */
  readonly propertyList: string;
}

/**
 * Lays the application out for a platform with the real packager and the real configuration, over a distribution that stands in for
 * Electron's. What cannot be done here, signing and the installers themselves, is left out.
 * @param place a folder for it, which is emptied first.
 */
export async function packDry(platform: Platform, architecture: Architecture, place: string): Promise<PackedApplication> {
  rmSync(place, { recursive: true, force: true });
  const electronDist = join(place, "electron");
  makeStandInDistribution(electronDist, platform);
  const output = join(place, "packed");
  await build({
    projectDir: root,
    targets: targets[platform].createTarget("dir", Arch[architecture]),
    publish: "never",
    config: {
      electronDist,
      directories: { output },
      // Signing needs the system that it is for.
      mac: { identity: null },
      win: { signExecutable: false },
      electronFuses: { resetAdHocDarwinSignature: false },
    },
  });
  const [folder = ""] = globSync("*/", { cwd: output }).map((name) => join(output, name));
  const resources = join(folder, places[platform].resources);
  const archive = join(resources, "app.asar");
  const files = listPackage(archive, { isPack: false }).flatMap((listed) => {
    const path = listed.slice(1).split(sep).join("/");
    const entry = statFile(archive, listed.slice(1), true);
    return "size" in entry ? [{ path, bytes: entry.size, outside: entry.unpacked === true }] : [];
  });
  const beside = globSync("**/*", { cwd: resources })
    .filter((name) => statSync(join(resources, name)).isFile() && !name.startsWith(`app.asar`))
    .map((name) => name.split(sep).join("/"));
  const list = join(resources, "..", "Info.plist");
  return {
    folder: relative(place, folder),
    resources,
    files,
    beside,
    fuses: await getCurrentFuseWire(join(folder, places[platform].fuses)),
    propertyList: platform === "darwin" ? readFileSync(list, "utf8") : "",
  };
}
