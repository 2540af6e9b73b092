import type { Speech, SpokenNumber } from "../../model.ts";
import type { Candidate } from "./candidate.ts";
import type { Slot } from "./slot.ts";
import { phraseOf } from "./surroundings.ts";

/** Tokens after a count within which it may be taken apart, and numbers looked at. */
const partsWithinTokens = 24;
const partsWithinNumbers = 4;

/** Components whose rows are told from the front when nothing else is said. */
const toldFromTheFront: ReadonlySet<string> = new Set(["belts", "seats"]);

function smallCount(number: SpokenNumber | undefined): number | undefined {
  const value = number?.readings.find((reading) => reading.kind === "integer" && reading.unit === null)?.value;
  return typeof value === "number" && Number.isInteger(value) ? value : undefined;
}

/**
 * The numbers that take a count apart and add up to it: "five belts all together, two and three", "two keys, so that's one master and one of the
 * valet ones". Each becomes a count of its own that must not be compared with the whole.
 */
export function partsOfCount(
  speech: Speech,
  numbers: readonly SpokenNumber[],
  order: number,
  whole: Candidate,
): ReadonlyMap<number, Candidate> {
  const parts = new Map<number, Candidate>();
  const { slot, value } = whole;
  if (slot.attribute !== "count" || typeof value !== "number" || value < 2) return parts;
  const end = numbers[order]!.end;
  for (let at = order + 1; at <= order + partsWithinNumbers; at++) {
    const first = numbers[at];
    const second = numbers[at + 1];
    const [one, other] = [smallCount(first), smallCount(second)];
    if (!first || !second || one === undefined || other === undefined) continue;
    if (second.first - end > partsWithinTokens || one + other !== value) continue;
    const between = phraseOf(speech.tokens, first.end, second.first);
    if (!/\band\b/.test(between) || /\./.test(between) || second.first - first.end > 8) continue;
    [first, second].forEach((number, place) => {
      parts.set(number.index, {
        ...whole,
        slot: partSlot(slot, place, phraseOf(speech.tokens, number.end, number.end + 4)),
        reading: number.readings[0]!,
        value: smallCount(number)!,
        score: 0.7,
      });
    });
    return parts;
  }
  return parts;
}

/** Words right after a part of a count that say which row it is. */
const inTheRear = /^(?:\w+ )?(?:in|at|on) (?:the )?(?:way )?(?:back|rear)\b|^(?:back|behind)\b/;
const inTheFront = /^(?:\w+ )?(?:in|at|up) (?:the )?(?:fronts?|here)\b|^up front\b/;

function partSlot(slot: Slot, place: number, after: string): Slot {
  const told = inTheRear.test(after) ? "rear" : inTheFront.test(after) ? "front" : place === 0 ? "front" : "rear";
  const row = toldFromTheFront.has(slot.component) ? ({ position: told } as const) : {};
  return { ...slot, ...row, name: "part of a count", circumstance: `part ${place + 1} of the count`, carries: false };
}
