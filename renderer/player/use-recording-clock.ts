import { useEffect, useRef, useState } from "react";
import type { RecordingSummary } from "../../shared-types/index.ts";
import { useClient } from "../client/use-client.ts";
import type { Clock } from "./clock.ts";
import { PlainClock } from "./plain-clock.ts";
import { VideoClock } from "./video-clock.ts";

/** What the clock needs to know of a recording. */
export type ClockedRecording = Pick<RecordingSummary, "id" | "title" | "duration" | "hasVideo" | "videoFound">;

export interface RecordingClock {
  readonly clock: Clock;
  /** Goes on the element that holds the picture. */
  readonly hostRef: (element: HTMLElement | null) => void;
  /** Why there is no picture; null while there is one. */
  readonly noPicture: string | null;
}

/** The clock of a recording: moved by its video once the picture's element is on the page, else, or when the video fails, by the time of day. */
export function useRecordingClock(recording: ClockedRecording): RecordingClock {
  const client = useClient();
  const { id, duration, hasVideo, videoFound } = recording;
  const [plain] = useState(() => new PlainClock(duration));
  const [clock, setClock] = useState<Clock>(plain);
  const [host, setHost] = useState<HTMLElement | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const title = useRef(recording.title);
  title.current = recording.title;
  const plays = hasVideo && videoFound && fault === null;

  useEffect(() => plain.setDuration(duration), [plain, duration]);
  useEffect(() => {
    if (!plays || !host) return;
    const video = new VideoClock(host, client.mediaUrl(id), `Video of ${title.current}`, (seconds) => {
      // The host may know the length already; a refusal changes nothing for the person.
      client.call("recording.measured", { id, duration: seconds }).catch(() => {});
    });
    plain.pause();
    video.seek(plain.read().time);
    const stopWatching = video.subscribe(() => setFault(video.read().fault));
    setClock(video);
    return () => {
      stopWatching();
      // Whoever goes on without the picture goes on from the same moment.
      plain.seek(video.read().time);
      setClock(plain);
      video.dispose();
    };
  }, [client, plain, plays, id, host]);
  useEffect(() => () => plain.pause(), [plain]);
  return { clock, hostRef: setHost, noPicture: fault ?? whyNoPicture(recording) };
}

function whyNoPicture({ hasVideo, videoFound }: ClockedRecording): string | null {
  if (!hasVideo) return "This recording has no video. The time runs and can be moved all the same.";
  if (!videoFound) return "The video is gone from where it was. Put it back, or go on by the transcript alone; the time still runs.";
  return null;
}
