import type { Caption } from "../../shared-types/index.ts";
import { tenthsLabel } from "../shared/time.ts";
import { captionAt } from "./caption-at.ts";
import type { Clock } from "./clock.ts";
import "./picture.css";
import { useClockValue, useReading } from "./use-clock.ts";
import type { RecordingClock } from "./use-recording-clock.ts";

export interface PictureProps extends RecordingClock {
  /** Shown large where there is no picture to look at; without them the time stands alone. */
  readonly captions?: readonly Caption[];
}

/** The video, or where there is none a plain face with the time and the words; a click plays and pauses. */
export function Picture({ clock, hostRef, noPicture, captions = [] }: PictureProps) {
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: a larger target for the pointer; the play button is the keyboard's
    // biome-ignore lint/a11y/useKeyWithClickEvents: the same
    <div className="picture" data-plain={noPicture !== null || undefined} onClick={() => clock.toggle()}>
      {noPicture === null ? (
        <div className="picture-film" ref={hostRef} />
      ) : (
        <PlainFace clock={clock} why={noPicture} captions={captions} />
      )}
    </div>
  );
}

function PlainFace({ clock, why, captions }: { readonly clock: Clock; readonly why: string; readonly captions: readonly Caption[] }) {
  const said = useClockValue(clock, (reading) => captionAt(captions, reading.time));
  return (
    <div className="picture-plain">
      <PlainTime clock={clock} />
      {captions[said] ? <p className="picture-words">{captions[said].text}</p> : null}
      <p className="small">{why}</p>
    </div>
  );
}

function PlainTime({ clock }: { readonly clock: Clock }) {
  const { time } = useReading(clock);
  return <span className="picture-time">{tenthsLabel(time)}</span>;
}
