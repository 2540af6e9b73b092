import { randomUUID } from "node:crypto";
import { rm } from "node:fs/promises";
import { join } from "node:path";
import type { Input, RecordingSummary, Transcript } from "../../shared-types/index.ts";
import type { RecordingVideo } from "../library/recordings.ts";
import type { VideoFingerprint } from "../library/video-fingerprints.ts";
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
import { fingerprintOf } from "./videos/fingerprint.ts";
import { placeVideo } from "./videos/take-video.ts";

/**
 * Puts a recording into the library and analyses it. Everything is read and checked before anything is written; a failing analysis
 * leaves the recording in place, with its captions and without proposals.
 * @param signal stops it; whatever of the recording is in the library by then goes out again.
 * @param onAdded told the recording's id just before its analysis begins.
 * @throws Refusal `import-cancelled` when it was stopped.
 */
export async function importRecording(
  parts: Parts,
  analyst: Analyst,
  input: Omit<Input<"recording.import">, "ticket">,
  { signal, onAdded }: { readonly signal?: AbortSignal; readonly onAdded?: (id: string) => void } = {},
): Promise<RecordingSummary> {
  const { library, files } = parts;
  refuseStopped(signal, input.title);
  const transcriptFile = files.find(input.transcript);
  const videoFile = input.video === null ? null : files.find(input.video);
  const sheetFile = input.stockSheet === null ? null : files.find(input.stockSheet);

  const transcriptBytes = readOffered(transcriptFile);
  if (!input.again) refuseKnown(parts, transcriptFile.name, transcriptBytes);
  const transcript = readWords(transcriptBytes, transcriptFile.name);
  const sheet = sheetFile && readSheetRow(readOffered(sheetFile), sheetFile.name, input.stockNumber, library.sheetChoices);
  const mediaType = videoFile && videoMediaType(videoFile.path, videoFile.name);

  const described = { ...input, ...withSheetDescription(input, sheet?.fields ?? null, sheet?.meanings ?? null) };
  const refuseTwice = () => {
    if (input.again) return;
    refuseKnown(parts, transcriptFile.name, transcriptBytes);
    if (input.asksOfStockNumber) refuseStockNumber(parts, transcriptFile.name, described.stockNumber);
  };
  refuseTwice();
  const id = randomUUID();
  const fingerprint = videoFile ? await fingerprintOf(videoFile.path) : null;
  const video = videoFile && mediaType ? await placeVideo(parts, videoFile, mediaType, id) : null;
  const dropVideo = async () => {
    if (videoFile?.received && video) await rm(join(library.folder, video.path), { force: true });
  };
  try {
    refuseStopped(signal, input.title);
    library.transaction(() => {
      // Again: of several imports at once, another may have brought the same words or the same vehicle meanwhile.
      refuseTwice();
      addRows(parts, { id, input: described, transcriptFile, transcriptBytes, transcript, video, fingerprint, sheet });
    });
  } catch (failure) {
    await dropVideo();
    throw failure;
  }
  // A file that was named by its path may be wanted again: one stock sheet serves a whole lot.
  files.letGo([transcriptFile, videoFile, sheetFile].flatMap((file) => (file?.received ? [file.id] : [])));
  parts.events.publish("library.changed", { recordingId: id });
  onAdded?.(id);
  await analyseUnlessStopped(parts, analyst, { id, title: input.title, signal });
  if (signal?.aborted) {
    library.transaction(() => library.recordings.remove(id));
    await dropVideo();
    parts.events.publish("library.changed", { recordingId: null });
    refuseStopped(signal, input.title);
  }
  return recordingSummary(parts, findRecording(parts, id));
}

/** A failure goes to the log: the recording is in the library, and can be analysed again from there. */
async function analyseUnlessStopped(
  parts: Parts,
  analyst: Analyst,
  { id, title, signal }: { readonly id: string; readonly title: string; readonly signal: AbortSignal | undefined },
): Promise<void> {
  const stop = () => analyst.stop(id);
  signal?.addEventListener("abort", stop, { once: true });
  try {
    await analyst.analyse(id);
  } catch (failure) {
    if (signal?.aborted) return;
    const reason = failure instanceof Error ? (failure.stack ?? failure.message) : String(failure);
    parts.log(`“${title}” was imported, and its analysis failed: ${reason}`);
  } finally {
    signal?.removeEventListener("abort", stop);
  }
}

function refuseStopped(signal: AbortSignal | undefined, title: string): void {
  if (signal?.aborted) throw new Refusal("import-cancelled", `The import of “${title}” was cancelled. Nothing of it is in the library.`);
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

/** Two recordings of one vehicle may be meant (another day's walk), or the second takes the place of a first with mistakes: a person says. */
function refuseStockNumber({ library }: Parts, name: string, stockNumber: string): void {
  const plain = (typed: string) => typed.toLowerCase().replaceAll(/[^\p{L}\p{N}]/gu, "");
  const wanted = plain(stockNumber);
  const known = wanted === "" ? undefined : library.recordings.all().find((row) => plain(row.stockNumber) === wanted);
  if (!known) return;
  throw new Refusal(
    "stock-number-known",
    `This stock number is in the library already: ${known.stockNumber}, “${known.title}” (imported ${known.importedAt.slice(0, 10)}). ` +
      `Bring ${name} in beside it? If it takes the other's place, remove the other afterwards; people's work on that one goes with it.`,
    { file: name },
  );
}

interface NewRecording {
  readonly id: string;
  readonly input: Omit<Input<"recording.import">, "ticket">;
  readonly transcriptFile: KnownFile;
  readonly transcriptBytes: Uint8Array;
  readonly transcript: Transcript;
  readonly video: RecordingVideo | null;
  readonly fingerprint: VideoFingerprint | null;
  readonly sheet: ReadSheet | null;
}

function addRows(parts: Parts, { id, input, transcriptFile, transcriptBytes, transcript, video, fingerprint, sheet }: NewRecording): void {
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
  if (fingerprint) parts.library.videoFingerprints.put(id, fingerprint);
  parts.library.captions.addAll(id, transcript.captions);
  indexRecording(parts, id);
}

function readWords(bytes: Uint8Array, name: string): Transcript {
  try {
    return readTranscript(bytes, name);
  } catch (failure) {
    if (failure instanceof TranscriptError) throw new Refusal(failure.code, failure.message, { file: failure.file, line: failure.line });
    throw failure;
  }
}
