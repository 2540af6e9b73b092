import { tenthsLabel } from "../shared/time.ts";
import type { Clock } from "./clock.ts";
import "./picture.css";
import { useReading } from "./use-clock.ts";
import type { RecordingClock } from "./use-recording-clock.ts";

export interface PictureProps extends RecordingClock {
  /** Words said at this moment, shown over the picture; null for none. */
  readonly words?: string | null;
}

/** The video, or where there is none a plain face with the time; a click plays and pauses. */
export function Picture({ clock, hostRef, noPicture, words }: PictureProps) {
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: a larger target for the pointer; the play button is the keyboard's
    // biome-ignore lint/a11y/useKeyWithClickEvents: the same
    <div className="picture" onClick={() => clock.toggle()}>
      {noPicture === null ? <div className="picture-film" ref={hostRef} /> : <PlainFace clock={clock} why={noPicture} />}
      {words ? <p className="picture-words">{words}</p> : null}
    </div>
  );
}

function PlainFace({ clock, why }: { readonly clock: Clock; readonly why: string }) {
  const { time } = useReading(clock);
  return (
    <div className="picture-plain">
      <span className="picture-time">{tenthsLabel(time)}</span>
      <span>{why}</span>
    </div>
  );
}
