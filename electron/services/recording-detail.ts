import { existsSync } from "node:fs";
import { isAbsolute, join } from "node:path";
import {
  type Analysis,
  type FindingProposal,
  inMarkedZones,
  type LapSpan,
  type Matter,
  matterCounts,
  openMatters,
  plainConflict,
  type RecordingDetail,
  type RecordingSummary,
} from "../../shared-types/index.ts";
import type { Library } from "../library/open-library.ts";
import type { RecordingRow, RecordingVideo } from "../library/recordings.ts";
import { correctedCaptions, effectiveCaptions } from "./effective-captions.ts";
import { effectiveLap } from "./effective-lap.ts";
import type { Parts } from "./parts.ts";
import { proposeFindings } from "./propose-findings.ts";
import { unknownRecording } from "./refusals.ts";

/** A recording that was not analysed yet, or whose analysis failed: everything by hand is possible all the same. */
const notAnalysed: Analysis = {
  analysisVersion: 0,
  zones: [],
  repairs: [],
  claims: [],
  conflicts: [],
  remarks: [],
  denials: [],
  supports: [],
  silences: [],
  promises: [],
  questions: [],
  doubtful: [],
  chapters: [],
};

/** @throws Refusal when the library holds no such recording. */
export function findRecording({ library }: Pick<Parts, "library">, id: string): RecordingRow {
  const row = library.recordings.get(id);
  if (!row) throw unknownRecording(id);
  return row;
}

export function storedAnalysis(library: Library, id: string): Analysis {
  return library.proposals.of(id) ?? notAnalysed;
}

export function recordingLap(library: Library, row: RecordingRow): LapSpan[] {
  return effectiveLap(row.duration, library.zoneSpans.of(row.id), library.proposals.lapParts(row.id));
}

/** Findings that the claims suggest, each in the zone that a person has marked at its moment, where one has. */
export function proposedFindings(library: Library, id: string): FindingProposal[] {
  return inMarkedZones(proposeFindings(library.proposals.claims(id), library.findings.acceptedKeys(id)), library.zoneSpans.of(id));
}

export function videoPath(library: Pick<Library, "folder">, video: RecordingVideo): string {
  return isAbsolute(video.path) ? video.path : join(library.folder, video.path);
}

export function videoFound(library: Pick<Library, "folder">, { video }: Pick<RecordingRow, "video">): boolean {
  return video !== null && existsSync(videoPath(library, video));
}

export function recordingSummary({ library }: Pick<Parts, "library">, row: RecordingRow): RecordingSummary {
  const lap = recordingLap(library, row);
  const open = countOpenMatters(library, row.id);
  return {
    id: row.id,
    title: row.title,
    stockNumber: row.stockNumber,
    vehicle: row.vehicle,
    duration: row.duration,
    importedAt: row.importedAt,
    published: library.publications.last(row.id),
    hasVideo: row.video !== null,
    videoFound: videoFound(library, row),
    videoKept: row.video !== null && !isAbsolute(row.video.path),
    counts: {
      captions: library.captions.count(row.id),
      claims: library.proposals.countClaims(row.id),
      findings: library.findings.count(row.id),
      proposals: proposedFindings(library, row.id).length,
      proposedZones: lap.filter((span) => span.zoneSpanId === null).length,
      conflicts: library.rulings.countConflicts(row.id),
      openConflicts: library.rulings.openConflictKeys(row.id).length,
      openDenials: open.denial,
      openPromises: open.promise,
      openQuestions: open.question,
    },
  };
}

/** What nobody has dealt with, as far as it takes: the library's list reads it of every recording. */
export function openMattersOf(library: Library, id: string): Matter[] {
  const { proposals } = library;
  const [denials, promises, questions] = [proposals.denials(id), proposals.promises(id), proposals.questions(id)];
  if (denials.length + promises.length + questions.length === 0) return [];
  return openMatters({
    // Conflicts tell of denials alone.
    analysis: { denials, promises, questions, conflicts: denials.length > 0 ? proposals.conflicts(id) : [] },
    spans: library.zoneSpans.of(id),
    rulings: library.rulings.of(id),
    seenNotes: library.seenNotes.of(id),
  });
}

function countOpenMatters(library: Library, id: string) {
  return matterCounts(openMattersOf(library, id));
}

export function recordingDetail(parts: Pick<Parts, "library">, id: string): RecordingDetail {
  const { library } = parts;
  const row = findRecording(parts, id);
  const analysis = storedAnalysis(library, id);
  const spans = library.zoneSpans.of(id);
  return {
    summary: recordingSummary(parts, row),
    transcriptFile: row.transcriptFile,
    transcriptFormat: row.transcriptFormat,
    videoFile: row.video?.name ?? null,
    stockSheet: row.stockSheet,
    sheetMeanings: row.sheetMeanings,
    captions: effectiveCaptions(library, id),
    captionCorrections: correctedCaptions(library, id),
    // What the library keeps of the analysis stays as it was; a desk and an export file a claim where a person says the camera was, and
    // word a topic as people do.
    analysis: { ...analysis, claims: inMarkedZones(analysis.claims, spans), conflicts: analysis.conflicts.map(plainConflict) },
    lap: effectiveLap(row.duration, spans, analysis),
    findings: library.findings.of(id),
    findingProposals: proposedFindings(library, id),
    trustedCaptions: library.trustedCaptions.of(id),
    rulings: library.rulings.of(id),
    seenNotes: library.seenNotes.of(id),
    openConflictKeys: library.rulings.openConflictKeys(id),
    publications: library.publications.of(id),
    undoLabel: library.edits.lastDone(id)?.label ?? null,
    redoLabel: library.edits.firstUndone(id)?.label ?? null,
  };
}
