import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { freshDesktop, freshPage } from "../launch/build-parts.ts";
import { billOfMaterials } from "./bill-of-materials.ts";
import { drawIcons } from "./draw-icon.ts";

/** As `directories.buildResources` in package.json has it. */
export const packageResources = join(import.meta.dirname, "..", "..", ".build", "package-resources");

/** Everything that the packager takes and nobody keeps in the sources: page, desktop, icon and the bill of materials. */
export async function preparePackage(): Promise<void> {
  await freshPage("warn");
  await freshDesktop("warn");
  mkdirSync(packageResources, { recursive: true });
  drawIcons(packageResources);
  writeFileSync(join(packageResources, "bill-of-materials.cdx.json"), `${JSON.stringify(billOfMaterials(), null, 2)}\n`);
}
