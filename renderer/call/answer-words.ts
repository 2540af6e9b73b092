import type { SearchHit } from "../../shared-types/index.ts";

/** What to say to the caller instead of an answer, where the words may not be stated as fact. */
export function cautionOf(hit: Pick<SearchHit, "disputed" | "hedged" | "kind" | "answer">): string | null {
  if (hit.disputed) return "In dispute: the recording says two things about this. Do not state it; say it is being checked.";
  if (hit.hedged) return "Not stated as a fact in the recording. Do not state it; play the words, or ask at the vehicle.";
  return hit.answer === null ? "No sentence to give: play the moment and let the caller hear it." : null;
}
