import { z } from "zod";
import { Initials, RecordingDetail, RecordingId } from "./recording.ts";
import { MatterRef, SeenState } from "./seen-note.ts";
import { RulingDecision } from "./vocabulary.ts";

function method<Input extends z.ZodType, Output extends z.ZodType>(input: Input, output: Output) {
  return { input, output };
}

/** What the reviewer does: rulings, notes, and letting a recording out. */
export const reviewMethods = {
  "conflict.rule": method(
    z.strictObject({
      recordingId: RecordingId,
      conflictKey: z.string(),
      decision: RulingDecision,
      side: z.int().nonnegative().nullable(),
      reason: z.string().trim().min(1).max(2000),
      rightWords: z.string().trim().max(500).nullable(),
      initials: Initials,
    }),
    RecordingDetail,
  ),
  /** Notes that matters were seen, or that they wait again, all with one reason: one edit. What was noted before is superseded. */
  "matter.note": method(
    z.strictObject({
      recordingId: RecordingId,
      matters: z.array(MatterRef).min(1).max(2000),
      state: SeenState,
      reason: z.string().trim().min(1).max(2000),
      initials: Initials,
    }),
    RecordingDetail,
  ),
  /**
   * Keeps that what leaves this recording was published now, by whom, and what was open. `openConflictKeys` and `openMatters` are those that
   * the person was told of: refused with `open-conflicts-changed` where others are open. A publication has happened; it is no edit.
   */
  "recording.publish": method(
    z.strictObject({
      recordingId: RecordingId,
      openConflictKeys: z.array(z.string().max(600)).max(5000),
      openMatters: z.array(MatterRef).max(5000),
      initials: Initials,
    }),
    RecordingDetail,
  ),
} as const;
