import type { Claim } from "./analysis.ts";

/** Names the place of a condition claim's words in the transcript, which a new analysis does not move: a finding keeps where it came from by it. */
export function proposalKey(claim: Claim): string {
  const place = claim.spans[0] ?? { caption: claim.captions[0] ?? 0, start: 0, end: 0 };
  // Two judgements may begin at one word ("clean, but for a chip"): value and end tell them apart.
  return [claim.component, claim.part ?? "", claim.position ?? "", claim.value, place.caption, place.start, place.end].join("/");
}
