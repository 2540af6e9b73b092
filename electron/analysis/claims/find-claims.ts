import type { Claim, Repair, ZoneProposal } from "../../../shared-types/index.ts";
import type { Speech, SpokenNumber } from "../model.ts";
import { frameSpeech } from "./framing/index.ts";
import { findMentions } from "./lexicon/find-mentions.ts";
import { findMeasures } from "./measures/find-measures.ts";
import { mapSpeech } from "./measures/surroundings.ts";

export interface ClaimsInput {
  readonly speech: Speech;
  readonly numbers: readonly SpokenNumber[];
  readonly zones: readonly ZoneProposal[];
}

/** Everything checkable that is said about this vehicle as it is or was, and the repairs its numbers needed. */
export function findClaims({ speech, numbers, zones }: ClaimsInput): { claims: Claim[]; repairs: Repair[] } {
  const map = mapSpeech(speech, findMentions(speech), zones, numbers);
  const measures = findMeasures(map, numbers, frameSpeech(speech));
  return { claims: [...measures.claims], repairs: [...measures.repairs] };
}
