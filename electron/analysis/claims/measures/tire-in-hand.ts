import type { PositionName } from "../../../../shared-types/index.ts";
import type { BuildContext } from "./build-claim.ts";
import { phraseOf } from "./surroundings.ts";

/** Tokens after the figures of both ends within which a date still belongs to the tire in hand. */
const inHandWithinTokens = 34;

/** Words after a date that may still say whose it is ("… of 22 on the front"). */
const placedWithinWords = 4;
const placedAfter = /^(?:on|in|at|for) (?:the |this |that )?(?:fronts?|rears?|backs?|duals?)\b/;

const namesAnother = /\b(?:fronts?|rears?|backs?|duals?|all|they|they're|these|both|other|others|ones)\b/;

const endOf = (position: PositionName | null): "front" | "rear" | null =>
  position?.endsWith("front") ? "front" : position?.endsWith("rear") ? "rear" : null;

/**
 * Which tire a date is read from after both ends were told together: "five on the fronts, six on the backs, this one's dated …" is said
 * crouching at the end told first. Null where the words name another, or nothing was told of both ends.
 */
export function tireInHand({ map, around, earlier }: BuildContext): PositionName | null {
  const camera = around.zone === "driver-side" ? "driver" : around.zone === "passenger-side" ? "passenger" : null;
  if (!camera) return null;
  const before = earlier.at(-1);
  // The code said over in words is the same tire's.
  if (before?.component === "tire" && before.candidate.slot.attribute === "date" && around.number.first - before.end < 14) {
    const between = phraseOf(map.speech.tokens, before.end, around.number.first);
    // A week or a month spelled out means the code just read, of one tire or of a pair.
    const after = phraseOf(map.speech.tokens, around.number.end, around.number.end + placedWithinWords);
    if (/^\d{4}-/.test(String(around.number.readings[0]!.value)) && !namesAnother.test(between) && !placedAfter.test(after))
      return before.position;
    return endOf(before.position) && before.position!.startsWith(camera) && !namesAnother.test(between) ? before.position : null;
  }
  const [first, second] = earlier
    .filter(({ component, candidate }) => component === "tire" && candidate.slot.attribute === "depth")
    .slice(-2);
  if (!first || !second || around.number.first - second.end > inHandWithinTokens) return null;
  const [here, there] = [endOf(first.position), endOf(second.position)];
  if (!here || !there || here === there) return null;
  const said = phraseOf(map.speech.tokens, Math.max(second.end, around.number.first - 9), around.number.end + 3);
  const own = /\b(?:this(?: one| tire)?|(?:the |and )?dates?|dated|code)(?:'s| is)?\b.*$/.exec(said);
  if (!own || namesAnother.test(own[0])) return null;
  // "Front ones are dated …" names its tires before the word; "… six on the back, this one's dated" has done with them.
  return own[0].startsWith("this") || !/\b(?:ones|tires|fronts|rears|are|were)\b/.test(said.slice(0, own.index))
    ? `${camera}-${here}`
    : null;
}
