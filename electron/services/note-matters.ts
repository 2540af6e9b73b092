import { randomUUID } from "node:crypto";
import {
  type Input,
  type MatterRef,
  matterName,
  mattersOf,
  type RecordingDetail,
  type SeenNote,
  standingNotes,
} from "../../shared-types/index.ts";
import type { RowChange } from "../library/edits.ts";
import type { Parts } from "./parts.ts";
import { recordEdit, seenNoteChange } from "./record-edit.ts";
import { findRecording } from "./recording-detail.ts";
import { Refusal } from "./refusals.ts";

/**
 * Notes that denials, promises or questions were seen, or that they wait again. A note that stood before is superseded, never deleted.
 * Undone, the new note's row stays too: it counts as superseded by the one that stands again, or by itself where none had stood.
 */
export function noteMatters(parts: Parts, { recordingId, matters, state, reason, initials }: Input<"matter.note">): RecordingDetail {
  findRecording(parts, recordingId);
  const { proposals, seenNotes } = parts.library;
  const found = new Map(
    mattersOf({
      denials: proposals.denials(recordingId),
      promises: proposals.promises(recordingId),
      questions: proposals.questions(recordingId),
    }).map((matter) => [matterName(matter), matter]),
  );
  const standing = standingNotes(seenNotes.of(recordingId));
  const at = parts.now();
  const named = new Map<string, MatterRef>(matters.map((matter) => [matterName(matter), matter]));
  const changes = [...named.keys()].flatMap((name): RowChange[] => {
    const matter = found.get(name);
    if (!matter) {
      throw new Refusal("matter-unknown", "This is no longer found by the analysis, so nothing was noted. Look at the list again.");
    }
    const note: SeenNote = { ...matter, id: randomUUID(), state, reason, initials, at, supersededBy: null };
    const former = standing.get(name);
    return [
      seenNoteChange({ ...note, supersededBy: former?.id ?? note.id }, note),
      ...(former ? [seenNoteChange(former, { ...former, supersededBy: note.id })] : []),
    ];
  });
  const [first] = named.keys();
  const what = named.size === 1 ? (found.get(first ?? "")?.topic ?? "") : `${named.size} matters`;
  return recordEdit(parts, recordingId, {
    label: state === "seen" ? `note of ${what} as seen` : `opening ${what} again`,
    initials,
    changes,
  });
}
