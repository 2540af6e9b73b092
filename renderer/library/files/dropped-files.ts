import { type FoundFile, foundFiles, isOfTheSystem } from "./found-file.ts";

/** Somebody may drop a whole disk. */
const mostFiles = 4000;

/** What was dropped, folders with all that is in them. Must be called while the drop is being told: the browser forgets it then. */
export function filesOfDrop(transfer: DataTransfer): Promise<FoundFile[]> {
  const entries = [...transfer.items].flatMap((item) => item.webkitGetAsEntry() ?? []);
  const plain = [...transfer.files];
  return entries.length === 0 ? Promise.resolve(foundFiles(plain.map((file) => ({ file, folder: "" })))) : filesOfEntries(entries);
}

async function filesOfEntries(entries: readonly FileSystemEntry[]): Promise<FoundFile[]> {
  const found: { file: File; folder: string }[] = [];
  // A single folder is what was chosen; of several things, a folder's name tells them apart.
  const top = entries.length === 1 ? 1 : 0;
  const walk = async (entry: FileSystemEntry): Promise<void> => {
    if (found.length >= mostFiles || isOfTheSystem(entry.name)) return;
    if (entry.isFile) {
      const file = await fileOf(entry as FileSystemFileEntry);
      const folder = entry.fullPath.split("/").filter(Boolean).slice(0, -1);
      if (file) found.push({ file, folder: folder.slice(top).join("/") });
    } else {
      for (const below of await entriesOf(entry as FileSystemDirectoryEntry)) await walk(below);
    }
  };
  for (const entry of entries) await walk(entry);
  return foundFiles(found);
}

/** Null for a file that went meanwhile or may not be read. */
function fileOf(entry: FileSystemFileEntry): Promise<File | null> {
  return new Promise((resolve) => entry.file(resolve, () => resolve(null)));
}

/** All of them: the browser gives at most a hundred at a time. */
async function entriesOf(directory: FileSystemDirectoryEntry): Promise<FileSystemEntry[]> {
  const reader = directory.createReader();
  const all: FileSystemEntry[] = [];
  for (;;) {
    const some = await new Promise<FileSystemEntry[]>((resolve) => reader.readEntries(resolve, () => resolve([])));
    if (some.length === 0) return all.sort((a, b) => (a.name < b.name ? -1 : 1));
    all.push(...some);
  }
}
