import { useEffect } from "react";
import type { RecordingSummary } from "../../shared-types/index.ts";
import { Picture } from "../player/picture.tsx";
import { Transport } from "../player/transport.tsx";
import { useRecordingClock } from "../player/use-recording-clock.ts";

export interface CallPlayerProps {
  readonly recording: RecordingSummary;
  /** Seconds. */
  readonly start: number;
  /** Rises with every asking, so that the same moment can be played again. */
  readonly asked: number;
}

/** Plays a moment in place. */
export function CallPlayer({ recording, start, asked }: CallPlayerProps) {
  const picture = useRecordingClock(recording);
  const { clock } = picture;
  useEffect(() => {
    if (asked === 0) return;
    clock.seek(start);
    clock.play();
  }, [clock, start, asked]);
  return (
    <section className="call-player" aria-label={`Player, ${recording.title}`}>
      <h2>
        {recording.title} <span className="soft">{recording.stockNumber}</span>
      </h2>
      <div className="call-picture">
        <Picture {...picture} />
      </div>
      <Transport clock={clock} />
    </section>
  );
}
