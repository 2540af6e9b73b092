import { claimSubject, type RecordingDetail, timeLabel } from "../../../shared-types/index.ts";
import { type SettledClaim, settledClaims } from "./settled-claims.ts";

/** What a line calls the thing that was put right: by its claim, or by what the conflict is about. */
export type NamedBy = "claim" | "topic";

/**
 * A line for each ruling that let one side stand: every moment at which something else was said, what that was, what is right and why. Said
 * twice in one breath or again later, it is one ruling and one line.
 */
export function settledLines(detail: RecordingDetail, namedBy: NamedBy): string[] {
  const byRuling = new Map<string, SettledClaim[]>();
  for (const one of settledClaims(detail)) byRuling.set(one.ruling.id, [...(byRuling.get(one.ruling.id) ?? []), one]);
  return [...byRuling.values()].map((settled) => {
    const { right, rightOf, ruling, caveat } = settled[0]!;
    const times = new Set(settled.map(({ claim }) => timeLabel(claim.start)));
    const saidOf = new Map<string, Set<string>>();
    for (const { claim, conflict, said } of settled) {
      const subject = namedBy === "claim" ? claimSubject(claim) : conflict.topic;
      saidOf.set(subject, (saidOf.get(subject) ?? new Set<string>()).add(said));
    }
    const told = [...saidOf].map(([subject, values]) => `${subject}: ${[...values].join(" and ")}`).join(", ");
    const stands = rightOf === null ? right : `${rightOf} ${right}`;
    return `${[...times].join(", ")} ${capital(told)} was said; ${stands} is right (${oneLine(ruling.reason).replace(/\.$/, "")}).${caveat && ` ${caveat}`}`;
  });
}

function oneLine(words: string): string {
  return words.replaceAll(/\s+/g, " ").trim();
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
