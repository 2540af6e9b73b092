import { isAbsolute, normalize } from "node:path";
import { Refusal } from "./refusals.ts";

/** A folder that a person named: in full, since a page stands in none. @throws Refusal */
export function namedFolder(written: string): string {
  const folder = written.trim();
  if (!isAbsolute(folder) || folder.includes("\0")) {
    throw new Refusal("folder-relative", `“${folder}” is no full path. Write the folder from its root on, as the system shows it.`, {
      file: folder,
    });
  }
  return normalize(folder);
}
