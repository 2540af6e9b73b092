import { publicationLine, type RecordingDetail } from "../../shared-types/index.ts";

export type UndoDetail = Pick<RecordingDetail, "undoLabel" | "redoLabel" | "publications">;

/** A publication is a record of what left the house and no edit: undo passes over it, which must be said. Empty where nothing was published. */
function publicationStays({ publications }: UndoDetail): string {
  const last = publications.at(-1);
  return last ? ` This stays on record: ${publicationLine(last)}.` : "";
}

/** What undo will take back. */
export function undoTip(detail: UndoDetail): string {
  return `${detail.undoLabel === null ? "Nothing to undo." : `Undo: ${detail.undoLabel} (Ctrl Z).`}${publicationStays(detail)}`;
}

/** What undo has taken back. */
export function undoneWords(detail: UndoDetail & { readonly undoLabel: string }): string {
  const stays = publicationStays(detail);
  return `Undone: ${detail.undoLabel}${stays ? `.${stays}` : ""}`;
}
