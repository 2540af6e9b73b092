import { type ConditionIndex, valueLabel } from "../../shared-types/index.ts";

type IndexClaim = ConditionIndex["claims"][number];

/**
 * Why values that look as if they excluded each other both stand: “both hold, absent and present: the compressor is there and not
 * connected”. Either value alone would tell a reader half of it. One for each ruling that a claim is in; none where it is in none.
 */
export function bothHoldWords(
  claim: Pick<IndexClaim, "start" | "value" | "conflictTopics">,
  conflicts: readonly ConditionIndex["conflicts"][number][],
): string[] {
  return conflicts.flatMap(({ topic, sides, ruling, state }) => {
    if (state === "open" || ruling?.decision !== "both-hold" || !claim.conflictTopics.includes(topic)) return [];
    if (!sides.some(({ value }) => value === claim.value)) return [];
    const values = [...new Set(sides.map((side) => valueLabel(side.value, side.unit, side.attribute)))];
    return [`both hold, ${values.join(" and ")}: ${ruling.reason.replaceAll(/\s+/g, " ").trim().replace(/\.$/, "")}`];
  });
}
