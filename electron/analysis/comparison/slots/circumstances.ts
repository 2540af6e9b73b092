import type { Claim } from "../../../../shared-types/index.ts";

/** What the words themselves say about when or how a figure holds, where the claim names no circumstance. First row that fits. */
export const spokenCircumstances = [
  { words: /\bcold\b/i, name: "cold", example: "fifty five pounds cold" },
  { words: /\b(hot|warm(ed up)?)\b/i, name: "hot", example: "forty when she's hot" },
  { words: /\b(running|at idle|idling)\b/i, name: "running", example: "fourteen point one with it running" },
  { words: /\b(at rest|just sitting|resting)\b/i, name: "at rest", example: "twelve point six just sitting there" },
  { words: /\bat the (rear )?(wheels?|tires?|tyres?)\b/i, name: "at the wheels", example: "three eighteen at the tires" },
  { words: /\bat the (crank|flywheel)\b/i, name: "at the crank", example: "three seventy five at the crank" },
  {
    words: /\b(new price|price new|when (it was )?new|brand new it|sticker(ed)?|msrp|list(ed)? (at|for) new)\b/i,
    name: "new",
    example: "the sticker was 3,681",
  },
  {
    words: /\b(they|these|those|most|others)( all)? (go|going|sell|selling|bring|bringing|fetch|list) (for|at)?\b/i,
    name: "others",
    example: "they go for twenty five all day long",
  },
  {
    words: /\b(in parts|receipts?|spent|in it|invested|appraised|insured|estimated?|valued|worth|books? (at|for))\b/i,
    name: "spent",
    example: "over eighty in it",
  },
  { words: /\b(miles|kilomet(er|re)s) ago\b|\bsince\b/i, name: "since", example: "about three thousand miles ago" },
  { words: /\bfirst (gear|cylinder)\b/i, name: "first", example: "first gear is 2.66" },
] as const;

/** Circumstances that change no figure: they are praise or emphasis. */
const neutral = /^(today|now|current(ly)?|actual|original|true|true mileage|showing|asking|as it sits|total|in all|all told)$/i;

/** What must also agree before two figures may be compared; null where nothing does. */
export function circumstanceOf(claim: Claim): string | null {
  const named = claim.circumstance?.trim().toLowerCase();
  if (named) return neutral.test(named) ? null : named;
  const figure = ["pressure", "voltage", "power", "torque", "price", "mileage", "ratio"].includes(claim.attribute);
  return figure ? (spokenCircumstances.find((row) => row.words.test(claim.quote))?.name ?? null) : null;
}
