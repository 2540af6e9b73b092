import type { PositionName } from "../../../../shared-types/index.ts";
import type { PartMention } from "../lexicon/find-mentions.ts";
import type { BuildContext } from "./build-claim.ts";
import type { Candidate } from "./candidate.ts";
import { phraseOf } from "./surroundings.ts";

// What a bare figure takes over from one that was read before it: its panel, its axle, its unit.

/** "The hood has been repainted … I'll put the meter on it": words back to the meter. */
const meterReach = 30;

/** The panel last named, where the meter is put on "it". */
export function panelUnderMeter({ map, around }: BuildContext): PartMention | null {
  const words = phraseOf(map.speech.tokens, Math.max(0, around.number.first - meterReach), around.number.first);
  if (!/\b(?:meter|gauge|reader|tester) (?:back )?(?:on|to|against|across) (?:it|her|him|that|this)\b/.test(words)) return null;
  const panels = around.topics
    .map(({ mention }) => mention)
    .filter(({ component, part, first }) => component === "body" && part !== null && first < around.number.first);
  return panels.reduce<PartMention | null>((latest, panel) => (latest && latest.first > panel.first ? latest : panel), null);
}

/** Tokens between two figures of one brake. */
const brakeReach = 20;

/** "Discs in the front are 23.6. Pads have got nine left": what is read of one brake goes on about that brake. */
export function brakeJustRead({ earlier, around }: BuildContext): PositionName | null {
  const before = earlier.at(-1);
  return before?.component === "brakes" && around.number.first - before.end < brakeReach ? before.position : null;
}

/** Tokens within which a bare figure goes on in the unit of the tread before it. */
const sameGaugeReach = 45;

/**
 * "Seven millimeters on the rears", and on the other side "nine on the front": a whole number without a unit is in what the walk's first tread
 * was read in. Parts of 32nds are not told in decimals.
 */
export function isBareTread({ firstTread, earlier, around }: BuildContext, { reading, slot }: Candidate): boolean {
  if (slot.attribute !== "depth" || slot.component !== "tire" || firstTread === null) return false;
  // A carried reading has the unit of the one that it goes on from, and is still an integer said without one.
  if (reading.kind !== "integer") return false;
  if (/\b(?:mm|mils?|mill|milli\w*)\b/.test(around.said) || /^(?:mm|mils?|mill|milli\w*)\b/.test(around.after)) return false;
  const last = earlier.findLast(({ candidate }) => candidate.slot.attribute === "depth");
  return last === undefined || around.number.first - last.end >= sameGaugeReach || last.unit === firstTread.unit;
}
