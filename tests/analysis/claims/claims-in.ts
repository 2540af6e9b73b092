import { findClaims } from "../../../electron/analysis/claims/find-claims.ts";
import { readNumbers } from "../../../electron/analysis/numbers/read-numbers.ts";
import type { Claim, ZoneName } from "../../../shared-types/index.ts";
import { speechOf } from "../../support/speech-of.ts";

/** The claims in captions four seconds long, all seen from one place. */
export function claimsIn(words: string | readonly string[], zone: ZoneName = "roof"): Claim[] {
  return readingOf(words, zone).claims;
}

export function readingOf(words: string | readonly string[], zone: ZoneName = "roof") {
  const speech = speechOf(words);
  return findClaims({
    speech,
    numbers: readNumbers(speech),
    zones: [{ zone, start: 0, end: speech.duration, confidence: 1, evidence: [] }],
  });
}
