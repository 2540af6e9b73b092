import {
  type Analysis,
  type ChapterProposal,
  type LapSpan,
  type ZoneProposal,
  type ZoneSpan,
  zoneLabels,
} from "../../shared-types/index.ts";

type ProposedWork = Pick<Analysis, "zones" | "chapters">;

/**
 * The lap as the desk shows it: people's spans, and proposals wherever no person has spoken. Covers the recording from 0 to
 * `duration` without gap or overlap; empty only for a recording of no length.
 * @param spans people's, in order, never overlapping.
 */
export function effectiveLap(duration: number, spans: readonly ZoneSpan[], proposed: ProposedWork): LapSpan[] {
  const lap: LapSpan[] = [];
  let at = 0;
  for (const span of spans) {
    const start = Math.max(span.start, at);
    const end = Math.min(span.end, duration);
    if (start >= end) continue;
    lap.push(...proposedBetween(at, start, duration, proposed));
    lap.push({ zone: span.zone, start, end, title: span.title ?? zoneLabels[span.zone], zoneSpanId: span.id, confidence: 1, evidence: [] });
    at = end;
  }
  lap.push(...proposedBetween(at, duration, duration, proposed));
  return lap;
}

function proposedBetween(from: number, to: number, duration: number, { zones, chapters }: ProposedWork): LapSpan[] {
  if (from >= to) return [];
  return filled(zones, duration).flatMap((proposal) => {
    const start = Math.max(proposal.start, from);
    const end = Math.min(proposal.end, to);
    if (start >= end) return [];
    return {
      zone: proposal.zone,
      start,
      end,
      title: titleOf(proposal, chapters),
      zoneSpanId: null,
      confidence: proposal.confidence,
      evidence: proposal.evidence.map(({ quote }) => quote.trim()).filter((quote) => quote !== ""),
    };
  });
}

/** Proposals stretched so that they cover the recording, also where the video runs longer than its transcript. */
function filled(zones: readonly ZoneProposal[], duration: number): ZoneProposal[] {
  const first: ZoneProposal = { zone: "opening", start: 0, end: duration, confidence: 0, evidence: [] };
  if (zones.length === 0) return [first];
  return zones.map((proposal, position) => ({
    ...proposal,
    start: position === 0 ? 0 : proposal.start,
    end: zones[position + 1]?.start ?? Math.max(proposal.end, duration),
  }));
}

function titleOf(proposal: ZoneProposal, chapters: readonly ChapterProposal[]): string {
  const chapter = chapters.find(({ zone, start, end }) => zone === proposal.zone && start <= proposal.start && proposal.start < end);
  return chapter?.title ?? zoneLabels[proposal.zone];
}
