import type { WantedVideo } from "../../../shared-types/index.ts";
import { type VideoContent, videoDifference } from "../../../shared-types/video-content.ts";
import { type Client, type FileWatch, problemOf } from "../../client/client.ts";
import { type FoundFile, offeredId } from "../files/found-file.ts";

/** Bytes of each end that are hashed; the host hashes the same (`electron/services/videos/fingerprint.ts`). */
const hashedEndBytes = 2 ** 20;

/** What a file is known by, read here: gigabytes need not travel to learn that they are the wrong ones. */
export async function contentOfFile(file: File): Promise<VideoContent> {
  const length = Math.min(file.size, hashedEndBytes);
  const ends = await new Blob([file.slice(0, length), file.slice(file.size - length)]).arrayBuffer();
  const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", ends));
  return { bytes: file.size, fingerprint: Array.from(digest, (byte) => byte.toString(16).padStart(2, "0")).join("") };
}

export interface VideoSearch {
  /** Recordings that have their video again. */
  readonly found: readonly WantedVideo[];
  /** Files that were refused although their length fits, or that were the only ones chosen, with what differs. */
  readonly refused: readonly { readonly file: FoundFile; readonly message: string }[];
}

/**
 * Looks for videos by their content among files and gives each recording its own. @param watch tells of the file that is handed over.
 * @throws ProblemError when handing over fails or is stopped; what was found before stays.
 */
export async function findVideos(
  client: Client,
  wanted: readonly WantedVideo[],
  files: readonly FoundFile[],
  watch: FileWatch & { readonly onFile: (file: FoundFile) => void },
): Promise<VideoSearch> {
  const found: WantedVideo[] = [];
  const refused: { file: FoundFile; message: string }[] = [];
  for (const target of wanted) {
    const { known } = target;
    // Of one chosen file the person wants to know what is wrong with it, whatever its length.
    const candidates = files.length === 1 ? files : files.filter(({ bytes }) => bytes === known?.bytes);
    for (const file of candidates) {
      watch.onFile(file);
      const message = await differenceOf(target, file);
      if (message === null) {
        const taken = await take(client, target, file, watch);
        if (taken === null) {
          found.push(target);
          break;
        }
        refused.push({ file, message: taken });
      } else refused.push({ file, message });
    }
  }
  return { found, refused };
}

/** Null where the content is the same, or the host must say: a file that it offered is out of the page's reach. */
async function differenceOf({ known, videoName }: WantedVideo, file: FoundFile): Promise<string | null> {
  if (typeof file.source === "string") return null;
  if (!known) {
    return `This recording came in before the content of videos was remembered, so nothing tells whether ${file.name} is its video.`;
  }
  const difference = videoDifference(known, await contentOfFile(file.source), videoName);
  return difference === null ? null : `${file.name} is not the video of this recording: ${difference}.`;
}

/** What the host refused it for; null where it was taken. */
async function take(client: Client, { recordingId }: WantedVideo, file: FoundFile, watch: FileWatch): Promise<string | null> {
  const video = await offeredId(client, file, watch);
  try {
    await client.call("video.take", { recordingId, video, replace: false });
    return null;
  } catch (thrown) {
    if (typeof file.source !== "string") client.call("file.letGo", { files: [video] }).catch(() => undefined);
    const problem = problemOf(thrown);
    if (problem.code === "video-differs" || problem.code === "video-unknown") return problem.message;
    throw thrown;
  }
}

/** Takes a file whatever its content, because a person says so. */
export async function replaceVideo(client: Client, recordingId: string, file: FoundFile, watch: FileWatch): Promise<void> {
  const video = await offeredId(client, file, watch);
  try {
    await client.call("video.take", { recordingId, video, replace: true });
  } catch (thrown) {
    if (typeof file.source !== "string") client.call("file.letGo", { files: [video] }).catch(() => undefined);
    throw thrown;
  }
}
