import { z } from "zod";
import { RecordingId } from "./recording.ts";

/** One field that would read otherwise; null where it was or would be empty. */
export const LotChange = z.strictObject({ field: z.string(), before: z.string().nullable(), after: z.string().nullable() });

/** A sheet of the whole lot held against the library, by stock number. */
export const LotMatch = z.strictObject({
  /** Rows of vehicles. */
  rows: z.int().nonnegative(),
  matched: z.array(
    z.strictObject({
      recordingId: RecordingId,
      title: z.string(),
      stockNumber: z.string(),
      /** 1-based line of the file. */
      line: z.int().positive(),
      /** Without a sheet so far; with this very row; with another one. */
      standing: z.enum(["first", "same", "other"]),
      changes: z.array(LotChange),
    }),
  ),
  /** Rows that no recording has the number of. */
  rowsLeft: z.array(z.strictObject({ line: z.int().positive(), stockNumber: z.string(), cells: z.string() })),
  recordingsLeft: z.array(z.strictObject({ recordingId: RecordingId, title: z.string(), stockNumber: z.string(), why: z.string() })),
  /** Numbers that stand in more than one row; none of those rows is taken. */
  twice: z.array(z.strictObject({ stockNumber: z.string(), lines: z.array(z.int().positive()) })),
  /** Rows that match and cannot be read, with their reason. */
  unreadable: z.array(z.strictObject({ recordingId: RecordingId, title: z.string(), why: z.string() })),
});
export type LotMatch = z.infer<typeof LotMatch>;

/** Fields of the former sheet that the new row does not have: they would be gone, and no undo brings them back. */
export function lostFields({ changes }: Pick<LotMatch["matched"][number], "changes">): number {
  return changes.filter(({ before, after }) => before !== null && after === null).length;
}
