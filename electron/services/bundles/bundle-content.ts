import { createHash } from "node:crypto";
import {
  type BundleAnalysis,
  type BundleEdit,
  type BundleManifest,
  type BundleRecording,
  type BundleStills,
  type BundleWork,
  bundleVersion,
  type Caption,
} from "../../../shared-types/index.ts";
import type { Library } from "../../library/open-library.ts";
import { findRecording, videoPath } from "../recording-detail.ts";
import { fingerprintOf } from "../videos/fingerprint.ts";

/** Names of the entries; stills and the video have names of their own. */
export const entryNames = {
  manifest: "manifest.json",
  recording: "recording.json",
  transcript: "transcript.bin",
  captions: "captions.json",
  analysis: "analysis.json",
  work: "work.json",
  stills: "stills.json",
} as const;

/** A recording as a bundle carries it, without the bytes of stills and video. */
export interface BundleContent {
  readonly recording: BundleRecording;
  readonly transcript: Uint8Array;
  readonly captions: readonly Caption[];
  readonly analysis: BundleAnalysis;
  readonly work: BundleWork;
  readonly stills: BundleStills;
}

export function stillName({ atMilliseconds, mediaType }: BundleStills[number]): string {
  return `stills/${String(atMilliseconds).padStart(10, "0")}.${mediaType.slice("image/".length)}`;
}

/** Everything that the library has of a recording. The video is only looked at for what it is known by. */
export async function bundleContent(library: Library, recordingId: string): Promise<BundleContent> {
  const { video } = findRecording({ library }, recordingId);
  // A video that lies there is its own witness; of one that has gone, the library may still know.
  const seen = video ? await fingerprintOf(videoPath(library, video)).catch(() => undefined) : undefined;
  // Read after the last wait, in one go: an edit made meanwhile is in it whole or not at all.
  return library.transaction(() => {
    const row = findRecording({ library }, recordingId);
    const analysis = library.proposals.of(recordingId);
    return {
      recording: {
        id: row.id,
        title: row.title,
        stockNumber: row.stockNumber,
        vehicle: row.vehicle,
        duration: row.duration,
        recordedOn: row.recordedOn,
        importedAt: row.importedAt,
        transcriptFile: row.transcriptFile,
        transcriptFormat: row.transcriptFormat,
        transcriptEnd: row.transcriptEnd,
        video: row.video && { name: row.video.name, mediaType: row.video.mediaType as "video/mp4" | "video/webm" },
        videoFingerprint: row.video ? (seen ?? library.videoFingerprints.get(recordingId) ?? null) : null,
        stockSheet: row.stockSheet,
        sheetForm: row.sheetForm,
        sheetMeanings: row.sheetMeanings,
      },
      transcript: library.recordings.transcriptBytes(recordingId) ?? new Uint8Array(),
      captions: library.captions.of(recordingId),
      analysis: analysis ? { analysedAt: library.proposals.analysedAt(recordingId) ?? row.importedAt, analysis } : null,
      work: workOf(library, recordingId),
      stills: library.stills.kept(recordingId) as BundleStills,
    };
  });
}

export function workOf(library: Library, recordingId: string): BundleWork {
  return {
    zoneSpans: library.zoneSpans.of(recordingId),
    findings: library.findings.of(recordingId),
    rulings: library.rulings.of(recordingId),
    seenNotes: library.seenNotes.of(recordingId),
    trustedCaptions: library.trustedCaptions.of(recordingId),
    captionCorrections: library.captionCorrections.of(recordingId),
    publications: library.publications.of(recordingId),
    edits: library.edits.history(recordingId) as BundleEdit[],
  };
}

export interface BundleEntry {
  readonly name: string;
  readonly bytes: number;
  readonly sha256: string;
}

/** The entries that are small enough to stand in memory, in the order in which they stand in the file. */
export function smallEntries(content: BundleContent): { readonly name: string; readonly content: Buffer }[] {
  const json = (value: unknown) => Buffer.from(`${JSON.stringify(value, null, 1)}\n`, "utf8");
  return [
    { name: entryNames.recording, content: json(content.recording) },
    { name: entryNames.transcript, content: Buffer.from(content.transcript) },
    { name: entryNames.captions, content: json(content.captions) },
    { name: entryNames.analysis, content: json(content.analysis) },
    { name: entryNames.work, content: json(content.work) },
    { name: entryNames.stills, content: json(content.stills) },
  ];
}

export function entryOf(name: string, content: Uint8Array): BundleEntry {
  return { name, bytes: content.length, sha256: createHash("sha256").update(content).digest("hex") };
}

export function manifestOf({ recording }: BundleContent, entries: readonly BundleEntry[]): { manifest: BundleManifest; bytes: Buffer } {
  const manifest: BundleManifest = {
    kind: "roundwalk-bundle",
    version: bundleVersion,
    recordingId: recording.id,
    title: recording.title,
    stockNumber: recording.stockNumber,
    entries: [...entries],
  };
  return { manifest, bytes: Buffer.from(`${JSON.stringify(manifest, null, 1)}\n`, "utf8") };
}
