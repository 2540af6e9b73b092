import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { billOfMaterials } from "../../electron/packaging/bill-of-materials.ts";

const root = join(import.meta.dirname, "..", "..");
const lock = JSON.parse(readFileSync(join(root, "package-lock.json"), "utf8")) as {
  packages: Record<string, { version: string; dev?: boolean; devOptional?: boolean; integrity?: string }>;
};

const bill = billOfMaterials();

test("the bill names every package of the lock file that is not for development alone, and Electron, and nothing else", () => {
  const shipped = Object.entries(lock.packages)
    .filter(([path, entry]) => path !== "" && !entry.dev && !entry.devOptional)
    .map(([path, { version }]) => `${path.split("node_modules/").at(-1)}@${version}`);
  const electron = `electron@${lock.packages["node_modules/electron"]!.version}`;
  expect(bill.components.map(({ name, version }) => `${name}@${version}`).sort()).toEqual([...new Set([...shipped, electron])].sort());
  expect(bill.components.map(({ name }) => name)).toEqual(expect.arrayContaining(["better-sqlite3", "react", "video.js"]));
});

test("each has its seal as the lock file has it, in hexadecimal", () => {
  for (const { name, version, hashes } of bill.components) {
    const [, entry] = Object.entries(lock.packages).find(
      ([path, locked]) => path.split("node_modules/").at(-1) === name && locked.version === version,
    )!;
    expect(hashes?.[0]?.content, name).toBe(Buffer.from(entry.integrity!.slice("sha512-".length), "base64").toString("hex"));
  }
});

test("it is CycloneDX, of this version of Roundwalk, and every dependency it speaks of is a component", () => {
  const { version } = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as { version: string };
  expect([bill.bomFormat, bill.metadata.component.name, bill.metadata.component.version]).toEqual(["CycloneDX", "roundwalk", version]);
  const known = new Set([bill.metadata.component["bom-ref"], ...bill.components.map((component) => component["bom-ref"])]);
  expect(bill.dependencies.flatMap(({ ref, dependsOn }) => [ref, ...dependsOn]).filter((ref) => !known.has(ref))).toEqual([]);
});
