import type { AttributeName, Claim } from "../../../../shared-types/index.ts";

interface SpokenCircumstance {
  readonly words: RegExp;
  readonly name: string;
  /** Figures of which the words say when or how they hold; of others they say nothing ("four ten gears in it" is no sum spent). */
  readonly attributes: readonly AttributeName[];
  readonly example: string;
}

/** What the words themselves say about when or how a figure holds, where the claim names no circumstance. First row that fits. */
export const spokenCircumstances: readonly SpokenCircumstance[] = [
  { words: /\bcold\b/i, name: "cold", attributes: ["pressure", "voltage"], example: "fifty five pounds cold" },
  { words: /\b(hot|warm(ed up)?)\b/i, name: "hot", attributes: ["pressure", "voltage"], example: "forty when she's hot" },
  {
    words: /\b(running|at idle|idling|alternator|charging|generator)\b/i,
    name: "running",
    attributes: ["pressure", "voltage"],
    example: "fourteen point one with it running",
  },
  {
    words: /\b(at rest|just sitting|resting|overnight)\b/i,
    name: "at rest",
    attributes: ["pressure", "voltage"],
    example: "twelve point six just sitting there",
  },
  {
    words: /\bat the (rear )?(wheels?|tires?|tyres?)\b/i,
    name: "at the wheels",
    attributes: ["power", "torque"],
    example: "three eighteen at the tires",
  },
  {
    words: /\b(cheaper|dearer|(more|less) than|off (it|the (price|ticket))|difference|knock(ed)?|deposit|a (month|week))\b/i,
    name: "difference",
    attributes: ["price"],
    example: "it's four grand cheaper",
  },
  {
    words:
      /\b((plus|with|inc(l(uding)?)?|and) (the )?(v ?a ?t|tax(es)?)|on the road|out the door|drive ?away|delivered|tax and (title|tags))\b/i,
    name: "with tax",
    attributes: ["price"],
    example: "nine five nine four on the road",
  },
  {
    words: /\b(new price|price new|when (it was )?new|brand new it|sticker(ed)?|msrp|list(ed)? (at|for) new)\b/i,
    name: "new",
    attributes: ["price"],
    example: "the sticker was 3,681",
  },
  {
    words:
      /\b(we|i|he|she|they|dealer|you) had (?:\S+ ){1,6}on (it|her|him|the)\b|\b(we|i|he|she|they|dealer|you) had (it|her|him|this) (up |on |in )*(at|for) \w|\b(it|that|she|price|sticker) (was|were) \w+|^(was|were) \w+|\b(started|began) (out )?at\b|\b(down|dropped|reduced|came down|come down|cut) (\w+ )?from\b|\bused to (be|ask)\b/i,
    name: "asked before",
    attributes: ["price"],
    example: "we had thirty four on it in the spring",
  },
  {
    words: /\b(badge[ds]?|emblem|callout|says on the fender)\b/i,
    name: "as badged",
    attributes: ["displacement"],
    example: "the badge on the fender says three ninety six",
  },
  {
    words: /\b(they|these|those|most|others)( all)? (go|going|sell|selling|bring|bringing|fetch|list) (for|at)?\b/i,
    name: "others",
    attributes: ["price"],
    example: "they go for twenty five all day long",
  },
  {
    words:
      /\b(in parts|receipts?|spent|charged?|paid|cost|bill(ed)?|invoiced?|in it|invested|appraised|insured|estimated?|valued|worth|books? (at|for))\b/i,
    name: "spent",
    attributes: ["price"],
    example: "over eighty in it",
  },
  {
    words: /\b(miles|kilomet(er|re)s) ago\b|\bsince\b/i,
    name: "since",
    attributes: ["mileage", "price"],
    example: "about three thousand miles ago",
  },
  {
    words: /^(?!.*\b(gross|total)\b).*\b(usable|useable)\b/i,
    name: "usable",
    attributes: ["size"],
    example: "you get 58 kilowatt hours usable",
  },
  { words: /\bfirst (gear|cylinder)\b/i, name: "first", attributes: ["ratio", "pressure"], example: "first gear is 2.66" },
];

/** Circumstances that change no figure: they are praise or emphasis. */
const neutral = /^(today|now|current(ly)?|actual|original|true|true mileage|showing|asking|as it sits|total|in all|all told)$/i;

/** An engine is rated at its flywheel: a figure said to be taken there is the plain one (SAE J1349 and J1995 rate it so). */
const atTheFlywheel = /^at the (crank(shaft)?|flywheel)$/i;

/** What must also agree before two figures may be compared; null where nothing does. */
export function circumstanceOf(claim: Claim): string | null {
  const named = claim.circumstance?.trim().toLowerCase();
  if (named) return neutral.test(named) || atTheFlywheel.test(named) ? null : named;
  return spokenCircumstances.find((row) => row.attributes.includes(claim.attribute) && row.words.test(claim.quote))?.name ?? null;
}
