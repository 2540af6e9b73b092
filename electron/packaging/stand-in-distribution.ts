import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { NtExecutable, NtExecutableResource, Resource } from "resedit";

export type Platform = "linux" | "darwin" | "win32";
export type Architecture = "x64" | "arm64";

/** What stands before the fuses in Electron's program, so that they can be found and flipped: see the README of `@electron/fuses`. */
const fuseSentinel = "dL7pKGdnNz796PbbjQWNKmHXBZaB9tsX";

/** Fuses of version 1; all stand on "0" (off) where a package must turn them on, on "1" where it must turn them off. */
const fuseWire = Buffer.concat([
  Buffer.from(fuseSentinel),
  // Version, number of fuses, then: run as Node, cookie encryption, NODE_OPTIONS, inspect, asar integrity, only from asar, own snapshot,
  // extra rights of file:, and room for one that is not known yet.
  Buffer.from([1, 9]),
  Buffer.from("101100010"),
]);

/** A Windows program without code: a version to be told by, and the fuses among its resources. */
function emptyWindowsProgram(): Uint8Array {
  const program = NtExecutable.createEmpty(false, false);
  const resources = NtExecutableResource.from(program);
  const version = Resource.VersionInfo.createEmpty();
  version.setStringValues({ lang: 1033, codepage: 1200 }, { FileDescription: "Electron" });
  version.outputToResourceEntries(resources.entries);
  resources.entries.push({ type: 10, id: 1, lang: 1033, codepage: 1200, bin: new Uint8Array(fuseWire).buffer });
  resources.outputResource(program);
  return new Uint8Array(program.generate());
}

const plist = (pairs: Readonly<Record<string, string>>) =>
  `<?xml version="1.0" encoding="UTF-8"?>\n<!DOCTYPE plist PUBLIC "-//Apple//DTD PLIST 1.0//EN" "http://www.apple.com/DTDs/PropertyList-1.0.dtd">\n<plist version="1.0"><dict>${Object.entries(
    pairs,
  )
    .map(([key, value]) => `<key>${key}</key><string>${value}</string>`)
    .join("")}</dict></plist>\n`;

const helpers = ["Electron Helper", "Electron Helper (GPU)", "Electron Helper (Plugin)", "Electron Helper (Renderer)"];

/**
 * A folder in the form of Electron's own distribution, with fuses to flip and nothing that runs: enough for the packager to lay the
 * application into it on a machine that cannot have Electron's program.
 */
export function makeStandInDistribution(folder: string, platform: Platform): void {
  const put = (path: string, content: string | Uint8Array) => {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), content, { mode: 0o755 });
  };
  if (platform !== "darwin") mkdirSync(join(folder, "resources"), { recursive: true });
  put("LICENSE", "The licence of Electron stands here.\n");
  if (platform !== "darwin") {
    if (platform === "win32") put("electron.exe", emptyWindowsProgram());
    else put("electron", fuseWire);
    put("locales/en-US.pak", "");
    return;
  }
  const app = "Electron.app/Contents";
  put(`${app}/MacOS/Electron`, "");
  put(`${app}/Info.plist`, plist({ CFBundleName: "Electron", CFBundleExecutable: "Electron", CFBundleIdentifier: "electron" }));
  put(`${app}/Resources/electron.icns`, "");
  put(`${app}/Resources/en.lproj/locale.pak`, "");
  put(`${app}/Frameworks/Electron Framework.framework/Electron Framework`, fuseWire);
  put(`${app}/Frameworks/Electron Framework.framework/Resources/en.lproj/locale.pak`, "");
  for (const name of helpers) {
    put(`${app}/Frameworks/${name}.app/Contents/MacOS/${name}`, "");
    put(`${app}/Frameworks/${name}.app/Contents/Info.plist`, plist({ CFBundleName: name, CFBundleExecutable: name }));
  }
}
