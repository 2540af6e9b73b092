import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { join } from "node:path";

const root = join(import.meta.dirname, "..", "..");

/** What of a CycloneDX document is read here (ECMA-424; https://cyclonedx.org/docs/1.5/json/). */
export interface BillOfMaterials {
  readonly bomFormat: string;
  readonly specVersion: string;
  readonly metadata: { readonly component: { readonly name: string; readonly version: string; readonly "bom-ref": string } };
  readonly components: readonly {
    readonly type: string;
    readonly "bom-ref": string;
    readonly name: string;
    readonly version: string;
    readonly purl: string;
    readonly hashes?: readonly { readonly alg: string; readonly content: string }[];
  }[];
  readonly dependencies: readonly { readonly ref: string; readonly dependsOn: readonly string[] }[];
}

interface LockedPackage {
  readonly version: string;
  readonly dev?: boolean;
  readonly devOptional?: boolean;
}

/**
 * What a package is made of, as npm itself lists it: everything the lock file names that is not for development alone, and Electron,
 * which is a development dependency by its form and the ground of the package by its use. npm's own `--omit dev` would leave out what
 * both sides need, so that the choice is made here.
 */
export function billOfMaterials(): BillOfMaterials {
  const { name, version } = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as { name: string; version: string };
  const lock = JSON.parse(readFileSync(join(root, "package-lock.json"), "utf8")) as { packages: Record<string, LockedPackage> };
  const listed = runNpm(["sbom", "--package-lock-only", "--sbom-format", "cyclonedx", "--sbom-type", "application"]);
  const bill = JSON.parse(listed) as BillOfMaterials;
  const own = bill.metadata.component["bom-ref"];
  const shipped = new Set<string>(["electron"].map((ground) => `${ground}@${lock.packages[`node_modules/${ground}`]?.version}`));
  for (const [path, entry] of Object.entries(lock.packages))
    if (path !== "" && !entry.dev && !entry.devOptional) shipped.add(`${path.split("node_modules/").at(-1)}@${entry.version}`);
  const components = bill.components.filter((component) => shipped.has(`${component.name}@${component.version}`));
  const kept = new Set([own, ...components.map((component) => component["bom-ref"])]);
  return {
    ...bill,
    // npm names the folder that it stands in.
    metadata: { ...bill.metadata, component: { ...bill.metadata.component, name, version } },
    components,
    dependencies: bill.dependencies
      .filter(({ ref }) => kept.has(ref))
      .map(({ ref, dependsOn }) => ({ ref, dependsOn: dependsOn.filter((other) => kept.has(other)) })),
  };
}

function runNpm(args: readonly string[]): string {
  // npm tells its scripts where it is itself; elsewhere it is what the shell finds.
  const script = process.env.npm_execpath;
  const [command, ...before] = script?.endsWith(".js") ? [process.execPath, script] : ["npm"];
  const { status, stdout, stderr, error } = spawnSync(command, [...before, ...args], {
    cwd: root,
    encoding: "utf8",
    maxBuffer: 64 * 1024 * 1024,
    shell: command === "npm" && process.platform === "win32",
  });
  if (error) throw error;
  if (status !== 0) throw new Error(`npm could not list what the package is made of: ${stderr.trim()}`);
  return stdout;
}
