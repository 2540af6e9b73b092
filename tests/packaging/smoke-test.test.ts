import { join } from "node:path";
import { expect, test } from "vitest";
import { smokeTest } from "../../electron/packaging/smoke-test.ts";
import { temporaryFolder } from "../support/builders/temporary-folder.ts";

const root = join(import.meta.dirname, "..", "..");

test("it waits until the application has the demo analysed, ends it and finds the library whole", { timeout: 120_000 }, async () => {
  const libraryFile = join(temporaryFolder(), "library.sqlite");
  const args = [join(root, "electron/start.ts"), "--host", "browser", "--no-open", "--library", libraryFile];
  await expect(smokeTest({ program: process.execPath, args, libraryFile })).resolves.toMatch(
    /^1 recording, \d+ claims, \d+ conflicts; the library is whole$/,
  );
});

test("a program that ends early fails it with what it said", async () => {
  const libraryFile = join(temporaryFolder(), "library.sqlite");
  const args = ["-e", "console.error('no SQLite for this machine'); process.exit(3)"];
  await expect(smokeTest({ program: process.execPath, args, libraryFile })).rejects.toThrow(/ended with 3.*no SQLite for this machine/s);
});

test("a program that never gets there fails it, and is ended", async () => {
  const libraryFile = join(temporaryFolder(), "library.sqlite");
  const args = ["-e", "setInterval(() => {}, 1000)"];
  await expect(smokeTest({ program: process.execPath, args, libraryFile, longestMilliseconds: 1500 })).rejects.toThrow(
    /not in the library after 1.5 seconds/,
  );
});
