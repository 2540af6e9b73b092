import type { OfferedFile, Output } from "../../shared-types/index.ts";
import type { Parts } from "./parts.ts";

export interface HandedFiles {
  /** Offers files that the system handed over, and tells the page; gives back why others were not taken. */
  readonly hand: (paths: readonly string[]) => string[];
  /** What was handed over since it was last asked for. */
  readonly take: () => Output<"file.handedOver">;
}

/**
 * Files that came from outside the page: the menu's own window, a double click, another start. They wait until the page asks, since it
 * may not stand yet.
 */
export function createHandedFiles({ files, events }: Pick<Parts, "files" | "events">): HandedFiles {
  let waiting: OfferedFile[] = [];
  return {
    hand(paths) {
      const refused: string[] = [];
      for (const path of paths) {
        try {
          waiting.push(files.offerPath(path));
        } catch (failure) {
          refused.push(failure instanceof Error ? failure.message : String(failure));
        }
      }
      if (waiting.length > 0) events.publish("file.waiting", { files: waiting.length });
      return refused;
    },
    take() {
      const taken = waiting;
      waiting = [];
      return { files: taken };
    },
  };
}
