import type { Output } from "../../shared-types/index.ts";
import type { Parts } from "./parts.ts";
import { openMattersOf } from "./recording-detail.ts";

/** For each recording whether an index of it can go out without a word: analysed, and no conflict open. */
export function readyRecordings({ library }: Pick<Parts, "library">): Output<"lot.ready"> {
  return library.recordings.all().map(({ id, title, stockNumber }) => {
    const analysed = library.proposals.of(id) !== undefined;
    const open = library.rulings.openConflictKeys(id).length;
    const why = analysed ? (open > 0 ? `${open} ${open === 1 ? "conflict is" : "conflicts are"} open` : "") : "it is not analyzed yet";
    return { recordingId: id, title, stockNumber, ready: why === "", why, openMatters: openMattersOf(library, id).length };
  });
}
