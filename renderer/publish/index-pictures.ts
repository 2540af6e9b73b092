import { useEffect, useRef, useState } from "react";
import type { ExportFormat } from "../../shared-types/index.ts";
import type { Client } from "../client/client.ts";
import { problemOf } from "../client/client.ts";
import { useClient } from "../client/use-client.ts";
import { openFrames } from "../mark/findings/take-still.ts";

/** Longest edge of a picture for an index, in pixels: as wide as a column of print at 150 dots an inch; the host takes the same. */
const widestPixels = 640;
/** A film that gives nothing so many times running gives nothing at all: nobody waits a quarter of a minute for each of fifty. */
const patientMisses = 3;

/** Formats that carry pictures of the video. */
export const showsPictures = (format: ExportFormat): boolean => format === "index-html" || format === "index-pdf";

export interface PicturesTold {
  readonly done: number;
  readonly of: number;
  /** The last one taken, as an address for an image; null before the first. */
  readonly last: string | null;
}

/**
 * Takes the pictures that a recording's index lacks from the page's own player, where the host has no program to take them with, and
 * keeps each with the host at once.
 * @returns Why some are missing, null where all are there; and whether the host takes them itself.
 * @throws What the signal was aborted with; pictures taken until then are kept.
 */
export async function takeIndexPictures(
  client: Client,
  recordingId: string,
  { signal, tell }: { readonly signal: AbortSignal; readonly tell: (told: PicturesTold) => void },
): Promise<{ why: string | null; hostTakes: boolean }> {
  const { moments, hostTakes } = await client.call("still.wanted", { recordingId });
  signal.throwIfAborted();
  if (hostTakes || moments.length === 0) return { why: null, hostTakes };
  tell({ done: 0, of: moments.length, last: null });
  let missed = 0;
  let running = 0;
  let last: string | null = null;
  const frames = await openFrames(client.mediaUrl(recordingId), signal).catch((failure: unknown) => {
    signal.throwIfAborted();
    return problemOf(failure).message;
  });
  if (typeof frames === "string") return { why: `${counted(moments.length)} could not be taken. ${frames}`, hostTakes };
  try {
    for (const [done, atMilliseconds] of moments.entries()) {
      signal.throwIfAborted();
      // After the film's end there is nothing to see: its last picture would show another moment.
      const taken =
        running >= patientMisses || atMilliseconds / 1000 > frames.duration
          ? null
          : await frames.still(atMilliseconds / 1000, { widest: widestPixels, signal }).catch(() => null);
      signal.throwIfAborted();
      if (taken === null) {
        missed += 1;
        if (atMilliseconds / 1000 <= frames.duration) running += 1;
      } else {
        const { mediaType } = await client.call("still.keep", { recordingId, atMilliseconds, image: taken });
        running = 0;
        last = `data:${mediaType};base64,${taken}`;
      }
      tell({ done: done + 1, of: moments.length, last });
    }
  } finally {
    frames.close();
  }
  const why = missed === 0 ? null : `${counted(missed)} could not be taken: the video may end before its transcript, or stop on the way.`;
  return { why, hostTakes };
}

const counted = (pictures: number): string => (pictures === 1 ? "One picture" : `${pictures} pictures`);

export interface PicturesAsked {
  readonly recordingId: string;
  readonly title: string;
}

export interface PicturesUnderWay extends PicturesTold {
  readonly title: string;
}

/** Taking pictures of one recording or of many: what is under way, and the way to end it. Leaving the window ends it too. */
export function useIndexPictures() {
  const client = useClient();
  const control = useRef<AbortController | null>(null);
  const [underWay, setUnderWay] = useState<PicturesUnderWay | null>(null);
  /** From the first question to the last picture; `underWay` only while there are some to take. */
  const [taking, setTaking] = useState(false);
  const cancel = () => control.current?.abort();
  useEffect(() => () => control.current?.abort(), []);
  /** @returns for each recording that lacks some why; null where the person ended it. */
  const take = async (recordings: readonly PicturesAsked[]): Promise<{ title: string; why: string }[] | null> => {
    const mine = new AbortController();
    control.current = mine;
    setTaking(true);
    const lacking: { title: string; why: string }[] = [];
    try {
      for (const { recordingId, title } of recordings) {
        const tell = (told: PicturesTold) => setUnderWay({ ...told, title });
        const { why, hostTakes } = await takeIndexPictures(client, recordingId, { signal: mine.signal, tell });
        if (hostTakes) break;
        if (why !== null) lacking.push({ title, why });
      }
      return lacking;
    } catch (failure) {
      if (mine.signal.aborted) return null;
      throw failure;
    } finally {
      control.current = null;
      setUnderWay(null);
      setTaking(false);
    }
  };
  return { taking, underWay, take, cancel };
}
