import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, describe, expect, test, vi } from "vitest";
import { runDesktop } from "../../electron/launch/run-desktop.ts";
import { temporaryFolder } from "../support/builders/temporary-folder.ts";

/** Node stands for Electron's program, and these lines for the desktop's main file. */
function mainFile(lines: string): string {
  const file = join(temporaryFolder(), "main.mjs");
  writeFileSync(file, lines);
  return file;
}

describe("the desktop as it is started", () => {
  afterEach(() => vi.unstubAllEnvs());

  test("is told of the library and of a wish for no demo, and is never a bare Node", async () => {
    vi.stubEnv("ELECTRON_RUN_AS_NODE", "1");
    const told = join(temporaryFolder(), "told.json");
    const lines = `import { writeFileSync } from "node:fs";
      writeFileSync(${JSON.stringify(told)}, JSON.stringify([process.argv.slice(2), process.env.ELECTRON_RUN_AS_NODE ?? null]));`;
    const main = mainFile(lines);
    expect(await runDesktop(process.execPath, { libraryFile: "/lots/library.sqlite", withDemo: false }, main)).toBe(0);
    expect(JSON.parse(readFileSync(told, "utf8"))).toEqual([["--library", "/lots/library.sqlite", "--no-demo"], null]);
    await runDesktop(process.execPath, { libraryFile: null, withDemo: true }, main);
    expect(JSON.parse(readFileSync(told, "utf8"))).toEqual([[], null]);
  });

  test("gives its own exit code", async () => {
    const main = mainFile("console.error('sandbox? no: another fault'); process.exit(3);");
    expect(await runDesktop(process.execPath, { libraryFile: null, withDemo: true }, main)).toBe(3);
  });

  // Both as Chromium writes them (sandbox/linux and content/browser/zygote_host).
  test.for([
    "[1:0101/000000.000000:FATAL:zygote_host_impl_linux.cc(128)] No usable sandbox! If you are running on Ubuntu 23.10+ …",
    "[1:0101/000000.000000:FATAL:setuid_sandbox_host.cc(163)] The SUID sandbox helper binary was found, but is not configured correctly. Rather than run without sandboxing I'm aborting now.",
  ])("says in one sentence that the system has no sandbox for it: %s", async (words) => {
    const main = mainFile(`console.error(${JSON.stringify(words)}); process.kill(process.pid, "SIGABRT");`);
    expect(await runDesktop(process.execPath, { libraryFile: null, withDemo: true }, main)).toEqual({
      missing: expect.stringMatching(/^this system .* \(no usable sandbox\)$/),
    });
  });
});
