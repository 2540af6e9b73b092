import { randomUUID } from "node:crypto";
import { createWriteStream } from "node:fs";
import { mkdir, rename, rm } from "node:fs/promises";
import { extname, join } from "node:path";
import type { BundleTaken, MergeChoices } from "../../../shared-types/index.ts";
import type { KeptEdit } from "../../library/edits.ts";
import type { Library } from "../../library/open-library.ts";
import type { RecordingVideo } from "../../library/recordings.ts";
import type { Analyst } from "../analyse-recording.ts";
import { indexRecording } from "../index-for-search.ts";
import type { Parts } from "../parts.ts";
import { concernsAnalysis, recordEdit } from "../record-edit.ts";
import { Refusal } from "../refusals.ts";
import { videoMediaType } from "../video-kinds.ts";
import { mediaFolder } from "../videos/take-video.ts";
import type { BundleContent } from "./bundle-content.ts";
import { bringsSheet, lacksVideo, lookOf, newPublications, newStills, sideHere, sideThere } from "./look-at-bundle.ts";
import { mergeChanges } from "./merge-changes.ts";
import { broken, type OpenBundle, openBundle } from "./read-bundle.ts";
import { readContent } from "./read-content.ts";
import { rememberSeen } from "./seen-bundles.ts";
import { refuseFullDisk } from "./write-bundle.ts";

export interface TakingBundle {
  /** What is done about work that differs; null where nothing may. */
  readonly choices: MergeChoices | null;
  /** Take it although another recording came from the same transcript. */
  readonly again: boolean;
  readonly initials: string;
  readonly signal?: AbortSignal;
  readonly onBytes?: (done: number, of: number) => void;
}

/**
 * Brings a bundle in: as a recording of its own where there is none with its id, else into that one. Everything is read, checked and
 * unpacked before the library is written to, and then in one go.
 * @throws Refusal; the library and its folder are then as they were. `bundle-differs` where it has to be chosen what counts.
 */
export async function takeBundle(parts: Parts, analyst: Analyst, fileId: string, taking: TakingBundle): Promise<BundleTaken> {
  const { library, files } = parts;
  const file = files.find(fileId);
  const bundle = await openBundle(file.path, file.name);
  let placed: RecordingVideo | null = null;
  try {
    const content = await readContent(bundle);
    const look = lookOf(library, file, bundle, content);
    const shared = { recordingId: look.recordingId, title: look.title };
    if (look.state === "same") {
      library.transaction(() => rememberSeen(library, look.recordingId, bundle.seal));
      files.letGo([fileId]);
      return { ...shared, outcome: "unchanged" };
    }
    refuseUnasked(look, taking);
    const stills = await unpackStills(library, bundle, content);
    const row = library.recordings.get(look.recordingId);
    if (bundle.video !== null && (!row || lacksVideo(library, row))) placed = await unpackVideo(library, bundle, content, taking);
    if (taking.signal?.aborted) throw cancelled(file.name);
    const { again, changed } = row
      ? merge(parts, { bundle, content, stills, placed, taking })
      : { again: addNew(parts, { bundle, content, stills, placed, taking }), changed: true };
    placed = null;
    files.letGo([fileId]);
    if (!changed) return { ...shared, outcome: "unchanged" };
    parts.events.publish("library.changed", { recordingId: look.recordingId });
    if (again)
      await analyst
        .analyseAnew(look.recordingId)
        .catch((failure: unknown) => parts.log(`${look.title} was brought in, and its analysis failed: ${String(failure)}`));
    else analyst.catchUpSoon();
    return { ...shared, outcome: row ? "merged" : "imported" };
  } catch (failure) {
    if (placed) await rm(join(library.folder, placed.path), { force: true });
    throw explained(failure, file.name, taking.signal);
  } finally {
    bundle.close();
  }
}

function refuseUnasked(look: ReturnType<typeof lookOf>, { choices, again }: TakingBundle): void {
  if (look.state === "new" && look.sameWords !== null && !again)
    throw new Refusal("transcript-known", `${look.sameWords} Bring ${look.fileName} in beside it?`, { file: look.fileName });
  const open = look.groups.filter(({ group }) => choices?.[group] === undefined).map(({ group }) => group);
  if (open.length > 0) {
    throw new Refusal(
      "bundle-differs",
      `${look.fileName} and this library differ in “${look.title}” (${open.join(", ")}). Choose what counts: what is here, what is in the bundle, or both. Nothing was changed.`,
      { file: look.fileName },
    );
  }
  const impossible = look.groups.find(({ group, takesBoth }) => choices?.[group] === "both" && !takesBoth);
  if (impossible)
    throw new Refusal(
      "merge-impossible",
      `Both cannot stand for ${impossible.clashes.join(", ")}: choose what is here, or what is in the bundle. Nothing was changed.`,
      { file: look.fileName },
    );
}

interface Taking {
  readonly bundle: OpenBundle;
  readonly content: BundleContent;
  readonly stills: readonly UnpackedStill[];
  readonly placed: RecordingVideo | null;
  readonly taking: TakingBundle;
}

/** @returns whether it must be analysed before anyone reads it. */
function addNew(parts: Parts, { bundle, content, stills, placed }: Taking): boolean {
  const { library } = parts;
  const { recording, work } = content;
  // A video that stayed behind is kept as one that is gone from its place: it can be found again by its content.
  const left = recording.video && {
    path: join(mediaFolder, `${recording.id}${extname(recording.video.name).toLowerCase()}`),
    ...recording.video,
  };
  library.transaction(() => {
    library.recordings.add({ ...recording, video: placed ?? left }, content.transcript);
    library.captions.addAll(recording.id, content.captions);
    if (recording.videoFingerprint) library.videoFingerprints.put(recording.id, recording.videoFingerprint);
    if (content.analysis) library.proposals.replace(recording.id, content.analysis.analysis, content.analysis.analysedAt);
    for (const span of work.zoneSpans) library.zoneSpans.put(recording.id, span);
    for (const finding of work.findings) library.findings.put(recording.id, finding);
    for (const ruling of work.rulings) library.rulings.put(recording.id, ruling);
    for (const note of work.seenNotes) library.seenNotes.put(recording.id, note);
    for (const row of work.trustedCaptions) library.trustedCaptions.put(recording.id, row);
    for (const row of work.captionCorrections) library.captionCorrections.put(recording.id, row);
    for (const publication of work.publications) library.publications.add(recording.id, publication);
    for (const still of stills) library.stills.put(recording.id, still);
    // Findings in old edits lack what came later; putting them back fills it in.
    library.edits.restore(recording.id, work.edits as KeptEdit[]);
    rememberSeen(library, recording.id, bundle.seal);
    indexRecording(parts, recording.id);
  });
  return content.analysis === null;
}

/** @returns whether it must be analysed anew, and whether anything of the recording was written at all. */
function merge(parts: Parts, { bundle, content, stills, placed, taking }: Taking): { again: boolean; changed: boolean } {
  const { library } = parts;
  const { recording } = content;
  return library.transaction(() => {
    const row = library.recordings.get(recording.id);
    // Removed while the bundle was unpacked.
    if (!row) throw new Refusal("recording-unknown", `“${recording.title}” was removed meanwhile. Bring the bundle in again.`);
    const changes = mergeChanges(recording.id, sideHere(library, row), sideThere(content), taking.choices ?? {}, randomUUID);
    const sheet = bringsSheet(row, content);
    if (sheet && recording.stockSheet)
      library.recordings.setStockSheet(recording.id, {
        fields: recording.stockSheet,
        form: recording.sheetForm,
        meanings: recording.sheetMeanings,
      });
    if (sheet) library.proposals.markOutdated(recording.id);
    for (const still of stills) library.stills.put(recording.id, still);
    const publications = newPublications(library, content);
    for (const publication of publications) library.publications.add(recording.id, publication);
    if (placed) library.recordings.setVideo(recording.id, placed);
    if (placed && recording.videoFingerprint) library.videoFingerprints.put(recording.id, recording.videoFingerprint);
    rememberSeen(library, recording.id, bundle.seal);
    recordEdit(parts, recording.id, { label: `merge of ${bundle.fileName}`, initials: taking.initials, changes });
    const changed = changes.length > 0 || sheet || stills.length > 0 || publications.length > 0 || placed !== null;
    return { again: concernsAnalysis(changes), changed };
  });
}

type UnpackedStill = BundleContent["stills"][number] & { readonly bytes: Uint8Array };

async function unpackStills(library: Library, bundle: OpenBundle, content: BundleContent): Promise<UnpackedStill[]> {
  const stills: UnpackedStill[] = [];
  for (const { name, ...still } of newStills(library, content)) stills.push({ ...still, bytes: await bundle.read(name) });
  return stills;
}

/** Unpacks the video beside the library, under a name of its own, and looks whether it is one. */
async function unpackVideo(
  library: Library,
  bundle: OpenBundle,
  { recording }: BundleContent,
  { signal, onBytes }: TakingBundle,
): Promise<RecordingVideo | null> {
  if (bundle.video === null || !recording.video) return null;
  const folder = join(library.folder, mediaFolder);
  const bytes = bundle.manifest.entries.find(({ name }) => name === bundle.video)?.bytes ?? 0;
  await refuseFullDisk(folder, bytes, bundle.fileName);
  await mkdir(folder, { recursive: true });
  const path = join(mediaFolder, `${randomUUID()}${extname(bundle.video)}`);
  const stage = join(library.folder, `${path}.part`);
  try {
    await bundle.send(bundle.video, createWriteStream(stage, { flags: "wx", mode: 0o600 }), signal, onBytes);
    // The entry's ending is from a closed list; the name is only what the person reads.
    const mediaType = videoMediaType(stage, bundle.video);
    if (mediaType !== recording.video.mediaType) throw broken(bundle.fileName, "its video is of another kind than it says");
    await rename(stage, join(library.folder, path));
  } catch (failure) {
    await rm(stage, { force: true });
    throw failure;
  }
  return { path, name: recording.video.name, mediaType: recording.video.mediaType };
}

function cancelled(fileName: string): Refusal {
  return new Refusal("cancelled", `${fileName}: cancelled. Nothing of it was brought in.`, { file: fileName });
}

function explained(failure: unknown, fileName: string, signal: AbortSignal | undefined): unknown {
  if (signal?.aborted) return cancelled(fileName);
  if (failure instanceof Refusal) return failure;
  const code = (failure as { code?: unknown }).code;
  const reason = failure instanceof Error ? failure.message : String(failure);
  // What the library's own bounds refuse was never in a library.
  if (typeof code === "string" && code.startsWith("SQLITE_CONSTRAINT")) return broken(fileName, `the library cannot hold it (${reason})`);
  if (code === "ENOSPC")
    return new Refusal("disk-full", `There is no room on the disk for what is in ${fileName}. Free some space and try again.`, {
      file: fileName,
    });
  return failure;
}
