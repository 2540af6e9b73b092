import { randomUUID } from "node:crypto";
import { mkdirSync } from "node:fs";
import { rm } from "node:fs/promises";
import { extname, join } from "node:path";
import type { Input, RecordingSummary, Transcript } from "../../shared-types/index.ts";
import type { RecordingVideo } from "../library/recordings.ts";
import { readTranscript } from "../transcripts/read-transcript.ts";
import { TranscriptError } from "../transcripts/transcript-error.ts";
import type { Analyst } from "./analyse-recording.ts";
import { indexRecording } from "./index-for-search.ts";
import type { KnownFile } from "./offered-files.ts";
import type { Parts } from "./parts.ts";
import { readOffered } from "./read-offered.ts";
import { type ReadSheet, readSheetRow, recordedOn, withSheetDescription } from "./read-stock-sheet.ts";
import { findRecording, recordingSummary } from "./recording-detail.ts";
import { Refusal } from "./refusals.ts";
import { videoMediaType } from "./video-kinds.ts";

/** The folder beside the library that takes received videos. */
export const mediaFolder = "media";

/**
 * Puts a recording into the library and analyses it. Everything is read and checked before anything is written; a failing analysis
 * leaves the recording in place, with its captions and without proposals.
 */
export async function importRecording(parts: Parts, analyst: Analyst, input: Input<"recording.import">): Promise<RecordingSummary> {
  const { library, files } = parts;
  const transcriptFile = files.find(input.transcript);
  const videoFile = input.video === null ? null : files.find(input.video);
  const sheetFile = input.stockSheet === null ? null : files.find(input.stockSheet);

  const transcriptBytes = readOffered(transcriptFile);
  if (!input.again) refuseKnown(parts, transcriptFile.name, transcriptBytes);
  const transcript = readWords(transcriptBytes, transcriptFile.name);
  const sheet = sheetFile && readSheetRow(readOffered(sheetFile), sheetFile.name, input.stockNumber, library.sheetChoices);
  const mediaType = videoFile && videoMediaType(videoFile.path, videoFile.name);

  const described = { ...input, ...withSheetDescription(input, sheet?.fields ?? null, sheet?.meanings ?? null) };
  const id = randomUUID();
  const video = videoFile && mediaType ? await placeVideo(parts, videoFile, id, mediaType) : null;
  try {
    library.transaction(() => addRows(parts, { id, input: described, transcriptFile, transcriptBytes, transcript, video, sheet }));
  } catch (failure) {
    if (videoFile?.received && video) await rm(join(library.folder, video.path), { force: true });
    throw failure;
  }
  files.letGo([input.transcript, input.video, input.stockSheet].filter((offered) => offered !== null));
  parts.events.publish("library.changed", { recordingId: id });
  try {
    await analyst.analyse(id);
  } catch (failure) {
    parts.log(
      `“${input.title}” was imported, and its analysis failed: ${failure instanceof Error ? (failure.stack ?? failure.message) : String(failure)}`,
    );
  }
  return recordingSummary(parts, findRecording(parts, id));
}

/** The same transcript twice would double every answer of a search; only a person can say that it is wanted. */
function refuseKnown({ library }: Parts, name: string, bytes: Uint8Array): void {
  const known = library.recordings.ofTranscript(bytes);
  if (!known) return;
  const stock = known.stockNumber ? `stock ${known.stockNumber}, ` : "";
  throw new Refusal(
    "transcript-known",
    `${name} is already in the library as “${known.title}” (${stock}imported ${known.importedAt.slice(0, 10)}). Import it again?`,
    { file: name },
  );
}

interface NewRecording {
  readonly id: string;
  readonly input: Input<"recording.import">;
  readonly transcriptFile: KnownFile;
  readonly transcriptBytes: Uint8Array;
  readonly transcript: Transcript;
  readonly video: RecordingVideo | null;
  readonly sheet: ReadSheet | null;
}

function addRows(parts: Parts, { id, input, transcriptFile, transcriptBytes, transcript, video, sheet }: NewRecording): void {
  const { title, stockNumber, vehicle } = input;
  parts.library.recordings.add(
    {
      id,
      title,
      stockNumber,
      vehicle,
      duration: transcript.duration,
      recordedOn: recordedOn(sheet?.fields ?? null, sheet?.meanings ?? null),
      importedAt: parts.now(),
      transcriptFile: transcriptFile.name,
      transcriptFormat: transcript.format,
      transcriptEnd: transcript.duration,
      video,
      stockSheet: sheet?.fields ?? null,
      sheetForm: sheet?.form ?? null,
      sheetMeanings: sheet?.meanings ?? null,
    },
    transcriptBytes,
  );
  parts.library.captions.addAll(id, transcript.captions);
  indexRecording(parts, id);
}

/** A received video moves beside the library; one that was named by its path stays where the person has it. */
async function placeVideo({ library, files }: Parts, file: KnownFile, recordingId: string, mediaType: string): Promise<RecordingVideo> {
  if (!file.received) return { path: file.path, name: file.name, mediaType };
  mkdirSync(join(library.folder, mediaFolder), { recursive: true });
  const path = join(mediaFolder, `${recordingId}${extname(file.name).toLowerCase()}`);
  await files.keep(file.id, join(library.folder, path));
  return { path, name: file.name, mediaType };
}

function readWords(bytes: Uint8Array, name: string): Transcript {
  try {
    return readTranscript(bytes, name);
  } catch (failure) {
    if (failure instanceof TranscriptError) throw new Refusal(failure.code, failure.message, { file: failure.file, line: failure.line });
    throw failure;
  }
}
