import { useEffect, useEffectEvent } from "react";
import type { RecordingSummary } from "../../shared-types/index.ts";
import type { Clock } from "../player/clock.ts";
import { Picture } from "../player/picture.tsx";
import { Transport } from "../player/transport.tsx";
import { useRecordingClock } from "../player/use-recording-clock.ts";

export interface CallPlayerProps {
  readonly recording: RecordingSummary;
  /** Seconds. */
  readonly start: number;
  /** Rises with every asking, so that the same moment can be played again. */
  readonly asked: number;
  /** The recording that the answer beside it is of, where it is another: the two must not be taken for one. */
  readonly answered: string | null;
  /** The clock while this player stands, so that the desk's field can pause it. */
  readonly onClock: (clock: Clock | null) => void;
}

/** Plays a moment in place. */
export function CallPlayer({ recording, start, asked, answered, onClock }: CallPlayerProps) {
  const picture = useRecordingClock(recording);
  const { clock } = picture;
  const tell = useEffectEvent(onClock);
  useEffect(() => {
    tell(clock);
    return () => tell(null);
  }, [clock]);
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
      {answered === null ? null : (
        <p className="call-other" role="note">
          This plays {nameOf(recording)}. The answer below is of another vehicle: {answered}.
        </p>
      )}
      <div className="call-picture">
        <Picture {...picture} />
      </div>
      <Transport clock={clock} />
    </section>
  );
}

function nameOf({ stockNumber, title }: RecordingSummary): string {
  return stockNumber ? `stock ${stockNumber}` : title;
}
