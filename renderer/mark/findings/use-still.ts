import { useEffect, useState } from "react";
import type { Problem } from "../../../shared-types/index.ts";
import { type Client, problemOf } from "../../client/client.ts";
import { useClient } from "../../client/use-client.ts";
import { takeStill } from "./take-still.ts";

/** Stills that were shown or taken since the page was loaded, by recording and moment: scrolling a list must not fetch them again. */
const known = new Map<string, Promise<string>>();
/** Some megabytes at most; the earliest goes. */
const mostKnown = 60;
const place = (recordingId: string, atMilliseconds: number): string => `${recordingId} ${atMilliseconds}`;

function remember(key: string, picture: Promise<string>): void {
  known.delete(key);
  known.set(key, picture);
  const [oldest] = known.keys();
  if (known.size > mostKnown && oldest !== undefined) known.delete(oldest);
}

async function fetchStill(client: Client, recordingId: string, atMilliseconds: number): Promise<string> {
  const { mediaType, image } = await client.call("still.get", { recordingId, atMilliseconds });
  return `data:${mediaType};base64,${image}`;
}

/** The still kept for a moment as an address for an image; null while it comes, a problem where there is none. */
export function useStill(recordingId: string, atMilliseconds: number | null): { src: string | null; problem: Problem | null } {
  const client = useClient();
  const [shown, setShown] = useState<{ at: number; src: string | null; problem: Problem | null } | null>(null);
  useEffect(() => {
    if (atMilliseconds === null) return;
    const key = place(recordingId, atMilliseconds);
    const picture = known.get(key) ?? fetchStill(client, recordingId, atMilliseconds);
    remember(key, picture);
    let wanted = true;
    picture.then(
      (src) => wanted && setShown({ at: atMilliseconds, src, problem: null }),
      (thrown: unknown) => {
        known.delete(key);
        if (wanted) setShown({ at: atMilliseconds, src: null, problem: problemOf(thrown) });
      },
    );
    return () => {
      wanted = false;
    };
  }, [client, recordingId, atMilliseconds]);
  return shown?.at === atMilliseconds ? shown : { src: null, problem: null };
}

/** Takes a still of the recording's video and keeps it with the host. @returns its moment, in milliseconds. */
export async function keepStillAt(client: Client, recordingId: string, seconds: number): Promise<number> {
  const atMilliseconds = Math.round(seconds * 1000);
  const image = await takeStill(client.mediaUrl(recordingId), seconds);
  const { mediaType } = await client.call("still.keep", { recordingId, atMilliseconds, image });
  remember(place(recordingId, atMilliseconds), Promise.resolve(`data:${mediaType};base64,${image}`));
  return atMilliseconds;
}
