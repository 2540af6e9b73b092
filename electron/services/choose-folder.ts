import { readdirSync } from "node:fs";
import { basename, join, relative, sep } from "node:path";
import type { OfferedFolder } from "../../shared-types/index.ts";
import type { Parts } from "./parts.ts";
import { Refusal } from "./refusals.ts";

/** Bounds of a look into a folder: somebody may have chosen the whole disk. */
const mostFiles = 4000;
const mostLevels = 8;

/** Shows the system's own window for a folder and offers what is in it; `folder` is null when the person chose none. */
export async function chooseFolder(
  { files }: Pick<Parts, "files">,
  choose: (() => Promise<string | null>) | null | undefined,
): Promise<OfferedFolder> {
  if (!choose)
    throw new Refusal("folder-choice-impossible", "This host has no window for folders. Choose the folder in the browser's own.");
  const folder = await choose();
  if (folder === null) return { folder: null, files: [], more: false };
  const { paths, more } = filesUnder(folder);
  return {
    folder: basename(folder),
    files: paths.flatMap((path) => {
      const place = relative(folder, path).split(sep).slice(0, -1).join("/");
      try {
        return [{ ...files.offerPath(path), folder: place }];
      } catch (failure) {
        // Gone since the folder was read.
        if (failure instanceof Refusal) return [];
        throw failure;
      }
    }),
    more,
  };
}

/** Shows the same window for a folder to write to or to read bundles from: only its place is told. */
export async function placeFolder(choose: (() => Promise<string | null>) | null | undefined): Promise<{ folder: string | null }> {
  if (!choose) throw new Refusal("folder-choice-impossible", "This host has no window for folders. Write the folder's full path instead.");
  return { folder: await choose() };
}

/** The files of a folder and of those in it, nearest first; hidden ones and links are passed over, for a link may lead in a circle. */
function filesUnder(folder: string): { paths: string[]; more: boolean } {
  const paths: string[] = [];
  let level = [folder];
  for (let depth = 0; depth < mostLevels && level.length > 0; depth++) {
    const below: string[] = [];
    for (const place of level) {
      for (const entry of entriesOf(place)) {
        if (entry.name.startsWith(".")) continue;
        const path = join(place, entry.name);
        if (entry.isDirectory()) below.push(path);
        else if (entry.isFile()) {
          if (paths.length === mostFiles) return { paths, more: true };
          paths.push(path);
        }
      }
    }
    level = below;
  }
  return { paths, more: level.length > 0 };
}

function entriesOf(folder: string) {
  try {
    return readdirSync(folder, { withFileTypes: true }).sort((a, b) => (a.name < b.name ? -1 : 1));
  } catch {
    // A folder that this user may not read is as good as empty.
    return [];
  }
}
