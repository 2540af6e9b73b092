import { fileURLToPath } from "node:url";
import { analyse } from "../../../electron/analysis/analyse.ts";
import type { Analysis, Caption, Claim, Transcript } from "../../../shared-types/index.ts";
import { readCases } from "../../corpus/read-cases.ts";

/** The development walks, with the whole duration that their annotation gives. */
export const devWalks = readCases(fileURLToPath(new URL("../../../fixtures/corpus/dev", import.meta.url))).map(({ gold, transcript }) => ({
  id: gold.id,
  vehicleName: gold.vehicle.name,
  transcript: { ...transcript, duration: gold.duration } satisfies Transcript,
}));

export const analysed = (transcript: Transcript): Analysis => analyse(transcript, { stockSheet: null, recordedOn: null });

/** What a claim says, without its words and without where it stands in the list of captions. */
export function meaning(claim: Claim): string {
  return [claim.component, claim.part, claim.position, claim.attribute, claim.value, claim.unit, claim.stance, claim.time].join("|");
}

/** All that people see of an analysis but the spoken words themselves. */
export function findings({ claims, conflicts, zones, doubtful, repairs }: Analysis) {
  return {
    claims: claims.map(meaning),
    conflicts: conflicts.map(({ kind, topic, sides }) => `${kind} ${topic}: ${sides.map(({ value }) => value).join(" / ")}`),
    zones: zones.map(({ zone }) => zone),
    doubtful: doubtful.length,
    repairs: repairs.map(({ meant }) => meant),
  };
}

export function withText(transcript: Transcript, textOf: (caption: Caption) => string): Transcript {
  return { ...transcript, captions: transcript.captions.map((caption) => ({ ...caption, text: textOf(caption) })) };
}

/** The transcript with another caption of `seconds` after caption `place`; what follows is later by as much. */
export function withCaptionAfter(transcript: Transcript, place: number, text: string, seconds = 5): Transcript {
  const at = transcript.captions[place]!.end;
  const before = transcript.captions.slice(0, place + 1);
  const after = transcript.captions
    .slice(place + 1)
    .map((caption) => ({ ...caption, index: caption.index + 1, start: caption.start + seconds, end: caption.end + seconds }));
  return {
    ...transcript,
    duration: (transcript.duration ?? at) + seconds,
    captions: [...before, { index: place + 1, start: at, end: at + seconds, text }, ...after],
  };
}
