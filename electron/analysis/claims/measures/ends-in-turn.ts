import type { Claim } from "../../../../shared-types/index.ts";
import type { Speech } from "../../model.ts";
import type { ReadMeasure } from "./build-claim.ts";
import { type NumberSurroundings, phraseOf } from "./surroundings.ts";

const joinedPair = /^(?:(?:psi|pounds|inch|inches|millimeters?|mm|bar) )?(?:and|by)$/;
const inTurn = /^(?:(?:psi|pounds|inch|inches|millimeters?|mm|bar) )?(?:front and (?:rear|back)|respectively|front to back|fore and aft)\b/;

/**
 * "Pressures are thirty two and thirty six", "eleven and twelve inch, front and rear respectively": of two figures joined by "and" the first is
 * the front's and the second the rear's, as door stickers list tire pressures; other pairs must say so. True where `claim` and the one before
 * it were placed so.
 */
export function placedInTurn(
  speech: Speech,
  around: NumberSurroundings,
  last: ReadMeasure | undefined,
  before: Claim | undefined,
  claim: Claim,
): readonly [Claim, Claim] | null {
  if (!last || !before || before.component !== claim.component || before.attribute !== claim.attribute || before.unit !== claim.unit)
    return null;
  if (last.value !== before.value || !joinedPair.test(phraseOf(speech.tokens, last.end, around.number.first))) return null;
  const pressures = claim.component === "tire" && claim.attribute === "pressure";
  if (!(pressures && before.value !== claim.value && !/^(?:in|at|on|up|for) /.test(around.after)) && !inTurn.test(around.after))
    return null;
  return before.position === claim.position || inTurn.test(around.after)
    ? [
        { ...before, position: "front" },
        { ...claim, position: "rear" },
      ]
    : null;
}
