import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { Arch, build, Platform } from "electron-builder";
import { packDry } from "./dry-run.ts";
import { preparePackage } from "./prepare-package.ts";

const usage = `npm run package [-- OPTIONS]
  (none)      the installers of this system, into .build/packages
  --folder    only the folder that an installer would lay down
  --dry-run   what would go in for every system, listed; needs neither Electron's program nor a network`;

const root = join(import.meta.dirname, "..", "..");

async function listAll(): Promise<void> {
  const place = mkdtempSync(join(tmpdir(), "roundwalk-package-"));
  try {
    for (const platform of ["linux", "darwin", "win32"] as const) {
      for (const architecture of ["x64", "arm64"] as const) {
        const { files } = await packDry(platform, architecture, place);
        const bytes = files.reduce((sum, file) => sum + file.bytes, 0);
        console.log(`\n${platform} ${architecture}: ${files.length} files, ${(bytes / 1e6).toFixed(1)} MB`);
        for (const file of files) console.log(`${file.outside ? "outside" : "archive"} ${String(file.bytes).padStart(9)}  ${file.path}`);
      }
    }
  } finally {
    rmSync(place, { recursive: true, force: true });
  }
}

async function main(args: string[]): Promise<void> {
  const { values } = parseArgs({
    args,
    options: { folder: { type: "boolean" }, "dry-run": { type: "boolean" }, help: { type: "boolean", short: "h" } },
  });
  if (values.help) return console.log(usage);
  await preparePackage();
  if (values["dry-run"]) return listAll();
  // A Debian package must name a page. Only the forge that builds it knows one.
  const { GITHUB_SERVER_URL: server, GITHUB_REPOSITORY: repository } = process.env;
  const homepage = server && repository ? `${server}/${repository}` : "https://roundwalk.invalid";
  await build({
    projectDir: root,
    publish: "never",
    targets: Platform.current().createTarget(
      values.folder ? "dir" : undefined,
      ...(values.folder ? [Arch[process.arch as "x64" | "arm64"]] : []),
    ),
    config: { extraMetadata: { homepage } },
  });
}

await main(process.argv.slice(2));
