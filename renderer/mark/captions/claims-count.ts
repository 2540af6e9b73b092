import type { Claim } from "../../../shared-types/index.ts";
import { counted } from "../../shared/count.ts";

/** "111 claims, 3 of an earlier state": those are marked in the captions, and the condition index counts them without listing them. */
export function claimsCount(claims: readonly Pick<Claim, "time">[]): string {
  const former = claims.filter(({ time }) => time !== "today").length;
  return `${counted(claims.length, "claim", "claims")}${former > 0 ? `, ${former} of an earlier state` : ""}`;
}
