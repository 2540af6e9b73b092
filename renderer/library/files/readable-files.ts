import type { Problem } from "../../../shared-types/index.ts";
import { isReadable } from "../../client/send-file.ts";
import { type ImportPart, partOfFileName } from "../sort-files.ts";

/** Which files the browser can still read; of the others what to do, by the place of each. */
export async function readableFiles(files: readonly File[]): Promise<{
  readonly readable: readonly File[];
  readonly unreadable: Partial<Record<ImportPart, Problem>>;
}> {
  const looked = await Promise.all(files.map(async (file) => ({ file, reads: await isReadable(file) })));
  return {
    readable: looked.flatMap(({ file, reads }) => (reads ? [file] : [])),
    unreadable: Object.fromEntries(
      looked.flatMap(({ file: { name }, reads }) =>
        reads
          ? []
          : [
              [
                partOfFileName(name),
                {
                  code: "file-unreadable",
                  message: `${name} was changed, moved or removed since it was chosen, and the browser can no longer read it. Choose it anew.`,
                  file: name,
                },
              ],
            ],
      ),
    ),
  };
}
