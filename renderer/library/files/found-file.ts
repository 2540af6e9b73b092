import type { OfferedFolder } from "../../../shared-types/index.ts";
import type { Client, FileWatch } from "../../client/client.ts";

/** A file that was chosen, dropped or found in a folder, and may become part of a recording. */
export interface FoundFile {
  /** Its own within one choice. */
  readonly key: string;
  readonly name: string;
  /** Where it lies below what was chosen, with "/"; "" for the top. */
  readonly folder: string;
  readonly bytes: number;
  /** The browser's file, or the id under which the host has offered it already. */
  readonly source: File | string;
}

/** Files that systems strew about, which nobody chose. */
export function isOfTheSystem(name: string): boolean {
  return name.startsWith(".") || /^(?:thumbs\.db|desktop\.ini)$/i.test(name);
}

/** @param folder of a file; without it, what the browser says about a file from a folder. */
export function foundFiles(files: readonly { readonly file: File; readonly folder: string }[]): FoundFile[] {
  return files
    .filter(({ file, folder }) => !isOfTheSystem(file.name) && !folder.split("/").some(isOfTheSystem))
    .map(({ file, folder }) => ({ key: `${folder}/${file.name}`, name: file.name, folder, bytes: file.size, source: file }))
    .filter(({ key }, index, all) => all.findIndex((other) => other.key === key) === index);
}

/** What a file input has: of a folder's files the browser says where each lies. */
export function filesOfInput(files: Iterable<File>): FoundFile[] {
  return foundFiles([...files].map((file) => ({ file, folder: file.webkitRelativePath.split("/").slice(1, -1).join("/") })));
}

export function filesOfOfferedFolder({ files }: OfferedFolder): FoundFile[] {
  return files
    .filter(({ name }) => !isOfTheSystem(name))
    .map(({ id, name, folder, bytes }) => ({ key: `${folder}/${name}`, name, folder, bytes, source: id }));
}

/** The id under which the host has the file. A file of the browser's is handed over anew each time, since an import uses it up. */
export async function offeredId(client: Client, { source }: FoundFile, watch: FileWatch): Promise<string> {
  return typeof source === "string" ? source : (await client.offerFile(source, watch)).id;
}

/** "FK-1971/walk.mp4" */
export function placeOfFile({ folder, name }: Pick<FoundFile, "folder" | "name">): string {
  return folder === "" ? name : `${folder}/${name}`;
}
