import type { Speech } from "../model.ts";
import type { Clause } from "./cut-clauses.ts";
import type { NamedPart } from "./find-parts.ts";
import { elsewhereBefore } from "./moves/elsewhere.ts";
import { plainWord } from "./spoken-line.ts";
import { walkCosts } from "./walk-model.ts";
import { zoneIndex, zoneNames } from "./zone-order.ts";

/** A clause with what its words say for each zone. */
export interface WeighedClause extends Clause {
  /** By index in `zoneNames`. */
  readonly evidence: readonly number[];
  readonly parts: readonly NamedPart[];
}

/** Words that make a clause a remark about what is not in view. */
const remoteWords = new RegExp(
  `${elsewhereBefore.source}|(?<![a-z0-9])(?:like i said|as i said|i told you|i mentioned|we talked about|ill show|later|goes with it|came with|come with|it had|used to|back in the day|another one|the other one|that one over there|the base|my (?:brother|uncle|mama|daddy|truck|car)|a man|a guy|a lady|somebody|online)(?![a-z0-9])`,
);

export function weighClauses(speech: Speech, clauses: readonly Clause[], parts: readonly NamedPart[]): WeighedClause[] {
  let next = 0;
  return clauses.map((clause) => {
    const own: NamedPart[] = [];
    while (next < parts.length && (parts[next]?.first ?? 0) < clause.end) {
      const part = parts[next];
      if (part) own.push(part);
      next += 1;
    }
    return { ...clause, parts: own, evidence: evidenceOf(speech, clause, own) };
  });
}

function evidenceOf(speech: Speech, clause: Clause, parts: readonly NamedPart[]): number[] {
  const evidence = zoneNames.map(() => 0);
  for (const part of parts) {
    for (const [zone, weight] of Object.entries(part.zones)) {
      const index = zoneIndex[zone as keyof typeof zoneIndex];
      evidence[index] = (evidence[index] ?? 0) + weight;
    }
  }
  const words = speech.tokens.slice(clause.first, clause.end).map((token) => plainWord(token.word));
  const share = remoteWords.test(words.join(" ")) ? walkCosts.remoteShare : 1;
  return evidence.map((sum) => Math.min(walkCosts.clauseEvidenceCap, sum * walkCosts.evidenceScale) * share);
}
