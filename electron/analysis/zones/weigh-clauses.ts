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

/** Words that make a whole sentence one about another vehicle on the lot. */
const otherVehicleWords =
  /(?<![a-z0-9])(?:(?:dont|do not) get (?:em|them|it|these) (?:confused|mixed)|(?:see|see it|see that|parked|sitting|stood) (?:sitting |parked |standing )?(?:over )?(?:there|yonder|by the (?:fence|gate|wall|barn)|behind it|next to it|beside it|in the corner)|next to it is|(?:isnt|aint|not)(?: even)? (?:yet )?for sale|different animal|another one (?:in|out|over)|the (?:red|white|black|blue|green|silver|gray|grey|yellow|other) one(?:s)? (?:over|behind|there|you see|next|in the|out|is sold|belongs))(?![a-z0-9])/;

export function weighClauses(speech: Speech, clauses: readonly Clause[], parts: readonly NamedPart[]): WeighedClause[] {
  let next = 0;
  const elsewhere = otherVehicleTokens(speech);
  return clauses.map((clause) => {
    const own: NamedPart[] = [];
    while (next < parts.length && (parts[next]?.first ?? 0) < clause.end) {
      const part = parts[next];
      if (part) own.push(part);
      next += 1;
    }
    return { ...clause, parts: own, evidence: evidenceOf(speech, clause, own, elsewhere.has(clause.first)) };
  });
}

/** Parts named beside these are read from a paper and not looked at. */
const paperWords =
  /(?<![a-z])(?:invoices?|receipts?|bills?(?! of lading)|slip|build sheet|(?:the|this|that|his|my|spec|fleet|auction|broadcast|same) sheet|ticket says|tag says|(?:book|title|report|log|card) says|printout|work order|advisory|advisories|part number|shop bill)(?![a-z])/;
const spokenFromPaper: ReadonlySet<number> = new Set([zoneIndex.documents, zoneIndex.opening, zoneIndex.closing]);

/** Tokens of sentences about another vehicle. */
function otherVehicleTokens(speech: Speech): ReadonlySet<number> {
  const tokens = new Set<number>();
  for (const sentence of speech.sentences) {
    const words = speech.tokens.slice(sentence.first, sentence.end).map((token) => plainWord(token.word));
    if (!otherVehicleWords.test(words.join(" "))) continue;
    // Without punctuation what is said of it runs on over the next joint.
    const end = speech.punctuated ? sentence.end : (speech.sentences[sentence.index + 1]?.end ?? sentence.end);
    for (let position = sentence.first; position < end; position += 1) tokens.add(position);
  }
  return tokens;
}

function evidenceOf(speech: Speech, clause: Clause, parts: readonly NamedPart[], otherVehicle: boolean): number[] {
  const evidence = zoneNames.map(() => 0);
  for (const part of parts) {
    for (const [zone, weight] of Object.entries(part.zones)) {
      const index = zoneIndex[zone as keyof typeof zoneIndex];
      evidence[index] = (evidence[index] ?? 0) + weight;
    }
  }
  const words = speech.tokens.slice(clause.first, clause.end).map((token) => plainWord(token.word));
  const share = otherVehicle || remoteWords.test(words.join(" ")) ? walkCosts.remoteShare : 1;
  const paper = paperWords.test(words.join(" "));
  return evidence.map((sum, zone) => {
    const read = paper && !spokenFromPaper.has(zone) ? walkCosts.readFromPaperShare : 1;
    return Math.min(walkCosts.clauseEvidenceCap, sum * walkCosts.evidenceScale) * Math.min(share, read);
  });
}
