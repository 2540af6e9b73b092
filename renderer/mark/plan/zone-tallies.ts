import { timeLabel, type ZoneTally } from "../../../shared-types/index.ts";
import { counted } from "../../shared/count.ts";

/** A tally as a screen reader says it. */
export function tallySentence(tally: ZoneTally): string {
  if (tally.seconds === 0) return "no stretch marked";
  const parts = [timeLabel(tally.seconds)];
  if (tally.findings > 0) parts.push(counted(tally.findings, "finding", "findings"));
  if (tally.openConflicts > 0) parts.push(counted(tally.openConflicts, "open conflict", "open conflicts"));
  return parts.join(", ");
}
