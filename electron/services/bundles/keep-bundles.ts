import { existsSync } from "node:fs";
import { readdir } from "node:fs/promises";
import { join } from "node:path";
import { bundleEnding, type Input, type Output } from "../../../shared-types/index.ts";
import type { Library } from "../../library/open-library.ts";
import type { RecordingRow } from "../../library/recordings.ts";
import { namedFolder } from "../named-folder.ts";
import type { Parts } from "../parts.ts";
import { readyRecordings } from "../ready-recordings.ts";
import { findRecording, videoPath } from "../recording-detail.ts";
import { Refusal } from "../refusals.ts";
import type { TellProgress } from "../work-tickets.ts";
import { bundleContent, entryOf, smallEntries, stillName } from "./bundle-content.ts";
import { lookAtBundle } from "./look-at-bundle.ts";
import { openBundle } from "./read-bundle.ts";
import { rememberSeen, wasSeen } from "./seen-bundles.ts";
import { bundleFileName, videoEntryName, writeBundle } from "./write-bundle.ts";

/** Most bundles of a folder that are looked at. */
const mostBundles = 5000;

/** The folder bundles were last kept in; beside the library where none ever was. */
export function bundleFolder(library: Pick<Library, "folder" | "settings">): string {
  return library.settings.get("bundleFolder") ?? join(library.folder, "bundles");
}

/**
 * Writes a bundle for each recording into a folder; those whose bundle there holds the same already are left alone. A bundle that this
 * library neither wrote nor brought in may hold someone's work, and stays unless `overwrite`.
 */
export async function keepBundles(
  parts: Parts,
  { recordingIds, withVideo, folder, overwrite }: Omit<Input<"bundle.keep">, "ticket">,
  signal: AbortSignal,
  tell: TellProgress,
): Promise<Output<"bundle.keep">> {
  const { library } = parts;
  const place = folder === null ? bundleFolder(library) : namedFolder(folder);
  const ids = recordingIds ?? readyRecordings(parts).flatMap(({ recordingId, ready }) => (ready ? [recordingId] : []));
  const outcome: Output<"bundle.keep"> = { folder: place, written: [], unchanged: [], failed: [], cancelled: false };
  for (const [done, recordingId] of ids.entries()) {
    if (signal.aborted) break;
    const row = findRecording(parts, recordingId);
    const named = { recordingId, title: row.title, fileName: bundleFileName(row) };
    const path = join(place, named.fileName);
    const steps = 1000;
    tell(row.title, done * steps, ids.length * steps);
    try {
      const standing = await standingOf(library, row, path, withVideo);
      if (standing === "same") {
        outcome.unchanged.push(named);
        continue;
      }
      if (standing === "foreign" && !overwrite) {
        throw new Refusal(
          "bundle-unseen",
          `${named.fileName} in ${place} was written elsewhere and is not brought in yet: it may hold work that is lacking here. Bring it in first, or ask for it to be replaced.`,
          { file: path },
        );
      }
      const written = await writeBundle(library, recordingId, path, withVideo, {
        signal,
        onBytes: (bytes, of) => tell(row.title, done * steps + Math.floor((bytes / Math.max(of, 1)) * (steps - 1)), ids.length * steps),
      });
      library.transaction(() => rememberSeen(library, recordingId, written.seal));
      outcome.written.push({ ...named, bytes: written.bytes });
    } catch (failure) {
      if (signal.aborted) break;
      if (!(failure instanceof Refusal)) throw failure;
      outcome.failed.push({ ...named, code: failure.problem.code, why: failure.message });
    }
  }
  outcome.cancelled = signal.aborted;
  if (folder !== null && outcome.written.length + outcome.unchanged.length > 0)
    library.transaction(() => library.settings.put("bundleFolder", place));
  return outcome;
}

/** How the file in a bundle's place stands to the recording: not there, holding the same, an older one of this library's, or someone's. */
async function standingOf(
  library: Library,
  row: RecordingRow,
  path: string,
  withVideo: boolean,
): Promise<"none" | "same" | "older" | "foreign"> {
  if (!existsSync(path)) return "none";
  let bundle: Awaited<ReturnType<typeof openBundle>>;
  try {
    bundle = await openBundle(path, path);
  } catch {
    // Half copied, or no bundle: whatever it is, it is not this library's to replace.
    return "foreign";
  }
  bundle.close();
  const content = await bundleContent(library, row.id);
  const small = smallEntries(content).map((entry) => entryOf(entry.name, entry.content));
  const hasVideo = withVideo && row.video !== null && existsSync(videoPath(library, row.video));
  // The recording's entry has the video's length and a hash of its ends, so a video of gigabytes need not be read to know it again.
  const names = [
    ...small.map(({ name }) => name),
    ...content.stills.map(stillName),
    ...(hasVideo && row.video ? [videoEntryName(row.video)] : []),
  ];
  const kept = new Map(bundle.manifest.entries.map((entry) => [entry.name, entry]));
  const sameStills = content.stills.every((still) => {
    const bytes = library.stills.get(row.id, still.atMilliseconds)?.bytes;
    return bytes !== undefined && entryOf("", bytes).sha256 === kept.get(stillName(still))?.sha256;
  });
  const same =
    sameStills &&
    kept.size === names.length &&
    names.every((name) => kept.has(name)) &&
    small.every(({ name, sha256 }) => kept.get(name)?.sha256 === sha256);
  if (same) return "same";
  return bundle.manifest.recordingId === row.id && wasSeen(library, row.id, bundle.seal) ? "older" : "foreign";
}

/** Every bundle of a folder beside what the library has; one that cannot be read is listed with its reason, and the rest goes on. */
export async function lookAtFolder(
  parts: Parts,
  { folder }: Pick<Input<"bundle.lookAtFolder">, "folder">,
  signal: AbortSignal,
  tell: TellProgress,
): Promise<Output<"bundle.lookAtFolder">> {
  const place = folder === null ? bundleFolder(parts.library) : namedFolder(folder);
  const names = await readdir(place).catch((failure: NodeJS.ErrnoException) => {
    const reason = failure.code === "ENOENT" ? "there is no such folder" : failure.message;
    throw new Refusal("folder-unusable", `${place} cannot be read (${reason}). Check its name.`, { file: place });
  });
  const bundles = names.filter((name) => name.toLowerCase().endsWith(bundleEnding)).sort();
  if (bundles.length > mostBundles)
    throw new Refusal("folder-unusable", `${place} holds ${bundles.length} bundles; ${mostBundles} are the most.`, { file: place });
  const found: Output<"bundle.lookAtFolder"> = { folder: place, bundles: [] };
  for (const [done, fileName] of bundles.entries()) {
    if (signal.aborted) throw new Refusal("cancelled", "Cancelled. Nothing was brought in.");
    tell(fileName, done, bundles.length);
    let offered: string | null = null;
    try {
      offered = parts.files.offerPath(join(place, fileName)).id;
      found.bundles.push({ fileName, look: await lookAtBundle(parts, offered), problem: null });
    } catch (failure) {
      if (!(failure instanceof Refusal)) throw failure;
      if (offered !== null) parts.files.letGo([offered]);
      found.bundles.push({ fileName, look: null, problem: failure.message });
    }
  }
  return found;
}
