import { stillBytesAllowed } from "../../../shared-types/index.ts";

/** Widest still, in pixels: sharp across a column of print, small beside a film. */
const widestStill = 1280;
/** How long a moment may take to come before the person is told, in milliseconds. */
const patienceMilliseconds = 15_000;

/**
 * The picture of a video at a moment, as JPEG in base64. The film on the desk is not moved: the moment is sought in one of its own.
 * @param seconds from the recording's beginning.
 * @throws Error with a sentence for the person.
 */
export async function takeStill(source: string, seconds: number): Promise<string> {
  const video = document.createElement("video");
  video.muted = true;
  video.preload = "auto";
  video.src = source;
  try {
    await happened(video, "loadedmetadata");
    // The very end has no picture of its own.
    video.currentTime = Math.min(seconds, Math.max(0, video.duration - 0.05));
    await happened(video, "seeked");
    return await drawn(video);
  } finally {
    // Lets go of the file and of the decoder.
    video.removeAttribute("src");
    video.load();
  }
}

function happened(video: HTMLVideoElement, name: "loadedmetadata" | "seeked"): Promise<void> {
  return new Promise((done, failed) => {
    const tooLong = window.setTimeout(
      () => failed(new Error("The video did not come to this moment in time. Try again.")),
      patienceMilliseconds,
    );
    video.addEventListener(
      name,
      () => {
        window.clearTimeout(tooLong);
        done();
      },
      { once: true },
    );
    video.addEventListener(
      "error",
      () => {
        window.clearTimeout(tooLong);
        failed(new Error("The video cannot be read here. Look whether its file is where it was, then try again."));
      },
      { once: true },
    );
  });
}

async function drawn(video: HTMLVideoElement): Promise<string> {
  // Halving twice brings any picture under the bound.
  for (const [width, quality] of [
    [widestStill, 0.86],
    [widestStill / 2, 0.8],
    [widestStill / 4, 0.7],
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
