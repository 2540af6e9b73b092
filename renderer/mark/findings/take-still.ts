import { stillBytesAllowed } from "../../../shared-types/index.ts";

/** Widest still, in pixels: sharp across a column of print, small beside a film. */
const widestStill = 1280;
/** How long a moment may take to come before the person is told, in milliseconds. */
const patienceMilliseconds = 15_000;

/** A film of one's own, out of sight, of which pictures are taken. */
export interface Frames {
  /** Seconds; infinite where the file does not tell. */
  readonly duration: number;
  /**
   * The picture at a moment, as JPEG in base64.
   * @param seconds from the recording's beginning.
   * @throws Error with a sentence for the person; what the signal was aborted with.
   */
  readonly still: (seconds: number, options?: StillOptions) => Promise<string>;
  /** Lets go of the file and of the decoder. */
  readonly close: () => void;
}

export interface StillOptions {
  /** Longest edge in pixels. */
  readonly widest?: number;
  readonly signal?: AbortSignal;
}

/**
 * Opens a video to take pictures of it. The film on the desk is not moved: moments are sought in one of its own.
 * @throws Error with a sentence for the person; what the signal was aborted with.
 */
export async function openFrames(source: string, signal?: AbortSignal): Promise<Frames> {
  const video = document.createElement("video");
  const close = () => {
    video.removeAttribute("src");
    video.load();
  };
  video.muted = true;
  video.preload = "auto";
  video.src = source;
  try {
    await happened(video, "loadedmetadata", signal);
  } catch (failure) {
    close();
    throw failure;
  }
  return {
    duration: video.duration,
    still: async (seconds, options = {}) => {
      // The very end has no picture of its own.
      const moment = Math.min(seconds, Math.max(0, video.duration - 0.05));
      const shown = presented(video, moment);
      video.currentTime = moment;
      await happened(video, "seeked", options.signal);
      await shown;
      return drawn(video, options.widest ?? widestStill);
    },
    close,
  };
}

/** One picture of a video, as `Frames.still` gives it. */
export async function takeStill(source: string, seconds: number): Promise<string> {
  const frames = await openFrames(source);
  try {
    return await frames.still(seconds);
  } finally {
    frames.close();
  }
}

function happened(video: HTMLVideoElement, name: "loadedmetadata" | "seeked", signal?: AbortSignal): Promise<void> {
  const waiting = new AbortController();
  return new Promise<void>((done, failed) => {
    signal?.throwIfAborted();
    const once = { once: true, signal: waiting.signal };
    const tooLong = window.setTimeout(
      () => failed(new Error("The video did not come to this moment in time. Try again.")),
      patienceMilliseconds,
    );
    waiting.signal.addEventListener("abort", () => window.clearTimeout(tooLong));
    video.addEventListener(name, () => done(), once);
    video.addEventListener(
      "error",
      () => failed(new Error("The video cannot be read here. Look whether its file is where it was, then try again.")),
      once,
    );
    signal?.addEventListener("abort", () => failed(signal.reason), once);
  }).finally(() => waiting.abort());
}

/** Furthest a frame may lie from the moment it was sought for, in seconds: films of few frames a second hold one so long. */
const frameReachSeconds = 1;
/** How long a frame may take to be drawn once its moment was asked for; the same frame again is not announced. Milliseconds. */
const frameMilliseconds = 1200;

/** The moment's own frame is drawn. A film says that it has come to a moment a little before its picture has changed. */
function presented(video: HTMLVideoElement, moment: number): Promise<void> {
  return new Promise((done) => {
    const late = window.setTimeout(done, frameMilliseconds);
    const look: VideoFrameRequestCallback = (_, { mediaTime }) => {
      if (Math.abs(mediaTime - moment) > frameReachSeconds) {
        video.requestVideoFrameCallback(look);
        return;
      }
      window.clearTimeout(late);
      done();
    };
    video.requestVideoFrameCallback(look);
  });
}

async function drawn(video: HTMLVideoElement, widest: number): Promise<string> {
  // Halving twice brings any picture under the bound.
  for (const [width, quality] of [
    [widest, 0.86],
    [widest / 2, 0.8],
    [widest / 4, 0.7],
  ] as const) {
    const scale = Math.min(1, width / Math.max(video.videoWidth, video.videoHeight, 1));
    const canvas = document.createElement("canvas");
    canvas.width = Math.max(1, Math.round(video.videoWidth * scale));
    canvas.height = Math.max(1, Math.round(video.videoHeight * scale));
    const pen = canvas.getContext("2d");
    if (!pen || video.videoWidth === 0) break;
    pen.drawImage(video, 0, 0, canvas.width, canvas.height);
    const picture = await new Promise<Blob | null>((done) => canvas.toBlob(done, "image/jpeg", quality));
    if (picture && picture.size <= stillBytesAllowed) return base64(picture);
  }
  throw new Error("This window could not draw the video's picture. Try again, or name the moment in the note.");
}

function base64(picture: Blob): Promise<string> {
  return new Promise((done, failed) => {
    const reader = new FileReader();
    reader.onload = () => done(String(reader.result).replace(/^[^,]*,/, ""));
    reader.onerror = () => failed(new Error("The still could not be read. Take it again."));
    reader.readAsDataURL(picture);
  });
}
