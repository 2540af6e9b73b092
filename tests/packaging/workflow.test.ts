import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";

// The packager reads YAML itself; its parser is the one that is here.
const { load } = createRequire(fileURLToPath(import.meta.resolve("electron-builder")))("js-yaml") as { load: (text: string) => unknown };

const root = join(import.meta.dirname, "..", "..");
const text = readFileSync(join(root, ".github", "workflows", "packages.yml"), "utf8");
const manifest = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));

interface Step {
  readonly name?: string;
  readonly uses?: string;
  readonly run?: string;
  readonly if?: string;
  readonly shell?: string;
  readonly with?: Record<string, unknown>;
}
interface Job {
  readonly "runs-on": string;
  readonly "timeout-minutes": number;
  readonly strategy?: { readonly matrix: { readonly system: string[] } };
  readonly steps: readonly Step[];
}
const workflow = load(text) as { readonly permissions: object; readonly jobs: Record<"test" | "package", Job> };
const steps = Object.values(workflow.jobs).flatMap((job) => job.steps);

/** Actions with the inputs that their action.yml names at that version, as far as they are used; all run on Node 24. */
const actions: Readonly<Record<string, readonly string[]>> = {
  "actions/checkout@v5": [],
  "actions/setup-node@v5": ["node-version", "cache"],
  "actions/upload-artifact@v6": ["name", "path", "if-no-files-found", "include-hidden-files"],
};

describe("the workflow that makes the packages", () => {
  test("builds and tries them on the three systems, may only read, and never runs without an end", () => {
    expect(workflow.jobs.package.strategy?.matrix.system).toEqual(["ubuntu-latest", "macos-latest", "windows-latest"]);
    expect(workflow.permissions).toEqual({ contents: "read" });
    for (const job of Object.values(workflow.jobs)) expect(job["timeout-minutes"]).toBeGreaterThan(0);
  });

  test("uses known actions with inputs that they have", () => {
    for (const { uses, with: inputs = {} } of steps.filter((step) => step.uses !== undefined)) {
      expect(Object.keys(actions)).toContain(uses);
      expect(Object.keys(inputs).filter((name) => !actions[uses as string]?.includes(name))).toEqual([]);
    }
  });

  test("runs scripts that there are, the smoke test after the folder that it tries", () => {
    const named = steps.flatMap(({ run = "" }) => [...run.matchAll(/npm run ([\w:-]+)/g)].map(([, name]) => name as string));
    expect(named.filter((name) => !Object.hasOwn(manifest.scripts, name))).toEqual([]);
    expect(named).toEqual(["test:unit", "package", "smoke", "smoke", "package"]);
  });

  test("gives Electron a display and a sandbox on Linux, wherever it may be opened", () => {
    for (const job of Object.values(workflow.jobs)) {
      const run = job.steps.map((step) => step.run ?? "").join("\n");
      expect(run).toMatch(/sysctl -w kernel\.apparmor_restrict_unprivileged_userns=0\n.*xvfb-run --auto-servernum /s);
    }
  });

  test("keeps an installer of every kind that is made, although their folder is a hidden one", () => {
    const upload = steps.find(({ uses }) => uses?.startsWith("actions/upload-artifact"));
    const { name, ...kept } = (upload?.with ?? {}) as Record<string, string>;
    // One name for each system: a second artifact of the same name is refused.
    expect(name).toContain("matrix.system");
    const endings: Record<string, string> = { dmg: "dmg", nsis: "exe", AppImage: "AppImage", deb: "deb" };
    const made = ["mac", "win", "linux"].flatMap((system) =>
      manifest.build[system].target.map(({ target }: { target: string }) => endings[target]),
    );
    const paths = kept.path?.trim().split("\n") ?? [];
    expect(paths.filter((path) => path.includes("*")).sort()).toEqual(
      made.map((ending) => `${manifest.build.directories.output}/*.${ending}`).sort(),
    );
    expect(paths).toContain(manifest.build.extraResources[0].from);
    expect(kept).toMatchObject({ "include-hidden-files": true, "if-no-files-found": "error" });
  });
});
