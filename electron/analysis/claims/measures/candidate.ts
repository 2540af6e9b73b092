import type { ClaimValue } from "../../../../shared-types/index.ts";
import type { Reading } from "../../model.ts";
import type { PartMention } from "../lexicon/find-mentions.ts";
import type { About, ReadingNeed, Slot } from "./slot.ts";
import type { NumberSurroundings, Topic } from "./surroundings.ts";

/** A slot that a number fits, with the reading that fits it. */
export interface Candidate {
  readonly slot: Slot;
  readonly reading: Reading;
  readonly value: ClaimValue;
  readonly topic: Topic | null;
  readonly score: number;
}

/** Below this a number is left alone: it may be anything. */
export const leastScore = 0.42;

export function isAbout(mention: PartMention, about: About): boolean {
  const slash = about.indexOf("/");
  return slash < 0 ? mention.component === about : mention.component === about.slice(0, slash) && mention.part === about.slice(slash + 1);
}

export function fits(reading: Reading, need: ReadingNeed): boolean {
  if (need.kinds && !need.kinds.includes(reading.kind)) return false;
  if (!need.units.includes(reading.unit)) return false;
  if (typeof reading.value !== "number") return true;
  return (need.min === undefined || reading.value >= need.min) && (need.max === undefined || reading.value <= need.max);
}

/** Said words that are number through and through: a reading with a unit then only supposes it. */
const numberWords =
  /^(?:'?[\d.,/]+(?:s|'s|th|st|nd|rd)?|a|an|and|the|of|point|oh|o|to|too|two|for|half|quarters?|eighths?|sixteenths?|thirds?|one|three|fours?|fives?|six(?:es)?|sevens?|eights?|nines?|tens?|elevens?|twelves?|(?:thir|four|fif|six|seven|eigh|nine)teens?|(?:twent|thirt|fort|fift|sixt|sevent|eight|ninet)(?:y|ies)|hundred|thousand|twos?|threes?|ones?)$/;

export function unitSpoken(reading: Reading, said: string): boolean {
  if (reading.unit === null || /[$£€]/.test(said)) return true;
  return said.split(/[ -]/).some((word) => !numberWords.test(word));
}

/** Where a unit goes without saying: a sixteenth is of an inch, and so is a thirty-second written "8/32". */
export function supposed(reading: Reading): boolean {
  return (
    reading.rule.includes("fraction") ||
    reading.rule.includes("sixteenth") ||
    reading.rule === "thirty-seconds-written" ||
    reading.rule === "one-part-bare"
  );
}

/** Words that make a number of their own with the one before ("three point belt", "four door", "two tone"). */
const beginsAnotherPhrase =
  /^(?:point|speed|door|way|ways|stage|piece|tone|owner|row|barrel|cylinder|leaf|bolt|lug|spoke|link|links|pot|post|pin|piston|bow|berth|seater|digit|years?|hours?|months?|people|of us|cars?|trucks?)\b/;

/** True where a small number belongs to the noun that follows it and not to what was measured before. */
export function startsAnotherPhrase(value: ClaimValue, around: NumberSurroundings): boolean {
  return typeof value === "number" && value <= 24 && !around.closed && beginsAnotherPhrase.test(around.after);
}
