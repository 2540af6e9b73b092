import type { ClaimTime } from "../../../../shared-types/index.ts";

/**
 * Whose state a clause speaks of. Only `this-vehicle` gives claims.
 * `anecdote`: what somebody asked or once had or said, told for the telling.
 */
export const frameSubjects = ["this-vehicle", "other-vehicle", "hypothetical", "option-absent", "legal-limit", "anecdote"] as const;
export type FrameSubject = (typeof frameSubjects)[number];

export type FrameMeaning =
  | { readonly stance: "hedged" | "reported" }
  | { readonly time: Extract<ClaimTime, "former"> }
  | { readonly subject: Exclude<FrameSubject, "this-vehicle"> };

/**
 * How far a phrase reaches.
 * `clause`: its own clause; a clause that holds nothing else hands it on (a leading one forward, a later one back).
 * `from-here`: from the phrase to the end of its clause.
 * `until-here`: from the start of its clause to the phrase's end.
 * `next-words`: the phrase and the four words after it.
 * `sentence`: from its clause to the end of the sentence, or to words that turn back to this vehicle.
 * `aside`: as `sentence`, and the sentences after it that go on in the past about the same thing ("It leaked.").
 * `last-words`: the phrase and the four words before it in its sentence.
 * `back`: its own clause and what was said before it in the sentence; at the head of a sentence, the sentence before.
 * `until-return`: from its clause on, over several sentences, until the speaker is back at this vehicle (see `returnPhrases`).
 */
export type FrameReach =
  | "clause"
  | "from-here"
  | "until-here"
  | "next-words"
  | "sentence"
  | "aside"
  | "last-words"
  | "back"
  | "until-return";

export interface FrameRule {
  readonly name: string;
  readonly meaning: FrameMeaning;
  readonly reach: FrameReach;
  /** In the notation of `Phrase`. */
  readonly phrases: readonly string[];
  /** Longer phrases that begin at the same word and mean something else. */
  readonly unless?: readonly string[];
  readonly example: {
    readonly says: string;
    /** Words of `says` that must be framed so. */
    readonly framed: string;
    /** Words of `says` that must not be. */
    readonly free?: string;
  };
  /** Speech that sounds alike and must not be framed so anywhere. */
  readonly quiet: readonly string[];
}
