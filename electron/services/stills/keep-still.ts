import { type Input, type Output, stillBytesAllowed, timeLabel } from "../../../shared-types/index.ts";
import type { Parts } from "../parts.ts";
import { findRecording } from "../recording-detail.ts";
import { Refusal } from "../refusals.ts";
import { pictureFacts } from "./picture-size.ts";

/** Longest edge of a still, in pixels: enough for a page and for print across a column. */
export const longestStillEdge = 1920;

/** Keeps a picture of the video at a moment, once its own bytes say that it is one and how large. */
export function keepStill(parts: Parts, { recordingId, atMilliseconds, image }: Input<"still.keep">): Output<"still.keep"> {
  const { duration } = findRecording(parts, recordingId);
  const bytes = Buffer.from(image, "base64");
  const facts = pictureFacts(bytes);
  if (!facts) throw new Refusal("still-unreadable", "This is no PNG, JPEG or WebP picture. Take the still again.");
  if (Math.max(facts.width, facts.height) > longestStillEdge || bytes.length > stillBytesAllowed) {
    throw new Refusal(
      "still-too-large",
      `The still has ${facts.width} × ${facts.height} pixels and ${bytes.length} bytes; ${longestStillEdge} pixels and ${stillBytesAllowed} bytes are allowed. Take it smaller.`,
    );
  }
  // A video may run a little longer than the length that was kept.
  if (atMilliseconds > (duration + 1) * 1000) {
    throw new Refusal(
      "still-outside",
      `The recording ends at ${timeLabel(duration)}; there is no picture at ${timeLabel(atMilliseconds / 1000)}.`,
    );
  }
  parts.library.transaction(() => parts.library.stills.put(recordingId, { ...facts, atMilliseconds, bytes }));
  return { atMilliseconds, ...facts };
}

/** @throws Refusal when no still was kept for that very moment. */
export function stillOf(parts: Parts, { recordingId, atMilliseconds }: Input<"still.get">): Output<"still.get"> {
  findRecording(parts, recordingId);
  const still = parts.library.stills.get(recordingId, atMilliseconds);
  if (!still) throw new Refusal("still-unknown", `No still is kept for ${timeLabel(atMilliseconds / 1000)}. Take it again.`);
  const { width, height, mediaType, bytes } = still;
  return {
    atMilliseconds,
    width,
    height,
    mediaType: mediaType as Output<"still.get">["mediaType"],
    image: Buffer.from(bytes).toString("base64"),
  };
}
