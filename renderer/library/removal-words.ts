import type { RecordingSummary } from "../../shared-types/index.ts";

/** What goes with a recording that is removed, and which files stay: a video that the library keeps is its own copy, and goes. */
export function removalWords({ hasVideo, videoKept }: Pick<RecordingSummary, "hasVideo" | "videoKept">): string {
  const work = "Its zone spans, findings, stills and rulings go with it and cannot be brought back.";
  if (!hasVideo) return `${work} So does the library's copy of the transcript; the file that it came from stays where it is.`;
  return videoKept
    ? `${work} So do the library's own copies of the video and the transcript: they are deleted. The files that they were copied from stay where they are; where you no longer have the video, keep a copy of it before you remove the recording.`
    : `${work} So does the library's copy of the transcript. The video file stays where it is, and so does the transcript's.`;
}
