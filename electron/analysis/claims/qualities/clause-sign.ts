/**
 * A kind told by words that stand together in one sentence, in any order. Tables write one sign a line:
 *
 * - `wheel cylinder/cylinders`         one phrase, in the notation of the framing folder's `Phrase`
 * - `shoes + lining/adjuster/axle`     all of these phrases in one sentence, in any order
 * - `… - horse/wedding`                and not this anywhere in it
 *
 * The first phrase of a line is what the sign is looked up by: its words should be the rarer ones.
 */
export interface ClauseSign {
  /** Phrases that must all stand in the sentence. */
  readonly together: readonly string[];
  /** Phrases none of which may. */
  readonly never: readonly string[];
}

const joins = " + ";
const forbids = " - ";

/** @throws Error where a line has an empty phrase. */
export function readSign(line: string): ClauseSign {
  const [wanted = "", ...unwanted] = line.split(forbids);
  const together = wanted.split(joins).map((phrase) => phrase.trim());
  const never = unwanted.map((phrase) => phrase.trim());
  if ([...together, ...never].includes("")) throw new Error(`sign "${line}" has an empty phrase; write "this + that - not this"`);
  return { together, never };
}
