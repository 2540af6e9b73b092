import { type RecordingDetail, timeLabel } from "../../shared-types/index.ts";
import { counted } from "../shared/count.ts";
import { joinedChapters, shortestChapterSeconds } from "./joined-chapters.ts";

/** What whoever exports should know before: what is open, what is only proposed, what is joined. */
export function ExportNotes({ detail: { summary, lap, findingProposals, analysis } }: { readonly detail: RecordingDetail }) {
  const joined = joinedChapters(lap);
  const denied = new Set(analysis.denials.flatMap((denial) => denial.claims)).size;
  const { openConflicts } = summary.counts;
  const proposedSpans = lap.filter((span) => span.zoneSpanId === null).length;
  return (
    <ul className="export-notes">
      {analysis.analysisVersion === 0 ? (
        <li className="export-open">Not analyzed yet: what is open is not known, and every file says so. Wait for it, or analyze it.</li>
      ) : openConflicts > 0 ? (
        <li className="export-open">
          {openConflicts === 1 ? "One conflict is open. It is" : `${openConflicts} conflicts are open. They are`} marked wherever the claims
          appear.
        </li>
      ) : (
        <li>No conflict is open.</li>
      )}
      {denied > 0 ? (
        <li className="export-open">
          {counted(denied, "claim is denied by the stock sheet and is", "claims are denied by the stock sheet and are")} marked as such.
        </li>
      ) : null}
      {joined.length > 0 ? (
        <li>
          {counted(joined.length, "chapter is", "chapters are")} under {shortestChapterSeconds} seconds and joined to a neighbour:{" "}
          {joined.map(({ title, start }) => `${title} (${timeLabel(start)})`).join(", ")}.
        </li>
      ) : null}
      {proposedSpans > 0 ? (
        <li>
          {counted(proposedSpans, "chapter is only proposed", "chapters are only proposed")}. The index and the chapter files say so, in a
          remark where titles are for players; the plain list and the texts for a listing have no place for it.
        </li>
      ) : null}
      {findingProposals.length > 0 ? (
        <li>
          {counted(findingProposals.length, "proposed finding stays out until it is", "proposed findings stay out until they are")}{" "}
          accepted.
        </li>
      ) : null}
    </ul>
  );
}
