import type { Claim, Repair, ZoneProposal } from "../../../shared-types/index.ts";
import type { Speech, SpokenNumber } from "../model.ts";
import { findCountsOff } from "./counted-off/index.ts";
import { type Frames, frameSpeech, markSetAgainst } from "./framing/index.ts";
import { findMentions } from "./lexicon/find-mentions.ts";
import { recutAtParts } from "./lexicon/recut-sentences.ts";
import { findBuiltMonths } from "./measures/built-months.ts";
import { findMeasures } from "./measures/find-measures.ts";
import { mapSpeech } from "./measures/surroundings.ts";
import { findQualityClaims } from "./qualities/index.ts";
import { findRatings } from "./ratings/index.ts";

export interface ClaimsInput {
  readonly speech: Speech;
  readonly numbers: readonly SpokenNumber[];
  readonly zones: readonly ZoneProposal[];
}

export interface ClaimsFound {
  readonly speech: Speech;
  readonly frames: Frames;
  readonly claims: Claim[];
  readonly repairs: Repair[];
}

/**
 * Everything checkable that is said about this vehicle as it is or was: numbers from the slots, kinds and states from the quality rules;
 * and the repairs its numbers needed. Ids are unique within the result; the caller numbers them in spoken order. With them comes the speech
 * as it was cut for the claims, and how its clauses are meant, for the passes that follow.
 */
export function findClaims({ speech: heard, numbers, zones }: ClaimsInput): ClaimsFound {
  const mentions = findMentions(heard);
  const speech = recutAtParts(heard, mentions, numbers);
  const frames = frameSpeech(speech);
  const map = mapSpeech(speech, mentions, zones, numbers);
  const measures = findMeasures(map, numbers, frames);
  const builtMonths = findBuiltMonths(map, frames, measures.claims);
  const qualities = findQualityClaims({ speech, frames, mentions, zones });
  const counts = findCountsOff({ speech, frames, mentions, zones });
  const ratings = findRatings({ speech, frames, numbers, mentions, zones });
  return {
    speech,
    frames,
    claims: markSetAgainst([...measures.claims, ...builtMonths, ...qualities, ...counts, ...ratings], speech),
    repairs: [...measures.repairs],
  };
}
