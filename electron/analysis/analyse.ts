import type { Analysis, Claim, Repair, SheetMeanings, StockSheetFields, Transcript } from "../../shared-types/index.ts";
import { proposeChapters } from "./chapters/propose-chapters.ts";
import { findClaims } from "./claims/find-claims.ts";
import { compareClaims } from "./comparison/compare-claims.ts";
import { quotingDoubts } from "./comparison/quote-doubts.ts";
import { askCoverage } from "./coverage/ask-coverage.ts";
import { readNumbers } from "./numbers/read-numbers.ts";
import { findPromises } from "./promises/find-promises.ts";
import { hearSpeech } from "./transcript/hear-speech.ts";
import { findZones } from "./zones/find-zones.ts";

/** Raised whenever the rules change what they find; a stored analysis of an older version is made anew. */
export const analysisVersion = 5;

export interface AnalysisOptions {
  /** The dealer's own record, if there is one: claims are held against it. */
  readonly stockSheet: StockSheetFields | null;
  /** What its columns mean, where that was settled; else their names tell. */
  readonly sheetMeanings?: SheetMeanings | null;
  /** ISO 8601 date of the recording, where it is known: a tire made after it cannot be on the vehicle. */
  readonly recordedOn: string | null;
  /** Doubtful captions that a person holds for speech: they are read like any other. */
  readonly trustedCaptions?: readonly number[];
}

/** Called after each pass with its name; may throw to stop the analysis between passes. */
export type PassListener = (pass: string, done: number, of: number) => void;

const passCount = 7;

/**
 * Reads a transcript into zones, claims, repairs and conflicts. Pure: the same input gives the same bytes,
 * and input and output survive `JSON.stringify`. Never throws on any transcript that its type allows.
 */
export function analyse(transcript: Transcript, options: AnalysisOptions, onPass: PassListener = () => {}): Analysis {
  const speech = hearSpeech(transcript, new Set(options.trustedCaptions));
  onPass("transcript", 1, passCount);
  const numbers = readNumbers(speech);
  onPass("numbers", 2, passCount);
  const zones = findZones(speech);
  onPass("zones", 3, passCount);
  const found = findClaims({ speech, numbers, zones });
  const { claims, repairs } = numbered(found);
  onPass("claims", 4, passCount);
  const { conflicts, remarks, denials, supports, silences } = compareClaims({ claims, zones, duration: speech.duration, ...options });
  onPass("comparison", 5, passCount);
  const promises = findPromises(found.speech, found.frames, claims);
  const questions = askCoverage(zones, claims);
  onPass("promises", 6, passCount);
  const chapters = proposeChapters(zones, claims, speech.duration);
  onPass("chapters", 7, passCount);
  return {
    analysisVersion,
    zones,
    repairs,
    claims,
    conflicts: quotingDoubts(conflicts, claims, found.speech),
    remarks,
    denials,
    supports,
    silences,
    promises,
    questions,
    doubtful: [...speech.doubtful],
    chapters,
  };
}

/** Ids in the order things are said, so that they read well and stay put when an unrelated rule changes. */
function numbered(found: { claims: Claim[]; repairs: Repair[] }): { claims: Claim[]; repairs: Repair[] } {
  const newRepairId = new Map<string, string>();
  const repairs = found.repairs
    .toSorted((a, b) => a.caption - b.caption || (a.spans[0]?.start ?? 0) - (b.spans[0]?.start ?? 0))
    .map((repair, position) => {
      const id = `r${position + 1}`;
      newRepairId.set(repair.id, id);
      return { ...repair, id };
    });
  const claims = found.claims
    .toSorted((a, b) => a.start - b.start || (a.spans[0]?.start ?? 0) - (b.spans[0]?.start ?? 0))
    .map((claim, position) => ({ ...claim, id: `c${position + 1}`, repairs: claim.repairs.map((id) => newRepairId.get(id) ?? id) }));
  return { claims, repairs };
}
