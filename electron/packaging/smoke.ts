import { globSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { smokeTest } from "./smoke-test.ts";

/** Tries the program that `npm run package -- --folder` laid down for this system. */
const packages = join(import.meta.dirname, "..", "..", ".build", "packages");
const programs = {
  linux: "linux*-unpacked/roundwalk",
  darwin: "mac*/Roundwalk.app/Contents/MacOS/Roundwalk",
  win32: "win*-unpacked/Roundwalk.exe",
} as const;

const pattern = Object.hasOwn(programs, process.platform) ? programs[process.platform as keyof typeof programs] : undefined;
const [program] = pattern ? globSync(pattern, { cwd: packages }) : [];
if (!program) {
  console.error(`There is no packed program for this system in ${packages}: "npm run package -- --folder" makes it.`);
  process.exitCode = 1;
} else {
  const folder = mkdtempSync(join(tmpdir(), "roundwalk-smoke-"));
  const libraryFile = join(folder, "library.sqlite");
  try {
    console.log(await smokeTest({ program: join(packages, program), args: ["--library", libraryFile], libraryFile }));
  } catch (failure) {
    console.error(failure instanceof Error ? failure.message : failure);
    process.exitCode = 1;
  } finally {
    rmSync(folder, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
  }
}
