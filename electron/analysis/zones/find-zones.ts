import type { ZoneProposal } from "../../../shared-types/index.ts";
import type { Speech } from "../model.ts";
import { cutClauses } from "./cut-clauses.ts";
import { driveSide } from "./drive-side.ts";
import { findLonePlaces } from "./find-lone-places.ts";
import { findMoves } from "./find-moves.ts";
import { findParts } from "./find-parts.ts";
import { findRecap } from "./find-recap.ts";
import { likeliestWalk } from "./likeliest-walk.ts";
import { spokenLine } from "./spoken-line.ts";
import { weighClauses } from "./weigh-clauses.ts";
import { zoneSpans } from "./zone-spans.ts";

/**
 * Where the camera is, over the whole recording: spans in order from 0 to its end, without gap or overlap, none empty. A recording without
 * a usable word is one opening.
 */
export function findZones(speech: Speech): ZoneProposal[] {
  const drive = driveSide(speech);
  const line = spokenLine(speech);
  const moves = findMoves(line, drive, speech.punctuated, findLonePlaces(speech, drive));
  const parts = findParts(speech);
  const named = [...parts, ...findRecap(speech)].toSorted((a, b) => a.first - b.first);
  const clauses = weighClauses(speech, cutClauses(speech, moves, parts), named);
  return zoneSpans(speech, clauses, likeliestWalk(speech, clauses));
}
