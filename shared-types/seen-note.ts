import { z } from "zod";

/** What is no conflict and still waits for a person: a claim the stock sheet denies, a promise, a question of what was never shown or said. */
export const matterKinds = ["denial", "promise", "question"] as const;
export const MatterKind = z.enum(matterKinds);
export type MatterKind = z.infer<typeof MatterKind>;

/** Which matter: its kind, and the analysis's own key of it, which stays as long as its words do. */
export const MatterRef = z.strictObject({ about: MatterKind, key: z.string().min(1).max(2000) });
export type MatterRef = z.infer<typeof MatterRef>;

/** `seen`: someone has dealt with it and it may go out as it is. `waits`: it is open again, whatever was noted before. */
export const seenStates = ["seen", "waits"] as const;
export const SeenState = z.enum(seenStates);
export type SeenState = z.infer<typeof SeenState>;

/** A reviewer's note on a matter. Never deleted: a later one supersedes it. */
export const SeenNote = MatterRef.extend({
  id: z.uuid(),
  state: SeenState,
  reason: z.string().trim().min(1).max(2000),
  initials: z.string(),
  /** ISO 8601, UTC. */
  at: z.string(),
  /** The note that took its place; null while it stands. Its own id where it was undone and none had stood before it. */
  supersededBy: z.uuid().nullable(),
  /** The matter as it stood when the note was made, so that the record can be read after the analysis has changed. */
  topic: z.string(),
  told: z.string(),
});
export type SeenNote = z.infer<typeof SeenNote>;
